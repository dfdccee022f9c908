#include "core/people/credentials.h"

#include "core/people/credentials_codec.h"
#include "tests/support/fake_clock.h"
#include "tests/support/sanitized.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/shipped.h"

#include <fstream>
#include <gtest/gtest.h>
#include <random>
#include <sys/stat.h>

namespace seamclock {
namespace {

class CredentialsTest : public ::testing::Test {
protected:
    Pin pin(const char* digits) { return std::move(*Pin::read(digits)); }
    Result<Access> enter(const Person& who, const char* digits) {
        return credentials.enter(who, pin(digits), clock.now());
    }
    void write(const std::string& text, mode_t mode = 0600) {
        std::ofstream(credentials.path()) << text;
        chmod(credentials.path().c_str(), mode);
    }

    test::ScratchFolder folder;
    test::FakeClock clock;
    Credentials credentials{folder.file("a.log.credentials")};
    Person foreman{"person:ines", "Ines", Role::Foreman, true};
    Person hand{"person:jo", "Jo", Role::Operator, true};
};

TEST_F(CredentialsTest, TheStationsKeyIsMadeOnceAndStays) {
    const auto first = credentials.stationKey();
    ASSERT_TRUE(first.has_value()) << first.error().detail;
    EXPECT_TRUE(first->made);
    const auto again = Credentials(credentials.path()).stationKey();
    ASSERT_TRUE(again.has_value());
    EXPECT_FALSE(again->made);
    EXPECT_EQ(again->key.publicKey(), first->key.publicKey());
    struct stat facts {};
    ASSERT_EQ(stat(credentials.path().c_str(), &facts), 0);
    EXPECT_EQ(facts.st_mode & 0777U, 0600U);
}

TEST_F(CredentialsTest, TheRightPinOpensTheForemansKey) {
    const auto key = credentials.setPin(foreman, pin("123456"));
    ASSERT_TRUE(key.has_value()) << key.error().detail;
    ASSERT_TRUE(key->has_value());
    const auto access = enter(foreman, "123456");
    ASSERT_TRUE(access.has_value()) << access.error().detail;
    EXPECT_EQ(access->who.person(), "person:ines");
    EXPECT_EQ(access->who.role(), Role::Foreman);
    ASSERT_TRUE(access->key.has_value());
    EXPECT_EQ(access->key->publicKey(), **key);
    EXPECT_EQ(credentials.hasPin("person:ines"), true);
}

TEST_F(CredentialsTest, AnOperatorHasAPinAndNoKey) {
    EXPECT_EQ(credentials.hasPin("person:jo"), false);
    const auto missing = enter(hand, "4711");
    ASSERT_FALSE(missing.has_value());
    EXPECT_EQ(missing.error().code, ErrorCode::Missing);
    const auto set = credentials.setPin(hand, pin("4711"));
    ASSERT_TRUE(set.has_value());
    EXPECT_FALSE(set->has_value());
    const auto access = enter(hand, "4711");
    ASSERT_TRUE(access.has_value()) << access.error().detail;
    EXPECT_FALSE(access->key.has_value());
    // Made a foreman, he still has no key: that comes with a PIN set as one.
    Person risen = hand;
    risen.role = Role::Foreman;
    EXPECT_FALSE(enter(risen, "4711")->key.has_value());
}

TEST_F(CredentialsTest, AnotherPinKeepsTheKeyAndAForgottenOneLosesIt) {
    const std::string first = **credentials.setPin(foreman, pin("123456"));
    ASSERT_TRUE(
        credentials.changePin(foreman, pin("123456"), pin("654321"), clock.now()).has_value());
    EXPECT_FALSE(enter(foreman, "123456").has_value());
    EXPECT_EQ(enter(foreman, "654321")->key->publicKey(), first);
    EXPECT_FALSE(credentials.changePin(foreman, pin("1"), pin("222222"), clock.now()).has_value());
    const std::string second = **credentials.setPin(foreman, pin("999999"));
    EXPECT_NE(second, first);
    EXPECT_EQ(enter(foreman, "999999")->key->publicKey(), second);
}

// 0, 0, 30 s, 1 min, 2 min … 1 h: our own choice, no source.
TEST_F(CredentialsTest, WrongPinsCostGrowingPauses) {
    EXPECT_EQ(pauseAfter(0), Milliseconds(0));
    EXPECT_EQ(pauseAfter(2), Milliseconds(0));
    EXPECT_EQ(pauseAfter(3), Milliseconds(30'000));
    EXPECT_EQ(pauseAfter(4), Milliseconds(60'000));
    EXPECT_EQ(pauseAfter(9), Milliseconds(1'920'000));
    EXPECT_EQ(pauseAfter(10), Milliseconds(3'600'000));
    EXPECT_EQ(pauseAfter(1'000'000), Milliseconds(3'600'000));

    ASSERT_TRUE(credentials.setPin(foreman, pin("123456")).has_value());
    EXPECT_EQ(enter(foreman, "000000").error().detail, "the PIN is wrong");
    EXPECT_EQ(enter(foreman, "000001").error().detail, "the PIN is wrong");
    EXPECT_EQ(enter(foreman, "000002").error().detail, "the PIN is wrong; the next try in 30 s");
    const auto early = enter(foreman, "123456");
    ASSERT_FALSE(early.has_value()) << "the right one has to wait, too";
    EXPECT_EQ(early.error().code, ErrorCode::Refused);
    EXPECT_EQ(early.error().detail, "after 3 wrong PINs in a row: wait 30 s");
    clock.wait(Milliseconds(29'999));
    EXPECT_FALSE(enter(foreman, "123456").has_value());
    // The wall clock buys nothing, another start of the program neither.
    clock.setWallClock(std::chrono::hours(24));
    EXPECT_EQ(*Credentials(credentials.path()).pause("person:ines", clock.now()), Milliseconds(1));
    clock.wait(Milliseconds(1));
    EXPECT_TRUE(enter(foreman, "123456").has_value());
    EXPECT_EQ(enter(foreman, "000000").error().detail, "the PIN is wrong") << "counted anew";
}

TEST_F(CredentialsTest, ARebootDoesNotShortenThePause) {
    ASSERT_TRUE(credentials.setPin(hand, pin("4711")).has_value());
    for (int i = 0; i < 4; ++i) {
        clock.wait(std::chrono::hours(1));
        EXPECT_FALSE(enter(hand, "0000").has_value());
    }
    clock.reboot(Milliseconds(0)); // up for 20 s
    EXPECT_EQ(*credentials.pause("person:jo", clock.now()), Milliseconds(40'000));
    EXPECT_FALSE(enter(hand, "4711").has_value());
    clock.wait(Milliseconds(40'000));
    EXPECT_TRUE(enter(hand, "4711").has_value());
}

// A program that is ended while it tries a PIN has counted it already.
TEST_F(CredentialsTest, ATryIsCountedBeforeItIsJudged) {
    ASSERT_TRUE(credentials.setPin(hand, pin("4711")).has_value());
    for (int i = 0; i < 3; ++i) {
        EXPECT_FALSE(enter(hand, "0000").has_value());
    }
    const auto content = readCredentials("it", test::textOf(credentials.path()));
    ASSERT_TRUE(content.has_value());
    EXPECT_EQ(content->people.at("person:jo").wrong.count, 3);
}

TEST_F(CredentialsTest, WhereTheFileCantBeWrittenWrongPinsStillCount) {
    ASSERT_TRUE(credentials.setPin(hand, pin("4711")).has_value());
    ASSERT_EQ(mkdir((credentials.path() + ".new").c_str(), 0700), 0);
    std::ofstream(credentials.path() + ".new/in_the_way") << "x"; // no new file can be made
    EXPECT_TRUE(enter(hand, "4711").has_value());
    for (int i = 0; i < 3; ++i) {
        EXPECT_FALSE(enter(hand, "0000").has_value());
    }
    EXPECT_EQ(*credentials.pause("person:jo", clock.now()), Milliseconds(30'000));
    EXPECT_FALSE(enter(hand, "4711").has_value());
    clock.wait(Milliseconds(30'000));
    EXPECT_TRUE(enter(hand, "4711").has_value());
    const auto set = credentials.setPin(hand, pin("4712"));
    ASSERT_FALSE(set.has_value());
    EXPECT_EQ(set.error().code, ErrorCode::NotWritten);
    EXPECT_TRUE(enter(hand, "4711").has_value()) << "the old one holds";
}

TEST_F(CredentialsTest, NeitherPinNorForemansKeyStandsInTheFile) {
    ASSERT_TRUE(credentials.setPin(foreman, pin("314159265358")).has_value());
    const std::string text = test::textOf(credentials.path());
    EXPECT_EQ(text.find("314159265358"), std::string::npos);
    const auto access = enter(foreman, "314159265358");
    std::string seed;
    const Secret raw = access->key->seed();
    for (std::size_t i = 0; i < raw.size(); ++i) {
        constexpr const char* kDigits = "0123456789abcdef";
        seed += kDigits[raw.bytes()[i] / 16];
        seed += kDigits[raw.bytes()[i] % 16];
    }
    EXPECT_EQ(text.find(seed), std::string::npos);
    EXPECT_EQ(text.find(seed.substr(0, 16)), std::string::npos);
}

TEST_F(CredentialsTest, AFileThatOthersMayReadIsRefused) {
    ASSERT_TRUE(credentials.stationKey().has_value());
    chmod(credentials.path().c_str(), 0640);
    const auto refused = credentials.stationKey();
    ASSERT_FALSE(refused.has_value());
    EXPECT_EQ(refused.error().code, ErrorCode::Unreadable);
    EXPECT_NE(refused.error().detail.find("chmod 600"), std::string::npos);
}

TEST_F(CredentialsTest, ADamagedFileIsToldAndNotOverwritten) {
    ASSERT_TRUE(credentials.setPin(foreman, pin("123456")).has_value());
    const std::string sound = test::textOf(credentials.path());
    for (const std::string& text :
         {std::string(), std::string("{}"), sound.substr(0, sound.size() / 2),
          std::string("{\"v\": 2, \"people\": {}}"),
          std::string("{\"v\": 1, \"people\": {\"person:ines\": {}}}")}) {
        write(text);
        for (const auto& error :
             {credentials.stationKey().error(), credentials.setPin(hand, pin("4711")).error(),
              enter(foreman, "123456").error()}) {
            EXPECT_EQ(error.code, ErrorCode::Damaged) << text;
        }
        EXPECT_EQ(test::textOf(credentials.path()), text);
    }
}

TEST_F(CredentialsTest, AskingForMoreMemoryThanATabletHasIsDamage) {
    ASSERT_TRUE(credentials.setPin(hand, pin("4711")).has_value());
    std::string text = test::textOf(credentials.path());
    const std::string was = "\"memory_bytes\": 67108864";
    const auto at = text.find(was);
    ASSERT_NE(at, std::string::npos);
    write(text.replace(at, was.size(), "\"memory_bytes\": 67108864000"));
    EXPECT_EQ(enter(hand, "4711").error().code, ErrorCode::Damaged);
}

TEST_F(CredentialsTest, RandomBytesNeverCrashIt) {
    ASSERT_TRUE(credentials.setPin(foreman, pin("123456")).has_value());
    ASSERT_TRUE(credentials.stationKey().has_value());
    const std::string sound = test::textOf(credentials.path());
    std::mt19937_64 random(7);
    for (int round = 0; round < test::rounds(2000); ++round) {
        std::string text = sound;
        for (std::size_t i = 0; i <= round % 3; ++i) {
            text[random() % text.size()] = static_cast<char>(random() % 256);
        }
        const auto read = readCredentials("it", text);
        if (read) {
            EXPECT_FALSE(credentialsText(*read).empty());
        } else {
            EXPECT_EQ(read.error().code, ErrorCode::Damaged);
        }
    }
}

} // namespace
} // namespace seamclock
