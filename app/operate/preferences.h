// What a person set on this tablet: look, hand, pedal, where copies of the log go, whose shop it
// is. Kept in the user's own settings file; a value there that can't be meant is taken as if it
// weren't there.
#pragma once

#include "app/parts/theme.h"
#include "app/text/language.h"
#include "core/units/measure.h"

#include <QString>

namespace seamclock {

/// Of words: the sizes that can be chosen.
inline constexpr double kTextSizes[] = {1, 1.25, 1.5, 2};

inline constexpr int kLongestShop = 60; // characters of its name

struct Preferences {
    ThemeKind theme = ThemeKind::Dark;
    bool mirrored = false;
    bool lessMotion = false;
    int pedalKey = 0;                      // a Qt::Key; 0: none
    UnitSystem units = UnitSystem::Metric; // of the card, on screen and on paper
    double text = 1;                       // one of kTextSizes
    double dpi = 0;                        // 0: as the screen says
    Language language = Language::English;
    QString snapshotFolder; // where others find a copy of the log; empty: nowhere
    QString shop;           // its name, as it stands on papers; empty: nobody said

    bool operator==(const Preferences&) const = default;
};

/// `file`: empty: the user's own.
Preferences readPreferences(const QString& file = {});
void writePreferences(const Preferences& preferences, const QString& file = {});

} // namespace seamclock
