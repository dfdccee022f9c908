#include "core/people/signing.h"

#include "tests/support/scratch_folder.h"

#include <cstdlib>
#include <fstream>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

std::string bytesOf(const std::string& hex) {
    std::string out;
    for (std::size_t i = 0; i + 1 < hex.size(); i += 2) {
        out += static_cast<char>(std::stoi(hex.substr(i, 2), nullptr, 16));
    }
    return out;
}

struct Vector {
    const char* seed;
    const char* publicKey;
    const char* message; // hexadecimal
    const char* signature;
};

// RFC 8032, 7.1, "Test Vectors for Ed25519", TEST 1 and TEST 2; the digits are from memory, and a
// wrong one among them could not pass.
constexpr Vector kVectors[] = {
    {"9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
     "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a", "",
     "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b"
     "46bd25bf5f0595bbe24655141438e7a100b"},
    {"4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb",
     "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c", "72",
     "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11"
     "d8c387b2eaeb4302aeeb00d291612bb0c00"}};

TEST(Signing, IsEd25519OfRfc8032) {
    for (const Vector& vector : kVectors) {
        const auto key = SigningKey::fromSeed(Secret(bytesOf(vector.seed)));
        ASSERT_TRUE(key.has_value());
        EXPECT_EQ(key->publicKey(), vector.publicKey);
        EXPECT_EQ(key->sign(bytesOf(vector.message)), vector.signature);
        EXPECT_TRUE(signatureFits(vector.publicKey, bytesOf(vector.message), vector.signature));
        EXPECT_EQ(key->seed().view(), bytesOf(vector.seed));
    }
}

TEST(Signing, AnotherMessageKeyOrSignatureDoesNotFit) {
    const SigningKey key = SigningKey::make();
    const SigningKey other = SigningKey::make();
    const std::string signature = key.sign("row 12");
    EXPECT_TRUE(signatureFits(key.publicKey(), "row 12", signature));
    EXPECT_FALSE(signatureFits(key.publicKey(), "row 13", signature));
    EXPECT_FALSE(signatureFits(other.publicKey(), "row 12", signature));
    EXPECT_FALSE(signatureFits(key.publicKey(), "row 12", other.sign("row 12")));
    for (const std::string& broken :
         {std::string(), signature.substr(1), signature + "00", std::string(128, 'x'),
          std::string(128, '0')}) {
        EXPECT_FALSE(signatureFits(key.publicKey(), "row 12", broken)) << broken;
        EXPECT_FALSE(signatureFits(broken, "row 12", signature)) << broken;
    }
}

TEST(Signing, ASeedOfAnotherSizeIsNone) {
    const auto key = SigningKey::fromSeed(Secret("short"));
    ASSERT_FALSE(key.has_value());
    EXPECT_EQ(key.error().code, ErrorCode::Malformed);
    EXPECT_EQ(key.error().detail, "a signing key's seed has 5 bytes, expected 32");
}

// What a customer without this program would do; the prefix is the DER form of an Ed25519 key
// (RFC 8410, 4).
TEST(Signing, IsJudgedTheSameByOpenssl) {
    if (std::system("command -v openssl >/dev/null") != 0) {
        GTEST_SKIP() << "the openssl command line program is not installed";
    }
    const test::ScratchFolder folder;
    const SigningKey key = SigningKey::make();
    const std::string message = "seamclock-head/1\nlog\n12\nhash";
    std::ofstream(folder.file("key.der")) << bytesOf("302a300506032b6570032100" + key.publicKey());
    std::ofstream(folder.file("message")) << message;
    std::ofstream(folder.file("signature")) << bytesOf(key.sign(message));
    const std::string ask = "cd '" + folder.path() +
                            "' && openssl pkeyutl -verify -pubin -keyform DER -inkey key.der "
                            "-rawin -in message -sigfile signature >/dev/null 2>&1";
    EXPECT_EQ(std::system(ask.c_str()), 0);
    std::ofstream(folder.file("message")) << message << "!";
    EXPECT_NE(std::system(ask.c_str()), 0);
}

// SHA-256 of "abc": FIPS 180-4's example, as published by NIST.
TEST(Fingerprint, IsTheFirstHalfOfSha256InFours) {
    EXPECT_EQ(fingerprint("abc"), "ba78 16bf 8f01 cfea 4141 40de 5dae 2223");
}

TEST(Secret, IsMovedAndLeavesNothingBehind) {
    Secret first("123456");
    Secret second(std::move(first));
    EXPECT_EQ(second.view(), "123456");
    EXPECT_EQ(first.size(), 0U); // NOLINT(bugprone-use-after-move): that is what is asked
    std::string text = "654321";
    wipe(text);
    EXPECT_TRUE(text.empty());
}

} // namespace
} // namespace seamclock
