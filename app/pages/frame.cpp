#include "app/pages/frame.h"

#include <algorithm>

namespace seamclock {
namespace {

constexpr double kOuter = 16;
constexpr double kGap = 10;
constexpr double kStrip = 90;
constexpr double kTop = 12;
constexpr double kTarget = 90; // 15 mm
constexpr double kMarker = 13; // the ribbon's, above its pieces
constexpr double kKeyGap = 13; // the number pad's

void mirror(QRectF& box, double width) {
    box.moveLeft(width - box.right());
}

void landscape(Frame& frame, double width, double height, FrameKind kind) {
    const bool low = height < 700;
    const double slot = low ? 96 : 122;
    const double ribbon = low ? 48 : 56;
    const double slotTop = height - kOuter - slot;
    const double ribbonTop = slotTop - (low ? 14 : 24) - ribbon;
    const double bannerTop = slotTop - (low ? 4 : 12) - kTarget;
    const double sentence = low ? 54 : 70;
    const double rowTop = kTop + kStrip + (low ? 6 : 12);
    const double rowBottom = bannerTop - sentence - (low ? 2 : 0);
    const double inner = width - 2 * kOuter;
    frame.body = {kOuter, rowTop, inner, slotTop - 14 - rowTop};
    frame.sentence = {kOuter + 6, rowBottom, inner - 12, bannerTop - rowBottom};
    frame.ribbon = {kOuter, ribbonTop - kMarker, inner, ribbon + kMarker + 2};
    frame.checks = {kOuter, ribbonTop - 4, inner, ribbon + 8};
    frame.banner = {kOuter, bannerTop, inner, kTarget};
    const double row = rowBottom - rowTop;
    const double lamp = inner * (kind == FrameKind::Cooling ? 0.51 : 0.359);
    const double scale = kind == FrameKind::Check ? 0 : std::max(196.0, inner * 0.157);
    frame.lamp = {width - kOuter - lamp, rowTop, lamp, row};
    frame.scale = {kOuter, rowTop, scale, row};
    const double left = scale > 0 ? kOuter + scale + 12 : kOuter;
    frame.picture = {left, rowTop, frame.lamp.left() - 12 - left, row};
    const bool field = kind == FrameKind::Changeover;
    const double step = inner * (field ? 0.615 : 0.494);
    frame.step = {width - kOuter - step, slotTop, step, slot};
    const double rest = inner - step - kGap;
    if (kind == FrameKind::Page || kind == FrameKind::Pad) {
        const double half = (rest - kGap) / 2;
        frame.back = {kOuter, slotTop, half, slot};
        frame.stop = {kOuter + half + kGap, slotTop, half, slot};
        frame.earlier = {};
        return;
    }
    const double earlier = std::max(kTarget + 14, rest * 0.19);
    const double both = rest - earlier - 2 * kGap;
    const double back = both * (field ? 0.5 : 0.47);
    frame.back = {kOuter, slotTop, back, slot};
    frame.earlier = {kOuter + back + kGap, slotTop, earlier, slot};
    frame.stop = {frame.earlier.right() + kGap, slotTop, both - back, slot};
}

void upright(Frame& frame, double width, double height, FrameKind kind) {
    const double inner = width - 2 * kOuter;
    const double sideTop = height - kGap - kTarget;
    // A weld's step has a line below its words, as it has where the tablet lies.
    const bool page = kind == FrameKind::Page || kind == FrameKind::Pad;
    const double step = page ? 96 : height < 1100 ? 110 : 122;
    const double stepTop = sideTop - kGap - step;
    const double ribbonTop = stepTop - 12 - 52;
    const double rowTop = kTop + kStrip + 12;
    frame.body = {kOuter, rowTop, inner, stepTop - 14 - rowTop};
    const double lamp = (ribbonTop - rowTop) * 0.415;
    frame.lamp = {kOuter, rowTop, inner, lamp};
    frame.sentence = {kOuter + 6, rowTop + lamp + 4, inner - 12, 130};
    const double pictureTop = frame.sentence.bottom() + 6;
    const double row = ribbonTop - kMarker - 6 - pictureTop;
    const double scale = kind == FrameKind::Check ? 0 : 196;
    frame.scale = {kOuter, pictureTop, scale, row};
    const double left = scale > 0 ? kOuter + scale + 12 : kOuter;
    frame.picture = {left, pictureTop, width - kOuter - left, row};
    frame.ribbon = {kOuter, ribbonTop - kMarker, inner, 52 + kMarker + 2};
    frame.checks = {kOuter, ribbonTop - 4, inner, 56};
    frame.banner = {kOuter, stepTop - 8 - kTarget, inner, kTarget};
    frame.step = {kOuter, stepTop, inner, step};
    if (page) {
        const double half = (inner - kGap) / 2;
        frame.back = {kOuter, sideTop, half, kTarget};
        frame.stop = {kOuter + half + kGap, sideTop, half, kTarget};
        return;
    }
    const double earlier = 120;
    const double half = (inner - earlier - 2 * kGap) / 2;
    frame.back = {kOuter, sideTop, half, kTarget};
    frame.earlier = {kOuter + half + kGap, sideTop, earlier, kTarget};
    frame.stop = {frame.earlier.right() + kGap, sideTop, half, kTarget};
}

} // namespace

Frame frameOf(QSizeF units, FrameKind kind, bool mirrored) {
    Frame frame;
    const double width = units.width();
    const double height = units.height();
    frame.portrait = height > width;
    frame.strip = {kOuter, kTop, width - 2 * kOuter, kStrip};
    if (frame.portrait) {
        upright(frame, width, height, kind);
    } else {
        landscape(frame, width, height, kind);
    }
    if (mirrored) {
        for (QRectF* box :
             {&frame.scale, &frame.picture, &frame.lamp, &frame.back, &frame.earlier, &frame.stop,
              &frame.step}) {
            mirror(*box, width);
        }
    }
    return frame;
}

PadHalves padHalves(const Frame& frame, double width, bool mirrored) {
    PadHalves halves{frame.body, {}, frame.body};
    QRectF& left = halves.field;
    QRectF& right = halves.pad;
    if (frame.portrait) {
        // four rows of keys of 15 mm; the field has what they leave
        const double keys = std::max(4 * kTarget + 3 * kKeyGap, frame.body.height() * 0.44);
        left.setHeight(frame.body.height() - 12 - keys);
        right.setTop(left.bottom() + 12);
    } else {
        left.setWidth(frame.body.width() * 0.513);
        right.setLeft(left.right() + 16);
        if (mirrored) {
            mirror(left, width);
            mirror(right, width);
        }
    }
    const double sentence = frame.portrait ? 72 : 96;
    halves.sentence = {left.x() + 6, left.bottom() - sentence, left.width() - 12, sentence};
    left.setHeight(left.height() - sentence);
    return halves;
}

} // namespace seamclock
