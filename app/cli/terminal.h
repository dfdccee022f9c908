// Standard output and standard error of one run. What can't be written is noticed, so that a full
// disk or a closed pipe is told and never taken for success; a complaint is exactly one line.
#pragma once

#include "core/base/result.h"

#include <string>
#include <string_view>

namespace seamclock {

class Terminal {
public:
    /// After a failed write the rest is left out.
    void write(std::string_view text);
    /// At once, for a line that a person waits for.
    void writeNow(std::string_view text);
    /// NotWritten: something did not get out.
    Result<void> finish();

    /// One line on standard error, at most 1,000 bytes of it.
    static void complain(std::string_view sentence);

private:
    std::string m_trouble;
    void failed();
};

} // namespace seamclock
