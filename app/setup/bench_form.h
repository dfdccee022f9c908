// A bench's document as a form: limits, scale and springs, the gap rule, the order of release, the
// calibration with its points, the fitted line, its band and what is left over at each point.
#pragma once

#include "app/setup/form.h"

namespace seamclock {

std::vector<FormSection> benchForm(const JsonDraft& draft);

/// The empty document that a shop starts a bench from, without its explanations.
JsonDraft emptyBench();
/// What the field means, in the words that the empty document explains it with; empty: none there.
QString benchExplained(const std::string& pointer);

/// The plot of a calibration's points with line and band; the fit in words, or why there is none.
struct FitShown {
    PlotView plot;
    QStringList words;
    bool straight = false;
    std::vector<std::optional<double>> residuals; // [N], of each row of the document
};
FitShown fitShown(const JsonDraft& draft);

} // namespace seamclock
