#include "app/daylog/daylog_flow.h"

#include "app/print/printer.h"
#include "app/text/numbers.h"
#include "app/text/phrase_book.h"
#include "app/text/record_words.h"
#include "app/text/words.h"
#include "core/report/record_reasons.h"

#include <QCoreApplication>
#include <QImageReader>
#include <QKeyEvent>
#include <QPointer>
#include <QThreadPool>
#include <algorithm>
#include <utility>

namespace seamclock {
namespace {

constexpr Milliseconds kLookEvery{500};
constexpr int kLongestReason = 120; // characters
constexpr int kLargestSide = 2'400; // pixels of a photo as it is shown

} // namespace

DayLogFlow::DayLogFlow(DayLogShop shop, KeyRing* ring, QWidget* window)
    : PageFlow(window), m_shop(std::move(shop)), m_reading(m_shop.log), m_day(new DayPage(window)),
      m_choice(new ChoicePage(window)), m_search(new SearchPage(window)),
      m_table(new TablePage(window)), m_photo(new PhotoPage(window)), m_name(new NamePage(window)),
      m_ring(ring) {
    m_choice->setObjectName("dayChoice");
    m_name->setObjectName("dayWords");
    take(pages());
    takeAnswers(m_choice);
    connect(m_day, &DayPage::pressed, this, &DayLogFlow::dayPressed);
    connect(m_day, &DayPage::scrolled, this, &DayLogFlow::scroll);
    connect(m_day, &DayPage::rowChosen, this, [this](const QString& weld) {
        if (weld.isEmpty()) {
            return; // that line is still being read
        }
        m_ring->leave();
        m_chosen = weld.toStdString();
        drawDay();
        readJoint();
    });
    connect(
        m_day, &DayPage::resized, this, [this] { scroll(0); }, Qt::QueuedConnection);
    connect(m_search, &SearchPage::tilePressed, this, &DayLogFlow::searchTile);
    connect(m_table, &TablePage::tabPressed, this, &DayLogFlow::showTable);
    window->installEventFilter(this); // keys that are no step and no text
}

// ---- pages

void DayLogFlow::turning(Page*) {
    m_ring->leave();
}

void DayLogFlow::open() {
    if (page() == nullptr) {
        m_filter = {};
        m_chosen.clear();
        m_joint.reset();
        m_heat.reset();
        m_day->showJoint({});
        restart();
        // The desktop may take its time to answer, and no line shall wait for it.
        QThreadPool::globalInstance()->start([self = QPointer<DayLogFlow>(this)] {
            QMetaObject::invokeMethod(qApp, [self, names = printerNames()] {
                if (self) {
                    self->setPrinters(names);
                }
            });
        });
    }
    showDay();
}

void DayLogFlow::openAt(const std::string& weld, std::int64_t number) {
    open();
    m_filter = {};
    m_filter.words = QString::number(number);
    m_chosen = weld;
    restart();
    showDay();
    readJoint();
}

void DayLogFlow::close() {
    m_ring->leave();
    shut();
    ++m_listTurn;
    ++m_jointTurn;
    m_reading.dropHeat();
}

void DayLogFlow::takeKeys() {
    if (page() == m_search) {
        m_search->takeKeys();
    } else if (page() == m_name) {
        m_name->takeKeys();
    }
}

void DayLogFlow::escaped() {
    const Press back = presses().stop ? presses().stop : presses().step;
    if (page() != nullptr && back) {
        m_ring->leave();
        back();
    }
}

bool DayLogFlow::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress && page() != nullptr && page()->isVisible()) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        const bool list = page() == m_day && m_ring->on() == nullptr;
        if (key == Qt::Key_Left || key == Qt::Key_Right) {
            m_ring->move(key == Qt::Key_Right ? 1 : -1);
            return true;
        }
        if (key == Qt::Key_Up || key == Qt::Key_Down) {
            const int by = key == Qt::Key_Down ? 1 : -1;
            if (list) {
                chooseLine(by);
            } else {
                m_ring->move(by);
            }
            return true;
        }
        if (list && key == Qt::Key_Home) {
            scroll(-m_top);
            return true;
        }
        if (key == Qt::Key_PageUp && page() == m_day) {
            scroll(-leaf());
            return true;
        }
    }
    return QObject::eventFilter(watched, event);
}

// ---- the list

void DayLogFlow::showDay() {
    turnTo(m_day, [this] { emit left(-1); }, {});
    drawDay();
}

