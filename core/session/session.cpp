#include "core/session/session.h"

#include "core/base/uuid.h"
#include "core/log/fact_codec.h"
#include "core/log/log_reader.h"
#include "core/log/recover.h"
#include "core/rescue/set_aside.h"
#include "core/session/sheet_plan.h"
#include "core/weld/event_codec.h"

#include <algorithm>
#include <cmath>

namespace seamclock {

namespace {

constexpr const char* kStation = "station";
constexpr const char* kSoundHeard = "sound_heard";

std::int64_t thousandths(double value) {
    return std::llround(value * 1e3);
}
std::int64_t micrometresOf(Length length) {
    return std::llround(inMicrometres(length));
}

Result<LogRow> rowOf(const Event& event) {
    auto body = toBody(event);
    if (!body) {
        return tl::unexpected<Error>(body.error());
    }
    return LogRow{event.subject, event.n, std::move(*body)};
}

/// With what the date says of the bench's calibration.
std::vector<std::string> flagsOf(const WeldOrder& order, const Instant& now) {
    constexpr const char* kOverdue = "calibration_overdue";
    std::vector<std::string> flags = order.flags;
    const bool told = std::find(flags.begin(), flags.end(), kOverdue) != flags.end();
    if (!told && calibrationOverdue(order.bench.bench, toIsoDate(now.utc, now.offset))) {
        flags.push_back(kOverdue);
    }
    return flags;
}

WeldOpened opening(const WeldOrder& order, std::int64_t number, WeldPlan plan, const Instant& now) {
    WeldOpened opened;
    opened.number = number;
    opened.type = order.type;
    opened.reweldOf = order.reweldOf;
    opened.lostUm = order.lostUm;
    opened.beadPlaces = order.beadPlaces;
    opened.bench = order.bench.bench.id;
    opened.seam = order.seam;
    opened.job = order.job;
    opened.part = order.part;
    opened.sheets = order.sheets;
    for (const Length length : order.request.lengths) {
        opened.lengthsUm.push_back(micrometresOf(length));
    }
    opened.ambientMc = thousandths(order.request.ambient.inCelsius());
    opened.shielded = order.shielded;
    opened.plan = std::move(plan);
    opened.docs = {order.procedure.sha256, order.bench.sha256, {}};
    opened.flags = flagsOf(order, now);
    return opened;
}

/// When the station last noted something on this boot. What the writer notes of its rows does not
/// count: it does so at its own opening, before anyone has compared the clocks.
Result<std::optional<Instant>> lastOfStation(LogReader& reader, const std::string& bootId) {
    constexpr std::int64_t kFurthest = 16;
    const auto last = reader.lastN(kStation);
    if (!last) {
        return tl::unexpected<Error>(last.error());
    }
    for (std::int64_t n = *last; n > std::max(*last - kFurthest, std::int64_t{0}); --n) {
        const auto body = reader.body(kStation, n);
        if (!body) {
            return tl::unexpected<Error>(body.error());
        }
        const auto fact = *body ? factFromBody(**body)
                                : Result<Fact>(fail(ErrorCode::Missing, "waits in the spill file"));
        const bool counts = fact && !std::holds_alternative<RowsJoined>(fact->d) &&
                            !std::holds_alternative<RowsSpilled>(fact->d);
        if (counts) {
            return fact->at.bootId == bootId ? std::optional<Instant>(fact->at) : std::nullopt;
        }
    }
    return std::optional<Instant>{};
}

/// When the sound was lost last on this boot, as far as the station's last words tell.
std::optional<Milliseconds> soundLostUtc(LogReader& reader, const std::string& bootId) {
    constexpr std::int64_t kFurthest = 64; // more than a shift's closings
    const auto last = reader.lastN(kStation);
    for (std::int64_t n = last.value_or(0);
         n > std::max(last.value_or(0) - kFurthest, std::int64_t{0}); --n) {
        const auto body = reader.body(kStation, n);
        const auto fact = body && *body ? factFromBody(**body)
                                        : Result<Fact>(fail(ErrorCode::Missing, "no such row"));
        if (fact && fact->at.bootId != bootId) {
            break;
        }
        if (fact && std::holds_alternative<SoundLost>(fact->d)) {
            return fact->at.utc;
        }
    }
    return std::nullopt;
}

/// Whether the last word on that check is that it was made and passed.
bool passedCheck(const Weld& weld, std::string_view check) {
    bool passed = false;
    for (const Retained& event : retained(weld.events)) {
        const auto* made = std::get_if<CheckMade>(&event.d);
        const auto* left = std::get_if<CheckOverridden>(&event.d);
        if (made != nullptr && made->check == check) {
            passed = made->passed;
        } else if (left != nullptr && left->check == check) {
            passed = false;
        }
    }
    return passed;
}

} // namespace

Result<void> SessionBase::begin() {
    auto welds = recoverOpenWelds(m_writer->path());
    if (!welds) {
        return tl::unexpected<Error>(welds.error());
    }
    const Instant now = m_clock->now();
    auto reader = LogReader::open(m_writer->path());
    if (!reader) {
        return tl::unexpected<Error>(reader.error());
    }
    auto newest = lastOfStation(*reader, now.bootId);
    if (!newest) {
        return tl::unexpected<Error>(newest.error());
    }
    m_soundLostUtc = soundLostUtc(*reader, now.bootId);
    std::vector<std::pair<std::string, Milliseconds>> jumped;
    for (RecoveredWeld& one : *welds) {
        if (!one.weld) {
            m_damaged.push_back({one.subject, one.weld.error()});
            continue;
        }
        m_found.push_back({one.subject, afterCut(*one.weld, now)});
        const Open& kept =
            m_welds.insert({one.subject, Open{std::move(*one.weld), m_opened++}}).first->second;
        const Instant& last = kept.weld.events.back().at;
        if (last.bootId == now.bootId && (!*newest || (*newest)->boot < last.boot)) {
            *newest = last;
        }
        ClockWatch watch;
        watch.see(last);
        if (const auto jump = watch.see(now)) {
            jumped.emplace_back(one.subject, *jump);
        }
    }
    const auto started = m_writer->note(now, kStation, kStation, ProgramStarted{});
    if (!started) {
        return tl::unexpected<Error>(started.error());
    }
    // The clock may have been set while no program ran. The station is compared with the newest row
    // of this boot, each weld with its own: a cut may have come when only some knew of a jump.
    if (*newest) {
        m_watch.see(**newest);
    }
    if (const auto jump = m_watch.see(now)) {
        noteJump(now, *jump);
    }
    for (const auto& [id, jump] : jumped) {
        noteJump(id, now, jump);
    }
    lookWhatIsUsual();
    lookWhenThePlateWasUsed(now);
    return {};
}

std::vector<std::string> SessionBase::openWelds() const {
    std::vector<std::pair<std::int64_t, std::string>> byOrder;
    for (const auto& [id, open] : m_welds) {
        if (isOpen(open.weld.state)) {
            byOrder.emplace_back(open.order, id);
        }
    }
    std::sort(byOrder.begin(), byOrder.end());
    std::vector<std::string> ids;
    for (auto& [order, id] : byOrder) {
        ids.push_back(std::move(id));
    }
    return ids;
}

const Weld* SessionBase::find(const std::string& weld) const {
    const auto found = m_welds.find(weld);
    return found == m_welds.end() ? nullptr : &found->second.weld;
}

void SessionBase::eachWeld(const std::function<void(const Weld&)>& use) const {
    for (const auto& [id, open] : m_welds) {
        use(open.weld);
    }
}

std::optional<AlignTimes> SessionBase::usualAlignment(const std::string& weld) const {
    const auto found = m_welds.find(weld);
    return found == m_welds.end() ? std::nullopt : found->second.usual;
}

void SessionBase::forget(const std::string& weld) {
    const auto found = m_welds.find(weld);
    if (found == m_welds.end() || isOpen(found->second.weld.state)) {
        return;
    }
    m_leaving.insert(weld);
    letGo();
}

// What the next weld may take over of them is read in the log, so they must stand there. A slow
// disk is not waited for: they go with a later look.
void SessionBase::letGo() {
    for (auto leaving = m_leaving.begin(); leaving != m_leaving.end();) {
        const auto found = m_welds.find(*leaving);
        if (status(*leaving, found->second.weld.events.back().n) != RowStatus::Saved) {
            ++leaving;
            continue;
        }
        m_past.gone(found->second.weld);
        m_welds.erase(found);
        leaving = m_leaving.erase(leaving);
    }
}

Instant SessionBase::look() {
    const Instant now = m_clock->now();
    if (const auto jump = m_watch.see(now)) {
        noteJump(now, *jump);
        for (const std::string& id : openWelds()) {
            // One that still waits for its bridge learns of the clock by that bridge.
            if (m_welds.at(id).weld.clock.bootId == now.bootId) {
                noteJump(id, now, *jump);
            }
        }
    }
    askAnew(now);
    return now;
}

// A weld that is prepared over lunch, or over a start of the machine, has a plate that nobody read
// for it any more.
void SessionBase::askAnew(const Instant& now) {
    for (const std::string& id : openWelds()) {
        const Open& open = m_welds.at(id);
        if (open.weld.clock.bootId != now.bootId) {
            continue;
        }
        for (const std::string& check : checksOutlived(open.weld, open.plateUse, now)) {
            setAside(id, check, now, kOutlived);
        }
    }
}

/// Failed and without a value: it is asked again.
void SessionBase::setAside(
    const std::string& weld, const std::string& check, const Instant& now,
    const std::optional<std::string>& place) {
    CheckMade aside;
    aside.check = check;
    aside.place = place;
    const auto kept = actAt(weld, Intent{{}, kStation, aside}, now);
    static_cast<void>(kept); // it is one of its checks
}

void SessionBase::noteJump(const Instant& now, Milliseconds jump) {
    m_jump = jump;
    const auto noted = m_writer->note(now, kStation, kStation, ClockJumped{jump});
    static_cast<void>(noted); // its texts are our own: it can't be malformed
}

void SessionBase::noteJump(const std::string& weld, const Instant& now, Milliseconds jump) {
    const auto kept = actAt(weld, Intent{{}, kStation, ClockJumped{jump}}, now);
    static_cast<void>(kept); // every open weld accepts it
}

Result<Weld> SessionBase::keep(Open& open, Weld next) {
    std::vector<LogRow> rows;
    for (std::size_t i = open.weld.events.size(); i < next.events.size(); ++i) {
        auto row = rowOf(next.events[i]);
        if (!row) {
            return tl::unexpected<Error>(row.error());
        }
        rows.push_back(std::move(*row));
    }
    m_writer->submit(std::move(rows));
    const bool was = isOpen(open.weld.state);
    open.weld = std::move(next);
    if (was && std::holds_alternative<Closed>(open.weld.state)) {
        m_past.closed(open.weld);
    }
    return open.weld;
}

Result<Weld> SessionBase::actAt(const std::string& weld, const Intent& intent, const Instant& at) {
    const auto found = m_welds.find(weld);
    if (found == m_welds.end()) {
        return fail(ErrorCode::Missing, "no weld \"" + weld + "\" is open here");
    }
    auto next = accept(found->second.weld, intent, at);
    if (!next) {
        return next;
    }
    return keep(found->second, std::move(*next));
}

Result<Weld> SessionBase::act(const std::string& weld, const Intent& intent) {
    Intent unproven = intent;
    unproven.foreman = false;
    const Instant now = look();
    return actAt(weld, unproven, now);
}

Result<Weld>
SessionBase::act(const std::string& weld, const Intent& intent, const ProvenPerson& by) {
    Intent proven = intent;
    proven.by = by.person();
    proven.foreman = by.role() == Role::Foreman;
    if (const auto here = takeInEnded(weld); !here) {
        return tl::unexpected<Error>(here.error());
    }
    const Instant now = look();
    return actAt(weld, proven, now);
}

Result<void> SessionBase::takeInEnded(const std::string& weld) {
    letGo();
    if (m_welds.count(weld) > 0) {
        return {};
    }
    auto reader = LogReader::open(m_writer->path());
    if (!reader) {
        return tl::unexpected<Error>(reader.error());
    }
    auto events = reader->weldEvents(weld);
    if (!events) {
        return tl::unexpected<Error>(events.error());
    }
    if (events->empty()) {
        return fail(ErrorCode::Missing, "no weld \"" + weld + "\" is in this log");
    }
    auto folded = foldTaking(*events);
    if (!folded) {
        return tl::unexpected<Error>(folded.error());
    }
    if (isOpen(folded->state)) {
        return fail(ErrorCode::Missing, "the weld \"" + weld + "\" is open elsewhere");
    }
    m_welds.insert({weld, Open{std::move(*folded), -1, std::nullopt, std::nullopt}});
    m_leaving.insert(weld); // it stands on no bench: what is done to it now is all it is here for
    return {};
}

Result<Weld> SessionBase::settle(const std::string& weld, RebootWord word, const std::string& by) {
    const Instant now = look();
    const auto found = m_welds.find(weld);
    if (found == m_welds.end()) {
        return fail(ErrorCode::Missing, "no weld \"" + weld + "\" is open here");
    }
    const auto said = seamclock::settle(found->second.weld, now, word);
    if (!said) {
        return tl::unexpected<Error>(said.error());
    }
    // Bridge and abort are one answer: both are kept or neither.
    Weld next = found->second.weld;
    for (const WeldDetail& detail : *said) {
        auto stepped = accept(next, Intent{{}, by, detail}, now);
        if (!stepped) {
            return stepped;
        }
        next = std::move(*stepped);
    }
    auto kept = keep(found->second, std::move(next));
    if (kept) {
        payOwed(weld, now);
        return found->second.weld;
    }
    return kept;
}

void SessionBase::takeUp(const SetAside& aside) {
    const Instant now = look();
    for (const SetAsideWeld& weld : aside.welds) {
        if (weld.open && !weld.whole()) {
            m_owed[weld.weld] = remarkOf(weld, aside);
            payOwed(weld.weld, now);
        }
    }
}

void SessionBase::payOwed(const std::string& weld, const Instant& at) {
    const auto owed = m_owed.find(weld);
    const Weld* open = find(weld);
    if (owed == m_owed.end() || open == nullptr || open->clock.bootId != at.bootId) {
        return;
    }
    // An aborted weld takes none; its record is incomplete anyway, and the note beside the log
    // stays.
    static_cast<void>(actAt(weld, Intent{{}, kStation, RemarkMade{owed->second}}, at));
    m_owed.erase(owed);
}

Result<std::int64_t> SessionBase::nextNumber() {
    if (m_lastNumber == 0) {
        auto reader = LogReader::open(m_writer->path());
        if (!reader) {
            return tl::unexpected<Error>(reader.error());
        }
        auto highest = reader->highestNumber();
        if (!highest) {
            return highest;
        }
        m_lastNumber = std::max(*highest, highestNumberAside(m_writer->path()));
        for (const LogRow& row : m_writer->waiting()) {
            const auto event = eventFromBody(row.body);
            const auto* opened = event ? std::get_if<WeldOpened>(&event->d) : nullptr;
            if (opened != nullptr) {
                m_lastNumber = std::max(m_lastNumber, opened->number);
            }
        }
    }
    return m_lastNumber + 1;
}

Result<std::optional<AlignTimes>> SessionBase::usualFor(const WeldOrder& order) {
    // A rehearsal's plan depends on its order alone, so that one seed gives one record in every
    // log.
    if (order.request.alignMedian || order.type == WeldType::Practice) {
        return std::optional<AlignTimes>();
    }
    return m_past.usualAlignment(
        order.bench.bench.id, order.procedure.procedure.id, micrometresOf(order.request.thickness));
}

// Only a screen asks for it, so a log that can't answer is no reason not to start.
void SessionBase::lookWhatIsUsual() {
    for (auto& [id, open] : m_welds) {
        const WeldPlan& plan = open.weld.plan;
        const bool ahead = std::holds_alternative<Preparing>(open.weld.state) ||
                           std::holds_alternative<Aligning>(open.weld.state);
        if (!ahead || !plan.alignMedian || plan.bench.empty()) {
            continue;
        }
        const auto usual = m_past.usualAlignment(plan.bench, plan.procedure, plan.thicknessUm);
        open.usual = usual ? *usual : std::nullopt;
    }
}

// Where the log can't say it, the plate is read again.
void SessionBase::lookWhenThePlateWasUsed(const Instant& now) {
    for (auto& [id, open] : m_welds) {
        if (!std::holds_alternative<Preparing>(open.weld.state)) {
            continue;
        }
        auto earlier = earlierOn(open.weld.opened().bench, now);
        if (earlier) {
            open.plateUse = plateLastUsed(*earlier);
        }
    }
}

Result<WeldPlan>
SessionBase::planOf(const WeldOrder& order, const std::optional<AlignTimes>& usual) const {
    PlanRequest request = order.request;
    if (usual) {
        request.alignMedian = usual->median;
    }
    auto plan =
        planWithSheets(request, order.procedure.procedure, &order.bench.bench, order.sheets);
    if (!plan) {
        return plan;
    }
    if (const auto ready = checkReady(*plan); !ready) {
        return tl::unexpected<Error>(ready.error());
    }
    return plan;
}

// Those of this session from memory: their rows may still be on their way to the log. The newest
// first.
Result<std::vector<Weld>> SessionBase::earlierOn(const std::string& bench, const Instant& now) {
    auto earlier = m_past.before(
        bench, now, [this](const std::string& weld) { return m_welds.count(weld) > 0; });
    if (!earlier) {
        return earlier;
    }
    for (const auto& [id, open] : m_welds) {
        if (open.weld.opened().bench == bench) {
            earlier->push_back(open.weld);
        }
    }
    std::sort(earlier->begin(), earlier->end(), [](const Weld& one, const Weld& other) {
        return one.opened().number > other.opened().number;
    });
    return earlier;
}

void SessionBase::soundChanged(bool heard) {
    const Instant now = look();
    const auto noted = m_writer->note(
        now, kStation, kStation, heard ? FactDetail(SoundBack{}) : FactDetail(SoundLost{}));
    static_cast<void>(noted); // its texts are our own: it can't be malformed
    if (heard) {
        return;
    }
    m_soundLostUtc = now.utc;
    for (const std::string& id : openWelds()) {
        const Weld& weld = m_welds.at(id).weld;
        const auto* preparing = std::get_if<Preparing>(&weld.state);
        const bool heardHere = preparing != nullptr && weld.clock.bootId == now.bootId &&
                               preparing->settled.count(kSoundHeard) > 0 &&
                               passedCheck(weld, kSoundHeard);
        if (heardHere) {
            setAside(id, kSoundHeard, now);
        }
    }
}

Result<TrialFinding> SessionBase::trialOf(const WeldOrder& order) {
    auto plan = planOf(order, {});
    if (!plan) {
        return tl::unexpected<Error>(plan.error());
    }
    const Instant now = m_clock->now();
    const auto earlier = earlierOn(order.bench.bench.id, now);
    if (!earlier) {
        return tl::unexpected<Error>(earlier.error());
    }
    return trialFor(opening(order, 0, std::move(*plan), now), *earlier, now);
}

Result<Weld> SessionBase::open(const WeldOrder& order, const std::string& by) {
    if ((order.type == WeldType::Practice) != (m_world == Practice::kName)) {
        return fail(
            ErrorCode::Refused, "a weld of type " + std::string(toString(order.type)) +
                                    " can't be opened in a log of " + std::string(m_world));
    }
    letGo();
    const auto usual = usualFor(order);
    if (!usual) {
        return tl::unexpected<Error>(usual.error());
    }
    auto plan = planOf(order, *usual);
    if (!plan) {
        return tl::unexpected<Error>(plan.error());
    }
    const auto number = nextNumber();
    if (!number) {
        return tl::unexpected<Error>(number.error());
    }
    const Instant now = look();
    WeldOpened opened = opening(order, *number, std::move(*plan), now);
    std::vector<CheckMade> stand;
    std::optional<Instant> plateUse;
    if (order.carriesChecks) {
        const auto earlier = earlierOn(opened.bench, now);
        if (!earlier) {
            return tl::unexpected<Error>(earlier.error());
        }
        stand = checksThatStand(opened, *earlier, now, m_soundLostUtc);
        plateUse = plateLastUsed(*earlier);
    }
    const std::string id = "weld:" + newUuid();
    auto weld = seamclock::open(Event{now, by, id, 1, std::move(opened)});
    for (std::size_t i = 0; weld && i < stand.size(); ++i) {
        weld = apply(*weld, Event{now, by, id, static_cast<std::int64_t>(i) + 2, stand[i]});
    }
    if (!weld) {
        return weld;
    }
    std::vector<LogRow> rows;
    for (const Event& event : weld->events) {
        auto row = rowOf(event);
        if (!row) {
            return tl::unexpected<Error>(row.error());
        }
        rows.push_back(std::move(*row));
    }
    m_writer->submit(
        std::move(rows), {{order.procedure.sha256, "procedure", order.procedure.bytes},
                          {order.bench.sha256, "bench", order.bench.bytes}});
    m_lastNumber = *number;
    m_welds.insert({weld->id(), Open{*weld, m_opened++, *usual, plateUse}});
    return weld;
}

Result<void> SessionBase::stop() {
    const Instant now = look();
    const auto stopped = m_writer->note(now, kStation, kStation, ProgramStopped{});
    if (!stopped) {
        return tl::unexpected<Error>(stopped.error());
    }
    return m_writer->flush();
}

} // namespace seamclock
