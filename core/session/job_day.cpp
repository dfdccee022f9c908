#include "core/session/job_day.h"

#include "core/base/overloaded.h"
#include "core/bench/bench_codec.h"
#include "core/log/log_reader.h"
#include "core/log/roster.h"
#include "core/log/world.h"
#include "core/people/certificate.h"
#include "core/quality/shop_charts.h"
#include "core/session/set_up.h"
#include "core/weld/event_codec.h"
#include "core/weld/fold.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <variant>

namespace seamclock {

namespace {

using Ms = Milliseconds;

Ms leftOf(Ms whole, Ms gone) {
    return std::max(Ms{0}, whole - gone);
}

/// What is left of a weld's stretches; absent: its bench is free. `gone`: weld time, absent where
/// the weld doesn't know it.
std::optional<SeamTimes>
leftOf(const Weld& weld, const SeamTimes& whole, const std::optional<WeldTime>& at) {
    SeamTimes left = whole;
    // Least of what surely passed, so that the plan is never too early.
    const auto since = [&](WeldTime from) { return at ? (*at - from).lo : Ms{0}; };
    const auto done = [&left](std::initializer_list<Ms SeamTimes::*> stretches) {
        for (const auto stretch : stretches) {
            left.*stretch = Ms{0};
        }
    };
    const bool holds = std::visit(
        Overloaded{
            [&](const Preparing&) {
                left.preparation = leftOf(whole.preparation, since(WeldTime{}));
                return true;
            },
            [&](const Aligning& state) {
                done({&SeamTimes::preparation});
                left.alignment = leftOf(whole.alignment, since(state.from));
                return true;
            },
            [&](const Soaking& state) {
                done({&SeamTimes::preparation, &SeamTimes::alignment});
                left.soak = leftOf(whole.soak, since(state.from));
                return true;
            },
            [&](const ChangingOver& state) {
                done({&SeamTimes::preparation, &SeamTimes::alignment, &SeamTimes::soak});
                left.changeover = leftOf(whole.changeover, since(state.from));
                return true;
            },
            [&](const BuildingUp& state) {
                done(
                    {&SeamTimes::preparation, &SeamTimes::alignment, &SeamTimes::soak,
                     &SeamTimes::changeover});
                left.buildUp = leftOf(whole.buildUp, since(state.from));
                return true;
            },
            [&](const Cooling& state) {
                done(
                    {&SeamTimes::preparation, &SeamTimes::alignment, &SeamTimes::soak,
                     &SeamTimes::changeover, &SeamTimes::buildUp});
                left.cooling = at ? leftOf(state.due.lo, at->lo) : whole.cooling;
                return true;
            },
            [&](const Releasing&) {
                done(
                    {&SeamTimes::preparation, &SeamTimes::alignment, &SeamTimes::soak,
                     &SeamTimes::changeover, &SeamTimes::buildUp, &SeamTimes::cooling});
                return true;
            },
            [](const Inspecting&) { return false; }, [](const Closed&) { return false; },
            [](const Aborted&) { return false; }},
        weld.state);
    return holds ? std::optional(left) : std::nullopt;
}

class Maker {
public:
    Maker(const JobDayAsk& ask, LogReader* log) : m_ask(ask), m_log(log) {}

