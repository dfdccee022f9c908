// The window of a first start, and of a shop that has no bench yet: a few pages up to the first
// weld card. It has nothing of its own but the order of the pages: people are entered by the pages
// of people, a bench is kept as Set-up keeps one, each in a foreman's name, numbers are typed on
// the weld's own pad. Each answer is kept before the next is asked. A foreman's proof lives here
// from his entry until two minutes without a press, so that one PIN does for the bench and the
// operator.
#pragma once

#include "app/first/bench_answers.h"
#include "app/first/first_view.h"
#include "app/operate/floor.h"
#include "app/operate/hands.h"
#include "app/operate/pad_page.h"
#include "app/operate/people_flow.h"
#include "app/operate/strip_bar.h"
#include "app/pages/key_ring.h"
#include "app/pages/page_flow.h"
#include "app/setup/setup_flow.h"

#include <QTimer>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace seamclock {

struct FirstParts {
    Floor& floor;
    Desk& desk;
    Preferences preferences;
    QString preferencesFile;
    QString reports;
    std::string demoFolder;
    std::function<Result<void>()> makeDemo; // not on the window's thread
    QString notice{};                       // stands until it was seen; empty: none
};

/// Whether a start leads here: there is no bench, or a first start was not ended.
bool needsFirstSteps(const Floor& floor, const QString& preferencesFile);

class FirstWindow : public QWidget {
    Q_OBJECT

public:
    explicit FirstWindow(FirstParts parts, QWidget* parent = nullptr);
    ~FirstWindow() override;

    Page* currentPage() const { return m_page; }
    ChoicePage* choicePage() const { return m_choice; }
    NamePage* namePage() const { return m_name; }
    PadPage* padPage() const { return m_pad; }
    PeopleFlow* people() const { return m_people; }
    SetupFlow* setup() const { return m_setup; }
    const Preferences& preferences() const { return m_parts.preferences; }
    void setPreferences(const Preferences& preferences);
    FirstState state() const;
    const BenchAnswers& answers() const { return m_answers; }
    QString said() const { return m_said; }
    /// Something went wrong, or well, that is not seen otherwise.
    void say(const QString& text, bool calmly = false);
    /// Paints what stands now, and lets go of what stood too long; the timer does it otherwise.
    void refresh();

signals:
    /// The shop has a bench; the first time a weld card is wanted next.
    void finished(bool card);
    /// The demo shop stands.
    void demoAsked();
    void quitAsked();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    using Press = Presses::Press;
    using Proven = std::function<void(const ProvenPerson&)>;

    void turnTo(Page* page);
    void choose(
        const ChoiceView& view, std::function<void(int)> chosen, Press step, Press stop,
        Press back = {});
    void ask(Page* page, Press step, Press stop, Press back = {});
    void pressed(SlotPlace place);
    void touched();
    PageLook look() const;
    std::vector<Page*> pages() const;
    void applyLook();
    void placeAll();
    void joinPeople();
    void joinSetup();

    void keep(const std::function<void(FirstState&)>& change);
    void goOn();
    void show(FirstStep step);
    void later(FirstStep step);
    void showScreen();
    void showGuide();
    void showOverview();
    void chooseItem(FirstItem item, const Press& back);
    void showShop();
    void showForeman();
    void showOperator();
    void needForeman(FirstStep step);
    void withForeman(const QString& forWhat, const Proven& use);

    void showBench();
    void askBench(BenchQuestion question);
    void askBenchName();
    void askBenchNumber(BenchQuestion question);
    void askBenchChoice(
        const QString& title, const QString& under, const QStringList& answers,
        const std::function<void(int)>& chosen, const QStringList& beside = {});
    void askRelease();
    void answered();
    void showBenchSummary();
    void keepBench();
    void calibrateBench();
    void benchIsKept();
    std::set<std::string> benchIds() const;

    void openDemo(const Press& back);
    void removeDemo(const Press& back);

    FirstParts m_parts;
    Floor& m_floor;
    Hands m_hands;
    KeyRing* m_ring;
    QTimer m_tick;
    Sentence* m_bar;
    AlarmBanner* m_banner;
    ChoicePage* m_choice;
    NamePage* m_name;
    PadPage* m_pad;
    PeopleFlow* m_people;
    SetupFlow* m_setup;
    Page* m_page = nullptr;
    Presses m_presses;
    Press m_redraw; // the page that stands, in another language or with other units
    std::function<void(int)> m_onChosen;

    BenchAnswers m_answers;
    std::optional<ProvenPerson> m_by;
    Milliseconds m_lastPress{0}; // boot time
    QString m_said;
    bool m_saidCalmly = false;
    Milliseconds m_saidAt{0};
};

} // namespace seamclock
