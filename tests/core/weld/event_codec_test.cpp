#include "core/weld/event_codec.h"
#include "tests/support/story.h"

#include <gtest/gtest.h>
#include <set>

namespace seamclock {
namespace {

using std::chrono::seconds;

std::vector<WeldDetail> oneOfEach() {
    const WeldPlan plan = test::inventedPlan();
    WeldOpened opened = test::inventedOpening();
    opened.reweldOf = "99999999-0000-4000-8000-000000000000";
    opened.lostUm = 24'000;
    opened.part = "Brine settling tank";
    opened.beadPlaces = 3;
    opened.docs.material = std::string(64, 'c');
    opened.flags = {"calibration_overdue"};
    return {
        opened,
        PlanReplaced{plan, opened.docs, "ambient"},
        CheckMade{"plate_temperature", true, 211'000, {}, {}, "middle", "left", {}},
        CheckMade{"gap", false, {}, 8'000, {}, {}, {}, seconds{1}},
        CheckMade{"scale_zero", true, {}, {}, -500, {}, {}, {}},
        CheckOverridden{"film_off", "there is none", Authority::Foreman},
        AlignmentStarted{},
        SoakStarted{},
        PlateOut{},
        FacesMet{},
        PressureLocked{},
        ReadingTaken{ReadingPhase::Recheck, 15'000},
        ReasonGiven{"changeover", "plate stuck", "at the left"},
        ReleaseStep{"clamps_eased"},
        JointNumbered{},
        StepTakenBack{12},
        StepBackdated{12, seconds{4}},
        BeadMeasured{430'000, 9'000, 4'000, 800, 200},
        PhotoAdded{std::string(64, 'd'), 123'456, "Wulst vorn ä.jpg"},
        RemarkMade{"draught \"from the door\"\n"},
        CueAcknowledged{"cooling_done"},
        ClockBridged{"boot-1", seconds{0}, seconds{42}, BridgeBasis::Backwards},
        ClockJumped{seconds{-7}},
        WeldClosed{"out of limits", {{"cooling", "out", 690'000, 600'000, "ms", "Short."}}, 1},
        WeldAborted{"cut_out", "bead missing"},
        ValueCorrected{9, "reading_milli", "15500", "15000", "misread"},
        Graded{"EN 16296", "B"},
        Decided{Decision::CutOut, "short cooling"},
        SignedOff{"foreman"},
    };
}

Event wrapped(const WeldDetail& detail) {
    return {
        {Milliseconds{7'200'000}, "boot-1", Milliseconds{1'894'514'400'000},
         std::chrono::minutes{-210}},
        "person:op-1",
        "weld:11111111-2222-4333-8444-555555555555",
        3,
        detail};
}

TEST(EventCodec, EveryKindComesBackAsItWas) {
    std::set<std::string_view> kinds;
    for (const WeldDetail& detail : oneOfEach()) {
        const Event event = wrapped(detail);
        const auto body = toBody(event);
        ASSERT_TRUE(body) << kindOf(detail);
        const auto back = eventFromBody(*body);
        ASSERT_TRUE(back) << *body << "\n" << back.error().detail;
        EXPECT_EQ(*back, event) << *body;
        kinds.insert(kindOf(detail));
    }
    EXPECT_EQ(kinds.size(), std::variant_size_v<WeldDetail>);
}

// The bytes are a promise to every stored log: this one is written out from the contract's form.
TEST(EventCodec, WritesTheContractsBytes) {
    EXPECT_EQ(
        *toBody(wrapped(ReadingTaken{ReadingPhase::Joining, 15'500})),
        R"({"at":{"boot":"boot-1","boot_ms":7200000,"offset_min":-210,"utc_ms":1894514400000},)"
        R"("by":"person:op-1","d":{"phase":"joining","reading_milli":15500},)"
        R"("kind":"reading_taken","n":3,"subject":"weld:11111111-2222-4333-8444-555555555555","v":1})");
    EXPECT_EQ(
        *toBody(wrapped(SoakStarted{})),
        R"({"at":{"boot":"boot-1","boot_ms":7200000,"offset_min":-210,"utc_ms":1894514400000},)"
        R"("by":"person:op-1","d":{},)"
        R"("kind":"soak_started","n":3,"subject":"weld:11111111-2222-4333-8444-555555555555","v":1})");
}

std::string replaced(std::string text, const std::string& what, const std::string& with) {
    const auto at = text.find(what);
    EXPECT_NE(at, std::string::npos) << what;
    return text.replace(at, what.size(), with);
}

TEST(EventCodec, RefusesWhatItWouldNotHaveWritten) {
    const std::string good = *toBody(wrapped(ReadingTaken{ReadingPhase::Joining, 15'500}));
    ASSERT_TRUE(eventFromBody(good));
    const std::vector<std::pair<std::string, std::string>> rows{
        {"15500", "15500.0"},
        {"15500", "1.55e4"},
        {"15500", "null"},
        {"15500", "\"15500\""},
        {"15500", "9223372036854775808"},
        {"\"n\":3", "\"n\": 3"},
        {"\"n\":3", "\"n\":3,\"n\":3"},
        {"\"v\":1", "\"v\":2"},
        {"joining", "joyning"},
        {"reading_taken", "reading_given"},
        {"\"phase\"", "\"phrase\""},
        {",\"reading_milli\":15500", ""},
        {"\"phase\":\"joining\"", "\"extra\":1,\"phase\":\"joining\""},
        {"\"by\":\"person:op-1\"", "\"by\":7"},
        {"\"boot\":\"boot-1\",", ""},
    };
    for (const auto& [what, with] : rows) {
        const auto event = eventFromBody(replaced(good, what, with));
        EXPECT_FALSE(event) << what << " → " << with;
        if (!event) {
            EXPECT_EQ(event.error().code, ErrorCode::Malformed);
        }
    }
    for (const char* text : {"", "{", "[]", "null", "{}", "\xff\xfe", "{\"d\":{}}"}) {
        EXPECT_FALSE(eventFromBody(text)) << text;
    }
}

// One field more than the reader counts by place, and the one that it needs last.
TEST(EventCodec, RefusesAnObjectOfAnyNumberOfFields) {
    for (const int count : {62, 63, 64, 65, 500}) {
        std::string more;
        for (int i = 0; i < count; ++i) {
            more += "\"a" + std::to_string(1'000 + i) + "\":0,";
        }
        const std::string good = *toBody(wrapped(ReadingTaken{ReadingPhase::Joining, 15'500}));
        const auto event = eventFromBody(replaced(good, "\"phase\"", more + "\"phase\""));
        ASSERT_FALSE(event) << count;
        EXPECT_EQ(event.error().code, ErrorCode::Malformed);
        EXPECT_NE(event.error().detail.find("\"a1000\" is not known"), std::string::npos)
            << event.error().detail;
    }
}

TEST(EventCodec, RefusesTextThatIsNotUtf8) {
    EXPECT_FALSE(toBody(wrapped(RemarkMade{"\xc3\x28"})));
}

} // namespace
} // namespace seamclock
