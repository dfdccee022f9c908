// Lists and searches out of the cache of joints, held against going through all lines by hand.
#include "core/log/joint_cache.h"
#include "core/log/schema.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <algorithm>
#include <cctype>
#include <gtest/gtest.h>
#include <random>
#include <set>
#include <sstream>

namespace seamclock {
namespace {

std::vector<std::string> termsOf(const std::string& text) {
    std::vector<std::string> out(1);
    for (const char c : text) {
        if (std::isalnum(static_cast<unsigned char>(c)) != 0) {
            out.back() += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
        } else if (!out.back().empty()) {
            out.emplace_back();
        }
    }
    if (out.back().empty()) {
        out.pop_back();
    }
    return out;
}

bool begins(const std::string& term, const std::string& beginning) {
    return term.compare(0, beginning.size(), beginning) == 0;
}

/// Each word of the search as terms one after the other, the last as a beginning.
bool holds(const std::string& text, const std::string& search) {
    const auto terms = termsOf(text);
    std::istringstream words(search);
    std::string word;
    while (words >> word) {
        const auto asked = termsOf(word);
        bool found = false;
        for (std::size_t at = 0; at + asked.size() <= terms.size() && !found; ++at) {
            found = begins(terms[at + asked.size() - 1], asked.back()) &&
                    std::equal(
                        asked.begin(), asked.end() - 1,
                        terms.begin() + static_cast<std::ptrdiff_t>(at));
        }
        if (!found) {
            return false;
        }
    }
    return true;
}

/// The label itself, or what was welded again of it.
bool isOf(const std::string& label, const std::vector<std::string>& seams) {
    return std::any_of(seams.begin(), seams.end(), [&](const std::string& seam) {
        return label == seam || (begins(label, seam + "/R") && label.size() > seam.size() + 2);
    });
}

bool fits(const CachedJoint& joint, const JointFilter& filter) {
    const auto same = [](const std::optional<std::string>& asked, const std::string& is) {
        return !asked || *asked == is;
    };
    const JointLine& line = joint.line;
    return same(filter.bench, line.bench) && same(filter.by, line.by) &&
           same(filter.material, line.material) && same(filter.verdict, judgedOf(line)) &&
           (filter.verdict != "" || line.phase != "damaged") &&
           (!filter.fromDay || line.day >= *filter.fromDay) &&
           (!filter.toDay || line.day <= *filter.toDay) &&
           (!filter.seams || isOf(line.seam, *filter.seams)) && same(filter.seam, line.seam) &&
           (!filter.job || line.job.empty() || line.job == *filter.job) &&
           (!filter.text || holds(joint.text, *filter.text));
}

std::vector<JointLine> byHand(std::vector<CachedJoint> joints, const JointFilter& filter) {
    std::sort(joints.begin(), joints.end(), [](const CachedJoint& a, const CachedJoint& b) {
        return isNewer(a.line, b.line);
    });
    std::vector<JointLine> out;
    for (const CachedJoint& joint : joints) {
        if (fits(joint, filter)) {
            out.push_back(joint.line);
        }
    }
    return out;
}

class Cache {
public:
    Cache() : m_database(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE) {
        remakeJointCache(m_database);
    }

    void store(const CachedJoint& joint) { JointStore(m_database).store(joint); }
    SQLite::Database& database() { return m_database; }