    Result<JobDay> make() {
        if (auto begun = readLog(); !begun) {
            return tl::unexpected<Error>(begun.error());
        }
        m_out.work.people = m_ask.people;
        for (const BenchDocument& bench : m_ask.benches) {
            m_out.work.benches.push_back({bench.bench.id, {"", kColdPlateMc}, {}, {}});
        }
        m_today.resize(m_ask.benches.size());
        if (auto placed = placeWelds(); !placed) {
            return tl::unexpected<Error>(placed.error());
        }
        for (std::size_t i = 0; i < m_ask.seams.size(); ++i) {
            const JobSeamState state = m_out.progress.seams[i].state;
            if (state != JobSeamState::Done && state != JobSeamState::Running &&
                state != JobSeamState::ToDecide) {
                if (m_out.work.seams.size() < kMostDaySeams) {
                    addSeam(m_ask.seams[i]);
                } else {
                    ++m_out.later;
                }
            }
        }
        auto plan = planDay(m_out.work);
        if (!plan) {
            return tl::unexpected<Error>(plan.error());
        }
        m_out.plan = std::move(*plan);
        return std::move(m_out);
    }

private:
    Result<void> readLog() {
        if (m_log == nullptr) {
            for (const JobSeam& seam : m_ask.seams) {
                m_out.progress.seams.push_back(
                    {seam.job, seam.label, JobSeamState::Open, "", "", {}});
            }
            return {};
        }
        auto progress = jobProgress(*m_log, m_ask.seams, m_ask.fromDay);
        if (!progress) {
            return tl::unexpected<Error>(progress.error());
        }
        m_out.progress = std::move(*progress);
        auto medians = medianTimes(*m_log);
        if (!medians) {
            return tl::unexpected<Error>(medians.error());
        }
        m_medians = std::move(*medians);
        auto roster = readRoster(*m_log);
        if (!roster) {
            return tl::unexpected<Error>(roster.error());
        }
        m_certificates = std::move(roster->certificate);
        return {};
    }

    ShopTimes shopTimes(
        const std::string& bench, const std::string& procedure, std::int64_t thicknessUm) const {
        const auto found = m_medians.find({bench, procedure, thicknessUm});
        return found == m_medians.end()
                   ? ShopTimes{}
                   : ShopTimes{
                         found->second.preparation, found->second.alignment, found->second.release};
    }

    std::optional<std::size_t> benchNamed(const std::string& id) const {
        const auto found =
            std::find_if(m_ask.benches.begin(), m_ask.benches.end(), [&](const BenchDocument& one) {
                return one.bench.id == id;
            });
        return found == m_ask.benches.end()
                   ? std::nullopt
                   : std::optional(static_cast<std::size_t>(found - m_ask.benches.begin()));
    }

    /// Damaged: its events can't be read or make no weld; other errors are the log's.
    Result<Weld> weldNamed(const std::string& name) {
        auto events = m_log->weldEvents(name);
        return events ? foldTaking(*events) : tl::unexpected<Error>(std::move(events.error()));
    }

    /// Of today: the welds that hold a bench, and where the others left its plate.
    Result<void> placeWelds() {
        if (m_log == nullptr) {
            return {};
        }
        if (auto read = readToday(); !read) {
            return read;
        }
        const auto open = m_log->openWelds();
        if (!open) {
            return tl::unexpected<Error>(open.error());
        }
        std::vector<std::pair<Weld, std::size_t>> running; // and its bench
        for (const std::string& name : *open) {
            auto weld = weldNamed(name);
            if (!weld && weld.error().code != ErrorCode::Damaged) {
                return tl::unexpected<Error>(weld.error());
            }
            if (!weld) {
                if (auto named = nameUnread(name, weld.error().detail); !named) {
                    return named;
                }
            } else if (const auto bench = benchNamed(weld->opened().bench)) {
                running.emplace_back(std::move(*weld), *bench); // else of a bench not planned for
            }
        }
        // Who is planned for has his own hands; whoever isn't takes what then is left.
        std::stable_partition(running.begin(), running.end(), [this](const auto& one) {
            const std::string& by = one.first.events.front().by;
            return std::find(m_ask.people.begin(), m_ask.people.end(), by) != m_ask.people.end();
        });
        for (const auto& [weld, bench] : running) {
            placeWeld(weld, bench, true);
        }
        for (std::size_t bench = 0; bench < m_today.size(); ++bench) {
            if (!m_today[bench].empty()) {
                placeWeld(m_today[bench].front(), bench, false);
            }
        }
        return {};
    }

