// Either a value or an Error: how every room of core answers when the world may not play along.
#pragma once

#include "core/base/error.h"

#include <string>
#include <tl/expected.hpp>
#include <utility>

namespace seamclock {

template <class T>
using Result = tl::expected<T, Error>;

inline tl::unexpected<Error> fail(ErrorCode code, std::string detail) {
    return tl::unexpected<Error>(Error{code, std::move(detail)});
}

} // namespace seamclock
