#include "core/practice/practice_words.h"

#include "core/weld/cues.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace seamclock {
namespace {

std::string amount(double value, const std::string& unit) {
    if (unit == "Pa") {
        return fmt::format("{:.3f} N/mm²", value / 1e6);
    }
    if (unit == "C") {
        return fmt::format("{:.0f} °C", value);
    }
    if (unit == "s") {
        return value < 100 ? fmt::format("{:.1f} s", value) : fmt::format("{:.1f} min", value / 60);
    }
    return fmt::format("{:.1f} {}", value, unit);
}

double seconds(Milliseconds time) {
    return static_cast<double>(time.count()) / 1e3;
}

/// Which stations; as people count them, from the left.
std::string places(const std::vector<int>& where) {
    if (where.empty()) {
        return "all along";
    }
    std::string text = where.size() == 1 ? "at place " : "at places ";
    for (std::size_t i = 0; i < where.size(); ++i) {
        text += (i == 0                  ? ""
                 : i + 1 == where.size() ? " and "
                                         : ", ") +
                std::to_string(where[i] + 1);
    }
    return text;
}

std::string plural(std::size_t count, const char* one, const char* many) {
    return std::to_string(count) + " " + (count == 1 ? one : many);
}

std::string stepName(const std::string& code) {
    const struct {
        const char* code;
        const char* name;
    } kNames[] = {
        {"alignment_started", "\"pressure is on\""},
        {"soak_started", "\"pressure is off\""},
        {"plate_out", "\"plate out\""},
        {"faces_met", "\"faces together\""},
        {"pressure_locked", "the lock"},
        {"film_off", "\"film is off\""},
        {"edges_planed", "\"edges are clean\""},
        {"edges_meet", "\"edges meet\""},
        {"plate_wiped", "\"plate is wiped\""},
        {"gap", "the gap"},
        {"first_sheet", "\"first sheet is clamped\""},
        {"clamping_gap", "the gap before the second sheet"},
        {"second_sheet", "\"second sheet is clamped\""},
        {"clamps_eased", "\"clamps are eased\""},
        {"bars_opened", "\"bars are open\""},
        {"spring_off", "\"spring is off\""},
        {"sheet_out", "\"sheet is out\""},
    };
    for (const auto& row : kNames) {
        if (code == row.code) {
            return row.name;
        }
    }
    return code;
}

std::string readingName(const std::string& what) {
    const struct {
        const char* code;
        const char* name;
    } kNames[] = {
        {"plate_temperature", "The plate's temperature"},
        {"drag", "The drag"},
        {"scale_zero", "The scale's zero"},
        {"alignment", "The alignment reading"},
        {"soak", "The soak reading"},
        {"joining", "The joining reading"},
        {"recheck", "The reading in cooling"},
        {"alignment_bead", "The smallest bead in alignment"},
        {"bead", "The bead"},
        {"k", "The valley K"},
        {"gap", "The gap"},
        {"clamping_gap", "The gap before the second sheet"},
    };
    for (const auto& row : kNames) {
        if (what == row.code) {
            return row.name;
        }
    }
    return what;
}

double mean(const BenchView& view, double JoinView::*field) {
    double sum = 0;
    int count = 0;
    for (const StationView& station : view.stations) {
        if (station.joined) {
            sum += (*station.joined).*field;
            ++count;
        }
    }
    return count == 0 ? 0 : sum / count;
}

double least(const BenchView& view, double JoinView::*field) {
    double found = 0;
    bool any = false;
    for (const StationView& station : view.stations) {
        if (station.joined && (!any || (*station.joined).*field < found)) {
            found = (*station.joined).*field;
            any = true;
        }
    }
    return found;
}

bool joined(const BenchView& view) {
    return std::any_of(view.stations.begin(), view.stations.end(), [](const StationView& station) {
        return station.joined.has_value();
    });
}

std::string
beside(const char* what, double made, double planned, const char* unit, int digits = 1) {
    return fmt::format(
        "{}: {:.{}f} {}, by the plan {:.{}f} {}.", what, made, digits, unit, planned, digits, unit);
}

} // namespace

