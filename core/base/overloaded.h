// A visitor made of lambdas, one for each alternative of a std::variant.
#pragma once

namespace seamclock {

template <class... Functions>
struct Overloaded : Functions... {
    using Functions::operator()...;
};
template <class... Functions>
Overloaded(Functions...) -> Overloaded<Functions...>;

} // namespace seamclock
