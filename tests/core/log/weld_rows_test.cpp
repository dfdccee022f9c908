#include "core/log/weld_rows.h"

#include "core/weld/fold.h"
#include "core/weld/record.h"
#include "tests/support/log_samples.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace seamclock {
namespace {

/// The rows of a chain in batches of so many; what is said of each in one word.
class Chain {
public:
    void add(const std::vector<Event>& events) {
        for (LogRow& row : test::rowsOf(events)) {
            m_bodies.push_back(std::move(row.body));
        }
    }
    void add(const std::string& body) { m_bodies.push_back(body); }

    std::vector<RowNews> read(std::size_t atOnce, bool lines = true) const {
        WeldRows rows(lines);
        std::vector<RowNews> out;
        for (std::size_t from = 0; from < m_bodies.size(); from += atOnce) {
            RowBatch batch(0);
            for (std::size_t i = from; i < std::min(from + atOnce, m_bodies.size()); ++i) {
                batch.add(static_cast<std::int64_t>(i) + 1, m_bodies[i]);
            }
            for (RowNews& news : rows.take(batch)) {
                out.push_back(std::move(news));
            }
        }
        for (RowNews& news : rows.end()) {
            out.push_back(std::move(news));
        }
        return out;
    }

private:
    std::vector<std::string> m_bodies;
};

std::string wordOf(const RowNews& news) {
    const auto at = [](const auto& one) { return " " + std::to_string(one.seq); };
    if (const auto* other = std::get_if<OtherRow>(&news)) {
        return "other" + at(*other);
    }
    if (const auto* begun = std::get_if<WeldBegun>(&news)) {
        return "begun" + at(*begun);
    }
    if (const auto* named = std::get_if<DocumentsNamed>(&news)) {
        return "documents" + at(*named);
    }
    if (const auto* late = std::get_if<WeldLate>(&news)) {
        return "late" + at(*late);
    }
    const auto& folded = std::get<WeldFolded>(news);
    if (const auto* refused = std::get_if<WeldRefused>(&folded)) {
        return "refused" + at(*refused);
    }
    const auto& made = std::get<WeldMade>(folded);
    return (made.soFar ? "over" : "open") + at(made);
}

std::vector<std::string> wordsOf(const std::vector<RowNews>& all) {
    std::vector<std::string> out;
    for (const RowNews& news : all) {
        out.push_back(wordOf(news));
    }
    return out;
}

TEST(WeldRows, TellWhatTheyMakeInTheOrderOfTheRowsHoweverTheyAreCut) {
    const auto first = test::closedWeld(1);
    const auto second = test::abortedWeld(2, "draught");
    const auto one = static_cast<std::int64_t>(first.size());
    const auto two = static_cast<std::int64_t>(second.size());
    Chain chain;
    chain.add(test::stationRow(1).body);
    chain.add(first);
    chain.add("{\"n\":1}");
    chain.add(second);
    chain.add(test::unfinishedWeld(3, 4));
    const auto at = [](const char* word, std::int64_t seq) {
        return std::string(word) + " " + std::to_string(seq);
    };
    const std::vector<std::string> expected = {
        "other 1",
        "documents 2",
        "begun 2",
        at("over", one + 1),
        at("other", one + 2),
        at("documents", one + 3),
        at("begun", one + 3),
        at("over", one + 2 + two),
        at("documents", one + 3 + two),
        at("begun", one + 3 + two),
        at("open", one + 6 + two)};
    for (const std::size_t atOnce : {1U, 2U, 7U, 1000U}) {
        EXPECT_EQ(wordsOf(chain.read(atOnce)), expected) << atOnce;
    }
}

TEST(WeldRows, MakeTheLineThatTheEventsMake) {
    Chain chain;
    chain.add(test::closedWeld(7));
    const auto record = seamclock::record(fold(test::closedWeld(7)).value());
    const auto with = chain.read(3);
    const auto& made = std::get<WeldMade>(std::get<WeldFolded>(with.back()));
    ASSERT_TRUE(made.joint.has_value());
    EXPECT_EQ(made.joint->line, lineOf(record));
    EXPECT_EQ(made.joint->text, textOf(record));
    EXPECT_EQ(made.events, static_cast<std::int64_t>(record.events.size()));
    EXPECT_EQ(made.weld, test::weldName(7));
    const auto without = chain.read(3, false);
    EXPECT_FALSE(std::get<WeldMade>(std::get<WeldFolded>(without.back())).joint.has_value());
}

TEST(WeldRows, NameTheEventThatALiveWeldWouldHaveRefused) {
    auto events = test::closedWeld(1);
    const auto wrong = std::find_if(events.begin(), events.end(), [](const Event& event) {
        return std::holds_alternative<PlateOut>(event.d);
    });
    ASSERT_NE(wrong, events.end());
    wrong->d = FacesMet{};
    const auto seq = wrong - events.begin() + 1;
    Chain chain;
    chain.add(events);
    const auto news = chain.read(5);
    const auto& refused = std::get<WeldRefused>(std::get<WeldFolded>(news.back()));
    EXPECT_EQ(refused.seq, seq);
    EXPECT_EQ(refused.reason, fold(events).error().detail);
}

TEST(WeldRows, LeaveToAnotherReadingWhatComesLateOrOutOfOrder) {
    auto events = test::closedWeld(1);
    Event decision = events.back();
    decision.n += 1;
    decision.d = Decided{Decision::Accept, "looked at"};
    auto swapped = test::closedWeld(2);
    std::swap(swapped[1], swapped[2]);
    swapped.resize(2);
    Chain chain;
    chain.add(events);
    chain.add({decision});
    chain.add(swapped);
    const auto one = static_cast<std::int64_t>(events.size());
    const std::vector<std::string> expected = {
        "documents 1",
        "begun 1",
        "over " + std::to_string(one),
        "late " + std::to_string(one + 1),
        "documents " + std::to_string(one + 2),
        "begun " + std::to_string(one + 2),
        "late " + std::to_string(one + 3)};
    EXPECT_EQ(wordsOf(chain.read(4)), expected);
}

} // namespace
} // namespace seamclock