int DayLogFlow::known() const {
    std::size_t count = 0;
    for (const PageOfLines& page : m_lines) {
        count += page.there ? page.count : 0;
    }
    return static_cast<int>(count);
}

const JointRowView* DayLogFlow::line(int index) const {
    const auto at = static_cast<std::size_t>(index);
    const std::size_t page = at / kPage;
    if (page >= m_lines.size() || at % kPage >= m_lines[page].rows.size()) {
        return nullptr;
    }
    return &m_lines[page].rows[at % kPage];
}

int DayLogFlow::leaf() const {
    const bool paged = !m_whole || known() > m_day->rowsWhole();
    return paged ? m_day->rowsPaged() : m_day->rowsWhole();
}

void DayLogFlow::restart() {
    ++m_listTurn;
    m_lines.clear();
    m_lines.emplace_back();
    m_whole = false;
    m_top = 0;
    m_nothing.clear();
    m_choosesFirst = m_chosen.empty();
    m_reading.askPeople([this](const Result<std::map<std::string, std::string>>& people) {
        if (people) {
            m_names.people = *people;
        }
        if (page() != nullptr) {
            askPage(0);
        }
    });
}

void DayLogFlow::askPage(std::size_t page) {
    if (page >= m_lines.size() || m_lines[page].asked) {
        return;
    }
    m_lines[page].asked = true;
    JointFilter filter = asked(m_filter, m_names);
    filter.limit = kPage;
    filter.after = m_lines[page].after;
    m_reading.askLines(
        filter, m_names, m_shop.units(),
        [this, page, turn = m_listTurn](const Result<DayLines>& lines) {
            if (turn != m_listTurn || PageFlow::page() == nullptr || page >= m_lines.size()) {
                return;
            }
            PageOfLines& into = m_lines[page];
            into.asked = false;
            if (!lines) {
                m_nothing = inWords(lines.error().detail);
                into.there = true; // not asked again and again; the next look does
                m_head = -1;
                m_whole = true;
                drawDay();
                return;
            }
            into.rows = lines->rows;
            into.count = lines->rows.size();
            into.there = true;
            if (page + 1 == m_lines.size()) {
                m_whole = !lines->more;
                if (lines->more) {
                    m_lines.emplace_back();
                    m_lines.back().after = lines->last;
                }
            }
            m_nothing = known() == 0 ? (m_filter == DayFilter() ? tr("No joint is in this log yet.")
                                                                : tr("No joint is like that."))
                                     : QString();
            if (m_choosesFirst && known() > 0) {
                m_choosesFirst = false;
                m_chosen = m_lines.front().rows.front().weld;
                readJoint();
            }
            drawDay();
        });
}

/// What stands in the list is read, and the next of it ahead of the hand; what lies far away is let
/// go, its place kept.
void DayLogFlow::readAround() {
    const auto first = static_cast<std::size_t>(std::max(0, m_top - leaf())) / kPage;
    const auto last = static_cast<std::size_t>(m_top + 3 * leaf()) / kPage;
    for (std::size_t page = first; page <= last && page < m_lines.size(); ++page) {
        const PageOfLines& one = m_lines[page];
        const bool letGo = one.count > 0 && one.rows.empty();
        if (!one.there || letGo) {
            askPage(page);
        }
    }
    for (std::size_t page = 0; page < m_lines.size(); ++page) {
        const std::size_t away = page < first ? first - page : page > last ? page - last : 0;
        if (away > kMostPages / 2) {
            m_lines[page].rows.clear();
            m_lines[page].rows.shrink_to_fit();
        }
    }
}

void DayLogFlow::scroll(int lines) {
    const int last = std::max(0, known() - leaf());
    const int before = m_top;
    m_top = std::clamp(m_top + lines, 0, last);
    if (page() == nullptr) {
        return;
    }
    if (m_top == 0 && before > 0) {
        m_head = -1; // what came meanwhile is seen at once
        m_lookedAt.reset();
    }
    drawDay();
}

/// By keys: the line before or after the chosen one.
void DayLogFlow::chooseLine(int by) {
    const int count = known();
    int at = -1;
    for (int i = 0; i < count && at < 0; ++i) { // mostly it stands on the screen
        const int each = (m_top + i) % count;
        const JointRowView* one = line(each);
        if (one != nullptr && one->weld == m_chosen) {
            at = each;
        }
    }
    const int next = at < 0 ? m_top : std::clamp(at + by, 0, std::max(0, count - 1));
    const JointRowView* there = line(next);
    if (there == nullptr) {
        return;
    }
    m_chosen = there->weld;
    if (next < m_top) {
        m_top = next;
    } else if (next >= m_top + leaf()) {
        m_top = next - leaf() + 1;
    }
    drawDay();
    readJoint();
}

