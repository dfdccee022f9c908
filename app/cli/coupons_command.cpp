// coupons: what coupons cut from a joint or a procedure trial bore, entered by a foreman, and the
// welding factor with its interval.
#include "app/cli/command.h"
#include "app/cli/foreman_desk.h"
#include "app/cli/numbers.h"
#include "app/cli/shop_json.h"
#include "core/log/log_reader.h"
#include "core/report/coupon_text.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <cmath>
#include <memory>
#include <tuple>

namespace seamclock {
namespace {

constexpr std::int64_t kPascalPerKilopascal = 1'000;

struct CouponsCall {
    std::string log;
    bool json = false;
    std::optional<std::string> by;
    std::optional<std::string> joint;
    std::optional<std::string> weld;
    std::optional<std::string> test;
    std::optional<std::string> standard;
    std::optional<std::string> material;
    std::optional<std::string> thickness;
    std::optional<std::string> procedure;
    std::optional<std::string> welder;
    std::optional<std::string> welded;
    std::optional<std::string> parent;
    std::optional<std::string> angles;
    std::optional<std::string> ram;
    std::optional<std::string> cracked;
    std::optional<std::string> remark;
    bool trial = false;                // of a trial, no longer of a joint
    std::optional<std::string> series; // to put right
    std::optional<std::string> reason;
};

Result<std::vector<std::int64_t>>
readList(const char* option, const std::optional<std::string>& words) {
    if (!words) {
        return std::vector<std::int64_t>();
    }
    auto list = readThousandths(*words);
    if (!list) {
        return fail(list.error().code, std::string(option) + ": " + list.error().detail);
    }
    return list;
}

/// "yes" and "no" for each coupon.
Result<std::vector<std::int64_t>> readCracked(const std::optional<std::string>& words) {
    std::vector<std::int64_t> out;
    std::string_view left = words ? std::string_view(*words) : std::string_view();
    while (!left.empty()) {
        const auto comma = left.find(',');
        const std::string_view word = left.substr(0, comma);
        left = comma == std::string_view::npos ? std::string_view() : left.substr(comma + 1);
        if (word != "yes" && word != "no") {
            return fail(
                ErrorCode::Malformed, "--cracked " + inQuotes(word) +
                                          " is neither; allowed: yes or no for each, parted by "
                                          "commas");
        }
        out.push_back(word == "yes" ? 1 : 0);
    }
    return out;
}

/// Material, thickness, procedure and welder of the joint, where they aren't told.
Result<void> takeFromJoint(const CouponsCall& call, CouponTested& tested) {
    if (!call.joint && !call.weld) {
        return {};
    }
    auto reader = LogReader::open(call.log);
    if (!reader) {
        return tl::unexpected(reader.error());
    }
    const auto weld = chooseWeld(*reader, call.log, call.joint, call.weld);
    if (!weld) {
        return tl::unexpected(weld.error());
    }
    const auto events = reader->weldEvents(*weld);
    if (!events) {
        return tl::unexpected(events.error());
    }
    const auto* opened = events->empty() ? nullptr : std::get_if<WeldOpened>(&events->front().d);
    if (opened == nullptr) {
        return fail(
            ErrorCode::Missing, "--weld " + inQuotes(*weld) +
                                    " is not in this log; allowed: one that log list --json shows");
    }
    tested.weld = *weld;
    tested.welder = events->front().by;
    tested.procedure = opened->plan.procedure;
    if (!opened->sheets.empty()) {
        tested.material = opened->sheets.front().material;
        tested.thicknessUm = opened->sheets.front().thicknessUm;
    }
    return {};
}

/// What a series says now, of which a correction changes only what it is told; a new series says
/// nothing yet.
Result<CouponTested> saidNow(const CouponsCall& call) {
    CouponTested tested;
    tested.test = "tensile";
    if (!call.series) {
        return tested;
    }
    auto reader = LogReader::open(call.log);
    if (!reader) {
        return tl::unexpected(reader.error());
    }
    const auto read = readCoupons(*reader);
    if (!read) {
        return tl::unexpected(read.error());
    }
    const auto found =
        std::find_if(read->series.begin(), read->series.end(), [&call](const CouponSeries& one) {
            return one.id == *call.series;
        });
    return found == read->series.end() ? tested
                                       : found->now(); // the office refuses what isn't there
}

Result<CouponTested> readTested(const CouponsCall& call) {
    auto said = saidNow(call);
    if (!said) {
        return said;
    }
    CouponTested tested = std::move(*said);
    if (call.test && *call.test != tested.test) { // the numbers of the other test are none of it
        tested.test = *call.test;
        for (auto* list :
             {&tested.weldedPa, &tested.parentPa, &tested.angleMilli, &tested.ramUm,
              &tested.cracked}) {
            list->clear();
        }
    }
    if (call.trial) {
        tested.weld.reset();
    }
    if (auto taken = takeFromJoint(call, tested); !taken) {
        return tl::unexpected(taken.error());
    }
    if (call.thickness) {
        const auto thickness = parseNumber("--thickness", *call.thickness, {0.1, 1'000, "mm"});
        if (!thickness) {
            return tl::unexpected(thickness.error());
        }
        tested.thicknessUm = std::llround(*thickness * 1e3);
    }
    tested.material = call.material.value_or(tested.material);
    tested.procedure = call.procedure.value_or(tested.procedure);
    tested.standard = call.standard.value_or(tested.standard);
    tested.remark = call.remark.value_or(tested.remark);
    tested.reason = call.reason;
    if (call.welder) {
        tested.welder = call.welder;
    }
    for (const auto& [option, words, list] :
         {std::tuple("--welded", &call.welded, &tested.weldedPa),
          std::tuple("--parent", &call.parent, &tested.parentPa),
          std::tuple("--angles", &call.angles, &tested.angleMilli),
          std::tuple("--ram", &call.ram, &tested.ramUm)}) {
        if (!*words) {
            continue;
        }
        auto read = readList(option, *words);
        if (!read) {
            return tl::unexpected(read.error());
        }
        *list = std::move(*read);
        if (list == &tested.weldedPa || list == &tested.parentPa) {
            for (std::int64_t& one : *list) {
                one *= kPascalPerKilopascal; // a thousandth of a MPa
            }
        }
        if (list == &tested.angleMilli) {
            tested.ramUm.clear(); // a bend is told by the one or the other
        } else if (list == &tested.ramUm) {
            tested.angleMilli.clear();
        }
    }
    if (call.cracked) {
        auto cracked = readCracked(call.cracked);
        if (!cracked) {
            return tl::unexpected(cracked.error());
        }
        tested.cracked = std::move(*cracked);
    }
    // Said with the options' own names; the rest is checkCoupon's.
    if (tested.material.empty()) {
        return fail(
            ErrorCode::Missing,
            "--material is missing; allowed: as in PE-HD, or --joint to take it from");
    }
    if (tested.thicknessUm == 0) {
        return fail(
            ErrorCode::Missing,
            "--thickness is missing; allowed: 0.1 to 1000 mm, or --joint to take it from");
    }
    if (auto sound = checkCoupon(tested); !sound) {
        return tl::unexpected(sound.error());
    }
    return tested;
}

template <class IsAsked>
void keepOnly(CouponsRead& read, const IsAsked& isAsked) {
    auto& series = read.series;
    series.erase(
        std::remove_if(
            series.begin(), series.end(),
            [&isAsked](const CouponSeries& one) { return !isAsked(one); }),
        series.end());
}

Result<int> listCoupons(const CouponsCall& call, Terminal& terminal) {
    auto reader = LogReader::open(call.log);
    if (!reader) {
        return tl::unexpected(reader.error());
    }
    auto read = readCoupons(*reader);
    if (!read) {
        return tl::unexpected(read.error());
    }
    if (call.joint || call.weld) {
        const auto weld = chooseWeld(*reader, call.log, call.joint, call.weld);
        if (!weld) {
            return tl::unexpected(weld.error());
        }
        keepOnly(*read, [&weld](const CouponSeries& one) { return one.now().weld == *weld; });
    }
    if (call.json) {
        terminal.write(couponsJson(call.log, *read));
        return 0;
    }
    std::string text;
    for (const CouponSeries& one : read->series) {
        text += (text.empty() ? "" : "\n") + couponText(one);
    }
    for (const UnreadEvent& one : read->unread) {
        text += unreadEventText(one);
    }
    terminal.write(text.empty() ? "no coupons are entered\n" : text);
    return 0;
}

Result<int> enterCoupons(const CouponsCall& call, Terminal& terminal) {
    const auto tested = readTested(call);
    if (!tested) {
        return tl::unexpected(tested.error());
    }
    std::string id;
    {
        auto desk = openForemanDesk(call.log);
        if (!desk) {
            return tl::unexpected(desk.error());
        }
        const auto by = enterForeman(call.by, **desk);
        if (!by) {
            return tl::unexpected(by.error());
        }
        Office& office = *(*desk)->office;
        if (call.series) {
            id = *call.series;
            if (auto put = office.correctCoupons(by->who, id, *tested); !put) {
                return tl::unexpected(put.error());
            }
        } else {
            auto noted = office.noteCoupons(by->who, *tested);
            if (!noted) {
                return tl::unexpected(noted.error());
            }
            id = std::move(*noted);
        }
        if (const auto flushed = (*desk)->writer->flush(); !flushed) {
            return tl::unexpected(flushed.error());
        }
    }
    auto reader = LogReader::open(call.log);
    if (!reader) {
        return tl::unexpected(reader.error());
    }
    auto read = readCoupons(*reader);
    if (!read) {
        return tl::unexpected(read.error());
    }
    keepOnly(*read, [&id](const CouponSeries& one) { return one.id == id; });
    terminal.write(
        call.json ? couponsJson(call.log, *read)
                  : (read->series.empty() ? std::string() : couponText(read->series.front())));
    return 0;
}

} // namespace

void addCoupons(CLI::App& root, Commands& commands, Terminal& terminal) {
    auto call = std::make_shared<CouponsCall>();
    CLI::App* coupons = root.add_subcommand(
        "coupons", "Coupons that were tested, and the welding factor with its interval.");
    coupons->require_subcommand(0, 1);
    CLI::App* list = coupons->add_subcommand("list", "All of a log, or of one joint.");
    CLI::App* add = coupons->add_subcommand(
        "add", "A series of coupons; of a joint it takes sheet, procedure and welder.");
    CLI::App* correct = coupons->add_subcommand(
        "correct",
        "Puts right what is said of a series; the rest of it, and what was entered, stay.");
    correct->add_option("--series", call->series, "which, as coupon:UUID")->required();
    correct->add_option("--reason", call->reason, "why, in a few words")->required();
    correct->add_flag("--trial", call->trial, "it was cut from a trial, and from no joint");
    for (CLI::App* words : {add, correct}) {
        words->add_option("--by", call->by, "the foreman, as person:ID");
        words->add_option("--test", call->test, "tensile (that, if not said) or bend");
        words->add_option("--standard", call->standard, "by which, as the laboratory writes it");
        words->add_option("--material", call->material, "of the sheets, as in PE-HD");
        words->add_option("--thickness", call->thickness, "of the sheets in mm, 0.1 to 1000");
        words->add_option("--procedure", call->procedure, "the procedure's id");
        words->add_option("--welder", call->welder, "who welded, as person:ID");
        words->add_option(
            "--welded", call->welded, "strengths of welded coupons in MPa: 28.4,27.9");
        words->add_option("--parent", call->parent, "and of the parent sheet, likewise");
        words->add_option("--angles", call->angles, "bend angles in degrees, 0 to 180: 160,160");
        words->add_option("--ram", call->ram, "or displacements of the ram in mm, 0 to 500");
        words->add_option("--cracked", call->cracked, "yes or no for each bend coupon: no,no");
        words->add_option("--remark", call->remark, "up to 200 bytes");
    }
    for (CLI::App* words : {list, add, correct}) {
        words->add_option("--joint", call->joint, "the joint's NUMBER that they were cut from");
        words->add_option("--weld", call->weld, "or its weld's UUID");
        words->add_option("--log", call->log, "the log's FILE")->required();
        words->add_flag("--json", call->json, "as JSON");
    }
    commands.push_back({list, [call, &terminal] { return listCoupons(*call, terminal); }});
    commands.push_back({add, [call, &terminal] { return enterCoupons(*call, terminal); }});
    commands.push_back({correct, [call, &terminal] { return enterCoupons(*call, terminal); }});
}

} // namespace seamclock
