#include "app/operate/window.h"

#include "app/operate/tablet_look.h"
#include "app/text/numbers.h"
#include "app/text/words.h"

#include <QApplication>
#include <QPainter>
#include <utility>

namespace seamclock {
namespace {

constexpr int kTickMs = 50;      // while a bench calls for hands
constexpr int kCalmTickMs = 100; // else
constexpr Milliseconds kHeldBackFor{3'000};

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
      m_frame(new StandingFrame(this)), m_ring(new KeyRing(this)), m_weld(new WeldPage(this)),
      m_card(new CardPage(this)), m_choice(new ChoicePage(this)), m_pad(new PadPage(this)),
      m_entry(new EntryPage(this)),
      m_people(new PeopleFlow(m_parts.desk, m_floor, m_parts.reports, this)),
      m_heat(new HeatPage(this)), m_heatWorker(new HeatWorker(this)),
      m_setup(new SetupFlow(
          m_parts.desk, m_floor,
          [this](const QString& forWhat, std::function<void(const ProvenPerson&)> then) {
              m_people->askForeman(forWhat, std::move(then));
          },
          m_parts.reports, this)),
      m_dayLog(new DayLogFlow(dayLogShop(), m_ring, this)),
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
        askEntryNumber(what, false);
    });
    connect(m_banner, &AlarmBanner::pressed, this, &Window::alarmSeen);
    connect(&m_hands, &Hands::step, this, &Window::stepPressed);
    connect(&m_hands, &Hands::bench, this, &Window::benchKey);
    connect(&m_hands, &Hands::escaped, this, &Window::escaped);
    connect(&m_hands, &Hands::typed, this, [this](QChar sign) {
        if (m_kind == PageKind::Pad) {
            m_pad->pad()->type(sign);
        } else if (m_kind == PageKind::People) {
            m_people->typed(sign);
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
        offerNext();
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
    m_hands.setRing(m_ring);
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
    PageLook look = lookOf(m_parts.preferences, screen());
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
    m_ring->setLook(now);
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
    if (kind != PageKind::Trial && kind != PageKind::People) {
        m_waivedBy.reset(); // the weld it was for was not opened
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

// While a joint cools its operator has hands: for a free bench, else for what comes next on this
// one.
QString Window::meanwhile(int post) const {
    const Weld* weld = m_floor.weld(post);
    if (weld == nullptr || !std::holds_alternative<Cooling>(weld->state)) {
        return {};
    }
    const auto& posts = m_floor.posts();
    for (int i = 0; i < static_cast<int>(posts.size()); ++i) {
        const Post& other = posts[static_cast<std::size_t>(i)];
        if (m_floor.weld(i) != nullptr) {
            continue;
        }
        if (const auto next = m_seams.nextOn(other.bench.bench.id)) {
            return tr("Bench %1 is free: seam %2.")
                .arg(other.letter(), fromUtf8(m_seams.nextLabel(*next)));
        }
    }
    const auto next = m_seams.nextOn(posts[static_cast<std::size_t>(post)].bench.bench.id);
    return next ? tr("Set out seam %1's sheets.").arg(fromUtf8(m_seams.nextLabel(*next)))
                : QString();
}

void Window::refresh() {
    const Instant now = m_floor.look();
    readSeams(now);
    if (m_kind == PageKind::Reasons && m_asked.what == ReasonFor::EarlyRelease) {
        const auto left = coolingLeft();
        if (left && *left <= Milliseconds(0)) {
            turnTo(PageKind::Weld);
            sayCalmly(tr("Cooling is over by now. Release it in its order."));
            return;
        }
        if (left) { // how short it is runs on
            m_reasons = reasonsFor(m_asked, leftText(*left), false);
            m_choice->show(m_reasons.page);
        }
    }
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
        m_floor.setMeanwhile(i, meanwhile(i));
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
    // On the bench's screen a key that comes late must not meet another step's button.
    const bool atBench = m_kind == PageKind::Weld;
    m_ring->look(
        m_page->objectName() + QString::number(static_cast<int>(m_kind)) +
            (atBench ? QString::number(selected) + m_page->stepView().text : QString()),
        atBench);
    m_dayLog->look(now, running);
    m_shop->look(now);
    trySound(now);
    watchSound();
    power();
    alarms(now);
    m_people->look(now);
    askWho();
    if (const int tick = handsAreCalled(now) ? kTickMs : kCalmTickMs; m_tick.interval() != tick) {
        m_tick.setInterval(tick);
    }
}

} // namespace seamclock
