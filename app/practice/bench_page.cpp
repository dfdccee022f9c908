#include "app/practice/bench_page.h"

#include "app/practice/practice_strip.h"

#include <algorithm>

namespace seamclock {
namespace {

constexpr double kOuter = 12;
constexpr double kGap = 10;
constexpr double kStrip = 90;
constexpr double kMarker = 13; // the ribbon's, above its pieces

/// Where everything stands, in units.
struct Places {
    QRectF picture;
    QRectF seam; // the next four within the picture, from its corner
    QRectF scale;
    QRectF row;
    QRectF bench;
    QRectF lamp;
    QRectF sentence;
    QRectF ribbon;
    QRectF slider;
    std::array<QRectF, 6> controls;
    QRectF step;
};

void within(Places& places, double width, double height) {
    const double pad = 12;
    const double gap = 8;
    const double row = 92;
    const double rest = height - row - 2 * gap - 2 * pad + 4;
    const double top = rest * 0.52;
    const double seam = width * 0.44;
    places.seam = {pad, pad, seam, top};
    places.scale = {pad + seam + 20, pad, width - seam - 2 * pad - 24, top};
    places.row = {pad, pad + top + gap, width - 2 * pad, row};
    const double from = pad + top + row + 2 * gap;
    places.bench = {pad - 6, from, width - 2 * pad + 12, height - from - 4};
}

Places landscape(QSizeF units, bool mirrored, bool replay) {
    Places places;
    const double width = units.width();
    const double height = units.height();
    const double inner = width - 2 * kOuter;
    const double rowTop = 10 + kStrip + 10;
    const double controls = replay ? 104.0 : std::clamp(height * 0.2, 104.0, 154.0);
    const double controlTop = height - kOuter - controls;
    const double ribbonTop = controlTop - 10 - 44;
    const double sentence = 58;
    const double rowBottom =
        replay ? controlTop - 8 - 90 - sentence - 2 : ribbonTop - kMarker - sentence + 4;
    const double lamp = inner * 0.362;
    const double left = inner - lamp - kGap;
    places.picture = {kOuter, rowTop, left, rowBottom - rowTop};
    places.lamp = {kOuter + left + kGap, rowTop, lamp, rowBottom - rowTop};
    places.sentence = {kOuter + 6, rowBottom, inner - 12, sentence};
    places.ribbon = {kOuter, ribbonTop - kMarker, inner, 44 + kMarker + 2};
    places.slider = {kOuter, controlTop - 8 - 90, inner, 90};
    const double each = ((replay ? inner : left) - 5 * kGap) / 6;
    for (std::size_t i = 0; i < 6; ++i) {
        places.controls[i] = {
            kOuter + static_cast<double>(i) * (each + kGap), controlTop, each, controls};
    }
    places.step = {kOuter + left + kGap, controlTop, lamp, controls};
    if (mirrored) {
        for (QRectF* box : {&places.picture, &places.lamp, &places.step}) {
            box->moveLeft(width - box->right());
        }
        for (QRectF& box : places.controls) { // moved as a whole: their order stays
            box.moveLeft(box.left() + (replay ? 0 : lamp + kGap));
        }
    }
    return places;
}

Places upright(QSizeF units) {
    Places places;
    const double width = units.width();
    const double height = units.height();
    const double inner = width - 2 * kOuter;
    const double rowTop = 10 + kStrip + 10;
    const double controls = 112;
    const double controlTop = height - kOuter - controls;
    const double stepTop = controlTop - kGap - 96;
    const double ribbonTop = stepTop - 12 - 50;
    const double lamp = (ribbonTop - rowTop) * 0.36;
    places.lamp = {kOuter, rowTop, inner, lamp};
    places.sentence = {kOuter + 6, rowTop + lamp + 2, inner - 12, 104};
    const double top = places.sentence.bottom() + 4;
    places.picture = {kOuter, top, inner, ribbonTop - kMarker - 6 - top};
    places.ribbon = {kOuter, ribbonTop - kMarker, inner, 50 + kMarker + 2};
    places.slider = {kOuter, stepTop + 6, inner, 96};
    places.step = {kOuter, stepTop, inner, 96};
    // On a narrow screen the gaps give way: each of the six keeps its 15 mm.
    const double gap = std::min(kGap, (inner - 6 * (kTargetUnits + 1)) / 5);
    const double each = (inner - 5 * gap) / 6;
    for (std::size_t i = 0; i < 6; ++i) {
        places.controls[i] = {
            kOuter + static_cast<double>(i) * (each + gap), controlTop, each, controls};
    }
    return places;
}

} // namespace

LampView lampFor(const WeldView& weld) {
    LampView lamp = weld.lamp;
    if (weld.layout == WeldView::Layout::Changeover) {
        lamp.under = weld.changeover.of;
        lamp.under2 = weld.changeover.order;
    }
    return lamp;
}

BenchPage::BenchPage(QWidget* parent)
    : Page("practiceBench", parent), m_scene(keep(new BenchScene(this))),
      m_scale(keep(new ScaleFront(this))), m_row(keep(new SeamRow(this))),
      m_lamp(keep(new Lamp(this))), m_sentence(keep(new Sentence("practiceSentence", this))),
      m_ribbon(keep(new Ribbon(this))), m_checks(keep(new CheckRow(this))),
      m_slider(keep(new TimeSlider(this))) {
    for (int i = 0; i < 6; ++i) {
        auto* button = keep(new ControlButton(QString("control%1").arg(i + 1), this));
        m_controls[static_cast<std::size_t>(i)] = button;
        connect(button, &ControlButton::pressed, this, [this, i] { emit controlPressed(i); });
        connect(button, &ControlButton::slid, this, [this, i](double units) {
            emit controlSlid(i, units);
        });
        connect(button, &ControlButton::left, this, [this, i] { emit controlLeft(i); });
    }
    connect(m_row, &SeamRow::placeChosen, this, &BenchPage::placeChosen);
    connect(m_scene, &BenchScene::edgeTouched, this, &BenchPage::edgeTouched);
    connect(m_slider, &TimeSlider::moved, this, &BenchPage::timeChosen);
    m_scene->setWatermark(practiceWord());
}

void BenchPage::show(const BenchPageView& view) {
    const bool moved = view.replay != m_view.replay || view.weld.layout != m_view.weld.layout;
    m_view = view;
    m_scene->show(view.bench);
    m_scale->show(view.bench);
    m_row->show(view.bench);
    m_lamp->show(lampFor(view.weld));
    m_sentence->setText(view.weld.sentence);
    m_ribbon->show(view.weld.ribbon);
    m_checks->show(view.weld.checks);
    m_slider->show(view.time);
    for (std::size_t i = 0; i < m_controls.size(); ++i) {
        ControlView none;
        none.hidden = true;
        m_controls[i]->show(i < view.controls.size() ? view.controls[i].view : none);
    }
    SlotView step = view.weld.step.view;
    if (step.look == SlotView::Look::White) { // there is no blue field behind it here
        step.look = SlotView::Look::Act;
        step.onLate = false;
    }
    m_step->show(view.replay ? hiddenSlot() : step);
    if (moved) {
        place();
    }
}

void BenchPage::lookChanged() {
    m_scene->setWatermark(practiceWord());
}

void BenchPage::place() {
    const QSizeF size = units();
    const bool portrait = size.height() > size.width();
    Places places = portrait ? upright(size) : landscape(size, look().mirrored, m_view.replay);
    if (m_view.replay && portrait) {
        // the slider has the step's place
        places.slider = places.step;
    }
    within(places, places.picture.width(), places.picture.height());
    const QRectF nowhere;
    const bool check = m_view.weld.layout == WeldView::Layout::Check;
    put(m_scene, places.picture);
    m_scene->setPlaces(places.seam, places.bench);
    put(m_scale, places.scale.translated(places.picture.topLeft()));
    put(m_row, places.row.translated(places.picture.topLeft()));
    put(m_lamp, places.lamp);
    const bool lying = m_view.replay && !portrait;
    put(m_sentence, places.sentence);
    put(m_ribbon, check || lying ? nowhere : places.ribbon);
    put(m_checks, check && !lying ? places.ribbon.adjusted(0, kMarker - 4, 0, 2) : nowhere);
    put(m_slider, m_view.replay ? places.slider : nowhere);
    for (std::size_t i = 0; i < m_controls.size(); ++i) {
        put(m_controls[i], places.controls[i]);
    }
    put(m_back, nowhere);
    put(m_earlier, nowhere);
    put(m_stop, nowhere);
    put(m_step, m_view.replay ? nowhere : places.step);
}

} // namespace seamclock
