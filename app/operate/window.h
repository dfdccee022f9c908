// The one window: which page stands, and which press goes where. It owns the pages and a timer that
// repaints; the floor owns the welds. Nothing waits for a dialog: every question is a page, and the
// strip with all benches stays above it.
//
// Its functions stand by what they are for: window.cpp which page stands and what it is painted of,
// window_presses what a press does, window_bench which bench has the screen, window_alarms what
// sounds, window_card from a seam to its card, window_series from the card to the next joint, and
// window_rooms the rooms beside the welds.
#pragma once

#include "app/daylog/daylog_flow.h"
#include "app/guide/guide_flow.h"
#include "app/operate/card_page.h"
#include "app/operate/entry_page.h"
#include "app/operate/floor.h"
#include "app/operate/hands.h"
#include "app/operate/job_seams.h"
#include "app/operate/pad_page.h"
#include "app/operate/people_flow.h"
#include "app/operate/photo.h"
#include "app/operate/preferences.h"
#include "app/operate/questions.h"
#include "app/operate/series.h"
#include "app/operate/strip_bar.h"
#include "app/operate/weld_page.h"
#include "app/pages/choice_page.h"
#include "app/pages/key_ring.h"
#include "app/parts/stripes.h"
#include "app/setup/heat_page.h"
#include "app/setup/setup_flow.h"
#include "app/shop/shop_flow.h"
#include "core/copies/log_keeper.h"
#include "core/shift/hands.h"

#include <QTimer>
#include <functional>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace seamclock {

/// What sounds, for the window: the horn, or nothing in a test.
class SoundLink {
public:
    virtual ~SoundLink() = default;
    virtual void show(const Shift& shift) = 0;
    virtual bool soundOk() const = 0;
};

/// What keeps the tablet awake and knows its battery, for the window; nothing in a test.
class PowerLink {
public:
    enum class Awake { Off, Whole, ScreenMayGoDark, TabletMaySleep, No };

    virtual ~PowerLink() = default;
    virtual void hold(bool weldRuns) = 0;
    virtual Awake awake() const = 0;
    virtual bool batteryLow() const = 0;
    virtual int batteryPercent() const = 0;
};

struct WindowParts {
    Floor& floor;
    LogWriterBase& writer;
    Desk& desk;
    std::vector<JobSeam> seams;
    Preferences preferences;
    QString preferencesFile;           // empty: the user's own
    SoundLink* sound = nullptr;        // null: no horn was asked for
    const LogKeeper* keeper = nullptr; // null: nobody makes copies of the log
    QString notice{};                  // stands from the start until it was seen; empty: none
    QString reports{};                 // the folder of reports and cards, where files are read from
    PowerLink* power = nullptr;        // null: nobody keeps the tablet awake
    QStringList photos{};              // folders of the tablet's camera
    PaperWork work{};                  // of the job, as it stands on papers
    std::map<std::string, QString> demoPins{}; // of the demo shop's people; empty: this is none
    GuideFlow::Read readGuide{};               // empty: there is none
};

enum class PageKind {
    Seams,
    Entry,
    Card,
    Weld,
    Pad,
    Reasons,
    Menu,
    Day,
    Procedures,
    Pedal,
    People,
    Setup,
    Shop,
    Heat,
    Guide,
    Trial, // whether a series may begin
    Closer,
    Photos
};

class Window : public QWidget {
    Q_OBJECT

public:
    explicit Window(WindowParts parts, QWidget* parent = nullptr);
    ~Window() override;

