// The demo shop: a whole invented shop in a folder of its own, to look round in. Job and benches
// are copies of those that came with the program; its people have PINs that are no secret; its log
// is a practice log, filled by the virtual operator, so that no joint of it can ever enter a shop's
// own log, not even by import. The same seed gives the same days.
//
// What belongs to it is known by name: the files that its mark lists, its logs with what stands
// beside them, and of its papers those that the list in their folder has (core/base/made_files.h)
// and that are still as they were written. Removing it takes those and nothing else: a link is
// taken away and never followed, what a stranger put there stays, and a folder without the mark is
// not touched.
// It is made beside its place and moved there when it is whole.
#pragma once

#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/procedure/procedure_codec.h"

#include <cstdint>
#include <string>
#include <vector>

namespace seamclock {

struct DemoOrder {
    std::string folder; // where it is to stand; what leads there is made
    std::string source; // the folder of the demo's job and benches
    std::vector<ProcedureDocument> procedures;
    int days = 5; // of joints in its log; 1 to kMostDemoDays
    std::uint64_t seed = 1;
};

/// Somebody who works there. The first is the foreman.
struct DemoPerson {
    std::string id; // "person:…"
    std::string name;
    std::string pin;

    bool operator==(const DemoPerson&) const = default;
};
const std::vector<DemoPerson>& demoPeople();

enum class DemoFolder {
    None,
    Whole,
    Half,    // ours, but not whole: a removal was cut off
    Stranger // something else stands at its place
};
/// A link is a stranger.
DemoFolder lookAtDemo(const std::string& folder);

std::string demoLogOf(const std::string& folder);         // FOLDER/joints.seamlog
std::string demoPracticeLogOf(const std::string& folder); // FOLDER/practice.seamlog
std::string demoPapersOf(const std::string& folder);      // FOLDER/papers
/// Whether a log lies in a demo shop.
bool isOfDemo(const std::string& log);

/// Takes some seconds: not on a thread that paints. Conflict: something stands there already.
/// NotWritten: the folder can't be written. Otherwise as readFirstJob, DemoDays::plan and
/// rehearseSeries; nothing stands at its place then.
Result<void> makeDemoShop(const DemoOrder& order);

/// How many entries of the folder and of its papers are not the demo's: they stay, and the folder
/// with them; 0: it is gone. Foreign: a stranger. Conflict: another program has its log.
/// NotWritten: something can't be taken away; what is left is Half, and can be removed again.
Result<int> removeDemoShop(const std::string& folder);

/// The wall clock when the last row of a log was written, from which its own time goes on. Errors
/// as LogReader. Missing: it has no row.
Result<Milliseconds> lastOf(const std::string& log);

} // namespace seamclock