std::string lapseSentence(const LapseFinding& finding) {
    const std::string was = finding.was ? amount(*finding.was, finding.unit) : "";
    const std::string planned = finding.planned ? amount(*finding.planned, finding.unit) : "";
    const std::string where = places(finding.where);
    switch (finding.lapse) {
    case Lapse::SoakPressed:
        return fmt::format("Pressure on the faces in soak: {}; at most {}.", was, planned);
    case Lapse::BackedOff:
        return fmt::format("The faces stood {} off the plate in soak.", was);
    case Lapse::ClockFromContact:
        return fmt::format(
            "Soak was counted before the bead stood: it was {} high, asked are {}.", was, planned);
    case Lapse::SlowChangeover:
        return finding.unit == "C"
                   ? fmt::format(
                         "The faces had cooled to {} when they met, by the plan {}, {}.", was,
                         planned, where)
                   : fmt::format("The faces stood in air for {}; at most {}.", was, planned);
    case Lapse::Slammed:
        return finding.unit == "s"
                   ? fmt::format("The force stood after {}; it is built up over {}.", was, planned)
                   : fmt::format("The reading went up to {}, past its mark at {}.", was, planned);
    case Lapse::LetBack:
        return fmt::format(
            "After the lock the wheel was let back while the joint was soft: {}, at least {}.", was,
            planned);
    case Lapse::NotFollowed:
        return fmt::format(
            "The reading fell to {} and was not topped up; at least {}.", was, planned);
    case Lapse::EarlyRelease:
        return fmt::format("The joint was let go after {}; at least {}.", was, planned);
    case Lapse::PlateCold:
        return fmt::format("The plate was {} on its face, {}; at least {}.", was, where, planned);
    case Lapse::PlateHot:
        return fmt::format("The plate was {} on its face, {}; at most {}.", was, where, planned);
    case Lapse::PlateDirty:
        return fmt::format("The edges met a dirty plate, {}.", where);
    case Lapse::OffParallel:
        return fmt::format("The edges were not parallel: {} {}, against {}.", was, where, planned);
    case Lapse::TopBeadOnly:
        return fmt::format(
            "Only one side was looked at: the other bead was {} high {}, asked are {}.", was, where,
            planned);
    case Lapse::EdgeTouched:
        return fmt::format("An edge was touched after it was planed, {}.", where);
    case Lapse::FilmLeft:
        return fmt::format("The film was still on the edge, {}.", where);
    case Lapse::WrongRow:
        return fmt::format("The card was for {}, and {} lay there.", was, planned);
    case Lapse::WrongUnit:
        return fmt::format(
            "The card's reading was {}; this seam takes {}. Its unit was wrong.", was, planned);
    }
    return "";
}

std::string whyItMatters(Lapse lapse) {
    switch (lapse) {
    case Lapse::SoakPressed:
        return "Pressure in soak presses out the melt that soak is there to make: the bead gets "
               "fat and the joint brittle.";
    case Lapse::BackedOff:
        return "Air between face and plate keeps the heat away, so the melt stays thin and its "
               "skin cools.";
    case Lapse::ClockFromContact:
        return "Before the bead stands the faces do not touch everywhere, so a clock that runs "
               "from first contact ends soak too soon: the melt is thin.";
    case Lapse::SlowChangeover:
        return "In air, and more so in a draught, a skin freezes on the melt. Two skins do not "
               "grow together, and the joint breaks flat.";
    case Lapse::Slammed:
        return "Force that comes at once drives the hot melt out into the bead before it has "
               "grown together. A short slam on a soft spring tears the valley and takes little "
               "melt besides; on stiff springs, or kept on, it leaves too little.";
    case Lapse::LetBack:
        return "While the plane is soft the force must stay: let back, the melt tears or shrinks "
               "into hollow places.";
    case Lapse::NotFollowed:
        return "The sheets close up as melt flows and shrinks, and the spring loses its rate times "
               "that. On a soft spring and a long seam that is a few per cent, which the verdict "
               "sees and a bend test does not; on stiff springs, a short seam or a lock that slips "
               "it leaves hollow places and a sunk bead.";
    case Lapse::EarlyRelease:
        return "A joint that is let go warm bends by its own weight and can open in the middle.";
    case Lapse::PlateCold:
        return "A cold plate melts less in the same time, and the display does not know its own "
               "faces. Measure them.";
    case Lapse::PlateHot:
        return "Above its window the melt is damaged and strings on the plate, however fine the "
               "bead looks.";
    case Lapse::PlateDirty:
        return "What sticks to the plate goes into the joint and parts it later.";
    case Lapse::OffParallel:
        return "Where the edges stand apart the bead comes late or not at all, while the other end "
               "gives up its melt.";
    case Lapse::TopBeadOnly:
        return "An edge that leans melts at the top first. Both beads end alignment, not the one "
               "that is seen.";
    case Lapse::EdgeTouched:
        return "A hand leaves grease and sweat, and melt does not join over them.";
    case Lapse::FilmLeft:
        return "Film melts into the joint and parts it.";
    case Lapse::WrongRow:
        return "Every number of a card is for one thickness. Hold it against the sheet before you "
               "clamp.";
    case Lapse::WrongUnit:
        return "A kilogram of force is nearly ten newtons: the wrong one is off by a factor that "
               "anybody can see who asks whether the reading can be right.";
    }
    return "";
}

