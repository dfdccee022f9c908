// The practice bench and, on the same page, a take seen again: the operator's lamp, sentence,
// ribbon and step as they are, with the bench in the picture's place and six controls below it. In
// a replay the controls move time, and a slider with the weld's events stands in the ribbon's
// place.
#pragma once

#include "app/operate/weld_view.h"
#include "app/pages/page.h"
#include "app/practice/bench_controls.h"
#include "app/practice/bench_scene.h"
#include "app/practice/control_button.h"
#include "app/practice/time_slider.h"

#include <array>

namespace seamclock {

struct BenchPageView {
    WeldView weld;
    BenchDrawing bench;
    std::vector<Control> controls; // six
    bool replay = false;
    TimeSliderView time; // of a replay

    bool operator==(const BenchPageView&) const = default;
};

/// In changeover the operator's whole screen is the lamp; here it is a lamp in its place.
LampView lampFor(const WeldView& weld);

class BenchPage : public Page {
    Q_OBJECT

public:
    explicit BenchPage(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const BenchPageView& view);
    const BenchPageView& view() const { return m_view; }
    ControlButton* control(int index) { return m_controls[static_cast<std::size_t>(index)]; }
    TimeSlider* slider() { return m_slider; }

signals:
    void controlPressed(int index);
    void controlSlid(int index, double units);
    void controlLeft(int index);
    void placeChosen(int place);
    void edgeTouched(int sheet);
    void timeChosen(double share);

protected:
    void place() override;
    void lookChanged() override;

private:
    BenchPageView m_view;
    BenchScene* m_scene;
    ScaleFront* m_scale;
    SeamRow* m_row;
    Lamp* m_lamp;
    Sentence* m_sentence;
    Ribbon* m_ribbon;
    CheckRow* m_checks;
    TimeSlider* m_slider;
    std::array<ControlButton*, 6> m_controls{};
};

} // namespace seamclock
