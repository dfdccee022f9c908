// The parts with the values of the design's pictures, and with words as long as other languages
// make them. All numbers are invented. Shared by the tests and by the program that paints the
// contact sheet.
#pragma once

#include <functional>
#include <memory>
#include <vector>

#include <QSizeF>
#include <QString>
#include <QStringList>

#include "app/parts/part.h"

namespace seamclock {

struct Sample {
    QString name;
    QSizeF units; // the part's size in design units
    std::function<std::unique_ptr<Part>()> make;
    QStringList words{}; // of long samples: what must be readable at every size of text
};

// Every part in the states of the pictures, in English.
std::vector<Sample> partSamples();

// Lamp, buttons, strip, ribbon, check row and fields with long words.
std::vector<Sample> longSamples();

} // namespace seamclock
