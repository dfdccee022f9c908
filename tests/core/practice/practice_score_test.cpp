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

[[maybe_unused]] PracticeScore ofLesson(const std::string& id, const HandFaults& faults = {}) {
    const SetLesson set = setFor(shippedLesson(id));
    return scoreOf(set, practised(set, faults));
}

[[maybe_unused]] const LapseFinding& finding(const PracticeScore& score, Lapse lapse) {
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

TEST(PracticeScore, Probe) {
    const auto show = [](const char* what, const SetLesson& set, const HandFaults& f, const Telling& t = {}) {
        const MadeWeld made = practised(set, f, t);
        const PracticeScore score = scoreOf(set, made);
        std::printf("%s: %s | %s | bend %d |", what, names(score).c_str(), std::string(toString(score.verdict.word)).c_str(), score.made.bend.ductile);
        for (const auto& st : score.made.bend.stations) { for (auto r : st.reasons) std::printf(" %s", std::string(toString(r)).c_str()); std::printf(";"); }
        for (const auto& o : score.order) std::printf(" [%s %g]", o.code.c_str(), o.size);
        const auto replay = PracticeReplay::make(set.setup, made.take).value();
        const auto lock = score.made.end.instants.locked;
        if (lock) for (const int at : {33, 63, 90, 275, 302, 400}) std::printf(" %d:%.2f", at, replay.at(*lock + std::chrono::seconds(at)).view().scale.reading);
        std::printf(" skin %.0f melt %.2f/%.2f\n", score.made.end.stations[2].joined ? score.made.end.stations[2].joined->skinC : 0, score.made.end.stations[2].joined ? score.made.end.stations[2].joined->meltMm : 0, score.made.end.planMeltMm);
    };
    const SetLesson first1 = setFor(shippedLesson("pe10-first"));
    HandFaults f;
    show("good", first1, f);
    f = {}; f.noTopUp = true; show("notopup", first1, f);
    f = {}; f.noTopUp = true; show("notopup drift", setFor(shippedLesson("pe10-drifting-spring")), f);
    f = {}; show("drift", setFor(shippedLesson("pe10-drifting-spring")), f);
    f = {}; show("zero", setFor(shippedLesson("pe10-zero-off")), f);
    f = {}; show("row", setFor(shippedLesson("pe10-wrong-row")), f);
    f = {}; show("kgf", setFor(shippedLesson("pe10-kgf-for-n")), f);
    f = {}; f.changeover = std::chrono::milliseconds(6000); show("draught 6", setFor(shippedLesson("pe10-draught")), f);
    f = {}; f.plateNotWiped = true; show("dirty", setFor(shippedLesson("pe10-dirty-plate")), f);
    f = {}; f.backedOffUm = 500; show("backedOff", first1, f);
    f = {}; f.leanUm = 6000; f.topBeadOnly = true; show("lean6", first1, f);
    f = {}; f.rightUm = -3000; f.firstBeadOnly = true; show("offparallel3", first1, f);
    f = {}; f.rightUm = -300; show("clamp .3", first1, f);
    f = {}; f.changeover = std::chrono::seconds(60); show("slow60", first1, f);
    f = {}; f.noTopUp = true; f.slammed = true; show("slam+notop", first1, f);
    Telling t; t.soakAtContact = true;
    f = {}; f.alignFor = std::chrono::seconds(5); f.soakFor = std::chrono::seconds(90); show("contact", first1, f, t);
    for (const char* id : {"pp12-weld", "pvdf8-weld", "pe25-thick", "pe8-west", "pe10-cold-spot", "pe10-parallel"}) { f = {}; show(id, setFor(shippedLesson(id)), f); }
}

} // namespace
} // namespace seamclock::test
