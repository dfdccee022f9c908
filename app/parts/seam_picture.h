// The seam seen from its end, in one scale: sheets, plate, bead, the bead to reach, and the clamps
// with their overhang. It shows what is set and what was typed in; the plate has the colour of the
// temperature that was read on it. Sheets are plain unless their heat was estimated: then they have
// its colours, and a line where the plastic melts.
#pragma once

#include <optional>
#include <vector>

#include <QString>

#include "app/parts/part.h"

namespace seamclock {

/// A sheet's heat as it is estimated, in cells: from the face inward, and row by row from the
/// middle of the thickness to the surface.
struct SeamHeat {
    std::vector<double> depthMm; // of the cells' middles
    std::vector<double> rowEnds; // where each row ends, as a share of half the thickness
    std::vector<double> celsius; // row by row
    double meltingC = 0;

    bool operator==(const SeamHeat&) const = default;
};

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
    std::optional<SeamHeat> heat; // always with a note that says so
    QString note;                 // one quiet line below, or none

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
