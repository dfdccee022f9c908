#include "core/session/job_book.h"

#include "core/log/fact_codec.h"
#include "core/log/log_reader.h"
#include "core/shift/seam_document.h"

#include <algorithm>
#include <string>
#include <utility>
#include <variant>

namespace seamclock {

Result<KeptSeams> readJobSeams(LogReader& log) {
    const auto bodies = log.bodiesFrom("seam:");
    if (!bodies) {
        return tl::unexpected<Error>(bodies.error());
    }
    KeptSeams out;
    std::vector<std::pair<std::string, std::string>> last; // subject, and its document
    for (const std::string& body : *bodies) {
        const auto fact = factFromBody(body);
        const auto* set = fact ? std::get_if<SeamSet>(&fact->d) : nullptr;
        if (set == nullptr) {
            out.unread.push_back(log.path() + ": a fact of a seam can't be read");
            continue;
        }
        const auto known = std::find_if(
            last.begin(), last.end(), [&](const auto& one) { return one.first == fact->subject; });
        if (known == last.end()) {
            last.emplace_back(fact->subject, set->doc);
        } else {
            known->second = set->doc;
        }
    }
    for (const auto& [subject, sha256] : last) {
        const auto stored = log.document(sha256);
        if (!stored) {
            return tl::unexpected<Error>(stored.error());
        }
        auto read = *stored ? readSeamDocument((*stored)->bytes)
                            : Result<SeamDocument>(fail(ErrorCode::Damaged, "is not there"));
        if (!read) {
            out.unread.push_back(
                log.path() + ": the document of " + subject + ": " + read.error().detail);
        } else if (!read->withdrawn) {
            read->seam.id = subject;
            out.seams.push_back(std::move(read->seam));
        }
    }
    return out;
}

} // namespace seamclock