void DayLogFlow::drawDay() {
    DayPageView view;
    const auto cell = [&](const QString& name, FilterBy by, bool narrows) {
        return FilterCellView{name, filterText(m_filter, by, m_names), {}, narrows};
    };
    view.day = cell(tr("day"), FilterBy::Day, m_filter.day.has_value());
    view.bench = cell(tr("bench"), FilterBy::Bench, m_filter.bench.has_value());
    view.verdict = cell(tr("verdict"), FilterBy::Verdict, m_filter.verdict.has_value());
    view.search = {{}, searchText(m_filter, m_names), Sign::Search, m_filter.searches()};
    const RunningBench* shown = nullptr;
    for (const RunningBench& bench : m_benches) { // the most pressing, then the one that was left
        const auto rank = [](const RunningBench& one) {
            const bool late = one.cell.tone == Tone::Late;
            const bool act = one.cell.tone == Tone::Act || one.cell.tone == Tone::Soon;
            return (one.open ? 8 : 0) + (late ? 4 : act ? 2 : 0) + (one.selected ? 1 : 0);
        };
        if (shown == nullptr || rank(bench) > rank(*shown)) {
            shown = &bench;
        }
    }
    if (shown != nullptr) {
        view.running = shown->cell;
    }
    m_top = std::clamp(m_top, 0, std::max(0, known() - leaf()));
    const int lines = leaf();
    for (int i = m_top; i < m_top + lines; ++i) {
        const JointRowView* one = line(i);
        if (one == nullptr) {
            if (i >= known()) {
                break;
            }
            view.rows.push_back({}); // it is being read
            view.rows.back().number = QStringLiteral("…");
            continue;
        }
        JointRowView row = *one;
        row.chosen = row.weld == m_chosen;
        for (const RunningBench& bench : m_benches) {
            if (bench.open && bench.weld == row.weld) {
                row.mark = bench.cell.mark;
                row.tone = bench.cell.tone;
                row.fraction = bench.cell.fraction;
                row.reason = bench.cell.time.isEmpty()
                                 ? bench.cell.phase
                                 : tr("%1, %2").arg(bench.cell.phase, bench.cell.time);
            }
        }
        view.rows.push_back(row);
    }
    view.newer = m_top > 0;
    view.older = m_top + lines < known() || !m_whole;
    view.older = view.older && known() > 0;
    view.nothing = m_nothing;
    // While another was chosen and is not read yet, nothing is done to the one that stands there.
    const bool stands = m_joint && m_joint->record && m_joint->line.weld == m_chosen;
    view.mayDecide = stands && m_shop.hasForeman();
    view.who = m_shop.readOnly       ? tr("a copy, read only")
               : m_shop.hasForeman() ? tr("foreman, by PIN")
                                     : tr("no foreman has a PIN");
    m_day->show(view);
    readAround();
}

void DayLogFlow::readJoint() {
    const std::uint64_t turn = ++m_jointTurn;
    m_reading.dropHeat();
    m_reading.askJoint(m_chosen, [this, turn](const Result<JointSeen>& joint) {
        if (turn != m_jointTurn || page() == nullptr) {
            return;
        }
        if (!joint) {
            tell(joint.error());
            return;
        }
        const bool same = m_joint && m_joint->line.weld == joint->line.weld;
        if (!same) {
            m_heat.reset();
        }
        m_joint = *joint;
        if (m_shop.readOnly && m_joint->photosLeftBehind) { // a published copy takes none along
            for (JointPhoto& photo : m_joint->photos) {
                photo.state = PhotoState::LeftBehind;
            }
        }
        for (auto& leafOfLines : m_lines) { // its line, which may be older
            for (JointRowView& row : leafOfLines.rows) {
                if (row.weld == m_joint->line.weld && m_joint->record) {
                    const bool chosen = row.chosen;
                    row = jointRow(
                        m_joint->line, &*m_joint->record, m_names, m_shop.units(),
                        m_filter.day.has_value());
                    row.chosen = chosen;
                }
            }
        }
        drawJoint();
        const bool ended = m_joint->record && (m_joint->record->stored || m_joint->record->aborted);
        if (ended && !m_heat) {
            m_reading.askHeat(
                *m_joint->record, m_joint->bench, m_shop.materials(),
                [this, turn](const HeatEstimate& estimate) {
                    if (turn == m_jointTurn) {
                        m_heat = estimate;
                        drawJoint();
                    }
                });
        }
    });
}

