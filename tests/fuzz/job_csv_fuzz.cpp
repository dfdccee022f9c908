// A job's table from any bytes: it never crashes, and what it takes is what it promises to take.
#include "core/shift/job_csv.h"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

namespace {

void must(bool holds) {
    if (!holds) {
        std::abort();
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(bytes), size);
    const seamclock::JobCsvKnown known{
        {{"pe-hd-dvs2207-1-2005", {"PE-HD", 4'000, 40'000}}}, {"west"}};
    for (const auto& names : {seamclock::JobCsvKnown{}, known}) {
        const seamclock::JobCsv job = seamclock::readJobCsv(text, names);
        must(job.problems.size() <= seamclock::kMostJobCsvProblems);
        must(job.more == 0 || job.problems.size() == seamclock::kMostJobCsvProblems);
        must(job.isSound() != job.seams.empty());
        for (const auto& problem : job.problems) {
            must(!problem.text.empty() && problem.text.find('\n') == std::string::npos);
        }
        for (const auto& seam : job.seams) {
            must(!seam.label.empty() && seam.sheets.size() == 2);
            must(seam.thicknessMm > 0 && seam.thicknessMm <= 1'000);
            must(!seam.lengthsMm.empty());
            for (const double length : seam.lengthsMm) {
                must(length >= 1 && length <= 100'000);
            }
            must(!seam.dragN || (*seam.dragN >= 0 && *seam.dragN <= 100'000));
            must(names.procedures.empty() || names.procedures.count(seam.procedure) == 1);
            must(names.procedures.empty() || (seam.thicknessMm > 3.9 && seam.thicknessMm < 40.1));
        }
    }
    return 0;
}
