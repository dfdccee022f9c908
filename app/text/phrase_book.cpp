#include "app/text/phrase_book.h"

#include "app/text/dates.h"
#include "app/text/language.h"
#include "app/text/record_words.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <QFile>
#include <QHash>
#include <QLocale>
#include <QRegularExpression>
#include <algorithm>
#include <array>
#include <mutex>
#include <optional>
#include <utility>

namespace seamclock {
namespace {

struct PhraseBook {
    Q_DECLARE_TR_FUNCTIONS(PhraseBook)
};

constexpr int kMostKept = 512;       // sentences, of which a screen asks again and again
constexpr qsizetype kLongest = 4000; // signs; no sentence of core's is so long
constexpr const char* kNumber = "([-+]?\\d(?:[\\d.,eE+-]*\\d)?)(?![\\d.,]*\\d)";
constexpr const char* kText = "(.+?)";

/// A sentence with places for values.
class Template {
    enum class Kind { Text, Number, Name };

public:
    explicit Template(const QString& line) : m_line(line) {
        static const QRegularExpression kValue(QStringLiteral("\\{[#=]?\\}"));
        qsizetype at = 0;
        auto all = kValue.globalMatch(line);
        while (all.hasNext()) {
            const auto value = all.next();
            m_own << line.mid(at, value.capturedStart() - at);
            m_kinds.push_back(
                value.captured() == QLatin1String("{#}")   ? Kind::Number
                : value.captured() == QLatin1String("{=}") ? Kind::Name
                                                           : Kind::Text);
            at = value.capturedEnd();
        }
        m_own << line.mid(at);
        for (const QString& own : m_own) {
            m_weight += static_cast<int>(own.size());
            m_longest = own.size() > m_longest.size() ? own : m_longest;
        }
    }

    const QString& line() const { return m_line; }
    int weight() const { return m_weight; }

    /// The values, if it fits from end to end.
    std::optional<QStringList> fit(const QString& sentence) const {
        const auto least = static_cast<qsizetype>(m_kinds.size()) + m_weight;
        if (sentence.size() < least || !sentence.startsWith(m_own.front()) ||
            !sentence.endsWith(m_own.back()) || !sentence.contains(m_longest)) {
            return std::nullopt;
        }
        const auto match = pattern().match(sentence);
        if (!match.hasMatch()) {
            return std::nullopt;
        }
        return match.capturedTexts().mid(1);
    }

    /// As it stands before a translator: "%1 is empty".
    QByteArray source() const {
        QString out = m_own.front();
        for (qsizetype i = 1; i < m_own.size(); ++i) {
            out += QLatin1Char('%') + QString::number(i) + m_own[i];
        }
        return out.toUtf8();
    }

    /// It stays as it was given: "{=}", or in quotation marks.
    bool isName(qsizetype value) const {
        return m_kinds[static_cast<std::size_t>(value)] == Kind::Name || isQuoted(value);
    }
    bool isQuoted(qsizetype value) const {
        return m_own[value].endsWith(QLatin1Char('"')) &&
               m_own[value + 1].startsWith(QLatin1Char('"'));
    }

private:
    const QRegularExpression& pattern() const {
        if (!m_pattern) {
            QString text = QRegularExpression::escape(m_own.front());
            for (qsizetype i = 1; i < m_own.size(); ++i) {
                const bool number = m_kinds[static_cast<std::size_t>(i) - 1] == Kind::Number;
                text +=
                    QLatin1String(number ? kNumber : kText) + QRegularExpression::escape(m_own[i]);
            }
            m_pattern = QRegularExpression(
                QRegularExpression::anchoredPattern(text),
                QRegularExpression::DotMatchesEverythingOption);
        }
        return *m_pattern;
    }

