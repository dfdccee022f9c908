#include "core/practice/bench_weld.h"

#include "core/vbench/hand_moves.h"
#include "core/weld/intent.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace seamclock {
namespace {

using std::chrono::seconds;

constexpr Milliseconds kLongestAlignment{1'800'000}; // no bead by then: it will not come
constexpr double kLeansMm = 0.6; // of the thickness: an edge that nobody looked at from below
constexpr Milliseconds kLetLowAt{20'000}; // after the lock
constexpr double kGivesWay = 1.2; // a lock that does loses that much of the reading in cooling
constexpr std::int64_t kColdSpotPercent = 70; // of the seam, between two places of the probe

double milli(std::int64_t value) {
    return static_cast<double>(value) / 1e3;
}

/// As a person reads it who has marks so far apart.
std::int64_t readAt(double value, std::int64_t marks) {
    return std::llround(value * 1e3 / static_cast<double>(marks)) * marks;
}

Result<void> lacking(const char* what) {
    return fail(
        ErrorCode::Missing, std::string("no rehearsal with physics: the plan lacks ") + what);
}

Result<void> whole(const WeldPlan& plan) {
    const struct {
        bool there;
        const char* what;
    } kRows[] = {
        {plan.scale.has_value(), "the scale's readings"},
        {plan.plate.has_value(), "the plate's temperature"},
        {plan.beadMinUm.has_value(), "the alignment bead"},
        {plan.soak.has_value(), "the soak time"},
        {plan.changeoverMax.has_value(), "the changeover's limit"},
        {plan.buildUp.has_value(), "the build-up time"},
        {plan.cooling.has_value(), "the cooling time"},
    };
    for (const auto& row : kRows) {
        if (!row.there) {
            return lacking(row.what);
        }
    }
    return {};
}

double mmPerUnit(const Bench& bench) {
    return inNewtons(bench.scale.rate()) / inNewtons(*bench.scale.ratePerMillimetre());
}

/// The bench with what the faults do to it.
BenchSetup spoiled(const BenchSetup& right, const WeldPlan& card, const RehearseFaults& faults) {
    BenchSetup setup = right;
    BenchFaults& bench = setup.faults;
    if (faults.plateOffMk) {
        bench.plateOffsetK = milli(*faults.plateOffMk);
    } else if (faults.coldPlate) {
        bench.plateOffsetK = milli(card.plate->minMc - kColderMc - right.plan.plate->targetMc);
    }
    if (faults.coldSpotMk) {
        bench.coldSpotK = milli(*faults.coldSpotMk);
        bench.coldSpotAt = static_cast<double>(kColdSpotPercent) / 100;
    }
    bench.plateDirty = faults.plateDirty;
    if (faults.draughtPercent) {
        bench.draught = static_cast<double>(*faults.draughtPercent) / 100;
    }
    if (faults.notFollowed) {
        const double minutes = static_cast<double>(card.cooling->atLeast.count()) / 6e4;
        const double mm = milli(card.scale->joining.setMilli - card.scale->zeroMilli) *
                          mmPerUnit(right.bench) * kGivesWay;
        bench.lockCreepMmPerMin = std::clamp(mm / std::max(minutes, 0.1), 0.0, 5.0);
    }
    return setup;
}

class Working {
public:
    Working(VirtualBench& bench, const WeldPlan& card, const Hand& hand)
        : m_bench(bench), m_moves(bench), m_card(card), m_hand(hand), m_chance(hand) {}

    Result<void> weld() {
        for (Result<void> (Working::*phase)() :
             {&Working::prepare, &Working::align, &Working::soak, &Working::changeOver,
              &Working::buildUp, &Working::cool, &Working::release, &Working::inspect}) {
            if (m_over) {
                break;
            }
            if (auto ok = (this->*phase)(); !ok) {
                return ok;
            }
        }
        m_made.story.end = m_bench.view();
        m_made.story.bend = bendTest(m_made.story.end, m_bench.setup().plan);
        return {};
    }

    BenchWeld take() { return std::move(m_made); }

private:
    const RehearseFaults& faults() const { return m_hand.faults; }
    const WeldPlan::ScalePlan& scale() const { return *m_card.scale; }

    /// Two presses within a blink would be taken for one, so he does not make them.
    void say(WeldDetail d, Milliseconds lag = Milliseconds(0)) {
        Milliseconds due = std::max(m_bench.now() + lag, m_last);
        const bool release = std::holds_alternative<ReleaseStep>(d);
        if (isPivotal(d) || release) {
            const bool faces = std::holds_alternative<FacesMet>(d);
            due = std::max(due, m_lastPivotal + (faces ? kFacesBounce : kBounce));
            m_lastPivotal = release ? m_lastPivotal : due;
        }
        m_last = due;
        m_made.acts.push_back({due, std::move(d)});
    }

    void waitUntil(Milliseconds at) { m_bench.advance(at - m_bench.now()); }

    std::int64_t seen(const std::string& name) const {
        const std::int64_t off = m_chance.misreading(name) * scale().divisionMilli;
        return m_bench.view().scale.seenMilli + off;
    }
    /// Where he turns to who believes to see `set`: his misreading is on the scale, not in the
    /// record.
    double turned(const std::string& name, std::int64_t set) const {
        return milli(set - m_chance.misreading(name) * scale().divisionMilli);
    }
    void tellSeen(const std::string& name, ReadingPhase phase) {
        const std::int64_t off = m_chance.misreading(name) * scale().divisionMilli;
        say(ReadingTaken{phase, m_bench.view().scale.seenMilli + off});
    }

    CheckMade checked(const std::string& code) const;
    Result<void> does(const std::string& code);
    Result<void> prepare();
    std::int64_t beadUm() const;
    Result<void> align();
    Result<void> letDown();
    Result<void> justInContact();
    Result<void> soak();
    void tapTooEarly(Milliseconds due);
    Result<void> changeOver();
    Result<void> closeAt(Milliseconds at);
    Result<void> lockLow();
    Result<void> buildUp();
    struct Look {
        Milliseconds at{0};
        std::optional<std::size_t> recheck;
        bool number = false;
        bool turnsDown = false;
        bool letsOff = false;
    };
    std::vector<Look> looks(Milliseconds until) const;
    Result<void> turnLocked(double reading);
    Result<void> look(const Look& one);
    Result<void> cool();
    Result<void> release();
    Result<void> releaseStep(const std::string& step);
    Result<void> inspect();

    VirtualBench& m_bench;
    HandMoves m_moves;
    const WeldPlan& m_card;
    const Hand& m_hand;
    HandChance m_chance;
    BenchWeld m_made;
    Milliseconds m_last{0};
    Milliseconds m_lastPivotal{-10'000};
    Milliseconds m_touched{0};
    Milliseconds m_soakFrom{0};
    Milliseconds m_plateOut{0};
    Milliseconds m_locked{0};
    bool m_over = false; // given up
};

CheckMade Working::checked(const std::string& code) const {
    CheckMade made;
    made.check = code;
    made.passed = true;
    const BenchView view = m_bench.view();
    if (code == "plate_temperature") {
        made.place = "middle";
        made.face = "left";
        made.valueMc = readAt(view.stations[view.stations.size() / 2].plateC, 500);
    } else if (code == "scale_zero") {
        made.valueMilli = view.scale.seenMilli;
    } else if (code == "gap") {
        made.valueUm = m_card.gapUm;
    } else if (code == "clamping_gap") {
        made.valueUm = m_card.clampingGapUm;
    } else if (code == "edges_meet") {
        double widest = view.stations.front().gapMm;
        for (const StationView& station : view.stations) {
            // Who clamps out of parallel did not look along the seam.
            widest = faults().offParallelUm ? widest : std::max(widest, station.gapMm);
        }
        made.valueUm = readAt(widest, 100);
    }
    return made;
}

/// What a check stands for; what was not done is told all the same.
Result<void> Working::does(const std::string& code) {
    const auto both = [this](auto act) -> Result<void> {
        for (int sheet = 0; sheet < 2; ++sheet) {
            act.sheet = sheet;
            if (auto ok = m_bench.act(act); !ok) {
                return ok;
            }
        }
        return {};
    };
    if (code == "film_off") {
        return faults().filmLeft ? Result<void>() : both(TakeFilmOff{});
    }
    if (code == "edges_planed") {
        return both(PlaneEdge{});
    }
    if (code == "plate_wiped") {
        return faults().plateDirty ? Result<void>() : m_bench.act(WipePlate{});
    }
    if (code == "gap") {
        return m_bench.act(SetGap{m_card.gapUm, m_card.gapUm});
    }
    if (code == "first_sheet") {
        return m_bench.act(ClampSheet{0, 0, 0, 0});
    }
    if (code == "clamping_gap") {
        return m_bench.act(SetGap{m_card.clampingGapUm, m_card.clampingGapUm});
    }
    if (code == "second_sheet") {
        const auto leans = static_cast<std::int64_t>(
            kLeansMm * static_cast<double>(m_bench.setup().plan.thicknessUm));
        ClampSheet second{
            1, 0, -faults().offParallelUm.value_or(0),
            faults().topBeadOnly ? std::clamp<std::int64_t>(leans, 3000, 10'000) : 0};
        if (auto ok = m_bench.act(second); !ok || !faults().touchedPermille) {
            return ok;
        }
        return m_bench.act(TouchEdge{1, static_cast<int>(*faults().touchedPermille)});
    }
    return {};
}

Result<void> Working::prepare() {
    for (const std::string& code : m_card.checks) {
        const auto time = timeForCheck(code);
        const bool skips = faults().skipCheck && *faults().skipCheck == code;
        const Milliseconds lasts =
            skips ? m_chance.handTime("skip", seconds(2), seconds(4))
                  : m_chance.handTime("check_" + code, time.first, time.second);
        m_bench.advance(lasts);
        // Without gaps and sheets there is nothing to weld: those are made even unchecked.
        const bool needless = code == "film_off" || code == "edges_planed" || code == "plate_wiped";
        if (!skips || !needless) {
            if (auto ok = does(code); !ok) {
                return ok;
            }
        }
        if (skips) {
            say(CheckOverridden{code, "practice: left out on request", Authority::Operator});
        } else {
            say(checked(code));
        }
    }
    m_bench.advance(m_chance.handTime("to_the_plate", seconds(3), seconds(8)));
    return {};
}

/// The bead that he goes by, in tenths of a millimetre.
std::int64_t Working::beadUm() const {
    const BenchView view = m_bench.view();
    double smallest = view.stations.front().beadTopMm;
    double largest = 0;
    for (const StationView& station : view.stations) {
        const double lower = faults().topBeadOnly ? station.beadTopMm : station.beadBottomMm;
        smallest = std::min({smallest, station.beadTopMm, lower});
        largest = std::max({largest, station.beadTopMm, lower});
    }
    return readAt(faults().offParallelUm ? largest : smallest, 100);
}

Result<void> Working::align() {
    if (auto ok = m_moves.apart(kPlateRoomMm); !ok) {
        return ok;
    }
    if (auto ok = m_bench.act(BringPlateIn{}); !ok) {
        return ok;
    }
    m_bench.advance(seconds(1));
    if (auto ok = m_moves.approach(); !ok) {
        return ok;
    }
    m_touched = m_bench.now();
    say(AlignmentStarted{});
    if (faults().clockFromContact) {
        say(SoakStarted{}, kBounce);
        m_soakFrom = m_last;
    }
    const double set = turned("align_reading", scale().alignment.setMilli);
    const Milliseconds readAfter =
        m_touched + m_chance.draw("align_reading", seconds(4), seconds(8));
    std::int64_t wanted = *m_card.beadMinUm;
    if (faults().thinBead) {
        wanted = wanted * kThinBeadPercent / 100;
    } else {
        wanted += m_chance.chance().even("bead", 0, m_chance.unskilled(8)) * 100;
    }
    const Milliseconds latest = faults().clockFromContact ? m_touched + m_card.soak->target * 4 / 5
                                                          : m_touched + kLongestAlignment;
    bool told = false;
    while (beadUm() < wanted && m_bench.now() < latest) {
        if (auto ok = m_moves.follow(set); !ok) {
            return ok;
        }
        if (!told && m_bench.now() >= readAfter) {
            told = true;
            tellSeen("align_reading", ReadingPhase::Alignment);
        }
        m_bench.advance(kFollows);
    }
    if (beadUm() < wanted && !faults().clockFromContact) {
        say(WeldAborted{"practice", "no bead came within half an hour"});
        m_over = true;
        return {};
    }
    if (!told) {
        tellSeen("align_reading", ReadingPhase::Alignment);
    }
    CheckMade bead;
    bead.check = "alignment_bead";
    bead.passed = true;
    bead.valueUm = beadUm();
    say(bead);
    return letDown();
}

/// Where the reading alone leaves a gap. What it took to move the table there may be read as too
/// much; eased a little, the table's own friction holds it.
Result<void> Working::justInContact() {
    if (auto ok = m_moves.inContact(); !ok || faults().soakPressed) {
        return ok;
    }
    const ReadingBand& band = scale().soak;
    if (m_bench.view().scale.seenMilli <= band.highMilli) {
        return {};
    }
    constexpr std::int64_t kHardlyOnePercent = 40; // of a division: still read as the one below
    const std::int64_t eased = band.setMilli + scale().divisionMilli * kHardlyOnePercent / 100;
    return m_moves.turnTo(milli(eased), kTurnMmPerS, true);
}

/// From alignment's reading to soak's.
Result<void> Working::letDown() {
    if (!faults().soakPressed) {
        const double set = turned("soak_reading", scale().soak.setMilli);
        if (auto ok = m_moves.turnTo(set, kTurnMmPerS, true); !ok) {
            return ok;
        }
    }
    if (faults().backedOffUm) {
        if (auto ok = m_moves.apart(milli(*faults().backedOffUm)); !ok) {
            return ok;
        }
    } else if (auto ok = justInContact(); !ok) {
        return ok;
    }
    if (faults().clockFromContact) {
        return {}; // it runs already
    }
    m_soakFrom = m_bench.now();
    say(SoakStarted{}, faults().backdate.value_or(Milliseconds(0)));
    if (faults().backdate) {
        m_last += kBackdateThought;
        say(StepBackdated{0, *faults().backdate});
    }
    return {};
}

/// He tapped, took it back, and stood there again when soak was due.
void Working::tapTooEarly(Milliseconds due) {
    waitUntil(due - std::min(kShortOfSoak, m_card.soak->target / 2));
    say(PlateOut{});
    m_bench.advance(kSecondThought);
    say(StepTakenBack{});
}

Result<void> Working::soak() {
    const Milliseconds target = m_card.soak->target;
    Milliseconds due = m_soakFrom + target + m_chance.plateOutLag(*m_card.soak);
    if (faults().shortSoak) {
        due = m_soakFrom + target - *faults().shortSoak;
    } else if (faults().longSoak || faults().phoneCall) {
        due = m_soakFrom + target + faults().longSoak.value_or(Milliseconds(0)) +
              faults().phoneCall.value_or(Milliseconds(0));
    }
    const double set = faults().soakPressed ? milli(scale().alignment.setMilli)
                                            : turned("soak_reading", scale().soak.setMilli);
    const Milliseconds left = std::max(due - m_bench.now(), Milliseconds(0));
    const Milliseconds readAfter =
        m_bench.now() + std::min(m_chance.draw("soak_reading", seconds(3), seconds(6)), left / 4);
    const Milliseconds tap = faults().takeBack ? due - kShortOfSoak - kSecondThought : due;
    const Milliseconds busy = std::max(std::min(tap, due), m_bench.now());
    bool told = false;
    const auto tell = [&] {
        told = true;
        const std::int64_t off = m_chance.misreading("soak_reading") * scale().divisionMilli;
        say(ReadingTaken{ReadingPhase::Soak, m_bench.view().scale.seenMilli + off});
    };
    // Who takes a call leaves it as it is.
    while (m_bench.now() < busy) {
        if (!faults().backedOffUm && !(faults().phoneCall && told)) {
            if (auto ok = m_moves.follow(set); !ok) {
                return ok;
            }
            if (auto ok = justInContact(); !ok) {
                return ok;
            }
        }
        if (!told && m_bench.now() >= readAfter) {
            tell();
        }
        m_bench.advance(std::min(kFollows, std::max(busy - m_bench.now(), Milliseconds(0))));
    }
    if (!told) {
        tell();
    }
    if (faults().takeBack) {
        tapTooEarly(m_soakFrom + target);
    }
    waitUntil(due);
    return {};
}

/// So that the faces meet at that time, if the way is still long enough: he tries it out on a bench
/// that is not there.
Result<void> Working::closeAt(Milliseconds at) {
    VirtualBench tried = m_bench;
    HandMoves moves(tried);
    if (auto ok = moves.approach(); !ok) {
        return ok;
    }
    const Milliseconds takes = tried.now() - m_bench.now();
    m_bench.advance(at - takes - m_bench.now());
    return m_moves.approach();
}

Result<void> Working::changeOver() {
    m_plateOut = m_bench.now();
    say(PlateOut{});
    m_plateOut = m_last;
    if (auto ok = m_moves.apart(kPlateOffMm); !ok) {
        return ok;
    }
    if (auto ok = m_bench.act(TakePlateOut{}); !ok) {
        return ok;
    }
    m_bench.advance(Milliseconds(720));
    const Milliseconds most = *m_card.changeoverMax;
    Milliseconds at =
        m_bench.now() +
        m_chance.draw("dawdles", Milliseconds(0), Milliseconds(m_chance.unskilled(4000)));
    if (faults().lateChangeover) {
        at = m_plateOut + most + *faults().lateChangeover;
    }
    if (auto ok = closeAt(at); !ok) {
        return ok;
    }
    say(FacesMet{});
    m_made.story.joining = m_bench.view();
    return {};
}

/// Locked out of band once; he sees it, and turns on.
Result<void> Working::lockLow() {
    const std::int64_t zero = scale().zeroMilli;
    const std::int64_t low = zero + (scale().joining.lowMilli - zero) * kLowReadingPercent / 100;
    if (auto ok = m_moves.raise(milli(low), m_card.buildUp->target * 3 / 5); !ok) {
        return ok;
    }
    const std::int64_t division = scale().divisionMilli;
    say(ReadingTaken{
        ReadingPhase::Joining,
        std::min(
            m_bench.view().scale.seenMilli, (scale().joining.lowMilli - 1) / division * division)});
    if (auto ok = m_bench.act(LockWheel{}); !ok) {
        return ok;
    }
    m_bench.advance(Milliseconds(800));
    say(PressureLocked{});
    return m_bench.act(UnlockWheel{});
}

Result<void> Working::buildUp() {
    const double set = turned("joining_reading", scale().joining.setMilli);
    const Milliseconds target = m_card.buildUp->target;
    const Milliseconds from = m_bench.now();
    Milliseconds lasts = target * m_chance.buildUpShare() / 100;
    if (faults().slowBuildUp) {
        lasts = target + *faults().slowBuildUp;
    }
    if (faults().slammed) {
        if (auto ok = m_moves.slam(set); !ok) {
            return ok;
        }
        const std::int64_t reading = seen("joining_reading");
        if (reading > scale().joining.highMilli) {
            say(ReadingTaken{ReadingPhase::Joining, reading});
        }
    } else {
        if (faults().lowReading == RehearseFaults::LowReading::Corrected) {
            if (auto ok = lockLow(); !ok) {
                return ok;
            }
        }
        if (auto ok = m_moves.raise(set, from + lasts - m_bench.now()); !ok) {
            return ok;
        }
    }
    if (auto ok = m_moves.turnTo(set, kTurnMmPerS); !ok) {
        return ok;
    }
    const std::int64_t off = m_chance.misreading("joining_reading") * scale().divisionMilli;
    say(ReadingTaken{ReadingPhase::Joining, m_bench.view().scale.seenMilli + off});
    for (const Milliseconds until = m_bench.now() + kLockAfterReading; m_bench.now() < until;) {
        if (auto ok = m_moves.follow(set); !ok) {
            return ok;
        }
        m_bench.advance(std::min(kFollows, std::max(until - m_bench.now(), Milliseconds(0))));
    }
    if (auto ok = m_bench.act(LockWheel{}); !ok) {
        return ok;
    }
    say(PressureLocked{});
    m_locked = m_last;
    return {};
}

/// Early, while it falls fastest, before each re-check, and then as the plan has it.
std::vector<Working::Look> Working::looks(Milliseconds until) const {
    std::vector<Look> all;
    for (const seconds early : {seconds(5), seconds(15), seconds(30), seconds(45)}) {
        all.push_back({early, {}, false, false, false});
    }
    const auto& rechecks = m_card.cooling->rechecks;
    const Milliseconds end = m_card.cooling->atLeast * 2 / 3;
    for (std::size_t i = 0; i < rechecks.size() && !faults().missedRecheck; ++i) {
        const Milliseconds opens = rechecks[i];
        const Milliseconds closes = i + 1 < rechecks.size() ? rechecks[i + 1] : end;
        const std::string name = "recheck_" + std::to_string(i + 1);
        const Milliseconds lag =
            std::min(m_chance.draw(name, seconds(5), seconds(20)), (closes - opens) / 3);
        all.push_back({std::max(opens - seconds(5), Milliseconds(0)), {}, false, false, false});
        all.push_back({opens + lag, i, false, false, false});
    }
    all.push_back({m_card.cooling->atLeast * 11 / 20, {}, true, false, false});
    if (faults().lowReading == RehearseFaults::LowReading::LeftLow) {
        all.push_back({kLetLowAt, {}, false, true, false});
    }
    if (faults().letBack) {
        all.push_back({*faults().letBack, {}, false, false, true});
    }
    all.erase(
        std::remove_if(
            all.begin(), all.end(), [until](const Look& one) { return one.at >= until; }),
        all.end());
    std::stable_sort(
        all.begin(), all.end(), [](const Look& a, const Look& b) { return a.at < b.at; });
    return all;
}

Result<void> Working::turnLocked(double reading) {
    if (auto ok = m_bench.act(UnlockWheel{}); !ok) {
        return ok;
    }
    if (auto ok = m_moves.turnTo(reading, kTurnMmPerS); !ok) {
        return ok;
    }
    return m_bench.act(LockWheel{});
}

Result<void> Working::look(const Look& one) {
    if (one.number) {
        say(JointNumbered{});
        return {};
    }
    if (one.letsOff) {
        return m_bench.act(LetSpringOff{});
    }
    const std::int64_t zero = scale().zeroMilli;
    if (one.turnsDown) {
        return turnLocked(milli(zero + (scale().joining.setMilli - zero) * kLeftLowPercent / 100));
    }
    const std::string name = one.recheck ? "recheck_" + std::to_string(*one.recheck + 1) : "topped";
    const std::int64_t reading = seen(name);
    if (one.recheck) {
        say(ReadingTaken{ReadingPhase::Recheck, reading});
    }
    const bool follows = !faults().notFollowed && !faults().letBack &&
                         faults().lowReading != RehearseFaults::LowReading::LeftLow;
    const ReadingBand& band = scale().joining;
    const bool low = reading < band.lowMilli || reading <= band.setMilli - scale().divisionMilli;
    if (!follows || !low) {
        return {};
    }
    if (auto ok = turnLocked(turned("topped", band.setMilli)); !ok) {
        return ok;
    }
    if (one.recheck && reading < band.lowMilli) {
        say(ReadingTaken{ReadingPhase::Recheck, seen("topped")});
    }
    return {};
}

Result<void> Working::cool() {
    const Milliseconds whole = m_card.cooling->atLeast;
    const Milliseconds until = faults().earlyRelease
                                   ? whole - *faults().earlyRelease
                                   : whole + m_chance.handTime("release", seconds(3), seconds(15));
    for (const Look& one : looks(until)) {
        waitUntil(m_locked + one.at);
        if (auto ok = look(one); !ok) {
            return ok;
        }
    }
    waitUntil(m_locked + until);
    m_made.story.release = m_bench.view();
    return {};
}

Result<void> Working::releaseStep(const std::string& step) {
    if (step == "clamps_eased") {
        return m_bench.act(EaseClamps{});
    }
    if (step == "bars_opened") {
        return m_bench.act(OpenBars{});
    }
    if (step == "spring_off") {
        return m_bench.act(LetSpringOff{});
    }
    // The bench's list need not name the bars, and two sheets that fell apart are lifted out one by
    // one.
    for (const BenchAct& act : {BenchAct(OpenBars{}), BenchAct(LiftSheet{})}) {
        const auto done = m_bench.act(act);
        static_cast<void>(done);
    }
    return {};
}

Result<void> Working::release() {
    bool first = true;
    for (const std::string& step : m_card.releaseOrder) {
        if (!first) {
            m_bench.advance(m_chance.handTime("release_" + step, seconds(5), seconds(15)));
        }
        first = false;
        if (auto ok = releaseStep(step); !ok) {
            return ok;
        }
        say(ReleaseStep{step});
    }
    return {};
}

/// At the worst place. The model's rolls are half circles, one beside the other. A valley that
/// stands above the surface lets no light through under a rule laid across, however little it is.
Result<void> Working::inspect() {
    if (std::none_of(m_made.acts.begin(), m_made.acts.end(), [](const Act& act) {
            return std::holds_alternative<JointNumbered>(act.d);
        })) {
        m_bench.advance(m_chance.handTime("number", seconds(5), seconds(10)));
        say(JointNumbered{});
    }
    m_bench.advance(m_chance.handTime("measure", seconds(40), seconds(90)));
    const BenchView view = m_bench.view();
    const auto valley = [this](const StationView& station) {
        if (!station.joined) {
            return 0.0;
        }
        return faults().topBeadOnly ? station.valleyTopMm
                                    : std::min(station.valleyTopMm, station.valleyBottomMm);
    };
    const auto worst = std::min_element(
        view.stations.begin(), view.stations.end(),
        [&](const StationView& a, const StationView& b) { return valley(a) < valley(b); });
    BeadMeasured bead;
    bead.placeUm = readAt(worst->placeMm, 1000);
    bead.heightUm = readAt(worst->beadTopMm, 100);
    bead.widthUm = 4 * bead.heightUm;
    const double k = valley(*worst);
    bead.kUm = k > 0 ? std::max<std::int64_t>(100, readAt(k, 100))
                     : std::min<std::int64_t>(0, readAt(k, 100));
    const std::int64_t most = m_card.misalignmentMaxUm;
    bead.misalignmentUm =
        faults().misaligned
            ? 2 * most
            : most * m_chance.chance().around("misalignment", 5, 50 + m_chance.unskilled(40)) / 100;
    say(bead);
    return {};
}

/// The weld stopped in that phase; nothing that would have come after.
void abortIn(std::string_view phase, std::vector<Act>& acts) {
    const auto begins = [](const WeldDetail& d) -> std::string_view {
        if (std::holds_alternative<AlignmentStarted>(d)) {
            return "aligning";
        }
        if (std::holds_alternative<SoakStarted>(d)) {
            return "soaking";
        }
        if (std::holds_alternative<PlateOut>(d)) {
            return "changing_over";
        }
        if (std::holds_alternative<FacesMet>(d)) {
            return "building_up";
        }
        if (std::holds_alternative<PressureLocked>(d)) {
            return "cooling";
        }
        if (std::holds_alternative<ReleaseStep>(d)) {
            return "releasing";
        }
        return "";
    };
    std::size_t from = 0;
    std::size_t to = acts.size();
    if (phase == "inspecting") {
        from = acts.size() - 1; // the bead's measuring
        to = acts.size();
    } else if (phase != "preparing") {
        // The last step that begins it: a lock out of band and a step that was taken back did not.
        for (std::size_t i = 0; i < acts.size(); ++i) {
            from = begins(acts[i].d) == phase && (phase != "releasing" || from == 0) ? i : from;
        }
    }
    for (std::size_t i = from + 1; i < acts.size(); ++i) {
        const std::string_view next = begins(acts[i].d);
        if (!next.empty() && (next != phase || phase == "releasing")) {
            to = i;
            break;
        }
    }
    const Milliseconds begun = phase == "preparing" ? Milliseconds(0) : acts[from].due;
    const Milliseconds end = to < acts.size() ? acts[to].due : acts.back().due;
    const Milliseconds at = begun + (end - begun) * kAbortAtPercent / 100;
    acts.erase(
        std::remove_if(
            acts.begin() + static_cast<std::ptrdiff_t>(phase == "preparing" ? 0 : from + 1),
            acts.end(), [at](const Act& act) { return act.due > at; }),
        acts.end());
    acts.push_back({at, WeldAborted{"practice", "the rehearsal was asked to stop in this phase"}});
}

} // namespace

Result<BenchWeld> weldOnBench(const BenchSetup& right, const WeldPlan& card, const Hand& hand) {
    for (const WeldPlan* plan : {&right.plan, &card}) {
        if (auto ok = whole(*plan); !ok) {
            return tl::unexpected<Error>(ok.error());
        }
    }
    auto bench = VirtualBench::set(spoiled(right, card, hand.faults));
    if (!bench) {
        return tl::unexpected<Error>(bench.error());
    }
    Working working(*bench, card, hand);
    if (auto ok = working.weld(); !ok) {
        return tl::unexpected<Error>(ok.error());
    }
    BenchWeld made = working.take();
    if (hand.faults.abortIn) {
        abortIn(*hand.faults.abortIn, made.acts);
    }
    return made;
}

} // namespace seamclock
