#include "app/operate/weld_sketch.h"

#include "app/text/numbers.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <algorithm>
#include <chrono>
#include <cmath>

namespace seamclock {
namespace {

constexpr double kPlateMm = 10;

struct Operate {
    Q_DECLARE_TR_FUNCTIONS(Operate)
};

QString tr(const char* text) {
    return Operate::tr(text);
}

double mm(std::int64_t um) {
    return static_cast<double>(um) / 1000.0;
}
double unitsOf(std::int64_t milli) {
    return static_cast<double>(milli) / 1000.0;
}

} // namespace

QString Sketch::unit() const {
    return fromUtf8(scalePlan().unit);
}

QString Sketch::reading(std::int64_t milli) const {
    return readingText(milli, scalePlan().divisionMilli);
}

QString Sketch::readingWithUnit(std::int64_t milli) const {
    return reading(milli) + " " + unit();
}

Slot sideSlot(const QString& text, const QString& under, Offer offer) {
    Slot slot;
    slot.view.text = text;
    slot.view.under = under;
    slot.offer = std::move(offer);
    return slot;
}

double share(Milliseconds part, Milliseconds whole) {
    if (whole.count() <= 0) {
        return 0;
    }
    const double value = static_cast<double>(part.count()) / static_cast<double>(whole.count());
    return std::clamp(value, 0.0, 1.0);
}

double shareByTheSecond(Milliseconds left, Milliseconds whole) {
    return share(whole - std::chrono::ceil<std::chrono::seconds>(left), whole);
}

void Sketch::lamp(Tone tone, Mark mark, const QString& word) {
    view.lamp.tone = tone;
    view.lamp.mark = mark;
    view.lamp.word = word;
    view.lamp.framed = tone == Tone::Late;
    // Once a second between wide and narrow.
    view.lamp.frameWide = !view.lamp.framed || context.now.boot.count() / 500 % 2 == 0;
}

void Sketch::step(const QString& text, Offer offer, SlotView::Look look) {
    view.step.view.text = text;
    view.step.view.look = look;
    view.step.offer = std::move(offer);
}

void Sketch::waitForHands(const QString& sentence) {
    const Milliseconds wait = context.clash->wait;
    const bool seconds = wait <= Milliseconds(59'000);
    const QString number = seconds ? QString::number((wait.count() + 999) / 1000) : leftText(wait);
    const QString time = seconds ? tr("%1 s").arg(number) : number;
    const QString other = QChar(u'A' + context.clash->place - 1);
    lamp(Tone::Soon, Mark::Soon, tr("Not yet"));
    view.lamp.calm = false;
    view.lamp.number = number;
    view.lamp.unit = seconds ? tr("s") : QString();
    view.lamp.under = tr("then clear of bench %1").arg(other);
    view.sentence = sentence.arg(time);
    view.step.view.look = SlotView::Look::Waiting;
    view.step.view.under = tr("wait %1: %2 needs you").arg(time, other);
}

void Sketch::scaleOf(const ReadingBand& band) {
    const WeldPlan::ScalePlan& scale = scalePlan();
    ScaleView& part = view.scale;
    part.value = reading(band.setMilli);
    part.set = unitsOf(band.setMilli);
    part.low = unitsOf(band.lowMilli);
    part.high = unitsOf(band.highMilli);
    part.lowText = lowEndText(band.lowMilli, scale.divisionMilli);
    part.highText = highEndText(band.highMilli, scale.divisionMilli);
    part.setText = tr("set");
    scaleBase();
}

void Sketch::scaleBase() {
    const WeldPlan::ScalePlan& scale = scalePlan();
    ScaleView& part = view.scale;
    part.title = tr("Scale %1").arg(context.letter);
    part.unit = unit();
    part.zero = unitsOf(scale.zeroMilli);
    part.division = unitsOf(scale.divisionMilli);
    // The plan does not hold the scale's end: its window ends well above the highest band.
    const std::int64_t high = std::max(scale.alignment.highMilli, scale.joining.highMilli);
    part.max = unitsOf(high + (high - scale.zeroMilli) / 2 + 4 * scale.divisionMilli);
}

void Sketch::scaleFree() {
    scaleBase();
    view.scale.free = true;
    view.scale.value = tr("free");
}

void Sketch::readings(ReadingPhase phase) {
    for (const Retained& event : standing) {
        const auto* taken = std::get_if<ReadingTaken>(&event.d);
        if (taken != nullptr && taken->phase == phase) {
            view.scale.readings.push_back(unitsOf(taken->readingMilli));
        }
    }
}

void Sketch::seam(SeamView::Phase phase) {
    SeamView& part = view.seam;
    part.phase = phase;
    part.thicknessMm = mm(plan().thicknessUm);
    part.plateMm = kPlateMm;
    part.beadMm = plan().beadMinUm ? mm(*plan().beadMinUm) : 0;
    if (plan().beadMinUm) {
        part.beadText = tr("bead %1 mm").arg(millimetresText(*plan().beadMinUm, 1));
    }
    if (const auto read = plateRead()) {
        part.plateC = unitsOf(*read);
        part.plateText = celsiusText(*read) + " °C";
    }
}

// Only on the plate: in cooling a temperature would argue for an early release.
void Sketch::heat() {
    if (context.heat == nullptr) {
        return;
    }
    const SheetField& field = context.heat->field();
    SeamHeat heat;
    for (std::size_t i = 0; i < field.columns(); ++i) {
        heat.depthMm.push_back(field.depthOf(i) * 1e3);
    }
    for (std::size_t row = 0; row < field.rows(); ++row) {
        const double end = field.heightOf(row) + field.grid().across[row] / 2;
        heat.rowEnds.push_back(end / field.halfThickness());
        for (std::size_t i = 0; i < field.columns(); ++i) {
            heat.celsius.push_back(std::round(field.celsius(i, row))); // no repainting for less
        }
    }
    const Material& material = context.heat->material();
    heat.meltingC = material.meltingPoint();
    const QString depth = numberText(context.heat->meltDepth() * 1e3, 1);
    view.seam.note = material.crystals ? tr("Estimate: melt %1 mm deep").arg(depth)
                                       : tr("Estimate: soft %1 mm deep").arg(depth);
    view.seam.heat = std::move(heat);
}

std::optional<std::int64_t> Sketch::plateRead() const {
    std::optional<std::int64_t> found;
    for (const Retained& event : standing) {
        const auto* made = std::get_if<CheckMade>(&event.d);
        if (made != nullptr && made->check == "plate_temperature" && made->valueMc) {
            found = made->valueMc;
        }
    }
    return found;
}

bool Sketch::numbered() const {
    return std::any_of(standing.begin(), standing.end(), [](const Retained& event) {
        return std::holds_alternative<JointNumbered>(event.d);
    });
}

} // namespace seamclock
