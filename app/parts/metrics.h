// Sizes are held in millimetres, whatever the screen: one design unit is a pixel of a 10.0 inch
// screen of 1280 x 800, that is 150.9 dpi or 5.94 units a millimetre. A screen's own density gives
// pixels per unit; the size of text that a person chose (100 to 200 %) is kept beside it, as it
// enlarges words only, never the picture.
#pragma once

namespace seamclock {

inline constexpr double kUnitsPerInch = 150.9;
inline constexpr double kUnitsPerMm = kUnitsPerInch / 25.4;

// What a gloved finger needs: every target is at least so high, 15 mm.
inline constexpr double kTargetUnits = 90;

struct Metrics {
    double perUnit = 1; // device independent pixels a unit
    double text =
        1; // 1 to 2: labels and second lines grow by it; clock, word and step button do not

    bool operator==(const Metrics&) const = default;

    double px(double units) const { return units * perUnit; }
    double textPx(double units) const { return units * perUnit * text; }

    // dpi: of the device independent pixels, as QScreen::physicalDotsPerInch() gives them
    static Metrics forDpi(double dpi);
};

} // namespace seamclock