    QString m_line;
    QStringList m_own; // its own text, before, between and after the values
    std::vector<Kind> m_kinds;
    QString m_longest;
    int m_weight = 0;
    mutable std::optional<QRegularExpression> m_pattern; // made when it may fit for the first time
};

const std::vector<Template>& templates() {
    static const std::vector<Template> kTemplates = [] {
        std::vector<Template> all;
        for (const QString& line : phrasesOfCore()) {
            all.emplace_back(line);
        }
        std::stable_sort(all.begin(), all.end(), [](const Template& one, const Template& other) {
            return one.weight() > other.weight();
        });
        return all;
    }();
    return kTemplates;
}

QString translated(const QByteArray& source) {
    return QCoreApplication::translate("PhraseBook", source.constData());
}

/// "%1" and so on by the values; what looks like one inside a value stays.
QString filled(const QString& text, const QStringList& values) {
    QString out;
    for (qsizetype i = 0; i < text.size(); ++i) {
        const int place =
            text[i] == QLatin1Char('%') && i + 1 < text.size() ? text[i + 1].digitValue() : 0;
        if (place >= 1 && place <= values.size()) {
            out += values[place - 1];
            ++i;
        } else {
            out += text[i];
        }
    }
    return out;
}

/// "-12.5 mm" with the decimal sign of the language and a minus that is seen.
QString numberLook(const QString& text) {
    static const QRegularExpression kPlain(
        QStringLiteral("^([-+]?)(\\d+)(?:\\.(\\d+))?((?: [^\\d\\s]\\S*)*)$"));
    const auto number = kPlain.match(text);
    if (!number.hasMatch()) {
        return text;
    }
    QString sign = number.captured(1);
    if (sign == QLatin1String("-")) {
        sign = QChar(0x2212);
    }
    const QString decimals = number.captured(3);
    return sign + number.captured(2) +
           (decimals.isEmpty() ? QString() : QLocale().decimalPoint() + decimals) +
           number.captured(4);
}

/// What no phrase fits: a number, what somebody typed in the language's quotation marks, or a text
/// as it came.
QString valueLook(const QString& text) {
    const QLatin1Char mark('"');
    if (text.size() > 2 && text.startsWith(mark) && text.endsWith(mark)) {
        return QLocale().quoteString(text.mid(1, text.size() - 2));
    }
    return numberLook(text);
}

/// What a weld's event is called when a sentence names it by its code.
QString eventWord(const QString& code) {
    using Row = std::pair<const char*, const char*>;
    static constexpr std::array kRows{
        Row{"alignment_started", QT_TRANSLATE_NOOP("PhraseBook", "alignment started")},
        Row{"soak_started", QT_TRANSLATE_NOOP("PhraseBook", "soak started")},
        Row{"plate_out", QT_TRANSLATE_NOOP("PhraseBook", "plate out")},
        Row{"faces_met", QT_TRANSLATE_NOOP("PhraseBook", "faces met")},
        Row{"pressure_locked", QT_TRANSLATE_NOOP("PhraseBook", "pressure locked")},
        Row{"release_step", QT_TRANSLATE_NOOP("PhraseBook", "release step")},
        Row{"reading_taken", QT_TRANSLATE_NOOP("PhraseBook", "reading taken")},
        Row{"check_made", QT_TRANSLATE_NOOP("PhraseBook", "check made")},
        Row{"check_overridden", QT_TRANSLATE_NOOP("PhraseBook", "check overridden")},
        Row{"joint_numbered", QT_TRANSLATE_NOOP("PhraseBook", "joint numbered")},
        Row{"bead_measured", QT_TRANSLATE_NOOP("PhraseBook", "bead measured")},
        Row{"step_taken_back", QT_TRANSLATE_NOOP("PhraseBook", "step taken back")},
        Row{"step_backdated", QT_TRANSLATE_NOOP("PhraseBook", "step backdated")},
        Row{"reason_given", QT_TRANSLATE_NOOP("PhraseBook", "reason given")},
        Row{"remark_made", QT_TRANSLATE_NOOP("PhraseBook", "remark made")},
        Row{"photo_added", QT_TRANSLATE_NOOP("PhraseBook", "photo added")},
        Row{"cue_acknowledged", QT_TRANSLATE_NOOP("PhraseBook", "signal seen")},
        Row{"plan_replaced", QT_TRANSLATE_NOOP("PhraseBook", "plan replaced")},
        Row{"weld_opened", QT_TRANSLATE_NOOP("PhraseBook", "weld opened")},
        Row{"weld_closed", QT_TRANSLATE_NOOP("PhraseBook", "weld closed")},
        Row{"weld_aborted", QT_TRANSLATE_NOOP("PhraseBook", "weld stopped")},
        Row{"value_corrected", QT_TRANSLATE_NOOP("PhraseBook", "value corrected")},
        Row{"graded", QT_TRANSLATE_NOOP("PhraseBook", "graded")},
        Row{"decided", QT_TRANSLATE_NOOP("PhraseBook", "decided")},
        Row{"signed_off", QT_TRANSLATE_NOOP("PhraseBook", "signed off")},
        Row{"recheck", QT_TRANSLATE_NOOP("PhraseBook", "recheck")}};
    const auto found = std::find_if(kRows.begin(), kRows.end(), [&code](const Row& row) {
        return code == QLatin1String(row.first);
    });
    return found == kRows.end() ? QString() : PhraseBook::tr(found->second);
}

/// A code of core's has a word in the tables of the screens; empty: it is none.
QString codeWord(const QString& code) {
    static const QRegularExpression kCode(QStringLiteral("^[a-z0-9_.A-Z]+$"));
    if (code.size() > 60 || !kCode.match(code).hasMatch()) {
        return {};
    }
    if (const QString word = eventWord(code); !word.isEmpty()) {
        return word;
    }
    // A table says a code that it doesn't know with blanks for its underscores.
    const std::string name = code.toStdString();
    QString unknown = code;
    unknown.replace(QLatin1Char('_'), QLatin1Char(' '));
    for (const QString& word :
         {stateWord(name), planValueWord(name),
          code.contains(QLatin1Char('_')) ? checkSentence(name) : checkWord(name),
          findingWord(name), phaseName(name), releaseDoneWord(name), fieldWord(name)}) {
        if (word != unknown) {
            return word;
        }
    }
    return {};
}

/// One sentence being put into words; what was tried once is not tried again.
class Wording {
public:
    QString say(const QString& text) { return said(text).words; }

private:
    struct Said {
        QString words;
        qsizetype left = 0; // letters that stayed English, as far as they look like a sentence
    };

