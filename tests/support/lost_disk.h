// A disk whose plug is pulled at every place where a question is being answered: who asked hears of
// it, and nothing that was half read passes for the answer.
#pragma once

#include "core/base/result.h"
#include "tests/support/fault_vfs.h"

#include <algorithm>
#include <cstdint>
#include <functional>
#include <gtest/gtest.h>
#include <optional>
#include <string>

namespace seamclock::test {

inline constexpr std::int64_t kMostLosses = 250;
inline constexpr std::int64_t kClosing = 2; // locks that closing a file takes: all is read by then

/// The complaint, if there is one.
template <class Value>
std::optional<Error> complaintOf(const Result<Value>& answer) {
    return answer ? std::nullopt : std::optional(answer.error());
}

/// `ask` opens what it reads, so that it begins with nothing in memory, and answers as complaintOf.
inline void everyLossIsTold(
    FaultyDisk& disk, const std::string& what, const std::function<std::optional<Error>()>& ask) {
    disk.loseAt(0);
    const std::int64_t before = disk.accesses();
    const auto sound = ask();
    ASSERT_FALSE(sound) << what << ": " << sound->detail;
    const std::int64_t accesses = disk.accesses() - before;
    ASSERT_GT(accesses, 2) << what;
    const std::int64_t step = std::max<std::int64_t>(1, accesses / kMostLosses);
    for (std::int64_t n = 1; n <= accesses; n += step) {
        disk.loseAt(n);
        const auto complaint = ask();
        disk.loseAt(0);
        EXPECT_TRUE(complaint || n > accesses - kClosing)
            << what << ", access " << n << " of " << accesses;
        EXPECT_TRUE(!complaint || !complaint->detail.empty()) << what << ", access " << n;
    }
}

} // namespace seamclock::test
