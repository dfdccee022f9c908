// How a day is written where people read it, on a screen and on paper; files for programs, and the
// names of files, have it as core writes it. Qt knows a language's long and short dates, both with
// the year; a list of days and a decision leave the year out, and the order of day and month, their
// points and little words are the language's all the same: the pattern is a phrase like any other.
#pragma once

#include <QDate>
#include <QString>
#include <string_view>

namespace seamclock {

/// "Mon 7 January"
QString dayWords(const QDate& day);
/// "7 Jan"
QString shortDayWords(const QDate& day);
/// "7 Jan 2030", in German "07.01.2030"
QString fullDayWords(const QDate& day);
/// The same of "2030-01-07", as core writes a day; another text stands as it is, on one line.
QString fullDayWords(std::string_view isoDay);
/// A sentence with every "2030-01-07" in it written so.
QString withFullDays(const QString& sentence);

} // namespace seamclock