    PageKind page() const { return m_kind; }
    Page* currentPage() const { return m_page; }
    WeldPage* weldPage() const { return m_weld; }
    PadPage* padPage() const { return m_pad; }
    ChoicePage* choicePage() const { return m_choice; }
    PeopleFlow* people() const { return m_people; }
    SetupFlow* setup() const { return m_setup; }
    DayLogFlow* dayLog() const { return m_dayLog; }
    ShopFlow* shop() const { return m_shop; }
    GuideFlow* guide() const { return m_guide; }
    HeatPage* heatPage() const { return m_heat; }
    /// Nothing of the card is still being worked out.
    bool isCardWhole() const { return !m_shown.course || m_shown.heat; }
    const Preferences& preferences() const { return m_parts.preferences; }
    void setPreferences(const Preferences& preferences);
    /// Paints what stands now, at once; the timer does it otherwise.
    void refresh();
    /// As the status tile does.
    void openMenu();
    void openDay();
    /// What if: the heat in the sheet by the plan of the weld on this bench, or of the seam that
    /// was chosen last. Not while a joint cools: a temperature would argue for an early release.
    void openHeat();
    /// The user guide; not over a changeover or a build-up.
    void openHelp();
    /// Asks for the practice bench; refused while a weld is open.
    void openPractice();
    /// A seam that no job names: the page on which it is typed in.
    void openEntry();
    /// Asks for the pages of a first start; refused while a weld is open.
    void openFirstSteps();
    /// The first seam of the job that this bench has not made yet, on its card.
    void openNextCard();
    /// Answers the question after a trial joint, if it stands: goes on without one.
    void passTrial();
    Hands& hands() { return m_hands; }
    /// Something went wrong.
    void say(const QString& text);
    /// Something went well that is not seen otherwise.
    void sayCalmly(const QString& text);

signals:
    void quitAsked();
    /// A trainee wants to practise, and no weld is open on any bench.
    void practiceAsked();
    void firstStepsAsked();
    /// The demo shop was looked at enough, and may be taken away if `removed`.
    void demoLeft(bool removed);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void turnTo(PageKind kind);
    void goToBench(int post);
    void comeForward(const Instant& now);
    void come(int post, const Instant& now);
    void layNumberAside();
    void takeUpNumber(int post);
    bool isFirst(int cell);
    bool isStopAsked() const;
    bool callsAway(const Instant& now) const;
    bool handsAreCalled(const Instant& now) const;
    void tell(const QString& text, bool calmly);
    void slotPressed(SlotPlace place);
    void stepPressed();
    void benchKey(int place);
    void escaped();
    void pressStep(const Slot& slot, std::int64_t onto);
    void weldSlot(const Slot& slot, std::int64_t onto);
    void reasonsBack();
    void told(const Result<void>& done);
    void choose(int index);
    void showSeams();
    void readSeams(const Instant& now);
    void chooseSeam(int index);
    void cutOutToCard(double lostMm);
    void flagRewelds(WeldOrder& order);
    void showCard();
    void askCardHeat();
    void drawCard();
    void printCard();
    void prepare();
    void begin(WeldOrder order);
    void askTrial(const WeldOrder& order);
    void openNow(WeldOrder order, TrialState trial);
    std::string_view certificateFlag(std::string_view material, std::int64_t thicknessUm) const;
    void askCertificate(
        std::string_view material, std::int64_t thicknessUm, std::string_view flag,
        std::function<void(const ProvenPerson&)> then);
    bool mayGoOn(const Weld& weld);
    void nextJoint();
    void weldAgain(double lostMm);
    void showTrial();
    void chooseTrial(int index);
    void askTrialDecision(const ReasonAnswer& answer);
    void lookCloser();
    void chooseCloser(int index);
    void keepPhotoOf(int index);
    void showEntry();
    void entryToCard();
    void askEntryNumber(NumberFor what, bool another);
    void askNumber(const NumberTask& task);
    void keepNumber();
    void askReason(const AskReason& asked);
    void showMenu();
    void chooseMenu(MenuItem item);
    void chooseProcedure(int index);
    void joinPeople();
    void joinSetup();
    void askForeman(const ReasonAnswer& answer);
    void askWho();
    std::vector<Page*> pages() const;
    void joinDayLog();
    void joinGuide();
    DayLogShop dayLogShop();
    bool isDemo() const { return !m_parts.demoPins.empty(); }
    void joinShop();
    ShopRoom shopRoom();
    void takeUpSeams();
    bool isDayPage() const { return m_kind == PageKind::Day && m_page == m_dayLog->dayPage(); }
    void placeAll();
    PageLook look() const;
    void applyLook();
    void sound();
    void trySound(const Instant& now);
    void watchSound();
    void power();
    QString awakeText() const;
    void alarms(const Instant& now);
    void alarmSeen();
    void offerNext();
    QString copyTrouble() const;
    std::optional<Milliseconds> coolingLeft() const;
    QString meanwhile(int post) const;

