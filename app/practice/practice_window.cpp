#include "app/practice/practice_window.h"

#include "app/operate/card_view.h"
#include "app/operate/number_task.h"
#include "app/operate/tablet_look.h"
#include "app/practice/practice_result.h"
#include "app/practice/practice_text.h"
#include "app/text/numbers.h"
#include "app/text/phrase_book.h"
#include "app/text/words.h"
#include "core/session/sheet_plan.h"
#include "core/weld/intent.h"

#include <QApplication>
#include <QCloseEvent>
#include <QKeyEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <initializer_list>

namespace seamclock {
namespace {

constexpr int kTickMs = 40; // 25 frames a second
constexpr Milliseconds kLongestFrame{
    250}; // after a pause of the machine's own nothing is caught up
constexpr Milliseconds kSaid{6'000};
} // namespace

PracticeWindow::PracticeWindow(PracticeWindowParts parts, QWidget* parent)
    : QWidget(parent), m_parts(std::move(parts)), m_room(m_parts.room), m_ring(new KeyRing(this)),
      m_strip(new PracticeStrip(this)), m_banner(new AlarmBanner(this)),
      m_bench(new BenchPage(this)), m_card(new CardPage(this)), m_pad(new PadPage(this)),
      m_choice(new ChoicePage(this)), m_list(new ListPage(this)), m_tell(new TellPage(this)),
      m_resultPage(new ResultPage(this)), m_guide(new GuideFlow(m_parts.readGuide, this)),
      m_worker(new ScoreWorker(this)), m_hand(new TraineeHand(m_room, m_parts.machine, this)) {
    setObjectName("practiceWindow");
    setWindowTitle(tr("Seamclock: practice"));
    setFocusPolicy(Qt::StrongFocus);
    for (Page* page : std::initializer_list<Page*>{
             m_bench, m_card, m_pad, m_choice, m_list, m_tell, m_resultPage}) {
        page->hide();
        connect(page, &Page::slotPressed, this, &PracticeWindow::slotPressed);
    }
    connect(m_choice, &ChoicePage::chosen, this, &PracticeWindow::chosen);
    connect(m_list, &ListPage::chosen, this, &PracticeWindow::chosen);
    connect(m_bench, &BenchPage::controlPressed, this, &PracticeWindow::controlPressed);
    connect(m_bench, &BenchPage::controlSlid, this, &PracticeWindow::controlSlid);
    connect(m_bench, &BenchPage::controlLeft, m_hand, &TraineeHand::letGo);
    connect(m_hand, &TraineeHand::said, this, &PracticeWindow::say);
    connect(m_hand, &TraineeHand::changed, this, &PracticeWindow::refresh);
    connect(m_hand, &TraineeHand::backPressed, this, [this] {
        const WeldView weld = m_bench->view().weld;
        weldSlot(weld.back, weld.onto);
    });
    connect(m_bench, &BenchPage::placeChosen, this, [this](int place) {
        m_place = place;
        refresh();
    });
    connect(m_bench, &BenchPage::edgeTouched, this, [this](int sheet) {
        if (m_kind == PracticePage::Bench) {
            m_hand->touchEdge(sheet, m_place);
        }
    });
    connect(m_bench, &BenchPage::timeChosen, this, [this](double share) {
        if (m_kind == PracticePage::Replay && m_result) {
            const double whole = static_cast<double>(m_result->replay.length().count());
            m_at = Milliseconds(std::llround(share * whole));
            refresh();
        }
    });
    connect(m_strip, &PracticeStrip::linePressed, this, [this] {
        if (m_kind == PracticePage::Bench) {
            turnTo(PracticePage::Side);
        } else if (!m_room.runs()) {
            openHelp();
        }
    });
    connect(m_banner, &AlarmBanner::pressed, this, [this] {
        if (!m_parts.notice.isEmpty()) {
            m_parts.notice.clear();
        } else {
            m_said.clear();
        }
        refresh();
    });
    connect(m_worker, &ScoreWorker::progressed, this, [this](double share) {
        m_progress = share;
        if (m_kind == PracticePage::Working) {
            turnTo(PracticePage::Working);
        }
    });
    connect(
        m_worker, &ScoreWorker::came, this,
        [this](const std::shared_ptr<const PracticeResult>& result) {
            m_result = result;
            m_leaf = 0;
            if (m_keep) {
                told(keepTake(
                    m_room.writer(), result->replay.take(), result->set, result->score, m_room.by(),
                    m_room.now()));
            }
            if (m_kind == PracticePage::Working) {
                turnTo(PracticePage::Result);
            }
        });
    connect(m_worker, &ScoreWorker::failed, this, [this](const QString& why) {
        if (m_kind == PracticePage::Working) {
            openLessons();
        }
        say(sentenceOf(why.toStdString()));
    });
    connect(&m_hands, &Hands::help, this, &PracticeWindow::openHelp);
    m_guide->setHome(GuideHome::Practice);
    connect(m_guide, &GuideFlow::turned, this, [this] { turnTo(PracticePage::Guide); });
    connect(m_guide, &GuideFlow::left, this, [this] { turnTo(m_beforeHelp); });
    connect(m_guide, &GuideFlow::said, this, [this](const QString& why) { say(why); });
    connect(&m_hands, &Hands::step, this, &PracticeWindow::stepPressed);
    connect(&m_hands, &Hands::typed, this, &PracticeWindow::typed);
    connect(&m_hands, &Hands::erased, this, [this] {
        if (m_kind == PracticePage::Pad) {
            m_pad->pad()->erase();
        }
    });
    m_hands.setWindow(this);
    m_hands.setRing(m_ring);
    m_hands.setPedalKey(m_parts.preferences.pedalKey);
    qApp->installEventFilter(&m_hands);
    qApp->installEventFilter(this); // before the hands': the wheel's keys are held
    applyLook();
    m_timer.setTimerType(Qt::PreciseTimer);
    connect(&m_timer, &QTimer::timeout, this, &PracticeWindow::tick);
    openLessons();
    m_timer.start(kTickMs);
}

PracticeWindow::~PracticeWindow() {
    qApp->removeEventFilter(this);
    qApp->removeEventFilter(&m_hands);
    m_worker->drop();
    m_room.end();
}

void PracticeWindow::setPreferences(const Preferences& preferences) {
    m_parts.preferences = preferences;
    m_hands.setPedalKey(preferences.pedalKey);
    applyLook();
    placeAll();
    refresh();
}

void PracticeWindow::applyLook() {
    const PageLook now = look();
    for (Page* page : pages()) {
        PageLook own = now;
        if (page == m_bench) {
            own.watermark.clear(); // its scene has it
        }
        page->setLook(own);
    }
    m_strip->setLook(now);
    m_ring->setLook(now);
    m_banner->setLook(*now.theme, now.metrics);
}

PageLook PracticeWindow::look() const {
    PageLook look = lookOf(m_parts.preferences, screen());
    look.watermark = practiceWord();
    return look;
}

std::vector<Page*> PracticeWindow::pages() const {
    std::vector<Page*> all{m_bench, m_card, m_pad, m_choice, m_list, m_tell, m_resultPage};
    const std::vector<Page*> guide = m_guide->pages();
    all.insert(all.end(), guide.begin(), guide.end());
    return all;
}

void PracticeWindow::resizeEvent(QResizeEvent*) {
    placeAll();
}

void PracticeWindow::placeAll() {
    const Metrics metrics = look().metrics;
    const double frame = metrics.px(kStripes);
    const QRect inner = QRectF(rect()).adjusted(frame, frame, -frame, -frame).toAlignedRect();
    for (Page* page : pages()) {
        page->setGeometry(inner);
    }
    const QRectF strip(
        inner.left() + metrics.px(12), inner.top() + metrics.px(10), inner.width() - metrics.px(24),
        metrics.px(90));
    m_strip->setGeometry(strip.toAlignedRect());
    m_strip->raise();
    m_banner->raise();
}

void PracticeWindow::paintEvent(QPaintEvent*) {
    if (m_stripes.size() != size() * devicePixelRatioF()) { // painted once: they never change
        m_stripes = QPixmap(size() * devicePixelRatioF());
        m_stripes.setDevicePixelRatio(devicePixelRatioF());
        QPainter once(&m_stripes);
        once.setRenderHint(QPainter::Antialiasing);
        paintStripes(once, rect(), look().metrics);
    }
    const int frame = static_cast<int>(std::ceil(look().metrics.px(kStripes))) + 1;
    QPainter painter(this);
    painter.setClipRegion(
        QRegion(rect()).subtracted(QRegion(rect().adjusted(frame, frame, -frame, -frame))));
    painter.drawPixmap(0, 0, m_stripes);
}

void PracticeWindow::closeEvent(QCloseEvent* event) {
    if (m_keep && m_kind == PracticePage::Working) { // it would be lost, and takes seconds
        event->ignore();
        say(tr("The weld is worked out and kept first."), true);
        return;
    }
    event->accept();
    m_timer.stop();
    emit left();
}

// ---- what stands

void PracticeWindow::turnTo(PracticePage kind) {
    if (kind == PracticePage::Guide && !mayHelp()) { // whoever asks
        m_guide->close();
        return;
    }
    if (kind != PracticePage::Bench) {
        m_hand->leave();
    }
    if (kind != PracticePage::Guide) {
        m_guide->close();
    }
    m_kind = kind;
    Page* next = m_bench;
    switch (kind) {
    case PracticePage::Bench:
    case PracticePage::Replay:
        next = m_bench;
        break;
    case PracticePage::Card:
        next = m_card;
        showCard();
        break;
    case PracticePage::Pad:
        next = m_pad;
        break;
    case PracticePage::Lessons:
        next = m_list;
        showLessons();
        break;
    case PracticePage::History:
        next = m_list;
        showHistory();
        break;
    case PracticePage::Lesson:
    case PracticePage::Working:
        next = m_tell;
        showLesson();
        break;
    case PracticePage::Side:
        next = m_choice;
        showSide();
        break;
    case PracticePage::Wrong:
        next = m_choice;
        showWrong();
        break;
    case PracticePage::Reasons:
        next = m_choice;
        m_choice->show(m_reasons.page);
        break;
    case PracticePage::Call:
        next = m_call == Call::Talks ? static_cast<Page*>(m_tell) : m_choice;
        showCall();
        break;
    case PracticePage::Result:
        next = m_resultPage;
        showResult();
        break;
    case PracticePage::Details:
        next = m_list;
        showDetails();
        break;
    case PracticePage::Guide:
        next = m_guide->page();
        break;
    }
    if (next != m_page) {
        if (m_page != nullptr) {
            m_page->hide();
        }
        m_page = next;
        m_page->QWidget::show();
    }
    m_strip->raise();
    m_banner->raise();
    setFocus();
    if (kind == PracticePage::Guide) {
        m_guide->takeKeys();
    }
    refresh();
}

void PracticeWindow::tick() {
    const Milliseconds now = m_parts.machine.now().boot;
    const Milliseconds passed = m_lastTick
                                    ? std::clamp(now - *m_lastTick, Milliseconds(0), kLongestFrame)
                                    : Milliseconds(0);
    m_lastTick = now;
    m_hand->look();
    if (m_room.runs() && m_kind != PracticePage::Lesson && m_kind != PracticePage::Working) {
        m_room.advance(passed, handsAreBusy() ? 1 : m_pace);
        lookAtCall();
        lookAtHelp();
    } else if (m_kind == PracticePage::Replay && m_plays && m_result) {
        m_at = std::min(m_at + passed * m_pace, m_result->replay.length());
        m_plays = m_at < m_result->replay.length();
    }
    if (m_parts.sound != nullptr) {
        m_parts.sound->show(m_room.runs() ? m_room.floor().shift() : Shift(), m_room.now());
    }
    refresh();
}

void PracticeWindow::refresh() {
    if (m_kind == PracticePage::Bench && m_room.runs()) {
        showBench();
    } else if (m_kind == PracticePage::Replay && m_result && m_shown != replayLook()) {
        showReplay();
    }
    std::optional<StripCellView> cell;
    if (m_room.runs() && m_kind != PracticePage::Working) {
        if (const auto view =
                m_room.floor().view(0, m_room.now(), m_parts.preferences.pedalKey != 0, true)) {
            cell = view->cell;
            cell->selected = true;
            cell->plain = false;
            const Weld* weld = m_room.weld();
            if (weld != nullptr && std::holds_alternative<Preparing>(weld->state)) {
                cell->phase = phaseWord(weld->state); // its seam is the lesson, which stands beside
            }
        }
    }
    m_strip->show(cell, lessonLine());
    QString text = m_parts.notice;
    bool calm = false;
    if (text.isEmpty() && !m_said.isEmpty()) {
        if (m_parts.machine.now().boot - m_saidAt >= kSaid) {
            m_said.clear();
        }
        text = m_said;
        calm = m_saidCalmly;
    }
    const bool atBench = m_kind == PracticePage::Bench;
    m_ring->look(
        m_page->objectName() + QString::number(static_cast<int>(m_kind)) +
            (atBench ? m_page->stepView().text : QString()),
        atBench);
    m_banner->setVisible(!text.isEmpty());
    m_strip->setCovered(!text.isEmpty());
    if (!text.isEmpty()) {
        m_banner->setGeometry(m_strip->freePlace().translated(m_strip->pos()));
        m_banner->setText(text, tr("Seen"), calm);
    }
}

void PracticeWindow::say(const QString& text, bool calmly) {
    m_said = text;
    m_saidCalmly = calmly;
    m_saidAt = m_parts.machine.now().boot;
    refresh();
}

void PracticeWindow::told(const Result<void>& done) {
    if (!done && !isBounce(done.error())) {
        say(sentenceOf(done.error().detail));
    }
}

// A number is typed, a reason chosen, or a panel of the bench is open.
bool PracticeWindow::handsAreBusy() const {
    return m_kind == PracticePage::Pad || m_kind == PracticePage::Reasons ||
           (m_kind == PracticePage::Bench && m_hand->panel() != ControlPanel::None);
}

QString PracticeWindow::speedText() const {
    return m_pace == 1 ? tr("true time") : tr("speed × %1").arg(m_pace);
}

LessonLineView PracticeWindow::lessonLine() const {
    LessonLineView line;
    if (m_kind == PracticePage::Replay && m_result) {
        line.lesson = tr("Seen again: %1").arg(inWords(m_result->set.lesson.title));
        line.time =
            tr("process time %1 of %2").arg(goneText(m_at), goneText(m_result->replay.length()));
        return line;
    }
    if (!m_room.runs()) {
        line.lesson = m_parts.who.isEmpty() ? tr("The bench that harms nobody")
                                            : tr("Practice of %1").arg(m_parts.who);
        line.pressable = mayHelp() && m_kind != PracticePage::Guide;
        line.time = line.pressable ? tr("Help: the user guide")
                                   : tr("the log of real joints is not touched");
        return line;
    }
    line.lesson = tr("Lesson %1, weld %2 of %3")
                      .arg(m_lesson.place)
                      .arg(m_made + 1)
                      .arg(std::max(m_lesson.welds, m_made + 1));
    const bool slow = m_pace > 1 && (handsAreBusy() || !m_room.mayHurryNow());
    line.time = tr("process time %1, %2")
                    .arg(goneText(m_room.run().now()), slow ? tr("now true time") : speedText());
    line.pressable = m_kind == PracticePage::Bench;
    return line;
}

void PracticeWindow::showBench() {
    const BenchView seen = m_room.run().bench().view();
    const auto weld = m_room.floor().view(
        0, m_room.now(), m_parts.preferences.pedalKey != 0, m_parts.preferences.lessMotion);
    if (!weld) {
        return;
    }
    BenchPageView view;
    view.weld = *weld;
    if (std::holds_alternative<LeaveWeld>(view.weld.step.offer)) {
        view.weld.step.view.text = tr("See the result");
    }
    const VirtualBench& bench = m_room.run().bench();
    const auto place = static_cast<std::size_t>(
        std::clamp(m_place, 0, static_cast<int>(seen.stations.size()) - 1));
    view.bench = practiceBenchView(
        seen, bench.setup(), static_cast<int>(place), &bench.edge(place), view.weld.scale);
    if (m_parts.preferences.lessMotion) { // lifted, and still
        view.bench.ribbonDeg = ribbonDegrees(seen.draught, Milliseconds(0));
    }
    const Weld* now = m_room.weld();
    const bool preparing = now != nullptr && std::holds_alternative<Preparing>(now->state);
    view.controls =
        controlsOf({seen, preparing, m_hand->panel(), m_hand->push(), view.weld.back.view});
    m_bench->show(view);
}

// ---- presses

void PracticeWindow::stepPressed() {
    const SlotView& step = m_page->stepView();
    if (step.look != SlotView::Look::Hidden && step.look != SlotView::Look::Gone) {
        emit m_page->slotPressed(SlotPlace::Step);
    }
}

void PracticeWindow::typed(QChar sign) {
    if (m_kind == PracticePage::Pad) {
        m_pad->pad()->type(sign);
        return;
    }
    if (m_kind != PracticePage::Bench && m_kind != PracticePage::Replay) {
        return;
    }
    if (sign >= QLatin1Char('1') && sign <= QLatin1Char('6')) {
        const int index = sign.unicode() - u'1';
        if (m_kind == PracticePage::Replay || m_hand->panel() != ControlPanel::None) {
            controlPressed(index);
        }
        return;
    }
    if (m_kind != PracticePage::Bench) {
        return;
    }
    const QChar letter = sign.toLower();
    if (m_hand->panel() == ControlPanel::None) {
        const QString keys = QStringLiteral("lcpb"); // lock, clamps, plate, back
        if (const auto at = keys.indexOf(letter); at >= 0) {
            controlPressed(static_cast<int>(at) + 2);
            return;
        }
    }
    if (letter == QLatin1Char('s')) {
        const auto& paces = practicePaces();
        const auto now = std::find(paces.begin(), paces.end(), m_pace);
        setPace(now == paces.end() || now + 1 == paces.end() ? paces.front() : *(now + 1));
    } else if (letter == QLatin1Char('w')) {
        turnTo(PracticePage::Wrong);
    } else if (letter == QLatin1Char('m')) {
        turnTo(PracticePage::Side);
    }
}

void PracticeWindow::slotPressed(SlotPlace place) {
    switch (m_kind) {
    case PracticePage::Bench: {
        const BenchPageView& view = m_bench->view();
        if (place == SlotPlace::Step) {
            weldSlot(view.weld.step, view.weld.onto);
        }
        return;
    }
    case PracticePage::Lessons:
        if (place == SlotPlace::Stop) {
            close();
        } else if (place == SlotPlace::Back) {
            openHistory();
        } else if (place == SlotPlace::Step) {
            chosen(current());
        }
        return;
    case PracticePage::Lesson:
        if (place == SlotPlace::Step) {
            begin();
        } else {
            m_room.end();
            openLessons();
        }
        return;
    case PracticePage::Card:
        turnTo(PracticePage::Bench);
        return;
    case PracticePage::Pad:
        if (place == SlotPlace::Back) {
            m_pad->pad()->setText({});
            m_pad->ask(m_pad->task());
        } else if (place == SlotPlace::Stop) {
            turnTo(PracticePage::Bench);
        } else if (place == SlotPlace::Step) {
            keepNumber();
        }
        return;
    case PracticePage::Reasons:
        if (place == SlotPlace::Back && m_asked.what == ReasonFor::Stop) {
            // "Turned too far", where it is offered
            const Weld* weld = m_room.weld();
            if (weld != nullptr && std::holds_alternative<Aligning>(weld->state)) {
                askNumber(NumberFor::Overshoot);
            } else {
                turnTo(PracticePage::Bench);
            }
        } else if (place == SlotPlace::Back) {
            m_asked = {ReasonFor::Stop, m_asked.code};
            m_reasons = reasonsFor(m_asked, {});
            turnTo(PracticePage::Reasons);
        } else {
            turnTo(PracticePage::Bench);
        }
        return;
    case PracticePage::Side:
    case PracticePage::Wrong:
        turnTo(PracticePage::Bench);
        return;
    case PracticePage::Call:
        return;
    case PracticePage::Working:
        if (!m_keep) {
            m_worker->drop();
            openLessons();
        }
        return;
    case PracticePage::Result:
        if (place == SlotPlace::Step && m_leaf == 0) {
            m_leaf = 1;
            turnTo(PracticePage::Result);
        } else if (place == SlotPlace::Back && m_leaf == 1) {
            m_leaf = 0;
            turnTo(PracticePage::Result);
        } else if (place == SlotPlace::Stop && m_leaf == 0) {
            turnTo(PracticePage::Details);
        } else if (place == SlotPlace::Stop) {
            openReplay();
        } else if (m_keep && place == SlotPlace::Step && m_made < m_lesson.welds) {
            begin();
        } else if (m_backTo == PracticePage::History) {
            openHistory();
        } else {
            openLessons();
        }
        return;
    case PracticePage::Details:
        turnTo(PracticePage::Result);
        return;
    case PracticePage::Replay:
        return; // its controls tell
    case PracticePage::History:
        if (place == SlotPlace::Step) {
            saveRecord();
        } else {
            openLessons();
        }
        return;
    case PracticePage::Guide:
        return; // its pages tell it themselves
    }
}

void PracticeWindow::weldSlot(const Slot& slot, std::int64_t onto) {
    const Weld* weld = m_room.weld();
    if (weld == nullptr) {
        return;
    }
    if (std::holds_alternative<LeaveWeld>(slot.offer)) {
        over();
        return;
    }
    if (const auto* number = std::get_if<AskNumber>(&slot.offer)) {
        askNumber(number->what);
        return;
    }
    if (const auto* reason = std::get_if<AskReason>(&slot.offer)) {
        m_asked = *reason;
        QString lacks;
        if (const auto* cooling = std::get_if<Cooling>(&weld->state)) {
            const auto t = weldTimeAt(*weld, m_room.now());
            lacks = leftText(t ? cooling->due.lo - t->lo : Milliseconds(0));
        }
        m_reasons = reasonsFor(m_asked, lacks);
        turnTo(PracticePage::Reasons);
        return;
    }
    told(m_room.floor().press(0, slot.offer, onto));
    refresh();
}

void PracticeWindow::askNumber(NumberFor what) {
    m_pad->ask(m_room.floor().numberTask(0, what));
    turnTo(PracticePage::Pad);
}

void PracticeWindow::keepNumber() {
    const NumberShown number = m_pad->now();
    if (number.outcome == NumberOutcome::None) {
        return;
    }
    const NumberFor what = m_pad->task().what;
    Floor& floor = m_room.floor();
    const bool keeps = number.outcome == NumberOutcome::Keep;
    const auto kept = keeps ? floor.answer(0, NumberAnswer{what, number.value})
                            : floor.failPlate(0, number.value);
    turnTo(PracticePage::Bench);
    if (kept && !keeps) {
        say(tr("The plate is outside its window. Say what is wrong, or wait."));
    }
    told(kept);
    // A bead's values are read one after the other; the plate's places need the bench between.
    const auto view = floor.view(0, m_room.now(), false, false);
    if (kept && keeps && view && what != NumberFor::Recheck &&
        what != NumberFor::PlateTemperature) {
        if (const auto* more = std::get_if<AskNumber>(&view->step.offer)) {
            askNumber(more->what);
        }
    }
}

void PracticeWindow::chosen(int index) {
    const auto at = static_cast<std::size_t>(index);
    switch (m_kind) {
    case PracticePage::Lessons:
        m_lesson = m_room.lessons().at(at);
        m_made = 0;
        turnTo(PracticePage::Lesson);
        return;
    case PracticePage::History: {
        const PracticeLine& line = m_history.at(at);
        if (line.brokenOff) {
            say(line.left ? tr("Practice was closed in mid-weld: nothing was kept to see again.")
                          : tr("The program ended in mid-weld: nothing was kept to see again."));
            return;
        }
        auto kept = m_room.kept(line);
        auto events = m_room.eventsOf(line.weld);
        if (!kept || !events) {
            say(sentenceOf(kept ? events.error().detail : kept.error().detail));
            return;
        }
        m_backTo = PracticePage::History;
        workOn({kept->lesson, shopOf(*kept, m_room.shop()), kept->take, std::move(*events)}, false);
        return;
    }
    case PracticePage::Reasons: {
        const auto& [code, text] = m_reasons.answers.at(at);
        ReasonAnswer answer;
        answer.asked = m_asked;
        answer.choice = code;
        answer.text = text.toStdString();
        turnTo(PracticePage::Bench);
        told(m_room.floor().answer(0, answer));
        return;
    }
    case PracticePage::Side:
    case PracticePage::Wrong:
    case PracticePage::Call: {
        const auto what = m_side.at(at); // it may turn to another page, whose choices come here
        what();
        return;
    }
    case PracticePage::Lesson:
    case PracticePage::Card:
    case PracticePage::Bench:
    case PracticePage::Pad:
    case PracticePage::Working:
    case PracticePage::Result:
    case PracticePage::Details:
    case PracticePage::Replay:
    case PracticePage::Guide:
        return;
    }
}

// ---- the controls

void PracticeWindow::controlPressed(int index) {
    if (m_kind == PracticePage::Replay) {
        replayStep(kReplayKeys.at(static_cast<std::size_t>(index)));
    } else if (const Control* control = controlAt(index)) {
        m_hand->press(Control(*control)); // what it shows may be another then
    }
}

void PracticeWindow::controlSlid(int index, double units) {
    if (const Control* control = controlAt(index)) {
        m_hand->slide(*control, units);
    }
}

const Control* PracticeWindow::controlAt(int index) const {
    const auto& controls = m_bench->view().controls;
    return m_kind == PracticePage::Bench && index < static_cast<int>(controls.size())
               ? &controls[static_cast<std::size_t>(index)]
               : nullptr;
}

bool PracticeWindow::eventFilter(QObject* watched, QEvent* event) {
    const bool down = event->type() == QEvent::KeyPress;
    if ((!down && event->type() != QEvent::KeyRelease) || !watched->isWidgetType() ||
        static_cast<QWidget*>(watched)->window() != this || m_kind != PracticePage::Bench) {
        return QWidget::eventFilter(watched, event);
    }
    const auto* key = static_cast<QKeyEvent*>(event);
    if (down && (key->key() == Qt::Key_Left || key->key() == Qt::Key_Right)) {
        const auto places = static_cast<int>(m_bench->view().bench.places.size());
        const int to = m_place + (key->key() == Qt::Key_Left ? -1 : 1);
        m_place = std::clamp(to, 0, std::max(places - 1, 0));
        refresh();
        return true;
    }
    return m_hand->key(key->key(), key->modifiers(), down, key->isAutoRepeat()) ||
           QWidget::eventFilter(watched, event);
}

void PracticeWindow::setPace(int pace) {
    const auto& paces = practicePaces();
    if (std::find(paces.begin(), paces.end(), pace) != paces.end()) {
        m_pace = pace;
        refresh();
    }
}

std::uint64_t PracticeWindow::seed() const {
    return m_parts.seed + static_cast<std::uint64_t>(m_made) * 97 +
           static_cast<std::uint64_t>(m_lesson.place) * 1009;
}

} // namespace seamclock
