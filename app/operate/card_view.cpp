#include "app/operate/card_view.h"

#include "app/text/numbers.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

namespace seamclock {
namespace {

struct Card {
    Q_DECLARE_TR_FUNCTIONS(Card)
};

const QString kNone = QStringLiteral("–");

struct Reading {
    QString set;
    QString band;
};

Reading readingOf(const WeldPlan& plan, ReadingBand WeldPlan::ScalePlan::*which) {
    if (!plan.scale) {
        return {kNone, {}};
    }
    const ReadingBand& band = (*plan.scale).*which;
    const std::int64_t division = plan.scale->divisionMilli;
    return {
        readingText(band.setMilli, division),
        Card::tr("%1 to %2")
            .arg(lowEndText(band.lowMilli, division), highEndText(band.highMilli, division))};
}

QString rechecks(const WeldPlan& plan) {
    if (!plan.cooling || plan.cooling->rechecks.empty()) {
        return {};
    }
    QStringList times;
    for (const Milliseconds at : plan.cooling->rechecks) {
        times << goneText(at);
    }
    return Card::tr("read at %1").arg(times.join(Card::tr(", ")));
}

void columns(const WeldPlan& plan, CardView& view) {
    const QString unit = plan.scale ? fromUtf8(plan.scale->unit) : QString();
    const Reading align = readingOf(plan, &WeldPlan::ScalePlan::alignment);
    const Reading soak = readingOf(plan, &WeldPlan::ScalePlan::soak);
    const Reading joining = readingOf(plan, &WeldPlan::ScalePlan::joining);
    using Column = CardView::Column;
    Column plate{Sign::PlateTemperature, Card::tr("plate"), kNone, "°C", {}, {}, {}, {}, {}};
    if (plan.plate) {
        plate.big = celsiusText(plan.plate->targetMc);
        plate.under = Card::tr("%1 to %2")
                          .arg(celsiusText(plan.plate->minMc), celsiusText(plan.plate->maxMc));
    }
    plate.scale = Card::tr("3 places");
    plate.band = Card::tr("after 10 min");
    plate.foot = Card::tr("read on its face");
    view.columns.push_back(plate);
    view.columns.push_back(
        {Sign::Align, Card::tr("align"),
         plan.beadMinUm ? millimetresText(*plan.beadMinUm, 1) : kNone, "mm",
         Card::tr("bead at least"), align.set, unit, align.band, Card::tr("till bead stands")});
    view.columns.push_back(
        {Sign::Soak,
         Card::tr("soak"),
         plan.soak ? goneText(plan.soak->target) : kNone,
         {},
         Card::tr("to the signal"),
         soak.set,
         unit,
         soak.band,
         Card::tr("locked")});
    view.columns.push_back(
        {Sign::Changeover,
         Card::tr("changeover"),
         plan.changeoverMax ? secondsText(*plan.changeoverMax) : kNone,
         "s",
         Card::tr("at most"),
         Card::tr("free"),
         {},
         Card::tr("no load"),
         Card::tr("faces together")});
    view.columns.push_back(
        {Sign::BuildUp, Card::tr("build-up"),
         plan.buildUp ? secondsText(plan.buildUp->target) : kNone, "s", Card::tr("even rise to"),
         joining.set, unit, joining.band, Card::tr("then lock")});
    view.columns.push_back(
        {Sign::Cooling,
         Card::tr("cooling"),
         plan.cooling ? goneText(plan.cooling->atLeast) : kNone,
         {},
         Card::tr("at least"),
         joining.set,
         unit,
         joining.band,
         rechecks(plan)});
}

void arithmetic(const WeldPlan& plan, const Bench& bench, CardView& view) {
    view.arithmeticTitle = Card::tr("How the scale reading comes about");
    if (plan.joiningPa && plan.joiningMn) {
        view.force = Card::tr("%1 N/mm² × %2 mm × %3 mm = %4 N")
                         .arg(
                             numberText(static_cast<double>(*plan.joiningPa) / 1e6, 2),
                             millimetresText(plan.thicknessUm), millimetresText(plan.lengthUm),
                             numberText(static_cast<double>(*plan.joiningMn) / 1000.0, 0));
    }
    if (plan.scale && plan.joiningMn) {
        const QString unit = fromUtf8(plan.scale->unit);
        const double rate = inNewtons(bench.scale.rate());
        const double force = static_cast<double>(*plan.joiningMn + plan.dragMn) / 1000.0 +
                             inNewtons(bench.scale.preload);
        const double exact = static_cast<double>(plan.scale->zeroMilli) / 1000.0 + force / rate;
        view.reading =
            Card::tr("with drag %1 N: ÷ %2 N per %3 = %4, set to %5 %3")
                .arg(
                    numberText(static_cast<double>(plan.dragMn) / 1000.0, 0), numberText(rate, 1),
                    unit, numberText(exact, 1),
                    readingText(plan.scale->joining.setMilli, plan.scale->divisionMilli));
    }
    if (!plan.missing.empty()) {
        QStringList names;
        for (const std::string& name : plan.missing) {
            names << findingWord(name);
        }
        view.warning =
            Card::tr("Not ready to weld. The procedure lacks: %1.").arg(names.join(", "));
    } else if (!plan.warnings.empty()) {
        view.warning = warningText(plan.warnings.front());
    }
}

void sources(const WeldPlan& plan, CardView& view) {
    view.sourcesTitle = Card::tr("Where the numbers come from");
    const auto add = [&](std::string_view value, const QString& what) {
        const auto found = std::find_if(
            plan.sources.begin(), plan.sources.end(),
            [value](const PlanSource& source) { return source.value == value; });
        if (found == plan.sources.end()) {
            return;
        }
        CardView::Source source;
        source.sign = found->source.standing == Standing::Attested ? Sign::Shield : Sign::Note;
        source.memory = found->source.standing == Standing::Memory;
        source.what = what;
        source.standing = standingText(found->source.standing);
        view.sources.push_back(source);
    };
    add("soak_s", Card::tr("Times, bead: %1").arg(fromUtf8(plan.procedure)));
    add("pressure_N_mm2.joining", Card::tr("Pressure"));
    add("heated_tool_C", Card::tr("Plate"));
}

} // namespace

CardView
cardView(const WeldPlan& plan, const Bench& bench, const QString& letter, const QString& seam) {
    CardView view;
    view.ready = plan.isReady();
    view.title = Card::tr("Weld card, bench %1").arg(letter);
    view.under = Card::tr("%1%2, %3 mm thick, %4 mm long. Shop %5 °C.")
                     .arg(
                         seam.isEmpty() ? QString() : seam + ". ", fromUtf8(plan.material),
                         millimetresText(plan.thicknessUm), millimetresText(plan.lengthUm),
                         celsiusText(plan.ambientMc));
    columns(plan, view);
    arithmetic(plan, bench, view);
    sources(plan, view);
    return view;
}

} // namespace seamclock
