#include "app/shop/shop_flow.h"
#include "app/text/phrase_book.h"

#include "app/shop/due_view.h"
#include "app/text/words.h"
#include "core/log/roster.h"
#include "core/log/shelf.h"
#include "core/session/job_book.h"

#include <algorithm>
#include <utility>

namespace seamclock {
namespace {

constexpr Milliseconds kLookEvery{2'000};
constexpr Milliseconds kPlanHolds{600'000};   // then it is worked out anew by itself
constexpr const char* kSomebody = "operator"; // where the log knows nobody

template <class T>
bool has(const std::set<T>& all, const T& one) {
    return all.count(one) > 0;
}

} // namespace

ShopFlow::ShopFlow(Desk& desk, ShopRoom room, QWidget* window)
    : PageFlow(window), m_desk(desk), m_room(std::move(room)), m_reading(m_room.log),
      m_choice(new ChoicePage(window)), m_list(new ListPage(window)), m_plan(new PlanPage(window)),
      m_chart(new ControlChartPage(window)), m_value(new ValuePage(window)),
      m_form(new FormPage(window)), m_name(new NamePage(window)) {
    m_choice->setObjectName("shopChoice");
    m_list->setObjectName("shopList");
    m_form->setObjectName("shopForm");
    m_name->setObjectName("shopWords");
    take(pages());
    takeAnswers(m_list);
    takeAnswers(m_choice);
    connect(m_plan->chart(), &PlanChart::pressed, this, &ShopFlow::askPlan);
    connect(m_form, &FormPage::typed, this, [this](const FormField& field, const QString& text) {
        if (m_typing) {
            (*m_typing)[field.pointer] = text;
            showForm();
        }
    });
    connect(m_form, &FormPage::asked, this, [this](const FormField& field) {
        ChoiceView view;
        view.title = field.caption;
        for (const auto& [stored, words] : field.choices) {
            ChoiceView::Choice choice;
            choice.text = words;
            choice.chosen = words == field.value;
            view.choices.push_back(choice);
        }
        view.back = hiddenSlot();
        view.stop = plainSlot(tr("Close"), tr("as it was"));
        view.step = hiddenSlot();
        choose(
            view,
            [this, field](int index) {
                const auto& [stored, words] = field.choices.at(static_cast<std::size_t>(index));
                (*m_typing)[field.pointer] = fromUtf8(stored);
                showForm();
            },
            {}, [this] { showForm(); });
    });
}

// ---- pages

void ShopFlow::askWords(
    const QString& title, const QString& under, const QString& line,
    std::function<void(const QString&)> then, Press stop) {
    const int most = static_cast<int>(kLongestCouponText) / 2; // in bytes a letter may take two
    PageFlow::askWords(m_name, {title, under, line, most}, std::move(then), std::move(stop));
}

void ShopFlow::open() {
    if (m_draft && !m_draft->isEmpty()) {
        showDraft();
    } else if (m_typing) {
        showForm();
    } else {
        showStart();
    }
}

void ShopFlow::close() {
    shut();
}

void ShopFlow::takeKeys() {
    if (page() == m_list) {
        m_list->takeKeys();
    } else if (page() == m_name) {
        m_name->takeKeys();
    }
}

void ShopFlow::typed(QChar sign) {
    if (page() == m_value) {
        m_value->pad()->type(sign);
    }
}

void ShopFlow::erased() {
    if (page() == m_value) {
        m_value->pad()->erase();
    }
}

/// Stands until what was asked of the log is there.
void ShopFlow::reading(const QString& title) {
    ListView view;
    view.title = title;
    view.under = tr("The log is being read.");
    view.back = hiddenSlot();
    view.stop = hiddenSlot();
    view.step = stepSlot(tr("Back to the shop"), false);
    list(view, {}, [this] { showStart(); }, {});
}

DayNames ShopFlow::names() const {
    DayNames out;
    for (const BenchDocument& one : m_room.benches()) {
        out.benches[one.bench.id] = m_room.letter(one.bench.id);
    }
    for (const Person& person : m_desk.people().people) {
        out.people[person.id] = person.name;
    }
    out.people[kSomebody] = tr("the operator").toStdString();
    return out;
}

bool ShopFlow::needsForeman() {
    if (m_room.hasForeman()) {
        return true;
    }
    emit said(tr("No foreman has a PIN on this tablet: nothing can be kept."));
    return false;
}

// ---- what there is

void ShopFlow::showStart() {
    ChoiceView view;
    view.title = tr("How the shop is doing");
    view.under = tr("Anybody may look. What is kept takes a foreman's PIN.");
    std::vector<Press> presses;
    const auto add = [&](const QString& text, const QString& under, Sign sign, Press press) {
        ChoiceView::Choice choice;
        choice.text = text;
        choice.under = under;
        choice.sign = sign;
        view.choices.push_back(choice);
        presses.push_back(std::move(press));
    };
    add(tr("Jobs and seams"), tr("made, open, to decide"), Sign::Note, [this] { showJobs(); });
    add(tr("The day's plan"), tr("who, where, until when"), Sign::Prepare, [this] { showPlan(); });
    add(tr("Strength tests"), tr("coupons, welding factor"), Sign::Clamp, [this] { showTests(); });
    add(tr("Charts"), tr("does something drift?"), Sign::Look, [this] { showCharts(); });
    add(tr("What is due"), tr("calibration, certificates"), Sign::Shield, [this] { showDue(); });
    add(tr("Batches of sheet"), tr("which joints hold one"), Sign::Search,
        [this] { showBatches(false); });
    view.back = hiddenSlot();
    view.stop = hiddenSlot();
    view.step = stepSlot(tr("Back to the bench"), false);
    choose(
        view,
        [presses](int index) {
            const Press press = presses.at(static_cast<std::size_t>(index));
            press();
        },
        [this] {
            close();
            emit left();
        },
        {});
}

// ---- the day's plan

std::vector<Person> ShopFlow::welders() const {
    std::vector<Person> out;
    for (const Person& person : m_desk.people().people) {
        if (person.active && person.role != Role::Trainee) {
            out.push_back(person);
        }
    }
    return out;
}

std::vector<std::string> ShopFlow::planned() const {
    const std::vector<Person> all = welders();
    std::vector<std::string> out;
    for (const Person& person : all) {
        const bool in = m_peopleIn ? has(*m_peopleIn, person.id) : person.role == Role::Operator;
        if (in) {
            out.push_back(person.id);
        }
    }
    if (out.empty() && !m_peopleIn) {
        for (const Person& person : all) {
            out.push_back(person.id);
        }
    }
    if (out.empty()) {
        out.emplace_back(kSomebody);
    }
    return out;
}

void ShopFlow::showPlan() {
    if (page() != m_plan) {
        m_plan->show(PlanView(), {}, {});
    }
    turnTo(
        m_plan, [this] { showStart(); }, [this] { choosePeople(); }, [this] { chooseBenches(); });
    askPlan();
}

void ShopFlow::askPlan() {
    if (m_planning) {
        m_planAgain = true; // what is worked out now may be of an earlier choice
        return;
    }
    m_planAgain = false;
    JobDayAsk asked;
    QStringList letters;
    for (const BenchDocument& one : m_room.benches()) {
        if (!has(m_benchesOut, one.bench.id)) {
            asked.benches.push_back(one);
            letters << m_room.letter(one.bench.id);
        }
    }
    asked.people = planned();
    asked.procedures = m_room.procedures();
    asked.now = m_room.now();
    asked.seams = m_room.seams;
    const QString benches = letters.join(QStringLiteral(", "));
    const QString people = tr("%1 planned").arg(asked.people.size());
    m_planning = true;
    m_plan->setBusy(true);
    struct Planned {
        Result<JobDay> day;
        std::int64_t head = 0;
        std::vector<std::string> unread{}; // as KeptSeams
    };
    m_reading.ask<Planned>(
        [asked](LogReader& log) mutable -> Result<Planned> {
            const auto head = log.head();
            const auto kept = readJobSeams(log);
            if (!head || !kept) {
                return tl::unexpected<Error>(head ? kept.error() : head.error());
            }
            asked.seams.insert(asked.seams.end(), kept->seams.begin(), kept->seams.end());
            return Planned{jobDay(asked, &log), head->seq, kept->unread};
        },
        [this, at = asked.now, benches, people](const Result<Planned>& come) {
            m_planning = false;
            m_plan->setBusy(false);
            if (m_planAgain) {
                askPlan();
                return;
            }
            m_plannedAt =
                at; // what failed is tried again when the day goes on, not every other second
            if (come) {
                m_plannedHead = come->head;
            }
            if (!come || !come->day) {
                if (page() == m_plan) {
                    tell(come ? come->day.error() : come.error());
                }
                return;
            }
            m_plan->show(planView(*come->day, at, names()), benches, people);
            if (!come->unread.empty() && page() == m_plan) {
                tell({ErrorCode::Damaged, come->unread.front()});
            }
        });
}

void ShopFlow::look(const Instant& now) {
    if (page() != m_plan || !m_plannedAt) {
        return;
    }
    const bool sameBoot = now.bootId == m_plannedAt->bootId;
    const Milliseconds since = sameBoot ? now.boot - m_plannedAt->boot : now.utc - m_plannedAt->utc;
    m_plan->setNow(since);
    if (since > kPlanHolds) {
        askPlan();
        return;
    }
    if (m_looking || m_planning || (m_lookedAt && now.boot - *m_lookedAt < kLookEvery)) {
        return;
    }
    m_lookedAt = now.boot;
    m_looking = true;
    m_reading.ask<std::int64_t>(
        [](LogReader& log) -> Result<std::int64_t> {
            const auto head = log.head();
            return head ? Result<std::int64_t>(head->seq) : tl::unexpected<Error>(head.error());
        },
        [this](const Result<std::int64_t>& head) {
            m_looking = false;
            if (head && *head != m_plannedHead && page() == m_plan) {
                askPlan();
            }
        });
}

void ShopFlow::chooseBenches() {
    ListView view;
    view.title = tr("Which benches are planned with?");
    std::vector<std::string> ids;
    for (const BenchDocument& one : m_room.benches()) {
        ListRowView row;
        row.text = tr("Bench %1: %2").arg(m_room.letter(one.bench.id), fromUtf8(one.bench.name));
        row.ticked = !has(m_benchesOut, one.bench.id);
        view.rows.push_back(std::move(row));
        ids.push_back(one.bench.id);
    }
    view.back = hiddenSlot();
    view.stop = hiddenSlot();
    view.step = stepSlot(tr("Work it out"));
    list(
        view,
        [this, ids](int index) {
            const std::string& id = ids.at(static_cast<std::size_t>(index));
            if (!m_benchesOut.erase(id)) {
                m_benchesOut.insert(id);
            }
            chooseBenches();
        },
        [this, ids] {
            const bool any = std::any_of(ids.begin(), ids.end(), [this](const std::string& id) {
                return !has(m_benchesOut, id);
            });
            if (!any) {
                emit said(tr("Tick one bench at least."));
                return;
            }
            showPlan();
        },
        {});
}

void ShopFlow::choosePeople() {
    const std::vector<Person> all = welders();
    ListView view;
    view.title = tr("Who welds today?");
    if (all.empty()) {
        view.under = tr("Nobody is entered: the plan is for one operator.");
    }
    const std::vector<std::string> in = planned();
    std::vector<std::string> ids;
    for (const Person& person : all) {
        ListRowView row;
        row.text = fromUtf8(person.name);
        row.ticked = std::find(in.begin(), in.end(), person.id) != in.end();
        view.rows.push_back(std::move(row));
        ids.push_back(person.id);
    }
    view.columns = 2;
    view.back = hiddenSlot();
    view.stop = hiddenSlot();
    view.step = stepSlot(tr("Work it out"));
    list(
        view,
        [this, ids, in](int index) {
            std::set<std::string> next(in.begin(), in.end());
            next.erase(kSomebody);
            const std::string& id = ids.at(static_cast<std::size_t>(index));
            if (next.erase(id) == 0) {
                next.insert(id);
            }
            m_peopleIn = std::move(next);
            choosePeople();
        },
        [this, ids] {
            if (!ids.empty() && m_peopleIn && m_peopleIn->empty()) {
                emit said(tr("Tick one person at least."));
                return;
            }
            showPlan();
        },
        {});
}

// ---- charts, what is due, batches

void ShopFlow::showCharts() {
    reading(tr("Charts"));
    ask<std::vector<ShopChart>>(
        [](LogReader& log) { return shopCharts(log, chartedMeasures(), {}); },
        [this](const std::vector<ShopChart>& charts) {
            m_charts = charts;
            const std::vector<std::size_t> order = chartOrder(m_charts);
            ListView view;
            view.title = tr("Charts");
            view.under = m_charts.empty()
                             ? tr("No joint is there yet to chart.")
                             : tr("Joints that are alike. Limits say that something changed, not "
                                  "that a joint is bad.");
            for (const std::size_t place : order) {
                view.rows.push_back(chartRow(m_charts[place], names()));
            }
            view.columns = 2;
            view.back = hiddenSlot();
            view.stop = hiddenSlot();
            view.step = stepSlot(tr("Back to the shop"), false);
            list(
                view,
                [this, order](int index) {
                    const std::size_t place = order.at(static_cast<std::size_t>(index));
                    showChart(place, m_charts[place].values.size());
                },
                [this] { showStart(); }, {});
        });
}

void ShopFlow::showChart(std::size_t index, std::size_t until) {
    const ShopChart& chart = m_charts.at(index);
    const ChartView view = chartView(chart, until, names());
    m_chart->show(view);
    turnTo(
        m_chart, [this] { showCharts(); },
        [this, index, view] {
            const std::size_t end = view.first + view.values.size();
            if (end < view.count) {
                showChart(index, std::min(end + kShownPoints / 2, view.count));
            }
        },
        [this, index, view] {
            if (view.first > 0) {
                const std::size_t end = view.first + view.values.size();
                showChart(index, std::max(end - kShownPoints / 2, kShownPoints));
            }
        });
}

void ShopFlow::showDue() {
    reading(tr("What is due"));
    DueFacts facts;
    for (const BenchDocument& one : m_room.benches()) {
        facts.benches.push_back(one.bench);
    }
    for (const ProcedureDocument& one : m_room.procedures()) {
        facts.procedures.push_back(one.procedure);
    }
    const Instant now = m_room.now();
    const std::string today = toIsoDate(now.utc, now.offset);
    ask<std::vector<DueItem>>(
        [facts, today, within = m_within](LogReader& log) mutable -> Result<std::vector<DueItem>> {
            auto roster = readRoster(log);
            auto shelf = readShelf(log);
            if (!roster || !shelf) {
                return tl::unexpected<Error>(roster ? shelf.error() : roster.error());
            }
            facts.roster = std::move(*roster);
            facts.shelf = std::move(*shelf);
            return dueWithin(facts, today, within);
        },
        [this](const std::vector<DueItem>& items) {
            list(
                dueList(items, m_within, names()), {}, [this] { showStart(); }, {},
                [this] {
                    m_within = furtherDays(m_within);
                    showDue();
                });
        });
}

namespace {

ListView batchPage(bool byJoint) {
    ListView view;
    view.title = byJoint ? ShopFlow::tr("Which sheets are in a joint?")
                         : ShopFlow::tr("Which joints hold a batch of sheet?");
    view.line = byJoint ? ShopFlow::tr("the joint's number") : ShopFlow::tr("the batch");
    view.back = byJoint ? plainSlot(ShopFlow::tr("By the batch"), ShopFlow::tr("its joints"))
                        : plainSlot(ShopFlow::tr("By the joint"), ShopFlow::tr("its sheets"));
    view.stop = plainSlot(ShopFlow::tr("Back"), ShopFlow::tr("to the shop"));
    view.step = stepSlot(ShopFlow::tr("Look"));
    return view;
}

} // namespace

void ShopFlow::showBatches(bool byJoint) {
    ListView view = batchPage(byJoint);
    view.under = byJoint ? tr("Type the number, then look.")
                         : tr("Type the whole batch as it stands on the sheet, then look.");
    m_list->setLine({});
    list(
        view, {},
        [this, byJoint] {
            const QString words = m_list->lineText();
            if (words.isEmpty()) {
                emit said(tr("Type something to look for first."));
            } else if (byJoint) {
                findSheets(words);
            } else {
                findBatch(words);
            }
        },
        [this] { showStart(); }, [this, byJoint] { showBatches(!byJoint); });
}

void ShopFlow::findBatch(const QString& batch) {
    if (page() == m_list) {
        dropAnswers(); // what was looked for before is not wanted any more
    }
    ask<BatchFound>(
        [batch = batch.toStdString()](LogReader& log) { return jointsOfBatch(log, batch); },
        [this, batch](const BatchFound& found) {
            ListView view = batchPage(false);
            view.under =
                found.joints.empty()
                    ? tr("No joint holds the batch \"%1\".").arg(batch)
                    : tr("Joints with the batch \"%1\": %2.").arg(batch).arg(found.joints.size());
            if (found.damaged > 0) {
                view.trouble = tr("%1 joints can't be read and may hold it, too. %2")
                                   .arg(found.damaged)
                                   .arg(view.under);
            }
            view.rows = batchRows(found, names());
            view.columns = 2;
            m_list->setLine(batch);
            list(
                view,
                [this, found](int index) {
                    const JointLine& line = found.joints.at(static_cast<std::size_t>(index)).line;
                    emit jointAsked(fromUtf8(line.weld), line.number);
                },
                [this] { findBatch(m_list->lineText()); }, [this] { showStart(); },
                [this] { showBatches(true); });
        });
}

void ShopFlow::findSheets(const QString& number) {
    bool read = false;
    const qlonglong joint = number.toLongLong(&read);
    if (!read || joint < 1) {
        emit said(tr("\"%1\" is no joint's number; allowed: 1 and up.").arg(number));
        return;
    }
    dropAnswers();
    askWhich(
        joint, [this, joint, number](const NumberedJoint& one) { showSheets(joint, number, one); },
        [this] { showBatches(true); });
}

void ShopFlow::showSheets(std::int64_t joint, const QString& number, const NumberedJoint& one) {
    struct Found {
        std::string weld;
        std::vector<SheetBatch> sheets;
    };
    ask<Found>(
        [weld = one.weld](LogReader& log) -> Result<Found> {
            Found out;
            if (!weld.empty()) {
                out.weld = weld;
                const auto events = log.weldEvents(out.weld);
                auto sheets = events ? batchesOf(*events) : tl::unexpected(events.error());
                if (!sheets) {
                    return tl::unexpected<Error>(sheets.error());
                }
                out.sheets = std::move(*sheets);
            }
            return out;
        },
        [this, joint, number](const Found& found) {
            ListView view = batchPage(true);
            view.under = found.weld.empty()
                             ? tr("There is no joint %1 in this log.").arg(joint)
                             : tr("The sheets of joint %1. Each leads to its joints.").arg(joint);
            view.rows = sheetRows(found.sheets);
            if (!found.weld.empty()) {
                ListRowView row;
                row.text = tr("Joint %1: to its page").arg(joint);
                row.sign = Sign::Note;
                view.rows.push_back(std::move(row));
            }
            m_list->setLine(number);
            list(
                view,
                [this, found, joint](int index) {
                    const auto at = static_cast<std::size_t>(index);
                    if (at < found.sheets.size()) {
                        findBatch(fromUtf8(found.sheets[at].batch));
                    } else {
                        emit jointAsked(fromUtf8(found.weld), joint);
                    }
                },
                [this] { findSheets(m_list->lineText()); }, [this] { showStart(); },
                [this] { showBatches(false); });
        });
}

} // namespace seamclock
