#include "core/practice/virtual_operator.h"

#include "core/base/uuid.h"
#include "core/log/log_reader.h"
#include "core/log/recover.h"
#include "core/log/world.h"
#include "core/practice/lesson.h"
#include "core/practice/next_act.h"
#include "core/practice/virtual_clock.h"
#include "core/session/session.h"
#include "core/session/sheet_plan.h"
#include "core/shift/shift.h"

#include <algorithm>
#include <filesystem>
#include <memory>
#include <set>
#include <system_error>
#include <tuple>

namespace seamclock {

namespace {

constexpr std::string_view kVirtualBoot = "practice:";
constexpr Milliseconds kBetweenWelds = std::chrono::minutes(4); // of a series

// In true time he looks up from the plate that often: to what was saved and what was not.
constexpr Milliseconds kLookEvery{200};

bool isVirtual(const std::string& bootId) {
    return bootId.rfind(kVirtualBoot, 0) == 0;
}

Result<void> makeFolderOf(const std::string& path) {
    const std::filesystem::path folder = std::filesystem::path(path).parent_path();
    if (folder.empty()) {
        return {};
    }
    std::error_code error;
    std::filesystem::create_directories(folder, error);
    if (error) {
        return fail(
            ErrorCode::NotWritten, "the folder \"" + folder.string() +
                                       "\" for the practice log can't be made: " + error.message());
    }
    return {};
}

/// The open weld that was opened last: what --resume means.
Result<Weld> openWeldOf(const std::string& path) {
    auto welds = recoverOpenWelds(path);
    if (!welds) {
        return tl::unexpected<Error>(welds.error());
    }
    if (welds->empty()) {
        return fail(ErrorCode::Missing, "nothing to resume: \"" + path + "\" holds no open weld");
    }
    return std::move(welds->back().weld);
}

WeldOrder practiceOrder(WeldOrder order) {
    order.type = WeldType::Practice;
    if (order.sheets.empty()) {
        Sheet sheet;
        sheet.material = order.procedure.procedure.material;
        sheet.maker = "practice";
        sheet.batch = "practice";
        sheet.thicknessUm = static_cast<std::int64_t>(inMicrometres(order.request.thickness) + 0.5);
        order.sheets = {sheet, sheet};
    }
    return order;
}

/// A weld as it will be opened, and with physics all that will be done to it.
struct Readied {
    WeldOrder order; // by the card that he was handed
    Hand hand;       // with its slips
    std::optional<BenchWeld> bench;
};

Hand handOf(const RehearseOptions& options) {
    return {options.seed, options.handPercent, options.faults, options.skill};
}

Result<WeldPlan> planOf(const WeldOrder& order) {
    return planWithSheets(
        order.request, order.procedure.procedure, &order.bench.bench, order.sheets);
}

Result<void> checkNumbers(const RehearseOptions& options) {
    if (options.handPercent < 0 || options.handPercent > 1000) {
        return fail(
            ErrorCode::OutOfRange, "the hand's time of " + std::to_string(options.handPercent) +
                                       " % is outside 0 to 1000 %");
    }
    if (options.skill < 0 || options.skill > kPerfect) {
        return fail(
            ErrorCode::OutOfRange,
            "the skill of " + std::to_string(options.skill) + " is outside 0 to 100");
    }
    if (options.faults.needBench() && !options.physics) {
        return fail(
            ErrorCode::Refused,
            "a fault that happens to sheets, plate or air needs the virtual bench: rehearse it "
            "with physics");
    }
    return {};
}

/// Of another sheet, or of another unit than the springs'.
Result<WeldOrder> handedOut(WeldOrder order, const RehearseFaults& faults) {
    if (faults.wrongRowUm) {
        order.request.thickness = millimetres(static_cast<double>(*faults.wrongRowUm) / 1e3);
    }
    if (faults.kgfForN) {
        auto card = takenForKgf(order.bench.bench);
        if (!card) {
            return tl::unexpected<Error>(card.error());
        }
        order.bench = std::move(*card);
    }
    return order;
}

/// What can be known to fail is refused before a weld is opened that would then stand open for
/// ever.
Result<Readied> ready(const RehearseOptions& options) {
    if (auto ok = checkNumbers(options); !ok) {
        return tl::unexpected<Error>(ok.error());
    }
    const WeldOrder right = practiceOrder(options.order);
    auto rightPlan = planOf(right);
    if (!rightPlan) {
        return tl::unexpected<Error>(rightPlan.error());
    }
    auto order = handedOut(right, options.faults);
    if (!order) {
        return tl::unexpected<Error>(order.error());
    }
    Readied out{std::move(*order), handOf(options), {}};
    const auto card = planOf(out.order);
    if (!card) {
        return tl::unexpected<Error>(card.error());
    }
    if (!card->isReady()) {
        return out; // the session says what is missing
    }
    if (auto ok = checkFaults(options.faults, *card); !ok) {
        return tl::unexpected<Error>(ok.error());
    }
    out.hand.faults = withSlips(out.hand, *card, options.physics.has_value());
    if (!options.physics) {
        return out;
    }
    BenchSetup setup;
    setup.material = *options.physics;
    setup.bench = right.bench.bench;
    setup.plan = std::move(*rightPlan);
    setup.dragN = right.request.drag ? inNewtons(*right.request.drag) : 0;
    auto bench = weldOnBench(setup, *card, out.hand);
    if (!bench) {
        return tl::unexpected<Error>(bench.error());
    }
    out.bench = std::move(*bench);
    return out;
}

/// One rehearsal under way.
class Rehearsal {
public:
    Rehearsal(
        Session<Practice>& session, const LogWriterBase& writer, const RehearseOptions& options,
        const RehearseTools& tools, VirtualClock* clock)
        : m_session(session), m_writer(writer), m_tools(tools), m_clock(clock),
          m_hand(handOf(options)), m_by(options.by) {}

