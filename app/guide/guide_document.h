// A chapter as a document that can be read: on the screen in the theme's colours, on paper in
// black. Both are set by this one code, so that they can't differ in what they say. Sizes follow
// one unit, which is a pixel's part of a point on paper and of a design unit on the screen.
#pragma once

#include "app/guide/guide.h"

#include <QColor>
#include <QFont>
#include <QTextDocument>

namespace seamclock {

struct GuideLook {
    double unit = 1;    // [px]
    double letters = 1; // of the body [units]
    QColor text;
    QColor soft;    // code, captions
    QColor edge;    // of tables
    QColor raised;  // behind a table's heads and code
    QColor caution; // behind what may hurt somebody
    QColor onCaution;
    double widest = 1;     // of a picture [px]
    bool forPaper = false; // letters without shaping: a reader copies all signs then
};

/// Sets the chapter into the document. Pictures that are in none of the guide's folders are left
/// out, and nothing stands in their place.
void setChapter(
    QTextDocument& document, const Guide& guide, const GuideChapter& chapter,
    const GuideLook& look);

} // namespace seamclock
