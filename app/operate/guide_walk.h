// Help walked through by presses, for pictures and tests. Nothing here is shown to a person at
// work.
#pragma once

#include "app/operate/pictures.h"

namespace seamclock {

/// Contents, a chapter, what alarms mean, a search; then the bench again. Refused: a press that led
/// nowhere, with the sentence.
Result<void> walkGuide(Window& window, const Walk::Picture& picture);

} // namespace seamclock
