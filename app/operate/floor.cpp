#include "app/operate/floor.h"

#include "app/operate/weld_side_slots.h"
#include "app/text/numbers.h"
#include "core/base/plain_number.h"
#include "core/log/log_reader.h"
#include "core/log/shelf.h"
#include "core/session/replan.h"
#include "core/session/sheet_plan.h"
#include "core/shift/hands.h"
#include "core/weld/force_check.h"
#include "core/weld/intent.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace seamclock {
namespace {

constexpr Milliseconds kTrialAhead{300}; // more than the horn's own lead

std::int64_t thousandths(double value) {
    return std::llround(value * 1000.0);
}

/// What the plate reads at the place that is next.
CheckMade plateReading(const Weld& weld, PlateRead read, double celsius, bool passed) {
    const PlatePlace& at = plateToRead(weld, read);
    CheckMade made;
    made.check = "plate_temperature";
    made.passed = passed;
    made.valueMc = thousandths(celsius);
    made.place = std::string(at.place); // the verdict takes the latest of each place
    if (!at.face.empty()) {
        made.face = std::string(at.face);
    }
    return made;
}

Result<void> without(const Result<Weld>& weld) {
    if (!weld) {
        return tl::unexpected<Error>(weld.error());
    }
    return {};
}

/// With the pressure on, or the weld stopped, what was marked on the scale for it is there.
void keepMark(Post& post, const Weld& weld) {
    for (const Retained& event : retained(weld.events)) {
        const auto* made = std::get_if<CheckMade>(&event.d);
        if (made != nullptr && isForceMark(*made) && made->passed) {
            post.markedMilli = made->valueMilli;
        }
    }
}

} // namespace

Floor::Floor(
    SessionBase& session, LogWriterBase& writer, const Clock& clock,
    std::vector<ProcedureDocument> procedures, std::string by, QObject* parent)
    : QObject(parent), m_session(session), m_writer(writer), m_clock(clock),
      m_shipped(std::move(procedures)), m_procedures(m_shipped), m_by(std::move(by)) {}

Result<void> Floor::addBench(const BenchDocument& bench) {
    for (const Post& post : m_posts) {
        if (post.bench.bench.id == bench.bench.id) {
            return fail(
                ErrorCode::Conflict, "the bench \"" + bench.bench.id + "\" is there already");
        }
    }
    if (static_cast<int>(m_posts.size()) >= kMostBenches) {
        return fail(ErrorCode::OutOfRange, "a fifth bench, \"" + bench.bench.id + "\"; allowed: 4");
    }
    Post post;
    post.bench = bench;
    post.heat = std::make_shared<LiveHeat>(m_materials);
    post.place = static_cast<int>(m_posts.size()) + 1;
    m_posts.push_back(std::move(post));
    return {};
}

void Floor::setProcedures(std::vector<ProcedureDocument> procedures) {
    m_procedures = std::move(procedures);
    emit changed();
}

std::vector<BenchDocument> Floor::benches() const {
    std::vector<BenchDocument> all;
    for (const Post& post : m_posts) {
        all.push_back(post.next.value_or(post.bench));
    }
    return all;
}

Result<void> Floor::setBench(const BenchDocument& bench) {
    const auto post = std::find_if(m_posts.begin(), m_posts.end(), [&bench](const Post& one) {
        return one.bench.bench.id == bench.bench.id;
    });
    if (post == m_posts.end()) {
        if (auto added = addBench(bench); !added) {
            return added;
        }
    } else if (post->weld) {
        post->next = bench;
    } else {
        post->bench = bench;
        post->markedMilli.reset(); // it may be another scale
    }
    emit changed();
    return {};
}

Result<void> Floor::takeUpShelf() {
    auto inForce = readProceduresInForce(m_writer, m_shipped);
    if (!inForce) {
        return tl::unexpected<Error>(inForce.error());
    }
    auto reader = LogReader::open(m_writer.path());
    if (!reader) {
        return tl::unexpected<Error>(reader.error());
    }
    const auto shelf = readShelf(*reader);
    if (!shelf) {
        return tl::unexpected<Error>(shelf.error());
    }
    for (const auto& [id, sha256] : shelf->benches) {
        const auto document = reader->document(sha256);
        if (!document) {
            return tl::unexpected<Error>(document.error());
        }
        if (!document->has_value()) {
            return fail(
                ErrorCode::Damaged,
                "the log names a document of the bench \"" + id + "\" that is not in it");
        }
        const auto bench = readBench("bench of the log", (*document)->bytes);
        if (!bench) {
            return tl::unexpected<Error>(bench.error());
        }
        if (auto set = setBench(*bench); !set) {
            return set;
        }
    }
    setProcedures(std::move(*inForce));
    return {};
}

