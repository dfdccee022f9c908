// The questions about people, the PIN page and the day's seal as values: what each says, and what
// it does not offer.
#include "app/operate/people_view.h"
#include "app/operate/seal_view.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

Person person(const char* id, const char* name, Role role, bool active = true) {
    return {std::string("person:") + id, name, role, active};
}

DeskPeople shopPeople() {
    DeskPeople people;
    people.people = {
        person("oddo", "Oddo Quenley", Role::Foreman),
        person("ilva", "Ilva Borrick", Role::Operator),
        person("tamsin", "Tamsin Wrey", Role::Trainee),
        person("gone", "Perrin Vale", Role::Operator, false),
        person("nopin", "Sela Marsk", Role::Foreman)};
    people.withPin = {"person:oddo", "person:ilva", "person:gone"};
    return people;
}

TEST(WhoIsIt, OffersWhoIsThereAndLetsNoForemanInWithoutAPin) {
    const PeopleQuestion question = whoQuestion(shopPeople(), "person:ilva");
    ASSERT_EQ(
        question.ids,
        (std::vector<std::string>{"person:oddo", "person:ilva", "person:tamsin", "person:nopin"}));
    ASSERT_EQ(question.page.choices.size(), question.ids.size());
    EXPECT_EQ(question.page.title, "Who is it?");
    EXPECT_EQ(question.page.choices[0].under, "foreman, by PIN");
    EXPECT_TRUE(question.page.choices[1].chosen);
    EXPECT_EQ(question.page.choices[2].under, "trainee");
    EXPECT_FALSE(question.page.choices[3].enabled);
    EXPECT_EQ(question.page.step.text, "Back to the bench");
    EXPECT_EQ(whoQuestion(shopPeople(), "").page.step.text, "Without a name");
}

TEST(WhoIsIt, InALogWithoutPeopleBeginsWithTheFirstForeman) {
    const PeopleQuestion question = whoQuestion({}, "");
    EXPECT_TRUE(question.ids.empty());
    EXPECT_EQ(question.page.stop.text, "First foreman");
    EXPECT_EQ(question.page.back.look, SlotView::Look::Hidden) << "nobody has a PIN to change";
    EXPECT_FALSE(knowsSomebody({}));
    DeskPeople left;
    left.people = {person("gone", "Perrin Vale", Role::Operator, false)};
    EXPECT_FALSE(knowsSomebody(left));
}

TEST(ForemanQuestion, NamesThoseWhoCanProveItAndSaysWhyNobodyCan) {
    EXPECT_EQ(foremanQuestion(shopPeople(), "").ids, (std::vector<std::string>{"person:oddo"}));
    DeskPeople lost = shopPeople();
    lost.withPin.clear();
    const PeopleQuestion nobody = foremanQuestion(lost, "for this");
    EXPECT_TRUE(nobody.ids.empty());
    EXPECT_EQ(nobody.page.title, "No foreman has a PIN on this tablet.");
    EXPECT_TRUE(nobody.page.under.contains("people pin --forgotten"));
}

TEST(ChangeQuestion, KeepsThoseWhoLeftAndSaysWhoHasNoPin) {
    const PeopleQuestion question = changeQuestion(shopPeople());
    ASSERT_EQ(question.ids.size(), 5U);
    EXPECT_EQ(question.page.choices[1].under, "operator");
    EXPECT_EQ(question.page.choices[2].under, "trainee, no PIN");
    EXPECT_EQ(question.page.choices[3].under, "operator, has left");
}

// Several do not fit under a tile: how many, and which ends first.
TEST(PersonPage, SaysWhichCertificatesAreNoted) {
    DeskPeople people = shopPeople();
    const Person ilva = people.people[1];
    const auto told = [&] { return personPage(people, ilva).choices[3].under; };
    EXPECT_EQ(told(), "none noted");
    auto& held = people.certificate[ilva.id];
    note(held, *readCertificate("PP 3-20 mm until 2029-06-30"));
    EXPECT_EQ(told(), "PP 3-20 mm, until 30 Jun 2029");
    note(held, *readCertificate("PE-HD 3-20 mm until 2027-06-30"));
    EXPECT_EQ(told(), "2 noted; the first ends 30 Jun 2027");
}