    Said said(const QString& text) {
        if (const auto words = tried(text)) {
            return *words;
        }
        const QString look = valueLook(text);
        const bool sentence = look == text && text.trimmed().contains(QLatin1Char(' '));
        return {look, sentence ? text.size() : 0};
    }

    std::optional<Said> tried(const QString& text) {
        const auto known = m_tried.constFind(text);
        if (known != m_tried.constEnd()) {
            return *known;
        }
        m_tried.insert(text, std::nullopt);
        const std::optional<Said> words = attempt(text);
        m_tried.insert(text, words);
        return words;
    }

    std::optional<Said> attempt(const QString& text) {
        const QString bare = text.trimmed();
        if (bare.isEmpty()) {
            return std::nullopt;
        }
        if (bare.size() < text.size()) {
            auto words = tried(bare);
            if (words) {
                const qsizetype before = text.indexOf(bare);
                words->words = text.left(before) + words->words + text.mid(before + bare.size());
            }
            return words;
        }
        std::optional<Said> best = byTemplate(text);
        if (best && best->left == 0) {
            return best;
        }
        if (const QString word = codeWord(text); !word.isEmpty()) {
            return Said{word, 0};
        }
        if (text.endsWith(QLatin1Char('.'))) {
            if (auto words = tried(text.chopped(1)); words && better(*words, best)) {
                words->words += QLatin1Char('.');
                best = words;
            }
        }
        if (const auto words = parted(text); words && better(*words, best)) {
            best = words;
        }
        return best;
    }

    static bool better(const Said& words, const std::optional<Said>& best) {
        return !best || words.left < best->left;
    }

