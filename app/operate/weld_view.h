// What the operator sees of one weld at one instant, and what each of the three slots would do: a
// pure function of the weld, the time and a little of the screen's own memory. It paints nothing
// and changes nothing. A screen shows the value, and hands the offer of the slot that was pressed
// back to the floor (floor.h). Nothing of the trade is decided here: phases, limits and owed
// reasons are core's, the words are the language's.
#pragma once

#include "app/parts/changeover_field.h"
#include "app/parts/check_drawing.h"
#include "app/parts/lamp.h"
#include "app/parts/ribbon.h"
#include "app/parts/scale_view.h"
#include "app/parts/seam_picture.h"
#include "app/parts/slot_button.h"
#include "app/parts/strip.h"
#include "core/bench/bench.h"
#include "core/heat/sheet_run.h"
#include "core/session/after_cut.h"
#include "core/session/align_median.h"
#include "core/shift/clash.h"
#include "core/weld/fold.h"

#include <QString>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace seamclock {

/// One press; all of it counts at one go, in this order.
struct MakeSteps {
    std::vector<WeldDetail> details;

    bool operator==(const MakeSteps&) const = default;
};
/// The last press, whole.
struct TakeBackLast {
    bool operator==(const TakeBackLast&) const = default;
};
struct SetEarlier {
    Milliseconds by{4000};

    bool operator==(const SetEarlier&) const = default;
};
enum class NumberFor {
    PlateTemperature,
    Drag,
    Recheck,
    Overshoot, // in alignment: how far the scale went before it was turned back
    BeadHeight,
    BeadWidth,
    BeadK,
    Misalignment,
    LengthLost,     // of a joint that was cut out, before it is welded again
    SheetThickness, // of a sheet that is entered by hand, before there is a weld
    SeamLength,
    ShopTemperature,
    Ambient,   // as read beside the bench, of a weld that is planned with another
    BenchValue // of a bench that is set up
};
struct AskNumber {
    NumberFor what = NumberFor::PlateTemperature;

    bool operator==(const AskNumber&) const = default;
};
enum class ReasonFor { Stop, EarlyRelease, Owed, CheckLeftOut, Trial };
struct AskReason {
    ReasonFor what = ReasonFor::Stop;
    std::string code; // Owed: the verdict's row; CheckLeftOut: the check

    bool operator==(const AskReason&) const = default;
};
/// In alignment the page of the stop also takes the word that the wheel was turned too far, and
/// back.
inline constexpr const char* kStopInAlignment = "alignment";
struct CloseWeld {
    bool operator==(const CloseWeld&) const = default;
};
struct LeaveWeld { // to the seams
    bool operator==(const LeaveWeld&) const = default;
};
struct SettleWeld {
    RebootWord word = RebootWord::None;

    bool operator==(const SettleWeld&) const = default;
};
/// What stands from earlier welds is made again.
struct CheckAnew {
    bool operator==(const CheckAnew&) const = default;
};
/// The checks that one press answers together, each by itself.
struct OneByOne {
    bool operator==(const OneByOne&) const = default;
};
/// One more joint of the same kind, at once.
struct NextJoint {
    bool operator==(const NextJoint&) const = default;
};
/// A person's own grade of the bead, or a photo of it.
struct LookCloser {
    bool operator==(const LookCloser&) const = default;
};
using Offer = std::variant<
    std::monostate, MakeSteps, TakeBackLast, SetEarlier, AskNumber, AskReason, CloseWeld, LeaveWeld,
    SettleWeld, CheckAnew, OneByOne, NextJoint, LookCloser>;

struct Slot {
    SlotView view;
    Offer offer;

    bool operator==(const Slot&) const = default;
};

/// A bead's values as they are typed one after the other, before they are one event.
struct BeadDraft {
    std::optional<std::int64_t> heightUm;
    std::optional<std::int64_t> widthUm;
    std::optional<std::int64_t> kUm;
    bool leftOut = false; // "Not measured" was said, for every place that is left

    bool operator==(const BeadDraft&) const = default;
};

struct ViewContext {
    Instant now;
    QString letter; // the bench's, A to D
    BeadDraft bead;
    bool pedal = false; // a pedal is set up: the step shows its sign
    bool lessMotion = false;
    int notSaved = 0;               // rows of this weld that are not on disk yet
    bool series = false;            // another joint can follow this one at once
    QString next;                   // the next seam of the same kind; empty: the job has none
    QString meanwhile;              // in cooling: what could be made ready; empty: nothing known
    bool oneByOne = false;          // no checks are answered together
    const SheetRun* heat = nullptr; // of the sheet, where it is estimated
    /// The next phase, begun now, would end while another bench wants the same hands.
    std::optional<Clash> clash{};
    std::optional<AlignTimes> usual{};      // of the last welds like this one
    PlateRead plateRead = PlateRead::Three; // of the bench
    /// What its scale reads by the plan's drag while nothing touches; absent: as with none.
    std::optional<std::int64_t> dragMilli{};
    /// The joining reading that is marked on its scale; absent: nobody knows.
    std::optional<std::int64_t> markedMilli{};
};

struct WeldView {
    enum class Layout { Phase, Cooling, Check, Changeover };

    Layout layout = Layout::Phase;
    LampView lamp;
    ScaleView scale;
    SeamView seam;
    CheckDrawing drawing;
    QString sentence;
    RibbonView ribbon;
    CheckRowView checks;
    ChangeoverView changeover;
    StripCellView cell;
    Slot back;
    Slot earlier; // "4 s ago"
    Slot stop;
    Slot step;
    std::int64_t onto = 0; // the last takeable event that this view shows

    bool operator==(const WeldView&) const = default;
};

WeldView weldView(const Weld& weld, const ViewContext& context);

/// The events of the last press that can be taken back, the last one first. One press may store a
/// step and the reading it stands for, also where "4 s ago" made that reading again.
std::vector<Retained> lastPress(const Weld& weld);

/// The check that is asked for now: the first open one, or a plate that has places left to read
/// and that no foreman passed over; empty: none.
std::string checkAsked(
    const Weld& weld, const Preparing& state, PlateRead places = PlateRead::Three,
    const std::optional<std::int64_t>& markedMilli = {});
/// How many of the plate's places were read, in this weld or before it.
int platePlacesRead(const Weld& weld, PlateRead places = PlateRead::Three);
/// The one that is read next; the last where all are.
const PlatePlace& plateToRead(const Weld& weld, PlateRead places = PlateRead::Three);
/// "Place 2 of 3: middle."; where faces are told apart also to which table it is turned.
QString platePlaceText(const Weld& weld, PlateRead places);
/// The checks that stand from earlier welds, in the plan's order.
std::vector<std::string> checksCarried(const Weld& weld);

/// How many places of the bead are measured: as the job asks, else one a seam of the clamping.
int beadPlaces(const Weld& weld);
/// How many of them are.
int beadPlacesMeasured(const Weld& weld);
/// Where that place lies along the seams [µm]; absent where there is only one, the worst.
std::optional<std::int64_t> beadPlaceUm(const Weld& weld, int place);
/// The place that is measured next, "Seam 2 of 3: " or "Place 2 of 5, at 1200 mm: "; empty where
/// there is only one.
QString beadPlaceText(const Weld& weld);

} // namespace seamclock
