// One line drawing for each check of preparation and each step of release. Blue is what you set or
// look at; the rest is metal and outline. Two views where "the same at both ends" is what matters.
#pragma once

#include <utility>
#include <vector>

#include <QString>

#include "app/parts/part.h"

namespace seamclock {

// The captions of the drawings, so that the words stay with whoever has the language. English as
// they come.
struct CheckWords {
    QString fromEnd = QStringLiteral("from the end");
    QString fromAbove = QStringLiteral("from above");
    QString fixedTable = QStringLiteral("fixed table");
    QString movingTable = QStringLiteral("moving table");
    QString same = QStringLiteral("the same");
    QString readHere = QStringLiteral("read on the face");
    QString front = QStringLiteral("front");
    QString back = QStringLiteral("back");

    bool operator==(const CheckWords&) const = default;
};

struct CheckDrawing {
    // plate_warm, plate_temperature, scale_zero, sound_heard, drag, film_off, edges_planed,
    // plate_wiped, gap, first_sheet, clamping_gap, second_sheet, edges_meet, shielded;
    // clamps_eased, bars_open (or bars_opened), spring_off, sheet_out, bead. Another code paints
    // the seam before it is made.
    QString check;
    QString value; // "8 mm", where the check has one
    // plate_temperature: the column that is read next, from 0, and what each column is called.
    int place = 0;
    std::vector<std::pair<int, int>> places{{0, 1}, {1, 2}, {2, 3}};
    CheckWords words;

    bool operator==(const CheckDrawing&) const = default;
};

// The codes that have a drawing of their own.
const std::vector<QString>& drawnChecks();

class CheckPicture : public Part {
public:
    explicit CheckPicture(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const CheckDrawing& view);
    const CheckDrawing& view() const { return m_view; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    CheckDrawing m_view;
};

} // namespace seamclock
