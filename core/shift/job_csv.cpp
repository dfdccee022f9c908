#include "core/shift/job_csv.h"

#include "core/base/plain_number.h"
#include "core/plan/sheets.h"
#include "core/shift/csv_rows.h"
#include "core/shift/job_limits.h"
#include "core/shift/seam_label.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <cstdlib>
#include <fmt/format.h>
#include <map>
#include <optional>
#include <system_error>
#include <utility>

namespace seamclock {
namespace {

constexpr double kColdestC = -40;
constexpr double kWarmestC = 60;
constexpr double kGreatestFlow = 1'000;
constexpr std::size_t kLongestLabel = 40;
constexpr std::size_t kLongestText = 200;
constexpr std::size_t kMostLengths = 20;
constexpr std::size_t kMostCells = 1'000;

/// Valid UTF-8 by RFC 3629: no overlong forms, no surrogates, nothing above U+10FFFF; and how many
/// code points. None: it isn't.
std::optional<std::size_t> codePointsOf(std::string_view text) {
    std::size_t count = 0;
    for (std::size_t i = 0; i < text.size(); ++count) {
        const auto first = static_cast<unsigned char>(text[i]);
        const std::size_t length = first < 0x80                    ? 1
                                   : first >= 0xC2 && first < 0xE0 ? 2
                                   : (first & 0xF0U) == 0xE0       ? 3
                                   : first >= 0xF0 && first < 0xF5 ? 4
                                                                   : 0;
        if (length == 0 || i + length > text.size()) {
            return std::nullopt;
        }
        std::uint32_t value = length == 1 ? first : first & (0xFFU >> (length + 1));
        for (std::size_t k = 1; k < length; ++k) {
            const auto next = static_cast<unsigned char>(text[i + k]);
            if ((next & 0xC0U) != 0x80) {
                return std::nullopt;
            }
            value = (value << 6U) | (next & 0x3FU);
        }
        if ((length == 3 && value < 0x800) || (length == 4 && value < 0x10000) ||
            (value >= 0xD800 && value < 0xE000) || value > 0x10FFFF) {
            return std::nullopt;
        }
        i += length;
    }
    return count;
}

bool holdsControlSign(std::string_view text) {
    return std::any_of(text.begin(), text.end(), [](char sign) {
        const auto byte = static_cast<unsigned char>(sign);
        return byte < 0x20 || byte == 0x7F;
    });
}

/// A cell as it may stand in a sentence: on one line, short, and always UTF-8.
std::string inMarks(std::string_view cell) {
    constexpr std::size_t kMost = 60;
    std::string shown;
    for (const char sign : cell.substr(0, kMost)) {
        const auto byte = static_cast<unsigned char>(sign);
        shown += byte < 0x20 || byte == 0x7F ? ' ' : sign;
    }
    if (!codePointsOf(shown)) {
        const bool cutInside = cell.size() > kMost;
        for (int i = 0; cutInside && i < 3 && !codePointsOf(shown); ++i) {
            shown.pop_back();
        }
        if (!codePointsOf(shown)) {
            for (char& sign : shown) {
                sign = static_cast<unsigned char>(sign) < 0x80 ? sign : '?';
            }
        }
    }
    return "\"" + shown + (cell.size() > kMost ? "…" : "") + "\"";
}

std::string_view trimmed(std::string_view text) {
    const std::size_t from = text.find_first_not_of(" \t");
    return from == std::string_view::npos
               ? std::string_view()
               : text.substr(from, text.find_last_not_of(" \t") - from + 1);
}

std::string listed(const std::set<std::string>& names) {
    std::string all;
    for (const std::string& name : names) {
        all += (all.empty() ? "" : ", ") + name;
    }
    return all;
}

std::optional<double> numberOf(std::string_view text) {
    double value = 0;
    const char* end = text.data() + text.size();
    const auto read = std::from_chars(text.data(), end, value);
    return read.ec == std::errc() && read.ptr == end && std::isfinite(value) ? std::optional(value)
                                                                             : std::nullopt;
}

struct Range {
    double low;
    double high;
    bool above = false; // low itself is outside
    const char* unit = "";

    bool holds(double value) const { return (above ? value > low : value >= low) && value <= high; }
    std::string inWords() const {
        return (above ? "above " + plainNumber(low) + ", to " : plainNumber(low) + " to ") +
               plainNumber(high) + (*unit == '\0' ? "" : " " + std::string(unit));
    }
};

class Reader {
public:
    explicit Reader(const JobCsvKnown& known) : m_known(known) {}

