// Two judges of a day's plan that share nothing with core/shift/day_plan.cpp but its types: one
// says whether a plan can be kept at all, the other looks for the earliest finish that there is.
#pragma once

#include "core/shift/day_plan.h"

#include <cstdint>
#include <random>
#include <string>
#include <vector>

namespace seamclock::test {

/// Every rule of day_plan.h that the plan breaks, in a sentence; empty: it can be kept.
std::vector<std::string> brokenRules(const DayWork& work, const DayPlan& plan);

/// Every order of everything that is to be done, by everybody who may, on every bench: in an order
/// of beginnings, each as early as what was begun before it allows, since any plan can be pushed
/// together into one of these. `shortcuts`: orders that can't end before `notAfter`, or that stand
/// where an earlier one stood with less time gone, are left out.
struct Optimum {
    Milliseconds finish{0};
    bool found = false; // a plan that ends at `notAfter` or before
    std::uint64_t looked = 0;
};
Optimum earliestFinish(const DayWork& work, Milliseconds notAfter, bool shortcuts);

/// What is asked of a day besides.
struct DayKinds {
    bool certificates = false; // two or three people, and some may not weld some seams
    bool trials = false;       // trial joints are asked for; some are made, run or wait already
};

/// A day of that many seams: up to three benches, one or two people, two plastics, some seams
/// wished on one bench, sometimes a weld that is under way.
DayWork randomDay(std::mt19937_64& chance, std::size_t seams, const DayKinds& kinds = {});

} // namespace seamclock::test
