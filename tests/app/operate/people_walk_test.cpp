// People and the seal by presses, as a shop does it on its first day: a foreman, an operator, a
// weld in her name, the evening. What is told on the way is held against the log as core reads it,
// and no digit of a PIN may be found in anything that a screen or a screen reader could show.
#include "app/operate/people_walk.h"

#include "app/text/words.h"
#include "core/log/log_reader.h"
#include "core/log/verify.h"
#include "core/weld/record.h"
#include "tests/app/operate/demo_shop.h"
#include "tests/app/parts/text_recorder.h"

#include <QAccessible>
#include <QDir>
#include <QFile>
#include <QMetaProperty>
#include <gtest/gtest.h>
#include <set>

namespace seamclock {
namespace {

using std::chrono::minutes;
using std::chrono::seconds;

constexpr const char* kForemansPin = "402917";
constexpr const char* kOperatorsPin = "508316";

/// Everything of that widget that is a text: its properties, what a screen reader is told, and what
/// is painted, without blanks.
QStringList textsOf(QWidget& widget) {
    QStringList texts{widget.objectName()};
    const QMetaObject* meta = widget.metaObject();
    for (int i = 0; i < meta->propertyCount(); ++i) {
        const QVariant value = meta->property(i).read(&widget);
        if (value.userType() == QMetaType::QString) {
            texts << value.toString();
        }
    }
    if (QAccessibleInterface* spokenOf = QAccessible::queryAccessibleInterface(&widget)) {
        for (const auto kind : {QAccessible::Name, QAccessible::Description, QAccessible::Value}) {
            texts << spokenOf->text(kind);
        }
    }
    if (const auto* pad = dynamic_cast<const NumberPad*>(&widget)) {
        texts << pad->text();
    }
    if (widget.isVisible() && !widget.size().isEmpty()) {
        TextRecorder recorder(widget.size());
        widget.render(&recorder, QPoint(), QRegion(), QWidget::RenderFlags());
        texts << recorder.all();
    }
    return texts;
}

int expectNowhere(Window& window, const std::vector<const char*>& pins, const QString& page) {
    int looked = 0;
    QList<QWidget*> widgets = window.findChildren<QWidget*>();
    widgets << &window;
    for (QWidget* widget : widgets) {
        for (QString text : textsOf(*widget)) {
            ++looked;
            for (const char* pin : pins) {
                EXPECT_FALSE(text.remove(QLatin1Char(' ')).contains(pin))
                    << page.toStdString() << ", " << widget->objectName().toStdString();
            }
        }
    }
    return looked;
}

class People : public testing::Test {
protected:
    People() : walk(shop.window(), shop.desk(), shop.clock()) {}

    void foremanAndOperator() {
        ASSERT_TRUE(walk.openWho());
        auto done = walk.firstForeman("Oddo Quenley", kForemansPin);
        ASSERT_TRUE(done) << done.error().detail;
        done = walk.add("Ilva Borrick", Role::Operator, kOperatorsPin);
        ASSERT_TRUE(done) << done.error().detail;
        ASSERT_TRUE(people().isDeskOpen());
        ASSERT_TRUE(walk.press(SlotPlace::Step)); // the desk is left
        EXPECT_FALSE(people().isDeskOpen());
    }
    PeopleFlow& people() { return *shop.window().people(); }
    QString sentence() { return people().pinPage()->view().sentence; }
    const ChoiceView& question() { return people().choicePage()->view(); }
    Weld onlyWeld() {
        EXPECT_TRUE(shop.writer().flush());
        auto reader = LogReader::open(shop.log());
        const auto lines = reader->joints({});
        EXPECT_EQ(lines->size(), 1U);
        return *fold(*reader->weldEvents(lines->front().weld));
    }

