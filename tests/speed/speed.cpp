// How long the pieces of one weld take, each beside something that is known to everybody (a JSON
// parse, a bare hash), so that run.py can print ratios that hold on a slow machine too. A weld of
// sixty events, as a long one has.
#include "core/base/uuid.h"
#include "core/log/chain.h"
#include "core/report/cue_history.h"
#include "core/report/record_json.h"
#include "core/weld/event_codec.h"
#include "core/weld/fold.h"
#include "core/weld/intent.h"
#include "tests/support/shipped.h"
#include "tests/support/story.h"

#include <benchmark/benchmark.h>

namespace seamclock {
namespace {

const std::vector<Event>& sixtyEvents() {
    static const std::vector<Event> kEvents = [] {
        test::Story story;
        story.inspect();
        while (story.weld().events.size() < 59) {
            story.wait(std::chrono::seconds(1)).then(RemarkMade{"nothing to see"});
        }
        story.then(closing(story.weld()));
        return story.weld().events;
    }();
    return kEvents;
}

const std::vector<std::string>& sixtyBodies() {
    static const std::vector<std::string> kBodies = [] {
        std::vector<std::string> bodies;
        for (const Event& event : sixtyEvents()) {
            bodies.push_back(toBody(event).value_or(""));
        }
        return bodies;
    }();
    return kBodies;
}

void parseBodies(benchmark::State& state) {
    for (auto _ : state) {
        for (const std::string& body : sixtyBodies()) {
            benchmark::DoNotOptimize(eventFromBody(body));
        }
    }
}
BENCHMARK(parseBodies);

void writeBodies(benchmark::State& state) {
    for (auto _ : state) {
        for (const Event& event : sixtyEvents()) {
            benchmark::DoNotOptimize(toBody(event));
        }
    }
}
BENCHMARK(writeBodies);

void foldEvents(benchmark::State& state) {
    for (auto _ : state) {
        benchmark::DoNotOptimize(fold(sixtyEvents()));
    }
}
BENCHMARK(foldEvents);

void applyEvents(benchmark::State& state) {
    for (auto _ : state) {
        auto weld = open(sixtyEvents().front());
        for (std::size_t i = 1; weld && i < sixtyEvents().size(); ++i) {
            weld = apply(*weld, sixtyEvents()[i]);
        }
        benchmark::DoNotOptimize(weld);
    }
}
BENCHMARK(applyEvents);

void judge(benchmark::State& state) {
    const auto weld = fold(sixtyEvents());
    for (auto _ : state) {
        benchmark::DoNotOptimize(record(*weld));
    }
}
BENCHMARK(judge);

void printRecord(benchmark::State& state) {
    const auto weld = fold(sixtyEvents());
    const WeldRecord one = record(*weld);
    for (auto _ : state) {
        benchmark::DoNotOptimize(recordJson(one, {}));
    }
}
BENCHMARK(printRecord);

void chainHashes(benchmark::State& state) {
    for (auto _ : state) {
        std::string previous = genesisHash("log", "practice");
        for (const std::string& body : sixtyBodies()) {
            previous = chainHash(previous, body);
        }
        benchmark::DoNotOptimize(previous);
    }
}
BENCHMARK(chainHashes);

void bareHash(benchmark::State& state) {
    std::string all;
    for (const std::string& body : sixtyBodies()) {
        all += body;
    }
    for (auto _ : state) {
        benchmark::DoNotOptimize(sha256Hex(all));
    }
}
BENCHMARK(bareHash);

void readProcedureText(benchmark::State& state) {
    const std::string text = test::textOf(test::resource("procedures/pe-hd-dvs2207-1-2005.json"));
    for (auto _ : state) {
        benchmark::DoNotOptimize(readProcedure("procedure", text));
    }
}
BENCHMARK(readProcedureText);

void loadAllProcedures(benchmark::State& state) {
    const std::string folder = test::resource("procedures");
    for (auto _ : state) {
        benchmark::DoNotOptimize(readProcedureFolder(folder));
    }
}
BENCHMARK(loadAllProcedures);

/// One after the other from all that are loaded, without a bench and with one.
void makePlansOfAll(benchmark::State& state) {
    const auto all = readProcedureFolder(test::resource("procedures"));
    const Bench bench = test::demoBench("east");
    PlanRequest request;
    request.thickness = millimetres(10);
    request.lengths = {millimetres(1000)};
    for (auto _ : state) {
        for (const ProcedureDocument& one : *all) {
            request.ambient = one.procedure.referenceAmbient;
            benchmark::DoNotOptimize(makePlan(request, one.procedure, nullptr));
            benchmark::DoNotOptimize(makePlan(request, one.procedure, &bench));
        }
    }
    state.SetItemsProcessed(
        static_cast<std::int64_t>(state.iterations()) * static_cast<std::int64_t>(all->size()) * 2);
}
BENCHMARK(makePlansOfAll);

void makeOnePlan(benchmark::State& state) {
    const Procedure procedure = test::shippedProcedure("pe-hd-dvs2207-1-2005");
    const Bench bench = test::demoBench("east");
    PlanRequest request;
    request.thickness = millimetres(10);
    request.lengths = {millimetres(1000)};
    for (auto _ : state) {
        benchmark::DoNotOptimize(makePlan(request, procedure, &bench));
    }
}
BENCHMARK(makeOnePlan);

} // namespace
} // namespace seamclock

BENCHMARK_MAIN();
