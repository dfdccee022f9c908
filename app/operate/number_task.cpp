#include "app/operate/number_task.h"

#include "app/text/numbers.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <algorithm>

namespace seamclock {
namespace {

struct Number {
    Q_DECLARE_TR_FUNCTIONS(Number)
};

double unitsOf(std::int64_t milli) {
    return static_cast<double>(milli) / 1000.0;
}

void plate(const Weld& weld, PlateRead read, NumberTask& task) {
    const WeldPlan::Plate& plate = *weld.plan.plate;
    const int count = static_cast<int>(platePlaces(read).size());
    const int now = std::min(platePlacesRead(weld, read), count - 1);
    task.view.where = Number::tr("Read on the face. %1").arg(platePlaceText(weld, read));
    std::vector<QString> kept;
    for (const Retained& event : retained(weld.events)) {
        const auto* made = std::get_if<CheckMade>(&event.d);
        if (made == nullptr || made->check != "plate_temperature") {
            continue;
        }
        if (made->passed && made->valueMc) {
            kept.push_back(celsiusText(*made->valueMc) + " °C");
        } else if (!made->valueMc) {
            kept.clear(); // set aside
        }
    }
    for (int i = 0; i < count; ++i) {
        NumberView::Place place;
        place.done = i < static_cast<int>(kept.size());
        place.now = i == now;
        place.text = place.done ? kept[static_cast<std::size_t>(i)] : QString::number(i + 1);
        task.view.places.push_back(place);
    }
    task.view.unit = "°C";
    task.view.low = unitsOf(plate.minMc);
    task.view.high = unitsOf(plate.maxMc);
    task.view.target = unitsOf(plate.targetMc);
    task.view.below = Number::tr("cold");
    task.view.above = Number::tr("hot");
    task.decimals = 1;
    task.most = 400;
}

void ends(NumberTask& task, int decimals) {
    NumberView& view = task.view;
    if (view.low) {
        view.lowText = numberText(*view.low, decimals);
    }
    if (view.high) {
        view.highText = numberText(*view.high, decimals);
    }
    if (view.target) {
        view.targetText = numberText(*view.target, decimals);
    }
    if (view.low && view.high) {
        view.allowed =
            Number::tr("allowed %1 to %2 %3").arg(view.lowText, view.highText, view.unit);
    } else if (view.high) {
        view.allowed = Number::tr("at most %1 %2").arg(view.highText, view.unit);
    }
}

} // namespace

NumberTask numberTask(const Weld& weld, NumberFor what, const QString& letter, PlateRead read) {
    NumberTask task;
    task.what = what;
    NumberView& view = task.view;
    const WeldPlan::ScalePlan& scale = *weld.plan.scale;
    view.unit = "mm";
    switch (what) {
    case NumberFor::PlateTemperature:
        view.title = Number::tr("Plate temperature, bench %1").arg(letter);
        plate(weld, read, task);
        ends(task, 0);
        break;
    case NumberFor::Drag:
        view.title = Number::tr("Drag, bench %1").arg(letter);
        view.where = Number::tr("Nothing touching: what the scale reads while the table moves.");
        view.unit = fromUtf8(scale.unit);
        task.decimals = std::max(decimalsOf(scale.divisionMilli), 1);
        task.least = unitsOf(scale.zeroMilli);
        break;
    case NumberFor::Recheck:
        view.title = Number::tr("Scale %1 in cooling").arg(letter);
        view.where = Number::tr("What does the scale read now?");
        view.unit = fromUtf8(scale.unit);
        view.low = unitsOf(scale.joining.lowMilli);
        view.high = unitsOf(scale.joining.highMilli);
        view.target = unitsOf(scale.joining.setMilli);
        view.below = Number::tr("low");
        view.above = Number::tr("high");
        task.decimals = std::max(decimalsOf(scale.divisionMilli), 1);
        // as the scale's own panel shows its band: never wider than it is
        view.lowText = lowEndText(scale.joining.lowMilli, scale.divisionMilli);
        view.highText = highEndText(scale.joining.highMilli, scale.divisionMilli);
        view.targetText = readingText(scale.joining.setMilli, scale.divisionMilli);
        view.allowed =
            Number::tr("allowed %1 to %2 %3").arg(view.lowText, view.highText, view.unit);
        break;
    case NumberFor::Overshoot:
        view.title = Number::tr("Turned too far, bench %1").arg(letter);
        view.where = Number::tr("How far did the scale go before you turned back?");
        view.unit = fromUtf8(scale.unit);
        task.decimals = std::max(decimalsOf(scale.divisionMilli), 1);
        task.within = unitsOf(scale.alignment.highMilli);
        view.allowed =
            Number::tr("allowed up to %1 %2")
                .arg(highEndText(scale.alignment.highMilli, scale.divisionMilli), view.unit);
        break;
    case NumberFor::BeadHeight:
        view.title = Number::tr("Bead height");
        view.where = beadPlaceText(weld) + Number::tr("At the worst place, above the sheet.");
        task.most = 50;
        break;
    case NumberFor::BeadWidth:
        view.title = Number::tr("Bead width");
        view.where = beadPlaceText(weld) + Number::tr("Over both beads, at the same place.");
        task.most = 100;
        break;
    case NumberFor::BeadK:
        view.title = Number::tr("K value");
        view.where = beadPlaceText(weld) +
                     Number::tr("Valley between the beads above the sheet. 0: not above it.");
        view.allowed = Number::tr("above 0 mm");
        task.most = 50;
        break;
    case NumberFor::Misalignment:
        view.title = Number::tr("Faces out of line");
        view.where = beadPlaceText(weld) + Number::tr("Step from one sheet to the other.");
        view.low = 0;
        view.high = unitsOf(weld.plan.misalignmentMaxUm);
        view.below = QString();
        view.above = Number::tr("out of line");
        task.most = 50;
        ends(task, 1);
        break;
    case NumberFor::Ambient:
        task = entryTask(NumberFor::ShopTemperature, {}, {});
        task.what = what;
        task.view.where = Number::tr("Read it where the bench stands. In the plan: %1 °C.")
                              .arg(celsiusText(weld.plan.ambientMc));
        return task;
    case NumberFor::LengthLost:
        return lostTask(weld.opened().number);
    case NumberFor::BenchValue:
        break; // of no weld
    case NumberFor::SheetThickness:
    case NumberFor::SeamLength:
    case NumberFor::ShopTemperature:
        return entryTask(what, {}, {});
    }
    return task;
}

NumberTask lostTask(std::int64_t joint) {
    NumberTask task;
    task.what = NumberFor::LengthLost;
    task.view.unit = "mm";
    task.view.title = Number::tr("Joint %1 is cut out").arg(joint);
    task.view.where = Number::tr("How much is cut away, of both sheets together?");
    task.most = 2'000;
    return task;
}

NumberTask entryTask(NumberFor what, std::optional<double> low, std::optional<double> high) {
    NumberTask task;
    task.what = what;
    task.view.unit = "mm";
    task.view.low = low;
    task.view.high = high;
    task.decimals = 1;
    if (what == NumberFor::SheetThickness) {
        task.view.title = Number::tr("Thickness of the sheets");
        task.view.where = Number::tr("As measured, both the same.");
        task.view.below = Number::tr("thin");
        task.view.above = Number::tr("thick");
        task.most = 200;
    } else if (what == NumberFor::SeamLength) {
        task.view.title = Number::tr("Length of the seam");
        task.view.where = Number::tr("Of one seam. Others in this clamping are added after it.");
        task.view.below = Number::tr("short");
        task.view.above = Number::tr("long");
        task.most = 20'000;
    } else {
        task.view.title = Number::tr("Shop temperature");
        task.view.where = Number::tr("Where the bench stands.");
        task.view.unit = "°C";
        task.view.below = Number::tr("cold");
        task.view.above = Number::tr("warm");
        task.most = 60;
    }
    ends(task, 0);
    return task;
}

NumberShown shown(const NumberTask& task, const QString& typed, QChar decimalSign) {
    NumberShown out;
    out.view = task.view;
    out.view.text = typed;
    bool isNumber = false;
    QString plain = typed;
    plain.replace(decimalSign, QLatin1Char('.'));
    const double value = plain.toDouble(&isNumber);
    const QString withUnit = typed + QLatin1Char(' ') + task.view.unit;
    if (!isNumber) {
        out.button = Number::tr("Type it in");
        return out;
    }
    out.value = value;
    out.view.value = value;
    if (value < task.least || value > task.most) {
        out.view.mark = Mark::Late;
        if (task.what == NumberFor::BenchValue) {
            out.sentence = Number::tr("%1 can't be kept: %2.").arg(withUnit, task.view.allowed);
            out.button = Number::tr("Type it again");
            return out;
        }
        out.sentence =
            Number::tr("%1 can't be meant: %2 to %3 %4.")
                .arg(withUnit, numberText(task.least, 0), numberText(task.most, 0), task.view.unit);
        out.button = Number::tr("Type it again");
        return out;
    }
    if (task.within && value <= *task.within) {
        out.view.mark = Mark::Late;
        out.sentence = Number::tr("%1 is not too far: %2.").arg(withUnit, task.view.allowed);
        out.button = Number::tr("Type it again");
        return out;
    }
    const bool low = task.view.low && value < *task.view.low;
    const bool high = task.view.high && value > *task.view.high;
    out.view.mark = low || high ? Mark::Late : Mark::Done;
    out.outcome = NumberOutcome::Keep;
    out.button = Number::tr("Keep %1").arg(withUnit);
    if (task.what == NumberFor::PlateTemperature && (low || high)) {
        out.outcome = NumberOutcome::StopPlate;
        out.sentence = (high ? Number::tr("%1 is too hot: %2.") : Number::tr("%1 is too cold: %2."))
                           .arg(withUnit, task.view.allowed);
        out.button = high ? Number::tr("Stop: plate too hot") : Number::tr("Stop: plate too cold");
    } else if (task.what == NumberFor::SheetThickness || task.what == NumberFor::SeamLength) {
        if (low || high) {
            out.outcome = NumberOutcome::None;
            out.sentence =
                Number::tr("%1 can't be welded here: %2.").arg(withUnit, task.view.allowed);
            out.button = Number::tr("Type it again");
        }
    } else if (task.what == NumberFor::ShopTemperature && (low || high)) {
        out.sentence = Number::tr("%1 is outside %2.").arg(withUnit, task.view.allowed);
    } else if (low) {
        out.sentence =
            Number::tr("%1 is below %2. Keep it, turn up.").arg(withUnit, task.view.lowText);
    } else if (high) {
        out.sentence =
            Number::tr("%1 is above %2 %3.").arg(withUnit, task.view.highText, task.view.unit);
    }
    return out;
}

} // namespace seamclock
