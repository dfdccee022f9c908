// How a line that a keyboard types into looks on a page.
#pragma once

#include "app/pages/page.h"

class QLineEdit;

namespace seamclock {

void styleLine(QLineEdit& line, const PageLook& look);

/// Its letters shrink until all of its text is seen; what is longer yet scrolls.
void fitLine(QLineEdit& line, const PageLook& look);

} // namespace seamclock
