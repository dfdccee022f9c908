#include "app/operate/card_view.h"

#include "app/text/card_text.h"
#include "app/text/dates.h"
#include "app/text/numbers.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <initializer_list>
#include <string_view>

namespace seamclock {
namespace {

struct Card {
    Q_DECLARE_TR_FUNCTIONS(Card)
};

constexpr std::array<Sign, 6> kSigns{Sign::PlateTemperature, Sign::Align,   Sign::Soak,
                                     Sign::Changeover,       Sign::BuildUp, Sign::Cooling};

void columns(const CardTexts& card, CardView& view) {
    for (std::size_t i = 0; i < card.columns.size() && i < kSigns.size(); ++i) {
        const CardColumn& from = card.columns[i];
        view.columns.push_back(
            {kSigns[i], from.name, from.big, from.bigUnit, from.under, from.scale, from.scaleUnit,
             from.band, from.foot});
    }
}

void arithmetic(const CardTexts& card, CardView& view) {
    view.arithmeticTitle = Card::tr("How the scale reading comes about");
    if (!card.sums.empty()) {
        view.force = card.sums.front().force;
        view.reading = card.sums.front().reading;
    }
    view.estimate = card.shortEstimate;
    if (!card.notReady.isEmpty()) {
        view.warning = card.notReady;
    } else if (!card.warnings.isEmpty()) {
        view.warning = card.warnings.front();
        if (card.warnings.size() > 1) {
            view.warning +=
                Card::tr(" And %1 more: see the printed card.").arg(card.warnings.size() - 1);
        }
    }
}

const Source* sourceOf(const WeldPlan& plan, std::string_view value) {
    const auto found =
        std::find_if(plan.sources.begin(), plan.sources.end(), [value](const PlanSource& source) {
            return source.value == value;
        });
    return found == plan.sources.end() ? nullptr : &found->source;
}

/// How little a value of that standing is worth on its own.
int doubt(Standing standing) {
    switch (standing) {
    case Standing::Attested:
        return 0;
    case Standing::Seen:
        return 1;
    case Standing::Derived:
        return 2;
    case Standing::CommonPractice:
        return 3;
    case Standing::Memory:
        return 4;
    }
    return 4;
}

/// One line for several values is worth no more than the weakest of them.
const Source* weakestOf(const WeldPlan& plan, std::initializer_list<std::string_view> values) {
    const Source* weakest = nullptr;
    for (const std::string_view value : values) {
        const Source* source = sourceOf(plan, value);
        if (source != nullptr &&
            (weakest == nullptr || doubt(source->standing) > doubt(weakest->standing))) {
            weakest = source;
        }
    }
    return weakest;
}

/// Who attested it stands at the end of an attested source's text.
QString standingShown(const Source& source) {
    const QString text = fromUtf8(source.text);
    const QString before = QStringLiteral("attested by "); // as core/procedure/cells.h writes it
    const qsizetype at = text.lastIndexOf(before);
    return source.standing == Standing::Attested && at >= 0
               ? Card::tr("attested by %1").arg(withFullDays(text.mid(at + before.size())))
               : standingText(source.standing);
}

void addSource(const Source* source, const QString& what, CardView& view) {
    if (source == nullptr) {
        return;
    }
    CardView::Source row;
    row.sign = source->standing == Standing::Attested ? Sign::Shield : Sign::Note;
    row.memory = source->standing == Standing::Memory;
    row.what = what;
    row.standing = standingShown(*source);
    view.sources.push_back(row);
}

void sources(
    const WeldPlan& plan, const Bench& bench, const CardTexts& card, const QString& letter,
    CardView& view) {
    view.sourcesTitle = Card::tr("Where the numbers come from");
    addSource(
        weakestOf(plan, {"soak_s", "bead_min_mm", "changeover_max_s", "build_up_s", "cooling_min"}),
        Card::tr("Times, bead: %1").arg(fromUtf8(plan.procedure)), view);
    const Source* pressure = sourceOf(plan, "pressure_N_mm2.joining");
    const Source* plate = sourceOf(plan, "heated_tool_C");
    if (pressure != nullptr && plate != nullptr &&
        standingShown(*pressure) == standingShown(*plate)) {
        addSource(pressure, Card::tr("Pressure, plate"), view);
    } else {
        addSource(pressure, Card::tr("Pressure"), view);
        addSource(plate, Card::tr("Plate"), view);
    }
    if (view.sources.size() < 3) {
        CardView::Source row;
        row.sign = Sign::Spring;
        row.what = Card::tr("Scale of bench %1").arg(letter);
        row.memory = !bench.calibration;
        row.standing = card.calibration;
        view.sources.push_back(row);
    }
}

} // namespace

bool hasBatches(const std::vector<Sheet>& sheets) {
    return !sheets.empty() && std::all_of(sheets.begin(), sheets.end(), [](const Sheet& sheet) {
        return !fromUtf8(sheet.batch).trimmed().isEmpty();
    });
}

QString batchMissing(const std::vector<Sheet>& sheets, BatchPlace place) {
    if (hasBatches(sheets)) {
        return {};
    }
    switch (place) {
    case BatchPlace::Entry:
        return Card::tr("A sheet has no batch, so this joint is not found by it: type it where the "
                        "thickness is typed.");
    case BatchPlace::Job:
        return Card::tr("A sheet has no batch, so this joint is not found by it: a foreman enters "
                        "it with the job, or later in the day log.");
    case BatchPlace::DayLog:
        break;
    }
    return Card::tr("A sheet has no batch, so this joint is not found by it: a foreman enters it "
                    "in the day log.");
}

CardView cardView(
    const WeldPlan& plan, const Bench& bench, const QString& letter, const QString& seam,
    UnitSystem units, const HeatEstimate* heat, const QString& missing) {
    CardTexts card = cardTexts(plan, &bench, units, heat);
    if (!missing.isEmpty()) { // after a caution, before what only the joint suffers from
        const bool cautioned =
            !card.warnings.isEmpty() && card.warnings.front() == fumeCaution(plan.material);
        card.warnings.insert(cautioned ? 1 : 0, missing);
    }
    CardView view;
    view.ready = plan.isReady();
    view.title = Card::tr("Weld card, bench %1").arg(letter);
    view.under = Card::tr("%1%2. Shop %3.")
                     .arg(seam.isEmpty() ? QString() : seam + ". ", card.sheet, card.shop);
    columns(card, view);
    arithmetic(card, view);
    sources(plan, bench, card, letter, view);
    return view;
}

} // namespace seamclock
