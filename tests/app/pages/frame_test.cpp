// Targets are at least 15 mm high and stand apart, at 8, 10 and 12 inch, upright and lying, for
// either hand; and no slot changes its place between the phases of a weld.
#include "app/pages/frame.h"

#include "app/parts/metrics.h"

#include <cmath>
#include <gtest/gtest.h>
#include <vector>

namespace seamclock {
namespace {

constexpr double kTargetMm = 15;

struct Tablet {
    const char* name;
    double widthPx;
    double heightPx;
    double inch;
};

const std::vector<Tablet>& tablets() {
    static const std::vector<Tablet> kTablets{
        {"8 inch", 1280, 800, 8},          {"10 inch", 1280, 800, 10},
        {"12 inch", 1280, 800, 12},        {"10 inch fine", 1920, 1200, 10},
        {"8 inch upright", 800, 1280, 8},  {"10 inch upright", 800, 1280, 10},
        {"12 inch upright", 800, 1280, 12}};
    return kTablets;
}

QSizeF unitsOf(const Tablet& tablet) {
    const double dpi = std::hypot(tablet.widthPx, tablet.heightPx) / tablet.inch;
    const Metrics metrics = Metrics::forDpi(dpi);
    return {tablet.widthPx / metrics.perUnit, tablet.heightPx / metrics.perUnit};
}

constexpr FrameKind kKinds[] = {FrameKind::Phase,      FrameKind::Cooling, FrameKind::Check,
                                FrameKind::Changeover, FrameKind::Page,    FrameKind::Pad};

TEST(Frame, KeepsEveryTargetAtFifteenMillimetresOnTabletsOfEightToTwelveInches) {
    for (const Tablet& tablet : tablets()) {
        for (const FrameKind kind : kKinds) {
            for (const bool mirrored : {false, true}) {
                const Frame frame = frameOf(unitsOf(tablet), kind, mirrored);
                for (const QRectF& box : {frame.back, frame.earlier, frame.stop, frame.step}) {
                    if (box.isEmpty()) {
                        continue; // a page without "4 s ago"
                    }
                    EXPECT_GE(box.height() / kUnitsPerMm, kTargetMm) << tablet.name;
                    EXPECT_GE(box.width() / kUnitsPerMm, kTargetMm) << tablet.name;
                }
                EXPECT_GE(frame.strip.height() / kUnitsPerMm, kTargetMm) << tablet.name;
            }
        }
    }
}

TEST(Frame, LetsNothingOverlapAndKeepsAllOnTheScreen) {
    for (const Tablet& tablet : tablets()) {
        const QSizeF size = unitsOf(tablet);
        for (const FrameKind kind : {FrameKind::Phase, FrameKind::Cooling, FrameKind::Check}) {
            for (const bool mirrored : {false, true}) {
                const Frame frame = frameOf(size, kind, mirrored);
                const std::vector<QRectF> boxes{
                    frame.strip,  frame.scale, frame.picture, frame.lamp, frame.sentence,
                    frame.ribbon, frame.back,  frame.earlier, frame.stop, frame.step};
                for (std::size_t i = 0; i < boxes.size(); ++i) {
                    if (boxes[i].isEmpty()) {
                        continue;
                    }
                    EXPECT_TRUE(QRectF({0, 0}, size).contains(boxes[i])) << tablet.name << " " << i;
                    for (std::size_t j = i + 1; j < boxes.size(); ++j) {
                        EXPECT_FALSE(boxes[i].intersects(boxes[j]))
                            << tablet.name << " " << i << " and " << j;
                    }
                }
            }
        }
    }
}

TEST(Frame, LeavesTheSlotsWhereTheyAreFromPhaseToPhase) {
    for (const Tablet& tablet : tablets()) {
        const Frame soak = frameOf(unitsOf(tablet), FrameKind::Phase, false);
        for (const FrameKind kind : {FrameKind::Cooling, FrameKind::Check}) {
            const Frame other = frameOf(unitsOf(tablet), kind, false);
            EXPECT_EQ(soak.back, other.back);
            EXPECT_EQ(soak.stop, other.stop);
            EXPECT_EQ(soak.step, other.step);
        }
        // In changeover the step is larger, and still holds the place it had.
        const Frame field = frameOf(unitsOf(tablet), FrameKind::Changeover, false);
        EXPECT_TRUE(field.step.adjusted(-1, -1, 1, 1).contains(soak.step)) << tablet.name;
    }
}

TEST(Frame, MirrorsForTheLeftHand) {
    const QSizeF size(1280, 800);
    const Frame right = frameOf(size, FrameKind::Phase, false);
    const Frame left = frameOf(size, FrameKind::Phase, true);
    EXPECT_DOUBLE_EQ(left.step.left(), size.width() - right.step.right());
    EXPECT_DOUBLE_EQ(left.back.right(), size.width() - right.back.left());
    EXPECT_LT(left.lamp.left(), left.picture.left());
}

} // namespace
} // namespace seamclock
