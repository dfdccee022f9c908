#include "app/operate/weld_ribbon.h"

#include "app/text/numbers.h"

#include <QCoreApplication>

namespace seamclock {
namespace {

struct Operate {
    Q_DECLARE_TR_FUNCTIONS(Operate)
};

QString tr(const char* text) {
    return Operate::tr(text);
}

// Shorter pieces move evenly: changeover and build-up.
constexpr Milliseconds kHurried{30'000};

} // namespace

RibbonView ribbonOf(const Sketch& s, WeldTime now) {
    RibbonView ribbon;
    struct Span {
        std::optional<WeldTime> from;
        std::optional<WeldTime> to;
    };
    Span align, soak, change, build, cool;
    for (const Retained& event : s.standing) {
        const WeldTime t = event.t;
        if (std::holds_alternative<AlignmentStarted>(event.d)) {
            align.from = t;
        } else if (std::holds_alternative<SoakStarted>(event.d)) {
            align.to = soak.from = t;
        } else if (std::holds_alternative<PlateOut>(event.d)) {
            soak.to = change.from = t;
        } else if (std::holds_alternative<FacesMet>(event.d)) {
            change.to = build.from = t;
        }
    }
    if (const auto* cooling = std::get_if<Cooling>(&s.weld.state)) {
        build.to = cool.from = cooling->from;
    } else if (
        std::holds_alternative<Releasing>(s.weld.state) ||
        std::holds_alternative<Inspecting>(s.weld.state) ||
        std::holds_alternative<Closed>(s.weld.state)) {
        build.to = cool.from = cool.to = now;
    }
    // Over a bridge what must at least have passed is shown with the shorter end, what may at most
    // have passed with the longer.
    using End = Milliseconds WeldTime::*;
    const auto piece = [&](End end, const Span& span, const QString& name, std::optional<Sign> sign,
                           std::optional<Milliseconds> planned, bool late, double weight) {
        RibbonView::Piece out;
        using Is = RibbonView::Piece::Is;
        out.name = name;
        out.sign = sign;
        out.weight = weight;
        out.is = span.to ? Is::Done : span.from ? Is::Now : Is::Ahead;
        if (span.from && !span.to) {
            const Milliseconds gone = (now - *span.from).*end;
            const bool hurried = planned && *planned < kHurried;
            out.fraction = !planned  ? 0.5
                           : hurried ? share(gone, *planned)
                                     : shareByTheSecond(*planned - gone, *planned);
            out.is = late ? Is::Late : Is::Now;
        }
        if (span.from && span.to && span.from != span.to) {
            out.time = timeText((*span.to - *span.from).*end);
        } else if (planned) {
            out.time = timeText(*planned);
        }
        ribbon.pieces.push_back(out);
    };
    const auto* soaking = std::get_if<Soaking>(&s.weld.state);
    const auto* changing = std::get_if<ChangingOver>(&s.weld.state);
    const auto* building = std::get_if<BuildingUp>(&s.weld.state);
    const bool soakLate =
        soaking != nullptr && (now - soaking->due).hi > s.plan().soak->high - s.plan().soak->target;
    const auto past = [&](WeldTime limit) { return (now - limit).hi > Milliseconds(0); };
    const End least = &WeldTime::lo;
    const End most = &WeldTime::hi;
    piece(least, align, tr("align"), {}, s.plan().alignMedian, false, 2);
    piece(least, soak, tr("soak"), {}, s.plan().soak->target, soakLate, 4);
    piece(
        most, change, tr("changeover"), Sign::Changeover, s.plan().changeoverMax,
        changing != nullptr && past(changing->limit), 0.5);
    piece(
        most, build, tr("build-up"), Sign::BuildUp, s.plan().buildUp->target,
        building != nullptr && past(building->late), 0.5);
    piece(least, cool, tr("cooling"), {}, s.plan().cooling->atLeast, false, 4.5);
    ribbon.pieces.back().brokenBefore = true;
    return ribbon;
}

} // namespace seamclock