/// As the joint's own log knows who is who.
DayNames DayLogFlow::jointNames() const {
    DayNames names = m_names;
    if (m_joint->people) { // an id that it doesn't name is none of this log's people either
        names.people = *m_joint->people;
    }
    return names;
}

void DayLogFlow::drawJoint() {
    if (!m_joint) {
        m_day->showJoint({});
        return;
    }
    const HeatEstimate* heat = m_heat ? &*m_heat : nullptr;
    JointView view = m_joint->record
                         ? jointView(*m_joint->record, jointNames(), heat, m_shop.units())
                         : damagedView(m_joint->line, m_names);
    view.photos = photosTrouble(m_joint->photos);
    view.tested = testedText(m_joint->coupons, m_shop.units());
    m_day->showJoint(view);
    drawDay();
    if (page() == m_table) {
        showTable(m_table->tab());
    }
}

void DayLogFlow::look(const Instant& now, const std::vector<RunningBench>& benches) {
    m_benches = benches;
    for (const RunningBench& bench : benches) {
        m_names.benches[bench.id] = bench.cell.letter;
    }
    if (page() == nullptr) {
        return;
    }
    if (page() == m_day) {
        drawDay();
    }
    const bool due = !m_lookedAt || now.boot - *m_lookedAt >= kLookEvery || now.boot < *m_lookedAt;
    if (!due || m_looking) {
        return;
    }
    m_lookedAt = now.boot;
    m_looking = true;
    m_reading.askHead([this](const Result<std::int64_t>& head) {
        m_looking = false;
        if (!head || page() == nullptr) {
            return;
        }
        const bool grown = m_head >= 0 ? *head != m_head : true;
        const bool first = m_head < 0;
        m_head = *head;
        if (!grown) {
            return;
        }
        if (m_top == 0 && (!first || m_lines.front().there)) {
            ++m_listTurn; // the first page anew; what stands is shown until it comes
            m_lines.resize(1);
            m_lines.front().asked = false;
            m_whole = false;
            askPage(0);
        } else {
            for (std::size_t page = 1; page < m_lines.size(); ++page) {
                if (!m_lines[page].rows.empty()) {
                    askPage(page);
                }
            }
        }
        if (!first && !m_chosen.empty()) {
            readJoint();
        }
    });
}

void DayLogFlow::dayPressed(DayPress what) {
    m_ring->leave();
    switch (what) {
    case DayPress::Day:
        askFilter(FilterBy::Day);
        return;
    case DayPress::Bench:
        askFilter(FilterBy::Bench);
        return;
    case DayPress::Verdict:
        askFilter(FilterBy::Verdict);
        return;
    case DayPress::Search:
        showSearch();
        return;
    case DayPress::Running: {
        const auto shown =
            std::find_if(m_benches.begin(), m_benches.end(), [this](const RunningBench& bench) {
                return bench.cell == m_day->view().running;
            });
        emit left(shown == m_benches.end() ? -1 : static_cast<int>(shown - m_benches.begin()));
        return;
    }
    case DayPress::Newer:
        scroll(-leaf());
        return;
    case DayPress::Older:
        scroll(leaf());
        return;
    case DayPress::Accept:
        decide(Decision::Accept);
        return;
    case DayPress::Repair:
        decide(Decision::Repair);
        return;
    case DayPress::CutOut:
        decide(Decision::CutOut);
        return;
    case DayPress::Record:
        showRecord();
        return;
    }
}

void DayLogFlow::askJob() {
    using Jobs = Result<std::vector<DayJob>>;
    m_reading.askJobs(here<Jobs>([this](const Jobs& known) {
        if (!known) {
            tell(known.error());
            return;
        }
        const auto jobs = withOwn(*known, {m_shop.jobName, m_shop.job});
        std::vector<std::string> names;
        for (const DayJob& job : jobs) {
            names.push_back(job.name);
        }
        DayFilter typed = m_filter;
        typed.words = m_search->words();
        narrow(typed);
        choose(
            filterQuestion(m_filter, FilterBy::Job, names, m_names),
            [this, jobs, names](int index) {
                DayFilter next = chosen(m_filter, FilterBy::Job, names, index);
                next.seams = index > 0 ? jobs.at(static_cast<std::size_t>(index - 1)).seams
                                       : std::vector<std::string>();
                narrow(next);
                showSearch();
            },
            [this] { showSearch(); }, [this] { showSearch(); });
    }));
}

