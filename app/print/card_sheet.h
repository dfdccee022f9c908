// One weld's card as it stands on a sheet of paper, as a value: what the screen shows, and what
// only paper needs: every source and warning, cautions, which seam of which sheets, the date, and
// who signs. It decides the words; where they stand on the page is page_layout's.
#pragma once

#include "app/text/card_text.h"
#include "core/weld/event.h"

#include <QString>
#include <QStringList>
#include <vector>

namespace seamclock {

/// What is welded and where, beside the plan. Empty texts are left out.
struct CardWork {
    QString bench;   // "A, East bench"
    QString seam;    // "Seam S2, wall panel 1 to 2"
    QString printed; // "2030-01-07 14:02"
    std::vector<Sheet> sheets;
    bool demo = false; // of the demo shop: the page says so
};

struct CardSheet {
    struct Fact {
        QString name;
        QString text;

        bool operator==(const Fact&) const = default;
    };

    QString title;
    QString across; // a word through the page, and before the foot's: of the demo shop
    QString seam;
    QString sheet;
    QString printed;
    QStringList sheets; // maker, batch and the rest of each; one line where both are the same
    CardTexts card;
    QString sumsTitle;
    QString factsTitle;
    std::vector<Fact> facts;
    QString warningsTitle;
    QString estimatesTitle;
    QStringList estimates;
    QString sourcesTitle;
    QStringList sources; // "soak: DVS …: from memory, not attested"
    QString cautionsTitle;
    QStringList cautions;
    QString scaleWord;          // before a reading
    QStringList signatureLines; // one box each at the foot of the page
    QString foot;

    bool operator==(const CardSheet&) const = default;
};

CardSheet cardSheet(
    const WeldPlan& plan, const Bench* bench, const CardWork& work, UnitSystem units,
    const HeatEstimate* heat = nullptr);

} // namespace seamclock