    Result<void> open(Readied readied) {
        m_hand = std::move(readied.hand);
        if (readied.bench) {
            m_bench = std::move(readied.bench->acts);
        }
        auto weld = m_session.open(readied.order, m_by);
        if (!weld) {
            return tl::unexpected<Error>(weld.error());
        }
        return take(*weld, false);
    }

    Result<void> resume(const std::string& id, RebootWord word, ResumeNote& note) {
        const Weld found = *m_session.find(id);
        note.phase = phaseName(found.state);
        note.events = static_cast<std::int64_t>(found.events.size());
        note.rebooted = afterCut(found, m_session.look()) != AfterCut::GoesOn;
        auto settled = m_session.settle(id, word, word == RebootWord::None ? "station" : m_by);
        if (!settled) {
            return tl::unexpected<Error>(settled.error());
        }
        for (std::size_t i = found.events.size(); i < settled->events.size(); ++i) {
            if (const auto* bridge = std::get_if<ClockBridged>(&settled->events[i].d)) {
                note.bridge = *bridge;
            }
        }
        note.aborted = std::holds_alternative<Aborted>(settled->state);
        const auto t = weldTimeAt(*settled, m_session.look());
        const auto began = phaseBegan(found.state);
        if (t && began) {
            note.inPhase = *t - *began;
        }
        m_told = found.events.size();
        m_savedTold = m_told;
        m_hand.faults = withSlips(m_hand, found.plan, false);
        return take(*settled, true);
    }

    /// To the end of the weld.
    Result<void> run() {
        while (const auto act = next()) {
            const Weld meanwhile = m_weld;
            const Instant from = m_session.look();
            const auto before = passUntil(act->due);
            if (!before) {
                return before;
            }
            hear(meanwhile, from, m_session.look());
            const bool ofHand = !std::holds_alternative<WeldClosed>(act->d);
            Intent intent{{}, m_by, act->d};
            if (ofHand) {
                intent.onto = lastTakeable(m_weld);
            }
            const auto next = m_session.act(m_weld.id(), intent);
            if (!next) {
                return tl::unexpected<Error>(next.error());
            }
            m_weld = *next;
            tell();
        }
        return {};
    }

    void tellSaved() {
        if (m_tools.watcher == nullptr) {
            return;
        }
        const auto trouble = m_writer.state().trouble;
        std::string detail = trouble ? trouble->detail : std::string();
        if (detail != m_trouble) {
            m_trouble = std::move(detail);
            m_tools.watcher->trouble(m_trouble);
        }
        while (m_savedTold < m_weld.events.size() &&
               m_session.status(m_weld.id(), static_cast<std::int64_t>(m_savedTold) + 1) ==
                   RowStatus::Saved) {
            m_tools.watcher->saved(m_weld, static_cast<std::int64_t>(++m_savedTold));
        }
    }

    /// Takes over what the session wrote by itself.
    void refresh() {
        m_weld = *m_session.find(m_weld.id());
        tell();
    }

