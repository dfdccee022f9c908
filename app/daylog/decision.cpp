#include "app/daylog/decision.h"

#include "app/text/numbers.h"
#include "app/text/record_words.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>
#include <utility>

namespace seamclock {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Decision)
};

constexpr int kLongestText = 60; // characters of a maker or a batch

void finish(DecisionQuestion& question, const std::vector<std::string>& reasons) {
    for (const std::string& reason : reasons) {
        ChoiceView::Choice choice;
        QString words = choiceWord(reason);
        words[0] = words[0].toUpper();
        choice.text = words;
        question.page.choices.push_back(choice);
        question.reasons.push_back(reason);
    }
    ChoiceView::Choice other;
    other.text = Words::tr("Something else");
    other.under = Words::tr("typed by the keyboard");
    question.page.choices.push_back(other);
    question.page.back = hiddenSlot();
    question.page.stop = plainSlot(Words::tr("Close"), Words::tr("nothing is decided"));
    question.page.step = hiddenSlot();
}

/// In the unit that is shown.
std::pair<double, double> rangeOf(const Correctable& value) {
    if (value.unit == QStringLiteral("°C")) {
        return {0, 400};
    }
    if (value.field == "k_um") {
        return {-50, 50};
    }
    return {0, 1000};
}

} // namespace

DecisionQuestion decisionQuestion(const JointView& joint, std::int64_t number, Decision decision) {
    DecisionQuestion question;
    question.page.under = Words::tr("The foreman's PIN is asked next; the verdict stays as it is.");
    switch (decision) {
    case Decision::Accept:
        question.page.title = joint.trial
                                  ? Words::tr("Trial joint %1 is released. Why?").arg(number)
                                  : Words::tr("Joint %1 is accepted. Why?").arg(number);
        finish(
            question, joint.trial ? std::vector<std::string>{"trial_held", "looked_good", "tested"}
                                  : std::vector<std::string>{"looked_good", "tested", "harmless"});
        break;
    case Decision::Repair:
        question.page.title = Words::tr("Joint %1 is to be repaired. Why?").arg(number);
        finish(question, {"bead_fault", "out_of_line", "leaks", "not_sound"});
        break;
    case Decision::CutOut:
        question.page.title = Words::tr("Joint %1 is to be cut out. Why?").arg(number);
        finish(question, {"not_sound", "bead_fault", "out_of_line", "leaks", "test_failed"});
        break;
    }
    return question;
}

QString decisionForWhat(std::int64_t number, bool trial, Decision decision, const QString& reason) {
    switch (decision) {
    case Decision::Accept:
        return trial ? Words::tr("Trial joint %1 is released: %2.").arg(number).arg(reason)
                     : Words::tr("Joint %1 is accepted: %2.").arg(number).arg(reason);
    case Decision::Repair:
        return Words::tr("Joint %1 is to be repaired: %2.").arg(number).arg(reason);
    case Decision::CutOut:
        return Words::tr("Joint %1 is to be cut out: %2.").arg(number).arg(reason);
    }
    return {};
}

DecisionQuestion correctionQuestion(const Correctable& value, const QString& is) {
    DecisionQuestion question;
    question.page.title = Words::tr("%1: %2 instead of %3. Why?").arg(value.item, is, value.text);
    question.page.under = Words::tr("Both stay in the record. The foreman's PIN is asked next.");
    finish(question, {"typed_wrong", "read_wrong", "wrong_sheet"});
    question.page.stop = plainSlot(Words::tr("Close"), Words::tr("nothing is corrected"));
    return question;
}

QString allowedText(const Correctable& value) {
    if (value.scale == 0) {
        return Words::tr("1 to %1 characters").arg(kLongestText);
    }
    const auto [low, high] = rangeOf(value);
    return Words::tr("%1 to %2 %3").arg(numberText(low, 0), numberText(high, 0), value.unit);
}

Result<std::string> corrected(const Correctable& value, const QString& typed) {
    // What a screen shows and what is typed have different signs before a number below zero.
    const QString text = typed.trimmed().replace(QChar(0x2212), QLatin1Char('-'));
    const auto refused = [&](ErrorCode code) {
        return fail(
            code, Words::tr("\"%1\" is no value for %2; allowed: %3.")
                      .arg(text, value.item, allowedText(value))
                      .toStdString());
    };
    if (value.scale == 0) {
        if (text.isEmpty() || text.size() > kLongestText) {
            return refused(ErrorCode::OutOfRange);
        }
        return text.toStdString();
    }
    bool read = false;
    // No signs between thousands: "0.500" typed in a language with a comma is a half, not 500.
    QLocale locale;
    locale.setNumberOptions(QLocale::RejectGroupSeparator);
    double number = locale.toDouble(text, &read);
    if (!read) {
        QLocale plain = QLocale::c();
        plain.setNumberOptions(QLocale::RejectGroupSeparator);
        number = plain.toDouble(QString(text).replace(QLatin1Char(','), QLatin1Char('.')), &read);
    }
    if (!read || !std::isfinite(number)) {
        return refused(ErrorCode::Malformed);
    }
    const auto [low, high] = rangeOf(value);
    if (number < low || number > high) {
        return refused(ErrorCode::OutOfRange);
    }
    return std::to_string(std::llround(number * value.scale));
}

} // namespace seamclock
