// How a line that a keyboard types into looks on a page.
#pragma once

#include "app/pages/page.h"

class QLineEdit;

namespace seamclock {

void styleLine(QLineEdit& line, const PageLook& look);

} // namespace seamclock
