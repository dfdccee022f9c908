// Events to and from the very bytes that are stored and hashed.
#pragma once

#include "core/base/result.h"
#include "core/weld/event.h"

#include <string>
#include <string_view>

namespace seamclock {

/// The body: canonical JSON. Malformed only if a text is not UTF-8.
Result<std::string> toBody(const Event& event);

/// Malformed: not canonical, an unknown kind or version, a field missing, unknown or of the wrong
/// type.
Result<Event> eventFromBody(std::string_view body);

} // namespace seamclock