    WindowParts m_parts;
    Floor& m_floor;
    std::vector<JobSeam> m_job;               // that of the file, and those the log keeps
    JobSeams m_seams;                         // made or not as last read
    std::optional<Milliseconds> m_seamsAsked; // again, since they could not be read
    Hands m_hands;
    QTimer m_tick;
    StripBar* m_strip;
    AlarmBanner* m_banner;
    QRect m_bannerOnWeld;
    QWidget* m_frame; // the standing alarm's
    KeyRing* m_ring;
    StripedFrame* m_stripes = nullptr; // of practice; null: this is none
    WeldPage* m_weld;
    CardPage* m_card;
    ChoicePage* m_choice;
    PadPage* m_pad;
    EntryPage* m_entry;
    PeopleFlow* m_people;
    HeatPage* m_heat;
    HeatWorker* m_heatWorker; // for the card
    SetupFlow* m_setup;
    DayLogFlow* m_dayLog;
    ShopFlow* m_shop;
    GuideFlow* m_guide;
    Page* m_page = nullptr;
    PageKind m_kind = PageKind::Seams;
    PageKind m_before = PageKind::Weld; // where a closed page leads
    PageKind m_afterWho = PageKind::Weld;

    std::vector<JobSeam> m_offered; // seams of the page that stands
    std::optional<WeldOrder> m_order;
    QString m_orderName;
    std::optional<WeldOrder> m_cutOut; // of the job's list, while its lost length is asked
    struct Shown { // on the card's page, so that what is printed is what was seen
        WeldPlan plan;
        Bench bench;
        QString letter;
        QString seam;
        std::vector<Sheet> sheets;
        bool opened = false;              // its weld is
        std::optional<HeatCourse> course; // that an estimate is asked of
        std::optional<HeatEstimate> heat; // when it has come
    } m_shown;
    EntryDraft m_draft;
    bool m_addsLength = false; // to those of m_draft
    AskReason m_asked;
    Reasons m_reasons;
    TrialFinding m_trial;                   // of m_order
    std::optional<ProvenPerson> m_waivedBy; // of m_order's certificate, until it is opened
    // Weld and person that a foreman let go on without a valid certificate.
    std::set<std::pair<std::string, std::string>> m_waived;
    TrialQuestion m_trialAsked;
    Closer m_closer;
    QStringList m_photos;
    Menu m_menu;
    // By bench: the call for hands that the screen has come forward for, or that was seen.
    std::vector<HandsCall> m_answered;
    std::optional<Milliseconds> m_cameAt; // by itself
    struct HalfTyped {
        std::string weld; // that stood there; empty: none
        NumberTask task;
        QString text;
        PageKind before = PageKind::Weld;
        std::optional<WeldOrder> cutOut;
    };
    std::map<int, HalfTyped> m_typed; // by bench
    static constexpr int kStatusCell = -1;
    struct HeldBack {
        int cell = 0; // that was pressed; kStatusCell: the clock's tile
        Milliseconds at{0};
    };
    std::optional<HeldBack> m_heldBack; // while another bench had both hands
    QString m_said;
    bool m_saidCalmly = false;
    Milliseconds m_saidAt{0};
    std::optional<Milliseconds> m_triedAt; // the signal that a person is asked to hear
    bool m_soundWas = false;               // there, when last looked
    bool m_soundLost = false;
    bool m_soundSeen = false;
    bool m_batterySeen = false;
    enum class Alarm { None, Notice, NotSaved, NoSound, Battery, Clock, Said, Copy };
    Alarm m_alarm = Alarm::None;             // that the banner shows
    std::optional<Milliseconds> m_steppedAt; // the last press of a step that did something
    QString m_copySeen;
    std::optional<Milliseconds> m_unsavedSeen; // rows made until then wait without a word
    bool m_memoryOnly = false;                 // not even the spill file takes them
};

} // namespace seamclock