Result<void> Floor::takeUpFound() {
    for (const std::string& id : m_session.openWelds()) {
        const Weld* found = m_session.find(id);
        const WeldOpened& opened = found->opened();
        const auto stands = [&] {
            return std::find_if(m_posts.begin(), m_posts.end(), [&](const Post& post) {
                return post.bench.bench.id == opened.bench;
            });
        };
        // A weld keeps the bench that it was opened with; what holds now comes after it.
        if (stands() == m_posts.end() || stands()->bench.sha256 != opened.docs.bench) {
            auto reader = LogReader::open(m_writer.path());
            if (!reader) {
                return tl::unexpected<Error>(reader.error());
            }
            const auto document = reader->document(opened.docs.bench);
            if (!document) {
                return tl::unexpected<Error>(document.error());
            }
            if (!document->has_value()) {
                return fail(
                    ErrorCode::Missing, "the log holds an open weld on the bench \"" +
                                            opened.bench + "\" but not the bench itself");
            }
            const auto bench = readBench("bench of the log", (*document)->bytes);
            if (!bench) {
                return tl::unexpected<Error>(bench.error());
            }
            if (const auto post = stands(); post != m_posts.end()) {
                post->next = std::exchange(post->bench, *bench);
            } else if (const auto added = addBench(*bench); !added) {
                return added;
            }
        }
        stands()->weld = id;
    }
    // The screen begins at a bench whose weld is open: after a crash nobody should search for it.
    const auto open = std::find_if(
        m_posts.begin(), m_posts.end(), [](const Post& post) { return post.weld.has_value(); });
    if (open != m_posts.end() && !at(m_selected).weld) {
        m_selected = static_cast<int>(open - m_posts.begin());
    }
    return {};
}

void Floor::select(int post) {
    if (post >= 0 && post < static_cast<int>(m_posts.size()) && post != m_selected) {
        m_selected = post;
        emit changed();
    }
}

const Weld* Floor::weld(int post) const {
    if (post < 0 || post >= static_cast<int>(m_posts.size()) || !at(post).weld) {
        return nullptr;
    }
    return m_session.find(*at(post).weld);
}

/// The sheet's heat while it is on the plate.
const SheetRun* Floor::heat(int post, const Weld& weld, const Instant& now) const {
    const bool onPlate =
        std::holds_alternative<Aligning>(weld.state) || std::holds_alternative<Soaking>(weld.state);
    if (at(post).heat == nullptr || !onPlate) {
        return nullptr;
    }
    const auto time = weldTimeAt(weld, now);
    return time ? at(post).heat->followBySecond(weld, time->lo, &at(post).bench.bench) : nullptr;
}

/// Only a weld that may go on to alignment or soak is asked, and only beside another bench: the
/// question copies every open weld.
std::optional<Clash> Floor::clash(int post, const Weld& weld, const Instant& now) const {
    const auto wantsHands = [](const Weld& other) {
        return std::holds_alternative<Soaking>(other.state) || takesBothHands(other);
    };
    bool another = false;
    for (int i = 0; i < static_cast<int>(m_posts.size()); ++i) {
        const Weld* other = i == post ? nullptr : this->weld(i);
        another = another || (other != nullptr && wantsHands(*other));
    }
    if (!another) {
        return std::nullopt;
    }
    if (std::holds_alternative<Aligning>(weld.state)) {
        return clashOfSoak(shift(), at(post).place, now);
    }
    const auto* preparing = std::get_if<Preparing>(&weld.state);
    return preparing != nullptr && preparing->openChecks.empty()
               ? clashOfAlignment(shift(), at(post).place, now)
               : std::nullopt;
}

