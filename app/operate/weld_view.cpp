#include "app/operate/weld_view.h"

#include "app/text/numbers.h"
#include "app/text/words.h"
#include "core/base/overloaded.h"
#include "core/weld/cues.h"
#include "core/weld/intent.h"
#include "core/weld/verdict.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace seamclock {
namespace {

using std::chrono::seconds;

struct Operate {
    Q_DECLARE_TR_FUNCTIONS(Operate)
};

constexpr Milliseconds kGetReady{10'000};
constexpr Milliseconds kEarlier{4'000};
// From when the screen asks whether the bead stands, where this bench has no median yet [practice].
constexpr Milliseconds kBeadAsked{20'000};
constexpr double kPlateMm = 10;
// What one press stores follows within this.
constexpr Milliseconds kOnePress{100};

QString tr(const char* text) {
    return Operate::tr(text);
}

Slot sideSlot(const QString& text, const QString& under, Offer offer) {
    Slot slot;
    slot.view.text = text;
    slot.view.under = under;
    slot.offer = std::move(offer);
    return slot;
}

double mm(std::int64_t um) {
    return static_cast<double>(um) / 1000.0;
}
double unitsOf(std::int64_t milli) {
    return static_cast<double>(milli) / 1000.0;
}
double share(Milliseconds part, Milliseconds whole) {
    if (whole.count() <= 0) {
        return 0;
    }
    const double value = static_cast<double>(part.count()) / static_cast<double>(whole.count());
    return std::clamp(value, 0.0, 1.0);
}

// Everything the phases' views are made from.
class Maker {
public:
    Maker(const Weld& weld, const ViewContext& context)
        : m_weld(weld), m_context(context), m_standing(retained(weld.events)) {
        m_view.cell.letter = context.letter;
        m_view.cell.phase = phaseWord(weld.state);
        m_view.onto = lastTakeable(weld);
    }

    WeldView make() {
        const auto t = weldTimeAt(m_weld, m_context.now);
        ribbon(t ? t->hi : Milliseconds(0));
        if (!t) {
            afterReboot();
        } else {
            m_t = *t;
            std::visit([this](const auto& state) { phase(state); }, m_weld.state);
        }
        sideSlots();
        m_view.cell.mark = m_view.lamp.mark;
        m_view.cell.tone = m_view.lamp.tone;
        m_view.cell.fraction = m_view.lamp.fraction;
        m_view.step.view.large = true;
        m_view.step.view.pedal = m_context.pedal;
        m_view.step.view.pedalText = tr("pedal");
        return std::move(m_view);
    }

private:
    const WeldPlan& plan() const { return m_weld.plan; }
    const WeldPlan::ScalePlan& scalePlan() const { return *plan().scale; }
    QString unit() const { return fromUtf8(scalePlan().unit); }
    QString reading(std::int64_t milli) const {
        return readingText(milli, scalePlan().divisionMilli);
    }
    QString readingWithUnit(std::int64_t milli) const { return reading(milli) + " " + unit(); }

    void lamp(Tone tone, Mark mark, const QString& word) {
        m_view.lamp.tone = tone;
        m_view.lamp.mark = mark;
        m_view.lamp.word = word;
        m_view.lamp.framed = tone == Tone::Late;
        // Once a second between wide and narrow.
        m_view.lamp.frameWide = m_context.now.boot.count() / 500 % 2 == 0;
    }

    void step(const QString& text, Offer offer, SlotView::Look look = SlotView::Look::Act) {
        m_view.step.view.text = text;
        m_view.step.view.look = look;
        m_view.step.offer = std::move(offer);
    }

    void scaleOf(const ReadingBand& band) {
        const WeldPlan::ScalePlan& scale = scalePlan();
        ScaleView& view = m_view.scale;
        view.value = reading(band.setMilli);
        view.set = unitsOf(band.setMilli);
        view.low = unitsOf(band.lowMilli);
        view.high = unitsOf(band.highMilli);
        view.lowText = lowEndText(band.lowMilli, scale.divisionMilli);
        view.highText = highEndText(band.highMilli, scale.divisionMilli);
        view.setText = tr("set");
        scaleBase();
    }

    void scaleBase() {
        const WeldPlan::ScalePlan& scale = scalePlan();
        ScaleView& view = m_view.scale;
        view.title = tr("Scale %1").arg(m_context.letter);
        view.unit = unit();
        view.zero = unitsOf(scale.zeroMilli);
        view.division = unitsOf(scale.divisionMilli);
        // The plan does not hold the scale's end: its window ends well above the highest band.
        const std::int64_t high = std::max(scale.alignment.highMilli, scale.joining.highMilli);
        view.max = unitsOf(high + (high - scale.zeroMilli) / 2 + 4 * scale.divisionMilli);
    }

    void scaleFree() {
        scaleBase();
        m_view.scale.free = true;
        m_view.scale.value = tr("free");
    }

    void readings(ReadingPhase phase) {
        for (const Retained& event : m_standing) {
            const auto* taken = std::get_if<ReadingTaken>(&event.d);
            if (taken != nullptr && taken->phase == phase) {
                m_view.scale.readings.push_back(unitsOf(taken->readingMilli));
            }
        }
    }

    void seam(SeamView::Phase phase) {
        SeamView& view = m_view.seam;
        view.phase = phase;
        view.thicknessMm = mm(plan().thicknessUm);
        view.plateMm = kPlateMm;
        view.beadMm = plan().beadMinUm ? mm(*plan().beadMinUm) : 0;
        if (plan().beadMinUm) {
            view.beadText = tr("bead %1 mm").arg(millimetresText(*plan().beadMinUm, 1));
        }
        if (const auto read = plateRead()) {
            view.plateC = unitsOf(*read);
            view.plateText = celsiusText(*read) + " °C";
        }
    }

    std::optional<std::int64_t> plateRead() const {
        std::optional<std::int64_t> found;
        for (const Retained& event : m_standing) {
            const auto* made = std::get_if<CheckMade>(&event.d);
            if (made != nullptr && made->check == "plate_temperature" && made->valueMc) {
                found = made->valueMc;
            }
        }
        return found;
    }

    // ---- phases

    void phase(const Preparing& state) {
        m_view.cell.sign = Sign::Prepare;
        m_view.layout = WeldView::Layout::Check;
        const std::string asked = checkAsked(m_weld, state);
        checkRow(state, asked);
        if (asked.empty()) {
            readyToAlign();
            return;
        }
        check(asked);
        const auto& all = plan().checks;
        const auto at = std::find(all.begin(), all.end(), asked);
        const QString place = tr("%1 of %2").arg(at - all.begin() + 1).arg(all.size());
        m_view.lamp.corner = place;
        m_view.cell.time = place;
    }

    void checkRow(const Preparing& state, const std::string& asked) {
        for (const std::string& check : plan().checks) {
            const bool overridden =
                std::any_of(m_standing.begin(), m_standing.end(), [&](const Retained& event) {
                    const auto* left = std::get_if<CheckOverridden>(&event.d);
                    return left != nullptr && left->check == check;
                });
            CheckRowView::Cell cell;
            cell.name = checkWord(check);
            cell.done = state.settled.count(check) > 0 && check != asked;
            cell.now = check == asked;
            cell.overridden = cell.done && overridden;
            m_view.checks.cells.push_back(cell);
        }
    }

    void set(const QString& word, const QString& number, const QString& unit) {
        lamp(Tone::Rest, Mark::Act, word);
        m_view.lamp.calm = true;
        m_view.lamp.number = number;
        m_view.lamp.unit = unit;
    }

    static CheckMade passed(const std::string& code) {
        CheckMade made;
        made.check = code;
        made.passed = true;
        return made;
    }

    void attest(const QString& text, CheckMade made) { step(text, MakeSteps{{std::move(made)}}); }

    void check(const std::string& code) {
        m_view.drawing.check = fromUtf8(code);
        m_view.stop =
            sideSlot(tr("Cannot set it"), tr("say why"), AskReason{ReasonFor::CheckLeftOut, code});
        if (code == "plate_warm") {
            set(tr("Wait"), "10", tr("min"));
            m_view.lamp.mark = Mark::Wait;
            m_view.lamp.under = tr("from when it shows its heat");
            m_view.sentence = tr("Plate is hot. Let it settle for 10 minutes.");
            attest(tr("Measure the plate"), passed(code));
        } else if (code == "plate_temperature") {
            plateCheck(code);
        } else if (code == "scale_zero") {
            const std::int64_t zero = scalePlan().zeroMilli;
            set(tr("Look"), reading(zero), unit());
            m_view.lamp.under = tr("on the scale, no load");
            m_view.sentence =
                tr("Let the spring off. Scale must read %1.").arg(readingWithUnit(zero));
            CheckMade made = passed(code);
            made.valueMilli = zero;
            attest(tr("Scale reads %1").arg(reading(zero)), made);
        } else if (code == "sound_heard") {
            set(tr("Listen"), tr("Signal"), {});
            m_view.lamp.under = tr("stand where you work");
            m_view.lamp.under2 = tr("louder than the fan?");
            m_view.sentence = tr("Stand at the bench. Can you hear the signal?");
            attest(tr("I hear it"), passed(code));
        } else if (code == "drag") {
            dragCheck(code);
        } else if (code == "film_off") {
            set(tr("Take off"), tr("Film"), {});
            m_view.lamp.under = tr("both sheets, both sides");
            m_view.sentence = tr("Take the film off both edges.");
            attest(tr("Film is off"), passed(code));
        } else if (code == "edges_planed") {
            set(tr("Plane"), tr("Edges"), {});
            m_view.lamp.under = tr("both, and chips off");
            m_view.lamp.under2 = tr("not by hand");
            m_view.sentence = tr("Plane both edges. Do not touch them by hand.");
            attest(tr("Edges are clean"), passed(code));
        } else if (code == "plate_wiped") {
            set(tr("Wipe"), tr("Plate"), {});
            m_view.lamp.under = tr("before every weld");
            m_view.lamp.under2 = tr("plate burns: gloves on");
            m_view.sentence = tr("Wipe both faces of the plate. It burns.");
            attest(tr("Plate is wiped"), passed(code));
        } else if (code == "gap") {
            gapCheck(code, plan().gapUm, tr("Set the gap to %1 mm, the same front and back."));
            m_view.lamp.under2 =
                tr("same as the sheet: %1 mm").arg(millimetresText(plan().thicknessUm));
        } else if (code == "first_sheet") {
            set(tr("Clamp"), tr("Sheet 1"), {});
            m_view.lamp.under = tr("one end to the other");
            m_view.sentence = tr("Clamp the first sheet evenly, end to end.");
            attest(tr("First sheet is clamped"), passed(code));
        } else if (code == "clamping_gap") {
            gapCheck(
                code, plan().clampingGapUm, tr("Open the gap to %1 mm, the same front and back."));
        } else if (code == "second_sheet") {
            set(tr("Clamp"), tr("Sheet 2"), {});
            m_view.lamp.under = tr("against the first");
            m_view.sentence = tr("Clamp the second sheet against the first.");
            attest(tr("Second sheet is clamped"), passed(code));
        } else if (code == "edges_meet") {
            const QString gap = millimetresText(plan().edgeGapMaxUm, 1);
            set(tr("Look"), gap, "mm");
            m_view.lamp.under = tr("gap at most");
            m_view.lamp.under2 =
                tr("step at most %1 mm").arg(millimetresText(plan().misalignmentMaxUm, 1));
            m_view.sentence = tr("Look at the edges: gap to %1 mm, step to %2 mm.")
                                  .arg(gap, millimetresText(plan().misalignmentMaxUm, 1));
            attest(tr("Edges meet"), passed(code));
        } else if (code == "shielded") {
            set(tr("Shield"), celsiusText(plan().ambientMc), "°C");
            m_view.lamp.under = tr("in the shop, by the plan");
            m_view.sentence = tr("Shield the seam. Wipe it dry.");
            attest(tr("Seam is shielded"), passed(code));
        } else {
            set(tr("Do"), {}, {});
            m_view.sentence = checkWord(code) + QLatin1Char('.');
            attest(tr("Done"), passed(code));
        }
    }

    void gapCheck(const std::string& code, std::int64_t um, const QString& sentence) {
        const QString gap = millimetresText(um);
        set(tr("Set"), gap, "mm");
        m_view.lamp.under = tr("gap between the tables");
        m_view.drawing.value = gap + " mm";
        m_view.sentence = sentence.arg(gap);
        CheckMade made = passed(code);
        made.valueUm = um;
        attest(tr("Gap is %1 mm").arg(gap), made);
    }

    void plateCheck(const std::string& code) {
        const int read = platePlacesRead(m_weld);
        const auto places = static_cast<int>(platePlaces().size());
        set(tr("Measure"), celsiusText(plan().plate->targetMc), "°C");
        m_view.lamp.under =
            tr("allowed %1 to %2 °C")
                .arg(celsiusText(plan().plate->minMc), celsiusText(plan().plate->maxMc));
        m_view.lamp.under2 = tr("on its face: it burns");
        const int which = std::min(read, places - 1);
        m_view.sentence = tr("Read the plate on its face. Place %1 of %2: %3.")
                              .arg(which + 1)
                              .arg(places)
                              .arg(checkPlaceWord(platePlaces()[static_cast<std::size_t>(which)]));
        m_view.drawing.value = celsiusText(plan().plate->targetMc) + " °C";
        step(tr("Type it in"), AskNumber{NumberFor::PlateTemperature});
        m_view.stop =
            sideSlot(tr("Cannot set it"), tr("say why"), AskReason{ReasonFor::Stop, code});
    }

    static QString checkPlaceWord(const std::string& place) {
        if (place == "front") {
            return tr("front");
        }
        return place == "middle" ? tr("middle") : tr("back");
    }

    void dragCheck(const std::string& code) {
        const std::int64_t perUnit = ratePerUnitMn();
        const std::int64_t milli =
            scalePlan().zeroMilli + (perUnit > 0 ? plan().dragMn * 1000 / perUnit : 0);
        const std::int64_t division = scalePlan().divisionMilli;
        const std::int64_t shown = (milli + division / 2) / division * division;
        set(tr("Read"), reading(shown), unit());
        m_view.lamp.under = tr("in the plan: %1 N").arg(plan().dragMn / 1000);
        m_view.sentence = tr("Nothing touching: move the table. Read the scale.");
        CheckMade made = passed(code);
        made.valueMilli = shown;
        attest(tr("As before"), made);
        m_view.step.view.under = tr("about %1").arg(readingWithUnit(shown));
        m_view.stop = sideSlot(tr("Another"), tr("type it in"), AskNumber{NumberFor::Drag});
    }

    /// [mN for one unit of the scale]: the plan's own force and reading say it.
    std::int64_t ratePerUnitMn() const {
        const std::int64_t milli = scalePlan().joining.setMilli - scalePlan().zeroMilli;
        const std::int64_t force = plan().joiningMn.value_or(0) + plan().dragMn;
        return milli > 0 ? force * 1000 / milli : 0;
    }

    void readyToAlign() {
        m_view.layout = WeldView::Layout::Phase;
        m_view.ribbon = m_ribbon;
        const ReadingBand& band = scalePlan().alignment;
        seam(SeamView::Phase::Prepare);
        scaleOf(band);
        lamp(Tone::Rest, Mark::Act, tr("Set"));
        m_view.lamp.calm = true;
        m_view.lamp.number = reading(band.setMilli);
        m_view.lamp.unit = unit();
        m_view.lamp.under = tr("on the scale, plate between");
        m_view.lamp.under2 = tr("keep hands out: tables crush");
        m_view.sentence =
            tr("Plate in, sheets against it. Turn up to %1.").arg(readingWithUnit(band.setMilli));
        m_view.cell.time = tr("ready");
        step(
            tr("Pressure is on"),
            MakeSteps{{AlignmentStarted{}, ReadingTaken{ReadingPhase::Alignment, band.setMilli}}});
    }

    void phase(const Aligning& state) {
        const Milliseconds gone = m_t.lo - state.from.lo;
        m_view.cell.sign = Sign::Align;
        seam(SeamView::Phase::Align);
        scaleOf(scalePlan().alignment);
        readings(ReadingPhase::Alignment);
        m_view.lamp.number = goneText(gone);
        m_view.cell.time = goneText(gone);
        const QString bead = millimetresText(plan().beadMinUm.value_or(0), 1);
        const bool late = plan().alignLate && gone >= *plan().alignLate;
        const Milliseconds asked = plan().alignMedian ? *plan().alignMedian / 2 : kBeadAsked;
        const QString down = readingWithUnit(scalePlan().soak.setMilli);
        if (late) {
            lamp(Tone::Soon, Mark::Trouble, tr("Slow"));
            m_view.sentence = tr("Bead is slow. Is the plate cold or dirty?");
        } else {
            lamp(Tone::Act, Mark::Act, tr("Watch"));
            m_view.sentence =
                gone < asked ? tr("Wait for a %1 mm bead, all along, top and bottom.").arg(bead)
                             : tr("Bead all along? Turn down to %1 and lock.").arg(down);
        }
        m_view.lamp.under = tr("for a %1 mm bead").arg(bead);
        m_view.lamp.under2 = plan().alignMedian
                                 ? tr("usual here: %1").arg(goneText(*plan().alignMedian))
                                 : tr("the bead ends it, not the clock");
        step(
            tr("Pressure is off"),
            MakeSteps{{SoakStarted{}, ReadingTaken{ReadingPhase::Soak, scalePlan().soak.setMilli}}},
            gone < asked ? SlotView::Look::Waiting : SlotView::Look::Act);
        m_view.step.view.under = tr("bead stands, at %1").arg(down);
    }

    void phase(const Soaking& state) {
        const Milliseconds whole = state.due.lo - state.from.lo;
        const Milliseconds left = state.due.lo - m_t.lo;
        const Milliseconds high = plan().soak->high - plan().soak->target;
        m_view.cell.sign = Sign::Soak;
        seam(SeamView::Phase::Soak);
        m_view.seam.beadNowMm = m_view.seam.beadMm;
        scaleOf(scalePlan().soak);
        readings(ReadingPhase::Soak);
        m_view.lamp.fraction = share(whole - left, whole);
        m_view.lamp.number = leftText(left);
        m_view.lamp.under = tr("left of %1 soak").arg(goneText(whole));
        m_view.lamp.under2 =
            tr("then: plate out within %1 s").arg(secondsText(*plan().changeoverMax));
        SlotView::Look look = SlotView::Look::Act;
        if (left > kGetReady) {
            lamp(Tone::Normal, Mark::Wait, tr("Wait"));
            m_view.sentence = tr("Scale at %1, wheel locked. Wait for the signal.")
                                  .arg(readingWithUnit(scalePlan().soak.setMilli));
            look = SlotView::Look::Waiting;
        } else if (left > Milliseconds(0)) {
            lamp(Tone::Soon, Mark::Soon, tr("Get ready"));
            m_view.sentence = tr("Hands on the plate and the wheel. Wait for zero.");
            look = SlotView::Look::Waiting;
        } else if (-left <= high) {
            lamp(Tone::Act, Mark::Act, tr("Now"));
            m_view.sentence = tr("Sheets apart, plate out, faces together.");
            m_view.lamp.under = tr("soak is over");
        } else {
            lamp(Tone::Late, Mark::Late, tr("Late"));
            m_view.sentence = tr("Soak is over by %1 s. Plate out now.").arg(-left.count() / 1000);
            m_view.lamp.number = "+" + goneText(-left);
            m_view.lamp.under = tr("over the soak of %1").arg(goneText(whole));
        }
        m_view.cell.time = m_view.lamp.number;
        step(tr("Plate out"), MakeSteps{{PlateOut{}}}, look);
        if (look == SlotView::Look::Waiting) {
            m_view.step.view.under = tr("at the signal");
        }
    }

    void phase(const ChangingOver& state) {
        const Milliseconds gone = m_t.hi - state.from.hi;
        const Milliseconds limit = state.limit.hi - state.from.hi;
        const bool late = gone > limit;
        m_view.layout = WeldView::Layout::Changeover;
        m_view.cell.sign = Sign::Changeover;
        seam(SeamView::Phase::Changeover);
        m_view.seam.beadNowMm = m_view.seam.beadMm;
        scaleFree();
        const QString number = QString::number(std::max<std::int64_t>(gone.count(), 0) / 1000);
        const QString limitText = secondsText(limit);
        lamp(
            late ? Tone::Late : Tone::Act, late ? Mark::Late : Mark::Act,
            late ? tr("Late") : tr("Now"));
        m_view.lamp.number = number;
        ChangeoverView& field = m_view.changeover;
        field.elapsedMs = static_cast<double>(gone.count());
        field.limitMs = static_cast<double>(limit.count());
        field.late = late;
        field.number = number;
        field.order = late ? tr("Faces together now") : tr("Plate out, faces together");
        field.of = late ? tr("s, limit %1 s").arg(limitText) : tr("of %1 s").arg(limitText);
        field.limitWord = tr("limit");
        field.remark =
            late ? tr("The limit is passed. It counts, and is in the record.") : QString();
        field.lessMotion = m_context.lessMotion;
        field.frameWide = m_view.lamp.frameWide;
        field.seam = m_view.seam;
        field.seam.progress = share(gone, limit);
        m_view.cell.time = number + " s";
        m_view.cell.plain = true;
        m_view.sentence =
            late ? tr("Faces together now. The limit is passed.") : tr("Plate out, faces together");
        step(tr("Faces together"), MakeSteps{{FacesMet{}}}, SlotView::Look::White);
        m_view.step.view.onLate = late;
    }

    void phase(const BuildingUp& state) {
        const Milliseconds gone = m_t.lo - state.from.lo;
        const TimeBand& times = *plan().buildUp;
        const ReadingBand& band = scalePlan().joining;
        m_view.cell.sign = Sign::BuildUp;
        seam(SeamView::Phase::BuildUp);
        m_view.seam.beadNowMm = m_view.seam.beadMm;
        m_view.seam.progress = 1;
        scaleOf(band);
        readings(ReadingPhase::Joining);
        m_view.cell.time = tr("%1 s").arg(gone.count() / 1000);
        const QString set = readingWithUnit(band.setMilli);
        if (state.lastReading && band.holds(*state.lastReading)) {
            lamp(Tone::Act, Mark::Act, tr("Lock"));
            m_view.lamp.number = reading(*state.lastReading);
            m_view.lamp.unit = unit();
            m_view.lamp.under = tr("stays on the scale");
            m_view.sentence = tr("Lock the wheel at %1.").arg(readingWithUnit(*state.lastReading));
            step(tr("Wheel is locked"), MakeSteps{{PressureLocked{}}});
            return;
        }
        const MakeSteps reached{{ReadingTaken{ReadingPhase::Joining, band.setMilli}}};
        const Milliseconds over = gone - times.target;
        if (over <= Milliseconds(0)) {
            // The mark to follow rises evenly from zero to the set reading in the table's time.
            const std::int64_t rise = band.setMilli - scalePlan().zeroMilli;
            const std::int64_t division = scalePlan().divisionMilli;
            const std::int64_t mark =
                scalePlan().zeroMilli +
                rise * gone.count() / std::max<std::int64_t>(times.target.count(), 1);
            lamp(Tone::Act, Mark::Act, tr("Follow"));
            m_view.lamp.number = reading(mark / division * division);
            m_view.lamp.unit = unit();
            m_view.lamp.under = tr("evenly to %1").arg(set);
            m_view.lamp.under2 =
                tr("%1 of %2 s").arg(gone.count() / 1000).arg(secondsText(times.target));
            m_view.sentence = tr("Turn the wheel evenly. Keep to the mark.");
        } else {
            const bool late = gone > times.high;
            lamp(
                late ? Tone::Late : Tone::Soon, late ? Mark::Late : Mark::Soon,
                late ? tr("Late") : tr("Go on"));
            m_view.lamp.number = "+" + QString::number(over.count() / 1000) + " s";
            m_view.lamp.under = tr("evenly to %1").arg(set);
            m_view.lamp.under2 = tr("over %1 s").arg(secondsText(times.target));
            m_view.sentence = tr("Go on evenly to %1. Do not jerk.").arg(set);
        }
        step(tr("At %1").arg(set), reached);
    }

    void phase(const Cooling& state) {
        const Milliseconds whole = state.due.lo - state.from.lo;
        const Milliseconds left = state.due.lo - m_t.lo;
        const ReadingBand& band = scalePlan().joining;
        m_view.layout = WeldView::Layout::Cooling;
        m_view.cell.sign = Sign::Cooling;
        seam(SeamView::Phase::Cooling);
        m_view.seam.beadNowMm = m_view.seam.beadMm;
        scaleOf(band);
        readings(ReadingPhase::Joining);
        readings(ReadingPhase::Recheck);
        m_view.lamp.fraction = share(whole - left, whole);
        m_view.lamp.number = leftText(left);
        m_view.cell.time = leftText(left);
        m_view.lamp.under = tr("left of %1 cooling").arg(goneText(whole));
        m_view.lamp.under2 = left > Milliseconds(0)
                                 ? tr("out at %1").arg(wallClockText(m_context.now, left))
                                 : QString();
        m_view.stop = sideSlot(
            tr("Take out early"), tr("with a reason"),
            AskReason{ReasonFor::EarlyRelease, "cooling"});
        const bool over = left <= Milliseconds(0);
        if (over) {
            lamp(Tone::Normal, Mark::Done, tr("Done"));
        } else {
            lamp(Tone::Normal, Mark::Wait, tr("Wait"));
        }
        if (owesAtTheBench()) {
            return;
        }
        if (over) {
            coolingOver();
            return;
        }
        if (lowReading()) {
            const QString set = readingWithUnit(band.setMilli);
            lamp(Tone::Act, Mark::Act, tr("Set"));
            m_view.lamp.number = reading(band.setMilli);
            m_view.lamp.unit = unit();
            m_view.lamp.under = tr("on scale %1").arg(m_context.letter);
            m_view.lamp.under2 = tr("cooling: %1 left").arg(leftText(left));
            m_view.sentence = tr("Reading is below %1. Turn up to %2.")
                                  .arg(m_view.scale.lowText + " " + unit(), set);
            step(
                tr("At %1").arg(set),
                MakeSteps{{ReadingTaken{ReadingPhase::Recheck, band.setMilli}}});
            return;
        }
        recheckAsked(state);
    }

    /// The limit that was passed before the lock is spoken of now, when hands are free.
    bool owesAtTheBench() {
        for (const std::string& code : reasonsOwed(m_weld)) {
            if (code == "cooling" || code == "plate_temperature") {
                continue;
            }
            for (const Finding& finding : findings(m_weld)) {
                if (finding.code != code || finding.grade != Grade::Out) {
                    continue;
                }
                QString what = findingText(finding, plan());
                if (!what.isEmpty()) {
                    what[0] = what[0].toUpper();
                }
                m_view.sentence = tr("%1. Let it cool, or cut it out.").arg(what);
                if (finding.unit == "ms" && finding.actual && finding.limit) {
                    const QString took = timeText(Milliseconds(*finding.actual));
                    QString name = findingWord(code);
                    name[0] = name[0].toUpper();
                    m_view.sentence = tr("%1 took %2: out of limits. Let it cool, or cut it out.")
                                          .arg(name, took);
                    m_view.lamp.under2 =
                        tr("%1, limit %2").arg(took, timeText(Milliseconds(*finding.limit)));
                } else {
                    m_view.lamp.under2 = tr("out of limits");
                }
                step(
                    tr("Let it cool"), MakeSteps{{ReasonGiven{code, "let_it_cool", std::nullopt}}});
                m_view.stop = sideSlot(
                    tr("Stop: cut out"), tr("with a reason"), AskReason{ReasonFor::Stop, code});
                return true;
            }
        }
        return false;
    }

    bool lowReading() const {
        const Retained* last = nullptr;
        for (const Retained& event : m_standing) {
            const auto* taken = std::get_if<ReadingTaken>(&event.d);
            if (taken != nullptr && taken->phase == ReadingPhase::Recheck) {
                last = &event;
            }
        }
        return last != nullptr &&
               std::get<ReadingTaken>(last->d).readingMilli < scalePlan().joining.lowMilli;
    }

    void recheckAsked(const Cooling& state) {
        std::optional<Milliseconds> due; // of the first that is open
        for (std::size_t i = 0; i < state.rechecks.size(); ++i) {
            const bool closed = i + 1 < state.rechecks.size() && m_t.lo >= state.rechecks[i + 1].lo;
            if (!state.recheckSettled[i] && !closed) {
                due = state.rechecks[i].lo - m_t.lo;
                break;
            }
        }
        if (!due) {
            m_view.sentence = tr("Leave it locked. Nothing else to do.");
            step(tr("Scale reading"), AskNumber{NumberFor::Recheck}, SlotView::Look::Waiting);
            m_view.step.view.under = tr("if you like");
            return;
        }
        if (*due > Milliseconds(0)) {
            m_view.sentence = tr("Leave it locked. Read the scale in %1.").arg(leftText(*due));
            step(tr("Scale reading"), AskNumber{NumberFor::Recheck}, SlotView::Look::Waiting);
            m_view.step.view.under = tr("due in %1").arg(leftText(*due));
            return;
        }
        lamp(Tone::Soon, Mark::Soon, tr("Read"));
        m_view.lamp.under2 = tr("%1 set").arg(readingWithUnit(scalePlan().joining.setMilli));
        m_view.sentence = tr("Read scale %1 now and type it in.").arg(m_context.letter);
        step(tr("Scale reading"), AskNumber{NumberFor::Recheck});
    }

    bool numbered() const {
        return std::any_of(m_standing.begin(), m_standing.end(), [](const Retained& event) {
            return std::holds_alternative<JointNumbered>(event.d);
        });
    }

    void coolingOver() {
        m_view.lamp.under = tr("cooling is over");
        m_view.lamp.under2 = tr("joint %1").arg(m_weld.opened().number);
        m_view.stop.view.look = SlotView::Look::Gone;
        m_view.stop.offer = {};
        if (!numbered()) {
            m_view.sentence = tr("Cooling is over. Number on the sheet? Then release.");
            step(tr("Numbered"), MakeSteps{{JointNumbered{}}});
            m_view.step.view.under = tr("joint %1").arg(m_weld.opened().number);
            return;
        }
        releaseAsked(0);
    }

    void releaseAsked(int stepsDone) {
        const auto& order = plan().releaseOrder;
        const std::string& code = order[static_cast<std::size_t>(stepsDone)];
        lamp(Tone::Act, Mark::Act, tr("Release"));
        m_view.lamp.number = QString::number(stepsDone + 1);
        m_view.lamp.unit = tr("of %1").arg(order.size());
        m_view.lamp.under = tr("in this bench's order");
        m_view.lamp.under2 = tr("the spring is loaded");
        m_view.cell.time = tr("%1 of %2").arg(stepsDone + 1).arg(order.size());
        m_view.sentence = releaseSentence(code);
        step(releaseDoneWord(code), MakeSteps{{ReleaseStep{code}}});
    }

    void phase(const Releasing& state) {
        m_view.cell.sign = Sign::Release;
        seam(SeamView::Phase::Release);
        m_view.seam.beadNowMm = m_view.seam.beadMm;
        scaleOf(scalePlan().joining);
        readings(ReadingPhase::Joining);
        readings(ReadingPhase::Recheck);
        releaseAsked(state.stepsDone);
    }

    void phase(const Inspecting&) {
        m_view.cell.sign = Sign::Look;
        m_view.cell.time = tr("joint %1").arg(m_weld.opened().number);
        seam(SeamView::Phase::Look);
        m_view.seam.beadText = tr("bead");
        m_view.seam.beadNowMm = m_view.seam.beadMm;
        scaleFree();
        lamp(Tone::Act, Mark::Act, tr("Measure"));
        const bool measured =
            std::any_of(m_standing.begin(), m_standing.end(), [](const Retained& event) {
                return std::holds_alternative<BeadMeasured>(event.d);
            });
        if (!measured && !m_context.bead.leftOut) {
            beadAsked();
            return;
        }
        const auto owed = reasonsOwed(m_weld);
        if (!owed.empty()) {
            for (const Finding& finding : findings(m_weld)) {
                if (finding.code == owed.front() && finding.grade == Grade::Out) {
                    m_view.sentence = tr("Out of limits: %1.").arg(findingText(finding, plan()));
                }
            }
            lamp(Tone::Act, Mark::Act, tr("Say why"));
            m_view.lamp.number = QString::number(m_weld.opened().number);
            m_view.lamp.under = tr("joint, out of limits");
            step(tr("Give the reason"), AskReason{ReasonFor::Owed, owed.front()});
            return;
        }
        if (!numbered()) {
            m_view.sentence = tr("Paint joint number %1 on the sheet.").arg(m_weld.opened().number);
            lamp(Tone::Act, Mark::Act, tr("Number"));
            m_view.lamp.number = QString::number(m_weld.opened().number);
            step(tr("Numbered"), MakeSteps{{JointNumbered{}}});
            return;
        }
        const Verdict verdict = verdictAtClosing(m_weld);
        lamp(Tone::Act, Mark::Act, tr("Save"));
        m_view.lamp.number = QString::number(m_weld.opened().number);
        m_view.lamp.under = verdictWord(verdict.word);
        m_view.sentence =
            tr("Joint %1: %2.").arg(m_weld.opened().number).arg(firstReason(verdict, plan()));
        step(tr("Save the joint"), CloseWeld{});
    }

    void beadAsked() {
        const BeadDraft& draft = m_context.bead;
        NumberFor what = NumberFor::BeadHeight;
        if (!draft.heightUm) {
            m_view.sentence = tr("Measure the bead's height at its worst place.");
            m_view.lamp.number = tr("Height");
            m_view.lamp.under = tr("of the bead, in mm");
        } else if (!draft.widthUm) {
            m_view.sentence = tr("Measure its width, over both beads.");
            m_view.lamp.number = tr("Width");
            m_view.lamp.under = tr("of the bead, in mm");
            m_view.seam.beadText = tr("width");
            what = NumberFor::BeadWidth;
        } else if (!draft.kUm) {
            m_view.sentence = tr("Measure the valley's height above the sheet.");
            m_view.lamp.number = tr("K value");
            m_view.lamp.under = tr("above 0 mm");
            what = NumberFor::BeadK;
        } else {
            m_view.sentence = tr("Measure how far the faces are out of line.");
            m_view.lamp.number = tr("Step");
            m_view.lamp.under =
                tr("at most %1 mm").arg(millimetresText(plan().misalignmentMaxUm, 1));
            what = NumberFor::Misalignment;
        }
        step(tr("Type it in"), AskNumber{what});
        m_view.stop = sideSlot(tr("Not measured"), tr("a remark"), Offer{});
        m_view.stop.offer = AskReason{ReasonFor::Owed, "bead_not_measured"};
    }

    void phase(const Closed&) {
        const Verdict now = verdict(m_weld);
        const bool good =
            now.word == VerdictWord::WithinLimits || now.word == VerdictWord::WithRemarks;
        ended(good ? Tone::Normal : Tone::Late, good ? Mark::Done : Mark::Late);
        m_view.lamp.word = good ? tr("Done") : tr("Out of limits");
        m_view.lamp.under = verdictWord(now.word);
        m_view.sentence =
            m_context.notSaved > 0
                ? tr("Joint %1 is not on disk yet. Trying again.").arg(m_weld.opened().number)
                : tr("Joint %1 is saved. %2.")
                      .arg(m_weld.opened().number)
                      .arg(verdictWord(now.word));
    }

    void phase(const Aborted&) {
        ended(Tone::Rest, Mark::Cut);
        m_view.lamp.word = tr("Stopped");
        m_view.lamp.under = tr("cut out");
        m_view.sentence =
            tr("Joint %1 is stopped. Cut it out and plane again.").arg(m_weld.opened().number);
    }

    void ended(Tone tone, Mark mark) {
        seam(SeamView::Phase::Look);
        m_view.seam.beadText.clear();
        m_view.seam.beadNowMm = m_view.seam.beadMm;
        scaleFree();
        lamp(tone, mark, {});
        m_view.lamp.framed = false;
        m_view.lamp.number = QString::number(m_weld.opened().number);
        step(tr("Next seam"), LeaveWeld{});
        m_view.stop.view.look = SlotView::Look::Hidden;
        m_view.back.view.look = SlotView::Look::Hidden;
    }

    // ---- after a reboot: this weld's clock stopped, and a person's word is asked

    void afterReboot() {
        const Milliseconds off = m_context.now.utc - m_weld.events.back().at.utc;
        const QString time = leftText(off);
        const bool goesOn = goesOnAfterReboot(m_weld.state);
        m_view.layout = WeldView::Layout::Phase;
        seam(goesOn ? SeamView::Phase::Cooling : SeamView::Phase::Prepare);
        m_view.seam.beadNowMm = goesOn ? m_view.seam.beadMm : 0;
        scaleOf(scalePlan().joining);
        m_view.lamp.number = time;
        m_view.cell.time = time;
        m_view.lamp.under = tr("power was off");
        m_view.lamp.under2 = tr("by the wall clock");
        m_view.stop.view.look = SlotView::Look::Plain;
        if (goesOn) {
            lamp(Tone::Soon, Mark::Trouble, tr("Trouble"));
            m_view.sentence = tr("Power was off for %1. Cooling has gone on.").arg(time);
            step(tr("Seen"), SettleWeld{RebootWord::GoOnConfirmed});
            m_view.step.view.under = tr("the clock is right");
            m_view.stop = sideSlot(
                tr("Not sure"), tr("count none of it"), SettleWeld{RebootWord::GoOnUnconfirmed});
        } else {
            lamp(Tone::Late, Mark::Trouble, tr("Trouble"));
            m_view.sentence =
                tr("Power was off for %1. The plate has cooled. Cut back and plane.").arg(time);
            step(tr("Stop: cut out"), SettleWeld{RebootWord::Abort});
            m_view.stop = sideSlot(
                tr("Go on"), tr("it is in the record"), SettleWeld{RebootWord::GoOnUnconfirmed});
        }
        m_view.back.view.look = SlotView::Look::Hidden;
        m_rebooted = true;
    }

    // ---- the ribbon: what was done, what runs, what is ahead

    void ribbon(Milliseconds now) {
        struct Span {
            std::optional<Milliseconds> from;
            std::optional<Milliseconds> to;
        };
        Span align, soak, change, build, cool;
        for (const Retained& event : m_standing) {
            const Milliseconds t = event.t.lo;
            if (std::holds_alternative<AlignmentStarted>(event.d)) {
                align.from = t;
            } else if (std::holds_alternative<SoakStarted>(event.d)) {
                align.to = soak.from = t;
            } else if (std::holds_alternative<PlateOut>(event.d)) {
                soak.to = change.from = t;
            } else if (std::holds_alternative<FacesMet>(event.d)) {
                change.to = build.from = t;
            }
        }
        if (const auto* cooling = std::get_if<Cooling>(&m_weld.state)) {
            build.to = cool.from = cooling->from.lo;
        } else if (
            std::holds_alternative<Releasing>(m_weld.state) ||
            std::holds_alternative<Inspecting>(m_weld.state) ||
            std::holds_alternative<Closed>(m_weld.state)) {
            build.to = cool.from = cool.to = now;
        }
        const auto piece = [&](const Span& span, const QString& name, std::optional<Sign> sign,
                               std::optional<Milliseconds> planned, bool late, double weight) {
            RibbonView::Piece out;
            using Is = RibbonView::Piece::Is;
            out.name = name;
            out.sign = sign;
            out.weight = weight;
            out.is = span.to ? Is::Done : span.from ? Is::Now : Is::Ahead;
            if (span.from && !span.to) {
                const Milliseconds gone = now - *span.from;
                out.fraction = planned ? share(gone, *planned) : 0.5;
                out.is = late ? Is::Late : Is::Now;
            }
            if (span.from && span.to && span.from != span.to) {
                out.time = timeText(*span.to - *span.from);
            } else if (planned) {
                out.time = timeText(*planned);
            }
            m_ribbon.pieces.push_back(out);
        };
        const auto* soaking = std::get_if<Soaking>(&m_weld.state);
        const auto* changing = std::get_if<ChangingOver>(&m_weld.state);
        const auto* building = std::get_if<BuildingUp>(&m_weld.state);
        const bool soakLate =
            soaking != nullptr && now - soaking->due.lo > plan().soak->high - plan().soak->target;
        piece(align, tr("align"), {}, plan().alignMedian, false, 2);
        piece(soak, tr("soak"), {}, plan().soak->target, soakLate, 4);
        piece(
            change, tr("changeover"), Sign::Changeover, plan().changeoverMax,
            changing != nullptr && now > changing->limit.lo, 0.5);
        piece(
            build, tr("build-up"), Sign::BuildUp, plan().buildUp->target,
            building != nullptr && now > building->late.lo, 0.5);
        piece(cool, tr("cooling"), {}, plan().cooling->atLeast, false, 4.5);
        m_ribbon.pieces.back().brokenBefore = true;
        m_view.ribbon = m_ribbon;
    }

    // ---- take back, four seconds ago, stop

    void sideSlots() {
        const bool field = m_view.layout == WeldView::Layout::Changeover;
        if (!m_rebooted && m_view.back.view.look != SlotView::Look::Hidden) {
            takeBack();
        }
        if (m_view.stop.view.text.isEmpty() && m_view.stop.view.look != SlotView::Look::Hidden) {
            m_view.stop =
                sideSlot(tr("Stop this weld"), tr("with a reason"), AskReason{ReasonFor::Stop, {}});
        }
        for (Slot* slot : {&m_view.back, &m_view.earlier, &m_view.stop}) {
            slot->view.onField = field;
        }
        if (field) {
            // narrower beside the larger step: one word, no sign
            m_view.stop.view.text = tr("Stop");
            m_view.back.view.sign.reset();
        }
        if (m_view.back.view.look == SlotView::Look::Hidden) {
            m_view.earlier.view.look = SlotView::Look::Hidden;
        }
    }

    void takeBack() {
        Slot& back = m_view.back;
        Slot& earlier = m_view.earlier;
        back.view.text = tr("Take back");
        back.view.sign = Sign::Back;
        earlier.view.text = tr("4 s ago");
        const std::int64_t n = m_view.onto;
        const auto last = std::find_if(
            m_standing.begin(), m_standing.end(), [n](const Retained& e) { return e.n == n; });
        std::optional<Milliseconds> left;
        if (n > 0 && last != m_standing.end()) {
            const Instant& pressed = m_weld.events[static_cast<std::size_t>(n - 1)].at;
            if (pressed.bootId == m_context.now.bootId) {
                left = kTakeBackWindow - (m_context.now.boot - pressed.boot);
            }
        }
        if (!left || *left < Milliseconds(0)) {
            back.view.look = earlier.view.look = SlotView::Look::Gone;
            back.view.under = n > 0 ? tr("10 s are over") : tr("nothing yet");
            return;
        }
        back.view.under = tr("%1 s left").arg((left->count() + 999) / 1000);
        back.offer = TakeBackLast{};
        earlier.view.under = tr("it was");
        if (mayBeEarlier()) {
            earlier.offer = SetEarlier{kEarlier};
        } else {
            earlier.view.look = SlotView::Look::Gone;
        }
    }

    /// Only a step of a clock can have been earlier, and only once.
    bool mayBeEarlier() const {
        const auto press = lastPress(m_weld);
        return std::any_of(press.begin(), press.end(), [this](const Retained& event) {
            const Instant& pressed = m_weld.events[static_cast<std::size_t>(event.n - 1)].at;
            return isPivotal(event.d) && pressed.boot == event.at.boot;
        });
    }

    const Weld& m_weld;
    const ViewContext& m_context;
    std::vector<Retained> m_standing;
    WeldTime m_t;
    RibbonView m_ribbon;
    WeldView m_view;
    bool m_rebooted = false;
};

} // namespace

const std::vector<std::string>& platePlaces() {
    static const std::vector<std::string> kPlaces{"front", "middle", "back"};
    return kPlaces;
}

int platePlacesRead(const Weld& weld) {
    int read = 0;
    for (const Retained& event : retained(weld.events)) {
        const auto* made = std::get_if<CheckMade>(&event.d);
        if (made != nullptr && made->check == "plate_temperature" && made->passed) {
            ++read;
        }
    }
    return std::min(read, static_cast<int>(platePlaces().size()));
}

std::string checkAsked(const Weld& weld, const Preparing& state) {
    const int read = platePlacesRead(weld);
    if (read > 0 && read < static_cast<int>(platePlaces().size())) {
        return "plate_temperature";
    }
    return state.openChecks.empty() ? std::string() : state.openChecks.front();
}

std::vector<Retained> lastPress(const Weld& weld) {
    const auto standing = retained(weld.events);
    const auto pressedAt = [&weld](const Retained& event) -> const Instant& {
        return weld.events[static_cast<std::size_t>(event.n - 1)].at;
    };
    std::vector<Retained> press;
    for (auto event = standing.rbegin(); event != standing.rend(); ++event) {
        if (!isTakeable(event->d)) {
            continue;
        }
        const bool same =
            press.empty() || (pressedAt(*event).bootId == pressedAt(press.front()).bootId &&
                              pressedAt(press.front()).boot - pressedAt(*event).boot <= kOnePress);
        if (!same) {
            break;
        }
        press.push_back(*event);
    }
    return press;
}

WeldView weldView(const Weld& weld, const ViewContext& context) {
    return Maker(weld, context).make();
}

} // namespace seamclock