    std::vector<JointLine> list(JointFilter filter, std::size_t most = SIZE_MAX) {
        JointCursor cursor(m_database, filter);
        std::vector<JointLine> out;
        JointLine line;
        while (out.size() < most && cursor.next(line)) {
            out.push_back(line);
        }
        return out;
    }
    std::vector<JointLine> inPages(JointFilter filter, std::size_t size) {
        std::vector<JointLine> out;
        for (;;) {
            const auto page = list(filter, size);
            out.insert(out.end(), page.begin(), page.end());
            if (page.size() < size) {
                return out;
            }
            filter.after = keyOf(page.back());
        }
    }

private:
    SQLite::Database m_database;
};

class Chooser {
public:
    explicit Chooser(std::uint64_t seed) : m_chance(seed) {}
    std::size_t below(std::size_t count) { return m_chance() % count; }
    template <class List>
    auto of(const List& list) {
        return *(std::begin(list) + static_cast<std::ptrdiff_t>(below(std::size(list))));
    }

private:
    std::mt19937_64 m_chance;
};

const std::vector<std::string> kBenches{"east", "west", "spare"};
const std::vector<std::string> kPeople{"person:ilva", "person:oddo"};
const std::vector<std::string> kMaterials{"PE-HD", "PP"};
const std::vector<std::string> kVerdicts{"within limits", "out of limits", ""};
const std::vector<std::string> kSeams{"S3", "S3/R1", "S3/R12", "S3/left", "S30", "S4", ""};
const std::vector<std::string> kJobs{"QV-118", "QV-131", "", "QV-118"};
const std::vector<std::string> kWords{"tank", "Tanker", "S3/R1", "VP-40713", "draught",
                                      "7",    "70",     "weir",  "lid"};

CachedJoint randomJoint(Chooser& choose, std::int64_t number) {
    CachedJoint out;
    out.line.weld =
        "weld:" + std::to_string(choose.below(1'000'000)) + "-" + std::to_string(number);
    out.line.number = number;
    // Few instants, so that many share one; and some that have no ids of their own.
    const std::int64_t day = 1'893'996'000'000;
    out.line.openedUtc =
        Milliseconds(day + static_cast<std::int64_t>(choose.below(40)) * 7'200'000);
    if (choose.below(20) == 0) {
        const std::vector<std::int64_t> odd{
            -5, 0, 4'500'000'000'000, INT64_MAX / 4, -INT64_MAX / 4};
        out.line.openedUtc = Milliseconds(choose.of(odd));
    }
    out.line.day = toIsoDate(out.line.openedUtc, std::chrono::minutes(60));
    out.line.bench = choose.below(12) == 0 ? kBenches[2] : kBenches[choose.below(2)];
    out.line.by = choose.of(kPeople);
    out.line.material = choose.of(kMaterials);
    out.line.verdict = choose.of(kVerdicts);
    out.line.open = out.line.verdict.empty();
    const std::string now = choose.of(kVerdicts);
    if (!out.line.open && !now.empty() && now != out.line.verdict && choose.below(3) == 0) {
        out.line.verdictNow = now;
    }
    out.line.seam = choose.of(kSeams);
    out.line.job = choose.of(kJobs);
    for (std::size_t words = choose.below(5); words > 0; --words) {
        out.text += choose.of(kWords) + "\n";
    }
    out.text += std::to_string(number);
    return out;
}

JointFilter randomFilter(Chooser& choose) {
    JointFilter filter;
    const auto maybe = [&](const auto& list) {
        return choose.below(3) == 0 ? std::optional<std::string>(choose.of(list)) : std::nullopt;
    };
    filter.bench = maybe(kBenches);
    filter.by = maybe(kPeople);
    filter.material = maybe(kMaterials);
    filter.verdict = maybe(kVerdicts);
    filter.fromDay = maybe(std::vector<std::string>{"2030-01-08", "1970-01-01", "2120-01-01"});
    filter.toDay = maybe(std::vector<std::string>{"2030-01-09", "1969-12-31"});
    filter.text = maybe(std::vector<std::string>{
        "tank", "tan", "t", "s3", "S3/R", "vp-407", "7", "1", "nothing", "weir lid", "lid 7", "d w",
        " ", "\"", "tank nothing"});
    if (choose.below(3) == 0) {
        filter.seams = choose.of(
            std::vector<std::vector<std::string>>{{"S3"}, {"S4", "S30"}, {"S3/left"}, {"S5"}, {}});
    }
    if (choose.below(4) == 0) {
        filter.job = choose.of(std::vector<std::string>{"QV-118", "QV-131", "QV-1", ""});
        filter.seam = choose.below(3) == 0 ? std::optional(choose.of(kSeams)) : std::nullopt;
    }
    if (filter.text == "\"") {
        filter.text = "\"tank\"";
    }
    return filter;
}

std::vector<CachedJoint> fill(Cache& cache, Chooser& choose, std::int64_t count) {
    std::vector<CachedJoint> joints;
    for (std::int64_t number = 1; number <= count; ++number) {
        joints.push_back(randomJoint(choose, number));
        cache.store(joints.back());
    }
    return joints;
}

TEST(JointCache, AnswersEveryFilterAsGoingThroughAllLinesWould) {
    Chooser choose(3);
    Cache cache;
    const auto joints = fill(cache, choose, 400);
    std::size_t hits = 0;
    for (int i = 0; i < 400; ++i) {
        const JointFilter filter = randomFilter(choose);
        const auto expected = byHand(joints, filter);
        hits += expected.empty() ? 0 : 1;
        ASSERT_EQ(cache.list(filter), expected) << i << " " << filter.text.value_or("-");
        ASSERT_EQ(cache.inPages(filter, 7), expected) << i << " " << filter.text.value_or("-");
    }
    EXPECT_GT(hits, 100U);
}

TEST(JointCache, FindsABeginningThatHundredsOfTermsHave) {
    Chooser choose(4);
    Cache cache;
    const auto joints = fill(cache, choose, 1'300);
    JointFilter filter;
    for (const char* text : {"1", "10", "100", "11", "12", "1299", "5"}) {
        filter.text = text;
        EXPECT_EQ(cache.list(filter), byHand(joints, filter)) << text;
    }
}

TEST(JointCache, TakesWordsThatAreNotPlainAsTheIndexDoes) {
    Cache cache;
    CachedJoint joint;
    joint.line.weld = "weld:1";
    joint.text = "Vélmorra\nStraße 溶接\nO'Brien \"big\"";
    cache.store(joint);
    const auto hits = [&](const char* text) {
        JointFilter filter;
        filter.text = text;
        return cache.list(filter).size();
    };
    for (const char* text : {"vel", "Vél", "VELMORRA", "straß", "溶", "o'b", "\"big\"", "big\""}) {
        EXPECT_EQ(hits(text), 1U) << text;
    }
    for (const char* text : {"elmorra", "brien's", "biggest"}) {
        EXPECT_EQ(hits(text), 0U) << text;
    }
}

TEST(JointCache, FindsAPersonByTheNameThatThePersonGoesBy) {
    Cache cache;
    for (const auto& [weld, id] : {std::pair{"weld:1", "person:ilva"}, {"weld:2", "person:oddo"}}) {
        CachedJoint joint;
        joint.line.weld = weld;
        joint.text = std::string("tank\n") + id;
        cache.store(joint);
    }
    const auto welds = [&](const char* text) {
        JointFilter filter;
        filter.text = text;
        filter.names = {{"person:ilva", "Ilva Borrick-Stein"}, {"person:oddo", "Øddo Varn"}};
        std::string out;
        for (const JointLine& line : cache.list(filter)) {
            out += line.weld.substr(5);
        }
        return out;
    };
    EXPECT_EQ(welds("borr"), "1") << "the name has changed since the id was made";
    EXPECT_EQ(welds("VARN tank"), "2");
    EXPECT_EQ(welds("Ødd"), "2");
    EXPECT_EQ(welds("ilva"), "1") << "the id says so, too";
    EXPECT_EQ(welds("tank"), "21");
    EXPECT_EQ(welds("borr varn"), "");
    EXPECT_EQ(welds("orrick"), "") << "no beginning";
}

TEST(JointCache, NamesEachValueOfAFieldOnce) {
    Chooser choose(6);
    Cache cache;
    EXPECT_TRUE(cachedValues(cache.database(), JointField::Bench).empty());
    const auto joints = fill(cache, choose, 200);
    for (const JointField field :
         {JointField::Bench, JointField::By, JointField::Material, JointField::Verdict}) {
        std::set<std::string> expected;
        for (const CachedJoint& joint : joints) {
            expected.insert(valueOf(joint.line, field));
        }
        EXPECT_EQ(
            cachedValues(cache.database(), field),
            std::vector<std::string>(expected.begin(), expected.end()));
    }
}

TEST(JointCache, NamesTheDaysFromTheNewestOn) {
    Cache cache;
    // Local days: the clock's offset decides in which a joint of the night stands.
    const auto store = [&](std::int64_t utcHour, int offsetHours, int number) {
        CachedJoint joint;
        joint.line.weld = "weld:" + std::to_string(number);
        joint.line.openedUtc = Milliseconds(1'893'974'400'000 + utcHour * 3'600'000);
        joint.line.offset = std::chrono::hours(offsetHours);
        joint.line.day = toIsoDate(joint.line.openedUtc, joint.line.offset);
        cache.store(joint);
    };
    store(0, 0, 1);   // 2030-01-07
    store(1, 0, 2);   // the same
    store(23, 2, 3);  // 2030-01-08
    store(30, -8, 4); // 2030-01-07 again, by a clock further west
    store(60, 0, 5);  // 2030-01-09
    using Days = std::vector<std::string>;
    EXPECT_EQ(cachedDays(cache.database(), 9), (Days{"2030-01-09", "2030-01-08", "2030-01-07"}));
    EXPECT_EQ(cachedDays(cache.database(), 1), (Days{"2030-01-09"}));
    EXPECT_EQ(cachedDays(cache.database(), 9, "2030-01-08"), (Days{"2030-01-07"}));
    EXPECT_EQ(cachedDays(cache.database(), 9, "2030-01-07"), (Days{}));
}

TEST(JointCache, StoresALineAnewInItsPlaceOrAtAnotherInstant) {
    Chooser choose(5);
    Cache cache;
    auto joints = fill(cache, choose, 60);
    for (int i = 0; i < 200; ++i) {
        CachedJoint& one = joints[choose.below(joints.size())];
        const CachedJoint other = randomJoint(choose, one.line.number);
        const std::string weld = one.line.weld;
        one = other;
        one.line.weld = weld;
        cache.store(one);
        if (i % 3 == 0) {
            cache.store(one); // once more changes nothing
        }
    }
    EXPECT_EQ(cache.list({}), byHand(joints, {}));
    EXPECT_EQ(
        cache.database().execAndGet("SELECT count(*) FROM joint_text").getInt(),
        static_cast<int>(joints.size()));
    CachedJoints stored(cache.database());
    for (const CachedJoint& joint : joints) {
        EXPECT_EQ(stored.of(joint.line.weld), joint);
    }
    EXPECT_EQ(stored.of("weld:none"), std::nullopt);
}

} // namespace
} // namespace seamclock