    const Weld& weld() const { return m_weld; }
    void giveCues(RehearseResult& result) {
        result.cues = std::move(m_cues);
        result.soundings = std::move(m_heard);
        result.dropped = std::move(m_dropped);
    }

private:
    /// What was worked out on the bench, then what follows of itself.
    std::optional<Act> next() {
        if (m_benchDone >= m_bench.size()) {
            return nextAct(m_weld, m_hand);
        }
        Act act = m_bench[m_benchDone++];
        if (auto* back = std::get_if<StepTakenBack>(&act.d)) {
            back->targetN = lastTakeable(m_weld);
        } else if (auto* dated = std::get_if<StepBackdated>(&act.d)) {
            dated->targetN = lastTakeable(m_weld);
        }
        return act;
    }

    static std::optional<WeldTime> phaseBegan(const State& state) {
        return std::visit(
            [](const auto& phase) -> std::optional<WeldTime> {
                if constexpr (requires { phase.from; }) {
                    return phase.from;
                } else {
                    return {};
                }
            },
            state);
    }

    Result<void> take(const Weld& weld, bool resumed) {
        m_weld = weld;
        if (m_tools.watcher != nullptr) {
            m_tools.watcher->planned(m_weld, resumed);
        }
        tell();
        return {};
    }

    void tell() {
        for (; m_told < m_weld.events.size(); ++m_told) {
            if (m_tools.watcher != nullptr) {
                m_tools.watcher->happened(m_weld, m_weld.events[m_told]);
            }
        }
        tellSaved();
    }

    /// Waits `gap`, tells what was saved meanwhile, and takes over what the session wrote by
    /// itself.
    void pass(Milliseconds gap) {
        Pacer* const pacer = m_clock != nullptr ? m_tools.pacer : m_tools.machinePacer;
        if (pacer != nullptr) {
            pacer->wait(gap);
        }
        if (m_clock != nullptr) {
            m_clock->advance(gap);
        }
        tellSaved();
    }

    Result<WeldTime> now() {
        const Instant at = m_session.look();
        m_weld = *m_session.find(m_weld.id()); // the look may have noted a jump of the clock
        tell();
        return weldTimeAt(m_weld, at);
    }

    /// Lets time go on until the weld's is `due`, and tells each cue when it begins. A machine's
    /// clock may wake us early or late: so it is asked again after each wait.
    Result<void> passUntil(Milliseconds due) {
        while (true) {
            const auto t = now();
            if (!t) {
                return tl::unexpected<Error>(t.error());
            }
            const Milliseconds left = std::max(due - t->lo, Milliseconds(0));
            std::optional<Milliseconds> nextOnset;
            for (const Cue& cue : cuesUntil(m_weld, *t, left)) {
                if (cue.onset <= Milliseconds(0)) {
                    note(cue, *t);
                } else if (!nextOnset || cue.onset < *nextOnset) {
                    nextOnset = cue.onset;
                }
            }
            if (left == Milliseconds(0)) {
                return {};
            }
            const Milliseconds most = m_clock == nullptr ? kLookEvery : left;
            pass(std::min({left, nextOnset.value_or(left), most}));
        }
    }

    void note(const Cue& cue, WeldTime t) {
        if (!m_cued.insert({cue.kind, cue.count, t.lo + cue.onset}).second) {
            return;
        }
        CueNote noted{m_session.look(), cue};
        noted.at.boot += cue.onset;
        noted.at.utc += cue.onset;
        m_cues.push_back(noted);
        if (m_tools.watcher != nullptr) {
            m_tools.watcher->cued(m_weld, noted);
        }
    }

    /// What the horn makes of the cues between two steps.
    void hear(const Weld& weld, const Instant& from, const Instant& to) {
        const Arbitration heard = soundings(shiftOf(weld), m_heard, from, to.boot);
        m_heard.insert(m_heard.end(), heard.soundings.begin(), heard.soundings.end());
        m_dropped.insert(m_dropped.end(), heard.dropped.begin(), heard.dropped.end());
    }

