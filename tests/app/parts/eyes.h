// What is left of a picture for eyes that see some colours alike, and where colour is gone.
#pragma once

#include <QColor>
#include <QImage>
#include <array>

namespace seamclock::test {

struct Eyes {
    using Matrix = std::array<std::array<double, 3>, 3>; // on linear sRGB

    const char* name;
    Matrix matrix;
};

/// Protanopia, deuteranopia, tritanopia: G. Machado, M. Oliveira, L. Fernandes, "A
/// Physiologically-based Model for Simulation of Color Vision Deficiency", IEEE TVCG 15 (2009),
/// severity 1.0. The numbers were written down from memory, and agree with those that other
/// open programs print from the authors' table. Grey: the relative luminance of WCAG 2.1.
const std::array<Eyes, 4>& weakEyes();
/// As colours are.
const Eyes& plainEyes();

QImage seenBy(const QImage& image, const Eyes& eyes);
QColor seenBy(const QColor& colour, const Eyes& eyes);

/// In OKLab, x 100. B. Ottosson, "A perceptual color space for image processing" (2020); its
/// matrices from memory.
double colourDistance(const QColor& a, const QColor& b);

} // namespace seamclock::test
