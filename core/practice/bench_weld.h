// A whole weld by the virtual operator on the virtual bench, worked out before its first event is
// written: he moves the bench and tells what he sees there, each at his own instant. So a rehearsal
// with physics is a list of acts like any other, and how it is paced changes nothing.
//
// What is the same everywhere: a told number is a whole one of what a person can read (a division
// of the scale, half a degree, a tenth of a millimetre), and an instant falls on a look at the
// bench, 40 or 500 ms apart. The bench itself is in doubles, without contraction, so one program
// with one C library gives the same bits. Another library's exp or pow may differ in the last bit:
// then the record is still the same unless a value lies within a rounding error of where its told
// number changes. No program can promise that it never does; a test disturbs the bench by more
// than such a bit and finds the same records.
#pragma once

#include "core/practice/hand.h"
#include "core/practice/next_act.h"
#include "core/vbench/bend_test.h"
#include "core/vbench/virtual_bench.h"

#include <vector>

namespace seamclock {

/// What the bench knows of such a weld and no timer does.
struct BenchStory {
    BenchView joining; // when the faces had met
    BenchView release; // before the first step of it
    BenchView end;
    BendTest bend;

    bool operator==(const BenchStory&) const = default;
};

struct BenchWeld {
    // By time. Without the reasons that are owed and the closing, which nextAct knows. A take-back
    // or a backdating is of the step before it, whatever its targetN says.
    std::vector<Act> acts;
    BenchStory story;
};

/// `right`: the bench as it is, with the plan that is right for the sheets there; what the hand's
/// faults are to the bench is put in here. `card`: the plan that he welds by. Missing: as
/// VirtualBench::set, or a plan that lacks a time, a bead or a reading. Refused: the bench can't go
/// on, in its own words.
Result<BenchWeld> weldOnBench(const BenchSetup& right, const WeldPlan& card, const Hand& hand);

} // namespace seamclock
