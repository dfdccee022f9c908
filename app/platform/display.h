// Whether a window can be opened at all, which each system tells in its own way.
#pragma once

namespace seamclock {

/// False: Qt would abort, and a sentence is better.
bool hasDisplay();

} // namespace seamclock
