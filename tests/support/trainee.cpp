#include "tests/support/trainee.h"

#include "core/base/uuid.h"
#include "core/practice/lesson_codec.h"
#include "core/weld/intent.h"
#include "tests/support/materials.h"
#include "tests/support/scratch_folder.h"

#include <algorithm>
#include <map>
#include <variant>

namespace seamclock::test {
namespace {

const std::string kBy = "person:tilda";

struct Tell {
    Milliseconds at{0};
    WeldDetail d;
};

/// A hand that follows the card, whatever it was made for.
HandFaults byCard(HandFaults faults, const WeldPlan& card) {
    faults.card = card;
    return faults;
}

class Trainee {
public:
    Trainee(const SetLesson& set, const WeldPlan& card, const HandFaults& faults, Telling telling)
        : m_card(card), m_telling(std::move(telling)),
          m_bench(VirtualBench::set(set.setup).value()) {
        m_bench.watch([this](Milliseconds at, const BenchAct& act) {
            m_acts.push_back({at, act});
        });
        SteadyHand hand(m_bench, byCard(faults, card));
        const auto did = [](const Result<void>& done) { EXPECT_TRUE(done) << done.error().detail; };
        did(hand.prepare());
        checks();
        did(hand.align());
        const Milliseconds aligned = m_bench.now();
        const BenchView bead = m_bench.view();
        did(hand.soak());
        const Milliseconds soakFrom = m_bench.now() - hand.times().soak;
        did(hand.changeOver());
        did(hand.buildUp());
        const BenchView locked = m_bench.view();
        did(hand.cool());
        did(hand.release());
        m_bench.advance(Milliseconds(60'000));

        const BenchInstants instants = m_bench.view().instants;
        const Milliseconds touched = instants.plateTouched.value_or(aligned);
        tell(touched, AlignmentStarted{});
        const Milliseconds soakTold =
            m_telling.soakAtContact ? touched + Milliseconds(1500) : soakFrom;
        if (!m_telling.soakAtContact) {
            CheckMade made;
            made.check = "alignment_bead";
            made.passed = true;
            made.valueUm = beadSeen(bead, faults) / 100 * 100;
            tell(aligned - Milliseconds(1), made);
        }
        tell(soakTold, SoakStarted{});
        readLater(
            soakFrom + std::min(hand.times().soak / 2, Milliseconds(5000)), ReadingPhase::Soak);
        const Milliseconds left = leavesPlate(instants);
        tell(left + m_telling.plateOutLate, PlateOut{});
        const Milliseconds met = instants.facesMet.value_or(left);
        tell(std::max(met, left + m_telling.plateOutLate + Milliseconds(1000)), FacesMet{});
        const Milliseconds lock = instants.locked.value_or(met);
        tell(
            lock - Milliseconds(1),
            ReadingTaken{ReadingPhase::Joining, locked.scale.seenMilli + m_telling.misreadMilli});
        tell(std::max(lock, met + Milliseconds(1700)), PressureLocked{});
        for (const Milliseconds due : m_card.cooling->rechecks) {
            if (lock + due + Milliseconds(3000) <
                instants.letGo.value_or(m_bench.now()) - Milliseconds(1000)) {
                readLater(lock + due + Milliseconds(3000), ReadingPhase::Recheck);
            }
        }
        releases(lock + faults.coolFor.value_or(m_card.cooling->atLeast));
        tell(m_bench.now() - Milliseconds(20'000), measured());
        tell(m_bench.now() - Milliseconds(19'000), JointNumbered{});
    }

    /// What was told, in order, with readings looked up in what was done.
    std::vector<Tell> told(const PracticeReplay& replay) {
        for (const auto& [at, phase] : m_later) {
            tell(at, ReadingTaken{phase, replay.at(at).view().scale.seenMilli});
        }
        std::stable_sort(
            m_told.begin(), m_told.end(), [](const Tell& a, const Tell& b) { return a.at < b.at; });
        return m_told;
    }
    const std::vector<TimedAct>& acts() const { return m_acts; }
    Milliseconds length() const { return m_bench.now(); }

private:
    void tell(Milliseconds at, WeldDetail d) { m_told.push_back({at, std::move(d)}); }
    void readLater(Milliseconds at, ReadingPhase phase) { m_later.emplace_back(at, phase); }

    static std::int64_t beadSeen(const BenchView& view, const HandFaults& faults) {
        double smallest = view.stations.front().beadTopMm;
        for (const StationView& station : view.stations) {
            const double below = faults.topBeadOnly ? station.beadTopMm : station.beadBottomMm;
            smallest = std::min({smallest, station.beadTopMm, below});
        }
        return static_cast<std::int64_t>(smallest * 1e3) + 50;
    }

    void checks() {
        const BenchView view = m_bench.view();
        Milliseconds at = m_bench.now() - Milliseconds(3000);
        for (const std::string& code : m_card.checks) {
            CheckMade made;
            made.check = code;
            made.passed = true;
            if (code == "plate_temperature") {
                made.place = "middle";
                made.face = "left";
                const double face = view.stations[view.stations.size() / 2].plateC;
                made.valueMc =
                    static_cast<std::int64_t>(face * 2 + 0.5) * 500 + m_telling.plateOffMc;
            } else if (code == "scale_zero") {
                made.valueMilli = m_card.scale->zeroMilli;
            } else if (code == "gap") {
                made.valueUm = m_card.gapUm;
            } else if (code == "clamping_gap") {
                made.valueUm = m_card.clampingGapUm;
            }
            at += Milliseconds(100);
            tell(at, made);
        }
    }

    /// Who backed off before leaves it when it goes out.
    Milliseconds leavesPlate(const BenchInstants& instants) const {
        const auto out = std::find_if(m_acts.begin(), m_acts.end(), [](const TimedAct& one) {
            return std::holds_alternative<TakePlateOut>(one.act);
        });
        const Milliseconds act = out == m_acts.end() ? m_bench.now() : out->at;
        const Milliseconds left = instants.plateLeft.value_or(act);
        return left + Milliseconds(3000) < act ? act : left;
    }

    void releases(Milliseconds from) {
        std::size_t next = 0;
        for (const TimedAct& one : m_acts) {
            if (one.at < from || next >= m_card.releaseOrder.size()) {
                continue;
            }
            const std::map<std::string, bool> kIs{
                {"clamps_eased", std::holds_alternative<EaseClamps>(one.act)},
                {"bars_opened", std::holds_alternative<OpenBars>(one.act)},
                {"spring_off", std::holds_alternative<LetSpringOff>(one.act)},
                {"sheet_out", std::holds_alternative<LiftSheet>(one.act)}};
            if (kIs.at(m_card.releaseOrder[next])) {
                tell(one.at + Milliseconds(200), ReleaseStep{m_card.releaseOrder[next++]});
            }
        }
        EXPECT_EQ(next, m_card.releaseOrder.size());
    }

    BeadMeasured measured() const {
        const BenchView view = m_bench.view();
        BeadMeasured bead;
        double deepest = view.stations.front().valleyTopMm;
        double height = 0;
        for (const StationView& station : view.stations) {
            deepest = std::min({deepest, station.valleyTopMm, station.valleyBottomMm});
            height = std::max({height, station.beadTopMm, station.beadBottomMm});
        }
        bead.heightUm = static_cast<std::int64_t>(height * 10 + 0.5) * 100;
        bead.widthUm = 2 * bead.heightUm;
        bead.kUm = static_cast<std::int64_t>(deepest * 1e3);
        return bead;
    }

    const WeldPlan& m_card;
    Telling m_telling;
    VirtualBench m_bench;
    std::vector<TimedAct> m_acts;
    std::vector<Tell> m_told;
    std::vector<std::pair<Milliseconds, ReadingPhase>> m_later;
};

} // namespace

const PracticeShop& shop() {
    static const PracticeShop kShop = [] {
        PracticeShop all;
        all.procedures = readProcedureFolder(resource("procedures")).value();
        for (const char* name : {"east", "west"}) {
            all.benches.push_back(
                readBenchFile(resource("demo/bench-" + std::string(name) + ".json")).value());
        }
        all.materials = materials();
        return all;
    }();
    return kShop;
}

Lesson shippedLesson(const std::string& id) {
    static const std::vector<Lesson> kAll = readLessonFolder(resource("lessons")).value();
    const auto found = std::find_if(
        kAll.begin(), kAll.end(), [&id](const Lesson& lesson) { return lesson.id == id; });
    EXPECT_NE(found, kAll.end()) << id;
    return found == kAll.end() ? Lesson{} : *found;
}

SetLesson setFor(const Lesson& lesson) {
    auto set = setLesson(lesson, shop());
    EXPECT_TRUE(set) << lesson.id << ": " << set.error().detail;
    return set.value();
}

VirtualClock practiceClock() {
    Instant start;
    start.bootId = "practice:" + newUuid();
    start.boot = Milliseconds(40'000);
    start.utc = Milliseconds(1'893'996'000'000);
    return VirtualClock(start);
}

MadeWeld practised(
    const SetLesson& set, const HandFaults& faults, LogWriter<Practice>& log, VirtualClock& clock,
    const Telling& telling) {
    auto session = Session<Practice>::start(log, clock);
    EXPECT_TRUE(session) << session.error().detail;
    auto opened = session->open(set.order, kBy);
    EXPECT_TRUE(opened) << opened.error().detail;
    Weld weld = opened.value();
    Trainee trainee(set, weld.plan, faults, telling);

    PracticeTake take;
    take.acts = trainee.acts();
    take.length = trainee.length();
    const auto seen = PracticeReplay::make(set.setup, take);
    EXPECT_TRUE(seen) << seen.error().detail;
    const std::vector<Tell> told = trainee.told(seen.value());

    PracticeRun run = PracticeRun::begin(set, clock).value();
    const auto step = [&](const WeldDetail& d) {
        auto next = session->act(weld.id(), Intent{lastTakeable(weld), kBy, d});
        EXPECT_TRUE(next) << kindOf(d) << ": " << next.error().detail;
        weld = next ? *next : weld;
    };
    std::vector<std::pair<Milliseconds, std::function<void()>>> course;
    for (const TimedAct& one : take.acts) {
        course.emplace_back(one.at, [&run, &one] {
            const auto done = run.act(one.act);
            EXPECT_TRUE(done) << done.error().detail;
        });
    }
    for (const TimedAct& one : telling.tries) {
        course.emplace_back(one.at, [&run, &one] { EXPECT_FALSE(run.act(one.act)); });
    }
    for (const Noticed& one : telling.noticed) {
        course.emplace_back(one.at, [&run, &one] { run.notice(one.what); });
    }
    for (const Tell& one : told) {
        course.emplace_back(one.at, [&step, &one] { step(one.d); });
    }
    std::stable_sort(course.begin(), course.end(), [](const auto& a, const auto& b) {
        return a.first < b.first;
    });
    for (const auto& [at, doIt] : course) {
        run.advance(at - run.now());
        doIt();
    }
    run.advance(take.length - run.now());
    for (const std::string& owed : reasonsOwed(weld)) {
        step(ReasonGiven{owed, "practice", "for the test"});
    }
    step(closing(weld));
    MadeWeld made;
    made.take = run.take(weld.id());
    made.record = record(weld);
    return made;
}

MadeWeld practised(const SetLesson& set, const HandFaults& faults, const Telling& telling) {
    const ScratchFolder folder;
    VirtualClock clock = practiceClock();
    auto log = LogWriter<Practice>::open(folder.file("practice.db"), clock);
    EXPECT_TRUE(log) << log.error().detail;
    return practised(set, faults, log.value(), clock, telling);
}

PracticeScore scoreOf(const SetLesson& set, const MadeWeld& made) {
    static std::map<std::string, JointPhysics> planned;
    if (planned.count(set.lesson.id) == 0) {
        planned[set.lesson.id] = plannedJoint(set).value();
    }
    const auto replay = PracticeReplay::make(set.setup, made.take);
    EXPECT_TRUE(replay) << replay.error().detail;
    return practiceScore(set, made.record, replay.value(), planned.at(set.lesson.id));
}

bool has(const PracticeScore& score, Lapse lapse) {
    return std::any_of(
        score.lapses.begin(), score.lapses.end(),
        [lapse](const LapseFinding& finding) { return finding.lapse == lapse; });
}

std::string names(const PracticeScore& score) {
    std::string all;
    for (const LapseFinding& finding : score.lapses) {
        all += (all.empty() ? "" : ", ") + std::string(toString(finding.lapse));
        if (finding.was && finding.planned) {
            all += " (" + std::to_string(*finding.was) + " for " +
                   std::to_string(*finding.planned) + " " + finding.unit + ")";
        }
    }
    return all;
}

} // namespace seamclock::test
