// PINs for the terminal program: a line each of standard input, without being shown where that is a
// terminal. They are never an option's value, as those stand in process lists and shell histories.
#pragma once

#include "core/base/result.h"
#include "core/people/pin.h"

#include <string>

namespace seamclock {

/// `whose`: for the question on a terminal, "PIN of Ines: ". Missing: the input is over. Malformed:
/// no PIN.
Result<Pin> readPin(const std::string& whose);

} // namespace seamclock