    JobCsv read(std::string_view csv) {
        if (csv.size() > kLargestJobCsv) {
            complain(
                0, "",
                fmt::format("{} bytes are no job; allowed: up to {}", csv.size(), kLargestJobCsv));
            return std::move(m_out);
        }
        const CsvRows table = csvRows(csv);
        if (table.rows.empty() && !table.trouble) {
            complain(0, "", "there is no header line; allowed: " + mustHave());
            return std::move(m_out);
        }
        if (!table.rows.empty() && readHeader(table.rows.front())) {
            readRows(table);
        }
        if (table.trouble) {
            complain(table.trouble->line, "", table.trouble->text);
        } else if (!m_columns.empty() && table.rows.size() == 1) {
            complain(table.rows.front().line, "", "there is no seam under the header");
        }
        if (!m_out.problems.empty()) {
            m_out.seams.clear();
        }
        return std::move(m_out);
    }

private:
    static std::string mustHave() {
        return "the columns label, material, procedure, thickness_mm, length_mm";
    }

    void complain(std::size_t line, const std::string& column, std::string text) {
        if (m_out.problems.size() < kMostJobCsvProblems) {
            m_out.problems.push_back({line, column, std::move(text)});
        } else {
            ++m_out.more;
        }
    }

    bool readHeader(const CsvRow& header) {
        const std::size_t before = m_out.problems.size();
        const auto& names = jobCsvColumns();
        if (header.cells.size() == 1 && header.cells.front().find(';') != std::string::npos) {
            complain(header.line, "", "the columns are parted by \";\"; allowed: commas");
            return false;
        }
        if (header.cells.size() > kMostCells) {
            complain(
                header.line, "",
                fmt::format(
                    "{} columns; allowed: the {} that there are", header.cells.size(),
                    names.size()));
            return false;
        }
        for (std::size_t i = 0; i < header.cells.size(); ++i) {
            const std::string name(trimmed(header.cells[i]));
            if (std::find(names.begin(), names.end(), name) == names.end()) {
                complain(
                    header.line, "",
                    "there is no column " + inMarks(name) +
                        "; allowed: " + listed({names.begin(), names.end()}));
            } else if (!m_columns.emplace(name, i).second) {
                complain(header.line, name, "the column stands there twice; allowed: once");
            }
        }
        for (const char* name : {"label", "material", "procedure", "thickness_mm", "length_mm"}) {
            if (m_columns.find(name) == m_columns.end()) {
                complain(header.line, name, "the column is missing; allowed: " + mustHave());
            }
        }
        return m_out.problems.size() == before;
    }

    void readRows(const CsvRows& table) {
        const std::size_t columns = table.rows.front().cells.size();
        for (std::size_t i = 1; i < table.rows.size(); ++i) {
            m_row = &table.rows[i];
            if (i > kMostJobSeams) {
                complain(
                    m_row->line, "",
                    fmt::format(
                        "{} seams; allowed: up to {}", table.rows.size() - 1, kMostJobSeams));
                return;
            }
            if (m_row->cells.size() != columns) {
                complain(
                    m_row->line, "",
                    fmt::format(
                        "{} cells under {} columns; allowed: one for each, a text with a comma in "
                        "quotes",
                        m_row->cells.size(), columns));
                continue;
            }
            readSeam();
        }
    }

    void readSeam() {
        JobSeam seam;
        seam.label = text("label", kLongestLabel, true);
        if (!seam.label.empty()) {
            const auto [first, isNew] = m_labels.emplace(seam.label, m_row->line);
            if (!isNew) {
                wrong(
                    "label", inMarks(seam.label) + fmt::format(
                                                       " is line {}'s seam already; allowed: each "
                                                       "label once",
                                                       first->second));
            }
            if (const std::string why = whyNoLabel(seam.label); !why.empty()) {
                wrong("label", why);
            }
        }
        seam.what = text("what", kLongestText, false);
        seam.part = text("part", kLongestText, false);
        seam.procedure = named("procedure", idsOf(m_known.procedures), true);
        seam.bench = named("bench", m_known.benches, false);
        const auto thickness =
            number("thickness_mm", {kThinnestMm, kThickestMm, false, "mm"}, true);
        seam.thicknessMm = thickness.value_or(0);
        seam.lengthsMm = lengths();
        seam.dragN = number("drag_N", {0, kGreatestDragN, false, "N"}, false);
        seam.ambientC = number("ambient_C", {kColdestC, kWarmestC, false, "°C"}, false);
        seam.shielded = yes("shielded");
        seam.beadPlaces = whole("bead_places", 1, kMostBeadPlaces);
        seam.rewelds = whole("rewelds_allowed", 0, kMostRewelds);
        const std::string material = text("material", kLongestText, true);
        for (const std::string sheet : {"sheet_1_", "sheet_2_"}) {
            seam.sheets.push_back(readSheet(sheet, material, seam.thicknessMm));
        }
        judge(seam);
        m_out.seams.push_back(std::move(seam));
    }