    Shop shop;
    PeopleWalk walk;
};

TEST_F(People, FromTheFirstForemanToTheSealThatVerifyFinds) {
    ASSERT_NO_FATAL_FAILURE(foremanAndOperator());
    // With people in the log it is asked who is at the bench, before anything else.
    EXPECT_EQ(shop.window().page(), PageKind::People);
    EXPECT_EQ(question().title, "Who is it?");
    EXPECT_EQ(shop.floor().by(), "station");
    const auto signedIn = walk.signIn("Ilva Borrick", kOperatorsPin);
    ASSERT_TRUE(signedIn) << signedIn.error().detail;
    EXPECT_EQ(shop.window().page(), PageKind::Seams);
    EXPECT_EQ(shop.floor().by(), "person:ilva-borrick");

    Walk weldWalk(shop.window(), shop.floor(), shop.clock());
    const auto welded = weldWalk.goodWeld({});
    ASSERT_TRUE(welded) << welded.error().detail;
    const Weld weld = onlyWeld();
    for (const Event& event : weld.events) {
        EXPECT_EQ(event.by, "person:ilva-borrick") << kindOf(event.d);
    }

    ASSERT_TRUE(walk.openWho());
    ASSERT_TRUE(walk.openDesk(kForemansPin));
    const auto sealed = walk.seal();
    ASSERT_TRUE(sealed) << sealed.error().detail;
    const SealView& shown = people().sealPage()->view();
    const auto verified = verifyLog(shop.log());
    ASSERT_TRUE(verified);
    EXPECT_TRUE(verified->ok) << (verified->finding ? verified->finding->reason : "");
    ASSERT_EQ(verified->seals.size(), 1U);
    EXPECT_EQ(verified->seals[0].person, "person:oddo-quenley");
    EXPECT_EQ(verified->seals[0].day, "2030-01-07");
    EXPECT_EQ(verified->seals[0].fingerprint, shown.groups.join(' ').toStdString());
    EXPECT_EQ(shown.lines.front().text, "1 joint");

    // The report lies where the page says, and holds the same fingerprint.
    const QStringList reports =
        QDir(QString::fromStdString(shop.documents())).entryList(QDir::Files);
    ASSERT_EQ(reports, QStringList{"seamclock-2030-01-07.txt"});
    const QString path = QDir(QString::fromStdString(shop.documents())).filePath(reports.front());
    EXPECT_EQ(shown.sentence, "Saved: " + path);
    QFile report(path);
    ASSERT_TRUE(report.open(QIODevice::ReadOnly));
    const QString text = QString::fromUtf8(report.readAll());
    EXPECT_TRUE(text.contains(shown.groups.join(' '))) << text.toStdString();
    EXPECT_TRUE(text.contains("Oddo Quenley (person:oddo-quenley)")) << text.toStdString();
}

TEST_F(People, AReportNeverWritesOverAnother) {
    ASSERT_NO_FATAL_FAILURE(foremanAndOperator());
    for (int i = 0; i < 2; ++i) {
        ASSERT_TRUE(walk.openWho());
        ASSERT_TRUE(walk.openDesk(kForemansPin));
        ASSERT_TRUE(walk.choose("Seal the day"));
        ASSERT_TRUE(walk.press(SlotPlace::Back)); // the report, unsealed
    }
    const QDir folder(QString::fromStdString(shop.documents()));
    EXPECT_EQ(
        folder.entryList(QDir::Files),
        (QStringList{"seamclock-2030-01-07-2.txt", "seamclock-2030-01-07.txt"}));
}

TEST_F(People, AReportThatCannotBeWrittenIsSaidInOneSentenceWithThePath) {
    QFile taken(QString::fromStdString(shop.documents()));
    ASSERT_TRUE(taken.open(QIODevice::WriteOnly)); // a file where the folder should be
    taken.close();
    ASSERT_NO_FATAL_FAILURE(foremanAndOperator());
    ASSERT_TRUE(walk.openWho());
    ASSERT_TRUE(walk.openDesk(kForemansPin));
    ASSERT_TRUE(walk.choose("Seal the day"));
    ASSERT_TRUE(walk.press(SlotPlace::Back));
    const QString told = people().sealPage()->view().sentence;
    EXPECT_TRUE(told.contains(QString::fromStdString(shop.documents()))) << told.toStdString();
    EXPECT_TRUE(told.contains("can't be")) << told.toStdString();
}

TEST_F(People, ThreeWrongPinsAreWaitedForAndTheWaitIsCountedDown) {
    ASSERT_NO_FATAL_FAILURE(foremanAndOperator());
    ASSERT_TRUE(walk.choose("Ilva Borrick"));
    for (int i = 0; i < 2; ++i) {
        ASSERT_TRUE(walk.givePin("1111"));
        EXPECT_EQ(sentence(), "That PIN is wrong.");
        EXPECT_EQ(people().pinPage()->draft().count(), 0);
    }
    ASSERT_TRUE(walk.givePin("2222"));
    EXPECT_EQ(sentence(), "That PIN is wrong. Next try in 0:30.");
    shop.clock().advance(seconds(12));
    shop.window().refresh();
    EXPECT_EQ(sentence(), "That PIN is wrong. Next try in 0:18.");
    // Neither keys nor the step count meanwhile, and leaving the page does not help.
    walk.type(kOperatorsPin);
    EXPECT_EQ(people().pinPage()->draft().count(), 0);
    ASSERT_TRUE(walk.press(SlotPlace::Stop));
    ASSERT_TRUE(walk.choose("Ilva Borrick"));
    EXPECT_EQ(sentence(), "Too many wrong PINs. Next try in 0:18.");
    EXPECT_TRUE(people().atBench().empty());
    shop.clock().advance(seconds(18));
    shop.window().refresh();
    ASSERT_TRUE(walk.givePin(kOperatorsPin));
    EXPECT_EQ(people().atBench(), "person:ilva-borrick");
}

TEST_F(People, APinIsCheckedWhileTheScreenGoesOn) {
    ASSERT_NO_FATAL_FAILURE(foremanAndOperator());
    ASSERT_TRUE(walk.choose("Ilva Borrick"));
    walk.type(kOperatorsPin);
    emit shop.window().currentPage()->slotPressed(SlotPlace::Step);
    EXPECT_TRUE(shop.desk().isBusy()) << "the press did not wait for the answer";
    EXPECT_EQ(people().pinPage()->view().step.text, "Checking");
    EXPECT_TRUE(people().atBench().empty());
    // Whoever leaves the page meanwhile is not signed in behind his back.
    shop.window().openMenu();
    walk.settle();
    EXPECT_TRUE(people().atBench().empty());
    EXPECT_EQ(shop.window().page(), PageKind::Menu);
}

TEST_F(People, TheDeskClosesWhenItIsLeftAndAfterTwoMinutesWithoutAPress) {
    ASSERT_NO_FATAL_FAILURE(foremanAndOperator());
    ASSERT_TRUE(walk.openDesk(kForemansPin));
    ASSERT_TRUE(people().isDeskOpen());
    shop.clock().advance(seconds(119));
    shop.window().refresh();
    ASSERT_TRUE(walk.choose("Change an entry"));
    shop.clock().advance(seconds(119));
    shop.window().refresh();
    EXPECT_TRUE(people().isDeskOpen()) << "a press keeps it open";
    shop.clock().advance(seconds(1));
    shop.window().refresh();
    EXPECT_FALSE(people().isDeskOpen());
    EXPECT_EQ(shop.window().page(), PageKind::Seams);

    ASSERT_TRUE(walk.openWho());
    ASSERT_TRUE(walk.openDesk(kForemansPin));
    ASSERT_TRUE(people().isDeskOpen());
    shop.window().openDay();
    EXPECT_FALSE(people().isDeskOpen());
}

TEST_F(People, DigitsLeftOnThePadAreWipedAfterTwoMinutes) {
    ASSERT_NO_FATAL_FAILURE(foremanAndOperator());
    ASSERT_TRUE(walk.choose("Ilva Borrick"));
    walk.type("508");
    shop.clock().advance(minutes(2));
    shop.window().refresh();
    EXPECT_EQ(people().pinPage()->draft().count(), 0);
    EXPECT_EQ(people().page(), nullptr);
}

TEST_F(People, AForemansWordOnAPlateStandsInTheRecordInHisName) {
    ASSERT_NO_FATAL_FAILURE(foremanAndOperator());
    ASSERT_TRUE(walk.signIn("Ilva Borrick", kOperatorsPin));
    auto done = walk.toPlate();
    ASSERT_TRUE(done) << done.error().detail;
    // The operator's own PIN is not asked for, and a wrong one changes nothing.
    ASSERT_TRUE(walk.press(SlotPlace::Stop));
    EXPECT_EQ(shop.window().choicePage()->view().title, "The foreman may go on. Why?");
    ASSERT_TRUE(walk.choose("The plate can't be set so"));
    ASSERT_TRUE(walk.givePin("111111"));
    EXPECT_EQ(sentence(), "That PIN is wrong.");
    ASSERT_TRUE(walk.press(SlotPlace::Stop));
    EXPECT_EQ(
        checkAsked(*shop.floor().weld(0), std::get<Preparing>(shop.floor().weld(0)->state)),
        "plate_temperature");

    done = walk.allowPlate(kForemansPin);
    ASSERT_TRUE(done) << done.error().detail;
    const Weld weld = onlyWeld();
    const WeldRecord joint = record(weld);
    const auto passedOver =
        std::find_if(joint.checks.begin(), joint.checks.end(), [](const Retained& check) {
            return std::holds_alternative<CheckOverridden>(check.d);
        });
    ASSERT_NE(passedOver, joint.checks.end());
    EXPECT_EQ(passedOver->by, "person:oddo-quenley");
    const auto& overridden = std::get<CheckOverridden>(passedOver->d);
    EXPECT_EQ(overridden.authority, Authority::Foreman);
    EXPECT_EQ(overridden.check, "plate_temperature");
    EXPECT_EQ(overridden.reason, "cannot_be_set");
    EXPECT_NE(checkAsked(weld, std::get<Preparing>(weld.state)), "plate_temperature");
    // His word was for that one step: the next is hers again.
    shop.clock().advance(seconds(20));
    ASSERT_TRUE(walk.press(SlotPlace::Step));
    EXPECT_EQ(onlyWeld().events.back().by, "person:ilva-borrick");
}

TEST_F(People, ASheetOfAnotherMaterialGoesOnByTheForemansWordAlone) {
    ASSERT_NO_FATAL_FAILURE(foremanAndOperator());
    ASSERT_TRUE(walk.signIn("Ilva Borrick", kOperatorsPin));
    auto done = walk.toPlate();
    ASSERT_TRUE(done) << done.error().detail;
    done = walk.allowPlate(kForemansPin);
    ASSERT_TRUE(done) << done.error().detail;
    const auto asked = [&] {
        const Weld* weld = shop.floor().weld(0);
        return checkAsked(*weld, std::get<Preparing>(weld->state));
    };
    for (int i = 0; i < 12 && asked() != "first_sheet"; ++i) {
        shop.clock().advance(seconds(9));
        ASSERT_TRUE(walk.press(SlotPlace::Step)) << asked();
        if (shop.window().page() == PageKind::Pad) {
            ASSERT_TRUE(walk.press(SlotPlace::Step)) << asked();
        }
    }
    ASSERT_EQ(asked(), "first_sheet");
    EXPECT_EQ(shop.window().weldPage()->view().lamp.under.toStdString(), "batch VP-40713?");
    EXPECT_EQ(shop.window().weldPage()->view().lamp.under2.toStdString(), "is it PE-HD, 15 mm?");
    const std::size_t before = onlyWeld().events.size();
    ASSERT_TRUE(walk.press(SlotPlace::Stop));
    ASSERT_TRUE(walk.choose("It is another material"));
    ASSERT_TRUE(walk.givePin("111111"));
    EXPECT_EQ(sentence(), "That PIN is wrong.");
    EXPECT_EQ(onlyWeld().events.size(), before) << "nothing went on";
    ASSERT_TRUE(walk.givePin(kForemansPin));
    const Weld weld = onlyWeld();
    ASSERT_EQ(weld.events.size(), before + 1);
    EXPECT_EQ(weld.events.back().by, "person:oddo-quenley");
    const auto* remark = std::get_if<RemarkMade>(&weld.events.back().d);
    ASSERT_NE(remark, nullptr);
    EXPECT_EQ(remark->text, kOtherMaterial);
    EXPECT_EQ(asked(), "first_sheet") << "it is still to be clamped";
}

TEST_F(People, WithoutAForemanAPlateOutsideItsWindowOnlyStops) {
    const auto done = walk.toPlate();
    ASSERT_TRUE(done) << done.error().detail;
    ASSERT_TRUE(walk.press(SlotPlace::Stop));
    const ChoiceView& view = shop.window().choicePage()->view();
    EXPECT_TRUE(view.choices.empty());
    EXPECT_EQ(view.back.text, "Stop this weld");
    ASSERT_TRUE(walk.press(SlotPlace::Back));
    EXPECT_EQ(shop.window().choicePage()->view().title, "Stop this weld? Say why.");
    EXPECT_EQ(shop.floor().by(), "person:ilva") << "without people all is as it was";
}

TEST_F(People, OnesOwnPinIsChangedByTheOldOneAndAForgottenOneByAForeman) {
    ASSERT_NO_FATAL_FAILURE(foremanAndOperator());
    ASSERT_TRUE(walk.press(SlotPlace::Back)); // my own PIN
    ASSERT_TRUE(walk.choose("Ilva Borrick"));
    for (const char* pin : {kOperatorsPin, "90210", "90210"}) {
        ASSERT_TRUE(walk.givePin(pin));
    }
    EXPECT_EQ(question().title, "Who is it?");
    ASSERT_TRUE(walk.choose("Ilva Borrick"));
    ASSERT_TRUE(walk.givePin(kOperatorsPin));
    EXPECT_EQ(sentence(), "That PIN is wrong.");
    ASSERT_TRUE(walk.press(SlotPlace::Stop));
    ASSERT_TRUE(walk.openDesk(kForemansPin));
    ASSERT_TRUE(walk.choose("Change an entry"));
    ASSERT_TRUE(walk.choose("Ilva Borrick"));
    ASSERT_TRUE(walk.choose("A new PIN"));
    for (const char* pin : {"7777", "7777"}) {
        ASSERT_TRUE(walk.givePin(pin));
    }
    ASSERT_TRUE(walk.openWho());
    EXPECT_TRUE(walk.signIn("Ilva Borrick", "7777"));
}

TEST_F(People, ANameARoleAndALeavingAreFactsInTheForemansName) {
    ASSERT_NO_FATAL_FAILURE(foremanAndOperator());
    ASSERT_TRUE(walk.openDesk(kForemansPin));
    ASSERT_TRUE(walk.choose("Change an entry"));
    ASSERT_TRUE(walk.choose("Ilva Borrick"));
    ASSERT_TRUE(walk.choose("Another name"));
    people().namePage()->setName("Ilva Borrick-Hale");
    ASSERT_TRUE(walk.press(SlotPlace::Step));
    ASSERT_TRUE(walk.choose("Another role"));
    ASSERT_TRUE(walk.choose("Foreman"));
    for (const char* pin : {"610233", "610233"}) {
        ASSERT_TRUE(walk.givePin(pin));
    }
    EXPECT_EQ(question().title, "Ilva Borrick-Hale");
    ASSERT_TRUE(walk.press(SlotPlace::Stop));
    ASSERT_TRUE(walk.choose("Oddo Quenley"));
    ASSERT_TRUE(walk.choose("Has left"));
    EXPECT_FALSE(people().isDeskOpen()) << "his own desk closes with it";
    ASSERT_TRUE(shop.writer().flush());
    auto reader = LogReader::open(shop.log());
    const auto roster = readRoster(*reader);
    ASSERT_TRUE(roster);
    ASSERT_EQ(roster->people.size(), 2U);
    EXPECT_FALSE(roster->people[0].active);
    EXPECT_EQ(roster->people[1].name, "Ilva Borrick-Hale");
    EXPECT_EQ(roster->people[1].role, Role::Foreman);
    // The last foreman can't leave: it is refused, and said.
    ASSERT_TRUE(walk.openWho());
    ASSERT_TRUE(walk.openDesk("610233"));
    ASSERT_TRUE(walk.choose("Change an entry"));
    ASSERT_TRUE(walk.choose("Ilva Borrick-Hale"));
    ASSERT_TRUE(walk.choose("Has left"));
    EXPECT_TRUE(people().isDeskOpen());
    EXPECT_TRUE(findPerson(people().people().people, "person:ilva-borrick")->active);
}

TEST_F(People, ANameThatCannotBeIsRefusedWhereItIsTyped) {
    ASSERT_TRUE(walk.openWho());
    ASSERT_TRUE(walk.press(SlotPlace::Stop));
    ASSERT_EQ(shop.window().currentPage(), people().namePage());
    people().namePage()->setName("   ");
    ASSERT_TRUE(walk.press(SlotPlace::Step));
    EXPECT_EQ(shop.window().currentPage(), people().namePage());
    EXPECT_TRUE(people().people().people.empty());
}

TEST_F(People, NoPinIsInAnyTextOfTheScreenAtAnyTime) {
    // The walk's own PINs, and the wrong ones that it types.
    const std::vector<const char*> pins{kForemansPin, kOperatorsPin, "118811",
                                        "119911",     "228822",      "337733"};
    int looked = 0;
    std::set<QString> pages;
    const auto done = walk.all([&](const QString& page) {
        pages.insert(page);
        looked += expectNowhere(shop.window(), pins, page);
    });
    ASSERT_TRUE(done) << done.error().detail;
    EXPECT_GE(pages.size(), 20U);
    EXPECT_GT(looked, 10'000);
    // Nor in the log or in any file beside it.
    ASSERT_TRUE(shop.writer().flush());
    const QDir folder = QFileInfo(QString::fromStdString(shop.log())).dir();
    for (const QFileInfo& info : folder.entryInfoList(QDir::Files)) {
        QFile file(info.filePath());
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        EXPECT_FALSE(file.readAll().contains(kForemansPin)) << info.fileName().toStdString();
    }
}

} // namespace
} // namespace seamclock
