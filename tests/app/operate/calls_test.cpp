// What a person was at when something else called: a number half typed, a signal that was heard and
// then lost, a wheel turned too far and back.
#include "app/operate/strip_bar.h"
#include "core/log/log_reader.h"
#include "core/weld/back_off.h"
#include "tests/app/operate/all_screens.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <thread>

namespace seamclock {
namespace {

using std::chrono::milliseconds;
using std::chrono::seconds;

class Calls : public testing::Test {
protected:
    Calls()
        : shop(
              QSize(1280, 800), {}, std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/demo",
              [this](WindowParts& parts) { parts.sound = &sound; }) {}

    Window& window() { return shop.window(); }
    Floor& floor() { return shop.floor(); }
    const Weld& weld(int post) { return *floor().weld(post); }
    void go(Milliseconds gap) {
        shop.clock().advance(gap);
        window().refresh();
    }
    void slot(SlotPlace place = SlotPlace::Step) {
        shop.clock().advance(milliseconds(350)); // no second contact of the last press
        emit window().currentPage()->slotPressed(place);
        window().refresh();
    }
    void type(const QString& text) {
        for (const QChar digit : text) {
            window().padPage()->pad()->type(digit);
        }
    }
    QString typed() { return window().padPage()->pad()->text(); }
    void toBench(int post) {
        emit window().hands().bench(post + 1);
        window().refresh();
    }
    void open(int post) {
        floor().select(post);
        window().openNextCard();
        slot();
        window().passTrial();
        ASSERT_NE(floor().weld(post), nullptr);
    }
    /// By the bench's own offers, until the check or the phase is asked for.
    void bring(int post, const std::string& until) {
        for (int i = 0; i < 60; ++i) {
            const auto* state = std::get_if<Preparing>(&weld(post).state);
            const std::string now = state != nullptr ? checkAsked(weld(post), *state)
                                                     : std::string(phaseName(weld(post).state));
            if (now == until) {
                window().refresh();
                return;
            }
            shop.clock().advance(seconds(1));
            const auto view = floor().view(post, floor().now(), false, false);
            const auto* number = std::get_if<AskNumber>(&view->step.offer);
            ASSERT_TRUE(
                number == nullptr ? floor().press(post, view->step.offer, view->onto)
                                  : floor().answer(post, NumberAnswer{number->what, 210}));
        }
        FAIL() << "never " << until;
    }