std::optional<WeldView>
Floor::view(int post, const Instant& now, bool pedal, bool lessMotion) const {
    const Weld* found = weld(post);
    if (found == nullptr) {
        return std::nullopt;
    }
    ViewContext context;
    context.now = now;
    context.letter = at(post).letter();
    context.bead = at(post).bead;
    context.pedal = pedal;
    context.lessMotion = lessMotion;
    context.notSaved = unsaved(*found).rows;
    context.heat = heat(post, *found, now);
    context.series = m_series;
    context.next = at(post).nextSeam;
    context.meanwhile = at(post).meanwhile;
    context.oneByOne = at(post).oneByOne;
    context.clash = clash(post, *found, now);
    context.usual = m_session.usualAlignment(found->id());
    const Bench& bench = at(post).bench.bench;
    context.plateRead = bench.plateRead;
    context.markedMilli = at(post).markedMilli;
    context.dragMilli = thousandths(
        dragReading(bench.scale, newtons(static_cast<double>(found->plan.dragMn) / 1e3)));
    return weldView(*found, context);
}

NumberTask Floor::numberTask(int post, NumberFor what) const {
    const Post& there = at(post);
    return seamclock::numberTask(*weld(post), what, there.letter(), there.bench.bench.plateRead);
}

Result<void> Floor::open(int post, const WeldOrder& order) {
    if (const Weld* there = weld(post); there != nullptr && isOpen(there->state)) {
        return fail(
            ErrorCode::Conflict,
            "joint " + std::to_string(there->opened().number) + " is still open on this bench");
    }
    if (auto& next = at(post).next; next && next->sha256 == order.bench.sha256) {
        at(post).bench = *std::exchange(next, std::nullopt);
    }
    WeldOrder whole = order;
    whole.carriesChecks = m_series;
    if (m_practises) {
        whole.type = WeldType::Practice;
    }
    const auto weld = m_session.open(whole, m_by);
    if (!weld) {
        return tl::unexpected<Error>(weld.error());
    }
    if (const auto& before = at(post).weld) {
        m_session.forget(*before);
    }
    at(post).weld = weld->id();
    at(post).bead = {};
    at(post).oneByOne = false;
    at(post).nextSeam.clear();
    emit changed();
    return {};
}

Result<void> Floor::press(int post, const Offer& offer, std::int64_t onto) {
    if (const auto* steps = std::get_if<MakeSteps>(&offer)) {
        return make(post, steps->details, onto);
    }
    if (std::holds_alternative<TakeBackLast>(offer)) {
        return takeBack(post);
    }
    if (const auto* earlier = std::get_if<SetEarlier>(&offer)) {
        return setEarlier(post, earlier->by);
    }
    if (std::holds_alternative<CloseWeld>(offer)) {
        const Weld* found = weld(post);
        return found == nullptr ? Result<void>{} : make(post, {closing(*found)}, onto);
    }
    if (std::holds_alternative<LeaveWeld>(offer)) {
        leave(post);
        return {};
    }
    if (std::holds_alternative<CheckAnew>(offer)) {
        return checkAnew(post);
    }
    if (std::holds_alternative<OneByOne>(offer)) {
        at(post).oneByOne = true;
        emit changed();
        return {};
    }
    if (const auto* settled = std::get_if<SettleWeld>(&offer)) {
        const auto done = without(m_session.settle(*at(post).weld, settled->word, m_by));
        emit changed();
        return done;
    }
    return {};
}

Result<void> Floor::make(int post, const std::vector<WeldDetail>& details, std::int64_t onto) {
    if (!at(post).weld) {
        return {};
    }
    Intent intent{onto, m_by, {}};
    for (const WeldDetail& detail : details) {
        intent.d = detail;
        const auto next = m_session.act(*at(post).weld, intent);
        if (!next) {
            emit changed();
            return tl::unexpected<Error>(next.error());
        }
        intent.onto = lastTakeable(*next);
        if (std::holds_alternative<AlignmentStarted>(detail) ||
            std::holds_alternative<WeldAborted>(detail)) {
            keepMark(at(post), *next);
        }
    }
    emit changed();
    return {};
}

Result<void> Floor::step(int post, const WeldDetail& detail) {
    const Weld* found = weld(post);
    return found == nullptr ? Result<void>{} : make(post, {detail}, lastTakeable(*found));
}

Result<void> Floor::takeBack(int post) {
    const Weld* found = weld(post);
    if (found == nullptr) {
        return {};
    }
    for (const Retained& event : lastPress(*found)) {
        if (const auto taken = step(post, StepTakenBack{event.n}); !taken) {
            return taken;
        }
    }
    return {};
}

