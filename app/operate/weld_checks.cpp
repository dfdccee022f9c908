#include "app/operate/weld_checks.h"

#include "app/text/numbers.h"
#include "app/text/words.h"
#include "core/procedure/fume.h"
#include "core/session/carry.h"
#include "core/weld/force_check.h"

#include <QCoreApplication>
#include <algorithm>

namespace seamclock {
namespace {

/// From when the plate's control shows its heat until its faces are worth measuring [practice].
constexpr Milliseconds kPlateSettles{600'000};

struct Operate {
    Q_DECLARE_TR_FUNCTIONS(Operate)
};

QString tr(const char* text) {
    return Operate::tr(text);
}

bool isIn(const std::vector<std::string>& list, const std::string& check) {
    return std::find(list.begin(), list.end(), check) != list.end();
}

CheckWords captions() {
    CheckWords words;
    words.fromEnd = tr("from the end");
    words.fromAbove = tr("from above");
    words.fixedTable = tr("fixed table");
    words.movingTable = tr("moving table");
    words.same = tr("the same");
    words.readHere = tr("read on the face");
    words.front = tr("front");
    words.back = tr("back");
    return words;
}

/// Those that are made in this weld; what stands from before is one cell, the first.
void checkRow(Sketch& s, const Preparing& state, const std::string& asked) {
    const std::vector<std::string> carried = checksCarried(s.weld);
    if (!carried.empty()) {
        CheckRowView::Cell cell;
        cell.name = tr("%1 as before").arg(carried.size());
        cell.done = true;
        s.view.checks.cells.push_back(cell);
    }
    for (const std::string& check : s.plan().checks) {
        if (isIn(carried, check)) {
            continue;
        }
        const bool overridden =
            std::any_of(s.standing.begin(), s.standing.end(), [&](const Retained& event) {
                const auto* left = std::get_if<CheckOverridden>(&event.d);
                return left != nullptr && left->check == check;
            });
        CheckRowView::Cell cell;
        cell.name = check == asked && check == kDrag && isForceAsked(s.weld, s.context.markedMilli)
                        ? tr("force")
                        : checkWord(check);
        cell.done = state.settled.count(check) > 0 && check != asked;
        cell.now = check == asked;
        cell.overridden = cell.done && overridden;
        s.view.checks.cells.push_back(cell);
    }
}

void set(Sketch& s, const QString& word, const QString& number, const QString& unit) {
    s.lamp(Tone::Rest, Mark::Act, word);
    s.view.lamp.calm = true;
    s.view.lamp.number = number;
    s.view.lamp.unit = unit;
}

CheckMade passed(const std::string& code) {
    CheckMade made;
    made.check = code;
    made.passed = true;
    return made;
}

/// The plastic gives off acid gas when it is too hot: the extraction has to run.
bool fumes(const Sketch& s) {
    return fumeOf(s.plan().material) != Fume::None;
}

void attest(Sketch& s, const QString& text, CheckMade made) {
    s.step(text, MakeSteps{{std::move(made)}});
}

/// Ten minutes from when the plate shows its heat: they are counted from a press that says so, a
/// check that is not passed yet, with the heat that is shown. (One that is set aside has no value.)
void warmCheck(Sketch& s, const std::string& code) {
    std::optional<WeldTime> hot;
    for (const Retained& event : s.standing) {
        const auto* made = std::get_if<CheckMade>(&event.d);
        if (made != nullptr && made->check == code) {
            hot = made->passed || !made->valueMc ? std::nullopt : std::optional(event.t);
        }
    }
    const Milliseconds left =
        hot ? std::max(hot->hi + kPlateSettles - s.t.lo, Milliseconds(0)) : kPlateSettles;
    set(s, tr("Wait"), "10", tr("min"));
    s.view.lamp.mark = Mark::Wait;
    s.view.lamp.under = tr("from when it shows its heat");
    s.view.lamp.under2 = fumes(s) ? tr("acid gas: extraction on") : tr("it burns: keep it guarded");
    if (!hot) {
        s.view.sentence = tr("Plate is hot. Let it settle for 10 minutes.");
        attest(s, tr("Hot for 10 min"), passed(code));
        CheckMade begun = passed(code);
        begun.passed = false;
        begun.valueMc = s.plan().plate->targetMc;
        s.view.stop = sideSlot(tr("Just hot now"), tr("count from here"), MakeSteps{{begun}});
        return;
    }
    s.view.lamp.number = leftText(left);
    s.view.lamp.unit = {};
    s.view.lamp.fraction = shareByTheSecond(left, kPlateSettles);
    if (left > Milliseconds(0)) {
        s.view.sentence = tr("Plate is settling. Measure it at zero.");
        s.step(tr("Measure the plate"), std::monostate(), SlotView::Look::Waiting);
        s.view.step.view.under = tr("at zero");
    } else {
        s.view.lamp.mark = Mark::Act;
        s.view.sentence = tr("Plate has settled. Measure it now.");
        attest(s, tr("Measure the plate"), passed(code));
    }
}

void gapCheck(Sketch& s, const std::string& code, std::int64_t um, const QString& sentence) {
    const QString gap = millimetresText(um);
    set(s, tr("Set"), gap, "mm");
    s.view.lamp.under = tr("gap between the tables");
    s.view.drawing.value = gap + " mm";
    s.view.sentence = sentence.arg(gap);
    CheckMade made = passed(code);
    made.valueUm = um;
    attest(s, tr("Gap is %1 mm").arg(gap), made);
}

/// From the front, where the drawing has it.
int columnOf(std::string_view place) {
    return place == "front" ? 0 : place == "middle" ? 1 : 2;
}

void plateCheck(Sketch& s) {
    const PlateRead read = s.context.plateRead;
    set(s, tr("Measure"), celsiusText(s.plan().plate->targetMc), "°C");
    s.view.lamp.under =
        tr("allowed %1 to %2 °C")
            .arg(celsiusText(s.plan().plate->minMc), celsiusText(s.plan().plate->maxMc));
    s.view.lamp.under2 = tr("on its face: it burns");
    s.view.sentence = tr("Read the plate on its face. %1").arg(platePlaceText(s.weld, read));
    s.view.drawing.value = celsiusText(s.plan().plate->targetMc) + " °C";
    const auto& places = platePlaces(read);
    const PlatePlace& now = plateToRead(s.weld, read);
    s.view.drawing.places.clear();
    for (std::size_t i = 0; i < places.size(); ++i) { // those of one face at a time
        if (places[i].face == now.face) {
            s.view.drawing.places.push_back({columnOf(places[i].place), static_cast<int>(i) + 1});
        }
    }
    s.view.drawing.place = columnOf(now.place);
    if (!now.face.empty()) {
        s.view.drawing.words.readHere = plateFaceWord(now.face);
    }
    s.step(tr("Type it in"), AskNumber{NumberFor::PlateTemperature});
}

void dragCheck(Sketch& s, const std::string& code) {
    const std::int64_t milli = s.context.dragMilli.value_or(s.scalePlan().zeroMilli);
    const std::int64_t division = s.scalePlan().divisionMilli;
    const std::int64_t shown = (milli + division / 2) / division * division;
    set(s, tr("Read"), s.reading(shown), s.unit());
    s.view.lamp.under = tr("in the plan: %1 N").arg(s.plan().dragMn / 1000);
    s.view.sentence = tr("Nothing touching: move the table. Read the scale.");
    const auto& warnings = s.plan().warnings;
    if (std::any_of(warnings.begin(), warnings.end(), [](const PlanWarning& warning) {
            return warning.code == kDragNotMeasured;
        })) { // nothing was before
        s.view.lamp.under = tr("not read for this seam yet");
        s.step(tr("Type it in"), AskNumber{NumberFor::Drag});
        return;
    }
    CheckMade made = passed(code);
    made.valueMilli = shown;
    attest(s, tr("As before"), made);
    s.view.step.view.under = tr("about %1").arg(s.readingWithUnit(shown));
    s.view.stop = sideSlot(tr("Another"), tr("type it in"), AskNumber{NumberFor::Drag});
}

/// Force and reading of the plan; the scale of the bench has nothing else that could be set before
/// the plate stands between the sheets.
void forceCheck(Sketch& s) {
    const WeldPlan& plan = s.plan();
    const std::int64_t marked = s.scalePlan().joining.setMilli;
    s.view.drawing.check = "force";
    s.view.drawing.value = s.readingWithUnit(marked);
    set(s, tr("Mark"), s.reading(marked), s.unit());
    s.view.lamp.under = tr("joins with %1 N").arg(plan.joiningMn.value_or(0) / 1000);
    s.view.lamp.under2 =
        tr("alignment at %1").arg(s.readingWithUnit(s.scalePlan().alignment.setMilli));
    s.view.sentence =
        tr("The force to join is at %1. Mark it on the scale.").arg(s.readingWithUnit(marked));
    attest(s, tr("%1 is marked").arg(s.readingWithUnit(marked)), forceMark(plan));
}

/// What is printed on the right sheet.
QString sheetAsked(const Sketch& s) {
    return tr("is it %1, %2 mm?")
        .arg(fromUtf8(s.plan().material), millimetresText(s.plan().thicknessUm));
}

/// The record will say that batch: who clamps the sheet sees whether it is so. A batch that is too
/// long for the lamp stands on the sheet and on the card only.
QString batchAsked(const Sketch& s, std::size_t place, const QString& otherwise) {
    constexpr int kShown = 16;
    const auto& sheets = s.weld.opened().sheets;
    const QString batch =
        place < sheets.size() ? fromUtf8(sheets[place].batch).trimmed() : QString();
    return batch.isEmpty() || batch.size() > kShown ? otherwise : tr("batch %1?").arg(batch);
}

void check(Sketch& s, const std::string& code) {
    s.view.drawing.check = fromUtf8(code);
    s.view.drawing.words = captions();
    s.view.stop =
        sideSlot(tr("Cannot set it"), tr("say why"), AskReason{ReasonFor::CheckLeftOut, code});
    if (code == kForemansScale) {
        set(s, tr("Ask"), tr("Foreman"), {});
        s.view.lamp.under =
            tr("scale: a mark every %1").arg(s.readingWithUnit(s.scalePlan().divisionMilli));
        s.view.lamp.under2 = tr("too coarse for this seam");
        s.view.drawing.value = s.readingWithUnit(s.scalePlan().joining.setMilli);
        s.view.sentence = tr("This scale can't show the tolerance. Fetch the foreman.");
        s.step(tr("Foreman is here"), AskReason{ReasonFor::CheckLeftOut, code});
        s.view.stop =
            sideSlot(tr("Stop this weld"), tr("with a reason"), AskReason{ReasonFor::Stop, {}});
    } else if (code == "plate_warm") {
        warmCheck(s, code);
    } else if (code == "plate_temperature") {
        plateCheck(s);
    } else if (code == "scale_zero") {
        const std::int64_t zero = s.scalePlan().zeroMilli;
        set(s, tr("Look"), s.reading(zero), s.unit());
        s.view.lamp.under = tr("on the scale, no load");
        s.view.sentence =
            tr("Let the spring off. Scale must read %1.").arg(s.readingWithUnit(zero));
        CheckMade made = passed(code);
        made.valueMilli = zero;
        attest(s, tr("Scale reads %1").arg(s.reading(zero)), made);
    } else if (code == "sound_heard") {
        set(s, tr("Listen"), tr("Signal"), {});
        s.view.lamp.under = tr("stand where you work");
        s.view.lamp.under2 = tr("louder than the fan?");
        s.view.sentence = tr("Stand at the bench. Can you hear the signal?");
        attest(s, tr("I hear it"), passed(code));
    } else if (code == kDrag) {
        if (isForceAsked(s.weld, s.context.markedMilli)) {
            forceCheck(s);
        } else {
            dragCheck(s, code);
        }
    } else if (code == "film_off") {
        set(s, tr("Take off"), tr("Film"), {});
        s.view.lamp.under = tr("both sheets, both sides");
        s.view.sentence = tr("Take the film off both edges.");
        attest(s, tr("Film is off"), passed(code));
    } else if (code == "edges_planed") {
        set(s, tr("Plane"), tr("Edges"), {});
        s.view.lamp.under = tr("both, and chips off");
        s.view.lamp.under2 = tr("not by hand");
        s.view.sentence = tr("Plane both edges. Do not touch them by hand.");
        attest(s, tr("Edges are clean"), passed(code));
    } else if (code == "plate_wiped") {
        set(s, tr("Wipe"), tr("Plate"), {});
        s.view.lamp.under = fumes(s) ? tr("acid gas: extraction on") : tr("before every weld");
        s.view.lamp.under2 = tr("plate burns: gloves on");
        s.view.sentence = tr("Wipe both faces of the plate. It burns.");
        attest(s, tr("Plate is wiped"), passed(code));
    } else if (code == "gap") {
        gapCheck(s, code, s.plan().gapUm, tr("Set the gap to %1 mm, the same front and back."));
        s.view.lamp.under2 =
            tr("same as the sheet: %1 mm").arg(millimetresText(s.plan().thicknessUm));
    } else if (code == "first_sheet") {
        set(s, tr("Clamp"), tr("Sheet 1"), {});
        s.view.lamp.under = batchAsked(s, 0, tr("one end to the other"));
        s.view.lamp.under2 = sheetAsked(s);
        s.view.sentence = tr("Clamp the first sheet evenly, end to end.");
        attest(s, tr("First sheet is clamped"), passed(code));
    } else if (code == "clamping_gap") {
        gapCheck(
            s, code, s.plan().clampingGapUm, tr("Open the gap to %1 mm, the same front and back."));
    } else if (code == "second_sheet") {
        set(s, tr("Clamp"), tr("Sheet 2"), {});
        s.view.lamp.under = batchAsked(s, 1, tr("against the first"));
        s.view.lamp.under2 = sheetAsked(s);
        s.view.sentence = tr("Clamp the second sheet against the first.");
        attest(s, tr("Second sheet is clamped"), passed(code));
    } else if (code == "edges_meet") {
        const QString gap = millimetresText(s.plan().edgeGapMaxUm, 1);
        set(s, tr("Look"), gap, "mm");
        s.view.lamp.under = tr("gap at most");
        s.view.lamp.under2 =
            tr("step at most %1 mm").arg(millimetresText(s.plan().misalignmentMaxUm, 1));
        s.view.sentence = tr("Look at the edges: gap to %1 mm, step to %2 mm.")
                              .arg(gap, millimetresText(s.plan().misalignmentMaxUm, 1));
        attest(s, tr("Edges meet"), passed(code));
    } else if (code == "shielded") {
        set(s, tr("Shield"), celsiusText(s.plan().ambientMc), "°C");
        s.view.lamp.under = tr("in the shop, by the plan");
        s.view.sentence = tr("Shield the seam. Wipe it dry.");
        attest(s, tr("Seam is shielded"), passed(code));
        s.view.step.view.under = tr("and it is %1 °C").arg(celsiusText(s.plan().ambientMc));
        s.view.stop.view.under = tr("or another °C");
    } else {
        set(s, tr("Do"), {}, {});
        s.view.sentence = checkWord(code) + QLatin1Char('.');
        attest(s, tr("Done"), passed(code));
    }
}

/// In a series, what is done to both edges and the plate in one go is answered by one press.
const std::vector<std::string>& togetherChecks() {
    static const std::vector<std::string> kTogether{"film_off", "edges_planed", "plate_wiped"};
    return kTogether;
}

bool areTogether(const Sketch& s, const Preparing& state, const std::string& asked) {
    const auto& together = togetherChecks();
    return !s.context.oneByOne && asked == together.front() && !checksCarried(s.weld).empty() &&
           std::all_of(together.begin(), together.end(), [&](const std::string& check) {
               return isIn(state.openChecks, check);
           });
}

void checkTogether(Sketch& s) {
    s.view.drawing.check = "edges_planed";
    set(s, tr("Do"), QString::number(togetherChecks().size()), tr("things"));
    s.view.lamp.under = tr("film off, edges planed");
    s.view.lamp.under2 = tr("plate wiped: it burns");
    s.view.sentence = fumes(s) ? tr("Extraction on. Film off, edges clean, plate wiped.")
                               : tr("Film off, edges planed and clean, plate wiped.");
    MakeSteps steps;
    for (const std::string& check : togetherChecks()) {
        steps.details.emplace_back(passed(check));
    }
    s.step(tr("All done"), steps);
    s.view.stop = sideSlot(tr("One by one"), tr("if one is not"), OneByOne{});
}

void readyToAlign(Sketch& s) {
    s.view.layout = WeldView::Layout::Phase;
    const ReadingBand& band = s.scalePlan().alignment;
    s.seam(SeamView::Phase::Prepare);
    s.scaleOf(band);
    s.lamp(Tone::Rest, Mark::Act, tr("Set"));
    s.view.lamp.calm = true;
    s.view.lamp.number = s.reading(band.setMilli);
    s.view.lamp.unit = s.unit();
    s.view.lamp.under = tr("on the scale, plate between");
    s.view.lamp.under2 = tr("keep hands out: tables crush");
    s.view.sentence =
        tr("Plate in, sheets against it. Turn up to %1.").arg(s.readingWithUnit(band.setMilli));
    s.view.cell.time = tr("ready");
    s.step(
        tr("Pressure is on"),
        MakeSteps{{AlignmentStarted{}, ReadingTaken{ReadingPhase::Alignment, band.setMilli}}});
    if (s.context.clash) {
        s.waitForHands(
            tr("Wait %2 before you begin %1. Two hands, one plate.").arg(s.context.letter, "%1"));
    }
}

/// What holds for a set-up is made in this weld.
bool isNewSetUp(const Weld& weld) {
    const std::vector<std::string> carried = checksCarried(weld);
    return std::none_of(carried.begin(), carried.end(), [](const std::string& check) {
        return holdsFor(check) == CheckHolds::SetUp;
    });
}

} // namespace

bool isForceAsked(const Weld& weld, const std::optional<std::int64_t>& markedMilli) {
    const auto setOf = [](const WeldPlan& plan) {
        return plan.scale ? std::optional(plan.scale->joining.setMilli) : std::nullopt;
    };
    bool read = false;
    bool marked = false;
    auto asked = setOf(weld.opened().plan);
    for (const Retained& event : retained(weld.events)) {
        if (const auto* replaced = std::get_if<PlanReplaced>(&event.d)) {
            marked = marked && setOf(replaced->plan) == asked; // else it is another reading
            asked = setOf(replaced->plan);
        } else if (const auto* left = std::get_if<CheckOverridden>(&event.d)) {
            marked = marked || left->check == kDrag;
        } else if (const auto* made = std::get_if<CheckMade>(&event.d);
                   made && made->check == kDrag) {
            (isForceMark(*made) ? marked : read) = made->passed;
        }
    }
    const auto& scale = weld.plan.scale;
    const auto before = markedMilli ? markedMilli : setOf(weld.opened().plan);
    return read && !marked && scale &&
           (isNewSetUp(weld) || before != std::optional(scale->joining.setMilli));
}

void tell(Sketch& s, const Preparing& state) {
    s.view.cell.sign = Sign::Prepare;
    if (const auto& seam = s.weld.opened().seam) {
        s.view.cell.phase = tr("prepare %1").arg(fromUtf8(*seam));
    }
    s.view.layout = WeldView::Layout::Check;
    const std::string asked = checkAsked(s.weld, state, s.context.plateRead, s.context.markedMilli);
    checkRow(s, state, asked);
    if (asked.empty()) {
        readyToAlign(s);
        return;
    }
    if (areTogether(s, state, asked)) {
        checkTogether(s);
    } else {
        check(s, asked);
    }
    const std::vector<std::string> carried = checksCarried(s.weld);
    std::vector<std::string> all;
    for (const std::string& one : s.plan().checks) {
        if (!isIn(carried, one)) {
            all.push_back(one);
        }
    }
    const auto at = std::find(all.begin(), all.end(), asked);
    const QString place = tr("%1 of %2").arg(at - all.begin() + 1).arg(all.size());
    s.view.lamp.corner = place;
    s.view.cell.time = place;
}

} // namespace seamclock
