#include "app/operate/weld_page.h"

namespace seamclock {

FrameKind frameKindOf(const WeldView& view) {
    switch (view.layout) {
    case WeldView::Layout::Phase:
        return FrameKind::Phase;
    case WeldView::Layout::Cooling:
        return FrameKind::Cooling;
    case WeldView::Layout::Check:
        return FrameKind::Check;
    case WeldView::Layout::Changeover:
        return FrameKind::Changeover;
    }
    return FrameKind::Phase;
}

WeldPage::WeldPage(QWidget* parent)
    : Page("weld", parent), m_field(keep(new ChangeoverField(this))),
      m_scale(keep(new ScalePanel(this))), m_seam(keep(new SeamPicture(this))),
      m_drawing(keep(new CheckPicture(this))), m_lamp(keep(new Lamp(this))),
      m_sentence(keep(new Sentence("sentence", this))), m_ribbon(keep(new Ribbon(this))),
      m_checks(keep(new CheckRow(this))) {
    m_field->lower();
}

void WeldPage::show(const WeldView& view) {
    const bool moved = view.layout != m_view.layout;
    m_view = view;
    m_lamp->show(view.lamp);
    m_scale->show(view.scale);
    m_seam->show(view.seam);
    m_drawing->show(view.drawing);
    m_sentence->setText(view.sentence);
    m_ribbon->show(view.ribbon);
    m_checks->show(view.checks);
    showField();
    m_back->show(view.back.view);
    m_earlier->show(view.earlier.view);
    m_stop->show(view.stop.view);
    m_step->show(view.step.view);
    if (moved) {
        place();
    }
}

// Its rail of seconds stands above the buttons, whose height is another where the tablet stands
// upright.
void WeldPage::showField() {
    constexpr double kBetween = 2;
    const Frame frame = frameOf(units(), FrameKind::Changeover, look().mirrored);
    ChangeoverView view = m_view.changeover;
    view.bottomUnits = units().height() - frame.step.top() - kBetween;
    m_field->show(view);
}

void WeldPage::place() {
    const Frame frame = frameOf(units(), frameKindOf(m_view), look().mirrored);
    const bool field = m_view.layout == WeldView::Layout::Changeover;
    const bool check = m_view.layout == WeldView::Layout::Check;
    const QRectF nowhere;
    put(m_field, field ? QRectF({0, 0}, units()) : nowhere);
    showField();
    put(m_scale, field || check ? nowhere : frame.scale);
    put(m_seam, field || check ? nowhere : frame.picture);
    put(m_drawing, check ? frame.picture : nowhere);
    put(m_lamp, field ? nowhere : frame.lamp);
    put(m_sentence, field ? nowhere : frame.sentence);
    put(m_ribbon, field || check ? nowhere : frame.ribbon);
    put(m_checks, check ? frame.checks : nowhere);
    placeSlots(frame);
}

} // namespace seamclock