    /// What can't be welded so, as far as its values could be read.
    void judge(const JobSeam& seam) {
        const auto found = m_known.procedures.find(seam.procedure);
        const JobCsvProcedure by =
            found == m_known.procedures.end() ? JobCsvProcedure() : found->second;
        const Sheet& first = seam.sheets[0];
        const Sheet& second = seam.sheets[1];
        if (!first.material.empty() && !by.material.empty() &&
            !isSamePlastic(first.material, by.material)) {
            wrong(
                "material", inMarks(first.material) + " is not the plastic that " + seam.procedure +
                                " is for; allowed: " + by.material);
        }
        const std::int64_t um = std::llround(seam.thicknessMm * 1e3);
        if (um > 0 && by.thickestUm > 0 && (um < by.thinnestUm || um > by.thickestUm)) {
            wrong(
                "thickness_mm", fmt::format(
                                    "{} mm is outside what {} is for; allowed: {} to {} mm",
                                    plainNumber(seam.thicknessMm), seam.procedure,
                                    mmOf(by.thinnestUm), mmOf(by.thickestUm)));
        }
        bool nominal = true;
        // Else no joint of such a sheet would ever be taken for this seam's (session/made_seams.h).
        for (const auto& [sheet, column] :
             {std::pair{&first, "sheet_1_thickness_mm"}, {&second, "sheet_2_thickness_mm"}}) {
            const std::int64_t is = sheet->thicknessUm;
            if (um > 0 && is > 0 && 10 * std::abs(is - um) > std::min(is, um)) {
                nominal = false;
                wrong(
                    column, fmt::format(
                                "{} mm is not the seam's {} mm; allowed a tenth apart, {} to {} mm",
                                mmOf(is), mmOf(um), mmOf((10 * um + 10) / 11), mmOf(um + um / 10)));
            }
        }
        if (nominal && first.thicknessUm > 0 && second.thicknessUm > 0) {
            const auto fit = judgeSheets(
                {first.material, {}, first.thicknessUm, {}},
                {second.material, {}, second.thicknessUm, {}}, first.material);
            if (!fit) {
                wrong("sheet_2_thickness_mm", fit.error().detail);
            }
        }
    }

    static std::string mmOf(std::int64_t um) { return plainNumber(static_cast<double>(um) / 1e3); }

    static std::set<std::string> idsOf(const std::map<std::string, JobCsvProcedure>& procedures) {
        std::set<std::string> out;
        for (const auto& [id, by] : procedures) {
            out.insert(id);
        }
        return out;
    }

    Sheet readSheet(const std::string& prefix, const std::string& material, double thicknessMm) {
        Sheet sheet;
        sheet.material = material;
        const auto own = number(prefix + "thickness_mm", {0, kThickestMm, true, "mm"}, false);
        sheet.thicknessUm = std::llround(own.value_or(thicknessMm) * 1e3);
        const std::string grade = text(prefix + "grade", kLongestText, false);
        if (!grade.empty()) {
            sheet.grade = grade;
        }
        sheet.maker = text(prefix + "maker", kLongestText, false);
        sheet.batch = text(prefix + "batch", kLongestText, false);
        const auto flow = number(prefix + "mfr_g_10min", {0, kGreatestFlow, false, ""}, false);
        const std::string condition = text(prefix + "mfr_condition", kLongestText, false);
        if (flow) {
            sheet.mfr = meltFlowText(*flow, condition);
        }
        return sheet;
    }

    std::string_view cell(const std::string& column) const {
        const auto at = m_columns.find(column);
        return at == m_columns.end() ? std::string_view() : trimmed(m_row->cells[at->second]);
    }

    void wrong(const std::string& column, std::string text) {
        complain(m_row->line, column, std::move(text));
    }

    std::string text(const std::string& column, std::size_t most, bool must) {
        const std::string_view value = cell(column);
        const std::string allowed = fmt::format("{} to {} signs on one line", must ? 1 : 0, most);
        const auto signs = codePointsOf(value);
        if (!signs) {
            wrong(column, inMarks(value) + " is not UTF-8; allowed: " + allowed);
        } else if (holdsControlSign(value)) {
            wrong(
                column,
                inMarks(value) + " holds a line end or another control sign; allowed: " + allowed);
        } else if (value.empty() && must) {
            wrong(column, "is empty; allowed: " + allowed);
        } else if (*signs > most) {
            wrong(
                column, inMarks(value) + fmt::format(" has {} signs; allowed: ", *signs) + allowed);
        } else {
            return std::string(value);
        }
        return "";
    }

    std::string named(const std::string& column, const std::set<std::string>& known, bool must) {
        std::string value = text(column, kLongestText, must);
        if (!value.empty() && !known.empty() && known.count(value) == 0) {
            wrong(column, inMarks(value) + " is not there; allowed: " + listed(known));
        }
        return value;
    }

