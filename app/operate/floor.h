// The benches of one tablet and the welds on them: what a press on a screen does. It holds no
// widget and paints nothing; a screen asks it for views and hands it the offer that was pressed.
// Every step goes through the session, which reads the clock once and sends the row on its way; a
// refusal comes back as a sentence and changes nothing. Which weld stands on which bench follows
// from the welds' own opening events, so it needs no memory of its own across a restart.
#pragma once

#include "app/operate/number_task.h"
#include "app/operate/weld_view.h"
#include "app/setup/setup_shop.h"
#include "core/estimate/live_heat.h"
#include "core/session/again.h"
#include "core/session/job_order.h"
#include "core/session/session.h"
#include "core/shift/shift.h"

#include <QObject>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace seamclock {

struct Measured;

/// Where one weld can be made, A to D.
struct Post {
    BenchDocument bench;
    int place = 1;
    std::optional<std::string> weld;   // "weld:UUID", open or just ended
    std::optional<BenchDocument> next; // as Set-up changed it meanwhile; holds when it is free
    BeadDraft bead;
    bool oneByOne = false;                     // no checks are answered together
    QString nextSeam;                          // of the same kind, for the screen of an ended weld
    QString meanwhile;                         // what could be made ready while this one cools
    std::shared_ptr<LiveHeat> heat;            // of its weld, where there are materials
    QString sign;                              // in place of its letter: a bench to practise at
    std::optional<std::int64_t> markedMilli{}; // the joining reading, on its scale

    QString letter() const { return sign.isEmpty() ? QString(QChar(u'A' + place - 1)) : sign; }
};

/// In whose name steps are written while nobody is at the bench.
inline constexpr const char* kStation = "station";

/// What a number that was typed in means to this weld.
struct NumberAnswer {
    NumberFor what = NumberFor::PlateTemperature;
    double value = 0; // °C, mm or the scale's unit
};

/// What a person chose as the reason.
struct ReasonAnswer {
    AskReason asked;
    std::string choice;
    std::string text;
};

class Floor : public QObject, public SetupShop {
    Q_OBJECT

public:
    /// All must outlive the floor. `procedures`: those that came with the program.
    Floor(
        SessionBase& session, LogWriterBase& writer, const Clock& clock,
        std::vector<ProcedureDocument> procedures, std::string by, QObject* parent = nullptr);

    /// Up to four; the place follows the order. Conflict: the bench is there. OutOfRange: a fifth.
    Result<void> addBench(const BenchDocument& bench);
    /// What the log says that the shop changed: procedures, attestations, benches. Before
    /// takeUpFound.
    Result<void> takeUpShelf();
    /// Puts the welds that stood open in the log on their benches, with the bench as the log keeps
    /// it where it isn't there yet, and selects the first of them.
    Result<void> takeUpFound();

    const std::vector<Post>& posts() const { return m_posts; }
    /// Whether joints follow one another here: what stands is not checked again, and the next of
    /// the same kind is offered when one is saved.
    void setSeries(bool series) { m_series = series; }
    void setNextSeam(int post, const QString& label) { at(post).nextSeam = label; }
    void setMeanwhile(int post, const QString& words) { at(post).meanwhile = words; }
    void setSign(int post, const QString& sign) { at(post).sign = sign; }
    int selected() const { return m_selected; }
    void select(int post);

    /// What is opened from now on is practice, as the log is. Before anything is opened.
    void practise() { m_practises = true; }
    bool practises() const { return m_practises; }

    /// In whose name the steps are written from now on: "person:ID" or "station".
    void setBy(std::string by) { m_by = std::move(by); }
    const std::string& by() const { return m_by; }
    /// Whether a weld stands between alignment and lock, where seconds count.
    bool isHurried() const;
    /// The bench that has both hands, between its plate out and its lock: the selected one, if it
    /// is among several. Nothing comes over its screen.
    std::optional<int> handsAt() const;
    /// Whether a weld is open on any bench.
    bool isWelding() const;

    /// For the estimate of the heat in the sheets; without them nothing is estimated.
    void setMaterials(std::vector<Material> materials) { m_materials = std::move(materials); }
    const std::vector<Material>& materials() const { return m_materials; }

    const std::vector<ProcedureDocument>& shipped() const override { return m_shipped; }
    const std::vector<ProcedureDocument>& procedures() const override { return m_procedures; }
    void setProcedures(std::vector<ProcedureDocument> procedures) override;
    std::vector<BenchDocument> benches() const override;
    Result<void> setBench(const BenchDocument& bench) override;
    const Weld* weld(int post) const;
    /// Every weld of this program that is held in memory, on a bench or not.
    void eachWeld(const std::function<void(const Weld&)>& use) const { m_session.eachWeld(use); }
    Instant now() const { return m_clock.now(); }
    /// Looks at the clock for jumps, too; for the screen's own timer.
    Instant look() { return m_session.look(); }
    /// As SessionBase's.
    std::optional<Milliseconds> clockJump() const { return m_session.clockJump(); }
    void clockJumpSeen() { m_session.clockJumpSeen(); }
    /// What is asked for when a number of the weld on that post is typed; there must be one.
    NumberTask numberTask(int post, NumberFor what) const;
    std::optional<WeldView> view(int post, const Instant& now, bool pedal, bool lessMotion) const;

