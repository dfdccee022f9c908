// The colours of every screen, as data: three themes, and for each tone of a state a field, what is
// written on it, and an ink that may stand on a panel. Meaning follows IEC 60073 (from memory): red
// a limit passed, yellow soon or abnormal, blue the operator's action, green normal, grey no
// meaning. Nothing here draws; nobody else names a colour. The changeover's colours and the
// temperature's colours are the same in every theme.
#pragma once

#include <QColor>

namespace seamclock {

enum class ThemeKind { Dark, Light, Contrast };

enum class Tone { Normal, Soon, Act, Late, Rest };

// A field's colour, what is written on it, and the same meaning as ink on a panel or on the ground.
struct Field {
    QColor field;
    QColor on;
    QColor ink;
};

struct Theme {
    ThemeKind kind = ThemeKind::Dark;
    QColor ground;
    QColor panel;
    QColor raised;
    QColor hairline;
    QColor edge;
    QColor text;
    QColor textSoft;
    QColor button;
    QColor metal;
    QColor metalEdge;
    QColor outline; // of sheet, plate and bead
    Field tones[5]; // in the order of Tone; see tone()

    Field tone(Tone tone) const { return tones[static_cast<int>(tone)]; }
    static const Theme& of(ThemeKind kind);
};

// The whole-screen field does not depend on the theme.
struct ChangeoverColours {
    QColor done;      // the part of the limit that is used up
    QColor left;      // what is left of it
    QColor late;      // the whole field once the limit is passed
    QColor on;        // words and lines on all three
    QColor label;     // on the white button
    QColor lateLabel; // on the white button when late
};
const ChangeoverColours& changeoverColours();

// A warning's yellow mark is the same in every theme; on a light panel its dark outline carries the
// edge.
QColor yellowFill();
QColor yellowOutline();
QColor textOnPlate(); // also the melt line's dashes

// The colour of a temperature [°C], straight in OKLCH between the stops; below 20 and above 220 the
// end's colour.
QColor temperatureColour(double celsius);

// WCAG 2.1: (L1 + 0.05) / (L2 + 0.05) of the relative luminances, the lighter first; 1 to 21.
double contrastRatio(const QColor& a, const QColor& b);

} // namespace seamclock
