// Whole practice welds with one mistake each, and what is said of them. That a mistake is found by
// its name and a good weld has none is the issue's own demand; no outside source judges it.
#include "core/practice/practice_score.h"

#include "tests/core/practice/trainee.h"

#include <gtest/gtest.h>

namespace seamclock::test {
namespace {

using std::chrono::seconds;

PracticeScore first(const HandFaults& faults = {}, const Telling& telling = {}) {
    const SetLesson set = setFor(shippedLesson("pe10-first"));
    return scoreOf(set, practised(set, faults, telling));
}

PracticeScore ofLesson(const std::string& id, const HandFaults& faults = {}) {
    const SetLesson set = setFor(shippedLesson(id));
    return scoreOf(set, practised(set, faults));
}

const LapseFinding& finding(const PracticeScore& score, Lapse lapse) {
    static const LapseFinding kNone;
    for (const LapseFinding& each : score.lapses) {
        if (each.lapse == lapse) {
            return each;
        }
    }
    ADD_FAILURE() << "no " << toString(lapse) << " among: " << names(score);
    return kNone;
}

TEST(PracticeScore, AGoodWeldHasNoLapseAndBends) {
    const PracticeScore score = first();
    EXPECT_EQ(names(score), "");
    EXPECT_TRUE(score.made.bend.ductile);
    EXPECT_TRUE(score.planned.bend.ductile);
    EXPECT_EQ(score.verdict.word, VerdictWord::WithinLimits);
    EXPECT_EQ(score.judged, score.inLimits);
    EXPECT_GE(score.judged, 9);
    for (const OrderError& error : score.order) {
        ADD_FAILURE() << error.code << " at " << error.at.count();
    }
    for (const ReadingError& reading : score.readings) {
        EXPECT_LE(std::abs(reading.said - reading.was), reading.allowed)
            << reading.what << " said " << reading.said << " was " << reading.was;
    }
}

TEST(PracticeScore, EveryLessonsCourseIsSeen) {
    for (const char* id :
         {"pe10-cold-plate", "pe10-hot-plate", "pe10-dirty-plate", "pe10-cold-spot", "pe10-draught",
          "pe10-drifting-spring", "pe10-zero-off", "pe10-wrong-row", "pe10-kgf-for-n", "pe8-west",
          "pe10-cold-start", "pp12-weld", "pvdf8-weld", "pe25-thick", "pe10-parallel"}) {
        const PracticeScore score = ofLesson(id);
        std::printf(
            "%s: %s | %s | bend %d | order %zu\n", id, names(score).c_str(),
            std::string(toString(score.verdict.word)).c_str(), score.made.bend.ductile,
            score.order.size());
    }
}

TEST(PracticeScore, EveryHandsFault) {
    const auto show = [](const char* what, const PracticeScore& score) {
        std::printf(
            "%s: %s | %s | bend %d |", what, names(score).c_str(),
            std::string(toString(score.verdict.word)).c_str(), score.made.bend.ductile);
        for (const auto& st : score.made.bend.stations) {
            for (auto r : st.reasons)
                std::printf(" %s", std::string(toString(r)).c_str());
            std::printf(";");
        }
        for (const auto& o : score.order)
            std::printf(" [%s %g]", o.code.c_str(), o.size);
        std::printf("\n");
    };
    HandFaults f;
    f = {};
    f.filmLeft = true;
    show("film", first(f));
    f = {};
    f.notPlaned = true;
    show("notPlaned", first(f));
    f = {};
    f.plateNotWiped = true;
    show("notWiped", first(f));
    f = {};
    f.touched = 500;
    show("touched", first(f));
    f = {};
    f.rightUm = -1000;
    f.firstBeadOnly = true;
    show("offparallel", first(f));
    f = {};
    f.leanUm = 3000;
    f.topBeadOnly = true;
    show("lean", first(f));
    f = {};
    f.alignFor = seconds(10);
    Telling t;
    t.soakAtContact = true;
    show("alignFor", first(f, t));
    f = {};
    f.soakUnderPressure = true;
    show("soakpressed", first(f));
    f = {};
    f.backedOffUm = 500;
    show("backedOff", first(f));
    f = {};
    f.changeover = seconds(16);
    show("slow", first(f));
    f = {};
    f.slammed = true;
    show("slam", first(f));
    f = {};
    f.letBackAfter = seconds(20);
    show("letback", first(f));
    f = {};
    f.noTopUp = true;
    show("notopup", first(f));
    f = {};
    f.coolFor = seconds(240);
    show("early", first(f));
    f = {};
    f.plateOutPressed = true;
    show("pressed out", first(f));
}

} // namespace
} // namespace seamclock::test
