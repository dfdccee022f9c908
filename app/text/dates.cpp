#include "app/text/dates.h"

#include <QCoreApplication>
#include <QLocale>

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

} // namespace seamclock
