// The trainee's window, over the operator's until it is left: which page stands, which press goes
// where, and the timer that leads process time on. The weld is made by the operator's own offers;
// the six controls are the bench's (trainee_hand.h). Lessons and what stands beside a weld are in
// practice_pages.cpp, result, replay and history in practice_past.cpp. While a lesson runs, every
// page but the one that ends it leaves time going on, as at a real bench.
#pragma once

#include "app/guide/guide_flow.h"
#include "app/operate/card_page.h"
#include "app/operate/hands.h"
#include "app/operate/pad_page.h"
#include "app/operate/preferences.h"
#include "app/operate/questions.h"
#include "app/operate/strip_bar.h"
#include "app/pages/choice_page.h"
#include "app/pages/key_ring.h"
#include "app/pages/list_page.h"
#include "app/practice/bench_page.h"
#include "app/practice/practice_room.h"
#include "app/practice/practice_strip.h"
#include "app/practice/replay_view.h"
#include "app/practice/result_page.h"
#include "app/practice/score_worker.h"
#include "app/practice/tell_page.h"
#include "app/practice/trainee_hand.h"
#include "core/shift/hands.h"

#include <QPixmap>
#include <QTimer>
#include <array>
#include <functional>
#include <optional>
#include <vector>

namespace seamclock {

enum class PracticePage {
    Lessons,
    Lesson,
    Card,
    Bench,
    Pad,
    Reasons,
    Side,
    Wrong,
    Call,
    Working,
    Result,
    Details,
    Replay,
    History,
    Guide
};

/// What sounds: the horn, or nothing in a test. The benches live by the practice clock.
class PracticeSound {
public:
    virtual ~PracticeSound() = default;
    virtual void show(const Shift& shift, const Instant& now) = 0;
};

struct PracticeWindowParts {
    PracticeRoom& room;
    const Clock& machine; // true time
    Preferences preferences;
    QString who;            // the trainee's name; empty: nobody said
    QString reports;        // the folder of the practice record
    QString notice{};       // stands at first until it was seen; empty: none
    std::uint64_t seed = 1; // of how a hand sets the gap at first
    PracticeSound* sound = nullptr;
    GuideFlow::Read readGuide{}; // empty: there is none
};

class PracticeWindow : public QWidget {
    Q_OBJECT

public:
    explicit PracticeWindow(PracticeWindowParts parts, QWidget* parent = nullptr);
    ~PracticeWindow() override;

    PracticePage page() const { return m_kind; }
    Page* currentPage() const { return m_page; }
    BenchPage* benchPage() const { return m_bench; }
    PadPage* padPage() const { return m_pad; }
    ChoicePage* choicePage() const { return m_choice; }
    ListPage* listPage() const { return m_list; }
    TellPage* tellPage() const { return m_tell; }
    ResultPage* resultPage() const { return m_resultPage; }
    PracticeStrip* strip() const { return m_strip; }
    AlarmBanner* banner() const { return m_banner; }
    GuideFlow* guide() const { return m_guide; }
    /// What was worked out last; null: nothing yet.
    const PracticeResult* result() const { return m_result.get(); }

    /// Process time goes on by the true time since the last call, and all is shown anew: what the
    /// timer does.
    void tick();
    /// Shows what stands, without time.
    void refresh();
    /// For as long as the window stands; they are not written down.
    void setPreferences(const Preferences& preferences);
    void stopTimer() { m_timer.stop(); }

    /// To the lesson's page. Missing: no such lesson.
    Result<void> openLesson(const std::string& id);
    void openLessons();
    void openHistory();
    /// The user guide; not over a changeover or a build-up, nor while the phone or the score has
    /// the trainee.
    void openHelp();
    int pace() const { return m_pace; }
    void setPace(int pace);
    /// Leads the bench by an act of the trainee, as a control does.
    bool act(const BenchAct& act) { return m_hand->act(act); }
    /// Holds the wheel at that speed [mm/s], positive closing; 0: it is held still.
    void turnWheel(double mmPerS) { m_hand->turnWheel(mmPerS); }

signals:
    void left();

protected:
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void closeEvent(QCloseEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void turnTo(PracticePage kind);
    void placeAll();
    PageLook look() const;
    void applyLook();
    std::vector<Page*> pages() const;
    void say(const QString& text, bool calmly = false);

    void slotPressed(SlotPlace place);
    void stepPressed();
    void typed(QChar sign);
    void chosen(int index);
    void weldSlot(const Slot& slot, std::int64_t onto);
    void told(const Result<void>& done);
    void askNumber(NumberFor what);
    void keepNumber();

    void controlPressed(int index);
    void controlSlid(int index, double units);
    const Control* controlAt(int index) const; // null: the bench does not stand

    void begin();
    void over();
    void showLessons();
    void showLesson();
    void showCard();
    void showSide();
    void showWrong();
    void showCall();
    void lookAtCall();
    void lookAtHelp();
    bool mayHelp() const;
    HandsCall handsNow() const;
    void showResult();
    void showDetails();
    void showHistory();
    void openReplay();
    void showReplay();
    void replayStep(ReplayKey key);
    ReplayLook replayLook() const;
    void saveRecord();
    void workOn(const PracticeWork& work, bool keep);
    void showBench();
    QString speedText() const;
    LessonLineView lessonLine() const;
    bool handsAreBusy() const;
    std::uint64_t seed() const;
    int current() const; // of the lessons, by m_lesson's id

    PracticeWindowParts m_parts;
    PracticeRoom& m_room;
    Hands m_hands;
    KeyRing* m_ring;
    QTimer m_timer;
    PracticeStrip* m_strip;
    AlarmBanner* m_banner;
    BenchPage* m_bench;
    CardPage* m_card;
    PadPage* m_pad;
    ChoicePage* m_choice;
    ListPage* m_list;
    TellPage* m_tell;
    ResultPage* m_resultPage;
    GuideFlow* m_guide;
    ScoreWorker* m_worker;
    TraineeHand* m_hand;
    Page* m_page = nullptr;
    PracticePage m_kind = PracticePage::Lessons;

    Lesson m_lesson;
    int m_made = 0; // of this lesson, since it was opened
    std::vector<PracticeLine> m_history;
    std::optional<Milliseconds> m_lastTick; // of the machine
    int m_pace = 1;
    int m_place = 0; // along the seam, that is looked at
    AskReason m_asked;
    Reasons m_reasons;
    std::vector<std::function<void()>> m_side; // what the choices of a page do
    enum class Call { None, Rings, Talks, Over } m_call = Call::None;
    Milliseconds m_callUntil{0}; // of the take

    std::shared_ptr<const PracticeResult> m_result;
    bool m_keep = false; // the result is of a take that was just made
    double m_progress = 0;
    PracticePage m_backTo = PracticePage::Lessons; // from result and replay
    PracticePage m_beforeHelp = PracticePage::Lessons;
    HandsCall m_answered = HandsCall::None; // that Help was opened in spite of
    int m_leaf = 0;
    Milliseconds m_at{0}; // of the replay
    bool m_plays = false;
    std::optional<ReplayLook> m_shown;

    QPixmap m_stripes;
    QString m_said;
    bool m_saidCalmly = false;
    Milliseconds m_saidAt{0};
};

} // namespace seamclock
