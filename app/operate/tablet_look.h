// How pages look on this tablet: what a person set, on the screen that the window stands on.
#pragma once

#include "app/operate/preferences.h"
#include "app/pages/page.h"

class QScreen;

namespace seamclock {

/// Sizes by what the preferences say, else by the screen's physical size. `screen` may be null. No
/// watermark: only the window knows whose joints it shows.
PageLook lookOf(const Preferences& preferences, const QScreen* screen);

} // namespace seamclock
