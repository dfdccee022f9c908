// A long repetition is cut short under the sanitizers: they look for faults in every line, which a
// few rounds reach, and cost ten to a hundred times the time. The whole count runs in the quick
// run.
#pragma once

namespace seamclock::test {

#if defined(__SANITIZE_ADDRESS__) || defined(__SANITIZE_THREAD__)
inline constexpr bool kSanitized = true;
#else
inline constexpr bool kSanitized = false;
#endif

/// `whole`, or a fifth of it.
constexpr int rounds(int whole) {
    return kSanitized ? whole / 5 : whole;
}

} // namespace seamclock::test
