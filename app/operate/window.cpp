#include "app/operate/window.h"

#include "app/print/card_pdf.h"
#include "app/text/numbers.h"
#include "app/text/phrase_book.h"
#include "app/text/words.h"
#include "core/log/log_reader.h"
#include "core/session/again.h"
#include "core/session/job_book.h"
#include "core/session/sheet_plan.h"
#include "core/weld/intent.h"

#include <QApplication>
#include <QPainter>
#include <QScreen>
#include <algorithm>
#include <cmath>
#include <utility>

namespace seamclock {
namespace {

constexpr int kTickMs = 50;      // while a hand hurries
constexpr int kCalmTickMs = 100; // else
constexpr Milliseconds kSaid{6'000};
constexpr Milliseconds kUnsaved{2'000};
constexpr Milliseconds kTrialEvery{4'000};
constexpr Milliseconds kHeldBackFor{3'000};
constexpr Milliseconds kSeamsEvery{1'000};
constexpr int kStatusCell = -1;
// A hand that was on its way when the screen changed by itself meant another bench: as long as the
// contract takes a second press for a bounce.
constexpr Milliseconds kJustCame{600};

/// The white frame of a standing alarm: on half a second, off half a second, and never in the way.
class StandingFrame : public QWidget {
public:
    explicit StandingFrame(QWidget* parent) : QWidget(parent) {
        setObjectName("alarmFrame");
        setAttribute(Qt::WA_TransparentForMouseEvents);
    }
    void setInk(const QColor& ink, double width) {
        m_ink = ink;
        m_width = width;
    }

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setPen(QPen(m_ink, m_width));
        painter.drawRect(
            QRectF(rect()).adjusted(m_width / 2, m_width / 2, -m_width / 2, -m_width / 2));
    }

private:
    QColor m_ink = Qt::white;
    double m_width = 6;
};

} // namespace

Window::Window(WindowParts parts, QWidget* parent)
    : QWidget(parent), m_parts(std::move(parts)), m_floor(m_parts.floor), m_seams({}),
      m_strip(new StripBar(this)), m_banner(new AlarmBanner(this)),
      m_frame(new StandingFrame(this)), m_weld(new WeldPage(this)), m_card(new CardPage(this)),
      m_choice(new ChoicePage(this)), m_pad(new PadPage(this)), m_entry(new EntryPage(this)),
      m_people(new PeopleFlow(m_parts.desk, m_floor, m_parts.reports, this)),
      m_heat(new HeatPage(this)), m_heatWorker(new HeatWorker(this)),
      m_setup(new SetupFlow(
          m_parts.desk, m_floor,
          [this](const QString& forWhat, std::function<void(const ProvenPerson&)> then) {
              m_people->askForeman(forWhat, std::move(then));
          },
          m_parts.reports, this)),
      m_dayLog(new DayLogFlow(dayLogShop(), this)),
      m_shop(new ShopFlow(m_parts.desk, shopRoom(), this)),
      m_guide(new GuideFlow(m_parts.readGuide, this)) {
    setObjectName("window");
    setWindowTitle(isDemo() ? tr("Seamclock: demo shop") : tr("Seamclock"));
    setFocusPolicy(Qt::StrongFocus);
    connect(m_heatWorker, &HeatWorker::came, this, [this](const HeatEstimate& estimate) {
        m_shown.heat = estimate;
        if (m_kind == PageKind::Card) {
            drawCard();
        }
    });
    for (Page* page :
         std::initializer_list<Page*>{m_weld, m_card, m_choice, m_pad, m_entry, m_heat}) {
        page->hide();
        connect(page, &Page::slotPressed, this, &Window::slotPressed);
    }
    connect(m_choice, &ChoicePage::chosen, this, &Window::choose);
    connect(m_strip, &StripBar::benchPressed, this, &Window::goToBench);
    connect(m_strip, &StripBar::statusPressed, this, &Window::openMenu);
    connect(m_entry, &EntryPage::procedureAsked, this, [this] { turnTo(PageKind::Procedures); });
    connect(m_entry, &EntryPage::numberAsked, this, [this](NumberFor what) {
        m_entry->takeLines(m_draft);
        std::optional<double> low;
        std::optional<double> high;
        const Bench& bench =
            m_floor.posts()[static_cast<std::size_t>(m_floor.selected())].bench.bench;
        if (what == NumberFor::SheetThickness) {
            low = inMillimetres(bench.thinnestSheet);
            high = inMillimetres(bench.thickestSheet);
            if (m_draft.procedure >= 0) {
                const Procedure& procedure =
                    m_floor.procedures()[static_cast<std::size_t>(m_draft.procedure)].procedure;
                low = std::max(*low, inMillimetres(procedure.thinnest()));
                high = std::min(*high, inMillimetres(procedure.thickest()));
            }
        } else if (what == NumberFor::SeamLength) {
            low = 1;
            high = inMillimetres(bench.longestSeam);
        } else {
            low = 5;
            high = 45;
        }
        m_before = PageKind::Entry;
        askNumber(entryTask(what, low, high));
    });
    connect(m_banner, &AlarmBanner::pressed, this, [this] {
        // What stands there was seen, and nothing behind it.
        if (!m_parts.notice.isEmpty()) {
            m_parts.notice.clear();
        } else {
            m_said.clear();
            m_soundSeen = true;
            m_savedSeen = true;
            m_batterySeen = m_batterySeen || m_batteryStands;
            m_copySeen = copyTrouble();
        }
        refresh();
    });
    connect(&m_hands, &Hands::step, this, &Window::stepPressed);
    connect(&m_hands, &Hands::bench, this, [this](int place) {
        if (m_kind == PageKind::Weld || m_kind == PageKind::Seams) {
            if (place <= static_cast<int>(m_floor.posts().size())) {
                goToBench(place - 1);
            }
        }
    });
    connect(&m_hands, &Hands::typed, this, [this](QChar sign) {
        if (m_kind == PageKind::Pad) {
            m_pad->pad()->type(sign);
        } else if (m_kind == PageKind::People) {
            m_people->typed(sign);
        } else if (m_kind == PageKind::Day) {
            m_dayLog->typed(sign);
        } else if (m_kind == PageKind::Shop) {
            m_shop->typed(sign);
        }
    });
    connect(&m_hands, &Hands::erased, this, [this] {
        if (m_kind == PageKind::Pad) {
            m_pad->pad()->erase();
        } else if (m_kind == PageKind::People) {
            m_people->erased();
        } else if (m_kind == PageKind::Shop) {
            m_shop->erased();
        }
    });
    connect(&m_hands, &Hands::pedalLearnt, this, [this](int key) {
        Preferences next = m_parts.preferences;
        next.pedalKey = key;
        setPreferences(next);
        turnTo(PageKind::Menu);
    });
    connect(&m_floor, &Floor::changed, this, [this] {
        m_floor.eachWeld([this](const Weld& weld) { m_seams.take(weld); });
        sound();
        refresh();
    });
    m_people->showPins(m_parts.demoPins);
    joinPeople();
    joinSetup();
    joinDayLog();
    joinShop();
    joinGuide();
    m_floor.setSeries(true);
    if (m_floor.practises()) {
        m_stripes = new StripedFrame(this);
    }
    m_hands.setWindow(this);
    m_hands.setPedalKey(m_parts.preferences.pedalKey);
    qApp->installEventFilter(&m_hands);
    m_tick.setTimerType(Qt::PreciseTimer);
    connect(&m_tick, &QTimer::timeout, this, &Window::refresh);
    takeUpSeams();
    applyLook();
    turnTo(m_floor.weld(m_floor.selected()) != nullptr ? PageKind::Weld : PageKind::Seams);
    sound();
    m_tick.start(kTickMs);
}

Window::~Window() {
    qApp->removeEventFilter(&m_hands);
}

PageLook Window::look() const {
    PageLook look;
    look.theme = &Theme::of(m_parts.preferences.theme);
    const double dpi = m_parts.preferences.dpi > 0 ? m_parts.preferences.dpi
                       : screen() != nullptr       ? screen()->physicalDotsPerInch()
                                                   : kUnitsPerInch;
    look.metrics = Metrics::forDpi(dpi);
    look.metrics.text = m_parts.preferences.text;
    look.mirrored = m_parts.preferences.mirrored;
    if (m_floor.practises()) {
        look.watermark =
            isDemo() ? tr("DEMO SHOP") : QCoreApplication::translate("LessonLine", "PRACTICE");
    }
    return look;
}

std::vector<Page*> Window::pages() const {
    std::vector<Page*> all{m_weld, m_card, m_choice, m_pad, m_entry, m_heat};
    const std::vector<Page*> more = m_people->pages();
    all.insert(all.end(), more.begin(), more.end());
    const std::vector<Page*> setup = m_setup->pages();
    all.insert(all.end(), setup.begin(), setup.end());
    const std::vector<Page*> day = m_dayLog->pages();
    all.insert(all.end(), day.begin(), day.end());
    const std::vector<Page*> shop = m_shop->pages();
    all.insert(all.end(), shop.begin(), shop.end());
    const std::vector<Page*> guide = m_guide->pages();
    all.insert(all.end(), guide.begin(), guide.end());
    return all;
}

void Window::applyLook() {
    const PageLook now = look();
    for (Page* page : pages()) {
        page->setLook(now);
    }
    m_strip->setLook(now);
    m_banner->setLook(*now.theme, now.metrics);
    static_cast<StandingFrame*>(m_frame)->setInk(now.theme->text, now.metrics.px(7));
    placeAll();
}

void Window::setPreferences(const Preferences& preferences) {
    m_parts.preferences = preferences;
    m_hands.setPedalKey(preferences.pedalKey);
    if (preferences.language != spoken()) {
        speak(preferences.language);
    }
    writePreferences(preferences, m_parts.preferencesFile);
    applyLook();
    refresh();
}

void Window::resizeEvent(QResizeEvent*) {
    placeAll();
}

void Window::placeAll() {
    const Metrics metrics = look().metrics;
    // All that is practice has its frame, and within it everything stands as always.
    const double stripes = m_stripes != nullptr ? metrics.px(kStripes) : 0;
    const QRect inner =
        QRectF(rect()).adjusted(stripes, stripes, -stripes, -stripes).toAlignedRect();
    const QSizeF units(inner.width() / metrics.perUnit, inner.height() / metrics.perUnit);
    const Frame frame = frameOf(units, FrameKind::Phase, m_parts.preferences.mirrored);
    for (Page* page : pages()) {
        page->setGeometry(inner);
    }
    const auto pixels = [&](const QRectF& box) {
        return QRectF(
                   inner.x() + metrics.px(box.x()), inner.y() + metrics.px(box.y()),
                   metrics.px(box.width()), metrics.px(box.height()))
            .toAlignedRect();
    };
    if (m_stripes != nullptr) {
        m_stripes->setMetrics(metrics);
        m_stripes->setGeometry(rect());
        m_stripes->raise();
    }
    m_strip->setGeometry(pixels(frame.strip));
    m_bannerOnWeld = pixels(frame.banner);
    m_frame->setGeometry(rect());
    m_strip->raise();
    m_banner->raise();
    m_frame->raise();
}

// ---- what stands

// Who presses a bench's cell, or its key.
void Window::goToBench(int post) {
    if (!isFirst(post)) {
        return;
    }
    if (post != m_floor.selected()) {
        layNumberAside();
    }
    m_floor.select(post);
    turnTo(m_floor.weld(post) != nullptr ? PageKind::Weld : PageKind::Seams);
    takeUpNumber(post);
}

/// What is half typed when another bench calls the screen waits for its own.
void Window::layNumberAside() {
    if (m_kind == PageKind::Entry) {
        m_entry->takeLines(m_draft);
    }
    if (m_kind != PageKind::Pad || m_pad->pad()->text().isEmpty()) {
        return;
    }
    const int post = m_floor.selected();
    const Weld* weld = m_floor.weld(post);
    m_typed[post] = {
        weld != nullptr ? weld->id() : std::string(), m_pad->task(), m_pad->pad()->text(), m_before,
        m_before == PageKind::Seams ? m_cutOut : std::nullopt};
}

/// It stands there again, if it is still asked for.
void Window::takeUpNumber(int post) {
    const auto found = m_typed.find(post);
    if (found == m_typed.end() || m_floor.selected() != post || m_floor.handsAt()) {
        return;
    }
    const HalfTyped half = found->second;
    m_typed.erase(found);
    const Weld* weld = m_floor.weld(post);
    if ((weld != nullptr ? weld->id() : std::string()) != half.weld) {
        return;
    }
    NumberTask task = half.task;
    if (weld != nullptr && half.before == PageKind::Weld) {
        const WeldView& view = m_weld->view();
        const AskNumber asked{half.task.what};
        const bool isAsked =
            view.step.offer == Offer(asked) || view.stop.offer == Offer(asked) ||
            (asked.what == NumberFor::Overshoot && std::holds_alternative<Aligning>(weld->state));
        if (!isAsked) {
            return;
        }
        task = numberTask(
            *weld, half.task.what, m_floor.posts()[static_cast<std::size_t>(post)].letter());
    }
    m_before = half.before;
    m_cutOut = half.cutOut;
    m_pad->ask(task, half.text);
    turnTo(PageKind::Pad);
}

/// Whether the screen may go where that cell of the strip leads. While a bench has both hands it
/// may not, and the cell says which bench comes first.
bool Window::isFirst(int cell) {
    const auto busy = m_floor.handsAt();
    if (!busy || cell == *busy) {
        return true;
    }
    m_heldBack = HeldBack{cell, m_floor.now().boot};
    refresh();
    return false;
}

bool Window::isStopAsked() const {
    return m_kind == PageKind::Reasons && m_asked.what == ReasonFor::Stop;
}

/// Whether a bench calls for hands while another page than a weld's stands.
bool Window::callsAway(const Instant& now) const {
    if (m_kind == PageKind::Weld) {
        return false;
    }
    for (int i = 0; i < static_cast<int>(m_floor.posts().size()); ++i) {
        const Weld* weld = m_floor.weld(i);
        if (weld != nullptr && handsCall(*weld, now) != HandsCall::None) {
            return true;
        }
    }
    return false;
}

// Each bench comes once when it is time to get ready and once when its soak is over; between the
// two a hand may look elsewhere. One that has both hands stands until its lock.
void Window::comeForward(const Instant& now) {
    const int selected = m_floor.selected();
    m_answered.resize(m_floor.posts().size(), HandsCall::None);
    if (const auto busy = m_floor.handsAt()) {
        const bool stands = *busy == selected && (m_kind == PageKind::Weld || isStopAsked());
        if (!stands) {
            come(*busy, now);
        }
        return;
    }
    HandsCall here = HandsCall::None;
    HandsCall most = HandsCall::None;
    std::optional<int> wanted;
    for (int i = 0; i < static_cast<int>(m_floor.posts().size()); ++i) {
        const Weld* weld = m_floor.weld(i);
        const HandsCall call = weld == nullptr ? HandsCall::None : handsCall(*weld, now);
        HandsCall& answered = m_answered[static_cast<std::size_t>(i)];
        answered = std::min(answered, call);
        if (i == selected && m_kind == PageKind::Weld) {
            here = answered = call;
        } else if (call > answered && call > most) {
            most = call;
            wanted = i;
        }
    }
    if (wanted && most > here) {
        m_answered[static_cast<std::size_t>(*wanted)] = most;
        come(*wanted, now);
    }
}

void Window::come(int post, const Instant& now) {
    m_cameAt = now.boot;
    layNumberAside();
    m_floor.select(post);
    turnTo(PageKind::Weld);
}

void Window::turnTo(PageKind kind) {
    if (const auto busy = m_floor.handsAt()) {
        // Nothing comes over a changeover or a build-up; why it is to be stopped is asked because a
        // hand pressed that, and its page keeps the step.
        if (kind != PageKind::Reasons || m_asked.what != ReasonFor::Stop) {
            kind = PageKind::Weld;
        }
        m_floor.select(*busy);
    }
    if (m_kind == PageKind::People && kind != PageKind::People) {
        m_people->close();
    }
    // While a foreman's PIN is asked for, what he edits waits.
    if (kind != PageKind::Setup && kind != PageKind::People) {
        m_setup->close();
    }
    if (kind != PageKind::Day && kind != PageKind::People) {
        m_dayLog->close();
    }
    if (kind != PageKind::Shop && kind != PageKind::People) {
        m_shop->close();
    }
    if (kind != PageKind::Guide) {
        m_guide->close();
    }
    m_kind = kind;
    Page* next = m_weld;
    switch (kind) {
    case PageKind::Weld:
        next = m_weld;
        break;
    case PageKind::Card:
        next = m_card;
        showCard();
        break;
    case PageKind::Pad:
        next = m_pad;
        break;
    case PageKind::Day:
        next = m_dayLog->page();
        break;
    case PageKind::Entry:
        next = m_entry;
        showEntry();
        break;
    case PageKind::People:
        next = m_people->page();
        break;
    case PageKind::Setup:
        next = m_setup->page();
        break;
    case PageKind::Shop:
        next = m_shop->page();
        break;
    case PageKind::Heat:
        next = m_heat;
        break;
    case PageKind::Guide:
        next = m_guide->page();
        break;
    case PageKind::Seams:
    case PageKind::Reasons:
    case PageKind::Menu:
    case PageKind::Procedures:
    case PageKind::Pedal:
    case PageKind::Trial:
    case PageKind::Closer:
    case PageKind::Photos:
        next = m_choice;
        break;
    }
    if (kind != PageKind::Pedal) {
        m_hands.stopLearning();
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
    m_frame->raise();
    setFocus();
    if (kind == PageKind::Seams) {
        showSeams();
    } else if (kind == PageKind::Menu) {
        showMenu();
    } else if (kind == PageKind::Procedures) {
        m_choice->show(procedureQuestion(m_floor.procedures()));
    } else if (kind == PageKind::Day) {
        m_dayLog->takeKeys();
    } else if (kind == PageKind::Trial) {
        showTrial();
    } else if (kind == PageKind::People) {
        m_people->takeKeys();
    } else if (kind == PageKind::Setup) {
        m_setup->takeKeys();
    } else if (kind == PageKind::Shop) {
        m_shop->takeKeys();
    } else if (kind == PageKind::Guide) {
        m_guide->takeKeys();
    } else if (kind == PageKind::Pedal) {
        ChoiceView view;
        view.title = tr("Press the foot switch now.");
        view.under = tr("The key that it types becomes the next step.");
        view.back = hiddenSlot();
        view.stop = plainSlot(tr("Close"), tr("nothing is kept"));
        view.step = hiddenSlot();
        m_choice->show(view);
        m_hands.learnPedal();
    }
    refresh();
}

void Window::refresh() {
    const Instant now = m_floor.look();
    readSeams(now);
    comeForward(now);
    if (m_heldBack && now.boot - m_heldBack->at >= kHeldBackFor) {
        m_heldBack.reset();
    }
    const auto busy = m_floor.handsAt();
    const QString first =
        busy && m_heldBack
            ? tr("first bench %1").arg(m_floor.posts()[static_cast<std::size_t>(*busy)].letter())
            : QString();
    const bool pedal = m_parts.preferences.pedalKey != 0;
    const int selected = m_floor.selected();
    std::vector<StripCellView> cells;
    bool onField = false;
    for (int i = 0; i < static_cast<int>(m_floor.posts().size()); ++i) {
        const auto view = m_floor.view(i, now, pedal, m_parts.preferences.lessMotion);
        StripCellView cell;
        if (view) {
            cell = view->cell;
            if (i == selected && m_kind == PageKind::Weld) {
                onField = view->layout == WeldView::Layout::Changeover;
                m_weld->show(*view);
            }
        } else {
            const Post& post = m_floor.posts()[static_cast<std::size_t>(i)];
            cell.letter = post.letter();
            cell.phase = tr("free");
            if (const auto next = m_seams.nextOn(post.bench.bench.id)) {
                cell.phase = tr("free, next:");
                cell.time = tr("seam %1").arg(fromUtf8(m_seams.nextLabel(*next)));
            }
        }
        cell.selected = i == selected;
        if (!first.isEmpty() && m_heldBack->cell == i) {
            cell.phase = first;
        }
        cells.push_back(cell);
    }
    if (m_kind == PageKind::Weld && m_floor.weld(selected) == nullptr) {
        turnTo(PageKind::Seams);
        return;
    }
    for (StripCellView& cell : cells) {
        cell.plain = onField;
    }
    StatusView status;
    status.clock = wallClockText(now);
    status.soundOk = m_parts.sound != nullptr && m_parts.sound->soundOk();
    status.sound = status.soundOk ? tr("sound ok") : tr("no sound");
    if (!first.isEmpty() && m_heldBack->cell == kStatusCell) {
        status.sound = first;
    }
    status.plain = onField;
    m_strip->show(cells, status);
    m_strip->setVisible(!isDayPage()); // it shows the bench that runs itself
    std::vector<RunningBench> running;
    for (int i = 0; i < static_cast<int>(cells.size()); ++i) {
        const StripCellView& cell = cells[static_cast<std::size_t>(i)];
        const Weld* weld = m_floor.weld(i);
        running.push_back(
            {m_floor.posts()[static_cast<std::size_t>(i)].bench.bench.id,
             weld == nullptr ? std::string() : weld->id(),
             weld != nullptr && isOpen(weld->state),
             {cell.letter, cell.mark, cell.tone, cell.fraction, cell.phase, cell.time},
             cell.selected});
    }
    m_dayLog->look(now, running);
    m_shop->look(now);
    trySound(now);
    watchSound();
    power();
    alarms(now);
    m_people->look(now);
    askWho();
    if (const int tick = m_floor.isHurried() ? kTickMs : kCalmTickMs; m_tick.interval() != tick) {
        m_tick.setInterval(tick);
    }
}

// Where the log could not say it at the start yet.
void Window::readSeams(const Instant& now) {
    if (m_seams.isRead() || (m_seamsAsked && now.boot - *m_seamsAsked < kSeamsEvery)) {
        return;
    }
    m_seamsAsked = now.boot;
    m_seams.read(m_parts.writer.path());
    if (m_seams.isRead() && m_kind == PageKind::Seams) {
        showSeams();
    }
}

// While a person is asked whether the signal is heard, it sounds every four seconds.
void Window::trySound(const Instant& now) {
    const bool asked = m_kind == PageKind::Weld && m_parts.sound != nullptr &&
                       m_weld->view().layout == WeldView::Layout::Check &&
                       m_weld->view().drawing.check == QLatin1String("sound_heard");
    if (!asked) {
        m_triedAt.reset();
        return;
    }
    if (!m_triedAt || now.boot - *m_triedAt >= kTrialEvery) {
        m_triedAt = now.boot;
        m_floor.soundTrial(m_floor.selected());
    }
}

// Sound that never was there is not lost: nobody can have heard it.
void Window::watchSound() {
    const bool ok = m_parts.sound != nullptr && m_parts.sound->soundOk();
    if (ok == m_soundWas) {
        return;
    }
    m_soundWas = ok;
    if (!ok || m_soundLost) {
        m_soundLost = !ok;
        m_floor.soundChanged(ok); // repaints, and comes here again with nothing new
    }
}

void Window::sound() {
    if (m_parts.sound != nullptr) {
        m_parts.sound->show(m_floor.shift());
    }
}

// Who has seen that the battery is low need not hear it any more.
void Window::power() {
    if (m_parts.power == nullptr) {
        return;
    }
    m_parts.power->hold(m_floor.isWelding());
    const bool low = m_parts.power->batteryLow();
    m_batterySeen = m_batterySeen && low;
    m_floor.soundStation(CueKind::BatteryLow, low && !m_batterySeen);
}

/// Empty while no weld runs.
QString Window::awakeText() const {
    if (m_parts.power == nullptr) {
        return {};
    }
    switch (m_parts.power->awake()) {
    case PowerLink::Awake::Off:
        return {};
    case PowerLink::Awake::Whole:
        return tr("The tablet is kept awake until no joint is open.");
    case PowerLink::Awake::ScreenMayGoDark:
        return tr("The tablet is kept awake. Its screen may go dark: see its own settings.");
    case PowerLink::Awake::TabletMaySleep:
        return tr("The screen is kept on. The tablet may sleep: see its own settings.");
    case PowerLink::Awake::No:
        return tr("This machine can't be kept awake from here: see its own settings.");
    }
    return {};
}

void Window::alarms(const Instant& now) {
    int unsaved = 0;
    for (int i = 0; i < static_cast<int>(m_floor.posts().size()); ++i) {
        if (const Weld* weld = m_floor.weld(i)) {
            unsaved += m_floor.notSaved(*weld);
        }
    }
    if (unsaved == 0) {
        m_unsavedSince.reset();
        m_savedSeen = false;
    } else if (!m_unsavedSince) {
        m_unsavedSince = now.boot;
    }
    const bool unsavedStands =
        m_unsavedSince && now.boot - *m_unsavedSince >= kUnsaved && !m_savedSeen;
    m_floor.soundStation(CueKind::RowNotSaved, unsavedStands);
    const bool soundOk = m_parts.sound == nullptr || m_parts.sound->soundOk();
    if (soundOk) {
        m_soundSeen = false;
    }
    QString text;
    m_batteryStands = false;
    if (!m_parts.notice.isEmpty()) {
        text = m_parts.notice; // to be known before anything is done
    } else if (unsavedStands) {
        const auto trouble = m_parts.writer.state().trouble;
        const bool memoryOnly = trouble && trouble->spillFailed;
        text = (memoryOnly ? tr("Last step is in memory only: leave the machine on. %1")
                           : tr("Last step is not on disk yet. Trying again. %1"))
                   .arg(unsaved == 1 ? tr("1 step") : tr("%1 steps").arg(unsaved));
    } else if (!soundOk && !m_soundSeen) {
        text = tr("No sound. Watch this screen. The weld goes on.");
    } else if (m_parts.power != nullptr && m_parts.power->batteryLow() && !m_batterySeen) {
        text = tr("The battery is low: %1 %. Plug the charger in.")
                   .arg(m_parts.power->batteryPercent());
        m_batteryStands = true;
    }
    const bool standing = !text.isEmpty();
    bool calm = false;
    if (!standing && !m_said.isEmpty()) {
        if (now.boot - m_saidAt >= kSaid) {
            m_said.clear();
        }
        text = m_said;
        calm = m_saidCalmly;
    }
    const QString copy = copyTrouble();
    if (text.isEmpty() && copy != m_copySeen) {
        m_copySeen.clear();
        text = copy; // no limit of a weld hangs on it, so it stands without the frame
    }
    // Nothing stands over the changeover but the frame; and a bench that calls for hands is seen in
    // the strip.
    const bool changeover =
        m_kind == PageKind::Weld && m_weld->view().layout == WeldView::Layout::Changeover;
    const bool away = callsAway(now);
    m_banner->setVisible(!text.isEmpty() && !changeover && !away);
    const bool covers = !text.isEmpty() && m_kind != PageKind::Weld && !away;
    m_strip->setCovered(covers);
    m_dayLog->dayPage()->setCovered(covers && isDayPage());
    if (!text.isEmpty()) {
        // Never over a sentence, a key or a button: over the ribbon, or over the benches' cells.
        m_banner->setGeometry(
            m_kind == PageKind::Weld ? m_bannerOnWeld
            : isDayPage()            ? m_dayLog->dayPage()->bannerPlace()
                                     : m_strip->benchesPlace().translated(m_strip->pos()));
        m_banner->setText(text, tr("Seen"), calm);
    }
    m_frame->setVisible(standing && now.boot.count() / 500 % 2 == 0);
}

/// Why there is no backup or no copy for others; empty while there are.
QString Window::copyTrouble() const {
    if (m_parts.keeper == nullptr) {
        return {};
    }
    const KeeperState state = m_parts.keeper->state();
    if (state.structureTrouble) {
        return tr("The log is damaged. Finish the weld, end the program, start it again. %1")
            .arg(inWords(*state.structureTrouble));
    }
    if (state.backupTrouble) {
        return tr("No backup of the log. %1").arg(inWords(*state.backupTrouble));
    }
    if (state.photoTrouble) {
        return tr("Photos are in no backup. %1").arg(inWords(*state.photoTrouble));
    }
    if (state.snapshotTrouble) {
        return tr("No copy of the log for others. %1").arg(inWords(*state.snapshotTrouble));
    }
    return {};
}

void Window::say(const QString& text) {
    tell(text, false);
}

void Window::sayCalmly(const QString& text) {
    tell(text, true);
}

void Window::tell(const QString& text, bool calmly) {
    m_said = text;
    m_saidCalmly = calmly;
    m_saidAt = m_floor.now().boot;
    refresh();
}

void Window::told(const Result<void>& done) {
    if (!done && !isBounce(done.error())) {
        say(inWords(done.error().detail));
    }
}

// ---- presses

void Window::stepPressed() {
    const SlotView& step = m_page->stepView();
    const bool there = step.look != SlotView::Look::Hidden && step.look != SlotView::Look::Gone;
    if (there || m_kind == PageKind::Day) { // whose ring of keys may stand on another target
        emit m_page->slotPressed(SlotPlace::Step);
    }
}

void Window::slotPressed(SlotPlace place) {
    switch (m_kind) {
    case PageKind::Weld: {
        if (m_cameAt && m_floor.now().boot - *m_cameAt < kJustCame) {
            sayCalmly(tr("The screen has just come to this bench. Press again."));
            return;
        }
        const WeldView& view = m_weld->view();
        const Slot& slot = place == SlotPlace::Back      ? view.back
                           : place == SlotPlace::Earlier ? view.earlier
                           : place == SlotPlace::Stop    ? view.stop
                                                         : view.step;
        weldSlot(slot, view.onto);
        return;
    }
    case PageKind::Seams:
        if (place == SlotPlace::Step && !m_offered.empty()) {
            chooseSeam(0);
        } else if (place == SlotPlace::Stop) {
            turnTo(PageKind::Entry);
        }
        return;
    case PageKind::Entry:
        m_entry->takeLines(m_draft);
        if (place == SlotPlace::Back) {
            turnTo(PageKind::Seams);
        } else if (place == SlotPlace::Step) {
            entryToCard();
        }
        return;
    case PageKind::Card:
        if (place == SlotPlace::Stop) {
            printCard();
        } else if (m_floor.weld(m_floor.selected()) != nullptr) {
            turnTo(PageKind::Weld);
        } else if (place == SlotPlace::Back) {
            turnTo(PageKind::Seams);
        } else if (place == SlotPlace::Step) {
            prepare();
        }
        return;
    case PageKind::Pad:
        if (place == SlotPlace::Back) {
            m_pad->pad()->setText({});
            m_pad->ask(m_pad->task());
        } else if (place == SlotPlace::Stop) {
            turnTo(m_before);
        } else if (place == SlotPlace::Step) {
            keepNumber();
        }
        return;
    case PageKind::Reasons:
        if (place == SlotPlace::Back) {
            reasonsBack();
        } else if (place == SlotPlace::Step && m_floor.handsAt()) {
            turnTo(PageKind::Weld);
            weldSlot(m_weld->view().step, m_weld->view().onto);
        } else {
            turnTo(PageKind::Weld);
        }
        return;
    case PageKind::Menu:
        if (place == SlotPlace::Stop) {
            emit quitAsked();
        } else {
            turnTo(PageKind::Weld);
        }
        return;
    case PageKind::Heat:
        if (place == SlotPlace::Back) {
            m_heat->reset();
        } else {
            turnTo(PageKind::Weld);
        }
        return;
    case PageKind::People:
    case PageKind::Setup:
    case PageKind::Shop:
    case PageKind::Day:
    case PageKind::Guide:
        return; // its pages tell it themselves
    case PageKind::Procedures:
        turnTo(PageKind::Entry);
        return;
    case PageKind::Pedal:
        turnTo(PageKind::Menu);
        return;
    case PageKind::Trial:
        if (place == SlotPlace::Step && m_order) {
            WeldOrder trial = *m_order;
            trial.type = WeldType::Trial;
            openNow(std::move(trial), TrialState::Released);
        } else {
            turnTo(m_floor.weld(m_floor.selected()) != nullptr ? PageKind::Weld : PageKind::Card);
        }
        return;
    case PageKind::Closer:
    case PageKind::Photos:
        turnTo(PageKind::Weld);
        return;
    }
}

// No reason: it goes on, or it is stopped.
void Window::reasonsBack() {
    const int post = m_floor.selected();
    const Weld* weld = m_floor.weld(post);
    if (m_asked.what != ReasonFor::Stop) {
        askReason({ReasonFor::Stop, m_asked.code});
    } else if (weld != nullptr && std::holds_alternative<Aligning>(weld->state)) {
        m_before = PageKind::Weld;
        askNumber(numberTask(
            *weld, NumberFor::Overshoot, m_floor.posts()[static_cast<std::size_t>(post)].letter()));
    } else {
        turnTo(PageKind::Weld); // it went on meanwhile
    }
}

void Window::weldSlot(const Slot& slot, std::int64_t onto) {
    const int post = m_floor.selected();
    const Weld* weld = m_floor.weld(post);
    if (weld == nullptr) {
        return;
    }
    if (const auto* number = std::get_if<AskNumber>(&slot.offer)) {
        m_before = PageKind::Weld;
        m_cutOut.reset();
        const QString letter = m_floor.posts()[static_cast<std::size_t>(post)].letter();
        askNumber(numberTask(*weld, number->what, letter));
        return;
    }
    if (const auto* reason = std::get_if<AskReason>(&slot.offer)) {
        askReason(*reason);
        return;
    }
    if (std::holds_alternative<NextJoint>(slot.offer)) {
        nextJoint();
        return;
    }
    if (std::holds_alternative<LookCloser>(slot.offer)) {
        lookCloser();
        return;
    }
    if (std::holds_alternative<CloseWeld>(slot.offer)) {
        const auto next = nextAlike(m_seams, *weld);
        const bool trial = weld->opened().type == WeldType::Trial;
        const bool another = next && (trial || next->label != weld->opened().seam);
        m_floor.setNextSeam(post, another ? fromUtf8(next->label) : QString());
    }
    told(m_floor.press(post, slot.offer, onto));
}

void Window::choose(int index) {
    switch (m_kind) {
    case PageKind::Seams:
        chooseSeam(index);
        return;
    case PageKind::Menu:
        chooseMenu(m_menu.items.at(static_cast<std::size_t>(index)));
        return;
    case PageKind::Procedures:
        chooseProcedure(index);
        return;
    case PageKind::Reasons: {
        const auto& [choice, text] = m_reasons.answers.at(static_cast<std::size_t>(index));
        ReasonAnswer answer;
        answer.asked = m_asked;
        answer.choice = choice;
        answer.text = text.toStdString();
        if (m_asked.what == ReasonFor::CheckLeftOut && isForemansCheck(m_asked.code)) {
            askForeman(answer);
            return;
        }
        if (m_asked.what == ReasonFor::Trial) {
            askTrialDecision(answer);
            return;
        }
        turnTo(PageKind::Weld);
        told(m_floor.answer(m_floor.selected(), answer));
        return;
    }
    case PageKind::Trial:
        chooseTrial(index);
        return;
    case PageKind::Closer:
        chooseCloser(index);
        return;
    case PageKind::Photos:
        keepPhotoOf(index);
        return;
    case PageKind::Entry:
    case PageKind::Card:
    case PageKind::Weld:
    case PageKind::Pad:
    case PageKind::Day:
    case PageKind::Pedal:
    case PageKind::People:
    case PageKind::Setup:
    case PageKind::Shop:
    case PageKind::Heat:
    case PageKind::Guide:
        return;
    }
}

// ---- people and set-up

void Window::joinPeople() {
    connect(m_people, &PeopleFlow::turned, this, [this] { turnTo(PageKind::People); });
    connect(m_people, &PeopleFlow::left, this, [this] {
        if (m_kind == PageKind::People) { // else what the PIN was for leads on by itself
            turnTo(
                m_setup->page() != nullptr    ? PageKind::Setup
                : m_dayLog->page() != nullptr ? PageKind::Day
                : m_shop->page() != nullptr   ? PageKind::Shop
                                              : std::exchange(m_afterWho, PageKind::Weld));
        }
    });
    connect(m_people, &PeopleFlow::said, this, &Window::say);
}

void Window::joinSetup() {
    connect(m_setup, &SetupFlow::turned, this, [this] {
        if (m_kind != PageKind::People) { // a PIN's page stands; this one comes after it
            turnTo(PageKind::Setup);
        }
    });
    connect(m_setup, &SetupFlow::left, this, [this] { turnTo(PageKind::Weld); });
    connect(m_setup, &SetupFlow::said, this, &Window::say);
    connect(m_setup, &SetupFlow::kept, this, &Window::sayCalmly);
}

// ---- the day log

DayLogShop Window::dayLogShop() {
    DayLogShop shop;
    shop.log = m_parts.writer.path();
    shop.ask = [this](const QString& forWhat, std::function<void(const ProvenPerson&)> then) {
        m_people->askForeman(forWhat, std::move(then));
    };
    shop.act = [this](const std::string& weld, const WeldDetail& detail, const ProvenPerson& by) {
        return m_floor.judge(weld, detail, by);
    };
    shop.hasForeman = [this] { return !foremenWithPin(m_people->people()).empty(); };
    shop.materials = [this] { return m_floor.materials(); };
    shop.units = [this] { return m_parts.preferences.units; };
    shop.folder = m_parts.reports;
    shop.work = m_parts.work;
    shop.closeDay = [this] { m_people->openSeal(); };
    for (const JobSeam& seam : m_parts.seams) {
        shop.job.push_back(seam.label);
        shop.jobName = seam.job;
    }
    return shop;
}

void Window::joinDayLog() {
    connect(m_dayLog, &DayLogFlow::turned, this, [this] {
        if (m_kind != PageKind::People) { // a PIN's page stands; this one comes after it
            turnTo(PageKind::Day);
        }
    });
    connect(m_dayLog, &DayLogFlow::left, this, [this](int bench) {
        bench >= 0 ? goToBench(bench) : turnTo(PageKind::Weld);
    });
    connect(m_dayLog, &DayLogFlow::said, this, &Window::say);
    connect(m_dayLog, &DayLogFlow::kept, this, &Window::sayCalmly);
}

// ---- how the shop is doing

ShopRoom Window::shopRoom() {
    ShopRoom room;
    room.log = m_parts.writer.path();
    room.ask = [this](const QString& forWhat, std::function<void(const ProvenPerson&)> then) {
        m_people->askForeman(forWhat, std::move(then));
    };
    room.hasForeman = [this] { return !foremenWithPin(m_people->people()).empty(); };
    room.benches = [this] { return m_floor.benches(); };
    room.letter = [this](const std::string& bench) {
        for (const Post& post : m_floor.posts()) {
            if (post.bench.bench.id == bench) {
                return post.letter();
            }
        }
        return fromUtf8(bench);
    };
    room.procedures = [this] { return m_floor.procedures(); };
    room.now = [this] { return m_floor.now(); };
    room.seams = m_parts.seams;
    room.folder = m_parts.reports;
    return room;
}

void Window::joinShop() {
    connect(m_shop, &ShopFlow::turned, this, [this] {
        if (m_kind != PageKind::People) { // a PIN's page stands; this one comes after it
            turnTo(PageKind::Shop);
        }
    });
    connect(m_shop, &ShopFlow::left, this, [this] { turnTo(PageKind::Weld); });
    connect(m_shop, &ShopFlow::said, this, &Window::say);
    connect(m_shop, &ShopFlow::kept, this, &Window::sayCalmly);
    connect(m_shop, &ShopFlow::seamsKept, this, &Window::takeUpSeams);
    connect(m_shop, &ShopFlow::jointAsked, this, [this](const QString& weld, qint64 number) {
        m_dayLog->openAt(weld.toStdString(), number);
        turnTo(PageKind::Day);
    });
}

// The job that lies in a file, and the seams that the log keeps.
void Window::takeUpSeams() {
    m_job = m_parts.seams;
    if (auto reader = LogReader::open(m_parts.writer.path())) {
        if (const auto kept = readJobSeams(*reader)) {
            m_job.insert(m_job.end(), kept->begin(), kept->end());
        } else { // no page stands at the start yet: it is told with the next look
            m_said = inWords(kept.error().detail);
            m_saidCalmly = false;
            m_saidAt = m_floor.now().boot;
        }
    }
    std::vector<Bench> benches;
    for (const BenchDocument& one : m_floor.benches()) {
        benches.push_back(one.bench);
    }
    m_seams = JobSeams(m_job, benches);
    m_floor.eachWeld([this](const Weld& weld) { m_seams.take(weld); });
    m_seams.read(m_parts.writer.path());
}

void Window::joinGuide() {
    connect(&m_hands, &Hands::help, this, &Window::openHelp);
    connect(m_guide, &GuideFlow::turned, this, [this] { turnTo(PageKind::Guide); });
    connect(m_guide, &GuideFlow::left, this, [this] { turnTo(PageKind::Weld); });
    connect(m_guide, &GuideFlow::said, this, &Window::say);
}

// Who is at the bench is asked once, and never while seconds count.
void Window::askWho() {
    const bool free = m_kind == PageKind::Weld || m_kind == PageKind::Seams;
    if (!free || m_floor.isHurried() || !m_people->mustAsk()) {
        return;
    }
    m_people->openWho();
}

void Window::askForeman(const ReasonAnswer& answer) {
    const int post = m_floor.selected();
    const Weld* weld = m_floor.weld(post);
    if (weld == nullptr) {
        return;
    }
    m_people->askForeman(
        tr("Joint %1 goes on without this check.").arg(weld->opened().number),
        [this, post, answer, id = weld->id()](const ProvenPerson& by) {
            told(m_floor.allow(post, id, answer, by));
        });
}

// ---- seams, card, entry

void Window::showSeams() {
    const Post& post = m_floor.posts()[static_cast<std::size_t>(m_floor.selected())];
    m_offered = m_seams.openOn(post.bench.bench.id);
    ChoiceView view;
    for (const JobSeam& seam : m_offered) {
        double length = 0;
        for (const double one : seam.lengthsMm) {
            length += one;
        }
        const SeamFinding found = m_seams.of(seam);
        ChoiceView::Choice choice;
        choice.sign = Sign::Prepare;
        choice.text = tr("%1: %2").arg(fromUtf8(m_seams.nextLabel(seam)), fromUtf8(seam.what));
        choice.under =
            found.state == SeamState::CutOut ? tr("again: joint %1 was cut out").arg(found.number)
            : found.state == SeamState::ToRepair
                ? tr("again: joint %1 is to be repaired").arg(found.number)
                : tr("%1 %2 mm, %3 mm long")
                      .arg(
                          fromUtf8(seam.sheets.empty() ? "" : seam.sheets.front().material),
                          numberText(seam.thicknessMm, 0), numberText(length, 0));
        view.choices.push_back(choice);
    }
    view.title =
        !m_seams.isRead()
            ? tr("Bench %1 is free. Which seams are made is being read.").arg(post.letter())
        : m_offered.empty() ? tr("Bench %1 is free. No seam of the job is open.").arg(post.letter())
                            : tr("Bench %1 is free. Which seam?").arg(post.letter());
    view.under = fromUtf8(post.bench.bench.name);
    if (!m_people->atBench().empty()) {
        view.under = tr("%1 · at work: %2")
                         .arg(view.under, nameFor(m_people->people(), m_people->atBench()));
    }
    view.back = hiddenSlot();
    view.stop = plainSlot(tr("Another seam"), tr("type it in"));
    view.step = m_offered.empty()
                    ? hiddenSlot()
                    : stepSlot(tr("Next: %1").arg(fromUtf8(m_seams.nextLabel(m_offered.front()))));
    m_choice->show(view);
}

void Window::openNextCard() {
    showSeams();
    if (!m_offered.empty()) {
        chooseSeam(0);
    }
}

void Window::chooseSeam(int index) {
    const JobSeam& seam = m_offered[static_cast<std::size_t>(index)];
    auto order = orderOf(seam, m_floor.procedures());
    if (!order) {
        say(inWords(order.error().detail));
        return;
    }
    order->bench = m_floor.posts()[static_cast<std::size_t>(m_floor.selected())].bench;
    order->request.scaleIsForemans =
        true; // the card warns, and his PIN is asked for before the weld
    const SeamFinding found = m_seams.of(seam);
    order->seam = m_seams.nextLabel(seam);
    m_orderName = tr("Seam %1, %2").arg(fromUtf8(*order->seam), fromUtf8(seam.what));
    if (found.state == SeamState::Open) {
        m_order = std::move(*order);
        turnTo(PageKind::Card);
        return;
    }
    order->reweldOf = found.weld;
    m_cutOut = std::move(*order);
    m_before = PageKind::Seams;
    askNumber(lostTask(found.number));
}

/// A seam of the job that was cut out, with what was lost of it: to its card.
void Window::cutOutToCard(double lostMm) {
    m_order = *std::exchange(m_cutOut, std::nullopt);
    m_order->lostUm = std::llround(lostMm * 1e3);
    flagRewelds(*m_order);
    turnTo(PageKind::Card);
}

void Window::flagRewelds(WeldOrder& order) {
    const std::string label = order.seam.value_or("");
    const auto allowed = reweldsAllowed(m_job, order.job.value_or(""), label);
    if (allowed && reweldsOf(label) > *allowed) {
        order.flags.emplace_back("rewelds_exceeded");
        say(tr("The job lets this seam be welded again %1 times. It is in the record.")
                .arg(*allowed));
    }
}

void Window::openHeat() {
    for (int post = 0; post < static_cast<int>(m_floor.posts().size()); ++post) {
        const Weld* weld = m_floor.weld(post);
        if (weld != nullptr && (std::holds_alternative<BuildingUp>(weld->state) ||
                                std::holds_alternative<Cooling>(weld->state))) {
            say(tr("While a joint cools its clock and its scale decide. Look at this later."));
            return;
        }
    }
    const Post& post = m_floor.posts()[static_cast<std::size_t>(m_floor.selected())];
    const Weld* weld = m_floor.weld(m_floor.selected());
    if (weld == nullptr && !m_order) {
        say(tr("Choose a seam first: its plan is what is looked at."));
        return;
    }
    const auto plan = weld != nullptr ? Result<WeldPlan>(weld->plan)
                                      : planWithSheets(
                                            m_order->request, m_order->procedure.procedure,
                                            &m_order->bench.bench, m_order->sheets);
    const auto course =
        plan ? courseOf(*plan, &post.bench.bench) : tl::unexpected<Error>(plan.error());
    const auto opened = course ? m_heat->open(*course, m_floor.materials())
                               : Result<void>(tl::unexpected<Error>(course.error()));
    if (!opened) {
        say(inWords(opened.error().detail));
        return;
    }
    turnTo(PageKind::Heat);
}

void Window::showCard() {
    const int selected = m_floor.selected();
    const Post& post = m_floor.posts()[static_cast<std::size_t>(selected)];
    const Weld* weld = m_floor.weld(selected);
    if (weld != nullptr) {
        m_shown.plan = weld->plan;
        m_shown.seam =
            weld->opened().seam ? tr("Seam %1").arg(fromUtf8(*weld->opened().seam)) : QString();
        m_shown.sheets = weld->opened().sheets;
    } else if (m_order) {
        auto plan = planWithSheets(
            m_order->request, m_order->procedure.procedure, &m_order->bench.bench, m_order->sheets);
        if (!plan) {
            say(inWords(plan.error().detail));
            return;
        }
        m_shown.plan = std::move(*plan);
        m_shown.seam = m_orderName;
        m_shown.sheets = m_order->sheets;
    } else {
        return;
    }
    m_shown.bench = post.bench.bench;
    m_shown.letter = post.letter();
    m_shown.opened = weld != nullptr;
    askCardHeat();
    drawCard();
}

// The estimate takes some tenths of a second, so the card stands first.
void Window::askCardHeat() {
    auto course = courseOf(m_shown.plan, &m_shown.bench);
    if (!course || !materialFor(m_floor.materials(), course->material)) {
        m_heatWorker->drop();
        m_shown.course.reset();
        m_shown.heat.reset();
        return;
    }
    if (m_shown.course == *course) {
        return; // it is there, or on its way
    }
    m_shown.course = std::move(*course);
    m_shown.heat.reset();
    m_heatWorker->ask(*m_shown.course, m_floor.materials());
}

void Window::drawCard() {
    const HeatEstimate* heat = m_shown.heat ? &*m_shown.heat : nullptr;
    const BatchPlace place = m_shown.opened             ? BatchPlace::DayLog
                             : m_order && m_order->seam ? BatchPlace::Job
                                                        : BatchPlace::Entry;
    CardView view = cardView(
        m_shown.plan, m_shown.bench, m_shown.letter, m_shown.seam, m_parts.preferences.units, heat,
        m_floor.practises() ? QString() : batchMissing(m_shown.sheets, place));
    if (heat == nullptr && m_shown.course) {
        view.estimate = tr("Estimate: it is being worked out.");
    }
    m_card->show(view, m_shown.opened);
}

void Window::printCard() {
    if (m_floor.practises() && !isDemo()) {
        say(tr("No page in practice: nothing on it would tell it from a real one."));
        return;
    }
    CardWork work;
    work.bench = tr("%1, %2").arg(m_shown.letter, fromUtf8(m_shown.bench.name));
    work.seam = m_shown.seam;
    work.sheets = m_shown.sheets;
    work.demo = isDemo();
    const Instant now = m_floor.now();
    const QString day = QString::fromStdString(toIsoDate(now.utc, now.offset));
    work.printed = day + " " + wallClockText(now);
    // Page and estimate take some tenths of a second and the disk as long as it likes: not on the
    // thread that shows the benches.
    m_parts.desk.run<Result<QString>>(
        this,
        [work, shown = m_shown, materials = m_floor.materials(), units = m_parts.preferences.units,
         folder = m_parts.reports, stem = "seamclock-card-" + day](Office&) {
            std::optional<HeatEstimate> heat = shown.heat;
            if (!heat && shown.course) {
                if (auto made = estimateHeat(*shown.course, materials)) {
                    heat = std::move(*made);
                }
            }
            return saveCardPdf(
                cardSheet(shown.plan, &shown.bench, work, units, heat ? &*heat : nullptr),
                paperOfLocale(), folder, stem);
        },
        [this](const Result<QString>& saved) {
            tell(
                saved ? tr("The card is saved: %1").arg(*saved) : inWords(saved.error().detail),
                saved.has_value());
        });
}

void Window::prepare() {
    if (!m_order) {
        return;
    }
    begin(*m_order);
}

// ---- series, trial joints, re-welds

/// Opens it, or asks first whether the series may begin.
void Window::begin(WeldOrder order) {
    if (m_floor.practises()) { // nobody tests what is only practised
        openNow(std::move(order), TrialState::Released);
        return;
    }
    const Procedure& procedure = order.procedure.procedure;
    const CertificateState certificate = m_people->certificate(
        procedure.material, std::llround(inMicrometres(order.request.thickness)));
    const std::string_view flag = flagOf(certificate);
    if (flag.empty()) {
        askTrial(order);
        return;
    }
    order.flags.emplace_back(flag);
    const QString who = m_people->atBench().empty()
                            ? tr("Nobody in particular")
                            : nameFor(m_people->people(), m_people->atBench());
    m_people->askForeman(
        tr("%1, %2 mm: %3.")
                .arg(
                    fromUtf8(procedure.material),
                    numberText(inMillimetres(order.request.thickness), 0), findingWord(flag)) +
            QLatin1Char(' ') + who,
        [this, order](const ProvenPerson&) { askTrial(order); });
}

void Window::askTrial(const WeldOrder& order) {
    const auto trial = m_floor.trialOf(order);
    if (!trial) {
        say(inWords(trial.error().detail));
        return;
    }
    if (trial->state == TrialState::Released) {
        openNow(order, trial->state);
        return;
    }
    m_order = order;
    m_trial = *trial;
    turnTo(PageKind::Trial);
}

void Window::openNow(WeldOrder order, TrialState trial) {
    if (trial != TrialState::Released) {
        order.flags.emplace_back(flagOf(trial));
    }
    if (!m_floor.practises() && !hasBatches(order.sheets)) {
        order.flags.emplace_back("batch_missing");
    }
    const auto opened = m_floor.open(m_floor.selected(), order);
    if (!opened) {
        told(opened);
        return;
    }
    turnTo(PageKind::Weld);
}

void Window::passTrial() {
    if (m_kind == PageKind::Trial && m_order) {
        openNow(*m_order, m_trial.state);
    }
}

void Window::showTrial() {
    const Post& post = m_floor.posts()[static_cast<std::size_t>(m_floor.selected())];
    m_trialAsked =
        trialQuestion(m_trial, post.letter(), !foremenWithPin(m_people->people()).empty());
    m_choice->show(m_trialAsked.page);
}

void Window::chooseTrial(int index) {
    if (!m_order) {
        return;
    }
    if (m_trialAsked.answers.at(static_cast<std::size_t>(index)) == TrialAnswer::Without) {
        openNow(*m_order, m_trial.state);
        return;
    }
    m_people->askForeman(
        tr("Trial joint %1 is released.").arg(m_trial.number),
        [this, trial = m_trial, order = *m_order](const ProvenPerson& by) {
            const auto released = m_floor.decide(trial.weld, Decision::Accept, "trial_held", by);
            if (!released) {
                told(released);
                return;
            }
            openNow(order, TrialState::Released);
        });
}

void Window::askTrialDecision(const ReasonAnswer& answer) {
    const Weld* weld = m_floor.weld(m_floor.selected());
    if (weld == nullptr) {
        return;
    }
    const bool held = answer.choice == "trial_held";
    m_people->askForeman(
        (held ? tr("Trial joint %1 is released.") : tr("Trial joint %1 is cut out."))
            .arg(weld->opened().number),
        [this, held, choice = answer.choice, id = weld->id()](const ProvenPerson& by) {
            told(m_floor.decide(id, held ? Decision::Accept : Decision::CutOut, choice, by));
        });
}

void Window::nextJoint() {
    const int post = m_floor.selected();
    const Weld* weld = m_floor.weld(post);
    const Instant& ended = weld->events.back().at;
    const Instant now = m_floor.now();
    if (ended.bootId == now.bootId && now.boot - ended.boot < kBounce) {
        return; // the press that saved the joint, twice
    }
    auto order = m_floor.sameAgain(post);
    if (!order) {
        say(inWords(order.error().detail));
        return;
    }
    order->type = WeldType::Production;
    const Post& at = m_floor.posts()[static_cast<std::size_t>(post)];
    if (!at.nextSeam.isEmpty()) {
        const auto seam = nextAlike(m_seams, *weld);
        auto next = seam ? orderOf(*seam, m_floor.procedures())
                         : Result<WeldOrder>(fail(ErrorCode::Missing, "that seam is made by now"));
        if (!next) {
            say(inWords(next.error().detail));
            return;
        }
        next->bench = order->bench;
        next->request.drag = order->request.drag; // as measured on this bench
        next->request.scaleIsForemans = true;
        order = std::move(next);
    }
    begin(*order);
}

void Window::weldAgain(double lostMm) {
    auto order = m_floor.weldAgain(m_floor.selected(), std::llround(lostMm * 1e3));
    turnTo(PageKind::Weld);
    if (!order) {
        say(inWords(order.error().detail));
        return;
    }
    order->type = WeldType::Production;
    flagRewelds(*order);
    begin(*order);
}

// ---- by a person's own eye

void Window::lookCloser() {
    const Weld* weld = m_floor.weld(m_floor.selected());
    if (weld == nullptr) {
        return;
    }
    m_closer = closerQuestion(*weld);
    m_choice->show(m_closer.page);
    turnTo(PageKind::Closer);
}

void Window::chooseCloser(int index) {
    const auto at = static_cast<std::size_t>(index);
    if (at < m_closer.grades.size()) {
        const auto& [scheme, level] = m_closer.grades[at];
        turnTo(PageKind::Weld);
        told(m_floor.grade(m_floor.selected(), scheme, level));
        return;
    }
    QStringList folders = m_parts.photos;
    if (!m_parts.reports.isEmpty()) {
        folders.push_back(m_parts.reports);
    }
    m_choice->show(photoQuestion(folders, m_photos));
    turnTo(PageKind::Photos);
}

// The disk takes as long as it likes: not on the thread that shows the benches.
void Window::keepPhotoOf(int index) {
    const int post = m_floor.selected();
    const Weld* weld = m_floor.weld(post);
    if (weld == nullptr) {
        return;
    }
    m_parts.desk.run<Result<PhotoAdded>>(
        this,
        [file = m_photos.at(index), log = fromUtf8(m_parts.writer.path())](Office&) {
            return keepPhoto(file, log);
        },
        [this, post, id = weld->id()](const Result<PhotoAdded>& photo) {
            const Weld* there = m_floor.weld(post);
            if (!photo) {
                say(inWords(photo.error().detail));
            } else if (there == nullptr || there->id() != id) {
                say(tr("The joint of that photo is gone from its bench."));
            } else {
                const auto kept = m_floor.addPhoto(post, *photo);
                tell(
                    kept ? tr("The photo is kept: %1").arg(fromUtf8(photo->name))
                         : inWords(kept.error().detail),
                    kept.has_value());
            }
        });
    turnTo(PageKind::Weld);
}

void Window::showEntry() {
    QString procedure;
    if (m_draft.procedure >= 0) {
        procedure = fromUtf8(
            m_floor.procedures()[static_cast<std::size_t>(m_draft.procedure)].procedure.title);
    }
    m_entry->show(m_draft, procedure, {});
}

void Window::entryToCard() {
    const Post& post = m_floor.posts()[static_cast<std::size_t>(m_floor.selected())];
    WeldOrder order;
    order.procedure = m_floor.procedures()[static_cast<std::size_t>(m_draft.procedure)];
    order.bench = post.bench;
    order.request.thickness = millimetres(*m_draft.thicknessMm);
    order.request.lengths = {millimetres(*m_draft.lengthMm)};
    order.request.ambient = Temperature::celsius(*m_draft.ambientC);
    order.request.scaleIsForemans = true;
    for (const QString& batch : m_draft.batches) {
        Sheet sheet;
        sheet.material = order.procedure.procedure.material;
        sheet.maker = m_draft.maker.toStdString();
        sheet.batch = batch.toStdString();
        sheet.thicknessUm = std::llround(*m_draft.thicknessMm * 1000);
        order.sheets.push_back(sheet);
    }
    const auto plan =
        planWithSheets(order.request, order.procedure.procedure, &order.bench.bench, order.sheets);
    if (!plan) {
        say(inWords(plan.error().detail));
        return;
    }
    m_order = std::move(order);
    m_orderName.clear();
    turnTo(PageKind::Card);
}

void Window::chooseProcedure(int index) {
    m_entry->takeLines(m_draft);
    m_draft.procedure = index;
    if (!m_draft.ambientC) {
        m_draft.ambientC = m_floor.procedures()[static_cast<std::size_t>(index)]
                               .procedure.referenceAmbient.inCelsius();
    }
    turnTo(PageKind::Entry);
}

// ---- numbers and reasons

void Window::askNumber(const NumberTask& task) {
    m_pad->ask(task);
    turnTo(PageKind::Pad);
}

void Window::keepNumber() {
    const NumberShown number = m_pad->now();
    if (number.outcome == NumberOutcome::None) {
        return;
    }
    const NumberFor what = m_pad->task().what;
    const int post = m_floor.selected();
    switch (what) {
    case NumberFor::SheetThickness:
        m_draft.thicknessMm = number.value;
        turnTo(PageKind::Entry);
        return;
    case NumberFor::SeamLength:
        m_draft.lengthMm = number.value;
        turnTo(PageKind::Entry);
        return;
    case NumberFor::ShopTemperature:
        m_draft.ambientC = number.value;
        turnTo(PageKind::Entry);
        return;
    case NumberFor::LengthLost:
        if (m_cutOut) {
            cutOutToCard(number.value);
        } else {
            weldAgain(number.value);
        }
        return;
    case NumberFor::PlateTemperature:
    case NumberFor::Drag:
    case NumberFor::Recheck:
    case NumberFor::Overshoot:
    case NumberFor::BeadHeight:
    case NumberFor::BeadWidth:
    case NumberFor::BeadK:
    case NumberFor::Misalignment:
    case NumberFor::BenchValue:
        break;
    }
    Result<void> kept;
    if (number.outcome == NumberOutcome::StopPlate) {
        kept = m_floor.failPlate(post, number.value);
        if (kept) {
            say(tr("The plate is outside its window. Wait, then read it again."));
        }
    } else {
        kept = m_floor.answer(post, NumberAnswer{what, number.value});
    }
    told(kept);
    // The next value of the same kind is asked at once.
    const Weld* weld = m_floor.weld(post);
    const auto view = m_floor.view(post, m_floor.now(), false, false);
    if (kept && weld != nullptr && view && number.outcome == NumberOutcome::Keep) {
        if (const auto* more = std::get_if<AskNumber>(&view->step.offer);
            more != nullptr && what != NumberFor::Recheck) {
            askNumber(numberTask(
                *weld, more->what, m_floor.posts()[static_cast<std::size_t>(post)].letter()));
            return;
        }
    }
    turnTo(PageKind::Weld);
}

/// What cooling still lacks, of the weld on the bench that stands.
QString Window::coolingShort() const {
    const Weld* weld = m_floor.weld(m_floor.selected());
    const auto* cooling = weld != nullptr ? std::get_if<Cooling>(&weld->state) : nullptr;
    if (cooling == nullptr) {
        return leftText(Milliseconds(0));
    }
    const auto t = weldTimeAt(*weld, m_floor.now());
    return leftText(t ? cooling->due.lo - t->lo : Milliseconds(0));
}

void Window::askReason(const AskReason& asked) {
    m_asked = asked;
    const bool foreman = !foremenWithPin(m_people->people()).empty();
    m_reasons = reasonsFor(asked, coolingShort(), foreman);
    if (asked.what == ReasonFor::Stop && m_floor.handsAt()) {
        // The hands are still where they were: what they do next counts from here, too.
        m_reasons.page.step = m_weld->view().step.view;
        m_reasons.page.step.onField = false;
        m_reasons.page.step.look = SlotView::Look::Act;
    }
    m_choice->show(m_reasons.page);
    turnTo(PageKind::Reasons);
}

// ---- menu and the day's joints

void Window::openMenu() {
    if (!isFirst(kStatusCell)) {
        return;
    }
    turnTo(PageKind::Menu);
}

void Window::openDay() {
    m_dayLog->open();
    if (m_dayLog->page() != nullptr) { // also from a page of the people's, which it leaves
        turnTo(PageKind::Day);
    }
}

void Window::openHelp() {
    if (isFirst(kStatusCell)) {
        m_guide->open();
    }
}

void Window::openPractice() {
    for (int post = 0; post < static_cast<int>(m_floor.posts().size()); ++post) {
        const Weld* weld = m_floor.weld(post);
        if (weld != nullptr && isOpen(weld->state)) {
            say(tr("Bench %1 has an open weld. Practise when it is saved.")
                    .arg(m_floor.posts()[static_cast<std::size_t>(post)].letter()));
            return;
        }
    }
    emit practiceAsked();
}

void Window::openEntry() {
    if (m_kind == PageKind::People) {
        m_afterWho = PageKind::Entry; // who it is, is asked first
    } else {
        turnTo(PageKind::Entry);
    }
}

void Window::openFirstSteps() {
    if (m_floor.isWelding()) {
        say(tr("A weld is open. The first steps come when it is saved."));
        return;
    }
    emit firstStepsAsked();
}

void Window::showMenu() {
    const std::string& at = m_people->atBench();
    m_menu = menuFor(
        m_parts.preferences, at.empty() ? QString() : nameFor(m_people->people(), at), isDemo());
    m_menu.page.under = awakeText();
    m_choice->show(m_menu.page);
}

void Window::chooseMenu(MenuItem item) {
    const bool shops = item == MenuItem::People || item == MenuItem::Setup ||
                       item == MenuItem::Shop || item == MenuItem::Practice ||
                       item == MenuItem::FirstSteps;
    if (shops && m_floor.practises() && !isDemo()) {
        say(tr("This is practice already: people and set-up belong to the shop."));
        return;
    }
    switch (item) {
    case MenuItem::Day:
        openDay();
        return;
    case MenuItem::Card:
        turnTo(m_floor.weld(m_floor.selected()) != nullptr ? PageKind::Card : PageKind::Seams);
        return;
    case MenuItem::Heat:
        openHeat();
        return;
    case MenuItem::Pedal:
        turnTo(PageKind::Pedal);
        return;
    case MenuItem::People:
        m_people->openWho();
        return;
    case MenuItem::Setup:
        m_setup->open();
        return;
    case MenuItem::Shop:
        m_shop->open();
        return;
    case MenuItem::Practice:
        openPractice();
        return;
    case MenuItem::FirstSteps:
        openFirstSteps();
        return;
    case MenuItem::LeaveDemo:
        emit demoLeft(false);
        return;
    case MenuItem::RemoveDemo:
        emit demoLeft(true);
        return;
    case MenuItem::Help:
        openHelp();
        return;
    case MenuItem::Theme:
    case MenuItem::Hand:
    case MenuItem::Motion:
    case MenuItem::Words:
    case MenuItem::Speech:
    case MenuItem::Units:
        setPreferences(changedBy(item, m_parts.preferences));
        showMenu();
        return;
    }
}

} // namespace seamclock
