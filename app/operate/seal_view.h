// What the page of the day's seal shows, as a value: the day's joints, what is open, what is not on
// disk, and the seal's fingerprint in groups of four. It reads nothing and decides nothing but
// which button is the one to press.
#pragma once

#include "app/operate/day_closing.h"
#include "app/pages/page.h"
#include "app/parts/mark.h"

#include <QStringList>
#include <vector>

namespace seamclock {

struct SealView {
    struct Line {
        Mark mark = Mark::Open;
        Tone tone = Tone::Rest;
        QString text;
        QString under;

        bool operator==(const Line&) const = default;
    };

    QString title;
    std::vector<Line> lines;
    QString groupsTitle;
    QStringList groups; // of the fingerprint; none: not sealed
    QString why;        // why the fingerprint must leave the tablet
    QString sentence;   // what came of the last press
    SlotView back;
    SlotView stop;
    SlotView step;

    bool operator==(const SealView&) const = default;
};

/// Where the page stands.
struct SealStage {
    DayClosing day;
    std::vector<QString> open; // "Joint 12 on bench A"
    bool working = false;      // a seal or a report is under way
    QString savedTo;           // the report's file; empty: none yet
    QString refused;           // the last press, with its sentence
    bool fromLog = false;      // that is where it leads back to; else to the desk
};

/// Whether the step's button seals; if not, it saves the report, and once that is done it leaves.
bool stepSeals(const SealStage& stage);
SealView sealView(const SealStage& stage);

} // namespace seamclock
