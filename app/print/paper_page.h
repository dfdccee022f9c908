// What all papers share, whatever stands on them: the page, the inks and the letters.
#pragma once

#include <QColor>
#include <QFont>
#include <QPageLayout>
#include <cstdint>

namespace seamclock {

enum class Paper : std::uint8_t { A4, Letter };

/// Letter where the machine's country uses it.
Paper paperOfLocale();

inline constexpr int kPaperDotsPerInch = 1200;
inline constexpr double kPaperMarginMm = 12; // what every printer can print, and a punch

/// Upright, with the same margin on every side.
QPageLayout pageOf(Paper paper, double marginMm = kPaperMarginMm);

inline constexpr QColor kPaperInk(0, 0, 0);
inline constexpr QColor kPaperSoft(70, 70, 70);

/// Without shaping: Inter's contextual forms of ":", "-", "×" and "(" beside digits have no
/// character of their own in a PDF, and a reader that copies the text would lose them.
QFont paperFont(double size, QFont::Weight weight);

} // namespace seamclock
