// What the day log is narrowed to, as a person chose it, and how that is said. What a log is asked
// follows from it (asked()); which values there are to choose from comes from the log itself.
#pragma once

#include "app/daylog/day_view.h"
#include "app/pages/choice_page.h"
#include "core/log/joint.h"

#include <QString>
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace seamclock {

/// What can be chosen.
enum class FilterBy { Day, Bench, Verdict, Operator, Material, Job };

struct DayFilter {
    std::optional<std::string> day; // "2030-01-07"
    std::optional<std::string> bench;
    std::optional<std::string> verdict; // as stored; "": still open
    std::optional<std::string> by;
    std::optional<std::string> material;
    std::optional<std::string> job; // its name; "": this tablet's, whose file tells none
    std::vector<std::string> seams; // of that job, by their labels
    QString words;

    /// Whether anything behind "Search" is set.
    bool searches() const { return by || material || job || !words.isEmpty(); }
    bool operator==(const DayFilter&) const = default;
};

JointFilter asked(const DayFilter& filter, const DayNames& names);

/// "Tue 9 June"; "all".
QString filterText(const DayFilter& filter, FilterBy by, const DayNames& names);
/// What stands on the cell of the search: "Search", or what is searched for.
QString searchText(const DayFilter& filter, const DayNames& names);

/// The value as a person reads it.
QString valueWord(FilterBy by, const std::string& value, const DayNames& names);

/// A page with "all" first, then these values.
ChoiceView filterQuestion(
    const DayFilter& filter, FilterBy by, const std::vector<std::string>& values,
    const DayNames& names);
/// How many days are asked of a log at once; where there may be more, the last choice asks for
/// them.
inline constexpr std::size_t kMostDays = 60;
bool isEarlier(FilterBy by, const std::vector<std::string>& values, int index);
/// With the value that was chosen there; `index` 0: all.
DayFilter chosen(DayFilter filter, FilterBy by, const std::vector<std::string>& values, int index);

} // namespace seamclock