    /// Of those that fit, the one that leaves least in English; then the one with most of its own.
    std::optional<Said> byTemplate(const QString& text) {
        std::optional<Said> best;
        for (const Template& one : templates()) {
            const auto values = one.fit(text);
            if (!values) {
                continue;
            }
            Said whole;
            QStringList all;
            for (qsizetype i = 0; i < values->size(); ++i) {
                const QString& value = values->at(i);
                if (one.isName(i)) {
                    const QString word = one.isQuoted(i) && value.contains(QLatin1Char('_'))
                                             ? codeWord(value)
                                             : QString();
                    all << (word.isEmpty() ? value : word);
                } else {
                    const Said inner = said(value);
                    all << inner.words;
                    whole.left += inner.left;
                }
            }
            if (better(whole, best)) {
                whole.words = filled(translated(one.source()), all);
                best = whole;
            }
            if (best->left == 0) {
                break;
            }
        }
        return best;
    }

    /// Two sentences, or a name and a sentence, or a list: parted where least stays English.
    std::optional<Said> parted(const QString& text) {
        std::optional<Said> best;
        for (const char* joint : {": ", "; ", ". ", ", "}) {
            const QLatin1String by(joint);
            for (qsizetype at = text.indexOf(by); at > 0; at = text.indexOf(by, at + by.size())) {
                const QString before = text.left(at);
                const QString after = text.mid(at + by.size());
                if (!tried(before) && !tried(after)) {
                    continue;
                }
                const Said first = said(before);
                const Said second = said(after);
                const Said whole{first.words + by + second.words, first.left + second.left};
                if (better(whole, best)) {
                    best = whole;
                }
            }
        }
        return best;
    }

    QHash<QString, std::optional<Said>> m_tried;
};

struct Kept {
    std::mutex mutex; // of the templates' patterns too
    QHash<QString, QString> words;
    Language language = Language::English;
    QString decimalPoint;
};

Kept& kept() {
    static Kept one;
    return one;
}

} // namespace

QString inWords(const QString& english) {
    if (spoken() == Language::English || english.size() > kLongest) {
        return english;
    }
    Kept& book = kept();
    const std::lock_guard lock(book.mutex);
    if (book.language != spoken() || book.decimalPoint != QLocale().decimalPoint() ||
        book.words.size() >= kMostKept) {
        book.words.clear();
        book.language = spoken();
        book.decimalPoint = QLocale().decimalPoint();
    }
    const auto known = book.words.constFind(english);
    if (known != book.words.constEnd()) {
        return *known;
    }
    const QString words = Wording().say(english);
    book.words.insert(english, words);
    return words;
}

QString inWords(std::string_view english) {
    return inWords(fromUtf8(english));
}

QString sentenceOf(std::string_view english) {
    QString text = inWords(english);
    if (!text.isEmpty()) {
        text[0] = text[0].toUpper();
        if (!text.endsWith(QLatin1Char('.'))) {
            text += QLatin1Char('.');
        }
    }
    return text;
}

QString storedWords(std::string_view english) {
    const QString text = fromUtf8(english);
    // As core/procedure/cells.cpp writes it.
    const qsizetype attested = text.lastIndexOf(QLatin1String("; attested by "));
    const QString own = attested < 0 ? text : text.left(attested);
    const bool ours = own.contains(QLatin1Char(' ')) && phrasesOfCore().contains(own);
    QString words = ours ? inWords(own) : own;
    if (attested >= 0) {
        words += QLatin1String("; ") + withFullDays(inWords(text.mid(attested + 2)));
    }
    return words;
}

QString wordOf(std::string_view code) {
    const QString plain = fromUtf8(code);
    const QString word = codeWord(plain);
    return word.isEmpty() ? QString(plain).replace(QLatin1Char('_'), QLatin1Char(' ')) : word;
}

const QStringList& phrasesOfCore() {
    static const QStringList kLines = [] {
        QFile file(QStringLiteral(":/phrases/core_phrases.txt"));
        return file.open(QIODevice::ReadOnly)
                   ? QString::fromUtf8(file.readAll()).split(QLatin1Char('\n'), Qt::SkipEmptyParts)
                   : QStringList();
    }();
    return kLines;
}

std::vector<PhraseFit> phrasesThatFit(const QString& sentence) {
    const std::lock_guard lock(kept().mutex);
    std::vector<PhraseFit> out;
    for (const Template& one : templates()) {
        if (auto values = one.fit(sentence)) {
            out.push_back({one.line(), one.weight(), std::move(*values)});
        }
    }
    return out;
}

} // namespace seamclock
