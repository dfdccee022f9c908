// What every screen is held to, whichever window shows it: targets for gloved hands, and words that
// are whole. Each answer is a list of what is wrong, a line each; empty: nothing.
#pragma once

#include <QRect>
#include <QString>
#include <QWidget>
#include <string>
#include <vector>

namespace seamclock::test {

inline constexpr double kTargetMm = 15;

/// A tablet as it is held: what it shows and how large it is.
struct Tablet {
    QSize pixels; // lying
    double scale = 1;
    double inch = 10;
    bool upright = false;

    /// In device independent pixels, as a window fills it.
    QSize window() const;
    /// Of the device independent pixels, as QScreen::physicalDotsPerInch() gives them.
    double dpi() const;
    std::string name() const;
};

/// 1280 x 800 and 1920 x 1200 at scale 1, 1.5, 2 and 2.5, of 8, 10 and 12 inch, lying and upright.
/// Those that give a window the same size in pixels and in millimetres are there once.
const std::vector<Tablet>& tablets();

struct Target {
    QWidget* widget = nullptr;
    QRect place; // in the window
    std::string name;
};
/// All that can be pressed, typed into or dragged and that stands on the screen now.
std::vector<Target> targetsOf(QWidget& window);

std::vector<std::string> targetTroubles(QWidget& window, double dpi);

/// Of a screen reader's tree: everything that can be pressed, typed into or dragged is in it, has a
/// name, and the name has all the words that stand on it. Every other part with words has a name,
/// too. `told`: how many were looked at.
std::vector<std::string> spokenTroubles(QWidget& window, int& told);

/// Every visible part whose words are cut off, outside it or over others', or of the changeover
/// under a button. `parts`: how many were looked at.
std::vector<std::string> wordTroubles(QWidget& window, int& parts);

/// More than one button that is filled blue: "your hands, now" is one.
std::vector<std::string> blueTroubles(QWidget& window);

} // namespace seamclock::test
