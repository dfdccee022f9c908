// What is due, in words: over, soon, later, never there at all.
#include "app/shop/due_view.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

DayNames names() {
    DayNames out;
    out.benches["east"] = "A";
    return out;
}

TEST(DueView, EachHasAMarkAndTheDays) {
    const DueItem item{DueKind::Calibration, "bench:east", "East bench", "", "2030-01-07", 0};
    const auto row = [&](std::int64_t days) {
        DueItem one = item;
        one.days = days;
        return dueRow(one, names());
    };
    EXPECT_EQ(row(-12).text, "Calibration of bench A");
    EXPECT_EQ(row(-12).mark, Mark::Late);
    EXPECT_EQ(row(-12).third, "Over for 12 days (7 Jan 2030).");
    EXPECT_EQ(row(-1).third, "Over since yesterday (7 Jan 2030).");
    EXPECT_EQ(row(0).mark, Mark::Soon);
    EXPECT_EQ(row(0).third, "Holds to the end of today.");
    EXPECT_EQ(row(30).mark, Mark::Soon);
    EXPECT_EQ(row(31).mark, Mark::Wait);
    EXPECT_EQ(row(31).third, "Holds for 31 days, to 7 Jan 2030.");
    DueItem none = item;
    none.date.clear();
    EXPECT_EQ(dueRow(none, names()).mark, Mark::Trouble);
    EXPECT_EQ(dueRow(none, names()).third, "There is none at all.");
}

TEST(DueView, PeopleAndProceduresAreNamed) {
    EXPECT_EQ(
        dueRow({DueKind::Certificate, "person:ilva", "Ilva", "PE-HD 3-20 mm", "2030-01-07", 5}, {})
            .text,
        "Certificate of Ilva");
    const ListRowView none = dueRow({DueKind::Certificate, "person:nela", "Nela", "", "", 0}, {});
    EXPECT_EQ(none.text, "Certificate of Nela");
    EXPECT_EQ(none.third, "There is none at all.");
    const ListRowView attested =
        dueRow({DueKind::Attestation, "procedure:x", "x", "12 values", "2030-01-07", 5}, {});
    EXPECT_EQ(attested.text, "Attested values of x");
    EXPECT_EQ(attested.second, "12 values");
    EXPECT_EQ(attested.third, "Look again by 7 Jan 2030.");
    const ListRowView old =
        dueRow({DueKind::Attestation, "procedure:x", "x", "12 values", "2030-01-07", -5}, {});
    EXPECT_EQ(old.mark, Mark::Soon) << "it holds on";
    EXPECT_EQ(old.third, "Attested over a year ago: look again (since 7 Jan 2030).");
    EXPECT_EQ(
        dueRow({DueKind::Attestation, "procedure:x", "x", "1 value", "", 0}, {}).third,
        "Changed since they were attested.");
}

TEST(DueView, LooksFurtherAheadByATap) {
    EXPECT_EQ(furtherDays(30), 90);
    EXPECT_EQ(furtherDays(90), 365);
    EXPECT_EQ(furtherDays(365), 30);
    EXPECT_EQ(dueList({}, 90, {}).under, "Nothing is due within 90 days.");
    EXPECT_EQ(dueList({}, 90, {}).back.text, "365 days");
}

} // namespace
} // namespace seamclock