TEST(PinView, SaysWhatIsMissingWrongOrToBeWaitedFor) {
    PinStage stage;
    stage.title = "PIN of Oddo Quenley";
    stage.step = "Open the desk";
    stage.least = 6;
    PinView view = pinView(stage);
    EXPECT_EQ(view.step.text, "Type it in");
    EXPECT_EQ(view.step.look, SlotView::Look::Waiting);
    EXPECT_EQ(view.back.look, SlotView::Look::Gone) << "there is nothing to erase";
    EXPECT_TRUE(view.sentence.isEmpty());

    stage.digits = 4;
    view = pinView(stage);
    EXPECT_EQ(view.sentence, "4 of at least 6 digits.");
    EXPECT_EQ(view.step.look, SlotView::Look::Waiting);

    stage.digits = 6;
    view = pinView(stage);
    EXPECT_EQ(view.step.text, "Open the desk");
    EXPECT_EQ(view.step.look, SlotView::Look::Act);

    stage.checking = true;
    view = pinView(stage);
    EXPECT_FALSE(view.takesKeys);
    EXPECT_EQ(view.step.text, "Checking");

    stage.checking = false;
    stage.digits = 0;
    stage.wrong = true;
    view = pinView(stage);
    EXPECT_TRUE(view.late);
    EXPECT_TRUE(view.takesKeys);
    EXPECT_EQ(view.sentence, "That PIN is wrong.");

    stage.wait = Milliseconds(29'001);
    view = pinView(stage);
    EXPECT_FALSE(view.takesKeys);
    EXPECT_EQ(view.sentence, "That PIN is wrong. Next try in 0:30.");
    stage.wrong = false;
    EXPECT_EQ(pinView(stage).sentence, "Too many wrong PINs. Next try in 0:30.");
}

SealStage sealStage() {
    SealStage stage;
    stage.day.day = "2030-01-07";
    stage.day.joints = 3;
    stage.day.verdicts = {{"", 1}, {"within limits", 2}};
    return stage;
}

DayClosing::Seal oneSeal() {
    DayClosing::Seal seal;
    seal.by = "Oddo Quenley";
    seal.at.utc = Milliseconds(1'894'032'300'000); // 2030-01-07T16:05Z
    seal.toRow = 214;
    seal.fingerprint = "4f1c 09ab 77e0 1234 5678 9abc def0 0f0f";
    return seal;
}

TEST(SealView, NamesWhatIsOpenAndWhatIsNotOnDiskBeforeItSeals) {
    SealStage stage = sealStage();
    stage.open = {"Joint 12 on bench A"};
    stage.day.notOnDisk = 2;
    const SealView view = sealView(stage);
    ASSERT_EQ(view.lines.size(), 4U);
    EXPECT_EQ(view.lines[0].text, "3 joints");
    EXPECT_EQ(view.lines[0].under, "1 still open, 2 within limits");
    EXPECT_EQ(view.lines[1].text, "Joint 12 on bench A is open");
    EXPECT_EQ(view.lines[2].mark, Mark::Trouble);
    EXPECT_EQ(view.lines[2].text, "2 rows are not on disk yet");
    EXPECT_EQ(view.lines[3].text, "Not sealed yet");
    EXPECT_TRUE(view.groups.isEmpty());
    EXPECT_TRUE(stepSeals(stage));
    EXPECT_EQ(view.step.text, "Seal the day");
}

TEST(SealView, MarksTheDayAsItsWorstJoint) {
    const auto mark = [](std::map<std::string, int> verdicts) {
        SealStage stage = sealStage();
        stage.day.verdicts = std::move(verdicts);
        return sealView(stage).lines.at(0).mark;
    };
    EXPECT_EQ(mark({{"within limits", 2}, {"within limits with remarks", 1}}), Mark::Done);
    EXPECT_EQ(mark({{"", 1}, {"within limits", 2}}), Mark::Open);
    EXPECT_EQ(mark({{"incomplete", 1}, {"within limits", 2}}), Mark::Open);
    EXPECT_EQ(mark({{"incomplete", 1}, {"out of limits", 1}, {"within limits", 1}}), Mark::Late);
}

TEST(SealView, ShowsTheFingerprintInGroupsAndThenTheReportIsTheThingToDo) {
    SealStage stage = sealStage();
    stage.day.seal = oneSeal();
    SealView view = sealView(stage);
    ASSERT_EQ(view.groups.size(), 8);
    EXPECT_EQ(view.groups.front(), "4f1c");
    EXPECT_EQ(view.groups.back(), "0f0f");
    EXPECT_EQ(view.lines.back().text, "Sealed at 16:05 by Oddo Quenley");
    EXPECT_EQ(view.lines.back().under, "rows 1 to 214");
    EXPECT_FALSE(stepSeals(stage));
    EXPECT_EQ(view.step.text, "Save report");
    stage.savedTo = "papers/seamclock-2030-01-07.txt";
    view = sealView(stage);
    EXPECT_EQ(view.sentence, "Saved: papers/seamclock-2030-01-07.txt");
    EXPECT_EQ(view.step.text, "Leave the desk");
    stage.savedTo.clear();
    stage.refused = "the report can't be written";
    EXPECT_EQ(sealView(stage).sentence, stage.refused);
}

TEST(SealView, OffersAnotherSealOnceRowsCameBehindIt) {
    SealStage stage = sealStage();
    stage.day.seal = oneSeal();
    stage.day.behind = 3;
    EXPECT_TRUE(stepSeals(stage));
    const SealView view = sealView(stage);
    EXPECT_EQ(view.step.text, "Seal again");
    EXPECT_EQ(view.lines.back().mark, Mark::Open);
    EXPECT_EQ(view.lines.back().under, "rows 1 to 214; 3 came since");
    stage.working = true;
    EXPECT_EQ(sealView(stage).step.look, SlotView::Look::Waiting);
}

TEST(PinDraft, KeepsTwelveDigitsAtMostAndNothingElse) {
    PinDraft draft;
    EXPECT_FALSE(draft.read()) << "nothing is typed";
    for (const char sign : std::string("12a.-34567890123")) {
        draft.type(QLatin1Char(sign));
    }
    EXPECT_EQ(draft.count(), 12);
    EXPECT_EQ(draft.read()->digits().view(), "123456789012");
    draft.erase();
    EXPECT_EQ(draft.read()->digits().view(), "12345678901");
    draft.clear();
    draft.erase();
    EXPECT_EQ(draft.count(), 0);
}

} // namespace
} // namespace seamclock
