// Jobs as they are shown: each with how far it is, its seams with their state in a word, a shape
// and what it rests on; a table's faults by line; a batch of sheet with the joints it is in.
#pragma once

#include "app/daylog/day_view.h"
#include "app/pages/list_page.h"
#include "core/log/batches.h"
#include "core/session/job_state.h"
#include "core/shift/job_csv.h"

#include <QString>
#include <string>
#include <vector>

namespace seamclock {

QString stateText(JobSeamState state);
struct StateLook {
    Mark mark = Mark::Open;
    Tone tone = Tone::Rest;
};
StateLook lookOf(JobSeamState state);

/// "PE-HD, 15 mm, 1130 mm long"
QString seamSheets(const JobSeam& seam);

/// The jobs of these seams by their names, in the order in which they come; "" is one, too.
std::vector<std::string> jobsOf(const std::vector<JobSeam>& seams);
/// `unread`: a sentence for each seam that the log keeps and that can't be read.
ListView jobList(
    const std::vector<JobSeam>& seams, const JobProgress& progress,
    const std::vector<std::string>& unread = {});
/// One job's; `places`: of each row, which of `seams` it is.
ListView seamList(
    const std::string& job, const std::vector<JobSeam>& seams, const JobProgress& progress,
    const DayNames& names, std::vector<std::size_t>& places);

/// What a table holds, or what is wrong with it.
ListView tableList(const QString& file, const std::string& job, const JobCsv& table);

QString batchWord(const SheetBatch& sheet);
std::vector<ListRowView> batchRows(const BatchFound& found, const DayNames& names);
/// The sheets of one joint.
std::vector<ListRowView> sheetRows(const std::vector<SheetBatch>& sheets);

} // namespace seamclock