void DayLogFlow::askFilter(FilterBy by) {
    const bool search = page() == m_search;
    if (search) {
        DayFilter typed = m_filter;
        typed.words = m_search->words();
        narrow(typed);
    }
    askFilter(by, search, {});
}

void DayLogFlow::askFilter(FilterBy by, bool search, const std::optional<std::string>& before) {
    m_reading.askValues(
        by, before,
        [this, by, search, from = page()](const Result<std::vector<std::string>>& values) {
            if (page() != from || page() == nullptr) {
                return;
            }
            if (!values) {
                tell(values.error());
                return;
            }
            const Press back = [this, search] { search ? showSearch() : showDay(); };
            choose(
                filterQuestion(m_filter, by, *values, m_names),
                [this, by, all = *values, search](int index) {
                    if (isEarlier(by, all, index)) {
                        askFilter(by, search, all.back());
                        return;
                    }
                    narrow(chosen(m_filter, by, all, index));
                    search ? showSearch() : showDay();
                },
                back, back);
        });
}

void DayLogFlow::narrow(const DayFilter& filter) {
    if (filter == m_filter) {
        return;
    }
    m_filter = filter;
    m_chosen.clear();
    m_joint.reset();
    m_heat.reset();
    m_day->showJoint({});
    restart();
}

void DayLogFlow::showSearch() {
    SearchView view;
    view.title = tr("Search for what?");
    const auto tile = [&](const QString& text, FilterBy by, bool narrows, bool enabled = true) {
        view.tiles.push_back({text, filterText(m_filter, by, m_names), {}, narrows, enabled});
    };
    tile(tr("Operator"), FilterBy::Operator, m_filter.by.has_value());
    tile(tr("Material"), FilterBy::Material, m_filter.material.has_value());
    tile(tr("Job"), FilterBy::Job, m_filter.job.has_value());
    view.tiles.push_back(
        {tr("Close the day"), tr("seal it, by PIN"), Sign::Lock, false, m_shop.hasForeman()});
    view.tiles.push_back(
        {m_filter.day ? tr("Day report") : tr("Report"),
         m_printers.isEmpty() ? tr("PDF of these joints") : tr("PDF or on paper"), Sign::Print});
    view.tiles.push_back({tr("Tables"), tr("CSV or JSON of these"), Sign::Saved});
    m_search->setWords(m_filter.words);
    m_search->show(view);
    turnTo(
        m_search,
        [this] {
            DayFilter next = m_filter;
            next.words = m_search->words();
            narrow(next);
            showDay();
        },
        {},
        [this] {
            narrow({});
            showDay();
        });
}

void DayLogFlow::searchTile(int index) {
    switch (index) {
    case 0:
        askFilter(FilterBy::Operator);
        return;
    case 1:
        askFilter(FilterBy::Material);
        return;
    case 2:
        askJob();
        return;
    case 3:
        m_ring->leave();
        m_shop.closeDay();
        return;
    case 4: {
        DayFilter next = m_filter;
        next.words = m_search->words();
        narrow(next);
        makeReport();
        return;
    }
    default: {
        DayFilter next = m_filter;
        next.words = m_search->words();
        narrow(next);
        askTable();
    }
    }
}

// ---- one joint