// What the press stored after its step is taken back, the step set earlier, and the rest made
// again.
Result<void> Floor::setEarlier(int post, Milliseconds by) {
    const Weld* found = weld(post);
    if (found == nullptr) {
        return {};
    }
    std::vector<WeldDetail> again;
    Result<void> refused; // what was taken back for it is made again all the same
    for (const Retained& event : lastPress(*found)) {
        if (isOfAClock(*found, event.d)) {
            refused = step(post, StepBackdated{event.n, by});
            break;
        }
        if (const auto taken = step(post, StepTakenBack{event.n}); !taken) {
            return taken;
        }
        again.insert(again.begin(), event.d);
    }
    for (const WeldDetail& detail : again) {
        if (const auto made = step(post, detail); !made) {
            return made;
        }
    }
    return refused;
}

Result<void> Floor::checkAnew(int post) {
    const Weld* found = weld(post);
    if (found == nullptr) {
        return {};
    }
    for (const std::string& check : checksCarried(*found)) {
        CheckMade aside;
        aside.check = check;
        if (const auto set = step(post, aside); !set) {
            return set;
        }
    }
    return {};
}

Result<std::pair<ProcedureDocument, BenchDocument>> Floor::asTheyHold(int post) const {
    const Weld* found = weld(post);
    if (found == nullptr) {
        return fail(ErrorCode::Missing, "there is no joint on this bench to go on from");
    }
    const std::string& id = found->plan.procedure;
    const auto procedure =
        std::find_if(m_procedures.begin(), m_procedures.end(), [&id](const ProcedureDocument& one) {
            return one.procedure.id == id;
        });
    if (procedure == m_procedures.end()) {
        return fail(
            ErrorCode::Missing, "the procedure \"" + id + "\" of that joint is not here any more");
    }
    return std::pair{*procedure, at(post).next.value_or(at(post).bench)};
}

Result<WeldOrder> Floor::sameAgain(int post) const {
    const auto hold = asTheyHold(post);
    if (!hold) {
        return tl::unexpected<Error>(hold.error());
    }
    return seamclock::sameAgain(*weld(post), hold->first, hold->second);
}

Result<WeldOrder> Floor::weldAgain(int post, std::int64_t lostUm) const {
    const auto hold = asTheyHold(post);
    if (!hold) {
        return tl::unexpected<Error>(hold.error());
    }
    return seamclock::weldAgain(*weld(post), hold->first, hold->second, lostUm);
}

Result<void> Floor::decide(
    const std::string& weld, Decision decision, const std::string& reason, const ProvenPerson& by) {
    return judge(weld, Decided{decision, reason}, by);
}

Result<void>
Floor::judge(const std::string& weld, const WeldDetail& detail, const ProvenPerson& by) {
    const auto done = without(m_session.act(weld, Intent{{}, by.person(), detail}, by));
    emit changed();
    return done;
}

Result<void> Floor::grade(int post, const std::string& scheme, const std::string& level) {
    return step(post, Graded{scheme, level});
}

Result<void> Floor::addPhoto(int post, const PhotoAdded& photo) {
    return step(post, photo);
}

// What was measured is planned with, and its check made.
Result<void>
Floor::planWith(int post, const Measured& measured, const char* why, const CheckMade& made) {
    const Weld* found = weld(post);
    const auto procedure = procedureOf(*found, m_procedures, m_writer.path());
    if (!procedure) {
        return tl::unexpected<Error>(procedure.error());
    }
    const auto plan = planAgain(*found, procedure->procedure, at(post).bench.bench, measured);
    if (!plan) {
        return tl::unexpected<Error>(plan.error());
    }
    if (const auto ready = checkReady(*plan); !ready) {
        return ready;
    }
    if (const auto replaced = step(post, PlanReplaced{*plan, found->opened().docs, why});
        !replaced) {
        return replaced;
    }
    return step(post, made);
}

Result<void> Floor::newDrag(int post, double reading) {
    const Bench& bench = at(post).bench.bench;
    const double least = dragReading(bench.scale, Force());
    const double half = static_cast<double>(bench.scale.divisionMilli) / 2000.0;
    if (!(reading >= least - half)) { // nearer than that is how well it can be read
        return fail(
            ErrorCode::OutOfRange, "drag reading " + plainNumber(reading) +
                                       " is below what the scale shows without any drag, " +
                                       plainNumber(least));
    }
    Measured measured;
    measured.drag = std::max(dragOf(bench.scale, reading), Force());
    CheckMade made;
    made.check = "drag";
    made.passed = true;
    made.valueMilli = thousandths(reading);
    return planWith(post, measured, "drag measured", made);
}