std::string wrongSentence(Wrong wrong) {
    switch (wrong) {
    case Wrong::PlateCold:
        return "The plate is too cold.";
    case Wrong::PlateHot:
        return "The plate is too hot.";
    case Wrong::PlateDirty:
        return "The plate is dirty.";
    case Wrong::ColdSpot:
        return "The plate is cold at one place.";
    case Wrong::WrongRow:
        return "The card is for another thickness.";
    case Wrong::WrongUnit:
        return "The card's readings are in another unit.";
    case Wrong::Draught:
        return "There is a draught.";
    case Wrong::ZeroOff:
        return "The scale does not stand on zero.";
    case Wrong::SpringDrifts:
        return "The lock gives way: the reading falls too much.";
    case Wrong::EdgeLeans:
        return "An edge leans: one side of it stands behind.";
    }
    return "";
}

std::string bendSentence(BendReason reason) {
    switch (reason) {
    case BendReason::NotJoined:
        return "The faces never grew together.";
    case BendReason::NotFrozen:
        return "It was let go before the middle was solid.";
    case BendReason::ColdSkin:
        return "The faces had a cold skin: a flat fracture.";
    case BendReason::ThinMelt:
        return "Too little melt was left in the joint.";
    case BendReason::Contaminated:
        return "Dirt, grease or film lies in the joint.";
    case BendReason::Overheated:
        return "The melt was overheated.";
    case BendReason::Underheated:
        return "The plate was too cold for this plastic: the faces did not weld into each other.";
    case BendReason::LowPressure:
        return "Too little force while it froze: hollow places.";
    case BendReason::Notch:
        return "The valley of the bead does not stand above the sheet: it starts a crack.";
    case BendReason::NotClosedBelow:
        return "One side did not come together.";
    case BendReason::Kinked:
        return "It is bent where it should be straight.";
    }
    return "";
}

std::string readingSentence(const ReadingError& reading) {
    const std::string unit = reading.unit == "C" ? "°C" : reading.unit;
    const int digits = reading.unit == "C" ? 0 : 1;
    return fmt::format(
        "{}: you said {:.{}f} {}, it was {:.{}f} {}.", readingName(reading.what), reading.said,
        digits, unit, reading.was, digits, unit);
}

std::string orderSentence(const OrderError& error) {
    const std::size_t colon = error.code.find(':');
    const std::string kind = error.code.substr(0, colon);
    const std::string what = colon == std::string::npos ? "" : error.code.substr(colon + 1);
    if (kind == "told_not_done") {
        return fmt::format("{} was told and not done at the bench.", stepName(what));
    }
    if (kind == "told_late") {
        return fmt::format(
            "{} was told {} after it was done.", stepName(what), amount(error.size, "s"));
    }
    if (kind == "refused") {
        return fmt::format("This can't be done just then: {}.", what);
    }
    if (kind == "clock_from_contact") {
        return fmt::format("Soak's clock was started with a bead of {}.", amount(error.size, "mm"));
    }
    if (kind == "call_taken") {
        return fmt::format(
            "The call was taken in soak: nobody saw the bench for {}.", amount(error.size, "s"));
    }
    if (kind == toString(MishapKind::PlateDragged)) {
        return "The plate was drawn out while it was pressed, and smeared the melt.";
    }
    if (kind == toString(MishapKind::SpringKick)) {
        return "The bars were opened with the spring loaded: they kick. Follow the machine's own "
               "instructions.";
    }
    if (kind == toString(MishapKind::Parted)) {
        return "The hot faces were pulled apart again.";
    }
    if (kind == toString(MishapKind::LetGoHot)) {
        return fmt::format(
            "The joint was let go while its middle was at {}.", amount(error.size, "C"));
    }
    if (kind == toString(MishapKind::ScaleEnd)) {
        return "The wheel was turned against the end of the scale.";
    }
    return error.code;
}

std::string reactionSentence(const CueReaction& reaction) {
    const char* what = "";
    switch (reaction.cue) {
    case CueKind::ActNow:
        what = "Plate out after the signal";
        break;
    case CueKind::ChangeoverOverrun:
        what = "Faces together after the limit";
        break;
    case CueKind::BuildUpLate:
        what = "The mark reached after its limit";
        break;
    case CueKind::AlignmentLate:
        what = "Pressure off after the warning";
        break;
    case CueKind::RecheckDue:
        what = "The scale read after it was due";
        break;
    case CueKind::CoolingDone:
        what = "Released after the end of cooling";
        break;
    case CueKind::ProgramLost:
    case CueKind::CountIn:
    case CueKind::GetReady:
    case CueKind::RowNotSaved:
    case CueKind::ClockJumped:
    case CueKind::BatteryLow:
    case CueKind::NoSound:
        what = "Answered";
        break;
    }
    return fmt::format("{}: {}.", what, amount(seconds(reaction.took), "s"));
}

