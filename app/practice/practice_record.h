// A trainee's history as a record for paper.
#pragma once

#include "app/print/practice_pdf.h"
#include "core/practice/practice_history.h"

#include <QString>
#include <vector>

namespace seamclock {

/// `who`: the trainee's name; empty: nobody said. `printed`: when, in words.
PracticeSheet
practiceSheet(const std::vector<PracticeLine>& lines, const QString& who, const QString& printed);

} // namespace seamclock
