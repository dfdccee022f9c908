#include "app/first/bench_answers.h"

#include "app/setup/bench_form.h"
#include "app/text/numbers.h"
#include "app/text/words.h"
#include "core/base/plain_number.h"

#include <QCoreApplication>
#include <QSettings>
#include <QStringList>
#include <algorithm>
#include <cmath>

namespace seamclock {
namespace {

struct FirstBench {
    Q_DECLARE_TR_FUNCTIONS(FirstBench)
};

QString tr(const char* text) {
    return FirstBench::tr(text);
}

// NIST SP 811 (2008), appendix B.8: both exact.
constexpr double kMmPerInch = 25.4;
constexpr double kNewtonsPerPound = 4.4482216152605;

// As core/bench's check has them [mm, N for one unit, the scale's unit].
constexpr double kShortestSeam = 10;
constexpr double kLongestSeam = 20'000;
constexpr double kThinnest = 0.1;
constexpr double kThickest = 300;
constexpr double kLeastRate = 0.1;
constexpr double kGreatestRate = 100'000;
constexpr double kGreatestZero = 1'000;
constexpr double kGreatestPreload = 10'000;
constexpr double kGreatestEnd = 100'000;

constexpr const char* kGroup = "first_bench";

bool isInches(UnitSystem units) {
    return units == UnitSystem::Imperial;
}

double lengthFactor(UnitSystem units) { // typed to mm
    return isInches(units) ? kMmPerInch : 1;
}

double forceFactor(UnitSystem units) { // typed to N
    return isInches(units) ? kNewtonsPerPound : 1;
}

/// Typed to N for one unit of the scale: a rate is told in N/mm or lbf/in, whatever the scale's
/// unit.
double rateFactor(UnitSystem units, const std::string& unit) {
    const double perMm = isInches(units) ? kNewtonsPerPound / kMmPerInch : 1;
    return unit == "in" ? perMm * kMmPerInch : perMm;
}

double rounded(double value, double grain) {
    return std::round(value / grain) * grain;
}

/// The end of a range in so many decimals that it lies inside.
double inward(double value, int decimals, bool low) {
    constexpr double kNoise = 1e-6; // what a division of binary fractions leaves of a whole number
    const double scale = std::pow(10.0, decimals);
    return (low ? std::ceil(value * scale - kNoise) : std::floor(value * scale + kNoise)) / scale;
}

QString lengthUnit(UnitSystem units) {
    return isInches(units) ? QStringLiteral("in") : QStringLiteral("mm");
}

QString scaleUnitOf(const BenchAnswers& answers) {
    return answers.unit.empty() ? lengthUnit(UnitSystem::Metric) : fromUtf8(answers.unit);
}

/// As many decimals as it takes, at most so many.
QString shortNumber(double value, int most) {
    int decimals = 0;
    while (decimals < most && std::fabs(value - rounded(value, std::pow(10.0, -decimals))) >
                                  0.5 * std::pow(10.0, -most)) {
        ++decimals;
    }
    return numberText(value, decimals);
}

struct Range {
    double low;
    double high;
};

/// In mm, or the scale's unit, or N for one unit of it.
Range rangeOf(BenchQuestion question, const BenchAnswers& answers) {
    switch (question) {
    case BenchQuestion::LongestSeam:
        return {kShortestSeam, kLongestSeam};
    case BenchQuestion::ThinnestSheet:
        return {kThinnest, kThickest};
    case BenchQuestion::ThickestSheet:
        return {answers.thinnestMm.value_or(kThinnest), kThickest};
    case BenchQuestion::ScaleEnd:
        return {1, kGreatestEnd};
    case BenchQuestion::Zero:
        // a division below the scale's end at most
        return {
            0,
            std::min(
                kGreatestZero, answers.end.value_or(kGreatestZero) - answers.division.value_or(0))};
    case BenchQuestion::Rate:
        return {kLeastRate, kGreatestRate};
    case BenchQuestion::Preload:
        return {0, kGreatestPreload};
    case BenchQuestion::Name:
    case BenchQuestion::ScaleUnit:
    case BenchQuestion::Division:
    case BenchQuestion::Release:
    case BenchQuestion::Known:
    case BenchQuestion::Springs:
        break;
    }
    return {0, 0};
}

double factorOf(BenchQuestion question, const BenchAnswers& answers, UnitSystem units) {
    switch (question) {
    case BenchQuestion::LongestSeam:
    case BenchQuestion::ThinnestSheet:
    case BenchQuestion::ThickestSheet:
        return lengthFactor(units);
    case BenchQuestion::Rate:
        return rateFactor(units, answers.unit);
    case BenchQuestion::Preload:
        return forceFactor(units);
    case BenchQuestion::Name:
    case BenchQuestion::ScaleUnit:
    case BenchQuestion::ScaleEnd:
    case BenchQuestion::Division:
    case BenchQuestion::Release:
    case BenchQuestion::Known:
    case BenchQuestion::Zero:
    case BenchQuestion::Springs:
        break;
    }
    return 1;
}

std::optional<double>* numberOf(BenchAnswers& answers, BenchQuestion question) {
    switch (question) {
    case BenchQuestion::LongestSeam:
        return &answers.longestMm;
    case BenchQuestion::ThinnestSheet:
        return &answers.thinnestMm;
    case BenchQuestion::ThickestSheet:
        return &answers.thickestMm;
    case BenchQuestion::ScaleEnd:
        return &answers.end;
    case BenchQuestion::Division:
        return &answers.division;
    case BenchQuestion::Zero:
        return &answers.zero;
    case BenchQuestion::Rate:
        return &answers.rateN;
    case BenchQuestion::Preload:
        return &answers.preloadN;
    case BenchQuestion::Name:
    case BenchQuestion::ScaleUnit:
    case BenchQuestion::Release:
    case BenchQuestion::Known:
    case BenchQuestion::Springs:
        break;
    }
    return nullptr;
}

std::optional<double> numberIn(const BenchAnswers& answers, BenchQuestion question) {
    BenchAnswers copy = answers;
    const std::optional<double>* number = numberOf(copy, question);
    return number == nullptr ? std::nullopt : *number;
}

/// What stays the same for the life of the bench, of the allowed signs of its name.
std::string idFor(const QString& name, const std::set<std::string>& taken) {
    std::string own;
    for (const QChar sign : name.normalized(QString::NormalizationForm_KD).toLower()) {
        const char plain = sign.toLatin1();
        if ((plain >= 'a' && plain <= 'z') || (plain >= '0' && plain <= '9')) {
            own += plain;
        } else if (sign.isSpace() && !own.empty() && own.back() != '-') {
            own += '-';
        }
    }
    while (!own.empty() && own.back() == '-') {
        own.pop_back();
    }
    own = own.empty() ? "bench" : own.substr(0, 30);
    std::string id = own;
    for (int i = 2; taken.count(id) > 0; ++i) {
        id = own + "-" + std::to_string(i);
    }
    return id;
}

} // namespace

std::vector<double> offeredDivisions(const std::string& unit) {
    return unit == "in" ? std::vector<double>{0.01, 0.02, 0.05, 0.1, 0.125, 0.25}
                        : std::vector<double>{0.1, 0.2, 0.5, 1, 2, 5};
}

std::vector<BenchQuestion> questionsOf(const BenchAnswers& answers, UnitSystem units) {
    std::vector<BenchQuestion> all{
        BenchQuestion::Name, BenchQuestion::LongestSeam, BenchQuestion::ThinnestSheet,
        BenchQuestion::ThickestSheet};
    if (isInches(units)) {
        all.push_back(BenchQuestion::ScaleUnit);
    }
    for (const BenchQuestion one :
         {BenchQuestion::ScaleEnd, BenchQuestion::Division, BenchQuestion::Release,
          BenchQuestion::Known}) {
        all.push_back(one);
    }
    if (!answers.calibrates.value_or(false)) { // else all of them come from its points
        for (const BenchQuestion one :
             {BenchQuestion::Zero, BenchQuestion::Springs, BenchQuestion::Rate,
              BenchQuestion::Preload}) {
            all.push_back(one);
        }
    }
    return all;
}

bool isAnswered(const BenchAnswers& answers, BenchQuestion question) {
    switch (question) {
    case BenchQuestion::Name:
        return !answers.name.isEmpty();
    case BenchQuestion::ScaleUnit:
        return !answers.unit.empty();
    case BenchQuestion::Release:
        return !answers.release.empty() && answers.release.back() == releaseSteps().back();
    case BenchQuestion::Known:
        return answers.calibrates.has_value();
    case BenchQuestion::Springs:
        return answers.springs.has_value();
    case BenchQuestion::LongestSeam:
    case BenchQuestion::ThinnestSheet:
    case BenchQuestion::ThickestSheet:
    case BenchQuestion::ScaleEnd:
    case BenchQuestion::Division:
    case BenchQuestion::Zero:
    case BenchQuestion::Rate:
    case BenchQuestion::Preload:
        break;
    }
    return numberIn(answers, question).has_value();
}

std::optional<BenchQuestion> nextQuestion(const BenchAnswers& answers, UnitSystem units) {
    for (const BenchQuestion question : questionsOf(answers, units)) {
        if (!isAnswered(answers, question)) {
            return question;
        }
    }
    return std::nullopt;
}

void forget(BenchAnswers& answers, BenchQuestion question) {
    if (std::optional<double>* number = numberOf(answers, question)) {
        number->reset();
    }
    switch (question) {
    case BenchQuestion::Name:
        answers.name.clear();
        break;
    case BenchQuestion::ThinnestSheet: // the thickest is judged by it
        answers.thickestMm.reset();
        break;
    case BenchQuestion::ScaleUnit:
        answers.unit.clear();
        answers.end.reset();
        answers.division.reset();
        answers.zero.reset();
        answers.rateN.reset();
        break;
    case BenchQuestion::ScaleEnd:
    case BenchQuestion::Division:
        answers.zero.reset();
        break;
    case BenchQuestion::Release:
        answers.release.clear();
        break;
    case BenchQuestion::Known:
        answers.calibrates.reset();
        break;
    case BenchQuestion::Springs:
        answers.springs.reset();
        break;
    case BenchQuestion::LongestSeam:
    case BenchQuestion::ThickestSheet:
    case BenchQuestion::Zero:
    case BenchQuestion::Rate:
    case BenchQuestion::Preload:
        break;
    }
}

NumberTask benchTask(BenchQuestion question, const BenchAnswers& answers, UnitSystem units) {
    NumberTask task;
    task.what = NumberFor::BenchValue;
    NumberView& view = task.view;
    const QString scaleUnit = scaleUnitOf(answers);
    view.unit = lengthUnit(units);
    task.decimals = isInches(units) ? 3 : 1;
    view.title = questionWord(question);
    switch (question) {
    case BenchQuestion::LongestSeam:
        view.where = tr("The longest that fits between the clamps.");
        break;
    case BenchQuestion::ThinnestSheet:
        view.where = tr("The thinnest sheet that the clamps hold.");
        break;
    case BenchQuestion::ThickestSheet:
        view.where = tr("The thickest sheet that the clamps hold.");
        break;
    case BenchQuestion::ScaleEnd:
        view.where = tr("The last reading that is printed on the scale.");
        view.unit = scaleUnit;
        break;
    case BenchQuestion::Zero:
        view.where = tr("What the scale reads without any force.");
        view.unit = scaleUnit;
        task.decimals = 3;
        break;
    case BenchQuestion::Rate:
        view.where = answers.springs.value_or(1) > 1
                         ? tr("Of one spring, as its plate says. The springs add.")
                         : tr("As the spring's or the machine's plate says.");
        view.unit = isInches(units) ? QStringLiteral("lbf/in") : QStringLiteral("N/mm");
        task.decimals = 3;
        break;
    case BenchQuestion::Preload:
        view.where = tr("What the springs lose before the faces press. 0 if nothing.");
        view.unit = isInches(units) ? QStringLiteral("lbf") : QStringLiteral("N");
        task.decimals = 1;
        break;
    case BenchQuestion::Name:
    case BenchQuestion::ScaleUnit:
    case BenchQuestion::Division:
    case BenchQuestion::Release:
    case BenchQuestion::Known:
    case BenchQuestion::Springs:
        break;
    }
    const Range range = rangeOf(question, answers);
    const double factor = factorOf(question, answers, units);
    task.least = inward(range.low / factor, task.decimals, true);
    task.most = inward(range.high / factor, task.decimals, false);
    view.allowed = tr("allowed %1 to %2 %3")
                       .arg(
                           shortNumber(task.least, task.decimals),
                           shortNumber(task.most, task.decimals), view.unit);
    return task;
}

void take(BenchAnswers& answers, BenchQuestion question, double typed, UnitSystem units) {
    std::optional<double>* number = numberOf(answers, question);
    if (number == nullptr) {
        return;
    }
    const double factor = factorOf(question, answers, units);
    constexpr double kMicrometre = 1e-3; // of a millimetre
    constexpr double kMicronewton = 1e-6;
    const double value = typed * factor;
    *number = factor == 1
                  ? value
                  : rounded(
                        value, question == BenchQuestion::Rate || question == BenchQuestion::Preload
                                   ? kMicronewton
                                   : kMicrometre);
}

QString questionWord(BenchQuestion question) {
    switch (question) {
    case BenchQuestion::Name:
        return tr("Name of the bench");
    case BenchQuestion::LongestSeam:
        return tr("Longest seam");
    case BenchQuestion::ThinnestSheet:
        return tr("Thinnest sheet");
    case BenchQuestion::ThickestSheet:
        return tr("Thickest sheet");
    case BenchQuestion::ScaleUnit:
        return tr("Unit of the scale");
    case BenchQuestion::ScaleEnd:
        return tr("End of the scale");
    case BenchQuestion::Division:
        return tr("Smallest division");
    case BenchQuestion::Release:
        return tr("Order of release");
    case BenchQuestion::Known:
        return tr("Force by");
    case BenchQuestion::Zero:
        return tr("Reading without force");
    case BenchQuestion::Springs:
        return tr("Springs");
    case BenchQuestion::Rate:
        return tr("Rate of a spring");
    case BenchQuestion::Preload:
        return tr("Lost before the faces press");
    }
    return {};
}

QString answerText(const BenchAnswers& answers, BenchQuestion question, UnitSystem units) {
    if (!isAnswered(answers, question)) {
        return tr("not told yet");
    }
    switch (question) {
    case BenchQuestion::Name:
        return answers.name;
    case BenchQuestion::ScaleUnit:
        return fromUtf8(answers.unit);
    case BenchQuestion::Release: {
        QStringList words;
        for (const std::string& step : answers.release) {
            words << releaseDoneWord(step);
        }
        return words.join(QStringLiteral(", "));
    }
    case BenchQuestion::Known:
        return *answers.calibrates ? tr("calibration") : tr("rate from its plate");
    case BenchQuestion::Springs:
        return QString::number(*answers.springs);
    case BenchQuestion::Division:
    case BenchQuestion::LongestSeam:
    case BenchQuestion::ThinnestSheet:
    case BenchQuestion::ThickestSheet:
    case BenchQuestion::ScaleEnd:
    case BenchQuestion::Zero:
    case BenchQuestion::Rate:
    case BenchQuestion::Preload:
        break;
    }
    const NumberTask task = benchTask(question, answers, units);
    const QString unit =
        question == BenchQuestion::Division ? scaleUnitOf(answers) : task.view.unit;
    const double value = *numberIn(answers, question) / factorOf(question, answers, units);
    return shortNumber(value, 3) + QLatin1Char(' ') + unit;
}

std::string benchDocument(const BenchAnswers& answers, const std::set<std::string>& taken) {
    JsonDraft draft = emptyBench();
    const auto number = [&draft](const std::string& pointer, const std::optional<double>& value) {
        if (value) {
            draft.setNumber(pointer, plainNumber(*value));
        }
    };
    draft.setText("/id", idFor(answers.name, taken));
    draft.setText("/name", answers.name.toStdString());
    number("/longest_seam_mm", answers.longestMm);
    number("/thinnest_sheet_mm", answers.thinnestMm);
    number("/thickest_sheet_mm", answers.thickestMm);
    for (const char* const unknown : {"/drive", "/plate", "/force_N", "/gap/cap_mm"}) {
        draft.remove(unknown);
    }
    draft.setNumber("/gap/floor_mm", "0");
    const std::string unit = answers.unit.empty() ? "mm" : answers.unit;
    draft.setText("/scale/unit", unit);
    number("/scale/end", answers.end);
    number("/scale/division", answers.division);
    const int springs = answers.springs.value_or(1);
    if (answers.calibrates.value_or(false)) {
        draft.remove("/scale/springs");
        draft.remove("/scale/zero");
        draft.remove("/scale/preload_N");
        draft.put("/calibration", R"({"points": [{}, {}, {}]})");
    } else {
        number("/scale/zero", answers.zero);
        number("/scale/preload_N", answers.preloadN);
        draft.put("/scale/springs", "[]");
        for (int i = 0; i < springs; ++i) {
            const std::string item = "/scale/springs/" + std::to_string(i);
            draft.insert(item, "{}");
            number(item + "/rate_N_per_unit", answers.rateN);
        }
        if (unit != "mm" && answers.rateN) {
            draft.setNumber(
                "/scale/rate_N_per_mm",
                plainNumber(rounded(springs * *answers.rateN / kMmPerInch, 1e-3)));
        }
    }
    draft.put("/release_order", "[]");
    for (std::size_t i = 0; i < answers.release.size(); ++i) {
        draft.insert("/release_order/" + std::to_string(i), "\"" + answers.release[i] + "\"");
    }
    return draft.text();
}

// ---- while it is not whole

BenchAnswers readAnswers(const QString& file) {
    if (file.isEmpty()) {
        return {};
    }
    QSettings settings(file, QSettings::IniFormat);
    settings.beginGroup(QLatin1String(kGroup));
    BenchAnswers answers;
    const auto number = [&settings](const char* key) -> std::optional<double> {
        bool isNumber = false;
        const double value = settings.value(QLatin1String(key)).toDouble(&isNumber);
        return isNumber ? std::optional(value) : std::nullopt;
    };
    answers.name = settings.value("name").toString();
    answers.longestMm = number("longest_mm");
    answers.thinnestMm = number("thinnest_mm");
    answers.thickestMm = number("thickest_mm");
    const QString unit = settings.value("unit").toString();
    answers.unit = unit == "mm" || unit == "in" ? unit.toStdString() : std::string();
    answers.end = number("end");
    answers.division = number("division");
    answers.zero = number("zero");
    for (const QString& step : settings.value("release").toStringList()) {
        answers.release.push_back(step.toStdString());
    }
    if (settings.contains("calibrates")) {
        answers.calibrates = settings.value("calibrates").toBool();
    }
    if (const auto springs = number("springs")) {
        answers.springs = std::clamp(static_cast<int>(*springs), 1, 4);
    }
    answers.rateN = number("rate_N");
    answers.preloadN = number("preload_N");
    return answers;
}

void writeAnswers(const BenchAnswers& answers, const QString& file) {
    if (file.isEmpty()) {
        return;
    }
    QSettings settings(file, QSettings::IniFormat);
    settings.remove(QLatin1String(kGroup));
    settings.beginGroup(QLatin1String(kGroup));
    const auto put = [&settings](const char* key, const std::optional<double>& value) {
        if (value) {
            settings.setValue(QLatin1String(key), *value);
        }
    };
    settings.setValue("name", answers.name);
    put("longest_mm", answers.longestMm);
    put("thinnest_mm", answers.thinnestMm);
    put("thickest_mm", answers.thickestMm);
    settings.setValue("unit", fromUtf8(answers.unit));
    put("end", answers.end);
    put("division", answers.division);
    put("zero", answers.zero);
    QStringList release;
    for (const std::string& step : answers.release) {
        release << fromUtf8(step);
    }
    settings.setValue("release", release);
    if (answers.calibrates) {
        settings.setValue("calibrates", *answers.calibrates);
    }
    if (answers.springs) {
        settings.setValue("springs", *answers.springs);
    }
    put("rate_N", answers.rateN);
    put("preload_N", answers.preloadN);
}

void dropAnswers(const QString& file) {
    if (!file.isEmpty()) {
        QSettings(file, QSettings::IniFormat).remove(QLatin1String(kGroup));
    }
}

} // namespace seamclock
