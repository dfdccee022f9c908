#include "core/report/event_rows.h"
#include "core/weld/event_codec.h"
#include "tests/core/report/lines.h"
#include "tests/support/story.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace seamclock {
namespace {

using nlohmann::json;
using test::holds;
using test::Story;

StoredRow rowOf(const Event& event) {
    const auto body = toBody(event);
    EXPECT_TRUE(body.has_value());
    return {event.n + 100, std::string(64, 'c'), body.value_or("")};
}

TEST(EventRows, GiveEachEventItsPlaceInTheChain) {
    const Weld weld = Story().align().weld();
    const Event& last = weld.events.back();
    const auto row = eventRow(rowOf(last));
    ASSERT_TRUE(row.has_value()) << row.error().detail;
    EXPECT_EQ(row->rfind(std::to_string(last.n + 100) + ",weld:", 0), 0U) << *row;
    EXPECT_TRUE(holds(*row, ",soak_started,2030-01-13T06:"));
    EXPECT_TRUE(holds(*row, std::string(64, 'c') + ",\r\n"));
}

TEST(EventRows, KeepTheBodyAsItIsStoredInJson) {
    const Weld weld = Story().align().weld();
    for (const Event& event : weld.events) {
        const StoredRow row = rowOf(event);
        const auto text = eventRowJson(row);
        ASSERT_TRUE(text.has_value());
        const json j = json::parse(*text);
        EXPECT_EQ(j["seq"], row.seq);
        EXPECT_EQ(j["hash"], row.hash);
        EXPECT_EQ(j["event"].dump(), row.body) << "canonical in, canonical out";
    }
}

TEST(EventRows, NameTheRowThatIsNoEvent) {
    for (const char* body : {"", "{", "{\"b\": 1}", "{\"b\":1,\"a\":2}", "\xFF"}) {
        const StoredRow bad{41, std::string(64, 'd'), body};
        const auto csv = eventRow(bad);
        ASSERT_FALSE(csv.has_value()) << body;
        EXPECT_EQ(csv.error().code, ErrorCode::Damaged);
        EXPECT_TRUE(holds(csv.error().detail, "row 41")) << csv.error().detail;
        EXPECT_FALSE(eventRowJson(bad).has_value());
    }
}

} // namespace
} // namespace seamclock
