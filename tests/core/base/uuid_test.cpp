#include "core/base/uuid.h"

#include <gtest/gtest.h>
#include <set>

namespace seamclock {
namespace {

// Examples of SHA-256 published with FIPS 180-4 (one block, two blocks, a million times "a", the
// empty message).
TEST(Sha256, AgreesWithTheStandardsExamples) {
    EXPECT_EQ(sha256Hex("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    EXPECT_EQ(
        sha256Hex("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"),
        "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
    EXPECT_EQ(
        sha256Hex(std::string(1'000'000, 'a')),
        "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
    EXPECT_EQ(
        sha256Hex({"a", "", "bc"}),
        "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    EXPECT_EQ(sha256Hex(""), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
}

// RFC 4122, 4.4: version 4 in the seventh byte's upper half, the variant 10 in the ninth's upper
// bits.
TEST(Uuid, HasTheShapeOfARandomOneAndNeverRepeats) {
    std::set<std::string> seen;
    for (int i = 0; i < 1000; ++i) {
        const std::string uuid = newUuid();
        ASSERT_EQ(uuid.size(), 36U);
        for (std::size_t at = 0; at < uuid.size(); ++at) {
            if (at == 8 || at == 13 || at == 18 || at == 23) {
                EXPECT_EQ(uuid[at], '-');
            } else {
                EXPECT_NE(std::string("0123456789abcdef").find(uuid[at]), std::string::npos);
            }
        }
        EXPECT_EQ(uuid[14], '4');
        EXPECT_NE(std::string("89ab").find(uuid[19]), std::string::npos);
        EXPECT_TRUE(seen.insert(uuid).second);
    }
}

} // namespace
} // namespace seamclock