double meltLeftMm(const BenchView& end) {
    return joined(end)
               ? std::max(0.0, mean(end, &JoinView::meltMm) - mean(end, &JoinView::squeezedMm))
               : 0;
}

double weldPlaneC(const BenchView& bench) {
    double hottest = 0;
    for (const StationView& station : bench.stations) {
        hottest = std::max(hottest, station.skinC);
    }
    return hottest;
}

std::vector<std::string> jointSentences(const JointPhysics& made, const JointPhysics& planned) {
    if (!joined(made.end) || !joined(planned.end)) {
        return {"The faces never met."};
    }
    std::vector<std::string> all;
    all.push_back(beside(
        "Skin when the faces met, at its coldest", least(made.end, &JoinView::skinC),
        least(planned.end, &JoinView::skinC), "°C", 0));
    all.push_back(beside(
        "Melt when the faces met", mean(made.end, &JoinView::meltMm),
        mean(planned.end, &JoinView::meltMm), "mm"));
    all.push_back(
        beside("Melt left when it froze", meltLeftMm(made.end), meltLeftMm(planned.end), "mm"));
    const auto bead = [](const BenchView& view) {
        double smallest = view.stations.front().beadTopMm;
        for (const StationView& station : view.stations) {
            smallest = std::min({smallest, station.beadTopMm, station.beadBottomMm});
        }
        return smallest;
    };
    all.push_back(beside("The smallest bead", bead(made.end), bead(planned.end), "mm"));
    all.push_back(beside(
        "Pressure as it froze, at its least", least(made.end, &JoinView::frozePa) / 1e6,
        least(planned.end, &JoinView::frozePa) / 1e6, "N/mm²", 2));
    all.push_back(beside(
        "The weld plane at release", weldPlaneC(made.release), weldPlaneC(planned.release), "°C",
        0));
    if (made.end.kinkDeg > 0.05) {
        all.push_back(fmt::format("The joint is bent by {:.1f}°.", made.end.kinkDeg));
    }
    return all;
}

std::vector<std::string> practiceWords(const PracticeScore& score) {
    std::vector<std::string> all;
    all.push_back(fmt::format(
        "The verdict: {}. {} of {} values were in limits.", toString(score.verdict.word),
        score.inLimits, score.judged));
    if (score.made.bend.ductile) {
        all.emplace_back("Bend test: it bends and holds, all along.");
    } else {
        std::vector<BendReason> reasons;
        std::size_t broken = 0;
        for (const StationBend& station : score.made.bend.stations) {
            broken += station.ductile ? 0 : 1;
            for (const BendReason reason : station.reasons) {
                if (std::find(reasons.begin(), reasons.end(), reason) == reasons.end()) {
                    reasons.push_back(reason);
                }
            }
        }
        std::string text = fmt::format(
            "Bend test: it breaks at {} of {}.", broken,
            plural(score.made.bend.stations.size(), "place", "places"));
        for (const BendReason reason : reasons) {
            text += " " + bendSentence(reason);
        }
        all.push_back(std::move(text));
        if (score.verdict.word == VerdictWord::WithinLimits ||
            score.verdict.word == VerdictWord::WithRemarks) {
            all.emplace_back(
                "Every number was in limits, and it breaks all the same: a good record and a good "
                "bead do not prove a good joint.");
        }
    }
    for (const LapseFinding& finding : score.lapses) {
        all.push_back(lapseSentence(finding) + " " + whyItMatters(finding.lapse));
    }
    for (const std::string& sentence : jointSentences(score.made, score.planned)) {
        all.push_back(sentence);
    }
    for (const NoticeScore& notice : score.notice) {
        all.push_back(
            notice.at ? fmt::format(
                            "Noticed after {}: {}", amount(seconds(*notice.at), "s"),
                            wrongSentence(notice.what))
                      : "Not noticed: " + wrongSentence(notice.what));
    }
    for (const Wrong wrong : score.falseAlarms) {
        all.push_back("Said, and it was not so: " + wrongSentence(wrong));
    }
    for (const CueReaction& reaction : score.reactions) {
        all.push_back(reactionSentence(reaction));
    }
    for (const ReadingError& reading : score.readings) {
        if (std::abs(reading.said - reading.was) > reading.allowed) {
            all.push_back(readingSentence(reading));
        }
    }
    for (const OrderError& error : score.order) {
        all.push_back(orderSentence(error));
    }
    all.push_back(whatPracticeCantTeach());
    return all;
}

std::string whatPracticeCantTeach() {
    return "Practice can't teach the feel of a wheel, nor how hot a plate is to the hand. It is no "
           "certificate; the machine's own instructions come first.";
}

} // namespace seamclock