// The air decides on the cooling, and of some procedures on whether they hold at all.
Result<void> Floor::newAmbient(int post, double celsius) {
    Measured measured;
    measured.ambient = Temperature::celsius(celsius);
    CheckMade made;
    made.check = "shielded";
    made.passed = true;
    made.valueMc = thousandths(celsius);
    return planWith(post, measured, "ambient measured", made);
}

Result<void> Floor::answer(int post, const NumberAnswer& number) {
    const Weld* found = weld(post);
    if (found == nullptr) {
        return {};
    }
    BeadDraft& bead = at(post).bead;
    switch (number.what) {
    case NumberFor::PlateTemperature:
        return step(post, plateReading(*found, at(post).bench.bench.plateRead, number.value, true));
    case NumberFor::Drag:
        return newDrag(post, number.value);
    case NumberFor::Ambient:
        return newAmbient(post, number.value);
    case NumberFor::Recheck:
        return step(post, ReadingTaken{ReadingPhase::Recheck, thousandths(number.value)});
    case NumberFor::Overshoot: // as it was: too far, then back at the set reading
        return make(
            post,
            {ReadingTaken{ReadingPhase::Alignment, thousandths(number.value)},
             ReadingTaken{ReadingPhase::Alignment, found->plan.scale->alignment.setMilli}},
            lastTakeable(*found));
    case NumberFor::BeadHeight:
        bead.heightUm = thousandths(number.value);
        break;
    case NumberFor::BeadWidth:
        bead.widthUm = thousandths(number.value);
        break;
    case NumberFor::BeadK:
        bead.kUm = thousandths(number.value);
        break;
    case NumberFor::Misalignment: {
        BeadMeasured measured;
        measured.heightUm = bead.heightUm.value_or(0);
        measured.widthUm = bead.widthUm.value_or(0);
        measured.kUm = bead.kUm.value_or(0);
        measured.misalignmentUm = thousandths(number.value);
        measured.placeUm = beadPlaceUm(*found, beadPlacesMeasured(*found));
        const auto done = step(post, measured);
        if (done) {
            bead = {};
        }
        return done;
    }
    case NumberFor::LengthLost:
    case NumberFor::SheetThickness:
    case NumberFor::SeamLength:
    case NumberFor::ShopTemperature:
    case NumberFor::BenchValue:
        return {}; // these are asked before there is a weld
    }
    emit changed();
    return {};
}

// What was measured of that place before stays in words.
Result<void> Floor::leaveBeadOut(int post, const std::string& why) {
    BeadDraft& bead = at(post).bead;
    QStringList measured;
    if (bead.heightUm) {
        measured << tr("height %1 mm").arg(millimetresText(*bead.heightUm, 1));
    }
    if (bead.widthUm) {
        measured << tr("width %1 mm").arg(millimetresText(*bead.widthUm, 1));
    }
    if (bead.kUm) {
        measured << tr("K %1 mm").arg(millimetresText(*bead.kUm, 1));
    }
    bead = {};
    bead.leftOut = true;
    if (!measured.isEmpty()) {
        const QString words = tr("Bead: %1.").arg(measured.join(", "));
        if (const auto kept = step(post, RemarkMade{words.toStdString()}); !kept) {
            return kept;
        }
    }
    return step(post, RemarkMade{why});
}

Result<void> Floor::answer(int post, const ReasonAnswer& reason) {
    const Weld* found = weld(post);
    if (found == nullptr) {
        return {};
    }
    std::optional<std::string> text;
    if (!reason.text.empty()) {
        text = reason.text;
    }
    switch (reason.asked.what) {
    case ReasonFor::Stop:
        return step(post, WeldAborted{reason.choice, reason.text});
    case ReasonFor::CheckLeftOut:
        return step(post, CheckOverridden{reason.asked.code, reason.choice, Authority::Operator});
    case ReasonFor::Owed:
        if (reason.asked.code == "bead_not_measured") {
            return leaveBeadOut(post, reason.text.empty() ? reason.choice : reason.text);
        }
        return step(post, ReasonGiven{reason.asked.code, reason.choice, text});
    case ReasonFor::Trial:
        return {}; // a foreman's: decide()
    case ReasonFor::EarlyRelease: {
        const auto released = step(post, ReleaseStep{found->plan.releaseOrder.front()});
        return released ? step(post, ReasonGiven{"cooling", reason.choice, text}) : released;
    }
    }
    return {};
}

