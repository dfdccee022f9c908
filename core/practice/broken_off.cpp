#include "core/practice/broken_off.h"

#include "core/practice/lesson.h"
#include "core/weld/fold.h"

#include <algorithm>

namespace seamclock {
namespace {

constexpr const char* kStation = "station";

/// By its own events; what the station noted besides is left out.
Result<BrokenOffWeld> toldBy(const std::vector<Event>& events) {
    const auto own = std::find_if(
        events.rbegin(), events.rend(), [](const Event& event) { return event.by != kStation; });
    const auto& opened = std::get<WeldOpened>(events.front().d);
    BrokenOffWeld one;
    one.weld = events.front().subject;
    one.number = opened.number;
    one.lesson = opened.seam.value_or("");
    one.by = events.front().by;
    one.last = (own == events.rend() ? events.front() : *own).at;
    const auto weld = fold(std::vector<Event>(
        events.begin(), std::find_if(events.begin(), events.end(), [](const Event& event) {
            return std::holds_alternative<ClockBridged>(event.d) ||
                   std::holds_alternative<WeldAborted>(event.d);
        })));
    if (!weld) {
        return tl::unexpected<Error>(weld.error());
    }
    one.phase = phaseName(weld->state);
    return one;
}

Result<void> addEndedBy(std::string_view reason, LogReader& log, std::vector<BrokenOffWeld>& all) {
    JointFilter filter;
    filter.text = std::string(reason);
    std::vector<std::string> welds;
    const auto looked = log.eachJoint(filter, [&welds](const JointLine& line) {
        welds.push_back(line.weld);
        return true;
    });
    if (!looked) {
        return looked;
    }
    for (const std::string& weld : welds) {
        const auto events = log.weldEvents(weld);
        if (!events) {
            return tl::unexpected<Error>(events.error());
        }
        // The words may stand in a remark, too.
        const bool so = std::any_of(events->begin(), events->end(), [&](const Event& event) {
            const auto* aborted = std::get_if<WeldAborted>(&event.d);
            return aborted != nullptr && aborted->reason == reason;
        });
        // Opened and left at once, nothing was made of it.
        const bool untouched = reason == kLeft && events->size() <= 2;
        if (!so || untouched) {
            continue;
        }
        auto one = toldBy(*events);
        if (!one) {
            return tl::unexpected<Error>(one.error());
        }
        one->left = reason == kLeft;
        all.push_back(std::move(*one));
    }
    return {};
}

} // namespace

Result<std::vector<BrokenOffWeld>> endBrokenOff(Session<Practice>& session) {
    std::vector<BrokenOffWeld> ended;
    for (const std::string& id : session.openWelds()) {
        const Weld* weld = session.find(id);
        if (weld == nullptr || !isOfLesson(weld->opened())) {
            continue;
        }
        auto one = toldBy(weld->events);
        if (!one) {
            return tl::unexpected<Error>(one.error());
        }
        // Nobody vouches for the time that the program was gone; on the same boot there is none.
        const auto settled = session.settle(id, RebootWord::GoOnUnconfirmed, kStation);
        if (!settled) {
            return tl::unexpected<Error>(settled.error());
        }
        const auto stopped = session.act(
            id, Intent{
                    {},
                    kStation,
                    WeldAborted{
                        std::string(kBrokenOff), "the program ended in mid-weld, and the virtual "
                                                 "bench with it"}});
        if (!stopped) {
            return tl::unexpected<Error>(stopped.error());
        }
        ended.push_back(std::move(*one));
    }
    return ended;
}

Result<std::vector<BrokenOffWeld>> brokenOffIn(LogReader& log) {
    std::vector<BrokenOffWeld> all;
    for (const std::string_view reason : {kBrokenOff, kLeft}) {
        if (const auto added = addEndedBy(reason, log, all); !added) {
            return tl::unexpected<Error>(added.error());
        }
    }
    std::sort(all.begin(), all.end(), [](const BrokenOffWeld& a, const BrokenOffWeld& b) {
        return a.number < b.number;
    });
    return all;
}

} // namespace seamclock
