#include "core/session/after_cut.h"

namespace seamclock {

AfterCut afterCut(const Weld& weld, const Instant& now) {
    if (now.bootId == weld.clock.bootId) {
        return AfterCut::GoesOn;
    }
    return goesOnAfterReboot(weld.state) ? AfterCut::Bridge : AfterCut::AbortByDefault;
}

Result<std::vector<WeldDetail>> settle(const Weld& weld, const Instant& now, RebootWord word) {
    const AfterCut after = afterCut(weld, now);
    std::vector<WeldDetail> said;
    if (after != AfterCut::GoesOn) {
        const auto bridge = bridgeTo(weld, now, word == RebootWord::GoOnConfirmed);
        if (!bridge) {
            return tl::unexpected<Error>(bridge.error());
        }
        said.emplace_back(**bridge);
    }
    if (word == RebootWord::Abort) {
        said.emplace_back(WeldAborted{"power_cut", "stopped by a person's word after a power cut"});
    } else if (word == RebootWord::None && after == AfterCut::AbortByDefault) {
        said.emplace_back(WeldAborted{
            "power_cut",
            "the machine was started again before the lock: cut back and plane again"});
    }
    return said;
}

} // namespace seamclock