void DayLogFlow::showRecord() {
    if (!m_joint || !m_joint->record || m_joint->line.weld != m_chosen) {
        return;
    }
    const WeldRecord& record = *m_joint->record;
    const bool ended = record.stored || record.aborted;
    const bool may = ended && m_shop.hasForeman();
    const auto signedOff =
        std::find_if(record.decisions.rbegin(), record.decisions.rend(), [](const Retained& one) {
            return std::holds_alternative<SignedOff>(one.d);
        });
    ChoiceView view;
    view.title = tr("Record of joint %1").arg(record.opened.number);
    view.under = m_day->joint().verdict;
    const auto add = [&](const QString& text, const QString& under, std::optional<Sign> sign,
                         bool enabled) {
        ChoiceView::Choice choice;
        choice.text = text;
        choice.under = under;
        choice.sign = sign;
        choice.enabled = enabled;
        view.choices.push_back(choice);
    };
    add(tr("Every value"), tr("set against done"), Sign::Spring, true);
    add(tr("Every event"), tr("%1 of them").arg(record.events.size()), Sign::Note, true);
    add(tr("Looked at"), tr("bead, grade, decisions"), Sign::Look, true);
    const auto bad =
        std::count_if(m_joint->photos.begin(), m_joint->photos.end(), [](const JointPhoto& photo) {
            return isTrouble(photo.state);
        });
    add(tr("Photos"),
        m_joint->photos.empty() ? tr("none was kept")
        : bad > 0               ? tr("%1 missing or altered").arg(bad)
        : m_joint->photos.front().state == PhotoState::LeftBehind
            ? tr("%1 beside the shop's own log").arg(m_joint->photos.size())
            : tr("%1 kept").arg(m_joint->photos.size()),
        Sign::Camera, !m_joint->photos.empty());
    const bool isSigned = signedOff != record.decisions.rend();
    const bool changed = isSigned && changedAfter(signedOff->n, record) != 0;
    add(tr("Sign it off"),
        changed    ? tr("changed since %1 signed").arg(jointNames().person(signedOff->by))
        : isSigned ? tr("signed by %1").arg(jointNames().person(signedOff->by))
                   : tr("foreman, by PIN"),
        Sign::Shield, may && (!isSigned || changed));
    add(tr("Correct a value"), tr("both stay in the record"), Sign::Remark, may);
    add(tr("Save as PDF"), tr("into the documents"), Sign::Saved, true);
    add(tr("Print"), m_printers.isEmpty() ? tr("there is no printer") : m_printers.front(),
        Sign::Print, !m_printers.isEmpty());
    view.back = hiddenSlot();
    view.stop = hiddenSlot();
    view.step = stepSlot(tr("Back to the log"), false);
    const Press back = [this] { showDay(); };
    choose(
        view, [this](int index) { recordTile(index); }, back, back);
}

void DayLogFlow::recordTile(int index) {
    switch (index) {
    case 0:
    case 1:
    case 2:
        showTable(index);
        return;
    case 3:
        showPhotos();
        return;
    case 4:
        signOff();
        return;
    case 5:
        correct();
        return;
    case 6:
        makePaper(
            [weld = m_joint->record->weld, papers = papers()](LogReader& reader) {
                return saveRecordOf(reader, weld, papers);
            },
            tr("The record is saved: %1"));
        return;
    default: {
        const auto print = [this, weld = m_joint->record->weld](const QString& printer) {
            makePaper(
                [weld, papers = papers(), printer](LogReader& reader) {
                    return printRecordOf(reader, weld, papers, printer);
                },
                tr("The record is on the printer: %1"));
        };
        if (m_printers.size() <= 1) {
            print(m_printers.value(0));
            return;
        }
        askWhere(
            tr("Where does the record go?"), {},
            [this, print](const QString& printer) {
                print(printer);
                showRecord();
            },
            [this] { showRecord(); });
    }
    }
}

void DayLogFlow::askWhere(
    const QString& title, std::function<void()> save,
    const std::function<void(const QString& printer)>& print, Press stop) {
    ChoiceView view;
    view.title = title;
    view.under = tr("The desktop's own printer stands first.");
    std::vector<std::function<void()>> does;
    const auto add = [&](const QString& text, const QString& under, Sign sign,
                         std::function<void()> what) {
        ChoiceView::Choice choice;
        choice.text = text;
        choice.under = under;
        choice.sign = sign;
        view.choices.push_back(choice);
        does.push_back(std::move(what));
    };
    if (save) {
        add(tr("Save as PDF"), tr("into the documents"), Sign::Saved, std::move(save));
    }
    for (const QString& printer : m_printers.mid(0, kMostPrinters)) {
        add(printer, tr("print there"), Sign::Print, [print, printer] { print(printer); });
    }
    view.back = hiddenSlot();
    view.stop = plainSlot(tr("Close"), tr("nothing is written"));
    view.step = hiddenSlot();
    choose(
        view, [does = std::move(does)](int index) { does.at(static_cast<std::size_t>(index))(); },
        {}, std::move(stop));
}

void DayLogFlow::makeReport() {
    const auto save = [this] {
        makePaper(
            [filter = asked(m_filter, m_names), papers = papers()](LogReader& reader) {
                return saveReportOf(reader, filter, papers);
            },
            tr("The report is saved: %1"));
        showDay();
    };
    if (m_printers.isEmpty()) {
        save();
        return;
    }
    askWhere(
        tr("Where does the report go?"), save,
        [this](const QString& printer) {
            makePaper(
                [filter = asked(m_filter, m_names), papers = papers(), printer](LogReader& reader) {
                    return printReportOf(reader, filter, papers, printer);
                },
                tr("The report is on the printer: %1"));
            showDay();
        },
        [this] { showSearch(); });
}

