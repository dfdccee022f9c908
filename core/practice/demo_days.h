// A shop's days as they might have been, for tests, demo logs and charts: who welds which seam
// when, with what skill, and now and then with one fault. All of it is invented, and the same seed
// gives the same days. People are ids of our own scenario; one of them learns from day to day.
#pragma once

#include "core/practice/virtual_operator.h"

#include <vector>

namespace seamclock {

struct DemoShop {
    std::vector<WeldOrder> orders;   // the seams that are welded again and again
    std::vector<Material> materials; // empty: without physics
    std::vector<std::string> people; // ids in place of the scenario's: the steadiest hand first,
                                     // the learner last; empty: those
};

inline constexpr int kMostDemoDays = 60;

class DemoDays {
public:
    /// Working days from the practice clock's first on. OutOfRange: none, or more than
    /// kMostDemoDays. Missing: no orders, other people than three or none, or a sheet without its
    /// material. Otherwise as makePlan.
    static Result<DemoDays> plan(DemoShop shop, int days, std::uint64_t seed);

    std::int64_t count() const { return static_cast<std::int64_t>(m_steps.size()); }
    /// For rehearseSeries.
    std::optional<SeriesStep> step(std::int64_t index) const;

private:
    struct Step {
        std::size_t order = 0;
        std::string by;
        int skill = kPerfect;
        std::uint64_t seed = 1;
        RehearseFaults faults;
        Milliseconds notBefore{0};
    };

    DemoShop m_shop;
    std::vector<std::optional<Material>> m_materials; // of each order
    std::vector<Step> m_steps;
};

} // namespace seamclock
