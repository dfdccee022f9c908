// Joint after joint on one bench, through the window: what is asked again and what is not, the
// trial joint that comes first, the next of the same kind, and a joint that is cut out and welded
// again. What is on the screen is held against the log as core reads it.
#include "app/operate/series.h"

#include "app/operate/people_walk.h"
#include "app/text/numbers.h"
#include "core/log/log_reader.h"
#include "core/report/set_actual.h"
#include "core/report/wording.h"
#include "core/session/again.h"
#include "core/weld/force_check.h"
#include "core/weld/record.h"
#include "tests/app/operate/demo_shop.h"
#include "tests/support/story.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <set>

namespace seamclock {
namespace {

using std::chrono::milliseconds;
using std::chrono::minutes;
using std::chrono::seconds;

/// As a hand does it, which does not press twice within a blink.
void slot(Shop& shop, SlotPlace place) {
    shop.clock().advance(place == SlotPlace::Step ? milliseconds(350) : milliseconds(0));
    emit shop.window().currentPage()->slotPressed(place);
    shop.window().refresh();
}

const WeldView& viewOf(Shop& shop) {
    shop.window().refresh();
    return shop.window().weldPage()->view();
}

const Weld& weldOf(Shop& shop) {
    return *shop.floor().weld(shop.floor().selected());
}

QStringList cells(const WeldView& view) {
    QStringList names;
    for (const CheckRowView::Cell& cell : view.checks.cells) {
        names << cell.name;
    }
    return names;
}

/// A good weld from the free bench to the saved joint.
void goodWeld(Shop& shop) {
    Walk walk(shop.window(), shop.floor(), shop.clock());
    const auto done = walk.goodWeld({});
    ASSERT_TRUE(done) << done.error().detail;
    ASSERT_TRUE(std::holds_alternative<Closed>(weldOf(shop).state));
}

TEST(Series, TheNextJointOfTheSameKindIsOneTapAway) {
    Shop shop;
    shop.floor().select(1); // its job has two seams of one kind
    ASSERT_NO_FATAL_FAILURE(goodWeld(shop));
    const Weld first = weldOf(shop);
    WeldView view = viewOf(shop);
    ASSERT_TRUE(std::holds_alternative<NextJoint>(view.step.offer))
        << view.step.view.text.toStdString();
    const QString label = view.step.view.text.section(": ", 1);
    EXPECT_FALSE(label.isEmpty());
    EXPECT_NE(label.toStdString(), *first.opened().seam);
    EXPECT_TRUE(std::holds_alternative<LeaveWeld>(view.stop.offer));

    shop.clock().advance(seconds(5));
    slot(shop, SlotPlace::Step);
    ASSERT_EQ(shop.window().page(), PageKind::Trial) << "no trial joint was made";
    shop.window().passTrial();
    const Weld& second = weldOf(shop);
    EXPECT_NE(second.id(), first.id());
    EXPECT_EQ(second.opened().seam, label.toStdString());
    EXPECT_EQ(second.opened().part, "Brine settling tank, 1.4 m across, with weir and lid");
    EXPECT_EQ(second.plan.dragMn, first.plan.dragMn) << "as it was measured";
    EXPECT_EQ(second.plan.thicknessUm, first.plan.thicknessUm);
    EXPECT_EQ(second.opened().flags, std::vector<std::string>{"trial_not_made"});

    // Of fourteen checks nine stand; what is asked is what each joint needs.
    view = viewOf(shop);
    EXPECT_EQ(checksCarried(second).size(), 9U);
    EXPECT_EQ(cells(view).front(), "9 as before");
    EXPECT_EQ(view.checks.cells.size(), 6U);
    EXPECT_EQ(view.drawing.check, "drag");
    EXPECT_EQ(view.lamp.corner, "1 of 5");
    slot(shop, SlotPlace::Step);
    view = viewOf(shop);
    ASSERT_TRUE(std::holds_alternative<MakeSteps>(view.step.offer));
    EXPECT_EQ(std::get<MakeSteps>(view.step.offer).details.size(), 3U) << "one tap for three";
    slot(shop, SlotPlace::Step);
    EXPECT_EQ(viewOf(shop).drawing.check, "edges_meet");
    slot(shop, SlotPlace::Step);
    EXPECT_EQ(viewOf(shop).layout, WeldView::Layout::Phase) << "ready after three presses";
}

/// What was marked on the scale in that weld, in the order of the marks.
std::vector<CheckMade> marks(const Weld& weld) {
    std::vector<CheckMade> all;
    for (const Retained& event : retained(weld.events)) {
        const auto* made = std::get_if<CheckMade>(&event.d);
        if (made != nullptr && isForceMark(*made)) {
            all.push_back(*made);
        }
    }
    return all;
}

/// Presses what is asked until that check is.
void bringTo(Shop& shop, const QString& check) {
    for (int i = 0; i < 30 && viewOf(shop).drawing.check != check; ++i) {
        const Offer& offer = viewOf(shop).step.offer;
        if (const auto* number = std::get_if<AskNumber>(&offer)) {
            ASSERT_TRUE(
                shop.floor().answer(shop.floor().selected(), NumberAnswer{number->what, 210}));
        } else {
            slot(shop, SlotPlace::Step);
        }
        shop.clock().advance(seconds(2));
    }
    ASSERT_EQ(viewOf(shop).drawing.check, check);
}

// Issue 8: force is checked where the set-up is new, with its number and a drawing.
TEST(Series, TheForceIsMarkedInANewSetUpAndStandsInTheRecord) {
    Shop shop;
    shop.window().openNextCard();
    slot(shop, SlotPlace::Step);
    shop.window().passTrial();
    ASSERT_NO_FATAL_FAILURE(bringTo(shop, "drag"));
    const QString place = viewOf(shop).lamp.corner;
    slot(shop, SlotPlace::Step); // as before
    shop.clock().advance(seconds(2));
    const WeldView view = viewOf(shop);
    const WeldPlan plan = weldOf(shop).plan;
    const QString reading = readingText(plan.scale->joining.setMilli, plan.scale->divisionMilli);
    EXPECT_EQ(view.drawing.check, "force");
    EXPECT_EQ(view.lamp.corner, place) << "it is the same check";
    EXPECT_EQ(view.lamp.number, reading);
    EXPECT_EQ(view.lamp.under, QString("joins with %1 N").arg(*plan.joiningMn / 1000));
    EXPECT_TRUE(view.sentence.contains(reading)) << view.sentence.toStdString();
    EXPECT_LE(view.sentence.size(), 56);
    EXPECT_TRUE(cells(view).contains("force"));
    EXPECT_TRUE(marks(weldOf(shop)).empty());
    slot(shop, SlotPlace::Step);
    shop.clock().advance(seconds(2));
    ASSERT_EQ(marks(weldOf(shop)).size(), 1U);
    EXPECT_EQ(marks(weldOf(shop))[0].valueMilli, plan.scale->joining.setMilli);
    EXPECT_TRUE(marks(weldOf(shop))[0].passed);
    EXPECT_EQ(viewOf(shop).drawing.check, "film_off");
    // A wrong tap costs nothing.
    slot(shop, SlotPlace::Back);
    EXPECT_EQ(viewOf(shop).drawing.check, "force");
    slot(shop, SlotPlace::Step);
    // The record has it in words and as a value that was set and done.
    const WeldRecord made = record(weldOf(shop));
    const auto values = setAndActual(made, nullptr);
    const auto marked = std::find_if(values.begin(), values.end(), [](const SetActual& one) {
        return one.item == "marked_reading";
    });
    ASSERT_NE(marked, values.end());
    EXPECT_EQ(marked->actual, marked->set);
    EXPECT_EQ(
        std::count_if(
            values.begin(), values.end(),
            [](const SetActual& one) { return one.item == "drag_reading"; }),
        1)
        << "and is not taken for the drag";
    EXPECT_NE(
        eventInWords(marks(weldOf(shop))[0], plan).find("joining reading marked on the scale"),
        std::string::npos);
}

// It can be gone on without, with a reason; and another drag asks for it in a series, too.
TEST(Series, TheForceIsAskedAgainWhereAnotherDragChangedTheReading) {
    Shop shop;
    ASSERT_NO_FATAL_FAILURE(goodWeld(shop));
    EXPECT_EQ(marks(weldOf(shop)).size(), 1U);
    shop.clock().advance(seconds(5));
    slot(shop, SlotPlace::Stop); // the same again
    shop.window().passTrial();
    ASSERT_EQ(viewOf(shop).drawing.check, "drag");
    const WeldPlan before = weldOf(shop).plan;
    const double division = static_cast<double>(before.scale->divisionMilli) / 1e3;
    const double zero = static_cast<double>(before.scale->zeroMilli) / 1e3;
    ASSERT_TRUE(shop.floor().answer(
        shop.floor().selected(), NumberAnswer{NumberFor::Drag, zero + 6 * division}));
    EXPECT_NE(weldOf(shop).plan.scale->joining.setMilli, before.scale->joining.setMilli);
    EXPECT_EQ(viewOf(shop).drawing.check, "force");
    slot(shop, SlotPlace::Stop); // cannot set it
    ASSERT_EQ(shop.window().page(), PageKind::Reasons);
    emit shop.window().choicePage()->chosen(0);
    EXPECT_EQ(viewOf(shop).drawing.check, "edges_planed") << "film, edges and plate together";
    EXPECT_TRUE(marks(weldOf(shop)).empty());
}

// One seam of the job half as long as the other: the mark on the scale would join it twice as hard.
TEST(Series, TheForceIsAskedAgainWhereAnotherLengthChangedTheReading) {
    Shop shop;
    ASSERT_NO_FATAL_FAILURE(goodWeld(shop));
    const Weld first = weldOf(shop);
    ASSERT_EQ(marks(first).size(), 1U);
    shop.clock().advance(seconds(5));
    const int post = shop.floor().selected();
    const auto open = [&](double share) {
        auto order = shop.floor().sameAgain(post);
        ASSERT_TRUE(order) << order.error().detail;
        order->type = WeldType::Production;
        order->request.lengths = {order->request.lengths.front() * share};
        shop.floor().leave(post);
        ASSERT_TRUE(shop.floor().open(post, *order));
        shop.window().openNextCard(); // no more than: the bench is looked at again
        emit shop.window().hands().bench(post + 1);
        shop.window().refresh();
    };
    ASSERT_NO_FATAL_FAILURE(open(0.5));
    ASSERT_NE(weldOf(shop).plan.scale->joining.setMilli, first.plan.scale->joining.setMilli);
    ASSERT_EQ(viewOf(shop).drawing.check, "drag");
    slot(shop, SlotPlace::Step);
    EXPECT_EQ(viewOf(shop).drawing.check, "force");
    ASSERT_TRUE(shop.floor().answer(
        post, ReasonAnswer{AskReason{ReasonFor::Stop, {}}, "another", "Another reason"}));
    // The same length again has its mark.
    auto order = shop.floor().sameAgain(post);
    ASSERT_TRUE(order);
    order->type = WeldType::Production;
    order->request.lengths = {micrometres(static_cast<double>(first.opened().lengthsUm.front()))};
    shop.floor().leave(post);
    ASSERT_TRUE(shop.floor().open(post, *order));
    shop.clock().advance(seconds(2));
    slot(shop, SlotPlace::Step);
    EXPECT_NE(viewOf(shop).drawing.check, "force") << "nothing else was marked since";
}

// A drag that nobody read is none "as before" for the next joint.
TEST(Series, ADragThatWasLeftOutIsAskedForAgain) {
    Shop shop;
    const int post = shop.floor().selected();
    shop.window().openEntry();
    auto order = [&] {
        Walk walk(shop.window(), shop.floor(), shop.clock());
        const auto done = walk.goodWeld({});
        EXPECT_TRUE(done);
        return shop.floor().sameAgain(post);
    }();
    ASSERT_TRUE(order);
    order->type = WeldType::Production;
    order->request.drag.reset();
    shop.floor().leave(post);
    ASSERT_TRUE(shop.floor().open(post, *order));
    const auto warns = [](const WeldPlan& plan) {
        return std::any_of(plan.warnings.begin(), plan.warnings.end(), [](const auto& one) {
            return one.code == kDragNotMeasured;
        });
    };
    EXPECT_TRUE(warns(weldOf(shop).plan));
    ASSERT_TRUE(shop.floor().answer(
        post,
        ReasonAnswer{AskReason{ReasonFor::CheckLeftOut, "drag"}, "no_tool", "No tool at hand"}));
    // Another temperature of the air makes another plan, and says it still.
    ASSERT_TRUE(shop.floor().answer(post, NumberAnswer{NumberFor::Ambient, 23}));
    EXPECT_TRUE(warns(weldOf(shop).plan));
    const auto next = shop.floor().sameAgain(post);
    ASSERT_TRUE(next);
    EXPECT_FALSE(next->request.drag);
}

TEST(Series, WhoeverWantsToAnswersOneByOneOrChecksAnew) {
    Shop shop;
    ASSERT_NO_FATAL_FAILURE(goodWeld(shop));
    shop.clock().advance(seconds(5));
    slot(shop, SlotPlace::Stop); // the same again
    shop.window().passTrial();
    WeldView view = viewOf(shop);
    EXPECT_FALSE(weldOf(shop).opened().seam);
    ASSERT_TRUE(std::holds_alternative<CheckAnew>(view.back.offer))
        << view.back.view.text.toStdString();
    slot(shop, SlotPlace::Step); // drag
    EXPECT_TRUE(std::holds_alternative<TakeBackLast>(viewOf(shop).back.offer));
    slot(shop, SlotPlace::Stop); // one by one
    for (const char* check : {"film_off", "edges_planed", "plate_wiped", "edges_meet"}) {
        EXPECT_EQ(viewOf(shop).drawing.check, check);
        slot(shop, SlotPlace::Step);
    }
    EXPECT_EQ(viewOf(shop).layout, WeldView::Layout::Phase);
}

TEST(Series, CheckAnewAsksForEverythingThatStood) {
    Shop shop;
    ASSERT_NO_FATAL_FAILURE(goodWeld(shop));
    shop.clock().advance(seconds(5));
    slot(shop, SlotPlace::Stop);
    shop.window().passTrial();
    slot(shop, SlotPlace::Back);
    EXPECT_TRUE(checksCarried(weldOf(shop)).empty());
    EXPECT_EQ(std::get<Preparing>(weldOf(shop).state).openChecks, weldOf(shop).plan.checks);
    EXPECT_EQ(platePlacesRead(weldOf(shop)), 0);
    EXPECT_EQ(viewOf(shop).drawing.check, "plate_warm");
    EXPECT_FALSE(std::holds_alternative<CheckAnew>(viewOf(shop).back.offer));
}

TEST(Series, TwoPressesWithinABlinkSaveOneJointAndOpenNone) {
    Shop shop;
    shop.floor().select(1);
    Walk walk(shop.window(), shop.floor(), shop.clock());
    bool twice = false;
    const auto done = walk.goodWeld([&](const QString& name) {
        if (name == "save") {
            twice = true; // saved; the walk presses once more at the same instant
            emit shop.window().currentPage()->slotPressed(SlotPlace::Step);
            shop.window().refresh();
        }
    });
    ASSERT_TRUE(twice);
    ASSERT_FALSE(done) << "the walk's own press at that instant changed nothing";
    EXPECT_EQ(shop.window().page(), PageKind::Weld);
    EXPECT_TRUE(std::holds_alternative<Closed>(weldOf(shop).state));
}

class TrialJoint : public testing::Test {
protected:
    TrialJoint() : people(shop.window(), shop.desk(), shop.clock()) {}

