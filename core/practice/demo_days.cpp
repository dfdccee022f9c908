#include "core/practice/demo_days.h"

#include "core/session/sheet_plan.h"

#include <algorithm>
#include <array>
#include <string>

namespace seamclock {
namespace {

constexpr std::int64_t kFewest = 8; // welds of a day
constexpr std::int64_t kMost = 12;
constexpr std::int64_t kFaultPercent = 12; // of the welds
constexpr int kDaysOfWeek = 5;

struct Person {
    const char* by;
    int skill;
    int learns; // a day
};
constexpr std::array kPeople{
    Person{"person:ilva", 96, 0}, Person{"person:marn", 82, 0}, Person{"person:sefi", 25, 4}};

std::string named(const char* what, std::int64_t day, std::int64_t weld) {
    return std::string(what) + "_" + std::to_string(day) + "_" + std::to_string(weld);
}

/// One of those that a day may bring, of the bench's too where there is one.
std::string drawnFault(const Chance& chance, const std::string& name, bool bench) {
    std::vector<std::string_view> codes;
    for (const FaultAccount& account : faultAccounts()) {
        const bool wrongCard = account.code == "wrong_row" || account.code == "kgf_for_n";
        if ((bench || !account.needsBench) && !wrongCard) {
            codes.push_back(account.code);
        }
    }
    const auto which = chance.even(name, 0, static_cast<std::int64_t>(codes.size()) - 1);
    return std::string(codes[static_cast<std::size_t>(which)]);
}

Result<std::optional<Material>>
materialOf(const WeldOrder& order, const std::vector<Material>& materials) {
    if (materials.empty()) {
        return std::optional<Material>();
    }
    const std::string& plastic = order.procedure.procedure.material;
    for (const Material& material : materials) {
        const auto& names = material.plastics;
        if (std::find(names.begin(), names.end(), plastic) != names.end()) {
            return std::optional<Material>(material);
        }
    }
    return fail(ErrorCode::Missing, "no heat values for the material \"" + plastic + "\"");
}

} // namespace

Result<DemoDays> DemoDays::plan(DemoShop shop, int days, std::uint64_t seed) {
    if (days < 1 || days > kMostDemoDays) {
        return fail(
            ErrorCode::OutOfRange,
            std::to_string(days) + " days are outside 1 to " + std::to_string(kMostDemoDays));
    }
    if (shop.orders.empty()) {
        return fail(ErrorCode::Missing, "there is no seam that a demo day could weld");
    }
    if (!shop.people.empty() && shop.people.size() != kPeople.size()) {
        return fail(
            ErrorCode::Missing, std::to_string(shop.people.size()) +
                                    " people are named for the demo days; allowed: none or " +
                                    std::to_string(kPeople.size()));
    }
    DemoDays made;
    std::vector<WeldPlan> plans;
    for (const WeldOrder& order : shop.orders) {
        auto material = materialOf(order, shop.materials);
        if (!material) {
            return tl::unexpected<Error>(material.error());
        }
        made.m_materials.push_back(std::move(*material));
        auto plan = planWithSheets(
            order.request, order.procedure.procedure, &order.bench.bench, order.sheets);
        if (!plan) {
            return tl::unexpected<Error>(plan.error());
        }
        plans.push_back(std::move(*plan));
    }
    const Chance chance(seed);
    for (int day = 0; day < days; ++day) {
        const int date = day / kDaysOfWeek * 7 + day % kDaysOfWeek;
        const std::int64_t late = chance.around(named("late", day, 0), 0, 1500);
        const Milliseconds morning =
            kPracticeStart + std::chrono::hours(24) * date + std::chrono::seconds(late);
        const std::int64_t welds = chance.around(named("welds", day, 0), kFewest, kMost);
        for (std::int64_t weld = 0; weld < welds; ++weld) {
            Step step;
            step.order = static_cast<std::size_t>(chance.even(
                named("seam", day, weld), 0, static_cast<std::int64_t>(shop.orders.size()) - 1));
            const auto who = static_cast<std::size_t>(chance.even(
                named("person", day, weld), 0, static_cast<std::int64_t>(kPeople.size()) - 1));
            const Person& person = kPeople[who];
            step.by = shop.people.empty() ? person.by : shop.people[who];
            step.skill = std::min(kPractised, person.skill + person.learns * day);
            step.skill = std::max(step.skill, person.skill);
            step.seed =
                static_cast<std::uint64_t>(chance.even(named("seed", day, weld), 1, 1'000'000'000));
            step.notBefore = morning;
            if (chance.even(named("faulty", day, weld), 1, 100) <= kFaultPercent) {
                const bool bench = made.m_materials[step.order].has_value();
                const std::string code = drawnFault(chance, named("fault", day, weld), bench);
                auto faults = singleFault(code, plans[step.order]);
                if (!faults) {
                    return tl::unexpected<Error>(faults.error());
                }
                step.faults = std::move(*faults);
            }
            made.m_steps.push_back(std::move(step));
        }
    }
    made.m_shop = std::move(shop);
    return made;
}

std::optional<SeriesStep> DemoDays::step(std::int64_t index) const {
    if (index < 0 || index >= count()) {
        return {};
    }
    const Step& step = m_steps[static_cast<std::size_t>(index)];
    SeriesStep out;
    out.notBefore = step.notBefore;
    out.options.order = m_shop.orders[step.order];
    out.options.by = step.by;
    out.options.skill = step.skill;
    out.options.seed = step.seed;
    out.options.faults = step.faults;
    out.options.physics = m_materials[step.order];
    return out;
}

} // namespace seamclock
