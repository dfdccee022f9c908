#include "app/print/card_sheet.h"

#include "app/text/words.h"

#include <QCoreApplication>

namespace seamclock {
namespace {

struct Page {
    Q_DECLARE_TR_FUNCTIONS(Page)
};

QString sheetText(const Sheet& sheet) {
    QStringList parts;
    parts << fromUtf8(sheet.material);
    if (sheet.grade) {
        parts << fromUtf8(*sheet.grade);
    }
    if (!sheet.maker.empty()) {
        parts << fromUtf8(sheet.maker);
    }
    if (!sheet.batch.empty()) {
        parts << Page::tr("batch %1").arg(fromUtf8(sheet.batch));
    }
    if (sheet.mfr) {
        parts << Page::tr("melt flow %1").arg(fromUtf8(*sheet.mfr));
    }
    return parts.join(Page::tr(", "));
}

QString ruleText(BandRule rule) {
    switch (rule) {
    case BandRule::Line:
        return Page::tr("along the table's straight line");
    case BandRule::BandEnd:
        return Page::tr("the upper end of the table's band");
    }
    return {};
}

QStringList sheetLines(const std::vector<Sheet>& sheets) {
    if (sheets.size() == 2 && sheets[0] == sheets[1]) {
        return {Page::tr("Both sheets: %1").arg(sheetText(sheets[0]))};
    }
    QStringList lines;
    for (const Sheet& each : sheets) {
        lines << Page::tr("Sheet %1: %2").arg(lines.size() + 1).arg(sheetText(each));
    }
    return lines;
}

/// Its own words, and what they are worth where they don't say so.
QString sourceText(const CardSource& source) {
    const QString standing = standingText(source.standing);
    const QString text = QStringLiteral("%1: %2").arg(source.values, source.text);
    return source.text.contains(standing, Qt::CaseInsensitive) ||
                   source.standing == Standing::Attested
               ? text
               : QStringLiteral("%1 [%2]").arg(text, standing);
}

void facts(const WeldPlan& plan, CardSheet& sheet) {
    const auto add = [&sheet](const QString& name, const QString& text) {
        if (!text.isEmpty()) {
            sheet.facts.push_back({name, text});
        }
    };
    add(Page::tr("Procedure"),
        Page::tr("%1, edition %2").arg(fromUtf8(plan.procedure), fromUtf8(plan.edition)));
    add(Page::tr("Scale"), sheet.card.calibration);
    add(Page::tr("Shop"), sheet.card.shop);
    add(Page::tr("Drag"), sheet.card.drag);
    add(Page::tr("Gap"), sheet.card.gaps);
    add(Page::tr("Edges"), sheet.card.edges);
    add(Page::tr("Limits"), sheet.card.tolerance);
    add(Page::tr("Cooling"),
        ruleText(plan.coolingRule) +
            (plan.halfCooling ? Page::tr("; cut to half: full load only after the whole "
                                         "time")
                              : QString()));
    add(Page::tr("Checks"), sheet.card.checks.join(Page::tr(", ")));
    add(Page::tr("Release"), sheet.card.release.join(Page::tr("; ")));
}

} // namespace

CardSheet cardSheet(
    const WeldPlan& plan, const Bench* bench, const CardWork& work, UnitSystem units,
    const HeatEstimate* heat) {
    CardSheet sheet;
    sheet.card = cardTexts(plan, bench, units, heat);
    sheet.title = work.bench.isEmpty() ? Page::tr("Weld card")
                                       : Page::tr("Weld card, bench %1").arg(work.bench);
    sheet.across = work.demo ? Page::tr("DEMO SHOP") : QString();
    sheet.seam = work.seam;
    sheet.sheet = sheet.card.sheet;
    if (!work.printed.isEmpty()) {
        sheet.printed = Page::tr("made %1").arg(work.printed);
    }
    sheet.sumsTitle = Page::tr("How the scale reading comes about");
    sheet.factsTitle = Page::tr("What it is made for");
    sheet.sheets = sheetLines(work.sheets);
    facts(plan, sheet);
    sheet.warningsTitle = Page::tr("Know before you start");
    sheet.estimates = sheet.card.estimates;
    sheet.estimatesTitle = Page::tr("Estimates, not limits");
    sheet.sourcesTitle = Page::tr("Where the numbers come from");
    for (const CardSource& source : sheet.card.sources) {
        sheet.sources << sourceText(source);
    }
    sheet.cautionsTitle = Page::tr("Take care");
    sheet.cautions = {
        Page::tr("The plate burns at once. Gloves for heat, but never on planed faces; park the "
                 "plate guarded."),
        Page::tr("The tables crush, and the spring stores its force: keep hands out, and ease it "
                 "before you open a clamp."),
        Page::tr("Overheated plastic and coatings give off harmful fume: run the extraction, do "
                 "not smoke, never burn residue off the plate."),
        Page::tr("This card guides. The machine's own instructions, the standard in force, local "
                 "rules and a qualified welder decide.")};
    sheet.scaleWord = Page::tr("scale");
    sheet.signatureLines = {
        Page::tr("Joint number"), Page::tr("Date"), Page::tr("Welder"), Page::tr("Supervisor")};
    // Upright, too: a reader that takes the text out may lose a slanted word.
    sheet.foot = (sheet.across.isEmpty() ? QString() : sheet.across + Page::tr("; ")) +
                 Page::tr("Seamclock");
    return sheet;
}

} // namespace seamclock