    void makeTrial() {
        shop.window().openNextCard();
        slot(shop, SlotPlace::Step);
        ASSERT_EQ(shop.window().page(), PageKind::Trial);
        slot(shop, SlotPlace::Step);
        ASSERT_EQ(shop.window().page(), PageKind::Weld);
        ASSERT_EQ(weldOf(shop).opened().type, WeldType::Trial);
        Walk walk(shop.window(), shop.floor(), shop.clock());
        const auto done = walk.fromChecks();
        ASSERT_TRUE(done) << done.error().detail;
        ASSERT_TRUE(std::holds_alternative<Closed>(weldOf(shop).state));
    }
    void foreman() {
        auto done = people.openWho();
        ASSERT_TRUE(done) << done.error().detail;
        done = people.firstForeman("Oddo Quenley", PeopleWalk::kForemansPin);
        ASSERT_TRUE(done) << done.error().detail;
        for (int i = 0; i < 3 && shop.window().page() == PageKind::People; ++i) {
            ASSERT_TRUE(people.press(SlotPlace::Step)); // the desk, and who it is
        }
        ASSERT_NE(shop.window().page(), PageKind::People);
    }
    std::vector<Decided> decisions(const std::string& weld) {
        std::vector<Decided> all;
        EXPECT_TRUE(shop.writer().flush());
        auto reader = LogReader::open(shop.log());
        const auto events = reader->weldEvents(weld);
        for (const Event& event : *events) {
            if (const auto* decided = std::get_if<Decided>(&event.d)) {
                all.push_back(*decided);
                by = event.by;
            }
        }
        return all;
    }

