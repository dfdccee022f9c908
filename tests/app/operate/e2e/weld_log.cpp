#include "tests/app/operate/e2e/weld_log.h"

#include "app/operate/floor.h"
#include "app/platform/boot_clock.h"
#include "core/log/log_reader.h"
#include "core/practice/virtual_clock.h"
#include "core/session/session.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

namespace seamclock::test {

namespace {

using std::chrono::milliseconds;
using std::chrono::seconds;

std::string resources() {
    return std::string(SEAMCLOCK_SOURCE_DIR) + "/tests/data/e2e";
}

/// What a hand waits before the next step: the times of the short procedure, within its limits.
Milliseconds before(const Weld& weld) {
    if (std::holds_alternative<Soaking>(weld.state)) {
        return milliseconds(12'300);
    }
    if (const auto* building = std::get_if<BuildingUp>(&weld.state)) {
        return building->lastReading ? milliseconds(700) : milliseconds(2'100);
    }
    if (std::holds_alternative<Cooling>(weld.state)) {
        return weldTimeAt(weld, weld.events.back().at)->lo < std::get<Cooling>(weld.state).due.lo
                   ? seconds(31)
                   : seconds(1);
    }
    return seconds(2);
}

/// Makes the weld step by step; how long it took, or -1 ms if it did not get there.
Milliseconds make(const std::string& log, const Brought& to, const Instant& start) {
    VirtualClock clock(start);
    const auto procedures = readProcedureFolder(resources() + "/procedures");
    const Job job = jobOfTests();
    auto writer = LogWriter<Production>::open(log, clock);
    if (!procedures || !writer || job.seams.empty()) {
        ADD_FAILURE() << (writer ? "no procedures, no job" : writer.error().detail);
        return milliseconds(-1);
    }
    auto session = Session<Production>::start(*writer, clock);
    if (!session) {
        ADD_FAILURE() << session.error().detail;
        return milliseconds(-1);
    }
    Floor floor(*session, *writer, clock, *procedures, job.operatorId);
    const auto order = orderOf(job.seams[static_cast<std::size_t>(to.seam)], *procedures);
    if (!order || !floor.addBench(order->bench) || !floor.open(0, *order)) {
        ADD_FAILURE() << "no weld can be opened";
        return milliseconds(-1);
    }
    std::size_t here = 0; // steps in the phase asked for
    for (int i = 0; i < 60; ++i) {
        const Weld weld = *floor.weld(0);
        if (phaseName(weld.state) == to.phase && here++ == to.stepsInPhase) {
            const auto saved = writer->flush();
            EXPECT_TRUE(saved) << saved.error().detail;
            return clock.now().boot - start.boot;
        }
        clock.advance(before(weld));
        const auto view = floor.view(0, clock.now(), false, false);
        const auto* number = std::get_if<AskNumber>(&view->step.offer);
        const bool plate = number != nullptr && number->what == NumberFor::PlateTemperature;
        const auto done = number == nullptr
                              ? floor.press(0, view->step.offer, view->onto)
                              : floor.answer(0, NumberAnswer{number->what, plate ? 210.0 : 0.5});
        if (!done) {
            ADD_FAILURE() << view->step.view.text.toStdString() << ": " << done.error().detail;
            return milliseconds(-1);
        }
    }
    ADD_FAILURE() << "the weld does not come to " << to.phase;
    return milliseconds(-1);
}

} // namespace

Job jobOfTests() {
    const auto job = readFirstJob(resources() + "/demo");
    EXPECT_TRUE(job) << job.error().detail;
    return job.value_or(Job{});
}

Instant presentInstant() {
    const auto clock = BootClock::make();
    EXPECT_TRUE(clock);
    return clock ? clock->now() : Instant{};
}

void bringLog(const std::string& log, const Brought& to) {
    Instant start;
    start.boot = seconds(1'000'000);
    start.bootId = "rehearsed";
    start.utc = seconds(1893996000);
    const ScratchFolder folder; // how long it takes is found by doing it
    const Milliseconds takes = make(folder.file("measured.seamlog"), to, start);
    if (takes < Milliseconds(0)) {
        return;
    }
    start = to.present ? *to.present : presentInstant();
    start.boot -= takes + to.ago;
    start.utc -= takes + to.ago;
    make(log, to, start);
}

std::string newestWeld(const std::string& log) {
    auto reader = LogReader::open(log);
    const auto lines = reader ? reader->joints({}) : Result<std::vector<JointLine>>{};
    return lines && !lines->empty() ? lines->front().weld : std::string();
}

std::optional<Weld> weldIn(const std::string& log) {
    const std::string id = newestWeld(log);
    auto reader = LogReader::open(log);
    if (id.empty() || !reader) {
        return std::nullopt;
    }
    const auto events = reader->weldEvents(id);
    if (!events || events->empty()) {
        return std::nullopt;
    }
    const auto weld = fold(*events);
    EXPECT_TRUE(weld) << weld.error().detail;
    return weld ? std::optional(*weld) : std::nullopt;
}

std::vector<Event> handsEvents(const Weld& weld) {
    std::vector<Event> made;
    for (const Event& event : weld.events) {
        if (!std::holds_alternative<ClockJumped>(event.d)) {
            made.push_back(event);
        }
    }
    return made;
}

} // namespace seamclock::test