Result<void> Floor::allow(
    int post, const std::string& weld, const ReasonAnswer& reason, const ProvenPerson& by) {
    const Weld* found = this->weld(post);
    if (found == nullptr || found->id() != weld) {
        return fail(ErrorCode::Refused, "another weld is on that bench by now");
    }
    // Another material passes over no check: the sheet is still to be clamped.
    const Intent intent{
        lastTakeable(*found), by.person(),
        reason.choice == kOtherMaterial
            ? WeldDetail(RemarkMade{kOtherMaterial})
            : CheckOverridden{reason.asked.code, reason.choice, Authority::Foreman}};
    const auto done = without(m_session.act(weld, intent, by));
    emit changed();
    return done;
}

bool Floor::isHurried() const {
    for (int i = 0; i < static_cast<int>(m_posts.size()); ++i) {
        const Weld* found = weld(i);
        if (found != nullptr && (std::holds_alternative<Aligning>(found->state) ||
                                 std::holds_alternative<Soaking>(found->state) ||
                                 std::holds_alternative<ChangingOver>(found->state) ||
                                 std::holds_alternative<BuildingUp>(found->state))) {
            return true;
        }
    }
    return false;
}

std::optional<int> Floor::handsAt() const {
    const auto takes = [this](int post) {
        const Weld* found = weld(post);
        return found != nullptr && takesBothHands(*found);
    };
    if (takes(m_selected)) {
        return m_selected;
    }
    for (int i = 0; i < static_cast<int>(m_posts.size()); ++i) {
        if (takes(i)) {
            return i;
        }
    }
    return std::nullopt;
}

bool Floor::isWelding() const {
    for (int i = 0; i < static_cast<int>(m_posts.size()); ++i) {
        const Weld* found = weld(i);
        if (found != nullptr && isOpen(found->state)) {
            return true;
        }
    }
    return false;
}

Result<void> Floor::failPlate(int post, double celsius) {
    const Weld* found = weld(post);
    if (found == nullptr) {
        return {};
    }
    return step(post, plateReading(*found, at(post).bench.bench.plateRead, celsius, false));
}

void Floor::leave(int post) {
    if (const auto& left = at(post).weld) {
        m_session.forget(*left); // a shift's welds must not pile up in memory
    }
    at(post).weld.reset();
    at(post).bead = {};
    if (auto& next = at(post).next) {
        at(post).bench = std::move(*next);
        at(post).markedMilli.reset();
        next.reset();
    }
    emit changed();
}

void Floor::soundChanged(bool heard) {
    m_session.soundChanged(heard);
    emit changed();
}

void Floor::soundTrial(int post) {
    m_trial = Trial{at(post).place, now().boot + kTrialAhead};
    emit changed();
}

void Floor::soundStation(CueKind kind, bool sounds) {
    const auto found =
        std::find_if(m_station.begin(), m_station.end(), [kind](const StationCue& cue) {
            return cue.kind == kind;
        });
    if (sounds == (found != m_station.end())) {
        return;
    }
    if (sounds) {
        m_station.push_back({kind, now().boot, std::nullopt});
    } else {
        m_station.erase(found);
    }
    emit changed();
}

Shift Floor::shift() const {
    Shift shift;
    shift.station = m_station;
    shift.trial = m_trial;
    for (int i = 0; i < static_cast<int>(m_posts.size()); ++i) {
        const Weld* found = weld(i);
        if (found == nullptr || !isOpen(found->state)) {
            continue;
        }
        const auto with = withBench(shift, ShiftBench{at(i).bench.bench.id, at(i).place, *found});
        if (with) {
            shift = *with;
        }
    }
    return shift;
}

Floor::Unsaved Floor::unsaved(const Weld& weld, std::optional<Milliseconds> seen) const {
    Unsaved found;
    for (const Event& event : weld.events) {
        const RowStatus status = m_writer.status(weld.id(), event.n);
        if (status != RowStatus::Pending && status != RowStatus::Spilled) {
            continue;
        }
        const bool ofThisBoot = event.at.bootId == m_clock.now().bootId;
        const Milliseconds made = ofThisBoot ? event.at.boot : Milliseconds{0};
        if (!found.since && (!seen || made > *seen)) {
            found.since = made;
        }
        ++found.rows;
    }
    return found;
}

} // namespace seamclock
