// The day's list as it is turned over: a leaf at a time, newest first, read from the log whenever
// it is shown, so that it is what is on disk. How a line looks is day_view's, how it is painted the
// page's.
#pragma once

#include "app/operate/day_page.h"
#include "app/operate/floor.h"
#include "core/log/joint.h"

#include <string>
#include <vector>

namespace seamclock {

class DayList {
public:
    explicit DayList(std::string log) : m_log(std::move(log)) {}

    /// The newest leaf, its first joint chosen.
    void begin();
    /// One leaf further or back; where there is none, nothing.
    void older();
    void newer();
    void choose(int row);
    /// Reads the leaf and shows it; `posts`: the benches whose readings become forces.
    void showOn(DayPage& page, const std::vector<Post>& posts);

private:
    std::string m_log;
    std::vector<JointLine> m_lines; // of the leaf that stands
    std::vector<JointKey> m_leaves; // where each leaf before this one ended
    bool m_more = false;
    int m_chosen = 0;
};

} // namespace seamclock
