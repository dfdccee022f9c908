// How a day is written where people read it. Qt knows a language's long and short dates, both with
// the year; a list of days and a decision leave the year out, and the order of day and month, their
// points and little words are the language's all the same: the pattern is a phrase like any other.
#pragma once

#include <QDate>
#include <QString>

namespace seamclock {

/// "Mon 7 January"
QString dayWords(const QDate& day);
/// "7 Jan"
QString shortDayWords(const QDate& day);

} // namespace seamclock
