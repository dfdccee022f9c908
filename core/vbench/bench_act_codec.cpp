#include "core/vbench/bench_act_codec.h"

#include <array>
#include <utility>

namespace seamclock {
namespace {

using namespace act_limits;

/// One field of an act: its key, where it stands, what it can be.
template <class Act, class Number>
struct Field {
    const char* key;
    Number Act::*place;
    std::int64_t low;
    std::int64_t high;
};

template <class Act>
using Um = Field<Act, std::int64_t>;
template <class Act>
using Count = Field<Act, int>;

template <class Act>
constexpr Count<Act> kSheet{"sheet", &Act::sheet, 0, 1};

/// Calls `work` with each field of the act; none: the code says it all.
template <class Act, class Work>
void eachField(Act&, const Work&) {}

template <class Work>
void eachField(SetPlate& act, const Work& work) {
    work(act, Um<SetPlate>{"target_mC", &SetPlate::targetMc, 0, kHottestMc});
}

template <class Work>
void eachField(TakeFilmOff& act, const Work& work) {
    work(act, kSheet<TakeFilmOff>);
}

template <class Work>
void eachField(PlaneEdge& act, const Work& work) {
    work(act, kSheet<PlaneEdge>);
}

template <class Work>
void eachField(TouchEdge& act, const Work& work) {
    work(act, kSheet<TouchEdge>);
    work(act, Count<TouchEdge>{"permille", &TouchEdge::permille, 0, 1000});
}

template <class Work>
void eachField(SetGap& act, const Work& work) {
    work(act, Um<SetGap>{"left_um", &SetGap::leftUm, 0, kWidestGapUm});
    work(act, Um<SetGap>{"right_um", &SetGap::rightUm, 0, kWidestGapUm});
}

template <class Work>
void eachField(ClampSheet& act, const Work& work) {
    work(act, kSheet<ClampSheet>);
    work(act, Um<ClampSheet>{"left_um", &ClampSheet::leftUm, -kMostOffUm, kMostOffUm});
    work(act, Um<ClampSheet>{"right_um", &ClampSheet::rightUm, -kMostOffUm, kMostOffUm});
    work(act, Um<ClampSheet>{"lean_um", &ClampSheet::leanUm, -kMostOffUm, kMostOffUm});
}

template <class Work>
void eachField(ShimSheet& act, const Work& work) {
    work(act, kSheet<ShimSheet>);
    work(act, Um<ShimSheet>{"left_um", &ShimSheet::leftUm, -kMostOffUm, kMostOffUm});
    work(act, Um<ShimSheet>{"right_um", &ShimSheet::rightUm, -kMostOffUm, kMostOffUm});
    work(act, Um<ShimSheet>{"below_um", &ShimSheet::belowUm, -kMostOffUm, kMostOffUm});
}

template <class Work>
void eachField(TurnWheel& act, const Work& work) {
    work(act, Um<TurnWheel>{"um_per_s", &TurnWheel::umPerS, -kFastestUmPerS, kFastestUmPerS});
}

template <std::size_t... kPlaces>
std::array<BenchAct, sizeof...(kPlaces)> oneOfEach(std::index_sequence<kPlaces...>) {
    return {BenchAct(std::in_place_index<kPlaces>)...};
}

const auto kEach = oneOfEach(std::make_index_sequence<std::variant_size_v<BenchAct>>());

} // namespace

Json benchActJson(const BenchAct& act) {
    Json out{{"act", std::string(codeOf(act))}};
    std::visit(
        [&out](auto one) { // a copy: the fields' table is for reading too
            eachField(one, [&out](auto& from, const auto& field) {
                out[field.key] = static_cast<std::int64_t>(from.*field.place);
            });
        },
        act);
    return out;
}

std::optional<BenchAct> readBenchActFrom(JsonReader& reader) {
    const std::size_t before = reader.findings().size();
    const std::string code = reader.text("act");
    if (reader.findings().size() > before) {
        return std::nullopt;
    }
    for (BenchAct act : kEach) {
        if (codeOf(act) != code) {
            continue;
        }
        std::visit(
            [&reader](auto& one) {
                eachField(one, [&reader](auto& to, const auto& field) {
                    using Number = std::remove_reference_t<decltype(to.*field.place)>;
                    to.*field.place =
                        static_cast<Number>(reader.integer(field.key, field.low, field.high));
                });
            },
            act);
        return reader.findings().size() == before ? std::optional(act) : std::nullopt;
    }
    std::string allowed;
    for (const BenchAct& act : kEach) {
        allowed += (allowed.empty() ? "" : ", ") + std::string(codeOf(act));
    }
    reader.complain("act", Json(code).dump() + " is no act at the bench; allowed: " + allowed);
    return std::nullopt;
}

std::string writeBenchAct(const BenchAct& act) {
    return benchActJson(act).dump();
}

Result<BenchAct> readBenchAct(std::string_view name, std::string_view text) {
    const auto json = parseJson(name, text);
    if (!json) {
        return tl::unexpected<Error>(json.error());
    }
    JsonReader reader(*json);
    const auto act = readBenchActFrom(reader);
    if (act) {
        reader.refuseUnknown();
    }
    if (auto ok = reader.verdict(); !ok) {
        return tl::unexpected<Error>(ok.error());
    }
    return *act;
}

} // namespace seamclock
