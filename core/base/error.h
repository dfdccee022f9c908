// What can be expected to go wrong, as values. A code says which kind (programs decide on it); the
// detail is one English sentence that names the input, its value and the allowed range (people and
// logs read it). Bugs are not errors: they are asserted.
#pragma once

#include <string>

namespace seamclock {

enum class ErrorCode {
    OutOfRange, // a value outside its allowed range
    Malformed,  // text that is not what it should be
    Missing,    // something needed is not there
    Conflict,   // it contradicts what already stands
    Unreadable, // a file that can't be read at all
    Foreign,    // a readable file that isn't ours, or is newer than this program
    Damaged,    // ours, but its content is not what was written
    NotWritten, // storage refused a write
    Refused     // a step that does not fit the state it meets
};

struct Error {
    ErrorCode code = ErrorCode::Refused;
    std::string detail;

    bool operator==(const Error&) const = default;
};

} // namespace seamclock
