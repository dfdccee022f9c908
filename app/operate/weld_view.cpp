#include "app/operate/weld_view.h"

#include "app/operate/weld_checks.h"
#include "app/operate/weld_ending.h"
#include "app/operate/weld_interrupted.h"
#include "app/operate/weld_phases.h"
#include "app/operate/weld_ribbon.h"
#include "app/operate/weld_side_slots.h"
#include "app/text/numbers.h"
#include "app/text/words.h"
#include "core/session/carry.h"
#include "core/weld/force_check.h"
#include "core/weld/intent.h"

#include <QCoreApplication>
#include <algorithm>

namespace seamclock {
namespace {

// What one press stores follows within this.
constexpr Milliseconds kOnePress{100};

struct Operate {
    Q_DECLARE_TR_FUNCTIONS(Operate)
};

struct SeamPlace {
    std::size_t seam = 0;
    std::int64_t um = 0;       // from that seam's beginning
    std::int64_t beforeUm = 0; // of all seams before it
};

/// Each seam has one, and each further one goes to the seam that has the fewest for its length;
/// along a seam they stand evenly. `places`: as many as seams, or more.
SeamPlace placeOf(const std::vector<std::int64_t>& lengths, int places, int place) {
    std::vector<int> each(lengths.size(), 1);
    for (int more = static_cast<int>(lengths.size()); more < places; ++more) {
        std::size_t widest = 0;
        for (std::size_t i = 1; i < lengths.size(); ++i) {
            if (lengths[i] * each[widest] > lengths[widest] * each[i]) {
                widest = i;
            }
        }
        ++each[widest];
    }
    SeamPlace there;
    while (there.seam + 1 < lengths.size() && place >= each[there.seam]) {
        place -= each[there.seam];
        there.beforeUm += lengths[there.seam];
        ++there.seam;
    }
    there.um =
        lengths[there.seam] * (2 * std::int64_t{place} + 1) / (2 * std::int64_t{each[there.seam]});
    return there;
}

/// Whether that event was made again because the step it belongs to was set earlier.
bool isMadeAgain(const Weld& weld, std::int64_t n, std::int64_t step) {
    if (n < 2) {
        return false;
    }
    const Event& before = weld.events[static_cast<std::size_t>(n - 2)];
    const Instant& again = weld.events[static_cast<std::size_t>(n - 1)].at;
    const auto* earlier = std::get_if<StepBackdated>(&before.d);
    return earlier != nullptr && earlier->targetN == step && before.at.bootId == again.bootId &&
           again.boot - before.at.boot <= kOnePress; // else it is the next press
}

} // namespace

int platePlacesRead(const Weld& weld, PlateRead places) {
    int read = 0;
    for (const Retained& event : retained(weld.events)) {
        const auto* made = std::get_if<CheckMade>(&event.d);
        if (made == nullptr || made->check != "plate_temperature") {
            continue;
        }
        if (made->passed) {
            ++read;
        } else if (!made->valueMc) {
            read = 0; // set aside, to be read anew
        }
    }
    return std::min(read, static_cast<int>(platePlaces(places).size()));
}

const PlatePlace& plateToRead(const Weld& weld, PlateRead places) {
    const auto& all = platePlaces(places);
    const auto read = static_cast<std::size_t>(platePlacesRead(weld, places));
    return all[std::min(read, all.size() - 1)];
}

QString platePlaceText(const Weld& weld, PlateRead places) {
    const auto& all = platePlaces(places);
    const PlatePlace& now = plateToRead(weld, places);
    const int read = platePlacesRead(weld, places);
    const int count = static_cast<int>(all.size());
    const QString where = placeWord(now.place);
    const QString text =
        Operate::tr("Place %1 of %2: %3.").arg(std::min(read + 1, count)).arg(count);
    return text.arg(
        now.face.empty() ? where : Operate::tr("%1, %2").arg(where, plateFaceWord(now.face)));
}

std::vector<std::string> checksCarried(const Weld& weld) {
    std::vector<std::string> carried;
    const auto standing = retained(weld.events);
    for (const std::string& check : weld.plan.checks) {
        bool is = false;
        for (const Retained& event : standing) {
            const auto* made = std::get_if<CheckMade>(&event.d);
            const auto* left = std::get_if<CheckOverridden>(&event.d);
            if (made != nullptr && made->check == check) {
                is = made->passed && made->takenUtc.has_value();
            } else if (left != nullptr && left->check == check) {
                is = false;
            }
        }
        if (is) {
            carried.push_back(check);
        }
    }
    return carried;
}

int beadPlaces(const Weld& weld) {
    const std::size_t seams = std::max<std::size_t>(weld.opened().lengthsUm.size(), 1);
    const auto asked = weld.opened().beadPlaces.value_or(1);
    return static_cast<int>(std::max<std::int64_t>(asked, static_cast<std::int64_t>(seams)));
}

int beadPlacesMeasured(const Weld& weld) {
    const auto standing = retained(weld.events);
    return static_cast<int>(
        std::count_if(standing.begin(), standing.end(), [](const Retained& event) {
            return std::holds_alternative<BeadMeasured>(event.d);
        }));
}

std::optional<std::int64_t> beadPlaceUm(const Weld& weld, int place) {
    const int places = beadPlaces(weld);
    if (places == 1) {
        return std::nullopt;
    }
    const SeamPlace there = placeOf(weld.opened().lengthsUm, places, place);
    return there.beforeUm + there.um;
}

QString beadPlaceText(const Weld& weld) {
    const int places = beadPlaces(weld);
    const int place = std::min(beadPlacesMeasured(weld), places - 1);
    if (places == 1) {
        return {};
    }
    const std::vector<std::int64_t>& lengths = weld.opened().lengthsUm;
    if (places == static_cast<int>(lengths.size())) {
        return Operate::tr("Seam %1 of %2: ").arg(place + 1).arg(places);
    }
    const SeamPlace there = placeOf(lengths, places, place);
    const QString at = millimetresText(there.um);
    return lengths.size() < 2
               ? Operate::tr("Place %1 of %2, at %3 mm: ").arg(place + 1).arg(places).arg(at)
               : Operate::tr("Place %1 of %2, seam %3 at %4 mm: ")
                     .arg(place + 1)
                     .arg(places)
                     .arg(there.seam + 1)
                     .arg(at);
}

std::string checkAsked(
    const Weld& weld, const Preparing& state, PlateRead places,
    const std::optional<std::int64_t>& markedMilli) {
    const int read = platePlacesRead(weld, places);
    const auto standing = retained(weld.events);
    const bool allowed = std::any_of(standing.begin(), standing.end(), [](const Retained& event) {
        const auto* passedOver = std::get_if<CheckOverridden>(&event.d);
        return passedOver != nullptr && passedOver->check == "plate_temperature";
    });
    if (!allowed && read > 0 && read < static_cast<int>(platePlaces(places).size())) {
        return "plate_temperature";
    }
    if (isForceAsked(weld, markedMilli)) {
        return kDrag;
    }
    return state.openChecks.empty() ? std::string() : state.openChecks.front();
}

std::vector<Retained> lastPress(const Weld& weld) {
    const auto standing = retained(weld.events);
    const auto pressedAt = [&weld](const Retained& event) -> const Instant& {
        return weld.events[static_cast<std::size_t>(event.n - 1)].at;
    };
    std::vector<Retained> press;
    for (auto event = standing.rbegin(); event != standing.rend(); ++event) {
        if (!isTakeable(event->d)) {
            continue;
        }
        const auto* check = std::get_if<CheckMade>(&event->d);
        if (check != nullptr && (check->takenUtc || check->place == kOutlived)) {
            break; // nobody pressed it here
        }
        const bool same =
            press.empty() || (pressedAt(*event).bootId == pressedAt(press.front()).bootId &&
                              pressedAt(press.front()).boot - pressedAt(*event).boot <= kOnePress);
        if (!same && !isMadeAgain(weld, press.back().n, event->n)) {
            break;
        }
        press.push_back(*event);
    }
    return press;
}

WeldView weldView(const Weld& weld, const ViewContext& context) {
    Sketch s{weld, context, retained(weld.events)};
    WeldView& view = s.view;
    view.cell.letter = context.letter;
    view.cell.phase = phaseWord(weld.state);
    view.onto = lastTakeable(weld);
    const auto t = weldTimeAt(weld, context.now);
    view.ribbon = ribbonOf(s, t.value_or(WeldTime{}));
    if (!t) {
        tellPowerWasOff(s);
    } else {
        s.t = *t;
        std::visit([&s](const auto& state) { tell(s, state); }, weld.state);
    }
    tellSideSlots(s);
    view.cell.mark = view.lamp.mark;
    view.cell.tone = view.lamp.tone;
    view.cell.fraction = view.lamp.fraction;
    view.step.view.large = true;
    view.step.view.pedal = context.pedal;
    view.step.view.pedalText = Operate::tr("pedal");
    return std::move(s.view);
}

} // namespace seamclock