    /// By as much as its opening says.
    Result<void> nameUnread(const std::string& weld, const std::string& why) {
        const auto body = m_log->body(weld, 1);
        if (!body) {
            return tl::unexpected<Error>(body.error());
        }
        JointLine line;
        line.weld = weld;
        const auto event = *body ? eventFromBody(**body) : fail(ErrorCode::Missing, "");
        if (const auto* opened = event ? std::get_if<WeldOpened>(&event->d) : nullptr) {
            line.number = opened->number;
            line.bench = opened->bench;
        }
        leaveOut(line, why);
        return {};
    }

    void leaveOut(const JointLine& line, const std::string& why) {
        const bool known =
            std::any_of(m_out.unread.begin(), m_out.unread.end(), [&](const UnreadWeld& one) {
                return one.weld == line.weld;
            });
        if (!known) {
            m_out.unread.push_back({line.weld, line.number, line.bench, why});
        }
    }

    /// Today's welds of each bench, from which follow its plate and its trial joint.
    Result<void> readToday() {
        JointFilter today;
        today.fromDay = toIsoDate(m_ask.now.utc, m_ask.now.offset);
        today.toDay = today.fromDay;
        std::vector<std::pair<std::size_t, JointLine>> lines;
        const auto read = m_log->eachJoint(today, [&](const JointLine& line) {
            if (const auto bench = benchNamed(line.bench)) {
                lines.emplace_back(*bench, line);
            }
            return true;
        });
        if (!read) {
            return read;
        }
        std::set<std::size_t> damaged; // what came before a weld that can't be read says nothing
        for (const auto& [bench, line] : lines) {
            auto weld = weldNamed(line.weld);
            if (!weld && weld.error().code != ErrorCode::Damaged) {
                return tl::unexpected<Error>(weld.error());
            }
            if (!weld) {
                damaged.insert(bench);
                leaveOut(line, weld.error().detail);
            } else if (damaged.count(bench) == 0) {
                m_today[bench].push_back(std::move(*weld));
            }
        }
        return {};
    }

    void placeWeld(const Weld& weld, std::size_t bench, bool running) {
        const auto plate = plateOf(weld);
        DayBench& day = m_out.work.benches[bench];
        if (!plate || day.running) {
            return;
        }
        day.plate = *plate;
        if (running) {
            addRunning(weld, bench);
        }
    }

    static std::optional<PlateUse> plateOf(const Weld& weld) {
        return weld.plan.isReady() && weld.plan.plate
                   ? std::optional(PlateUse{weld.plan.material, weld.plan.plate->targetMc})
                   : std::nullopt;
    }

    /// How long its plate still settles. Once it was read, or set aside, it is as it should be.
    Milliseconds
    plateWaitOf(const Weld& weld, std::size_t bench, const std::optional<WeldTime>& at) const {
        const auto* preparing = std::get_if<Preparing>(&weld.state);
        if (preparing == nullptr || preparing->settled.count("plate_temperature") > 0) {
            return Ms{0};
        }
        PlateUse before{"", kColdPlateMc};
        for (const Weld& one : m_today[bench]) {
            const auto plate = one.id() == weld.id() ? std::nullopt : plateOf(one);
            if (plate) {
                before = *plate;
                break;
            }
        }
        return leftOf(plateWait(before, *plateOf(weld)), at ? at->lo : Ms{0});
    }

    void addRunning(const Weld& weld, std::size_t bench) {
        DayBench& day = m_out.work.benches[bench];
        const WeldPlan& plan = weld.plan;
        const WeldOpened& opened = weld.opened();
        const ShopTimes shop = shopTimes(opened.bench, plan.procedure, plan.thicknessUm);
        SeamTimes whole;
        whole.soak = plan.soak->target;
        whole.alignment = shop.alignment.value_or(
            Ms{std::llround(static_cast<double>(whole.soak.count()) * kChosenAlignment)});
        whole.preparation = shop.preparation.value_or(kChosenPreparation);
        whole.release = shop.release.value_or(kChosenRelease);
        whole.changeover = *plan.changeoverMax;
        whole.buildUp = plan.buildUp->target;
        whole.cooling = plan.cooling->atLeast;
        whole.plate = day.plate;
        const auto known = weldTimeAt(weld, m_ask.now);
        const auto at = known ? std::optional(*known) : std::nullopt;
        auto left = leftOf(weld, whole, at);
        if (!left) {
            return;
        }
        const Ms wait = plateWaitOf(weld, bench, at);
        left->preparation = std::max(left->preparation, wait); // it is prepared meanwhile
        const std::size_t person = handsOf(weld.events.front().by);
        day.running =
            DayRunning{labelOf(weld), *left, person, opened.type == WeldType::Trial, wait};
    }