    Shop shop;
    PeopleWalk people;
    std::string by;
};

TEST_F(TrialJoint, IsReleasedByTheForemansPinAndTheSeriesBegins) {
    ASSERT_NO_FATAL_FAILURE(makeTrial());
    const std::string trial = weldOf(shop).id();
    const auto seam = weldOf(shop).opened().seam;
    const WeldView view = viewOf(shop);
    ASSERT_TRUE(std::holds_alternative<AskReason>(view.stop.offer));
    EXPECT_EQ(std::get<AskReason>(view.stop.offer).what, ReasonFor::Trial);
    slot(shop, SlotPlace::Stop);
    EXPECT_TRUE(shop.window().choicePage()->view().choices.empty()) << "nobody could release it";
    slot(shop, SlotPlace::Stop);
    ASSERT_NO_FATAL_FAILURE(foreman());

    slot(shop, SlotPlace::Stop);
    ASSERT_EQ(shop.window().page(), PageKind::Reasons);
    emit shop.window().choicePage()->chosen(0);
    people.settle();
    ASSERT_EQ(shop.window().page(), PageKind::People);
    ASSERT_TRUE(people.givePin(PeopleWalk::kForemansPin));
    EXPECT_EQ(decisions(trial), (std::vector<Decided>{{Decision::Accept, "trial_held"}}));
    EXPECT_NE(by, "station");
    // The seam that the trial was made for is still to be made, and nothing is asked any more.
    ASSERT_TRUE(std::holds_alternative<NextJoint>(viewOf(shop).step.offer))
        << viewOf(shop).step.view.text.toStdString();
    shop.clock().advance(seconds(5));
    slot(shop, SlotPlace::Step);
    EXPECT_EQ(shop.window().page(), PageKind::Weld);
    EXPECT_EQ(weldOf(shop).opened().type, WeldType::Production);
    EXPECT_EQ(weldOf(shop).opened().seam, seam);
    EXPECT_TRUE(weldOf(shop).opened().flags.empty());
}

TEST_F(TrialJoint, NotReleasedIsInTheRecordOfWhatFollows) {
    ASSERT_NO_FATAL_FAILURE(makeTrial());
    const std::int64_t number = weldOf(shop).opened().number;
    shop.clock().advance(seconds(5));
    slot(shop, SlotPlace::Step);
    ASSERT_EQ(shop.window().page(), PageKind::Trial);
    EXPECT_TRUE(shop.window().choicePage()->view().title.contains(QString::number(number)));
    shop.window().passTrial();
    EXPECT_EQ(weldOf(shop).opened().flags, std::vector<std::string>{"trial_not_released"});
}

class Certificates : public TrialJoint {
protected:
    /// Entered at the foreman's desk, and the desk is left.
    void note(const QString& line) {
        ASSERT_TRUE(people.openWho());
        ASSERT_TRUE(people.openDesk(PeopleWalk::kForemansPin));
        ASSERT_TRUE(people.choose("Change an entry"));
        ASSERT_TRUE(people.choose("Oddo Quenley"));
        ASSERT_TRUE(people.choose("Certificate"));
        shop.window().people()->namePage()->setName(line);
        ASSERT_TRUE(people.press(SlotPlace::Step));
        ASSERT_TRUE(people.press(SlotPlace::Stop));
        ASSERT_TRUE(people.press(SlotPlace::Stop));
        ASSERT_TRUE(people.press(SlotPlace::Step));
        for (int i = 0; i < 3 && shop.window().page() == PageKind::People; ++i) {
            ASSERT_TRUE(people.press(SlotPlace::Step));
        }
    }
    /// Who said that it may go on without a certificate.
    std::vector<std::string> remarksBy() {
        std::vector<std::string> all;
        for (const Event& event : weldOf(shop).events) {
            const auto* remark = std::get_if<RemarkMade>(&event.d);
            if (remark != nullptr && remark->text == "certificate_waived") {
                all.push_back(event.by);
            }
        }
        return all;
    }
    void prepareFirst() {
        shop.window().openNextCard();
        slot(shop, SlotPlace::Step);
        people.settle();
    }
};

TEST_F(Certificates, WhereTheShopKeepsThemNobodyWeldsWithoutOneButByTheForemansPin) {
    ASSERT_NO_FATAL_FAILURE(foreman());
    prepareFirst();
    EXPECT_EQ(shop.window().page(), PageKind::Trial) << "none is kept, so none is asked for";
    slot(shop, SlotPlace::Stop);
    ASSERT_NO_FATAL_FAILURE(note("PVDF 3-8 mm until 2031-06-30"));
    EXPECT_EQ(shop.desk().people().certificate.size(), 1U);
    prepareFirst();
    ASSERT_EQ(shop.window().page(), PageKind::People) << "the foreman's PIN";
    ASSERT_TRUE(people.givePin(PeopleWalk::kForemansPin));
    ASSERT_EQ(shop.window().page(), PageKind::Trial);
    shop.window().passTrial();
    const auto& flags = weldOf(shop).opened().flags;
    ASSERT_EQ(flags.size(), 2U);
    EXPECT_EQ(flags[0].rfind("certificate_", 0), 0U) << flags[0];
    EXPECT_EQ(flags[1], "trial_not_made");
    const std::vector<std::string> waived = remarksBy();
    ASSERT_EQ(waived.size(), 1U) << "the foreman's word stands in his name";
    EXPECT_EQ(waived.front().rfind("person:", 0), 0U) << waived.front();
}

TEST_F(Certificates, AnotherPersonAtThePreparedBenchWantsOneToo) {
    ASSERT_NO_FATAL_FAILURE(foreman());
    ASSERT_NO_FATAL_FAILURE(note("PVDF 3-8 mm until 2031-06-30"));
    prepareFirst();
    ASSERT_TRUE(people.givePin(PeopleWalk::kForemansPin));
    shop.window().passTrial();
    slot(shop, SlotPlace::Step);
    ASSERT_EQ(shop.window().page(), PageKind::Weld) << "who opened it goes on";
    ASSERT_TRUE(people.openWho());
    ASSERT_TRUE(people.choose("Oddo Quenley"));
    ASSERT_TRUE(people.givePin(PeopleWalk::kForemansPin));
    ASSERT_EQ(shop.window().page(), PageKind::Weld);
    const std::size_t events = weldOf(shop).events.size();
    shop.clock().advance(seconds(2));
    slot(shop, SlotPlace::Step);
    people.settle();
    ASSERT_EQ(shop.window().page(), PageKind::People) << "his is for PVDF";
    EXPECT_EQ(weldOf(shop).events.size(), events);
    ASSERT_TRUE(people.givePin(PeopleWalk::kForemansPin));
    EXPECT_EQ(remarksBy().size(), 2U);
    shop.clock().advance(seconds(2));
    slot(shop, SlotPlace::Step);
    EXPECT_NE(shop.window().page(), PageKind::People) << "he was let go on";
}

TEST(Reweld, IsLinkedToTheJointCutOutAndSaysWhatWasLost) {
    Shop shop;
    Walk walk(shop.window(), shop.floor(), shop.clock());
    ASSERT_TRUE(walk.toCooling());
    const Weld cut = weldOf(shop);
    ASSERT_TRUE(shop.floor().answer(
        0, ReasonAnswer{AskReason{ReasonFor::Stop, {}}, "sheet_slipped", "A sheet slipped"}));
    slot(shop, SlotPlace::Stop);
    ASSERT_EQ(shop.window().page(), PageKind::Pad);
    EXPECT_EQ(shop.window().padPage()->task().what, NumberFor::LengthLost);
    for (const QChar digit : QString("24")) {
        shop.window().padPage()->pad()->type(digit);
    }
    slot(shop, SlotPlace::Step);
    shop.window().passTrial();
    const WeldOpened& again = weldOf(shop).opened();
    EXPECT_EQ(again.reweldOf, cut.id());
    EXPECT_EQ(again.lostUm, 24'000);
    EXPECT_EQ(again.seam, *cut.opened().seam + "/R1");
    EXPECT_EQ(again.number, cut.opened().number + 1);
    EXPECT_EQ(again.sheets, cut.opened().sheets);
}

TEST(Reweld, MoreOftenThanTheJobAllowsIsInTheRecord) {
    JobSeam seam;
    seam.label = "S3";
    EXPECT_FALSE(reweldsAllowed({seam}, "", "S3/R1")) << "the job does not say";
    seam.rewelds = 1;
    EXPECT_EQ(reweldsAllowed({seam}, "", "S3/R2"), 1);
    EXPECT_FALSE(reweldsAllowed({seam}, "", "S4"));
    Shop shop(
        QSize(1280, 800), {}, std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/demo",
        [](WindowParts& parts) {
            for (JobSeam& one : parts.seams) {
                one.rewelds = 0;
            }
        });
    Walk walk(shop.window(), shop.floor(), shop.clock());
    ASSERT_TRUE(walk.toCooling());
    ASSERT_TRUE(shop.floor().answer(
        0, ReasonAnswer{AskReason{ReasonFor::Stop, {}}, "sheet_slipped", "A sheet slipped"}));
    slot(shop, SlotPlace::Stop);
    shop.window().padPage()->pad()->type('0');
    slot(shop, SlotPlace::Step);
    shop.window().passTrial();
    const auto& flags = weldOf(shop).opened().flags;
    EXPECT_EQ(
        std::set<std::string>(flags.begin(), flags.end()),
        (std::set<std::string>{"rewelds_exceeded", "trial_not_made"}));
}

Weld inspected(std::vector<std::int64_t> lengths, std::optional<std::int64_t> places) {
    WeldOpened opened = test::inventedOpening();
    opened.lengthsUm = std::move(lengths);
    opened.beadPlaces = places;
    test::Story story(opened);
    story.release();
    return story.weld();
}

TEST(BeadPlaces, AreOneASeamOrWhatTheJobAsks) {
    const Weld one = inspected({860'000}, {});
    EXPECT_EQ(beadPlaces(one), 1);
    EXPECT_FALSE(beadPlaceUm(one, 0)) << "the worst place, wherever it is";
    const Weld seams = inspected({400'000, 300'000, 160'000}, {});
    EXPECT_EQ(beadPlaces(seams), 3);
    EXPECT_EQ(beadPlaceUm(seams, 0), 200'000);
    EXPECT_EQ(beadPlaceUm(seams, 1), 550'000);
    EXPECT_EQ(beadPlaceUm(seams, 2), 780'000);
    const Weld asked = inspected({800'000}, 4);
    EXPECT_EQ(beadPlaces(asked), 4);
    EXPECT_EQ(beadPlaceUm(asked, 0), 100'000);
    EXPECT_EQ(beadPlaceUm(asked, 3), 700'000);
    EXPECT_EQ(beadPlaces(inspected({400'000, 460'000}, 1)), 2) << "each seam is judged";
}

TEST(BeadPlaces, WhereTheJobAsksForMoreThanSeamsNoSeamIsLeftOut) {
    const Weld uneven = inspected({100'000, 100'000, 1'000'000}, 4);
    ASSERT_EQ(beadPlaces(uneven), 4);
    EXPECT_EQ(beadPlaceUm(uneven, 0), 50'000);
    EXPECT_EQ(beadPlaceUm(uneven, 1), 150'000);
    EXPECT_EQ(beadPlaceUm(uneven, 2), 450'000) << "the long one has two";
    EXPECT_EQ(beadPlaceUm(uneven, 3), 950'000);
    const Weld even = inspected({400'000, 400'000}, 3);
    EXPECT_EQ(beadPlaceUm(even, 0), 100'000) << "of equal ones the first";
    EXPECT_EQ(beadPlaceUm(even, 1), 300'000);
    EXPECT_EQ(beadPlaceUm(even, 2), 600'000);
    EXPECT_EQ(beadPlaceText(even), "Place 1 of 3, seam 1 at 100 mm: ");
    EXPECT_EQ(beadPlaceText(inspected({800'000}, 4)), "Place 1 of 4, at 100 mm: ");
}

TEST(BeadPlaces, EachIsAskedForAndJudged) {
    WeldOpened opened = test::inventedOpening();
    opened.lengthsUm = {400'000, 460'000};
    test::Story story(opened);
    story.release();
    ViewContext context;
    context.now = story.now();
    WeldView view = weldView(story.weld(), context);
    EXPECT_TRUE(view.sentence.startsWith("Seam 1 of 2: ")) << view.sentence.toStdString();
    story.then(BeadMeasured{200'000, 9'000, 4'000, 800, 200});
    view = weldView(story.weld(), context);
    EXPECT_TRUE(view.sentence.startsWith("Seam 2 of 2: ")) << view.sentence.toStdString();
    story.then(BeadMeasured{630'000, 9'000, 4'000, -100, 200});
    view = weldView(story.weld(), context);
    EXPECT_TRUE(std::holds_alternative<AskReason>(view.step.offer))
        << "the second seam's valley is too low: " << view.sentence.toStdString();
}

} // namespace
} // namespace seamclock
