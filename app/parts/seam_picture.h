// The seam seen from its end, in one scale: sheets, plate, bead, the bead to reach, and the clamps
// with their overhang. It shows what is set and what was typed in, no estimate: sheets are plain,
// since nobody has worked out their temperature; the plate has the colour of the temperature that
// was read on it.
#pragma once

#include <optional>

#include <QString>

#include "app/parts/part.h"

namespace seamclock {

struct SeamView {
    enum class Phase { Prepare, Align, Soak, Changeover, BuildUp, Cooling, Release, Look };

    Phase phase = Phase::Prepare;
    double thicknessMm = 10;
    double plateMm = 10;
    double beadMm = 1;     // to reach
    double beadNowMm = 0;  // as far as it is known: 0 in align till the bead was judged
    double overhangMm = 0; // of the sheet beyond its clamp; 0: about twice the thickness
    QString beadText;      // "bead 2.0 mm"
    QString plateText;     // "213 °C"
    double progress = 0;   // 0 to 1: the plate's way up, or the faces' way together
    std::optional<double> plateC;
    QString note; // one quiet line below, or none

    bool operator==(const SeamView&) const = default;
};

// Where a seam is painted on a field of its own (changeover), lines are white and clamps
// see-through.
enum class SeamGround { Panel, Field };

void paintSeam(
    QPainter& painter, const QRectF& box, const SeamView& view, const Theme& theme,
    const Metrics& metrics, SeamGround ground);

class SeamPicture : public Part {
public:
    explicit SeamPicture(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const SeamView& view);
    const SeamView& view() const { return m_view; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    SeamView m_view;
};

} // namespace seamclock