    /// With its job where a seam of another job that is planned has the same label.
    std::string labelOf(const Weld& weld) const {
        const WeldOpened& opened = weld.opened();
        if (!opened.seam) {
            return "joint " + std::to_string(opened.number);
        }
        const bool twice =
            opened.job &&
            std::any_of(m_ask.seams.begin(), m_ask.seams.end(), [&opened](const JobSeam& one) {
                return one.label == *opened.seam && one.job != *opened.job;
            });
        return twice ? *opened.job + " " + *opened.seam : *opened.seam;
    }

    /// As session would make it of the seam there today.
    SetUp setUpOf(const JobSeam& seam, std::size_t bench) const {
        SetUp out;
        for (const Sheet& sheet : seam.sheets) {
            out.materials.push_back(sheet.material);
        }
        out.thicknessUm = std::llround(seam.thicknessMm * 1e3);
        out.bench = m_ask.benches[bench].bench.id;
        out.benchDoc = m_ask.benches[bench].sha256;
        out.day = toIsoDate(m_ask.now.utc, m_ask.now.offset);
        return out;
    }

    /// Which trial joint that seam asks for, and whether its benches have it.
    void askForTrial(const JobSeam& seam, DaySeam& out) {
        if (m_log != nullptr && m_log->world() == Practice::kName) {
            return;
        }
        for (const Sheet& sheet : seam.sheets) {
            out.setUp += sheet.material + " ";
        }
        out.setUp += std::to_string(std::llround(seam.thicknessMm * 1e3));
        for (std::size_t bench = 0; bench < m_today.size(); ++bench) {
            DayBench& day = m_out.work.benches[bench];
            if (m_today[bench].empty() || day.tried) {
                continue;
            }
            const SetUp setUp = setUpOf(seam, bench);
            const Weld& last = m_today[bench].front();
            const TrialFinding found = trialFor(setUp, m_today[bench]);
            if (found.state == TrialState::Released) {
                day.tried = DayTried{out.setUp, Ms{0}, ""};
            } else if (found.state == TrialState::Waiting) {
                const Weld& trial = weldOf(bench, found.weld);
                const Ms since = std::max(Ms{0}, m_ask.now.utc - trial.events.back().at.utc);
                day.tried = DayTried{out.setUp, leftOf(kChosenDecision, since), labelOf(trial)};
            } else if (
                last.opened().type == WeldType::Trial && isOpen(last.state) &&
                seamclock::setUpOf(last) == setUp) {
                day.tried = DayTried{out.setUp, kChosenDecision, labelOf(last)};
            }
        }
    }

    const Weld& weldOf(std::size_t bench, const std::string& id) const {
        return *std::find_if(m_today[bench].begin(), m_today[bench].end(), [&id](const Weld& one) {
            return one.id() == id;
        });
    }

    /// Whoever isn't named welds with the hands of one who isn't at a running weld, if there is
    /// one.
    std::size_t handsOf(const std::string& by) {
        const auto named = std::find(m_ask.people.begin(), m_ask.people.end(), by);
        if (named != m_ask.people.end()) {
            return m_hands[by] = static_cast<std::size_t>(named - m_ask.people.begin());
        }
        const auto known = m_hands.find(by);
        if (known != m_hands.end()) {
            return known->second;
        }
        std::set<std::size_t> taken;
        for (const auto& [who, place] : m_hands) {
            taken.insert(place);
        }
        std::size_t place = 0;
        while (taken.count(place) > 0 && place + 1 < m_ask.people.size()) {
            ++place;
        }
        m_hands[by] = place;
        return place;
    }