DayPapers DayLogFlow::papers() const {
    PaperWork work = m_shop.work;
    const Instant now = m_shop.now();
    work.printed = QStringLiteral("%1 %2").arg(dateText(now), wallClockText(now));
    return {m_shop.folder, work, m_shop.units(), m_shop.materials()};
}

/// The page stands meanwhile; what came of it is told on whatever page stands then.
void DayLogFlow::makePaper(std::function<Result<QString>(LogReader&)> work, const QString& done) {
    m_reading.askFor(std::move(work), [this, done](const Result<QString>& made) {
        if (made) {
            emit kept(done.arg(*made));
        } else {
            tell(made.error());
        }
    });
}

void DayLogFlow::askTable() {
    ChoiceView view;
    view.title = tr("Which table of these joints?");
    view.under = tr("For spreadsheets and other programs; as the list is narrowed now.");
    const auto add = [&](const QString& text, const QString& under) {
        ChoiceView::Choice choice;
        choice.text = text;
        choice.under = under;
        view.choices.push_back(choice);
    };
    add(tr("The list, CSV"), tr("a line a joint"));
    add(tr("Every value, CSV"), tr("set and done, a line a value"));
    add(tr("The list, JSON"), tr("for programs"));
    view.back = hiddenSlot();
    view.stop = plainSlot(tr("Close"), tr("nothing is written"));
    view.step = hiddenSlot();
    choose(
        view,
        [this](int index) {
            const DayTable table = index == 0   ? DayTable::List
                                   : index == 1 ? DayTable::Values
                                                : DayTable::Json;
            makePaper(
                [filter = asked(m_filter, m_names), table, papers = papers()](LogReader& reader) {
                    return saveTableOf(reader, filter, table, papers);
                },
                tr("The table is saved: %1"));
            showDay();
        },
        {}, [this] { showSearch(); });
}

void DayLogFlow::showTable(int tab) {
    if (!m_joint || !m_joint->record) {
        return;
    }
    const WeldRecord& record = *m_joint->record;
    const TableView table = tab == 0 ? valuesTable(
                                           record, m_joint->bench ? &*m_joint->bench : nullptr,
                                           m_heat ? &*m_heat : nullptr, m_shop.units())
                            : tab == 1 ? eventsTable(record, jointNames(), m_shop.units())
                                       : lookedAtTable(
                                             record, m_joint->photos, jointNames(), m_shop.units(),
                                             m_joint->coupons, &m_names);
    m_table->show({tr("Values"), tr("Events"), tr("Looked at")}, tab, table);
    if (page() != m_table) {
        turnTo(
            m_table, [this] { showRecord(); }, [this] { m_table->turn(1); },
            [this] { m_table->turn(-1); });
    }
}

void DayLogFlow::showPhotos() {
    if (m_joint->photos.size() == 1) {
        showPhoto(0);
        return;
    }
    ChoiceView view;
    view.title = tr("Which photo?");
    for (const JointPhoto& photo : m_joint->photos) {
        ChoiceView::Choice choice;
        choice.text = fromUtf8(photo.photo.name);
        choice.under = photoStateText(photo.state);
        choice.sign = Sign::Camera;
        view.choices.push_back(choice);
    }
    view.back = hiddenSlot();
    view.stop = hiddenSlot();
    view.step = stepSlot(tr("Back to the log"), false);
    const Press back = [this] { showRecord(); };
    choose(
        view, [this](int index) { showPhoto(static_cast<std::size_t>(index)); }, back, back);
}

void DayLogFlow::showPhoto(std::size_t index) {
    const JointPhoto photo = m_joint->photos.at(index);
    m_photo->show(photo);
    turnTo(m_photo, [this] { showRecord(); }, {});
    if (photo.state != PhotoState::AsKept) {
        return;
    }
    QThreadPool::globalInstance()->start([self = QPointer<DayLogFlow>(this), photo] {
        QImageReader reader(photo.file);
        reader.setAutoTransform(true);
        const QSize size = reader.size();
        if (std::max(size.width(), size.height()) > kLargestSide) {
            reader.setScaledSize(size.scaled(kLargestSide, kLargestSide, Qt::KeepAspectRatio));
        }
        const QImage image = reader.read();
        QMetaObject::invokeMethod(qApp, [self, image, photo] {
            if (self && self->page() == self->m_photo && self->m_photo->photo() == photo) {
                self->m_photo->setImage(image);
            }
        });
    });
}

