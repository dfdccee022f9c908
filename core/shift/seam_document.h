// A job's seam as a document of the log, for seams that a foreman entered or imported there: its
// facts name it ("seam:UUID", core/log/fact.h's SeamSet), the last one holds. A seam that is taken
// away stays in the log with all that was made of it; its document says that it is withdrawn.
#pragma once

#include "core/base/result.h"
#include "core/shift/job.h"

#include <string>
#include <string_view>

namespace seamclock {

struct SeamDocument {
    JobSeam seam; // its id is not in the document: the fact's subject is
    bool withdrawn = false;
};

std::string seamDocumentBytes(const SeamDocument& document);
/// Malformed: with the place and what is allowed there.
Result<SeamDocument> readSeamDocument(std::string_view bytes);

} // namespace seamclock