    /// One of a number of hands is nobody whose certificate could be asked for.
    static bool isSomebody(const std::string& person) { return person.rfind("person:", 0) == 0; }

    /// Empty: anybody may.
    std::vector<bool> weldersOf(const std::string& material, std::int64_t thicknessUm) const {
        const std::string today = toIsoDate(m_ask.now.utc, m_ask.now.offset);
        std::vector<bool> out;
        for (const std::string& person : m_ask.people) {
            const auto state = certificateFor(m_certificates, person, material, thicknessUm, today);
            out.push_back(
                !isSomebody(person) || state == CertificateState::NotKept ||
                state == CertificateState::Valid);
        }
        const bool all = std::find(out.begin(), out.end(), false) == out.end();
        return all ? std::vector<bool>() : out;
    }

    /// With its job where another job's seam has the same label: a day's seams are told apart by
    /// their labels alone.
    std::string labelOf(const JobSeam& seam) const {
        const auto same =
            std::count_if(m_ask.seams.begin(), m_ask.seams.end(), [&seam](const JobSeam& one) {
                return one.label == seam.label;
            });
        return same > 1 ? (seam.job + " " + seam.label) : seam.label;
    }

    void addSeam(const JobSeam& seam) {
        DaySeam out;
        out.label = labelOf(seam);
        out.on.resize(m_ask.benches.size());
        const auto procedure = std::find_if(
            m_ask.procedures.begin(), m_ask.procedures.end(),
            [&](const ProcedureDocument& one) { return one.procedure.id == seam.procedure; });
        if (procedure == m_ask.procedures.end()) {
            out.whyNot = "the procedure \"" + seam.procedure + "\" is not there";
            m_out.work.seams.push_back(std::move(out));
            return;
        }
        std::string wish = seam.bench;
        if (wish.empty() && !seam.benchFile.empty()) {
            const auto file = readBenchFile(seam.benchFile);
            if (!file) {
                out.whyNot = file.error().detail;
                m_out.work.seams.push_back(std::move(out));
                return;
            }
            wish = file->bench.id;
        }
        if (!wish.empty() && !benchNamed(wish)) {
            out.whyNot = "it is wished on the bench \"" + wish + "\", which is not planned for";
        }
        for (std::size_t i = 0; i < m_ask.benches.size(); ++i) {
            const Bench& bench = m_ask.benches[i].bench;
            if (!wish.empty() && bench.id != wish) {
                continue;
            }
            // The nominal one, as at the bench.
            const std::int64_t thickness = std::llround(seam.thicknessMm * 1e3);
            const auto work = seamWork(
                seam, procedure->procedure, bench, shopTimes(bench.id, seam.procedure, thickness));
            if (work) {
                out.on[i] = work->times;
                out.welders = weldersOf(work->times.plate.material, thickness);
                m_out.times[{out.label, bench.id}] = *work;
            } else {
                out.whyNot +=
                    (out.whyNot.empty() ? "" : "; ") + bench.id + ": " + work.error().detail;
            }
        }
        if (!out.welders.empty() &&
            std::find(out.welders.begin(), out.welders.end(), true) == out.welders.end()) {
            out.whyNot = "nobody who is here has a certificate for its sheets that holds today";
        }
        askForTrial(seam, out);
        m_out.work.seams.push_back(std::move(out));
    }

    const JobDayAsk& m_ask;
    LogReader* m_log;
    JobDay m_out;
    std::map<LikeTimes, MedianTimes> m_medians;
    std::map<std::string, HeldCertificates> m_certificates;
    std::vector<std::vector<Weld>> m_today;     // of each bench, the newest first
    std::map<std::string, std::size_t> m_hands; // who is at a running weld, as one of the people
};

} // namespace

Result<JobDay> jobDay(const JobDayAsk& ask, LogReader* log) {
    return Maker(ask, log).make();
}

} // namespace seamclock