    std::optional<double> number(const std::string& column, const Range& range, bool must) {
        const std::string_view value = cell(column);
        if (value.empty()) {
            if (must) {
                wrong(column, "is empty; allowed: " + range.inWords());
            }
            return std::nullopt;
        }
        return inRange(column, value, range);
    }

    std::optional<int> whole(const std::string& column, int low, int high) {
        const auto value =
            number(column, {static_cast<double>(low), static_cast<double>(high), false, ""}, false);
        if (value && *value != std::floor(*value)) {
            wrong(
                column, plainNumber(*value) +
                            fmt::format(" is not a whole number; allowed: {} to {}", low, high));
        }
        return value ? std::optional<int>(static_cast<int>(*value)) : std::nullopt;
    }

    std::optional<double>
    inRange(const std::string& column, std::string_view value, const Range& range) {
        const auto read = numberOf(value);
        if (!read) {
            wrong(
                column, inMarks(value) + " is not a number; allowed: " + range.inWords() +
                            ", decimals after a dot");
            return std::nullopt;
        }
        if (!range.holds(*read)) {
            wrong(column, inMarks(value) + " is out of range; allowed: " + range.inWords());
            return std::nullopt;
        }
        return read;
    }

    std::vector<double> lengths() {
        constexpr Range kRange{1, kLongestMm, false, "mm"};
        std::vector<double> all;
        std::string_view rest = cell("length_mm");
        if (rest.empty()) {
            wrong(
                "length_mm", "is empty; allowed: " + kRange.inWords() + ", several with + between");
            return all;
        }
        for (;;) {
            const std::size_t plus = rest.find('+');
            if (all.size() == kMostLengths) {
                wrong(
                    "length_mm", fmt::format(
                                     "more than {} lengths in one clamping; allowed: up to {}",
                                     kMostLengths, kMostLengths));
                return all;
            }
            const auto one = inRange("length_mm", trimmed(rest.substr(0, plus)), kRange);
            if (!one) {
                return all;
            }
            all.push_back(*one);
            if (plus == std::string_view::npos) {
                return all;
            }
            rest.remove_prefix(plus + 1);
        }
    }

    bool yes(const std::string& column) {
        const std::string_view value = cell(column);
        if (!value.empty() && value != "yes" && value != "no") {
            wrong(column, inMarks(value) + " is neither; allowed: yes, no");
        }
        return value == "yes";
    }

    const JobCsvKnown& m_known;
    JobCsv m_out;
    std::map<std::string, std::size_t> m_columns;
    std::map<std::string, std::size_t> m_labels; // and the line
    const CsvRow* m_row = nullptr;
};

} // namespace

std::string JobCsvProblem::inWords() const {
    std::string words;
    if (line > 0) {
        words += fmt::format("line {}", line);
    }
    if (!column.empty()) {
        words += (words.empty() ? "" : ", ") + column;
    }
    return words.empty() ? text : words + ": " + text;
}

const std::vector<std::string>& jobCsvColumns() {
    static const std::vector<std::string> kColumns{
        "label",
        "what",
        "part",
        "material",
        "procedure",
        "bench",
        "thickness_mm",
        "length_mm",
        "drag_N",
        "ambient_C",
        "shielded",
        "bead_places",
        "rewelds_allowed",
        "sheet_1_thickness_mm",
        "sheet_1_grade",
        "sheet_1_maker",
        "sheet_1_batch",
        "sheet_1_mfr_g_10min",
        "sheet_1_mfr_condition",
        "sheet_2_thickness_mm",
        "sheet_2_grade",
        "sheet_2_maker",
        "sheet_2_batch",
        "sheet_2_mfr_g_10min",
        "sheet_2_mfr_condition"};
    return kColumns;
}

JobCsvProcedure weldedBy(const Procedure& procedure) {
    return {
        procedure.material, std::llround(inMicrometres(procedure.thinnest())),
        std::llround(inMicrometres(procedure.thickest()))};
}

JobCsv readJobCsv(std::string_view csv, const JobCsvKnown& known) {
    return Reader(known).read(csv);
}

std::string jobCsvTemplate() {
    std::string text;
    for (const std::string& column : jobCsvColumns()) {
        text += (text.empty() ? "" : ",") + column;
    }
    return text + "\r\nS1,\"floor, two halves\",Brine settling "
                  "tank,PE-HD,pe-hd-dvs2207-1-2005,,15,1130,,19,yes,,2,,VP 15 "
                  "black,Velmorra Sheet,VP-40713,0.5,190/5,,VP 15 black,Velmorra "
                  "Sheet,VP-40714,0.5,190/5\r\n";
}

} // namespace seamclock
