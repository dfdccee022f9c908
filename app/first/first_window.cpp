#include "app/first/first_window.h"

#include "app/operate/tablet_look.h"
#include "app/text/phrase_book.h"
#include "app/text/words.h"

#include <QApplication>
#include <algorithm>
#include <set>
#include <utility>

namespace seamclock {
namespace {

constexpr int kTickMs = 100;
constexpr Milliseconds kSaid{6'000};
constexpr int kLongestBenchName = 40; // characters: they stand in every record

/// The first of its kind who works here.
QString nameOfRole(const DeskPeople& people, Role role) {
    const auto found =
        std::find_if(people.people.begin(), people.people.end(), [role](const Person& person) {
            return person.active && person.role == role;
        });
    return found == people.people.end() ? QString() : fromUtf8(found->name);
}

} // namespace

bool needsFirstSteps(const Floor& floor, const QString& preferencesFile) {
    const FirstState state = readFirst(preferencesFile);
    return floor.posts().empty() || (state.begun && !state.done);
}

FirstWindow::FirstWindow(FirstParts parts, QWidget* parent)
    : QWidget(parent), m_parts(std::move(parts)), m_floor(m_parts.floor), m_ring(new KeyRing(this)),
      m_bar(new Sentence("firstBar", this)), m_banner(new AlarmBanner(this)),
      m_choice(new ChoicePage(this)), m_name(new NamePage(this)), m_pad(new PadPage(this)),
      m_people(new PeopleFlow(m_parts.desk, m_floor, m_parts.reports, this)),
      m_setup(new SetupFlow(
          m_parts.desk, m_floor,
          [this](const QString& forWhat, const std::function<void(const ProvenPerson&)>& then) {
              withForeman(forWhat, then);
          },
          m_parts.reports, this)),
      m_answers(readAnswers(m_parts.preferencesFile)) {
    setObjectName("firstWindow");
    setWindowTitle(tr("Seamclock: first steps"));
    setFocusPolicy(Qt::StrongFocus);
    setAutoFillBackground(true);
    m_bar->setQuiet(true);
    for (Page* page :
         {static_cast<Page*>(m_choice), static_cast<Page*>(m_name), static_cast<Page*>(m_pad)}) {
        page->hide();
        connect(page, &Page::slotPressed, this, &FirstWindow::pressed);
    }
    connect(m_choice, &ChoicePage::chosen, this, [this](int index) {
        touched();
        if (const auto chosen = m_onChosen) {
            chosen(index);
        }
    });
    connect(m_name, &NamePage::typed, this, &FirstWindow::touched);
    connect(m_banner, &AlarmBanner::pressed, this, [this] {
        m_said.clear();
        m_parts.notice.clear();
        refresh();
    });
    joinPeople();
    joinSetup();
    connect(&m_hands, &Hands::step, this, [this] {
        const SlotView::Look look = m_page->stepView().look;
        if (look != SlotView::Look::Hidden && look != SlotView::Look::Gone) {
            emit m_page->slotPressed(SlotPlace::Step);
        }
    });
    connect(&m_hands, &Hands::typed, this, [this](QChar sign) {
        touched();
        if (m_page == m_pad) {
            m_pad->pad()->type(sign);
        } else {
            m_people->typed(sign);
        }
    });
    connect(&m_hands, &Hands::erased, this, [this] {
        touched();
        if (m_page == m_pad) {
            m_pad->pad()->erase();
        } else {
            m_people->erased();
        }
    });
    m_hands.setWindow(this);
    m_hands.setRing(m_ring);
    m_hands.setPedalKey(m_parts.preferences.pedalKey);
    qApp->installEventFilter(&m_hands);
    connect(&m_tick, &QTimer::timeout, this, &FirstWindow::refresh);
    touched();
    goOn();
    applyLook();
    m_tick.start(kTickMs);
}

FirstWindow::~FirstWindow() {
    qApp->removeEventFilter(&m_hands);
}

// ---- how it looks

PageLook FirstWindow::look() const {
    return lookOf(m_parts.preferences, screen());
}

std::vector<Page*> FirstWindow::pages() const {
    std::vector<Page*> all{m_choice, m_name, m_pad};
    for (const auto& more : {m_people->pages(), m_setup->pages()}) {
        all.insert(all.end(), more.begin(), more.end());
    }
    return all;
}

void FirstWindow::applyLook() {
    const PageLook now = look();
    for (Page* page : pages()) {
        page->setLook(now);
    }
    m_ring->setLook(now);
    m_bar->setLook(*now.theme, now.metrics);
    m_banner->setLook(*now.theme, now.metrics);
    QPalette ground = palette();
    ground.setColor(QPalette::Window, now.theme->ground);
    setPalette(ground);
    placeAll();
}

void FirstWindow::placeAll() {
    const Metrics metrics = look().metrics;
    const QSizeF units(width() / metrics.perUnit, height() / metrics.perUnit);
    const Frame frame = frameOf(units, FrameKind::Page, m_parts.preferences.mirrored);
    for (Page* page : pages()) {
        page->setGeometry(rect());
    }
    const QRect strip = QRectF(
                            metrics.px(frame.strip.x()), metrics.px(frame.strip.y()),
                            metrics.px(frame.strip.width()), metrics.px(frame.strip.height()))
                            .toAlignedRect();
    m_bar->setGeometry(strip);
    m_banner->setGeometry(strip);
    m_bar->raise();
    m_banner->raise();
}

void FirstWindow::resizeEvent(QResizeEvent*) {
    placeAll();
}

void FirstWindow::setPreferences(const Preferences& preferences) {
    const Preferences& before = m_parts.preferences;
    const bool words = preferences.language != before.language || preferences.units != before.units;
    m_parts.preferences = preferences;
    if (preferences.language != spoken()) {
        speak(preferences.language);
        setWindowTitle(tr("Seamclock: first steps"));
    }
    writePreferences(preferences, m_parts.preferencesFile);
    applyLook();
    const bool own = m_page == m_choice || m_page == m_name || m_page == m_pad;
    if (const Press redraw = m_redraw; redraw && words && own) {
        redraw();
    }
    refresh();
}

void FirstWindow::refresh() {
    const Instant now = m_floor.look();
    m_people->look(now);
    if (m_page != nullptr) {
        m_ring->look(
            m_page->objectName() + (m_page == m_choice ? m_choice->view().title : QString()));
    }
    if (m_by && now.boot - m_lastPress >= kDeskStaysOpen) {
        m_by.reset(); // the next thing that is kept asks for the PIN again
    }
    if (!m_said.isEmpty() && now.boot - m_saidAt >= kSaid) {
        m_said.clear();
    }
    const QString text = m_parts.notice.isEmpty() ? m_said : m_parts.notice;
    m_banner->setVisible(!text.isEmpty());
    m_bar->setVisible(text.isEmpty());
    if (!text.isEmpty()) {
        m_banner->setText(text, tr("Seen"), m_parts.notice.isEmpty() && m_saidCalmly);
    }
}

void FirstWindow::say(const QString& text, bool calmly) {
    m_said = text;
    m_saidCalmly = calmly;
    m_saidAt = m_floor.now().boot;
    refresh();
}

// ---- pages

void FirstWindow::turnTo(Page* page) {
    if (page == nullptr) {
        return;
    }
    if (page != m_page) {
        if (m_page != nullptr) {
            m_page->hide();
        }
        m_page = page;
        m_page->QWidget::show();
    }
    m_bar->raise();
    m_banner->raise();
    setFocus();
    if (page == m_name) {
        m_name->takeKeys();
    }
    m_people->takeKeys();
    m_setup->takeKeys();
    const FirstState now = state();
    const auto next = nextStep(now);
    int kept = 0;
    for (const FirstStep step : kFirstSteps) {
        kept += isKept(now, step) ? 1 : 0;
    }
    m_bar->setText(
        next || !isKept(now, FirstStep::Bench)
            ? tr("First steps: %1 of %2 are done. What is done is kept.")
                  .arg(kept)
                  .arg(std::size(kFirstSteps))
            : tr("First steps"));
    refresh();
}

void FirstWindow::ask(Page* page, Press step, Press stop, Press back) {
    m_people->close();
    m_setup->close();
    m_presses = {std::move(step), std::move(stop), std::move(back)};
    turnTo(page);
}

void FirstWindow::choose(
    const ChoiceView& view, std::function<void(int)> chosen, Press step, Press stop, Press back) {
    m_onChosen = std::move(chosen);
    m_choice->show(view);
    ask(m_choice, std::move(step), std::move(stop), std::move(back));
}

void FirstWindow::pressed(SlotPlace place) {
    touched();
    m_presses.press(place);
}

void FirstWindow::touched() {
    m_lastPress = m_floor.now().boot;
}

void FirstWindow::joinPeople() {
    connect(m_people, &PeopleFlow::turned, this, [this] {
        touched();
        turnTo(m_people->page());
    });
    // What stood too long, or a PIN's page that was closed.
    connect(m_people, &PeopleFlow::left, this, [this] {
        if (m_people->page() != nullptr) {
            return; // a proof led on to the next of its pages
        }
        if (m_setup->page() != nullptr) {
            turnTo(m_setup->page());
        } else if (m_page != nullptr && !m_page->isHidden() && m_redraw) {
            m_redraw();
        }
    });
    connect(m_people, &PeopleFlow::said, this, [this](const QString& text) { say(text); });
}

void FirstWindow::joinSetup() {
    connect(m_setup, &SetupFlow::turned, this, [this] {
        touched();
        if (m_people->page() == nullptr) { // a PIN's page stands; this one comes after it
            turnTo(m_setup->page());
        }
    });
    connect(m_setup, &SetupFlow::left, this, [this] { showBench(); });
    connect(m_setup, &SetupFlow::said, this, [this](const QString& text) { say(text); });
    connect(m_setup, &SetupFlow::kept, this, [this](const QString& text) {
        if (m_floor.posts().empty()) {
            say(text, true);
        } else {
            benchIsKept();
        }
    });
}

// ---- the order of the steps

FirstState FirstWindow::state() const {
    FirstState now = readFirst(m_parts.preferencesFile);
    now.shop = m_parts.preferences.shop;
    const DeskPeople& people = m_people->people();
    now.foreman = nameOfRole(people, Role::Foreman);
    now.welder = nameOfRole(people, Role::Operator);
    if (const auto benches = m_floor.benches(); !benches.empty()) {
        now.bench = fromUtf8(benches.front().bench.name);
    }
    now.demo = lookAtDemo(m_parts.demoFolder);
    return now;
}

void FirstWindow::keep(const std::function<void(FirstState&)>& change) {
    FirstState next = state();
    change(next);
    writeFirst(next, m_parts.preferencesFile);
}

void FirstWindow::goOn() {
    const FirstState now = state();
    if (!now.screen) {
        showScreen();
    } else if (!now.begun) {
        showGuide();
    } else if (const auto next = now.done ? std::nullopt : nextStep(now)) {
        show(*next);
    } else {
        showOverview();
    }
}

void FirstWindow::later(FirstStep step) {
    keep([step](FirstState& now) { now.later.insert(step); });
    goOn();
}

void FirstWindow::show(FirstStep step) {
    switch (step) {
    case FirstStep::Screen:
        showScreen();
        return;
    case FirstStep::Shop:
        showShop();
        return;
    case FirstStep::Foreman:
        showForeman();
        return;
    case FirstStep::Bench:
        showBench();
        return;
    case FirstStep::Operator:
        showOperator();
        return;
    }
}

void FirstWindow::showScreen() {
    m_redraw = [this] { showScreen(); };
    choose(
        screenQuestion(m_parts.preferences),
        [this](int index) {
            Preferences next = m_parts.preferences;
            const auto languages = static_cast<int>(kLanguages.size());
            if (index < languages) {
                next.language = kLanguages[static_cast<std::size_t>(index)];
            } else {
                next.units = index == languages ? UnitSystem::Metric : UnitSystem::Imperial;
            }
            setPreferences(next);
        },
        [this] {
            writePreferences(m_parts.preferences, m_parts.preferencesFile);
            keep([](FirstState& now) { now.screen = true; });
            goOn();
        },
        {});
}

void FirstWindow::showGuide() {
    m_redraw = [this] { showGuide(); };
    const FirstQuestion question = guideQuestion(state());
    choose(
        question.page,
        [this, items = question.items](int index) {
            chooseItem(items.at(static_cast<std::size_t>(index)), [this] { showGuide(); });
        },
        [this] {
            keep([](FirstState& now) { now.begun = true; });
            goOn();
        },
        [this] { emit quitAsked(); });
}

void FirstWindow::showOverview() {
    m_redraw = [this] { showOverview(); };
    const FirstState now = state();
    const FirstQuestion question = overviewQuestion(now);
    choose(
        question.page,
        [this, items = question.items](int index) {
            chooseItem(items.at(static_cast<std::size_t>(index)), [this] { showOverview(); });
        },
        [this, now] {
            if (!isKept(now, FirstStep::Bench)) {
                showBench();
                return;
            }
            keep([](FirstState& all) { all.done = true; });
            emit finished(!now.done);
        },
        [this] { emit quitAsked(); });
}

void FirstWindow::chooseItem(FirstItem item, const Press& back) {
    switch (item) {
    case FirstItem::Screen:
        show(FirstStep::Screen);
        return;
    case FirstItem::Shop:
        show(FirstStep::Shop);
        return;
    case FirstItem::Foreman:
        show(FirstStep::Foreman);
        return;
    case FirstItem::Bench:
        show(FirstStep::Bench);
        return;
    case FirstItem::Operator:
        show(FirstStep::Operator);
        return;
    case FirstItem::Demo:
        openDemo(back);
        return;
    case FirstItem::RemoveDemo:
        removeDemo(back);
        return;
    }
}

void FirstWindow::showShop() {
    m_redraw = [this] { showShop(); };
    NameView view;
    view.title = tr("What is the shop called?");
    view.under = meaningOf(FirstStep::Shop);
    view.line = tr("name of the shop");
    view.most = kLongestShop;
    view.back = hiddenSlot();
    view.stop = plainSlot(tr("Later"));
    view.step = stepSlot(tr("Keep it"));
    m_name->setName(m_parts.preferences.shop);
    m_name->show(view);
    ask(
        m_name,
        [this] {
            const QString name = m_name->name();
            if (name.isEmpty()) {
                say(tr("Nothing is typed; allowed: 1 to %1 characters.").arg(kLongestShop));
                return;
            }
            m_parts.preferences.shop = name;
            writePreferences(m_parts.preferences, m_parts.preferencesFile);
            goOn();
        },
        [this] { later(FirstStep::Shop); });
}

// ---- people

void FirstWindow::showForeman() {
    m_redraw = [this] { showForeman(); };
    m_setup->close();
    m_people->enterFirstForeman(
        meaningOf(FirstStep::Foreman),
        [this](const ProvenPerson& by) {
            m_by = by;
            touched();
            goOn();
        },
        [this] { later(FirstStep::Foreman); });
}

void FirstWindow::showOperator() {
    // A PIN's page that is closed leads to the overview, and not to itself.
    m_redraw = [this, proven = m_by.has_value()] { proven ? showOperator() : showOverview(); };
    if (foremenWithPin(m_people->people()).empty()) {
        needForeman(FirstStep::Operator);
        return;
    }
    withForeman(tr("Somebody who welds is entered."), [this](const ProvenPerson& by) {
        m_by = by;
        touched();
        m_setup->close();
        m_people->enterOperator(
            by, meaningOf(FirstStep::Operator), [this] { goOn(); },
            [this] { later(FirstStep::Operator); });
    });
}

void FirstWindow::needForeman(FirstStep step) {
    choose(
        foremanFirst(step), [this](int) { showForeman(); }, {}, [this, step] { later(step); });
}

void FirstWindow::withForeman(const QString& forWhat, const Proven& use) {
    if (m_by) {
        const ProvenPerson by = *m_by;
        use(by);
        return;
    }
    m_people->askForeman(forWhat, use);
}

// ---- the bench

std::set<std::string> FirstWindow::benchIds() const {
    std::set<std::string> ids;
    for (const BenchDocument& one : m_floor.benches()) {
        ids.insert(one.bench.id);
    }
    return ids;
}

void FirstWindow::showBench() {
    m_redraw = [this] { showBench(); };
    if (foremenWithPin(m_people->people()).empty()) {
        needForeman(FirstStep::Bench);
        return;
    }
    if (m_answers == BenchAnswers()) {
        askBench(BenchQuestion::Name);
    } else {
        showBenchSummary();
    }
}

/// After each answer: it is kept, and the next is asked.
void FirstWindow::answered() {
    writeAnswers(m_answers, m_parts.preferencesFile);
    const auto next = nextQuestion(m_answers, m_parts.preferences.units);
    if (next) {
        askBench(*next);
    } else {
        showBenchSummary();
    }
}

void FirstWindow::askBench(BenchQuestion question) {
    m_redraw = [this, question] { askBench(question); };
    switch (question) {
    case BenchQuestion::Name:
        askBenchName();
        return;
    case BenchQuestion::ScaleUnit:
        askBenchChoice(
            tr("What is printed on the scale?"), tr("Another unit: Set-up has a form for it."),
            {tr("mm"), tr("inch")}, [this](int index) {
                m_answers.unit = index == 0 ? "mm" : "in";
                answered();
            });
        return;
    case BenchQuestion::Division: {
        const std::vector<double> offered = offeredDivisions(m_answers.unit);
        QStringList answers;
        const QString unit = m_answers.unit == "in" ? tr("inch") : tr("mm");
        for (const double one : offered) {
            BenchAnswers with = m_answers;
            with.division = one;
            answers << answerText(with, question, m_parts.preferences.units);
        }
        askBenchChoice(
            tr("Smallest division of the scale"), tr("The smallest step that a hand can set."),
            answers, [this, offered](int index) {
                m_answers.division = offered.at(static_cast<std::size_t>(index));
                answered();
            });
        return;
    }
    case BenchQuestion::Release:
        m_answers.release.clear();
        askRelease();
        return;
    case BenchQuestion::Known:
        askBenchChoice(
            tr("How is the spring's force known?"),
            tr("A plate's rate stands in the record as not calibrated."),
            {tr("Rate from its plate"), tr("Calibrate it")},
            [this](int index) {
                m_answers.calibrates = index == 1;
                answered();
            },
            {tr("printed on spring or machine"), tr("readings against a load cell")});
        return;
    case BenchQuestion::Springs:
        askBenchChoice(
            tr("How many springs press together?"), tr("Their rates add."),
            {tr("One"), tr("Two"), tr("Three"), tr("Four")}, [this](int index) {
                m_answers.springs = index + 1;
                answered();
            });
        return;
    case BenchQuestion::LongestSeam:
    case BenchQuestion::ThinnestSheet:
    case BenchQuestion::ThickestSheet:
    case BenchQuestion::ScaleEnd:
    case BenchQuestion::Zero:
    case BenchQuestion::Rate:
    case BenchQuestion::Preload:
        askBenchNumber(question);
        return;
    }
}

void FirstWindow::askBenchName() {
    NameView view;
    view.title = tr("What do people call the bench?");
    view.under = meaningOf(FirstStep::Bench);
    view.line = tr("name of the bench");
    view.most = kLongestBenchName;
    view.back = hiddenSlot();
    view.stop = plainSlot(tr("Later"));
    view.step = stepSlot(tr("Go on"));
    m_name->setName(
        m_answers.name.isEmpty() ? tr("Bench %1").arg(static_cast<int>(m_floor.posts().size()) + 1)
                                 : m_answers.name);
    m_name->show(view);
    ask(
        m_name,
        [this] {
            const QString name = m_name->name();
            if (name.isEmpty()) {
                say(tr("Nothing is typed; allowed: 1 to %1 characters.").arg(kLongestBenchName));
                return;
            }
            m_answers.name = name;
            answered();
        },
        [this] { later(FirstStep::Bench); });
}

void FirstWindow::askBenchNumber(BenchQuestion question) {
    const NumberTask task = benchTask(question, m_answers, m_parts.preferences.units);
    m_pad->ask(task);
    ask(
        m_pad,
        [this, question] {
            const NumberShown number = m_pad->now();
            if (number.outcome == NumberOutcome::Keep) {
                take(m_answers, question, number.value, m_parts.preferences.units);
                answered();
            }
        },
        [this] { showBenchSummary(); }, [this] { m_pad->ask(NumberTask(m_pad->task())); });
}

void FirstWindow::askBenchChoice(
    const QString& title, const QString& under, const QStringList& answers,
    const std::function<void(int)>& chosen, const QStringList& beside) {
    ChoiceView view;
    view.title = title;
    view.under = under;
    for (qsizetype i = 0; i < answers.size(); ++i) {
        ChoiceView::Choice choice;
        choice.text = answers[i];
        choice.under = beside.value(i);
        choice.sign = Sign::Spring;
        view.choices.push_back(choice);
    }
    view.back = hiddenSlot();
    view.stop = plainSlot(tr("Close"), tr("nothing is kept"));
    view.step = hiddenSlot();
    choose(view, chosen, {}, [this] { showBenchSummary(); });
}

/// Step by step, as Set-up asks it, until only the sheet is left.
void FirstWindow::askRelease() {
    ChoiceView view;
    view.title = m_answers.release.empty()
                     ? tr("What is done first when cooling is over?")
                     : tr("What is done then? (step %1)").arg(m_answers.release.size() + 1);
    view.under = tr("The machine's own instructions decide. The last step is the sheet.");
    std::vector<std::string> left;
    for (const std::string& step : releaseSteps()) {
        const auto& chosen = m_answers.release;
        if (std::find(chosen.begin(), chosen.end(), step) == chosen.end()) {
            ChoiceView::Choice choice;
            choice.text = releaseSentence(step);
            choice.sign = Sign::Release;
            view.choices.push_back(choice);
            left.push_back(step);
        }
    }
    view.back = hiddenSlot();
    view.stop = plainSlot(tr("Close"), tr("nothing is kept"));
    view.step = hiddenSlot();
    choose(
        view,
        [this, left](int index) {
            const std::string last = releaseSteps().back();
            m_answers.release.push_back(left.at(static_cast<std::size_t>(index)));
            if (m_answers.release.back() != last && left.size() == 2) {
                m_answers.release.push_back(last); // the sheet is all that is left
            }
            if (m_answers.release.back() == last) {
                answered();
            } else {
                askRelease();
            }
        },
        {},
        [this] {
            m_answers.release.clear();
            showBenchSummary();
        });
}

/// What was answered, each to be answered anew by a touch.
void FirstWindow::showBenchSummary() {
    m_redraw = [this] { showBenchSummary(); };
    const UnitSystem units = m_parts.preferences.units;
    const auto next = nextQuestion(m_answers, units);
    const bool calibrates = m_answers.calibrates.value_or(false);
    const std::vector<BenchQuestion> questions = questionsOf(m_answers, units);
    ChoiceView view;
    view.title = m_answers.name.isEmpty() ? tr("A bench")
                 : next                   ? tr("%1: go on, or later.").arg(m_answers.name)
                                          : tr("%1: is it so?").arg(m_answers.name);
    view.under = next ? meaningOf(FirstStep::Bench)
                      : tr("Gap of the tables and the rest stand in Set-up: look at them before "
                           "the first weld.");
    for (const BenchQuestion question : questions) {
        ChoiceView::Choice choice;
        choice.text = answerText(m_answers, question, units);
        choice.under = questionWord(question);
        view.choices.push_back(choice);
    }
    view.narrow = true;
    view.back = hiddenSlot();
    view.stop = plainSlot(tr("Later"));
    view.step = stepSlot(
        next         ? tr("Go on")
        : calibrates ? tr("Calibrate it")
                     : tr("Keep the bench"));
    choose(
        view,
        [this, questions](int index) {
            const BenchQuestion question = questions.at(static_cast<std::size_t>(index));
            if (question != BenchQuestion::Name) { // whose line is typed over
                forget(m_answers, question);
            }
            askBench(question);
        },
        [this, next, calibrates] {
            if (next) {
                askBench(*next);
            } else if (calibrates) {
                calibrateBench();
            } else {
                keepBench();
            }
        },
        [this] { later(FirstStep::Bench); });
}

void FirstWindow::keepBench() {
    if (m_parts.desk.isBusy()) {
        return; // a second press, while the first is being kept
    }
    const auto document =
        readBench(m_answers.name.toStdString(), benchDocument(m_answers, benchIds()));
    if (!document) {
        say(inWords(document.error().detail));
        return;
    }
    withForeman(
        tr("The bench \"%1\" is changed.").arg(m_answers.name),
        [this, bench = *document](const ProvenPerson& by) {
            m_by = by;
            m_parts.desk.run<Result<void>>(
                this, [by, bench](Office& office) { return office.setBench(by, bench); },
                [this, bench](const Result<void>& set) {
                    const auto there = set ? m_floor.setBench(bench) : set;
                    if (!there) {
                        say(inWords(there.error().detail));
                        return;
                    }
                    benchIsKept();
                });
        });
}

void FirstWindow::calibrateBench() {
    m_people->close();
    m_setup->openCalibration(m_answers.name, benchDocument(m_answers, benchIds()));
}

void FirstWindow::benchIsKept() {
    m_answers = {};
    dropAnswers(m_parts.preferencesFile);
    m_setup->close();
    goOn();
}

// ---- the demo shop

void FirstWindow::openDemo(const Press& back) {
    if (lookAtDemo(m_parts.demoFolder) == DemoFolder::Whole) {
        emit demoAsked();
        return;
    }
    ChoiceView view;
    view.title = tr("The demo shop is being made.");
    view.under = tr("Some days of joints by a virtual operator. It takes a few seconds.");
    view.back = hiddenSlot();
    view.stop = hiddenSlot();
    view.step = hiddenSlot();
    m_redraw = {};
    choose(view, {}, {}, {});
    m_parts.desk.run<Result<void>>(
        this, [make = m_parts.makeDemo](Office&) { return make(); },
        [this, back](const Result<void>& made) {
            if (made) {
                emit demoAsked();
                return;
            }
            back();
            say(inWords(made.error().detail));
        });
}

void FirstWindow::removeDemo(const Press& back) {
    m_parts.desk.run<Result<int>>(
        this, [folder = m_parts.demoFolder](Office&) { return removeDemoShop(folder); },
        [this, back](const Result<int>& left) {
            back();
            if (!left) {
                say(inWords(left.error().detail));
            } else if (*left > 0) {
                say(tr("The demo shop is removed. What is not its own stays: %1 in %2.")
                        .arg(*left)
                        .arg(fromUtf8(m_parts.demoFolder)));
            } else {
                say(tr("The demo shop is removed."), true);
            }
        });
}

} // namespace seamclock
