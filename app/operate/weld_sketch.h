// One weld view while it is made: what it is made from (a folded weld and an instant), the view as
// far as it stands, and the strokes that every state's view shares (lamp, step, scale, seam). It
// doesn't decide what a state says: that is weld_checks, weld_phases, weld_ending and
// weld_interrupted. A view stays a pure function of the weld and the instant, since a sketch lives
// for one call of weldView().
#pragma once

#include "app/operate/weld_view.h"

namespace seamclock {

struct Sketch {
    const Weld& weld;
    const ViewContext& context;
    std::vector<Retained> standing; // the weld's events that were not taken back
    WeldTime t{};                   // now, by the weld's own clock; unset while power was off
    WeldView view{};

    const WeldPlan& plan() const { return weld.plan; }
    const WeldPlan::ScalePlan& scalePlan() const { return *plan().scale; }
    QString unit() const;
    QString reading(std::int64_t milli) const;
    QString readingWithUnit(std::int64_t milli) const;
    std::optional<std::int64_t> plateRead() const;
    bool numbered() const;

    void lamp(Tone tone, Mark mark, const QString& word);
    void step(const QString& text, Offer offer, SlotView::Look look = SlotView::Look::Act);
    void scaleOf(const ReadingBand& band);
    void scaleFree();
    void readings(ReadingPhase phase);
    void seam(SeamView::Phase phase);
    /// The sheet as warm as it is estimated to be.
    void heat();
    /// Another bench wants the hands first: lamp and sentence say how long to wait, with %1 in the
    /// sentence for it. The step keeps text and offer, and is unfilled.
    void waitForHands(const QString& sentence);

private:
    void scaleBase();
};

Slot sideSlot(const QString& text, const QString& under, Offer offer);
/// 0 to 1.
double share(Milliseconds part, Milliseconds whole);
/// What has gone by when that is left, and changes with the seconds that are shown of it: a clock
/// that is painted once a second and not twenty times.
double shareByTheSecond(Milliseconds left, Milliseconds whole);

} // namespace seamclock
