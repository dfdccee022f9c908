// How long the office's questions take: the day's plan of 40 seams on 4 benches by 2 people and of
// the most that a plan holds, and the charts over a large log, beside SQLite's own reading of the
// same rows.
//
//     shop_speed day
//     shop_speed charts LOG     made by make_big_log
#include "core/log/batches.h"
#include "core/log/log_reader.h"
#include "core/quality/shop_charts.h"
#include "core/shift/day_plan.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <functional>
#include <random>
#include <sqlite3.h>
#include <string>
#include <time.h>
#include <vector>

namespace seamclock {
namespace {

[[noreturn]] void stop(const std::string& why) {
    std::fprintf(stderr, "%s\n", why.c_str());
    std::exit(2);
}

double processorMs(const std::function<void()>& work) {
    const auto now = [] {
        timespec at{};
        clock_gettime(CLOCK_THREAD_CPUTIME_ID, &at);
        return static_cast<double>(at.tv_sec) * 1e3 + static_cast<double>(at.tv_nsec) / 1e6;
    };
    const double from = now();
    work();
    return now() - from;
}

/// The median of five, after one that doesn't count.
double median(const std::function<void()>& work) {
    work();
    std::vector<double> took;
    for (int round = 0; round < 5; ++round) {
        took.push_back(processorMs(work));
    }
    std::sort(took.begin(), took.end());
    return took[2];
}

DayWork workOf(std::size_t seams) {
    std::mt19937_64 chance(10);
    const auto seconds = [&](std::uint64_t low, std::uint64_t high) {
        return Milliseconds(static_cast<std::int64_t>(low + chance() % (high - low + 1)) * 1'000);
    };
    DayWork work;
    for (const char* id : {"east", "west", "north", "south"}) {
        work.benches.push_back({id, {"PE-HD", 210'000}, {}});
    }
    work.people = {"one", "two"};
    for (std::size_t i = 0; i < seams; ++i) {
        SeamTimes times;
        times.preparation = seconds(300, 700);
        times.alignment = seconds(30, 130);
        times.soak = seconds(50, 250);
        times.changeover = seconds(5, 12);
        times.buildUp = seconds(5, 20);
        times.cooling = seconds(360, 2'400);
        times.release = seconds(120, 240);
        times.plate = chance() % 5 == 0 ? PlateUse{"PVDF", 240'000} : PlateUse{"PE-HD", 210'000};
        DaySeam seam{"S" + std::to_string(i + 1), {}, ""};
        const std::size_t wish = chance() % 12;
        for (std::size_t bench = 0; bench < 4; ++bench) {
            seam.on.push_back(wish >= 4 || wish == bench ? std::optional(times) : std::nullopt);
        }
        work.seams.push_back(std::move(seam));
    }
    return work;
}

void day() {
    const DayWork work = workOf(40);
    const auto plan = planDay(work);
    if (!plan) {
        stop(plan.error().detail);
    }
    const double planning = median([&work] { static_cast<void>(planDay(work)); });
    const double bounding = median([&work] {
        for (int i = 0; i < 100; ++i) {
            static_cast<void>(boundOf(work));
        }
    });
    std::printf(
        "value day-plan-40-seams-4-benches-2-people %.1f ms   (it ends at %.1f h, no plan before "
        "%.1f h)\n",
        planning, static_cast<double>(plan->finish.count()) / 3.6e6,
        static_cast<double>(plan->bound.atLeast.count()) / 3.6e6);
    // The same day with three set-ups that each want a trial joint, and plastics that only one may
    // weld.
    DayWork asked = work;
    for (std::size_t i = 0; i < asked.seams.size(); ++i) {
        DaySeam& seam = asked.seams[i];
        const auto on = std::find_if(
            seam.on.begin(), seam.on.end(), [](const auto& one) { return one.has_value(); });
        const bool pvdf = (*on)->plate.material == "PVDF";
        seam.setUp = pvdf ? "PVDF 10 mm" : i % 3 == 0 ? "PE-HD 5 mm" : "PE-HD 10 mm";
        seam.welders = {true, !pvdf};
    }
    const auto tried = planDay(asked);
    if (!tried) {
        stop(tried.error().detail);
    }
    std::printf(
        "value day-plan-with-trial-joints-and-certificates %.1f ms   (it ends at %.1f h, no plan "
        "before %.1f h)\n",
        median([&asked] { static_cast<void>(planDay(asked)); }),
        static_cast<double>(tried->finish.count()) / 3.6e6,
        static_cast<double>(tried->bound.atLeast.count()) / 3.6e6);
    std::printf(
        "ratio day-plan-to-its-bound %.0f   (%.2f / %.4f ms)\n", planning / (bounding / 100),
        planning, bounding / 100);
    const DayWork most = workOf(kMostDaySeams);
    const auto full = planDay(most);
    if (!full) {
        stop(full.error().detail);
    }
    std::printf(
        "value day-plan-%zu-seams-4-benches-2-people %.0f ms   (it ends at %.1f h, no plan before "
        "%.1f h)\n",
        most.seams.size(), median([&most] { static_cast<void>(planDay(most)); }),
        static_cast<double>(full->finish.count()) / 3.6e6,
        static_cast<double>(full->bound.atLeast.count()) / 3.6e6);
}

/// What SQLite's own interface takes for the same rows, as numbers and texts.
void plainRead(sqlite3* database) {
    sqlite3_stmt* rows = nullptr;
    if (sqlite3_prepare_v2(
            database,
            "SELECT number, opened_ms, bench, opened_by, procedure, thickness_um, alignment FROM "
            "joint_measure WHERE alignment IS NOT NULL ORDER BY joint",
            -1, &rows, nullptr) != SQLITE_OK) {
        stop(sqlite3_errmsg(database));
    }
    std::int64_t sum = 0;
    while (sqlite3_step(rows) == SQLITE_ROW) {
        sum += sqlite3_column_int64(rows, 0) + sqlite3_column_int64(rows, 1) +
               sqlite3_column_int64(rows, 5) + sqlite3_column_int64(rows, 6);
        for (const int text : {2, 3, 4}) {
            sum += *sqlite3_column_text(rows, text);
        }
    }
    sqlite3_finalize(rows);
    if (sum == 0) {
        stop("the log has no joints");
    }
}

void charts(const std::string& log) {
    auto reader = LogReader::open(log);
    if (!reader) {
        stop(reader.error().detail);
    }
    sqlite3* database = nullptr;
    if (sqlite3_open_v2(log.c_str(), &database, SQLITE_OPEN_READONLY, nullptr) != SQLITE_OK) {
        stop(log + " can't be read");
    }
    std::size_t points = 0;
    const auto chart = [&](const std::vector<JointMeasure>& measures) {
        const auto made = shopCharts(*reader, measures, {});
        if (!made) {
            stop(made.error().detail);
        }
        points = 0;
        for (const ShopChart& one : *made) {
            points += one.values.size();
        }
    };
    const double one = median([&] { chart({JointMeasure::Alignment}); });
    const double reading = median([&] { plainRead(database); });
    std::printf("value chart-of-%zu-joints %.1f ms\n", points, one);
    std::printf(
        "ratio chart-to-reading-its-rows %.2f   (%.1f / %.1f ms)\n", one / reading, one, reading);
    const double all = median([&] { chart(chartedMeasures()); });
    std::printf("value charts-of-all-four-measures %.1f ms\n", all);
    const auto events = reader->joints({});
    if (!events || events->empty()) {
        stop("the log has no joints");
    }
    const auto first = reader->weldEvents(events->front().weld);
    const auto sheets = first ? batchesOf(*first) : tl::unexpected<Error>(first.error());
    if (!sheets || sheets->empty()) {
        stop("the newest joint has no sheets");
    }
    std::size_t holders = 0;
    const double batch = median([&] {
        const auto found = jointsOfBatch(*reader, sheets->front().batch);
        holders = found ? found->joints.size() : 0;
    });
    std::printf("value joints-of-a-batch %.1f ms   (%zu joints)\n", batch, holders);
    sqlite3_close(database);
}

} // namespace
} // namespace seamclock

int main(int argc, char** argv) {
    const std::string what = argc > 1 ? argv[1] : "";
    if (what == "day" && argc == 2) {
        seamclock::day();
        return 0;
    }
    if (what == "charts" && argc == 3) {
        seamclock::charts(argv[2]);
        return 0;
    }
    std::fprintf(stderr, "shop_speed day | charts LOG\n");
    return 2;
}
