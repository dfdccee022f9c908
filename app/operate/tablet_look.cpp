#include "app/operate/tablet_look.h"

#include <QScreen>

namespace seamclock {

PageLook lookOf(const Preferences& preferences, const QScreen* screen) {
    PageLook look;
    look.theme = &Theme::of(preferences.theme);
    const double dpi = preferences.dpi > 0 ? preferences.dpi
                       : screen != nullptr ? screen->physicalDotsPerInch()
                                           : kUnitsPerInch;
    look.metrics = Metrics::forDpi(dpi);
    look.metrics.text = preferences.text;
    look.mirrored = preferences.mirrored;
    return look;
}

} // namespace seamclock
