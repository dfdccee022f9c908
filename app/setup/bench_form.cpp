#include "app/setup/bench_form.h"

#include "app/text/numbers.h"
#include "app/text/phrase_book.h"
#include "app/text/words.h"
#include "core/bench/bench_codec.h"
#include "core/bench/calibration.h"

#include <QCoreApplication>
#include <algorithm>

namespace seamclock {
namespace {

struct BenchForm {
    Q_DECLARE_TR_FUNCTIONS(BenchForm)
};

QString tr(const char* text) {
    return BenchForm::tr(text);
}

const std::string kPoints = "/calibration/points";

FormAction actionOf(
    const QString& text, FormAction::Kind kind, const std::string& pointer,
    const std::string& json = {}) {
    FormAction action;
    action.text = text;
    action.kind = kind;
    action.pointer = pointer;
    action.json = json;
    return action;
}

FormRow onlyActions(std::vector<FormAction> actions) {
    FormRow row;
    row.actions = std::move(actions);
    return row;
}

std::string numbered(const std::string& list, std::size_t index) {
    return list + "/" + std::to_string(index);
}

QString unitOf(const JsonDraft& draft) {
    const QString unit = fromUtf8(draft.shown("/scale/unit"));
    return unit.isEmpty() ? tr("unit of the scale") : unit;
}

/// Where nobody chose, three places are read.
FormField plateRead(const JsonDraft& draft) {
    FormField field = choiceField(
        draft, "/plate_read", tr("where its faces are read"),
        {{"middle", tr("in the middle")},
         {"ends", tr("front and back")},
         {"three", tr("front, middle and back")},
         {"each_face", tr("front, middle and back of both faces")}});
    if (!draft.has(field.pointer)) {
        field.value = field.choices[2].second;
    }
    return field;
}

FormSection whatItIs(const JsonDraft& draft) {
    FormSection section;
    section.title = tr("Name and drive");
    section.under = fromUtf8(draft.shown("/name"));
    section.roots = {"", "/id", "/name", "/drive", "/plate", "/plate_read"};
    section.rows = {
        rowOf(
            {textField(draft, "/id", tr("short name: stays the same")),
             textField(draft, "/name", tr("what people call it"))}),
        rowOf({choiceField(
            draft, "/drive", tr("what presses"),
            {{"handwheel", tr("a handwheel")}, {"foot_lever", tr("a foot lever")}})}),
        rowOf(
            {textField(draft, "/plate", tr("heated plate that hangs there: its name or mark")),
             plateRead(draft)})};
    return section;
}

FormSection limits(const JsonDraft& draft) {
    FormSection section;
    section.title = tr("What fits");
    section.under = tr("seam, sheet and force");
    section.roots = {
        "/longest_seam_mm", "/thinnest_sheet_mm", "/thickest_sheet_mm", "/force_N",
        "/edge_gap_max_mm"};
    section.rows = {
        rowOf(
            {numberField(draft, "/longest_seam_mm", tr("longest seam mm")),
             numberField(draft, "/thinnest_sheet_mm", tr("thinnest sheet mm")),
             numberField(draft, "/thickest_sheet_mm", tr("thickest sheet mm"))}),
        rowOf(
            {numberField(draft, "/force_N/min", tr("least force it holds N")),
             numberField(draft, "/force_N/max", tr("greatest force it holds N"))}),
        rowOf({numberField(
            draft, "/edge_gap_max_mm", tr("widest gap between the edges when they meet mm"))})};
    return section;
}

FormSection scale(const JsonDraft& draft) {
    FormSection section;
    section.title = tr("Scale and springs");
    section.roots = {"/scale"};
    const QString unit = unitOf(draft);
    const bool calibrated = draft.has(kPoints);
    section.under = calibrated ? tr("zero and rate come from the calibration")
                               : tr("unit, division, zero, rate of each spring");
    section.rows.push_back(rowOf(
        {textField(draft, "/scale/unit", tr("unit printed on it")),
         numberField(draft, "/scale/division", tr("smallest division, %1").arg(unit)),
         numberField(draft, "/scale/end", tr("its end, %1").arg(unit)),
         numberField(draft, "/scale/count", tr("scales: 1 or 2"))}));
    if (unit != QLatin1String("mm") || draft.has("/scale/rate_N_per_mm")) {
        section.rows.push_back(rowOf({numberField(
            draft, "/scale/rate_N_per_mm", tr("all springs, N for each mm of closing"))}));
    }
    if (calibrated) {
        section.notes = {tr("Zero and rate come from the calibration's points.")};
        return section;
    }
    section.rows.push_back(rowOf(
        {numberField(draft, "/scale/zero", tr("reading without force, %1").arg(unit)),
         numberField(draft, "/scale/preload_N", tr("lost before the faces press N"))}));
    const std::size_t springs = draft.size("/scale/springs");
    for (std::size_t i = 0; i < springs; ++i) {
        const std::string item = numbered("/scale/springs", i);
        FormRow row = rowOf({numberField(
            draft, item + "/rate_N_per_unit",
            tr("rate of spring %1, N for each %2").arg(i + 1).arg(unit))});
        row.item = item;
        row.actions = {actionOf(tr("Take out"), FormAction::Kind::Remove, item)};
        section.rows.push_back(std::move(row));
    }
    section.rows.push_back(onlyActions({actionOf(
        tr("Another spring"), FormAction::Kind::Insert, numbered("/scale/springs", springs),
        "{}")}));
    return section;
}

FormSection gapRule(const JsonDraft& draft) {
    FormSection section;
    section.title = tr("Gap between the tables");
    section.under = tr("factor, floor and cap");
    section.roots = {"/gap"};
    section.rows = {
        rowOf(
            {numberField(draft, "/gap/factor", tr("first gap, times the thickness")),
             numberField(draft, "/gap/clamping_factor", tr("second gap, times the first"))}),
        rowOf(
            {numberField(draft, "/gap/floor_mm", tr("never less than mm")),
             numberField(draft, "/gap/cap_mm", tr("never more than mm, empty: no cap"))})};
    return section;
}

FormSection release(const JsonDraft& draft) {
    FormSection section;
    section.title = tr("Order of release");
    section.roots = {"/release_order"};
    FormField order = textField(draft, "/release_order", tr("press it to choose step by step"));
    order.kind = FormField::Kind::Order;
    QStringList words;
    QStringList inSentence;
    for (std::size_t i = 0; i < draft.size("/release_order"); ++i) {
        words << releaseDoneWord(draft.shown(numbered("/release_order", i)));
        inSentence << midSentence(words.back());
    }
    order.value = words.isEmpty() ? tr("not chosen yet") : words.join(QStringLiteral(", "));
    section.under = words.isEmpty() ? order.value : inSentence.join(QStringLiteral(", "));
    section.rows = {rowOf({std::move(order)})};
    section.notes = {tr("The machine's own instructions decide in which order a joint is released: "
                        "the program has no order of its own.")};
    return section;
}

std::vector<CalibrationPoint> pointsIn(const JsonDraft& draft, std::vector<std::size_t>& rows) {
    std::vector<CalibrationPoint> points;
    for (std::size_t i = 0; i < draft.size(kPoints); ++i) {
        const std::string item = numbered(kPoints, i);
        const auto reading = draft.number(item + "/reading");
        const auto force = draft.number(item + "/force_N");
        if (reading && force) {
            points.push_back({*reading, *force});
            rows.push_back(i);
        }
    }
    return points;
}

FormSection calibration(const JsonDraft& draft) {
    FormSection section;
    section.title = tr("Calibration");
    section.roots = {"/calibration"};
    if (!draft.has("/calibration")) {
        section.under = tr("none");
        section.rows.push_back(onlyActions(
            {actionOf(
                 tr("Type readings and forces"), FormAction::Kind::Put, "/calibration",
                 R"({"points": [{}, {}, {}]})"),
             actionOf(tr("Read a CSV file"), FormAction::Kind::ReadFile, kPoints)}));
        section.notes = {
            tr("Readings of the scale against the forces that a load cell shows: at least 3, over "
               "the whole range that is welded with.")};
        return section;
    }
    const bool points = draft.has(kPoints);
    FormRow dates = rowOf(
        {textField(draft, "/calibration/done_on", tr("done on, like 2030-01-07")),
         textField(draft, "/calibration/due_on", tr("due on"))});
    dates.actions = {actionOf(tr("Take out"), FormAction::Kind::Remove, "/calibration")};
    section.rows.push_back(std::move(dates));
    if (!points) {
        section.under = tr("a rate and its uncertainty; due on %1")
                            .arg(fromUtf8(draft.shown("/calibration/due_on")));
        section.rows.push_back(rowOf({numberField(
            draft, "/calibration/rate_uncertainty_percent",
            tr("one standard deviation of the rate %"))}));
        section.rows.push_back(onlyActions(
            {actionOf(
                 tr("Type readings and forces"), FormAction::Kind::Put, kPoints, "[{}, {}, {}]"),
             actionOf(tr("Read a CSV file"), FormAction::Kind::ReadFile, kPoints)}));
        return section;
    }
    section.rows.push_back(rowOf({textField(draft, "/calibration/load_cell", tr("load cell"))}));
    const FitShown fit = fitShown(draft);
    const std::size_t count = draft.size(kPoints);
    const QString unit = unitOf(draft);
    for (std::size_t i = 0; i < count; ++i) {
        const std::string item = numbered(kPoints, i);
        FormField left;
        left.kind = FormField::Kind::Shown;
        left.pointer = item + "/residual";
        left.caption = tr("off the line N");
        const auto off = i < fit.residuals.size() ? fit.residuals[i] : std::nullopt;
        left.value = off ? numberText(*off, 1) : QStringLiteral("–");
        FormRow row = rowOf(
            {numberField(draft, item + "/reading", tr("reading %1").arg(unit)),
             numberField(draft, item + "/force_N", tr("force N")), std::move(left)});
        row.item = item;
        row.actions = {actionOf(tr("Take out"), FormAction::Kind::Remove, item)};
        section.rows.push_back(std::move(row));
    }
    section.rows.push_back(onlyActions(
        {actionOf(tr("Another point"), FormAction::Kind::Insert, numbered(kPoints, count), "{}"),
         actionOf(tr("Read a CSV file"), FormAction::Kind::ReadFile, kPoints)}));
    section.under =
        tr("%1 points, due on %2").arg(count).arg(fromUtf8(draft.shown("/calibration/due_on")));
    section.plot = fit.plot;
    section.notes = fit.words;
    return section;
}

} // namespace

FitShown fitShown(const JsonDraft& draft) {
    constexpr int kSteps = 24;
    FitShown shown;
    shown.plot.x = tr("reading %1").arg(unitOf(draft));
    shown.plot.y = tr("force N");
    std::vector<std::size_t> rows;
    const std::vector<CalibrationPoint> points = pointsIn(draft, rows);
    shown.residuals.resize(draft.size(kPoints));
    PlotView::Points dots;
    dots.name = tr("load cell");
    for (const CalibrationPoint& point : points) {
        dots.points.emplace_back(point.reading, point.force);
    }
    const auto fit = fitPoints(points);
    if (!fit) {
        shown.words << inWords(fit.error().detail);
        if (!dots.points.empty()) {
            shown.plot.points.push_back(std::move(dots));
        }
        return shown;
    }
    for (std::size_t i = 0; i < rows.size(); ++i) {
        shown.residuals[rows[i]] = fit->line.residuals[i];
    }
    PlotView::Line line;
    line.name = tr("line");
    PlotView::Band band;
    band.name = tr("95 %");
    for (int i = 0; i <= kSteps; ++i) {
        const double x =
            fit->lowestReading + (fit->highestReading - fit->lowestReading) * i / kSteps;
        const double y = fit->line.at(x);
        const double half = fit->line.predictionAt(x);
        line.points.emplace_back(x, y);
        band.low.emplace_back(x, y - half);
        band.high.emplace_back(x, y + half);
    }
    shown.plot.bands.push_back(std::move(band));
    shown.plot.lines.push_back(std::move(line));
    const auto straight = straightEnough(*fit);
    shown.straight = straight.has_value();
    const QPointF worstPoint = dots.points[fit->worstPoint];
    shown.plot.points.push_back(std::move(dots));
    if (!straight) {
        PlotView::Points worst;
        worst.name = tr("off");
        worst.wrong = true;
        worst.points.push_back(worstPoint);
        shown.plot.points.push_back(std::move(worst));
        shown.words << inWords(straight.error().detail);
    }
    const double middle = (fit->lowestReading + fit->highestReading) / 2;
    shown.words << tr("Rate %1 N for each %2 (±\u00a0%3 %), zero at %4 %2.")
                       .arg(
                           numberText(fit->rate, 2), unitOf(draft),
                           numberText(fit->rateUncertaintyPercent, 2), numberText(fit->zero, 2));
    shown.words
        << tr("Scatter %1 N; the line is known to ±\u00a0%2 N, a reading to ±\u00a0%3 N (95 %, at "
              "the middle).")
               .arg(
                   numberText(fit->line.residualSd, 1),
                   numberText(fit->line.confidenceAt(middle), 1),
                   numberText(fit->line.predictionAt(middle), 1));
    return shown;
}

JsonDraft emptyBench() {
    auto draft = JsonDraft::read("bench template", benchTemplate());
    if (!draft) {
        return {};
    }
    draft->remove("/explained");
    draft->remove("/calibration");
    return std::move(*draft);
}

QString benchExplained(const std::string& pointer) {
    static const auto kTemplate = JsonDraft::read("bench template", benchTemplate());
    if (!kTemplate || pointer.empty()) {
        return {};
    }
    std::string key;
    for (const QString& step : fromUtf8(pointer).split(QLatin1Char('/'), Qt::SkipEmptyParts)) {
        bool isIndex = false;
        step.toInt(&isIndex);
        if (!isIndex) {
            key += (key.empty() ? "" : ".") + step.toStdString();
        }
    }
    return fromUtf8(kTemplate->shown("/explained/" + key));
}

std::vector<FormSection> benchForm(const JsonDraft& draft) {
    std::vector<FormSection> sections{whatItIs(draft), limits(draft),  scale(draft),
                                      gapRule(draft),  release(draft), calibration(draft)};
    for (FormSection& section : sections) {
        for (FormRow& row : section.rows) {
            for (FormField& field : row.fields) {
                field.help = benchExplained(field.pointer);
            }
        }
    }
    return sections;
}

} // namespace seamclock
