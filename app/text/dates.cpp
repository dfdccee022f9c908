#include "app/text/dates.h"

#include "app/text/record_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QRegularExpression>

namespace seamclock {
namespace {

struct Dates {
    Q_DECLARE_TR_FUNCTIONS(Dates)
};

} // namespace

QString dayWords(const QDate& day) {
    //: Qt's pattern of a date without its year; "'de'" stands for a word
    return QLocale().toString(day, Dates::tr("ddd d MMMM"));
}

QString shortDayWords(const QDate& day) {
    //: Qt's pattern of a date without its year; "'de'" stands for a word
    return QLocale().toString(day, Dates::tr("d MMM"));
}

QString fullDayWords(const QDate& day) {
    //: Qt's pattern of a date with its year, short: it stands in narrow columns
    return QLocale().toString(day, Dates::tr("d MMM yyyy"));
}

QString fullDayWords(std::string_view isoDay) {
    const QString text = plainText(isoDay);
    const QDate day = QDate::fromString(text, Qt::ISODate);
    return day.isValid() && text.size() == 10 ? fullDayWords(day) : text;
}

QString withFullDays(const QString& sentence) {
    static const QRegularExpression kDay(QStringLiteral("\\b\\d{4}-\\d{2}-\\d{2}\\b"));
    QString out = sentence;
    qsizetype from = 0;
    for (auto found = kDay.match(out); found.hasMatch(); found = kDay.match(out, from)) {
        const QString day = fullDayWords(found.captured().toStdString());
        out.replace(found.capturedStart(), found.capturedLength(), day);
        from = found.capturedStart() + day.size();
    }
    return out;
}

} // namespace seamclock
