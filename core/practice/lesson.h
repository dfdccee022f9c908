// A lesson: what is welded, what goes wrong that nobody tells the trainee, and what is to be
// noticed. Read from a file (lesson_codec.h), so that a shop can write its own.
#pragma once

#include "core/base/result.h"
#include "core/heat/material.h"
#include "core/session/order.h"
#include "core/vbench/virtual_bench.h"
#include "core/weld/event.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace seamclock {

/// Something that is wrong and can be seen, by one who looks: what a lesson asks to be noticed and
/// a trainee can say ("Something is wrong").
enum class Wrong {
    PlateCold,
    PlateHot,
    PlateDirty,
    ColdSpot,
    WrongRow,  // the card was made for another thickness than lies there
    WrongUnit, // its readings are of another unit: kgf taken for N
    Draught,
    ZeroOff,      // the scale does not stand on zero without force
    SpringDrifts, // a locked wheel gives way: the reading falls more than it should
    EdgeLeans     // one side of the edge stands behind the other
};
/// "plate_cold" …
std::string_view toString(Wrong wrong);
std::optional<Wrong> wrongFromString(std::string_view code);
/// All of them, as they are offered.
const std::vector<Wrong>& allWrong();

/// Somebody calls in soak: the screen says so and rings; who takes the call sees no bench and no
/// lamp until it is over.
struct PhoneCall {
    Milliseconds intoSoak{0};
    Milliseconds lasts{0};

    bool operator==(const PhoneCall&) const = default;
};

/// What the trainee is handed in place of the right card.
struct Handout {
    std::optional<std::int64_t> thicknessUm; // the row of that one
    bool kgfForN = false;                    // the readings are too small by 9.80665

    bool operator==(const Handout&) const = default;
};

struct Lesson {
    std::string id;      // "pe10-first"
    int place = 1;       // in the list
    std::string title;   // in the trainee's words; English, as the file has it
    std::string teaches; // one or two sentences, shown before
    std::string after;   // likewise, shown with the result
    std::string procedure;
    std::string bench;
    std::string material; // of core/heat
    std::int64_t thicknessUm = 0;
    std::int64_t lengthUm = 0;
    std::optional<std::int64_t> ambientMc;
    std::int64_t dragMn = 0; // as the table really has it [mN]
    int welds = 1;           // to be made
    bool plateWarm = true;
    BenchFaults faults;
    Handout handout;
    std::optional<PhoneCall> call;
    std::vector<Wrong> notice;

    bool operator==(const Lesson&) const = default;
};

/// What is really wrong in it; what else is noticed is a false alarm.
std::vector<Wrong> wrongIn(const Lesson& lesson);

/// What lessons are made with: everything that the program came with or a log keeps.
struct PracticeShop {
    std::vector<ProcedureDocument> procedures;
    std::vector<BenchDocument> benches;
    std::vector<Material> materials;
};

/// A lesson with the plan by which it ought to be welded, and the order that the trainee's weld is
/// opened with, which may be wrong on purpose.
struct SetLesson {
    Lesson lesson;
    BenchSetup setup;    // with the right plan
    BenchDocument bench; // that it is made on, whatever card is handed out
    WeldOrder order;     // of type practice; the handout's row in it
};

/// Made already: what was attested then is not asked for again, as a document alone does not say
/// it.
enum class LessonFor { Making, MadeAlready };

/// Missing: the shop lacks procedure, bench or material, by name. Otherwise as makePlan and
/// VirtualBench::set.
Result<SetLesson>
setLesson(const Lesson& lesson, const PracticeShop& shop, LessonFor what = LessonFor::Making);

/// Whether a weld was opened with such an order: its sheets have no paper, and its seam is the
/// lesson.
bool isOfLesson(const WeldOpened& opened);

/// The bench of a card whose maker took the springs' newtons for kgf: every reading is too small.
Result<BenchDocument> takenForKgf(Bench bench);

} // namespace seamclock
