#include "app/operate/weld_side_slots.h"

#include "core/session/carry.h"
#include "core/weld/intent.h"

#include <QCoreApplication>
#include <algorithm>

namespace seamclock {
namespace {

constexpr Milliseconds kEarlier{4'000};

struct Operate {
    Q_DECLARE_TR_FUNCTIONS(Operate)
};

QString tr(const char* text) {
    return Operate::tr(text);
}

/// Only a step of a clock can have been earlier, and only once.
bool mayBeEarlier(const Sketch& s) {
    const auto press = lastPress(s.weld);
    return std::any_of(press.begin(), press.end(), [&s](const Retained& event) {
        const Instant& pressed = s.weld.events[static_cast<std::size_t>(event.n - 1)].at;
        return isOfAClock(s.weld, event.d) && pressed.boot == event.at.boot;
    });
}

void takeBack(Sketch& s) {
    Slot& back = s.view.back;
    Slot& earlier = s.view.earlier;
    back.view.text = tr("Take back");
    back.view.sign = Sign::Back;
    earlier.view.text = tr("4 s ago");
    const std::int64_t n = s.view.onto;
    const auto last = std::find_if(
        s.standing.begin(), s.standing.end(), [n](const Retained& e) { return e.n == n; });
    const auto* check = last != s.standing.end() ? std::get_if<CheckMade>(&last->d) : nullptr;
    const bool carried = check != nullptr && check->takenUtc;
    const bool nobodys = check != nullptr && check->place == kOutlived;
    if (carried && std::holds_alternative<Preparing>(s.weld.state)) {
        back.view.text = tr("Check anew");
        back.view.under = tr("e.g. another plate"); // how many stand is in the row of checks
        back.offer = CheckAnew{};
        earlier.view.look = SlotView::Look::Gone;
        return;
    }
    std::optional<Milliseconds> left;
    if (n > 0 && !carried && !nobodys && last != s.standing.end()) {
        // Of a press that was set earlier its reading is younger: whole, or not at all.
        const std::int64_t first = lastPress(s.weld).back().n;
        const Instant& pressed = s.weld.events[static_cast<std::size_t>(first - 1)].at;
        if (pressed.bootId == s.context.now.bootId) {
            left = kTakeBackWindow - (s.context.now.boot - pressed.boot);
        }
    }
    if (!left || *left < Milliseconds(0)) {
        back.view.look = earlier.view.look = SlotView::Look::Gone;
        back.view.under = n > 0 ? tr("10 s are over") : tr("nothing yet");
        return;
    }
    back.view.under = tr("%1 s left").arg((left->count() + 999) / 1000);
    back.offer = TakeBackLast{};
    earlier.view.under = tr("it was");
    if (mayBeEarlier(s)) {
        earlier.offer = SetEarlier{kEarlier};
    } else {
        earlier.view.look = SlotView::Look::Gone;
    }
}

} // namespace

bool isOfAClock(const Weld& weld, const WeldDetail& detail) {
    const auto* reading = std::get_if<ReadingTaken>(&detail);
    return isPivotal(detail) || (reading != nullptr && reading->phase == ReadingPhase::Joining &&
                                 std::holds_alternative<BuildingUp>(weld.state));
}

void tellSideSlots(Sketch& s) {
    const bool field = s.view.layout == WeldView::Layout::Changeover;
    const bool taken = std::holds_alternative<LookCloser>(s.view.back.offer);
    if (s.view.back.view.look != SlotView::Look::Hidden && !taken) {
        takeBack(s);
    }
    if (s.view.stop.view.text.isEmpty() && s.view.stop.view.look != SlotView::Look::Hidden) {
        s.view.stop =
            sideSlot(tr("Stop this weld"), tr("with a reason"), AskReason{ReasonFor::Stop, {}});
    }
    for (Slot* slot : {&s.view.back, &s.view.earlier, &s.view.stop}) {
        slot->view.onField = field;
    }
    const bool stops = std::holds_alternative<AskReason>(s.view.stop.offer) &&
                       std::get<AskReason>(s.view.stop.offer).what == ReasonFor::Stop;
    if (s.view.layout == WeldView::Layout::Check && !stops) {
        // No clock runs yet that a step could have begun earlier; the weld may be the wrong one.
        s.view.earlier = sideSlot(tr("Stop"), tr("this weld"), AskReason{ReasonFor::Stop, {}});
    }
    if (field) {
        // narrower beside the larger step: one word, no sign
        s.view.stop.view.text = tr("Stop");
        s.view.back.view.sign.reset();
    }
    if (s.view.back.view.look == SlotView::Look::Hidden) {
        s.view.earlier.view.look = SlotView::Look::Hidden;
    }
}

} // namespace seamclock
