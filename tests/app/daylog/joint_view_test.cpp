#include "app/daylog/joint_view.h"

#include "core/report/record_reasons.h"
#include "core/weld/correction.h"
#include "tests/support/story.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

test::Story withPlateRead(std::int64_t front = 211'000) {
    test::Story story;
    for (const auto& [place, mc] :
         {std::pair{"front", front}, std::pair<const char*, std::int64_t>{"middle", 208'000},
          std::pair<const char*, std::int64_t>{"back", 209'000}}) {
        CheckMade read;
        read.check = "plate_temperature";
        read.valueMc = mc;
        read.place = place;
        read.passed = true;
        story.then(read);
    }
    return story;
}

const TableView::Row* rowOf(const TableView& table, const QString& item) {
    const auto found =
        std::find_if(table.rows.begin(), table.rows.end(), [&](const TableView::Row& row) {
            return !row.isHead && row.cells.front().text == item;
        });
    return found == table.rows.end() ? nullptr : &*found;
}

const JointView::Value* valueOf(const JointView& view, const QString& item) {
    const auto found =
        std::find_if(view.values.begin(), view.values.end(), [&](const JointView::Value& value) {
            return value.item == item;
        });
    return found == view.values.end() ? nullptr : &*found;
}

/// As the plan has it, from the lock on, which has just been.
void coolAndRelease(test::Story& story) {
    const Milliseconds locked = story.time().lo;
    for (const int at : {70, 240}) {
        story.waitUntil(locked + std::chrono::seconds(at));
        story.then(ReadingTaken{ReadingPhase::Recheck, 15'000});
    }
    story.waitUntil(locked + story.weld().plan.cooling->atLeast);
    for (const std::string& step : std::vector<std::string>(story.weld().plan.releaseOrder)) {
        story.then(ReleaseStep{step}).wait(Milliseconds(8'000));
    }
}

TEST(JointView, SaysTheVerdictInWordsWithItsFirstReason) {
    test::Story story;
    story.soak();
    story.wait(Milliseconds(11'200)); // the limit is 6.4 s
    story.then(FacesMet{});
    story.wait(Milliseconds(6'500));
    story.then(ReadingTaken{ReadingPhase::Joining, 15'500});
    story.then(PressureLocked{});
    story.then(ReasonGiven{"changeover", "let_it_cool", {}});
    coolAndRelease(story);
    story.then(BeadMeasured{{}, 9'000, 4'000, 800, 200});
    story.then(JointNumbered{});
    story.then(closing(story.weld()));
    const JointView view = jointView(record(story.weld()), {});
    EXPECT_EQ(view.verdict, "Out of limits");
    EXPECT_EQ(view.mark, Mark::Late);
    EXPECT_EQ(view.reason, "Changeover 11.2 s, limit 6.4 s. All else within limits.");
    EXPECT_TRUE(view.stored.isEmpty());
    EXPECT_TRUE(view.ended);
}

TEST(JointView, TheFewValuesAreTheWorstOnesWithTheirEvents) {
    test::Story story = withPlateRead(203'000);
    story.close();
    const WeldRecord made = record(story.weld());
    const JointView view = jointView(made, {});
    ASSERT_EQ(view.values.size(), 6U);
    const JointView::Value* plate = valueOf(view, "plate");
    ASSERT_NE(plate, nullptr);
    EXPECT_EQ(plate->done, "203") << "furthest from the aim of 210 °C";
    EXPECT_EQ(plate->set, "210 °C");
    EXPECT_FALSE(plate->out);
    for (const JointView::Value& value : view.values) {
        if (value.n != 0) {
            ASSERT_LE(value.n, static_cast<std::int64_t>(made.events.size()));
            EXPECT_EQ(made.events[static_cast<std::size_t>(value.n - 1)].n, value.n);
        }
    }
}

TEST(JointView, EveryValueOfTheTableNamesTheEventThatHoldsIt) {
    test::Story story = withPlateRead();
    story.close();
    const WeldRecord made = record(story.weld());
    const TableView table = valuesTable(made, nullptr);
    const TableView::Row* front = rowOf(table, "plate on its face, front");
    ASSERT_NE(front, nullptr);
    EXPECT_EQ(front->cells[3].text, "211 °C");
    const auto& event = made.events.at(static_cast<std::size_t>(front->n - 1));
    EXPECT_EQ(std::get<CheckMade>(event.d).valueMc, 211'000);
    EXPECT_EQ(front->cells[4].text, QString("event %1").arg(front->n));
    for (const char* phase : {"alignment", "soak", "changeover", "build-up", "cooling"}) {
        const TableView::Row* row = rowOf(table, phase);
        ASSERT_NE(row, nullptr) << phase;
        EXPECT_GT(row->n, 0) << phase;
    }
}

TEST(JointView, AReadingOutOfItsWindowIsMarked) {
    test::Story story = withPlateRead(221'000);
    story.close();
    const TableView table = valuesTable(record(story.weld()), nullptr);
    const TableView::Row* front = rowOf(table, "plate on its face, front");
    ASSERT_NE(front, nullptr);
    EXPECT_TRUE(front->cells[3].out);
    EXPECT_TRUE(valueOf(jointView(record(story.weld()), {}), "plate")->out);
}

TEST(JointView, ACorrectionNeverHidesTheOriginal) {
    test::Story story;
    story.close();
    const auto all = correctables(record(story.weld()));
    const auto reading = std::find_if(all.begin(), all.end(), [](const Correctable& one) {
        return one.field == "reading_milli" && one.item == "joining reading";
    });
    ASSERT_NE(reading, all.end());
    story.then(ValueCorrected{reading->n, reading->field, reading->value, "15000", "misread"});
    story.then(ValueCorrected{reading->n, reading->field, "15000", "15200", "misread again"});
    const TableView table = valuesTable(record(story.weld()), nullptr);
    const TableView::Row* row = rowOf(table, "joining reading");
    ASSERT_NE(row, nullptr);
    EXPECT_EQ(row->cells[3].text, "15.2 mm");
    EXPECT_EQ(row->cells[3].struck, "15.5 15.0") << "the oldest first";
    const JointView first = jointView(record(story.weld()), {});
    EXPECT_EQ(valueOf(first, "joining")->done, "15.2, was 15.5");
    const TableView events = eventsTable(record(story.weld()), {});
    EXPECT_EQ(events.rows.size(), story.weld().events.size());
}

TEST(JointView, WhatCanBeCorrectedIsAcceptedByTheFold) {
    test::Story story = withPlateRead();
    story.close();
    const auto all = correctables(record(story.weld()));
    EXPECT_GT(all.size(), 8U);
    for (const Correctable& one : all) {
        const ValueCorrected made{one.n, one.field, one.value, one.scale == 0 ? "other" : "1", ""};
        EXPECT_TRUE(story.attempt(made)) << one.field << " of event " << one.n;
    }
}

TEST(JointView, AStepThatWasTakenBackIsListedAsSuch) {
    test::Story story;
    story.align();
    const auto n = static_cast<std::int64_t>(story.weld().events.size());
    story.wait(Milliseconds(2'000));
    story.then(StepTakenBack{n});
    const TableView table = eventsTable(record(story.weld()), {});
    const TableView::Row& row = table.rows.at(static_cast<std::size_t>(n - 1));
    EXPECT_EQ(row.cells[3].text, "taken back");
    EXPECT_FALSE(row.cells[3].struck.isEmpty());
}

TEST(JointView, AVerdictOfOlderRulesStandsThereWithTodaysBesideIt) {
    test::Story story;
    story.inspect();
    WeldClosed older = closing(story.weld());
    older.verdict = "out of limits";
    older.rules = 0;
    story.then(older);
    const JointView view = jointView(record(story.weld()), {});
    EXPECT_EQ(view.verdict, "Out of limits");
    EXPECT_EQ(view.stored, "Stored at closing, by rules 0. By today's rules 1: within limits.");
}

test::Story lateStory(Milliseconds changeover) {
    test::Story story = withPlateRead();
    story.soak().wait(changeover).then(FacesMet{}); // the limit is 6.4 s
    story.wait(Milliseconds(6'500)).then(ReadingTaken{ReadingPhase::Joining, 15'500});
    story.then(PressureLocked{});
    coolAndRelease(story);
    story.then(BeadMeasured{{}, 9'000, 4'000, 800, 200}).then(JointNumbered{});
    return story;
}

TEST(JointView, AChangeoverLateByLessThanTwoTapsIsNoOctagon) {
    test::Story little = lateStory(Milliseconds(6'600)); // verdict rules 1: up to 0.5 s a remark
    little.then(closing(little.weld()));
    const WeldRecord made = record(little.weld());
    ASSERT_EQ(made.verdict.word, VerdictWord::WithRemarks);
    EXPECT_FALSE(rowOf(valuesTable(made, nullptr), "changeover")->cells[3].out);
    const test::Story much = lateStory(Milliseconds(8'000));
    EXPECT_TRUE(rowOf(valuesTable(record(much.weld()), nullptr), "changeover")->cells[3].out);
}

TEST(JointView, AReasonIsNotRoundedOntoItsLimitAndStandsInThePersonsUnits) {
    const WeldRecord hot = [] {
        test::Story story = withPlateRead(221'000); // at most 220 °C = 428 °F
        story.close();
        return record(story.weld());
    }();
    EXPECT_TRUE(jointView(hot, {}).reason.contains("221 °C, limit 220 °C"));
    const QString reason = jointView(hot, {}, nullptr, UnitSystem::Imperial).reason;
    EXPECT_TRUE(reason.contains("429.8 °F, limit 428 °F"))
        << reason.toStdString();                       // 221 · 1.8 + 32
    test::Story late = lateStory(Milliseconds(6'440)); // and not "6.4 s, limit 6.4 s"
    late.then(closing(late.weld()));
    const JointView view = jointView(record(late.weld()), {});
    EXPECT_EQ(view.reason, "Changeover 6.44 s, limit 6.4 s.");
}

TEST(JointView, WhatACorrectionMadeOfTheVerdictIsNotBlamedOnTheRules) {
    test::Story story = withPlateRead(211'000);
    story.close();
    const auto all = correctables(record(story.weld()));
    ASSERT_EQ(all.front().value, "211000");
    story.then(ValueCorrected{all.front().n, all.front().field, "211000", "225000", "misread"});
    const WeldRecord made = record(story.weld());
    const JointView view = jointView(made, {});
    EXPECT_EQ(view.verdict, "Within limits");
    EXPECT_TRUE(view.reason.isEmpty())
        << "the stored word has no reason: " << view.reason.toStdString();
    EXPECT_EQ(view.stored, "Stored at closing. After a correction: out of limits.");
    const TableView table = valuesTable(made, nullptr);
    const auto storedAt = std::find_if(table.rows.begin(), table.rows.end(), [](const auto& row) {
        return row.isHead && row.cells.front().text == "Stored at closing: within limits";
    });
    EXPECT_NE(storedAt, table.rows.end());
    EXPECT_EQ(storedAt + 1, table.rows.end()) << "no reason was stored";
}

TEST(JointView, TheReasonsThatWereStoredStandBesideTodays) {
    test::Story story = withPlateRead();
    story.inspect();
    WeldClosed older = closing(story.weld());
    older.verdict = "out of limits";
    older.reasons = {{"changeover", "out", 6'400, 8'800, "ms", ""}};
    older.rules = 0;
    story.then(older);
    const WeldRecord made = record(story.weld());
    EXPECT_EQ(jointView(made, {}).reason, "Changeover 8.8 s, limit 6.4 s. All else within limits.");
    const TableView table = valuesTable(made, nullptr);
    ASSERT_GE(table.rows.size(), 2U);
    EXPECT_EQ(table.rows.back().cells[1].text, "changeover 8.8 s, limit 6.4 s");
    EXPECT_TRUE(table.rows.back().cells[1].out);
    EXPECT_EQ(table.rows.back().n, closedN(made));
    // The same word for another reason differs, too.
    older.verdict = "within limits";
    older.reasons = {{"changeover", "remark", 6'400, 6'500, "ms", ""}};
    test::Story same = withPlateRead();
    same.inspect();
    older.rules = kVerdictRules;
    same.then(older);
    EXPECT_EQ(
        jointView(record(same.weld()), {}).stored,
        "Stored at closing. Worked out again: within limits, with other reasons.");
}

TEST(JointView, AnEventOfAnotherDayHasItsDate) {
    test::Story story;
    story.close().wait(std::chrono::hours(72));
    story.then(Decided{Decision::Accept, "tested"});
    const TableView table = eventsTable(record(story.weld()), {});
    EXPECT_EQ(table.rows.front().cells[1].text, "07:00:00.000");
    EXPECT_TRUE(table.rows.back().cells[1].text.startsWith("16 Jan 2030 "))
        << table.rows.back().cells[1].text.toStdString();
}

TEST(JointView, ABatchOfBothSheetsIsNamedOnce) {
    WeldOpened opened = test::inventedOpening();
    opened.sheets[0].batch = "K-7";
    opened.sheets[1].batch = "K-7";
    test::Story same(opened);
    EXPECT_TRUE(jointView(record(same.weld()), {}).about.contains(", batch K-7."));
    opened.sheets[1].batch = "K-8";
    test::Story other(opened);
    EXPECT_TRUE(jointView(record(other.weld()), {}).about.contains(", batches K-7 and K-8."));
}

TEST(JointView, SaysWhoDecidedAndWhoSignedOff) {
    test::Story story;
    story.close();
    story.then(Decided{Decision::Repair, "leaks"});
    story.then(SignedOff{"foreman"});
    const DayNames names{{}, {{"person:op-1", "Ilva Borrick"}}};
    const JointView view = jointView(record(story.weld()), names);
    EXPECT_TRUE(view.decided.startsWith("To repair by Ilva Borrick, 13 Jan "))
        << view.decided.toStdString();
    EXPECT_TRUE(view.decided.contains("it leaks"));
    EXPECT_TRUE(view.decided.contains("signed off by Ilva Borrick"));
    EXPECT_FALSE(view.decided.contains("changed since"));
    story.then(Decided{Decision::CutOut, "leaks"});
    EXPECT_TRUE(jointView(record(story.weld()), names).decided.endsWith(", changed since"));
}

TEST(JointView, ADamagedJointSaysWhatIsWrong) {
    JointLine line;
    line.number = 3;
    line.trouble = "event 2 is missing";
    const JointView view = damagedView(line, {});
    EXPECT_EQ(view.mark, Mark::Trouble);
    EXPECT_EQ(view.reason, "event 2 is missing");
    EXPECT_FALSE(view.ended) << "nothing can be decided of it";
}

TEST(JointView, PhotosAreListedWithWhatIsKnownOfTheirFiles) {
    test::Story story;
    story.close();
    const TableView none = lookedAtTable(record(test::Story().weld()), {}, {});
    ASSERT_EQ(none.rows.size(), 1U);
    EXPECT_TRUE(none.rows.front().isHead);
    JointPhoto photo;
    photo.photo.name = "bead.jpg";
    photo.photo.sha256 = "ba7816bf8f01cfea";
    photo.found = "248d6a61d20638b8";
    photo.n = 5;
    photo.state = PhotoState::Altered;
    const TableView table = lookedAtTable(record(story.weld()), {photo}, {});
    const TableView::Row& last = table.rows.back();
    EXPECT_EQ(
        last.cells[2].text, "bead.jpg was changed: expected SHA-256 ba7816bf…, found 248d6a61…");
    EXPECT_TRUE(last.cells[2].out);
    EXPECT_EQ(last.n, 5);
}

TEST(JointView, CouponsThatWereCutFromItStandWithWhatCameOfThem) {
    CouponTested pulled;
    pulled.test = "tensile";
    pulled.standard = "EN 12814-2";
    pulled.weldedPa = {29'000'000, 27'400'000};
    pulled.parentPa = {29'500'000, 30'500'000};
    CouponSeries series;
    series.id = "coupon:1";
    series.versions = {{{}, "person:oddo", pulled, 1}, {{}, "person:oddo", pulled, 2}};
    series.versions[1].tested.weldedPa[0] = 20'000'000;
    series.versions[0].tested.weld = "weld:9";
    series.versions[0].joint = 9;
    series.versions[1].tested.weld = "weld:12";
    series.versions[1].tested.reason = "the wrong joint";
    series.factor = weldingFactor({20, 27.4}, {29.5, 30.5}).value(); // 23.7 over 30
    series.required = 0.9;
    CouponTested bent;
    bent.test = "bend";
    bent.angleMilli = {160'000, 95'500};
    bent.cracked = {0, 1};
    CouponSeries other;
    other.id = "coupon:2";
    other.versions = {{{}, "person:oddo", bent, 1}};
    other.unread = {{"coupon:2", 2, "not canonical"}};
    const std::vector<CouponSeries> coupons{series, other};

    const QString told = testedText(coupons);
    EXPECT_EQ(
        told, "Bend test: 1 of 2 cracked (event 1 of the test); tests in all: 2; not all of it can "
              "be read");
    other.versions[0].tested.cracked = {0, 0};
    EXPECT_TRUE(testedText({series, other})
                    .startsWith("Tensile test by EN 12814-2: welding factor 0.790, with 95 % "))
        << "below what is required: it stands before a newer one that held";
    EXPECT_TRUE(testedText({series}).endsWith("(event 2 of the test)"));
    EXPECT_TRUE(testedText({}).isEmpty());

    DayNames names;
    names.people["person:oddo"] = "Oddo";
    const TableView table =
        lookedAtTable(record(test::Story().weld()), {}, names, UnitSystem::Metric, coupons);
    QStringList found;
    for (const TableView::Row& row : table.rows) {
        EXPECT_EQ(row.n, 0) << "an event of the test is none of the joint";
        found << row.cells[2].text + "|" + row.cells[3].text;
    }
    ASSERT_EQ(found.size(), 8);
    EXPECT_TRUE(found[0].startsWith("welding factor 0.790, with 95 % ")) << found[0].toStdString();
    EXPECT_EQ(found[1], "Below the required 0.90.|test, event 2");
    EXPECT_EQ(found[2], "welded 20.00 · 27.40 N/mm²|test, event 2");
    EXPECT_EQ(found[3], "parent sheet 29.50 · 30.50 N/mm²|test, event 2");
    EXPECT_EQ(found[4], "put right: the wrong joint|test, event 1");
    EXPECT_EQ(found[5], "1 of 2 cracked|test, event 1");
    EXPECT_EQ(found[6], "bend angle 160.0 · 95.5 °|test, event 1");
    EXPECT_EQ(found[7], "can't be read|test, event 2");
    EXPECT_EQ(table.rows[0].cells[0].text, "Tensile test by EN 12814-2");
    EXPECT_EQ(table.rows[0].cells[1].text, "Oddo");
    EXPECT_TRUE(table.rows[0].cells[2].out);
    EXPECT_TRUE(table.rows[4].cells[2].struck.startsWith("joint 9; welded 29.00 · 27.40 N/mm²"));
    EXPECT_TRUE(table.rows[7].cells[2].out);
}

} // namespace
} // namespace seamclock
