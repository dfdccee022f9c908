#include "app/shop/seam_form.h"

#include "app/text/phrase_book.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <algorithm>

namespace seamclock {
namespace {

struct Form {
    Q_DECLARE_TR_FUNCTIONS(SeamForm)
};

QString tr(const char* text) {
    return Form::tr(text);
}

constexpr const char* kJob = "job";
constexpr int kLongestJob = 40;

QString valueOf(const SeamValues& values, const std::string& column) {
    const auto found = values.find(column);
    return found == values.end() ? QString() : found->second.trimmed();
}

bool isNumber(const std::string& column) {
    return column == "thickness_mm" || column == "drag_N" || column == "ambient_C" ||
           column == "bead_places" || column == "rewelds_allowed" || column == "length_mm";
}

std::string cell(std::string text) {
    for (std::size_t at = 0; (at = text.find('"', at)) != std::string::npos; at += 2) {
        text.insert(at, 1, '"');
    }
    return '"' + text + '"';
}

JobCsv tableOf(const SeamValues& values, const SeamChoices& choices) {
    std::string header;
    std::string row;
    JobCsvKnown known{choices.welds, {}};
    for (const auto& [id, words] : choices.benches) {
        known.benches.insert(id);
    }
    for (const std::string& column : jobCsvColumns()) {
        QString value = valueOf(values, column);
        if (isNumber(column)) {
            value.replace(QLatin1Char(','), QLatin1Char('.'));
        }
        std::string text = value.toStdString();
        if (column == "material") {
            const auto by = choices.welds.find(valueOf(values, "procedure").toStdString());
            text = by == choices.welds.end() ? std::string() : by->second.material;
        }
        header += (header.empty() ? "" : ",") + column;
        row += (row.empty() ? "" : ",") + cell(text);
    }
    return readJobCsv(header + "\n" + row + "\n", known);
}

QString jobProblem(const SeamValues& values) {
    const auto signs = valueOf(values, kJob).size();
    return signs >= 1 && signs <= kLongestJob
               ? QString()
               : tr("has %1 signs; allowed: 1 to %2").arg(signs).arg(kLongestJob);
}

FormField field(
    const SeamValues& values, const char* column, const QString& caption, double share = 1,
    const QString& help = {}) {
    FormField out;
    out.pointer = column;
    out.caption = caption;
    out.value = valueOf(values, column);
    out.share = share;
    out.help = help;
    return out;
}

FormField chosen(
    const SeamValues& values, const char* column, const QString& caption,
    std::vector<std::pair<std::string, QString>> choices, double share = 1) {
    FormField out = field(values, column, caption, share);
    out.kind = FormField::Kind::Choice;
    out.choices = std::move(choices);
    for (const auto& [stored, words] : out.choices) {
        if (out.value == fromUtf8(stored)) {
            out.value = words;
            break;
        }
    }
    return out;
}

} // namespace

FormSection seamForm(const SeamValues& values, const SeamChoices& choices, bool whole) {
    FormSection section;
    section.title = tr("A seam of a job");
    std::vector<std::pair<std::string, QString>> benches{{"", tr("any that can make it")}};
    benches.insert(benches.end(), choices.benches.begin(), choices.benches.end());
    section.rows = {
        rowOf({field(values, kJob, tr("Job")), field(values, "label", tr("Seam's label"))}),
        rowOf({field(values, "part", tr("Part")), field(values, "what", tr("What it is"))}),
        rowOf(
            {chosen(values, "procedure", tr("Procedure"), choices.procedures, 2),
             chosen(values, "bench", tr("Bench"), std::move(benches))}),
        rowOf(
            {field(values, "thickness_mm", tr("Sheet [mm]")),
             field(
                 values, "length_mm", tr("Length [mm]"), 1,
                 tr("Several seams in one clamping with + between them: 620+580.")),
             field(
                 values, "drag_N", tr("Drag [N]"), 1,
                 tr("Leave it empty where it is measured before the weld."))}),
        rowOf(
            {field(
                 values, "rewelds_allowed", tr("May be rewelded"), 1,
                 tr("How often it may be welded again, 0 to 9; empty: not said.")),
             field(
                 values, "bead_places", tr("Bead places"), 1,
                 tr("How many places of the bead are measured; empty: one.")),
             chosen(
                 values, "shielded", tr("Shielded from draught"),
                 {{"yes", tr("yes")}, {"no", tr("no")}})}),
        rowOf(
            {field(values, "sheet_1_maker", tr("Maker, sheet 1")),
             field(values, "sheet_1_batch", tr("Batch, sheet 1")),
             field(values, "sheet_1_grade", tr("Grade, sheet 1"))}),
        rowOf(
            {field(values, "sheet_2_maker", tr("Maker, sheet 2")),
             field(values, "sheet_2_batch", tr("Batch, sheet 2")),
             field(values, "sheet_2_grade", tr("Grade, sheet 2"))}),
    };
    const JobCsv table = tableOf(values, choices);
    const auto put = [&](const std::string& column, const QString& finding) {
        const bool touched = whole || values.count(column) > 0;
        for (FormRow& row : section.rows) {
            for (FormField& one : row.fields) {
                if (touched && one.pointer == column && one.finding.isEmpty()) {
                    one.finding = finding;
                }
            }
        }
    };
    if (const QString wrong = jobProblem(values); !wrong.isEmpty()) {
        put(kJob, wrong);
    }
    for (const JobCsvProblem& problem : table.problems) {
        // The material is the procedure's.
        put(problem.column == "material" ? "procedure" : problem.column, inWords(problem.text));
    }
    return section;
}

std::optional<JobSeam> seamOf(const SeamValues& values, const SeamChoices& choices) {
    JobCsv table = tableOf(values, choices);
    if (!jobProblem(values).isEmpty() || !table.isSound() || table.seams.size() != 1) {
        return std::nullopt;
    }
    table.seams.front().job = valueOf(values, kJob).toStdString();
    return std::move(table.seams.front());
}

} // namespace seamclock
