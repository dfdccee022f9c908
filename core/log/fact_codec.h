// Facts to and from the very bytes that are stored and hashed.
#pragma once

#include "core/base/result.h"
#include "core/log/fact.h"

#include <string>
#include <string_view>

namespace seamclock {

/// The body: canonical JSON. Malformed only if a text is not UTF-8.
Result<std::string> toBody(const Fact& fact);

/// Malformed: not canonical, a kind without a form here, a field missing, unknown or of the wrong
/// type, a subject that this kind can't have.
Result<Fact> factFromBody(std::string_view body);

} // namespace seamclock
