#include "app/parts/sign.h"

#include <algorithm>

#include <QPainter>

#include "app/parts/brush.h"

namespace seamclock {

namespace {

// What is filled, and what is drawn as a line; phases on 40 x 28, the others on 24 x 24.
struct Drawing {
    const char* filled = "";
    const char* line = "";
    bool dashed = false;
};

#define SEAM_ON_PLATE                                                                              \
    "R0 9.8 12.6 8.6 0.6 R27.4 9.8 12.6 8.6 0.6 R11.9 5.4 4.6 17.4 2.2 R23.5 5.4 4.6 17.4 2.2 "    \
    "R17.4 0.8 5.2 26.4 0.6"
#define SEAM_JOINED                                                                                \
    "R0 9.8 14.4 8.6 0.6 R25.6 9.8 14.4 8.6 0.6 R14 5.4 5.6 17.4 2.4 R20.4 5.4 5.6 17.4 2.4"
#define SEAM_JOINED_LOW "R0 15 14.4 8 0.6 R25.6 15 14.4 8 0.6 R14 11 5.6 16 2.4 R20.4 11 5.6 16 2.4"
#define ARROWS_INWARD                                                                              \
    "M0.8 3.6 L8.6 3.6 M5.8 0.8 L8.6 3.6 L5.8 6.4 M39.2 3.6 L31.4 3.6 M34.2 0.8 L31.4 3.6 L34.2 "  \
    "6.4"
#define SPEAKER "M2.5 9.2 L6 9.2 L10.8 5 L10.8 19 L6 14.8 L2.5 14.8 Z "
#define DISK "M4 4 L16.4 4 L20 7.6 L20 20 L4 20 Z M8 4 L8 8 L14.6 8 L14.6 4 "

Drawing drawingOf(Sign sign) {
    switch (sign) {
    case Sign::FreeBench:
        return {"", "M1 16 L39 16 M6.5 16 L6.5 21.5 M33.5 16 L33.5 21.5"};
    case Sign::Prepare:
        return {"R0 9.8 13 8.6 0.6 R27 9.8 13 8.6 0.6", "M20 1.5 L20 26.5", true};
    case Sign::Align:
        return {SEAM_ON_PLATE, ARROWS_INWARD};
    case Sign::Soak:
        return {SEAM_ON_PLATE, ""};
    case Sign::Changeover:
        return {
            "R0 15.6 12 8.6 0.6 R28 15.6 12 8.6 0.6 R17.2 10 5.6 16.6 0.6",
            "M20 7.6 L20 1.2 M17 4.2 L20 1.2 L23 4.2"};
    case Sign::BuildUp:
        return {SEAM_JOINED, ARROWS_INWARD};
    case Sign::Cooling:
        return {SEAM_JOINED, "M8 1.6 L32 1.6 M8 26.4 L32 26.4"};
    case Sign::Release:
        return {SEAM_JOINED_LOW, "M20 8.6 L20 1.2 M16.8 4.4 L20 1.2 L23.2 4.4"};
    case Sign::Look:
        return {
            SEAM_JOINED_LOW " O20 4.8 1.7",
            "M11.6 4.8 C14.4 0.2 25.6 0.2 28.4 4.8 C25.6 9.4 14.4 9.4 11.6 4.8 Z"};
    case Sign::Sound:
        return {"", SPEAKER "A10.8 12 4.6 -42 84 A10.8 12 9 -46 92"};
    case Sign::Mute:
        return {"", SPEAKER "M15 9 L21 15 M21 9 L15 15"};
    case Sign::Saved:
        return {"", DISK "M8.2 14 L11 16.8 L16 11.6"};
    case Sign::NotSaved:
        return {"", DISK "M9.2 11.4 L15 17.2 M15 11.4 L9.2 17.2"};
    case Sign::Pedal:
        return {"", "M2 21 L22 21 M3 20.4 L21.4 11.4 M11 2.4 L11 10.8 M7.4 7.4 L11 11 L14.6 7.4"};
    case Sign::Back:
        return {
            "", "M9 4 L3.4 9.6 L9 15.2 M3.4 9.6 L14.6 9.6 C18.6 9.6 21 12 21 15.2 C21 18.2 19 20.2 "
                "16.4 20.2"};
    case Sign::Lock:
        return {
            "", "R5 10.6 14 10.4 1.6 M8 10.6 L8 7.4 C8 2 16 2 16 7.4 L16 10.6 M12 14.8 L12 16.8"};
    case Sign::Wheel:
        return {
            "", "O12 12 9.4 O12 12 1.4 M12 2.6 L12 21.4 M3.86 7.3 L20.14 16.7 M3.86 16.7 L20.14 "
                "7.3"};
    case Sign::Clamp:
        return {
            "", "M15.5 17 L4 17 L4 3.4 L15.5 3.4 L15.5 7.6 M12 7.6 L19 7.6 M15.5 12.4 L15.5 21.4 "
                "M12 12.4 L19 12.4 M12.4 21.4 L18.6 21.4"};
    case Sign::PlateTemperature:
        return {
            "O12 17 1.8",
            "M9.2 13.2 L9.2 5 C9.2 1.4 14.8 1.4 14.8 5 L14.8 13.2 C18.4 15.4 17 21.6 12 "
            "21.6 C7 21.6 5.6 15.4 9.2 13.2 M12 8 L12 16"};
    case Sign::Draught:
        return {
            "", "M2.5 8.4 L11.6 8.4 C15.4 8.4 15.2 3.2 12 3.2 C10.6 3.2 9.8 4 9.6 5.2 M2.5 12.4 "
                "L18 12.4 C22.6 12.4 22.4 6.4 18.6 6.4 C17 6.4 16 7.4 15.8 8.6 M2.5 16.4 L13.6 "
                "16.4 C17.6 16.4 17.4 21.4 14 21.4 C12.6 21.4 11.8 20.6 11.6 19.6"};
    case Sign::Damp:
        return {
            "", "M12 2.6 C9.4 6.4 5.4 10.8 5.4 15 C5.4 18.6 8.4 21.4 12 21.4 C15.6 21.4 18.6 18.6 "
                "18.6 15 C18.6 10.8 14.6 6.4 12 2.6 Z"};
    case Sign::Person:
        return {"", "O12 7.4 4.4 M4.4 21 C4.4 12.4 19.6 12.4 19.6 21"};
    case Sign::Note:
        return {
            "", "M5 2.8 L14.6 2.8 L19 7.2 L19 21.2 L5 21.2 Z M9 8 L11.4 8 M9 12.2 L15 12.2 M9 16.4 "
                "L15 16.4"};
    case Sign::Shield:
        return {
            "", "M12 2.4 L20 5.2 L20 11.4 C20 16.6 16.4 20 12 21.6 C7.6 20 4 16.6 4 11.4 L4 5.2 Z "
                "M8.4 12 L11.2 14.8 L16 9.4"};
    case Sign::Camera:
        return {
            "", "M2.6 7.6 L7 7.6 L8.8 4.6 L15.2 4.6 L17 7.6 L21.4 7.6 L21.4 19.6 L2.6 19.6 Z O12 "
                "13.2 3.8"};
    case Sign::Print:
        return {
            "", "M7 8.4 L7 3 L17 3 L17 8.4 M7 17 L3 17 L3 8.4 L21 8.4 L21 17 L17 17 R7 13.6 10 7.6 "
                "0.4"};
    case Sign::Search:
        return {"", "O10.4 10.4 7 M15.6 15.6 L21.4 21.4"};
    case Sign::Erase:
        return {
            "",
            "M8.4 4.8 L22 4.8 L22 19.2 L8.4 19.2 L2 12 Z M12 9.2 L17.6 14.8 M17.6 9.2 L12 14.8"};
    case Sign::Battery:
        return {"", "R1.6 7 18 10 1.6 M22.4 10.4 L22.4 13.6 M5.6 10.6 L5.6 13.4"};
    case Sign::Charger:
        return {
            "", "M8.8 2.4 L8.8 7.6 M15.2 2.4 L15.2 7.6 M5.4 7.6 L18.6 7.6 M6.4 7.6 L6.4 11.4 C6.4 "
                "18.6 17.6 18.6 17.6 11.4 L17.6 7.6 M12 17 L12 21.8"};
    case Sign::Spring:
        return {"", "M1.4 12 L4 12 L6 6 L10 18 L14 6 L18 18 L20 12 L22.6 12"};
    case Sign::PlanedEdge:
        return {
            "", "M1.6 12.4 L13.6 12.4 L13.6 21 L1.6 21 M13.6 12.4 C13.6 5.4 21.8 3 22 8 C22.1 11.4 "
                "17.4 11.4 17.6 8.2 M18.4 15 L18.4 21"};
    case Sign::Remark:
        return {
            "", "M2.8 4 L21.2 4 L21.2 16.2 L12 16.2 L7.2 20.8 L7.2 16.2 L2.8 16.2 Z M7.4 8.4 L16.6 "
                "8.4 M7.4 12 L13 12"};
    case Sign::Menu:
        return {"", "M2.4 5.4 L21.6 5.4 M2.4 12 L21.6 12 M2.4 18.6 L21.6 18.6"};
    }
    return {};
}

#undef SEAM_ON_PLATE
#undef SEAM_JOINED
#undef SEAM_JOINED_LOW
#undef ARROWS_INWARD
#undef SPEAKER
#undef DISK

} // namespace

bool isPhaseSign(Sign sign) {
    return sign <= Sign::Look;
}

void paintSign(QPainter& painter, const QRectF& box, Sign sign, const QColor& ink) {
    const QSizeF grid = isPhaseSign(sign) ? QSizeF(40, 28) : QSizeF(24, 24);
    const double scale = std::min(box.width() / grid.width(), box.height() / grid.height());
    const Drawing drawing = drawingOf(sign);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(box.center());
    painter.scale(scale, scale);
    painter.translate(-grid.width() / 2, -grid.height() / 2);
    painter.setPen(Qt::NoPen);
    painter.setBrush(ink);
    QPainterPath filled = pathOf(drawing.filled);
    filled.setFillRule(Qt::WindingFill);
    painter.drawPath(filled);
    QPen pen = roundPen(ink, 2);
    if (drawing.dashed) {
        pen.setDashPattern({1.2, 1.9});
    }
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(pathOf(drawing.line));
    painter.restore();
}

} // namespace seamclock