    StageSound sound;
    Shop shop;
};

TEST_F(Calls, ANumberHalfTypedStandsThereWhenItsBenchIsGoneBackTo) {
    ASSERT_NO_FATAL_FAILURE(open(0));
    ASSERT_NO_FATAL_FAILURE(bring(0, "soaking"));
    ASSERT_NO_FATAL_FAILURE(open(1));
    ASSERT_NO_FATAL_FAILURE(bring(1, "plate_temperature"));
    ASSERT_EQ(floor().selected(), 1);
    slot(); // type it in
    ASSERT_EQ(window().page(), PageKind::Pad);
    type("21");
    const auto soak = std::get<Soaking>(weld(0).state);
    go(soak.due.lo - weldTimeAt(weld(0), floor().now())->lo - seconds(9));
    ASSERT_EQ(floor().selected(), 0) << "A calls: get ready";
    ASSERT_EQ(window().page(), PageKind::Weld);
    toBench(1);
    ASSERT_EQ(window().page(), PageKind::Pad);
    EXPECT_EQ(typed(), "21");
    EXPECT_EQ(window().padPage()->task().what, NumberFor::PlateTemperature);
    type("0");
    slot();
    EXPECT_EQ(platePlacesRead(weld(1)), 1);
    // Once taken up it does not come back.
    slot(SlotPlace::Stop);
    toBench(0);
    toBench(1);
    EXPECT_EQ(window().page(), PageKind::Weld);
}

TEST_F(Calls, ANumberThatIsNoMoreAskedForDoesNotStandThere) {
    ASSERT_NO_FATAL_FAILURE(open(0));
    ASSERT_NO_FATAL_FAILURE(bring(0, "soaking"));
    ASSERT_NO_FATAL_FAILURE(open(1));
    ASSERT_NO_FATAL_FAILURE(bring(1, "plate_temperature"));
    slot();
    type("21");
    const auto soak = std::get<Soaking>(weld(0).state);
    go(soak.due.lo - weldTimeAt(weld(0), floor().now())->lo - seconds(9));
    ASSERT_EQ(floor().selected(), 0);
    ASSERT_TRUE(floor().answer(
        1, ReasonAnswer{AskReason{ReasonFor::Stop, {}}, "another", "Another reason"}));
    toBench(1);
    EXPECT_EQ(window().page(), PageKind::Weld);
}

TEST_F(Calls, SheetsThatAreTypedInStandThereAfterAnotherBenchCalled) {
    ASSERT_NO_FATAL_FAILURE(open(0));
    ASSERT_NO_FATAL_FAILURE(bring(0, "soaking"));
    toBench(1);
    ASSERT_EQ(window().page(), PageKind::Seams);
    slot(SlotPlace::Stop); // another seam
    ASSERT_EQ(window().page(), PageKind::Entry);
    auto* entry = dynamic_cast<EntryPage*>(window().currentPage());
    ASSERT_NE(entry, nullptr);
    emit entry->numberAsked(NumberFor::SeamLength);
    ASSERT_EQ(window().page(), PageKind::Pad);
    type("64");
    const auto soak = std::get<Soaking>(weld(0).state);
    go(soak.due.lo - weldTimeAt(weld(0), floor().now())->lo - seconds(9));
    ASSERT_EQ(floor().selected(), 0);
    toBench(1);
    ASSERT_EQ(window().page(), PageKind::Pad);
    EXPECT_EQ(typed(), "64");
    type("0");
    slot();
    EXPECT_EQ(window().page(), PageKind::Entry);
}

TEST_F(Calls, SoundThatIsLostIsAskedForAgainInThisWeldAndTheNext) {
    ASSERT_NO_FATAL_FAILURE(open(0));
    ASSERT_NO_FATAL_FAILURE(bring(0, "drag"));
    sound.ok = false;
    window().refresh();
    EXPECT_EQ(checkAsked(weld(0), std::get<Preparing>(weld(0).state)), "sound_heard");
    sound.ok = true;
    go(seconds(2));
    EXPECT_EQ(window().weldPage()->view().drawing.check, "sound_heard");
    slot();
    EXPECT_EQ(window().weldPage()->view().drawing.check, "drag") << "and on where it was";
    // What was heard on another bench before the loss does not stand there either.
    ASSERT_NO_FATAL_FAILURE(bring(0, "aligning"));
    go(seconds(30));
    sound.ok = false;
    window().refresh();
    EXPECT_TRUE(std::holds_alternative<Aligning>(weld(0).state)) << "a weld that runs goes on";
    sound.ok = true;
    go(seconds(1));
    ASSERT_TRUE(floor().answer(
        0, ReasonAnswer{AskReason{ReasonFor::Stop, {}}, "another", "Another reason"}));
    const auto order = floor().sameAgain(0);
    ASSERT_TRUE(order);
    floor().leave(0);
    ASSERT_TRUE(floor().open(0, *order));
    const std::vector<std::string> carried = checksCarried(weld(0));
    EXPECT_EQ(std::count(carried.begin(), carried.end(), "sound_heard"), 0);
    EXPECT_EQ(std::count(carried.begin(), carried.end(), "scale_zero"), 1);
    // The station's own word stands in the log.
    ASSERT_TRUE(shop.writer().flush());
    auto reader = LogReader::open(shop.log());
    ASSERT_TRUE(reader);
    const std::vector<std::string> said = reader->bodies("station").value();
    int lost = 0;
    int back = 0;
    for (const std::string& body : said) {
        lost += body.find("\"kind\":\"sound_lost\"") != std::string::npos ? 1 : 0;
        back += body.find("\"kind\":\"sound_back\"") != std::string::npos ? 1 : 0;
    }
    EXPECT_EQ(lost, 2);
    EXPECT_EQ(back, 2);
}

TEST_F(Calls, SoundThatNeverWasThereIsNotLost) {
    StageSound silent;
    silent.ok = false;
    Shop other(
        QSize(1280, 800), {}, std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/demo",
        [&silent](WindowParts& parts) { parts.sound = &silent; });
    other.window().refresh();
    silent.ok = true;
    other.window().refresh();
    ASSERT_TRUE(other.writer().flush());
    auto reader = LogReader::open(other.log());
    ASSERT_TRUE(reader);
    const std::vector<std::string> said = reader->bodies("station").value();
    ASSERT_FALSE(said.empty());
    for (const std::string& body : said) {
        EXPECT_EQ(body.find("sound_"), std::string::npos) << body;
    }
}

TEST_F(Calls, AWheelTurnedTooFarAndBackIsNamedAndCanBeTakenBack) {
    ASSERT_NO_FATAL_FAILURE(open(0));
    ASSERT_NO_FATAL_FAILURE(bring(0, "aligning"));
    go(seconds(12));
    const auto& stop = window().weldPage()->view().stop;
    EXPECT_TRUE(stop.view.under.contains("too far")) << stop.view.under.toStdString();
    slot(SlotPlace::Stop);
    ASSERT_EQ(window().page(), PageKind::Reasons);
    slot(SlotPlace::Back);
    ASSERT_EQ(window().page(), PageKind::Pad);
    const double high = static_cast<double>(weld(0).plan.scale->alignment.highMilli) / 1e3;
    type(QString::number(std::floor(high)));
    EXPECT_EQ(window().padPage()->now().outcome, NumberOutcome::None) << "that is not too far";
    window().padPage()->pad()->setText({});
    type(QString::number(std::ceil(high) + 2));
    slot();
    ASSERT_EQ(window().page(), PageKind::Weld);
    EXPECT_TRUE(std::holds_alternative<Aligning>(weld(0).state));
    EXPECT_EQ(window().weldPage()->view().lamp.under2, "backed off after overshoot");
    const auto named = backOffIn(retained(weld(0).events), weld(0).plan);
    ASSERT_TRUE(named);
    EXPECT_EQ(named->overMilli, std::llround((std::ceil(high) + 2) * 1e3));
    EXPECT_EQ(named->backMilli, weld(0).plan.scale->alignment.setMilli);
    go(seconds(2));
    slot(SlotPlace::Back); // take back
    EXPECT_FALSE(backOffIn(retained(weld(0).events), weld(0).plan));
    EXPECT_TRUE(std::holds_alternative<Aligning>(weld(0).state));
}

/// contracts.md, rank 7: row_not_saved sounds once and stands until it is seen.
TEST_F(Calls, AStepThatIsNotOnDiskIsHeardAndSeenUntilSomebodyHasSeenIt) {
    ASSERT_NO_FATAL_FAILURE(open(0));
    ASSERT_NO_FATAL_FAILURE(bring(0, "film_off"));
    static_cast<void>(shop.writer().flush());
    const auto heard = [this] {
        const std::vector<StationCue> cues = floor().shift().station;
        return std::any_of(cues.begin(), cues.end(), [](const StationCue& cue) {
            return cue.kind == CueKind::RowNotSaved;
        });
    };
    window().refresh();
    EXPECT_FALSE(heard());
    auto held = shop.heldDisk();
    slot(); // on disk still, and from then on the writer waits
    while (floor().unsaved(weld(0)).rows > 0) {
        std::this_thread::yield();
    }
    slot();
    ASSERT_GT(floor().unsaved(weld(0)).rows, 0);
    go(milliseconds(1'900));
    EXPECT_FALSE(heard()) << "a disk may take that long";
    go(milliseconds(200));
    EXPECT_TRUE(heard());
    auto* const banner = window().findChild<AlarmBanner*>();
    EXPECT_TRUE(banner->isVisible());
    emit banner->pressed();
    window().refresh();
    EXPECT_FALSE(heard()) << "seen is seen";
    slot();
    ASSERT_GT(floor().unsaved(weld(0)).rows, 1);
    go(milliseconds(2'100));
    EXPECT_TRUE(heard()) << "but not what came after it";
    emit banner->pressed();
    window().refresh();
    EXPECT_FALSE(heard());
    held.unlock();
    static_cast<void>(shop.writer().flush());
    window().refresh();
    EXPECT_FALSE(heard());
}

/// Each row has its own two seconds, also where no look at the writer falls between two of them.
TEST_F(Calls, RowsThatFollowEachOtherQuicklyAreNoneThatWaits) {
    ASSERT_NO_FATAL_FAILURE(open(0));
    ASSERT_NO_FATAL_FAILURE(bring(0, "film_off"));
    const auto heard = [this] {
        const std::vector<StationCue> cues = floor().shift().station;
        return std::any_of(cues.begin(), cues.end(), [](const StationCue& cue) {
            return cue.kind == CueKind::RowNotSaved;
        });
    };
    for (int i = 0; i < 3; ++i) {
        ASSERT_TRUE(shop.writer().flush());
        const auto held = shop.heldDisk();
        slot();
        while (floor().unsaved(weld(0)).rows > 0) {
            std::this_thread::yield();
        }
        slot();
        ASSERT_EQ(floor().unsaved(weld(0)).rows, 1);
        go(milliseconds(1'500));
        EXPECT_FALSE(heard()) << i;
    }
}

/// contracts.md, rank 7: clock_jumped, likewise; also without a weld.
TEST_F(Calls, AClockThatWasSetIsHeardAndSeenUntilSomebodyHasSeenIt) {
    const auto heard = [this] {
        const std::vector<StationCue> cues = floor().shift().station;
        return std::any_of(cues.begin(), cues.end(), [](const StationCue& cue) {
            return cue.kind == CueKind::ClockJumped;
        });
    };
    auto* const banner = window().findChild<AlarmBanner*>();
    shop.clock().setWallClock(milliseconds(2'000));
    go(seconds(1));
    EXPECT_FALSE(heard()) << "two seconds are no jump";
    ASSERT_NO_FATAL_FAILURE(open(0));
    shop.clock().setWallClock(std::chrono::minutes(-61));
    go(seconds(1));
    EXPECT_TRUE(heard());
    EXPECT_TRUE(banner->isVisible());
    EXPECT_EQ(banner->text(), "Clock was set 61 min back. No time of a weld changed.");
    const auto isJump = [](const Event& event) {
        return std::holds_alternative<ClockJumped>(event.d);
    };
    const auto& events = weld(0).events;
    EXPECT_EQ(std::count_if(events.begin(), events.end(), isJump), 1);
    ASSERT_TRUE(shop.writer().flush());
    go(std::chrono::minutes(5));
    EXPECT_TRUE(heard()) << "until somebody has seen it";
    // Behind what is worse it goes on, and that one's \"Seen\" is not its own.
    sound.ok = false;
    window().refresh();
    EXPECT_TRUE(banner->text().startsWith("No sound")) << banner->text().toStdString();
    emit banner->pressed();
    EXPECT_TRUE(heard());
    EXPECT_TRUE(banner->text().startsWith("Clock was set")) << banner->text().toStdString();
    emit banner->pressed();
    window().refresh();
    EXPECT_FALSE(heard()) << "seen is seen";
    EXPECT_FALSE(banner->isVisible());
    shop.clock().setWallClock(std::chrono::minutes(61));
    go(seconds(1));
    EXPECT_TRUE(heard()) << "the next one is another";
}

} // namespace
} // namespace seamclock
