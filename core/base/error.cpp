#include "core/base/error.h"

namespace seamclock {

std::string toString(ErrorCode code) {
    switch (code) {
    case ErrorCode::OutOfRange:
        return "out_of_range";
    case ErrorCode::Malformed:
        return "malformed";
    case ErrorCode::Missing:
        return "missing";
    case ErrorCode::Conflict:
        return "conflict";
    case ErrorCode::Unreadable:
        return "unreadable";
    case ErrorCode::Foreign:
        return "foreign";
    case ErrorCode::Damaged:
        return "damaged";
    case ErrorCode::NotWritten:
        return "not_written";
    case ErrorCode::Refused:
        return "refused";
    }
    return "unknown";
}

} // namespace seamclock