    /// The weld begins on that bench. Errors as the session's; Conflict: another is open there.
    Result<void> open(int post, const WeldOrder& order);
    /// The order of one more joint like the one on that bench: the procedure and the bench as they
    /// hold now. Missing: the bench has no weld, or its procedure is gone.
    Result<WeldOrder> sameAgain(int post) const;
    /// That joint once more after it was cut out; `lostUm` of both sheets together.
    Result<WeldOrder> weldAgain(int post, std::int64_t lostUm) const;
    /// As SessionBase::trialOf.
    Result<TrialFinding> trialOf(const WeldOrder& order) { return m_session.trialOf(order); }
    /// A foreman's step on a joint that is ended, in his name: a decision, a sign-off, a
    /// correction.
    Result<void> judge(const std::string& weld, const WeldDetail& detail, const ProvenPerson& by);
    /// His decision.
    Result<void> decide(
        const std::string& weld, Decision decision, const std::string& reason,
        const ProvenPerson& by);
    /// The person's own grade of the bead on that bench.
    Result<void> grade(int post, const std::string& scheme, const std::string& level);
    /// A photo that was kept beside the log (core/session/photo.h).
    Result<void> addPhoto(int post, const PhotoAdded& photo);
    /// What a slot offered, made now. `onto`: as the view that was pressed had it.
    Result<void> press(int post, const Offer& offer, std::int64_t onto);
    Result<void> answer(int post, const NumberAnswer& number);
    Result<void> answer(int post, const ReasonAnswer& reason);
    /// A foreman lets that weld go on without a check, in his own name. Refused: another weld
    /// stands there by now.
    Result<void>
    allow(int post, const std::string& weld, const ReasonAnswer& reason, const ProvenPerson& by);
    /// Stores a plate that was read outside its window as a failed check.
    Result<void> failPlate(int post, double celsius);
    /// The bench is free again; its ended weld stays in the log.
    void leave(int post);

    /// The sound was lost, or is there again (SessionBase::soundChanged).
    void soundChanged(bool heard);
    /// Sounds a signal in that bench's pitch, for a person to hear whether it can be heard.
    void soundTrial(int post);
    /// Something that no weld knows sounds from now on, or no longer.
    void soundStation(CueKind kind, bool sounds);
    /// For the horn: every bench with an open weld, and the station's own cues.
    Shift shift() const;
    /// Rows of this weld that are not on disk.
    struct Unsaved {
        int rows = 0;
        /// When the oldest of those was made that came after `seen`, boot ms; 0 for one of another
        /// boot.
        std::optional<Milliseconds> since{};
    };
    Unsaved unsaved(const Weld& weld, std::optional<Milliseconds> seen = {}) const;

signals:
    void changed();

private:
    const SheetRun* heat(int post, const Weld& weld, const Instant& now) const;
    std::optional<Clash> clash(int post, const Weld& weld, const Instant& now) const;
    Result<void> make(int post, const std::vector<WeldDetail>& details, std::int64_t onto);
    Result<void> step(int post, const WeldDetail& detail);
    Result<void> takeBack(int post);
    Result<void> setEarlier(int post, Milliseconds by);
    Result<void>
    planWith(int post, const Measured& measured, const char* why, const CheckMade& made);
    Result<void> leaveBeadOut(int post, const std::string& why);
    Result<void> newDrag(int post, double reading);
    Result<void> newAmbient(int post, double celsius);
    Result<void> checkAnew(int post);
    Result<std::pair<ProcedureDocument, BenchDocument>> asTheyHold(int post) const;
    Post& at(int post) { return m_posts[static_cast<std::size_t>(post)]; }
    const Post& at(int post) const { return m_posts[static_cast<std::size_t>(post)]; }

    SessionBase& m_session;
    LogWriterBase& m_writer;
    const Clock& m_clock;
    std::vector<ProcedureDocument> m_shipped;
    std::vector<ProcedureDocument> m_procedures;
    std::vector<Material> m_materials;
    std::string m_by;
    std::vector<Post> m_posts;
    int m_selected = 0;
    bool m_series = false;
    bool m_practises = false;
    std::optional<Trial> m_trial;
    std::vector<StationCue> m_station;
};

} // namespace seamclock
