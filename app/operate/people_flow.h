// People, PINs and the day's seal on the screen: which of its pages stands, and what a press does.
// The window shows page() while this is open and hands it every press. What changes the log goes
// through the desk, off this thread, so that the clocks of the welds go on; a result that comes
// when its page was left is dropped. A foreman's proof lives while his pages stand: it goes when
// they are left, and after two minutes without a press.
#pragma once

#include "app/operate/floor.h"
#include "app/operate/people_view.h"
#include "app/operate/pin_page.h"
#include "app/operate/seal_page.h"
#include "app/pages/desk.h"
#include "app/pages/page_flow.h"

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <utility>

namespace seamclock {

inline constexpr Milliseconds kDeskStaysOpen{120'000};

class PeopleFlow : public PageFlow {
    Q_OBJECT

public:
    /// All must outlive it; its pages become children of `window`. `reports`: the folder into which
    /// day reports go.
    PeopleFlow(Desk& desk, Floor& floor, QString reports, QWidget* window);

    std::vector<Page*> pages() const { return {m_choice, m_pin, m_name, m_seal}; }
    ChoicePage* choicePage() const { return m_choice; }
    PinPage* pinPage() const { return m_pin; }
    NamePage* namePage() const { return m_name; }
    SealPage* sealPage() const { return m_seal; }
    const DeskPeople& people() const { return m_desk.people(); }
    bool isDeskOpen() const { return m_access != nullptr; }

    /// The id of who is at the bench; empty: nobody was chosen.
    const std::string& atBench() const { return m_atBench; }
    /// Whether the log knows people and nobody was asked yet who it is.
    bool mustAsk() const;

    /// Whether who is at the bench may weld that sheet by his certificate, today.
    CertificateState certificate(std::string_view material, std::int64_t thicknessUm) const;

    void openWho();
    /// A foreman proves himself for one step: `then` gets his proof, which is not kept. `forWhat`
    /// stands below the question.
    void askForeman(const QString& forWhat, std::function<void(const ProvenPerson&)> then);
    /// A foreman proves himself for the page of the day's seal, and for that alone: it leads back
    /// to where he came from.
    void openSeal();
    /// A first start enters the two who are needed, without the desk. `meaning` says what it means
    /// to do it later. Nothing stands any more when one of the two is called: `then`, with the
    /// foreman's proof, or `later`.
    void enterFirstForeman(
        const QString& meaning, const std::function<void(const ProvenPerson&)>& then,
        const std::function<void()>& later);
    void enterOperator(
        const ProvenPerson& by, const QString& meaning, const std::function<void()>& then,
        const std::function<void()>& later);
    /// Of the demo shop, where they are no secret: they stand where they are asked for, by person.
    void showPins(std::map<std::string, QString> pins) { m_shownPins = std::move(pins); }
    /// The page is left: proofs and digits go.
    void close();
    /// With the window's timer: counts down, and closes what was left alone.
    void look(const Instant& now);
    void typed(QChar sign);
    void erased();
    /// The keyboard's focus goes where it belongs on the page that stands.
    void takeKeys();

signals:
    /// It closed itself; back to the bench.
    void left();

private:
    using PinThen = std::function<void(const HeldPin&)>;

    void turning(Page* next) override;
    bool takesPress(SlotPlace place) override;
    void touched();
    void leave();

    void askName(const QString& title, const QString& now, Press stop);
    void askPin(const PinStage& stage, PinThen then, Press stop);
    void takePin();
    void showPin();
    void enter(
        const Person& person, const QString& where, const QString& step,
        std::function<void(const Proof&, const HeldPin&)> then, Press stop);
    void freshPin(const QString& name, Role role, PinThen then, const Press& stop);
    void freshPinAgain(
        const QString& name, Role role, const HeldPin& first, PinThen then, const Press& stop);

    void choosePerson(const std::string& id);
    void setAtBench(const std::string& id);
    void ownPin();
    void ownPinOf(const Person& person);
    void openDesk();
    void firstForeman();
    void askFirstForeman(const Press& stop, const std::function<void(const Proof&)>& then);
    void meanLater(const QString& meaning);
    void showDesk();
    void addSomebody();
    void addNamed(const QString& name);
    void addWith(const QString& name, Role role, const HeldPin& pin);
    void
    add(const ProvenPerson& by, const QString& name, Role role, const HeldPin& pin,
        const std::function<void(const Result<Person>&)>& then);
    void changeList();
    void changePerson(const std::string& id);
    void renamePerson(const Person& person);
    void changeRole(const Person& person);
    void newPin(const Person& person);
    void noteCertificate(const Person& person);
    void store(const Person& changed, const HeldPin& pin);
    void showDay(bool fromLog);
    void drawDay();
    void sealDay();
    void saveReport();

    Desk& m_desk;
    Floor& m_floor;
    QString m_reports;
    ChoicePage* m_choice;
    PinPage* m_pin;
    NamePage* m_name;
    SealPage* m_seal;

    PinStage m_stage;
    PinThen m_onPin;
    Milliseconds m_waitUntil{0}; // boot time
    SealStage m_day;
    Proof m_access;
    Milliseconds m_lastPress{0}; // boot time
    std::string m_atBench;
    bool m_asked = false;
    std::map<std::string, QString> m_shownPins;
};

} // namespace seamclock
