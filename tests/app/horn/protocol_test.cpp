#include "app/horn/protocol.h"

#include <gtest/gtest.h>
#include <random>

using namespace seamclock;

namespace {

HornSlot getReady() {
    return {"weld:7/get_ready/0/4000/0/0",
            Milliseconds{4'000},
            6,
            1,
            Sound::GetReady,
            0,
            0,
            Milliseconds{180}};
}

} // namespace

TEST(Protocol, WritesAScheduleAsOneLine) {
    EXPECT_EQ(
        lineOf(ToHorn(HornSchedule{12, {getReady()}})),
        "schedule 12 weld:7/get_ready/0/4000/0/0 4000 6 1 get_ready/0/0/180");
    EXPECT_EQ(lineOf(ToHorn(HornSchedule{3, {}})), "schedule 3");
    EXPECT_EQ(lineOf(ToHorn(HornBeat{})), "beat");
    EXPECT_EQ(lineOf(ToHorn(HornBye{})), "bye");
    EXPECT_EQ(
        lineOf(FromHorn(HornAlive{Milliseconds{9'000}, Milliseconds{135}, 2})), "alive 9000 135 2");
    EXPECT_EQ(lineOf(FromHorn(HornHeard{"a/0/1", Milliseconds{17}})), "heard a/0/1 17");
    EXPECT_EQ(lineOf(FromHorn(HornTrouble{"no_device"})), "trouble no_device");
}

TEST(Protocol, ReadsBackEverySlotOfEverySound) {
    HornSchedule all{1, {}};
    for (const Sound sound : kAllSounds) {
        for (int place = 0; place <= kMostBenches; ++place) {
            for (int round = 0; round < 4; ++round) {
                for (int position = 0; position < slotCount(sound, place, round); ++position) {
                    all.soundSlots.push_back(
                        {"id", Milliseconds{77}, 1, place, sound, round, position,
                         slotTime(sound, place, round, position).length});
                }
            }
        }
    }
    ASSERT_GT(all.soundSlots.size(), 100U);
    const auto read = readToHorn(lineOf(ToHorn(all)));
    ASSERT_TRUE(read) << read.error().detail;
    EXPECT_EQ(*read, ToHorn(all));
    for (const HornSlot& slot : all.soundSlots) {
        EXPECT_FALSE(toneOf(slot).partials.empty());
    }
    for (const FromHorn& told :
         {FromHorn(HornAlive{Milliseconds{9'000}, Milliseconds{-5}, 2}),
          FromHorn(HornHeard{"a", Milliseconds{17}}), FromHorn(HornTrouble{"no_device"})}) {
        EXPECT_EQ(readFromHorn(lineOf(told)).value_or(HornTrouble{"unread"}), told);
    }
}

TEST(Protocol, KeepsASlotsLengthAndGivesItOneWordAsId) {
    Sounding sounding;
    sounding.request = "weld:with space";
    sounding.sound = Sound::ActNow;
    sounding.place = 2;
    sounding.rank = 3;
    sounding.length = Milliseconds{250}; // cut down from 600
    const HornSlot slot = slotOf(sounding);
    EXPECT_EQ(slot.id, "weld:with_space/0/0");
    EXPECT_EQ(toneOf(slot).time.length, Milliseconds{250});
    EXPECT_TRUE(readToHorn(lineOf(ToHorn(HornSchedule{1, {slot}}))));
}

TEST(Protocol, RefusesWhatItDoesNotKnowAndSaysWhatIsAllowed) {
    struct Row {
        const char* line;
        const char* says;
    };
    for (const Row& row : std::vector<Row>{
             {"", "schedule, beat and bye"},
             {"Beat", "schedule, beat and bye"},
             {"beat ", "takes 0"},
             {"bye now", "takes 0"},
             {"schedule", "5 for each slot"},
             {"schedule x", "generation \"x\""},
             {"schedule -1", "generation -1 is not within 0"},
             {"schedule 99999999999999999999", "is not within"},
             {"schedule 1 id 4000 6 1", "5 for each slot"},
             {"schedule 1  4000 6 1 get_ready/0/0/180", "id \"\""},
             {"schedule 1 id 4000.5 6 1 get_ready/0/0/180", "boot_ms \"4000.5\""},
             {"schedule 1 id 9223372036854775807 6 1 get_ready/0/0/180", "boot_ms"},
             {"schedule 1 id 4000 0 1 get_ready/0/0/180", "rank 0 is not within 1 to 10"},
             {"schedule 1 id 4000 6 5 get_ready/0/0/180", "bench 5 is not within 0 to 4"},
             {"schedule 1 id 4000 6 1 get_ready/0/0", "sound/round/position/length_ms"},
             {"schedule 1 id 4000 6 1 siren/0/0/180", "sound \"siren\""},
             {"schedule 1 id 4000 6 1 get_ready/2/0/180", "has no round 2"},
             {"schedule 1 id 4000 6 1 get_ready/-1/0/180", "round -1"},
             {"schedule 1 id 4000 6 1 act_now/4294967296/0/180", "round 4294967296"},
             {"schedule 1 id 4000 6 1 get_ready/0/1/180", "position 1 is not within 0 to 0"},
             {"schedule 1 id 4000 6 1 get_ready/0/0/601", "length_ms 601 is not within 30 to 600"},
             {"schedule 1 id 4000 6 1 get_ready/0/0/0", "length_ms 0 is not within 30 to 600"},
         }) {
        const auto read = readToHorn(row.line);
        ASSERT_FALSE(read) << row.line;
        EXPECT_NE(read.error().detail.find(row.says), std::string::npos)
            << row.line << ": " << read.error().detail;
    }
    for (const char* line :
         {"", "alive", "alive 1 2", "alive 1 2 -3", "heard x", "trouble", "trouble a b"}) {
        EXPECT_FALSE(readFromHorn(line)) << line;
    }
}

// Whatever is accepted can be rendered and says the same again; nothing else may happen.
TEST(Protocol, SurvivesAHundredThousandMangledLines) {
    std::mt19937 chance(20'300'107);
    const std::string good = lineOf(ToHorn(HornSchedule{12, {getReady(), getReady()}}));
    const std::string letters = " /0123456789-abegtruwx_:\t\n\xff" + std::string(1, '\0');
    int accepted = 0;
    for (int i = 0; i < 100'000; ++i) {
        std::string line = good;
        for (unsigned change = chance() % 4 + 1; change > 0; --change) {
            const std::size_t at = chance() % line.size();
            const char letter = letters[chance() % letters.size()];
            switch (chance() % 4) {
            case 0:
                line[at] = letter;
                break;
            case 1:
                line.insert(at, 1, letter);
                break;
            case 2:
                line.erase(at, chance() % 3 + 1);
                break;
            case 3:
                line.resize(at);
                break;
            }
            if (line.empty()) {
                break;
            }
        }
        const auto read = readToHorn(line);
        (void)readFromHorn(line);
        if (!read) {
            EXPECT_FALSE(read.error().detail.empty());
            continue;
        }
        ++accepted;
        EXPECT_EQ(readToHorn(lineOf(*read)).value_or(HornBye{}), *read);
        if (const auto* const schedule = std::get_if<HornSchedule>(&*read)) {
            for (const HornSlot& slot : schedule->soundSlots) {
                EXPECT_LE(toneOf(slot).time.length, kLongestSlot);
            }
        }
    }
    EXPECT_GT(accepted, 1'000);
}
