// Changeover is the whole screen: a blue field whose dark front moves left to right and reaches the
// edge at the limit, so that the corner of an eye sees how much is left. The two blues differ too
// little to stand alone, hence the white marker on the rail of seconds. Past the limit the field is
// red and framed in white. Strip and buttons are widgets of their own on top; this one leaves their
// room free.
#pragma once

#include <QString>

#include "app/parts/part.h"
#include "app/parts/seam_picture.h"

namespace seamclock {

struct ChangeoverView {
    double elapsedMs = 0;
    double limitMs = 1;
    bool late = false;
    QString order;            // "Plate out, faces together"
    QString number;           // whole seconds
    QString of;               // "of 8.8 s"; late: "s, limit 8.8 s"
    QString limitWord;        // at the rail's end: "limit"
    QString remark;           // late: in place of the rail, or none
    bool lessMotion = false;  // the front goes in steps of a second
    bool frameWide = true;    // late: the frame steps between 10 and 4 units
    double topUnits = 106;    // left free for the strip
    double bottomUnits = 136; // left free for the buttons
    SeamView seam;

    bool operator==(const ChangeoverView&) const = default;
};

// Where the front is, 0 to 1 of the width.
double changeoverFront(const ChangeoverView& view);

class ChangeoverField : public Part {
public:
    explicit ChangeoverField(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const ChangeoverView& view);
    const ChangeoverView& view() const { return m_view; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    ChangeoverView m_view;
};

} // namespace seamclock
