#include "core/session/carry.h"

#include "core/session/set_up.h"

#include <algorithm>
#include <array>

namespace seamclock {

namespace {

constexpr std::string_view kSoundHeard = "sound_heard";
constexpr std::array<std::string_view, 4> kOfTheShift{
    "plate_warm", "plate_temperature", "scale_zero", kSoundHeard};
constexpr std::array<std::string_view, 5> kOfTheSetUp{
    "gap", "first_sheet", "clamping_gap", "second_sheet", "shielded"};

template <class List>
bool isIn(const List& list, std::string_view check) {
    return std::find(list.begin(), list.end(), check) != list.end();
}

bool isOfThePlate(std::string_view check) {
    return check == "plate_warm" || check == "plate_temperature";
}

/// Whether a check of the set-up still stands; on which day it was made does not matter here.
bool isSameSetUp(const WeldOpened& one, const WeldOpened& other) {
    return setUpOf(one, Instant{}) == setUpOf(other, Instant{});
}

bool jumped(const Weld& weld) {
    return std::any_of(weld.events.begin(), weld.events.end(), [](const Event& event) {
        return std::holds_alternative<ClockJumped>(event.d) ||
               std::holds_alternative<ClockBridged>(event.d);
    });
}

/// Whether anything before that weld can still stand for that check. Times of a shift compare by
/// the wall clock, so a weld that saw it jump ends the search.
bool reaches(
    CheckHolds holds, std::string_view check, const WeldOpened& next, const Weld& weld,
    const Instant& now) {
    const WeldOpened& opened = weld.opened();
    if (opened.docs.bench != next.docs.bench || jumped(weld) ||
        weld.events.front().at.bootId != now.bootId) {
        return false;
    }
    if (holds == CheckHolds::SetUp) {
        return isSameSetUp(opened, next);
    }
    return !isOfThePlate(check) || weld.plan.plate == next.plan.plate;
}

/// What that weld says of the check: empty and `told` is false where it says nothing.
struct Said {
    bool told = false;
    std::vector<CheckMade> made;
};

Said saidOf(std::string_view check, const Weld& weld) {
    Said said;
    for (const Retained& event : retained(weld.events)) {
        const auto* left = std::get_if<CheckOverridden>(&event.d);
        if (left != nullptr && left->check == check) {
            said.told = true;
            said.made.clear();
        }
        const auto* made = std::get_if<CheckMade>(&event.d);
        if (made == nullptr || made->check != check) {
            continue;
        }
        said.told = true;
        if (!made->passed) {
            said.made.clear();
            continue;
        }
        const auto same = [made](const CheckMade& one) {
            return one.place == made->place && one.face == made->face;
        };
        said.made.erase(std::remove_if(said.made.begin(), said.made.end(), same), said.made.end());
        said.made.push_back(*made);
        said.made.back().takenUtc = made->takenUtc.value_or(event.at.utc);
    }
    return said;
}

/// When the plate was used or read last in that weld; what another one read is told by that one.
std::optional<Instant> plateUsed(const Weld& weld) {
    std::optional<Instant> last;
    for (const Retained& event : retained(weld.events)) {
        const auto* made = std::get_if<CheckMade>(&event.d);
        const bool read = made != nullptr && made->check == "plate_temperature" && made->valueMc &&
                          !made->takenUtc;
        if (read || std::holds_alternative<PlateOut>(event.d)) {
            last = event.at;
        }
    }
    return last;
}

bool isIdleTooLong(const std::optional<Instant>& used, const Instant& now) {
    return !used || used->bootId != now.bootId || now.boot - used->boot > kPlateIdle;
}

std::vector<CheckMade> standingFor(
    const std::string& check, const WeldOpened& next, const std::vector<Weld>& earlier,
    const Instant& now) {
    const CheckHolds holds = holdsFor(check);
    if (holds == CheckHolds::Weld) {
        return {};
    }
    if (isOfThePlate(check) && isIdleTooLong(plateLastUsed(earlier), now)) {
        return {};
    }
    for (const Weld& weld : earlier) {
        if (!reaches(holds, check, next, weld, now)) {
            return {};
        }
        Said said = saidOf(check, weld);
        if (!said.told) {
            continue; // it ended before that check
        }
        const bool fresh =
            std::all_of(said.made.begin(), said.made.end(), [&now](const CheckMade& made) {
                const Milliseconds age = now.utc - *made.takenUtc;
                return age >= Milliseconds(0) && age <= kShift;
            });
        return fresh ? std::move(said.made) : std::vector<CheckMade>{};
    }
    return {};
}

} // namespace

std::optional<Instant> plateLastUsed(const std::vector<Weld>& earlier) {
    for (const Weld& weld : earlier) {
        if (const auto used = plateUsed(weld)) {
            return used;
        }
    }
    return std::nullopt;
}

std::vector<std::string>
checksOutlived(const Weld& weld, const std::optional<Instant>& plateUse, const Instant& now) {
    std::vector<std::string> outlived;
    const auto* preparing = std::get_if<Preparing>(&weld.state);
    if (preparing == nullptr) {
        return outlived;
    }
    const std::optional<Instant> here = plateUsed(weld);
    const auto isIdle = [&](const CheckMade& made, const Instant& at) {
        const bool before = here && here->bootId == at.bootId && here->boot > at.boot;
        return isIdleTooLong(
            made.takenUtc && !here    ? plateUse
            : made.takenUtc || before ? here
                                      : std::optional(at),
            now);
    };
    const auto standing = retained(weld.events);
    for (const std::string_view check : kOfTheShift) {
        if (preparing->settled.count(std::string(check)) == 0) {
            continue;
        }
        bool stands = true;
        for (const Retained& event : standing) {
            const auto* left = std::get_if<CheckOverridden>(&event.d);
            const auto* made = std::get_if<CheckMade>(&event.d);
            if (left != nullptr && left->check == check) {
                stands = true; // a person goes on without it
            } else if (made != nullptr && made->check == check) {
                const Milliseconds age = now.utc - made->takenUtc.value_or(event.at.utc);
                stands = event.at.bootId == now.bootId && age >= Milliseconds(0) && age <= kShift &&
                         !(isOfThePlate(check) && isIdle(*made, event.at));
            }
        }
        if (!stands) {
            outlived.emplace_back(check);
        }
    }
    return outlived;
}

CheckHolds holdsFor(std::string_view check) {
    if (isIn(kOfTheShift, check)) {
        return CheckHolds::Shift;
    }
    return isIn(kOfTheSetUp, check) ? CheckHolds::SetUp : CheckHolds::Weld;
}

std::vector<CheckMade> checksThatStand(
    const WeldOpened& next, const std::vector<Weld>& earlier, const Instant& now,
    std::optional<Milliseconds> soundLostUtc) {
    std::vector<CheckMade> all;
    for (const std::string& check : next.plan.checks) {
        std::vector<CheckMade> made = standingFor(check, next, earlier, now);
        if (soundLostUtc && check == kSoundHeard) {
            made.erase(
                std::remove_if(
                    made.begin(), made.end(),
                    [&](const CheckMade& one) { return *one.takenUtc <= *soundLostUtc; }),
                made.end());
        }
        all.insert(all.end(), made.begin(), made.end());
    }
    return all;
}

TrialFinding
trialFor(const WeldOpened& next, const std::vector<Weld>& earlier, const Instant& now) {
    return trialFor(setUpOf(next, now), earlier);
}

std::string_view flagOf(TrialState state) {
    switch (state) {
    case TrialState::Due:
        return "trial_not_made";
    case TrialState::Waiting:
        return "trial_not_released";
    case TrialState::Refused:
        return "trial_refused";
    case TrialState::Released:
        return "";
    }
    return "";
}

} // namespace seamclock
