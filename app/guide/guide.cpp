#include "app/guide/guide.h"

#include "app/guide/alarm_list.h"

#include <QDir>
#include <QFile>
#include <QRegularExpression>
#include <algorithm>

namespace seamclock {
namespace {

constexpr int kExcerpt = 60; // letters: one line of a row on an upright tablet, with words at 200 %

/// A line of a chapter that a table of the program stands for.
constexpr const char* kCues = "<!-- table of the cues -->";
constexpr const char* kAlarms = "<!-- table of the alarms -->";

Error wrong(ErrorCode code, const QString& file, const QString& why) {
    return {code, ("the guide's \"" + file + "\": " + why).toStdString()};
}

Result<QString> filledIn(const QString& file, QString text) {
    text.replace(QLatin1String(kCues), alarmTable(cueEntries()));
    text.replace(QLatin1String(kAlarms), alarmTable(sentenceEntries()));
    static const QRegularExpression kOpen(QStringLiteral("<!-- table of [^>]*-->"));
    const auto open = kOpen.match(text);
    if (open.hasMatch()) {
        return tl::unexpected<Error>(wrong(
            ErrorCode::Malformed, file,
            "\"" + open.captured() + "\" is no table of the program; allowed: \"" + kCues +
                "\" and \"" + kAlarms + "\""));
    }
    return text;
}

/// Without what only marks it up.
QString plain(QString text) {
    static const QRegularExpression kLink(QStringLiteral("!?\\[([^\\]]*)\\]\\([^)]*\\)"));
    static const QRegularExpression kRule(QStringLiteral("\\|?( *:?-{3,}:? *\\|)+"));
    static const QRegularExpression kMarks(QStringLiteral("\\*\\*|`|^#+ |^> ?|^- |^\\d+\\. "));
    text.replace(kRule, QString());
    text.replace(kLink, QStringLiteral("\\1"));
    text.replace(kMarks, QString());
    text.replace(QLatin1Char('|'), QLatin1Char(' '));
    return text.simplified();
}

/// What a search looks through: each paragraph, item, row and heading by itself.
QStringList pieces(const QString& text) {
    QStringList all;
    QString open;
    const auto close = [&all, &open] {
        const QString done = plain(open);
        if (!done.isEmpty()) {
            all << done;
        }
        open.clear();
    };
    static const QRegularExpression kOwn(QStringLiteral("^(\\||#|- |> |\\d+\\. )"));
    for (const QString& line : text.split(QLatin1Char('\n'))) {
        if (line.trimmed().isEmpty() || kOwn.match(line).hasMatch() || line.startsWith("```")) {
            close();
        }
        if (!line.startsWith("```")) {
            open += plain(line) + QLatin1Char(' ');
        }
    }
    close();
    return all;
}

/// Whole words about the place, without dots: a row of a list is no quotation.
QString around(QString piece, qsizetype at) {
    piece.replace(QChar(0x2026), QLatin1String("..."));
    if (piece.size() <= kExcerpt) {
        return piece;
    }
    qsizetype from = std::max<qsizetype>(0, at - kExcerpt / 3);
    from = from == 0 ? 0 : std::max<qsizetype>(piece.indexOf(QLatin1Char(' '), from) + 1, 0);
    QString cut = piece.mid(from, kExcerpt + 1);
    if (from + kExcerpt < piece.size()) {
        cut.truncate(std::max<qsizetype>(cut.lastIndexOf(QLatin1Char(' ')), 1));
    }
    return cut.trimmed();
}

} // namespace

Result<Guide> readGuide(const QString& folder, const QStringList& pictures) {
    Guide guide;
    guide.pictures = pictures;
    const QStringList files = QDir(folder).entryList({"[0-9]*.md"}, QDir::Files, QDir::Name);
    for (const QString& name : files) {
        QFile file(QDir(folder).filePath(name));
        if (!file.open(QIODevice::ReadOnly)) {
            return tl::unexpected<Error>(wrong(ErrorCode::Unreadable, name, file.errorString()));
        }
        auto text = filledIn(name, QString::fromUtf8(file.readAll()));
        if (!text) {
            return tl::unexpected<Error>(text.error());
        }
        GuideChapter chapter;
        chapter.file = name;
        chapter.text = std::move(*text);
        if (!chapter.text.startsWith("# ")) {
            return tl::unexpected<Error>(wrong(
                ErrorCode::Malformed, name, "its first line is no title; allowed: \"# Title\""));
        }
        const QStringList parts = pieces(chapter.text);
        chapter.title = parts.value(0);
        chapter.about = parts.value(1);
        guide.chapters.push_back(std::move(chapter));
    }
    if (guide.chapters.empty()) {
        return fail(
            ErrorCode::Missing, "there is no chapter of the guide in \"" + folder.toStdString() +
                                    "\"; allowed: files as \"01-cautions.md\"");
    }
    return guide;
}

QStringList picturesNamed(const GuideChapter& chapter) {
    static const QRegularExpression kPicture(QStringLiteral("!\\[[^\\]]*\\]\\(([^)]*)\\.png\\)"));
    QStringList names;
    for (auto at = kPicture.globalMatch(chapter.text); at.hasNext();) {
        names << at.next().captured(1);
    }
    return names;
}

std::vector<GuideHit> findInGuide(const Guide& guide, const QString& words, int most) {
    std::vector<QRegularExpression> wanted;
    for (const QString& word : words.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        wanted.emplace_back(
            QStringLiteral("(?<!\\w)") + QRegularExpression::escape(word),
            QRegularExpression::CaseInsensitiveOption |
                QRegularExpression::UseUnicodePropertiesOption);
    }
    std::vector<GuideHit> hits;
    if (wanted.empty()) {
        return hits;
    }
    for (std::size_t i = 0; i < guide.chapters.size(); ++i) {
        for (const QString& piece : pieces(guide.chapters[i].text)) {
            const bool holds =
                std::all_of(wanted.begin(), wanted.end(), [&piece](const QRegularExpression& word) {
                    return word.match(piece).hasMatch();
                });
            if (!holds) {
                continue;
            }
            hits.push_back(
                {static_cast<int>(i), around(piece, wanted.front().match(piece).capturedStart())});
            if (static_cast<int>(hits.size()) == most) {
                return hits;
            }
        }
    }
    return hits;
}

} // namespace seamclock