void DayLogFlow::decide(Decision decision) {
    if (!m_joint || !m_joint->record || m_joint->line.weld != m_chosen || !m_shop.hasForeman()) {
        return;
    }
    const std::int64_t number = m_joint->record->opened.number;
    const DecisionQuestion question = decisionQuestion(m_day->joint(), number, decision);
    const Press back = [this] { showDay(); };
    choose(
        question.page,
        [this, decision, question](int index) {
            const auto at = static_cast<std::size_t>(index);
            if (at < question.reasons.size()) {
                decideBecause(decision, question.reasons[at]);
                return;
            }
            askWords(
                m_name,
                {question.page.title,
                 tr("1 to %1 characters, by the keyboard.").arg(kLongestReason), tr("why"),
                 kLongestReason},
                [this, decision](const QString& why) {
                    decideBecause(decision, why.toStdString());
                },
                [this, decision] { decide(decision); });
        },
        {}, back);
}

void DayLogFlow::decideBecause(Decision decision, const std::string& reason) {
    const WeldRecord& record = *m_joint->record;
    const QString what = decisionForWhat(
        record.opened.number, record.opened.type == WeldType::Trial, decision, choiceWord(reason));
    act(Decided{decision, reason}, what, what);
}

void DayLogFlow::signOff() {
    const QString what = tr("Joint %1 is signed off.").arg(m_joint->record->opened.number);
    act(SignedOff{"foreman"}, what, what);
}

void DayLogFlow::correct() {
    ChoiceView view;
    view.title = tr("Which value was written down wrong?");
    view.under = tr("What stood there stays in the record, struck.");
    const std::vector<Correctable> values = correctables(*m_joint->record);
    for (const Correctable& value : values) {
        ChoiceView::Choice choice;
        choice.text = value.item;
        choice.under = tr("%1, event %2").arg(value.text).arg(value.n);
        view.choices.push_back(choice);
    }
    view.back = hiddenSlot();
    view.stop = plainSlot(tr("Close"), tr("nothing is corrected"));
    view.step = hiddenSlot();
    choose(
        view,
        [this, values](int index) { correctValue(values.at(static_cast<std::size_t>(index))); }, {},
        [this] { showRecord(); });
}

void DayLogFlow::correctValue(const Correctable& value) {
    askWords(
        m_name,
        {tr("%1 is %2. What is right?").arg(value.item, value.text),
         tr("Allowed: %1.").arg(allowedText(value)), value.item, kLongestReason},
        [this, value](const QString& typed) {
            const auto is = corrected(value, typed);
            if (!is) {
                tell(is.error());
                return;
            }
            const QString words =
                value.unit.isEmpty() ? typed.trimmed() : typed.trimmed() + " " + value.unit;
            const DecisionQuestion question = correctionQuestion(value, words);
            choose(
                question.page,
                [this, value, is = *is, question](int index) {
                    const auto at = static_cast<std::size_t>(index);
                    if (at < question.reasons.size()) {
                        correctBecause(value, is, question.reasons[at]);
                        return;
                    }
                    askWords(
                        m_name,
                        {question.page.title,
                         tr("1 to %1 characters, by the keyboard.").arg(kLongestReason), tr("why"),
                         kLongestReason},
                        [this, value, is](const QString& why) {
                            correctBecause(value, is, why.toStdString());
                        },
                        [this] { correct(); });
                },
                {}, [this] { correct(); });
        },
        [this] { correct(); });
}

void DayLogFlow::correctBecause(
    const Correctable& value, const std::string& is, const std::string& reason) {
    const std::int64_t number = m_joint->record->opened.number;
    act(ValueCorrected{value.n, value.field, value.value, is, reason},
        tr("Joint %1: %2 is corrected.").arg(number).arg(value.item),
        tr("Joint %1: %2 is corrected.").arg(number).arg(value.item));
}

void DayLogFlow::act(const WeldDetail& detail, const QString& forWhat, const QString& done) {
    const std::string weld = m_joint->record->weld;
    showDay(); // what comes back when the PIN's page is left
    m_shop.ask(forWhat, [this, weld, detail, done](const ProvenPerson& by) {
        const auto made = m_shop.act(weld, detail, by);
        if (!made) {
            tell(made.error());
            return;
        }
        m_lookedAt.reset(); // it is on its way to the disk, and is read from there
        emit kept(tr("%1 It is in the record.").arg(done));
    });
}

} // namespace seamclock
