#include "core/log/batches.h"

#include "core/weld/fold.h"

#include <algorithm>
#include <iterator>
#include <sstream>

namespace seamclock {

namespace {

std::string trimmed(const std::string& text) {
    const auto from = text.find_first_not_of(" \t\r\n");
    return from == std::string::npos
               ? std::string()
               : text.substr(from, text.find_last_not_of(" \t\r\n") - from + 1);
}

/// As it is compared: nobody tells vp-40713 from VP-40713.
std::string folded(std::string text) {
    text = trimmed(text);
    std::transform(text.begin(), text.end(), text.begin(), [](char sign) {
        return sign >= 'A' && sign <= 'Z' ? static_cast<char>(sign - 'A' + 'a') : sign;
    });
    return text;
}

/// Whether the index of texts has a word of it for sure: signs beyond ASCII may be none there.
bool hasWord(const std::string& text) {
    return std::any_of(text.begin(), text.end(), [](char sign) {
        const auto byte = static_cast<unsigned char>(sign);
        return (byte >= '0' && byte <= '9') || (byte >= 'a' && byte <= 'z') ||
               (byte >= 'A' && byte <= 'Z');
    });
}

/// What the index is asked for: the words that it has. Empty: none of them is one.
std::string wordsIn(const std::string& text) {
    std::istringstream words(text);
    std::string out;
    std::string word;
    while (words >> word) {
        if (hasWord(word)) {
            out += (out.empty() ? "" : " ") + word;
        }
    }
    return out;
}

SheetBatch noted(int place, const Sheet& sheet) {
    return {place, sheet.material, sheet.grade.value_or(""), sheet.maker, sheet.batch,
            false, false};
}

} // namespace

Result<std::vector<SheetBatch>> batchesOf(const std::vector<Event>& events) {
    if (auto weld = fold(events); !weld) {
        return tl::unexpected<Error>(std::move(weld.error()));
    }
    const auto standing = retained(events);
    const auto& now = std::get<WeldOpened>(standing.front().d).sheets;
    std::vector<SheetBatch> out;
    for (std::size_t i = 0; i < now.size(); ++i) {
        SheetBatch sheet = noted(static_cast<int>(i) + 1, now[i]);
        const std::string field = "sheets." + std::to_string(i) + ".batch";
        std::vector<SheetBatch> before;
        for (const Event& event : events) {
            const auto* correction = std::get_if<ValueCorrected>(&event.d);
            if (correction != nullptr && correction->targetN == 1 && correction->field == field &&
                correction->was != correction->is) {
                SheetBatch was = sheet;
                was.batch = correction->was;
                was.overruled = true;
                before.push_back(std::move(was));
                sheet.corrected = true;
            }
        }
        out.push_back(std::move(sheet));
        out.insert(out.end(), before.begin(), before.end());
    }
    return out;
}

Result<BatchFound> jointsOfBatch(LogReader& log, const std::string& batch) {
    const std::string asked = trimmed(batch);
    if (asked.empty()) {
        return fail(
            ErrorCode::Malformed, "no batch is named; allowed: its name as it is on the sheet");
    }
    JointFilter filter;
    if (const std::string words = wordsIn(asked); !words.empty()) {
        filter.text = words;
    }
    std::vector<JointLine> lines;
    const auto read = log.eachJoint(filter, [&lines](const JointLine& line) {
        lines.push_back(line);
        return true;
    });
    if (!read) {
        return tl::unexpected<Error>(read.error());
    }
    BatchFound out;
    if (filter.text) { // the index has no words of a joint that can't be read: all of them count
        JointFilter unread;
        unread.damaged = true;
        const auto counted = log.eachJoint(unread, [&out](const JointLine&) {
            ++out.damaged;
            return true;
        });
        if (!counted) {
            return tl::unexpected<Error>(counted.error());
        }
    }
    for (JointLine& line : lines) {
        const auto events = log.weldEvents(line.weld);
        if (!events && events.error().code != ErrorCode::Damaged) {
            return tl::unexpected<Error>(events.error());
        }
        const auto sheets = events ? batchesOf(*events) : tl::unexpected<Error>(events.error());
        if (!sheets) {
            ++out.damaged;
            continue;
        }
        BatchJoint joint{std::move(line), {}};
        std::copy_if(
            sheets->begin(), sheets->end(), std::back_inserter(joint.sheets),
            [&](const SheetBatch& sheet) { return folded(sheet.batch) == folded(asked); });
        if (!joint.sheets.empty()) {
            out.joints.push_back(std::move(joint));
        }
    }
    return out;
}

} // namespace seamclock