    Session<Practice>& m_session;
    const LogWriterBase& m_writer;
    const RehearseTools& m_tools;
    VirtualClock* m_clock;
    Hand m_hand;
    std::string m_by;
    std::vector<Act> m_bench; // with physics: all but the end
    std::size_t m_benchDone = 0;
    Weld m_weld;
    std::size_t m_told = 0;
    std::size_t m_savedTold = 0;
    std::string m_trouble; // as last told
    std::vector<CueNote> m_cues;
    std::vector<Sounding> m_heard;
    std::vector<Dropped> m_dropped;
    std::set<std::tuple<CueKind, int, Milliseconds>> m_cued;
};

/// Which clock this rehearsal lives by: the open weld says, else the options.
struct Time {
    std::unique_ptr<VirtualClock> clock; // null: the machine's
};

Result<Time> timeFor(
    const RehearseOptions& options, const RehearseTools& tools, const std::optional<Weld>& found) {
    const bool byMachine = found ? !isVirtual(found->clock.bootId) : options.trueTime;
    if (found && options.trueTime && !byMachine) {
        return fail(
            ErrorCode::Conflict, "the open weld lives on a practice clock: it can't be resumed in "
                                 "true time");
    }
    if (byMachine) {
        if (tools.machine == nullptr || tools.machinePacer == nullptr) {
            return fail(ErrorCode::Missing, "true time needs the machine's clock");
        }
        return Time{};
    }
    Instant start;
    if (found) {
        start = found->events.back().at;
    } else {
        start.bootId = std::string(kVirtualBoot) + newUuid();
        start.utc = kPracticeStart;
        start.offset = options.offset;
    }
    return Time{std::make_unique<VirtualClock>(start)};
}

/// The numbers of other welds that stand open in this practice log.
std::vector<std::int64_t> otherOpen(const Session<Practice>& session, const std::string& weld) {
    std::vector<std::int64_t> numbers;
    for (const std::string& id : session.openWelds()) {
        if (id != weld) {
            numbers.push_back(session.find(id)->opened().number);
        }
    }
    return numbers;
}

Result<RehearseResult> rehearseIn(
    LogWriter<Practice>& writer, const RehearseOptions& options, const RehearseTools& tools,
    const Time& time, const std::optional<Weld>& found, const std::optional<SetAside>& aside,
    std::optional<Readied> readied) {
    const Clock& clock = time.clock ? static_cast<const Clock&>(*time.clock) : *tools.machine;
    auto session = Session<Practice>::start(writer, clock);
    if (!session) {
        return tl::unexpected<Error>(session.error());
    }
    Rehearsal rehearsal(*session, writer, options, tools, time.clock.get());
    RehearseResult result;
    result.aside = aside;
    Result<void> done;
    if (found) {
        result.resumed = ResumeNote{};
        done = rehearsal.resume(found->id(), options.word, *result.resumed);
    } else {
        if (readied->bench) {
            result.bench = std::move(readied->bench->story);
        }
        done = rehearsal.open(std::move(*readied));
    }
    if (done && aside) {
        session->takeUp(*aside);
        rehearsal.refresh();
    }
    if (done) {
        done = rehearsal.run();
    }
    const Result<void> stopped = session->stop();
    if (!done) {
        return tl::unexpected<Error>(done.error());
    }
    rehearsal.tellSaved();
    if (!stopped) {
        result.notSaved = stopped.error().detail;
    }
    const Weld& weld = rehearsal.weld();
    result.weld = weld.id();
    result.plan = weld.plan;
    result.events = weld.events;
    rehearsal.giveCues(result);
    result.record = record(weld);
    result.logPath = options.logPath;
    result.leftOpen = otherOpen(*session, weld.id());
    return result;
}

std::vector<LogDocument> knownTo(const RehearseOptions& options) {
    std::vector<LogDocument> known = options.known;
    const WeldOrder& order = options.order;
    if (!options.resume) {
        known.push_back({order.procedure.sha256, "procedure", order.procedure.bytes});
        known.push_back({order.bench.sha256, "bench", order.bench.bytes});
    }
    return known;
}

/// The open weld, also of a log that must be set aside first: by which clock it lives is not known
/// before.
Result<Weld> weldToResume(
    const RehearseOptions& options, const RehearseTools& tools, std::optional<SetAside>& aside) {
    auto finished = finishSetAside(options.logPath);
    if (!finished) {
        return tl::unexpected<Error>(finished.error());
    }
    aside = std::move(*finished);
    auto weld = openWeldOf(options.logPath);
    std::error_code ignored;
    if (weld || weld.error().code == ErrorCode::Missing ||
        !std::filesystem::exists(options.logPath, ignored)) {
        return weld;
    }
    Instant start;
    start.bootId = std::string(kVirtualBoot) + newUuid();
    start.utc = kPracticeStart;
    const VirtualClock standIn(start);
    const Clock& clock = tools.machine != nullptr ? *tools.machine : standIn;
    {
        auto opened = openLog<Practice>(options.logPath, clock, options.known);
        if (!opened) {
            return tl::unexpected<Error>(opened.error());
        }
        if (!opened->aside) {
            return weld;
        }
        aside = std::move(opened->aside);
    }
    return openWeldOf(options.logPath);
}

} // namespace

Result<RehearseResult> rehearse(const RehearseOptions& options, const RehearseTools& tools) {
    std::optional<SetAside> aside;
    std::optional<Readied> readied;
    if (options.resume && options.physics) {
        return fail(
            ErrorCode::Refused,
            "a weld can't be resumed with physics: the virtual bench did not outlive the program");
    }
    if (!options.resume) {
        auto made = ready(options);
        if (!made) {
            return tl::unexpected<Error>(made.error());
        }
        readied = std::move(*made);
        if (const auto folder = makeFolderOf(options.logPath); !folder) {
            return tl::unexpected<Error>(folder.error());
        }
    }
    std::optional<Weld> found;
    if (options.resume) {
        auto weld = weldToResume(options, tools, aside);
        if (!weld) {
            return tl::unexpected<Error>(weld.error());
        }
        found = std::move(*weld);
    }
    const auto time = timeFor(options, tools, found);
    if (!time) {
        return tl::unexpected<Error>(time.error());
    }
    const Clock& clock = time->clock ? static_cast<const Clock&>(*time->clock) : *tools.machine;
    auto opened = openLog<Practice>(options.logPath, clock, knownTo(options));
    if (!opened) {
        return tl::unexpected<Error>(opened.error());
    }
    if (opened->aside) {
        aside = std::move(opened->aside);
        if (options.resume) {
            auto weld = openWeldOf(options.logPath);
            if (!weld) {
                return tl::unexpected<Error>(weld.error());
            }
            found = std::move(*weld);
        }
    }
    if (aside && tools.watcher != nullptr) {
        tools.watcher->setAside(*aside);
    }
    return rehearseIn(opened->writer, options, tools, *time, found, aside, std::move(readied));
}

Result<SeriesResult> rehearseSeries(
    const std::string& logPath, const std::function<std::optional<SeriesStep>(std::int64_t)>& next,
    const std::function<void(const SeriesWeld&)>& done) {
    SeriesResult result;
    result.logPath = logPath;
    if (const auto folder = makeFolderOf(logPath); !folder) {
        return tl::unexpected<Error>(folder.error());
    }
    Instant start;
    start.bootId = std::string(kVirtualBoot) + newUuid();
    start.utc = kPracticeStart;
    VirtualClock clock(start);
    LogWriterOptions gathering;
    gathering.gather = true;
    auto opened = openLog<Practice>(logPath, clock, {}, gathering);
    if (!opened) {
        return tl::unexpected<Error>(opened.error());
    }
    result.aside = std::move(opened->aside);
    LogWriter<Practice>& writer = opened->writer;
    auto session = Session<Practice>::start(writer, clock);
    if (!session) {
        return tl::unexpected<Error>(session.error());
    }
    const RehearseTools tools;
    Result<void> made;
    while (auto step = next(result.welds)) {
        auto readied = ready(step->options);
        if (!readied) {
            made = tl::unexpected<Error>(readied.error());
            break;
        }
        const Milliseconds gap = step->notBefore - clock.now().utc;
        clock.advance(std::max(gap, result.welds > 0 ? kBetweenWelds : Milliseconds(0)));
        SeriesWeld weld;
        weld.faults = readied->hand.faults;
        if (readied->bench) {
            weld.bench = std::move(readied->bench->story);
        }
        Rehearsal rehearsal(*session, writer, step->options, tools, &clock);
        made = rehearsal.open(std::move(*readied));
        if (made) {
            made = rehearsal.run();
        }
        if (!made) {
            break;
        }
        ++result.welds;
        if (done) {
            weld.record = record(rehearsal.weld());
            done(weld);
        }
    }
    const Result<void> stopped = session->stop();
    if (!made) {
        return tl::unexpected<Error>(made.error());
    }
    if (!stopped) {
        result.notSaved = stopped.error().detail;
    }
    return result;
}

} // namespace seamclock
