#include "tests/app/parts/samples.h"

#include <utility>

#include "app/parts/changeover_field.h"
#include "app/parts/check_drawing.h"
#include "app/parts/lamp.h"
#include "app/parts/number_pad.h"
#include "app/parts/ribbon.h"
#include "app/parts/scale_view.h"
#include "app/parts/seam_picture.h"
#include "app/parts/slot_button.h"
#include "app/parts/strip.h"

namespace seamclock {

namespace {

constexpr QSizeF kLamp(448, 376);
constexpr QSizeF kWideLamp(636, 376);
constexpr QSizeF kTallLamp(768, 372);
constexpr QSizeF kScale(196, 376);
constexpr QSizeF kSeam(580, 376);
constexpr QSizeF kSmallSeam(392, 376);
constexpr QSizeF kCell(348, 90);
constexpr QSizeF kNarrowCell(194, 90);
constexpr QSizeF kStatus(178, 90);
constexpr QSizeF kRibbon(1248, 74);
constexpr QSizeF kRow(1248, 66);
constexpr QSizeF kSide(302, 124);
constexpr QSizeF kStep(618, 124);
constexpr QSizeF kCheck(788, 376);

template <typename P, typename V>
Sample sample(const QString& name, QSizeF units, V view) {
    return {
        name,
        units,
        [view = std::move(view)] {
            auto part = std::make_unique<P>();
            part->show(view);
            return part;
        },
        {}};
}

template <typename P, typename V>
Sample named(const QString& name, QSizeF units, V view) {
    return {
        name,
        units,
        [name, view = std::move(view)] {
            auto part = std::make_unique<P>(name);
            part->show(view);
            return part;
        },
        {}};
}

LampView lamp(
    Tone tone, Mark mark, const char* word, const char* number, const char* under,
    const char* under2) {
    LampView view;
    view.tone = tone;
    view.mark = mark;
    view.word = QString::fromUtf8(word);
    view.number = QString::fromUtf8(number);
    view.under = QString::fromUtf8(under);
    view.under2 = QString::fromUtf8(under2);
    return view;
}

void addLamps(std::vector<Sample>& all) {
    LampView wait = lamp(
        Tone::Normal, Mark::Wait, "Wait", "1:12", "left of 2:30 soak",
        "then: plate out within 8.8 s");
    wait.fraction = 0.52;
    all.push_back(sample<Lamp>("lamp_wait", kLamp, wait));
    all.push_back(sample<Lamp>(
        "lamp_soon", kLamp,
        lamp(
            Tone::Soon, Mark::Soon, "Get ready", "0:07", "to plate out",
            "hands on. Plate out within 8.8 s")));
    all.push_back(sample<Lamp>(
        "lamp_act", kLamp,
        lamp(Tone::Act, Mark::Act, "Now", "0:00", "soak is done", "within 8.8 s")));
    LampView late = lamp(
        Tone::Late, Mark::Late, "Late", "+0:06", "over the 2:30 soak", "plate out within 8.8 s");
    late.framed = true;
    all.push_back(sample<Lamp>("lamp_late", kLamp, late));
    LampView set = lamp(
        Tone::Rest, Mark::Act, "Set", "8", "gap between the tables", "same as the sheet: 8 mm");
    set.calm = true;
    set.unit = "mm";
    set.corner = "5 of 11";
    all.push_back(sample<Lamp>("lamp_set", kLamp, set));
    LampView cooling =
        lamp(Tone::Normal, Mark::Wait, "Wait", "9:40", "left of 13:36 cooling", "out at 14:19");
    cooling.fraction = 0.28;
    all.push_back(sample<Lamp>("lamp_cooling", kWideLamp, cooling));
    LampView tall = wait;
    tall.under = "left of 2:30 soak, then plate out within 8.8 s";
    tall.under2.clear();
    all.push_back(sample<Lamp>("lamp_portrait", kTallLamp, tall));
    all.push_back(sample<Lamp>(
        "lamp_rest", kLamp, lamp(Tone::Rest, Mark::Free, "Free", "", "next: seam 7", "")));
}

void addScales(std::vector<Sample>& all) {
    ScaleView soak;
    soak.title = "Scale A";
    soak.unit = "mm";
    soak.value = "1.5";
    soak.set = 1.5;
    soak.low = 0;
    soak.high = 2.5;
    soak.max = 40;
    soak.division = 0.5;
    soak.lowText = "0.0";
    soak.highText = "2.5";
    soak.setText = "set";
    all.push_back(sample<ScalePanel>("scale_soak", kScale, soak));
    ScaleView cooling = soak;
    cooling.title = "Scale B";
    cooling.value = "15.5";
    cooling.set = 15.5;
    cooling.low = 14.5;
    cooling.high = 17;
    cooling.lowText = "14.5";
    cooling.highText = "17.0";
    cooling.readings = {15.5, 15.0};
    all.push_back(sample<ScalePanel>("scale_cooling", kScale, cooling));
    ScaleView free = soak;
    free.free = true;
    free.value = "free";
    all.push_back(sample<ScalePanel>("scale_free", kScale, free));
}

void addSeams(std::vector<Sample>& all) {
    SeamView soak;
    soak.phase = SeamView::Phase::Soak;
    soak.thicknessMm = 15;
    soak.beadMm = 2;
    soak.beadNowMm = 2;
    soak.beadText = "bead 2.0 mm";
    soak.plateText = "213 °C";
    soak.plateC = 213;
    all.push_back(sample<SeamPicture>("seam_soak", kSeam, soak));
    SeamView align = soak;
    align.phase = SeamView::Phase::Align;
    align.beadNowMm = 0;
    all.push_back(sample<SeamPicture>("seam_align", kSeam, align));
    SeamView prepare = soak;
    prepare.phase = SeamView::Phase::Prepare;
    prepare.beadNowMm = 0;
    prepare.plateText.clear();
    prepare.note = "PE-HD, 15 mm";
    all.push_back(sample<SeamPicture>("seam_prepare", kSeam, prepare));
    SeamView change = soak;
    change.phase = SeamView::Phase::Changeover;
    change.progress = 0.7;
    all.push_back(sample<SeamPicture>("seam_changeover", kSeam, change));
    SeamView build = soak;
    build.phase = SeamView::Phase::BuildUp;
    build.progress = 0.3;
    all.push_back(sample<SeamPicture>("seam_build_up", kSeam, build));
    SeamView cooling = soak;
    cooling.phase = SeamView::Phase::Cooling;
    cooling.beadNowMm = 2.6;
    all.push_back(sample<SeamPicture>("seam_cooling", kSmallSeam, cooling));
    SeamView release = cooling;
    release.phase = SeamView::Phase::Release;
    all.push_back(sample<SeamPicture>("seam_release", kSmallSeam, release));
    SeamView look = cooling;
    look.phase = SeamView::Phase::Look;
    look.beadText = "bead width";
    all.push_back(sample<SeamPicture>("seam_look", kSmallSeam, look));
    SeamView thin = soak;
    thin.thicknessMm = 3;
    thin.beadMm = 0.5;
    thin.beadNowMm = 0.5;
    thin.beadText = "bead 0.5 mm";
    thin.overhangMm = 60;
    all.push_back(sample<SeamPicture>("seam_thin", kSeam, thin));
    SeamView thick = soak;
    thick.thicknessMm = 50;
    thick.beadMm = 3;
    thick.beadNowMm = 3;
    all.push_back(sample<SeamPicture>("seam_thick", kSmallSeam, thick));
}

RibbonView ribbonView() {
    using Piece = RibbonView::Piece;
    Piece align;
    align.is = Piece::Is::Done;
    align.name = "align";
    align.time = "1:09";
    align.weight = 69;
    Piece soak;
    soak.is = Piece::Is::Now;
    soak.name = "soak";
    soak.time = "2:30";
    soak.weight = 150;
    soak.fraction = 0.52;
    Piece change;
    change.name = "changeover";
    change.sign = Sign::Changeover;
    change.weight = 9;
    Piece build = change;
    build.name = "build-up";
    build.sign = Sign::BuildUp;
    Piece cooling;
    cooling.name = "cooling";
    cooling.time = "19:26";
    cooling.weight = 153;
    cooling.brokenBefore = true;
    return {{align, soak, change, build, cooling}};
}

CheckRowView checkRow(const std::vector<const char*>& names, std::size_t now) {
    CheckRowView view;
    for (std::size_t i = 0; i < names.size(); ++i) {
        CheckRowView::Cell cell;
        cell.name = QString::fromUtf8(names[i]);
        cell.done = i < now;
        cell.now = i == now;
        cell.overridden = i == 1;
        view.cells.push_back(cell);
    }
    return view;
}

void addRibbons(std::vector<Sample>& all) {
    RibbonView soak = ribbonView();
    all.push_back(sample<Ribbon>("ribbon_soak", kRibbon, soak));
    RibbonView cooling = soak;
    using Is = RibbonView::Piece::Is;
    cooling.pieces[1].is = Is::Late;
    cooling.pieces[2].is = Is::Done;
    cooling.pieces[3].is = Is::Done;
    cooling.pieces[4].is = Is::Now;
    cooling.pieces[4].fraction = 0.28;
    all.push_back(sample<Ribbon>("ribbon_cooling", kRibbon, cooling));
    all.push_back(sample<Ribbon>("ribbon_portrait", QSizeF(768, 70), soak));
    all.push_back(sample<CheckRow>(
        "check_row", kRow,
        checkRow(
            {"wait", "plate", "drag", "edges", "gap", "sheet 1", "gap × 2", "sheet 2", "in line",
             "draught", "scale"},
            4)));
    all.push_back(sample<CheckRow>(
        "check_row_cut", QSizeF(768, 66),
        checkRow(
            {"wait", "plate", "drag", "film off", "edges", "plate wiped", "gap", "sheet 1",
             "gap × 2", "sheet 2", "in line", "draught", "scale"},
            7)));
}

StripCellView cell(const char* letter, Mark mark, Tone tone, const char* phase, const char* time) {
    StripCellView view;
    view.letter = letter;
    view.mark = mark;
    view.tone = tone;
    view.phase = QString::fromUtf8(phase);
    view.time = QString::fromUtf8(time);
    return view;
}

void addStrip(std::vector<Sample>& all) {
    StripCellView a = cell("A", Mark::Wait, Tone::Normal, "soak", "1:12");
    a.sign = Sign::Soak;
    a.fraction = 0.52;
    a.selected = true;
    all.push_back(named<StripCell>("cell_a", kCell, a));
    StripCellView b = cell("B", Mark::Soon, Tone::Soon, "cooling", "9:40");
    b.sign = Sign::Cooling;
    all.push_back(named<StripCell>("cell_b", kCell, b));
    all.push_back(named<StripCell>("cell_c", kCell, cell("C", Mark::Free, Tone::Rest, "free", "")));
    StripCellView d = cell("D", Mark::Late, Tone::Late, "changeover", "11 s");
    d.sign = Sign::Changeover;
    all.push_back(named<StripCell>("cell_d", kCell, d));
    all.push_back(named<StripCell>("cell_narrow", kNarrowCell, a));
    StatusView ok;
    ok.clock = "14:05";
    ok.sound = "sound ok";
    all.push_back(sample<StatusTile>("status_ok", kStatus, ok));
    StatusView mute = ok;
    mute.sound = "no sound";
    mute.soundOk = false;
    all.push_back(sample<StatusTile>("status_no_sound", kStatus, mute));
}

SlotView slot(const char* text, const char* under, SlotView::Look look) {
    SlotView view;
    view.text = QString::fromUtf8(text);
    view.under = QString::fromUtf8(under);
    view.look = look;
    return view;
}

void addButtons(std::vector<Sample>& all) {
    SlotView gone = slot("Take back", "10 s are over", SlotView::Look::Gone);
    gone.sign = Sign::Back;
    all.push_back(named<SlotButton>("slot_gone", kSide, gone));
    SlotView before = slot("Check before", "edges clean", SlotView::Look::Plain);
    before.sign = Sign::Back;
    all.push_back(named<SlotButton>("slot_back", kSide, before));
    all.push_back(named<SlotButton>(
        "slot_stop", kSide, slot("Stop this weld", "with a reason", SlotView::Look::Plain)));
    SlotView waiting = slot("Plate out", "at the signal", SlotView::Look::Waiting);
    waiting.large = true;
    waiting.pedal = true;
    all.push_back(named<SlotButton>("slot_waiting", kStep, waiting));
    SlotView act = slot("Plate out", "", SlotView::Look::Act);
    act.large = true;
    act.pedal = true;
    all.push_back(named<SlotButton>("slot_act", kStep, act));
    SlotView gap = act;
    gap.text = "First sheet is clamped";
    all.push_back(named<SlotButton>("slot_long", kStep, gap));
    SlotView white = act;
    white.look = SlotView::Look::White;
    white.text = "Faces together";
    all.push_back(named<SlotButton>("slot_white", kStep, white));
    SlotView off = slot("Print", "one page", SlotView::Look::Plain);
    off.enabled = false;
    off.sign = Sign::Print;
    all.push_back(named<SlotButton>("slot_off", kSide, off));
}

ChangeoverView changeover(double elapsed, bool late) {
    ChangeoverView view;
    view.elapsedMs = elapsed;
    view.limitMs = 8800;
    view.late = late;
    view.order = late ? "Late: faces together" : "Plate out, faces together";
    view.number = QString::number(static_cast<int>(elapsed / 1000));
    view.of = late ? "s, limit 8.8 s" : "of 8.8 s";
    view.limitWord = "limit";
    view.seam.thicknessMm = 15;
    view.seam.beadMm = 2;
    view.seam.beadNowMm = 2;
    view.seam.plateC = 213;
    view.seam.progress = 0.55;
    return view;
}

void addChangeover(std::vector<Sample>& all) {
    const QSizeF wide(1280, 800);
    all.push_back(sample<ChangeoverField>("changeover", wide, changeover(3400, false)));
    ChangeoverView late = changeover(11200, true);
    late.remark = "The skin may be too cold to weld. Go on: recorded as out of limits. Or stop and "
                  "cut out.";
    all.push_back(sample<ChangeoverField>("changeover_late", wide, late));
    ChangeoverView upright = changeover(3400, false);
    upright.bottomUnits = 226;
    all.push_back(sample<ChangeoverField>("changeover_portrait", QSizeF(800, 1280), upright));
}

void addNumbers(std::vector<Sample>& all) {
    NumberView plate;
    plate.title = "Plate temperature, bench C";
    plate.where = "Read on the face. Place 2 of 3: middle.";
    plate.unit = "°C";
    plate.text = "212";
    plate.mark = Mark::Done;
    plate.value = 212;
    plate.places = {{"209 °C", true, false}, {"2", false, true}, {"3", false, false}};
    plate.low = 200;
    plate.high = 220;
    plate.target = 210;
    plate.lowText = "200";
    plate.highText = "220";
    plate.targetText = "210";
    plate.allowed = "allowed 200 to 220 °C";
    plate.below = "cold";
    plate.above = "hot";
    all.push_back(sample<NumberField>("number_plate", QSizeF(640, 534), plate));
    NumberView hot = plate;
    hot.text = "225";
    hot.value = 225;
    hot.mark = Mark::Late;
    all.push_back(sample<NumberField>("number_hot", QSizeF(640, 534), hot));
    NumberView bead;
    bead.title = "Bead width";
    bead.where = "Place 1 of 3: front.";
    bead.unit = "mm";
    all.push_back(sample<NumberField>("number_empty", QSizeF(640, 534), bead));
    all.push_back(
        {"pad", QSizeF(592, 534), [] { return std::make_unique<NumberPad>(QLatin1Char('.')); }});
}

const char* valueOf(const QString& check) {
    if (check == QLatin1String("gap")) {
        return "8 mm";
    }
    if (check == QLatin1String("clamping_gap")) {
        return "16 mm";
    }
    if (check == QLatin1String("edges_meet")) {
        return "0.5 mm";
    }
    if (check == QLatin1String("plate_warm")) {
        return "10 min";
    }
    if (check == QLatin1String("bead")) {
        return "4.2 mm";
    }
    if (check == QLatin1String("drag")) {
        return "1.0 mm";
    }
    if (check == QLatin1String("force")) {
        return "16.0 mm";
    }
    return "";
}

} // namespace

std::vector<Sample> partSamples() {
    std::vector<Sample> all;
    addLamps(all);
    addScales(all);
    addSeams(all);
    addRibbons(all);
    addStrip(all);
    addButtons(all);
    addChangeover(all);
    addNumbers(all);
    for (const QString& check : drawnChecks()) {
        CheckDrawing drawing;
        drawing.check = check;
        drawing.value = QString::fromUtf8(valueOf(check));
        all.push_back(sample<CheckPicture>("check_" + check, kCheck, drawing));
    }
    return all;
}

// German and Finnish words of the trade, from memory: what matters here is that they are long.
std::vector<Sample> longSamples() {
    std::vector<Sample> all;
    LampView ready = lamp(
        Tone::Soon, Mark::Soon, "Bereitmachen", "12:40", "bis zum Herausziehen des Heizelements",
        "Heizelement heraus innerhalb von 8,8 s");
    all.push_back(sample<Lamp>("long_lamp", kLamp, ready));
    all.back().words = {"Bereitmachen", "12:40", "bis zum Herausziehen des Heizelements"};
    LampView late = ready;
    late.tone = Tone::Late;
    late.mark = Mark::Late;
    late.word = "Zeit überschritten";
    late.number = "+12:40";
    late.framed = true;
    all.push_back(sample<Lamp>("long_lamp_late", kLamp, late));
    all.back().words = {"Zeit überschritten", "+12:40", "bis zum Herausziehen des Heizelements"};
    LampView set = ready;
    set.tone = Tone::Rest;
    set.calm = true;
    set.mark = Mark::Act;
    set.word = "Einstellen";
    set.number = "16,5";
    set.unit = "mm";
    set.corner = "10 von 11";
    all.push_back(sample<Lamp>("long_lamp_set", kLamp, set));
    all.back().words = {"Einstellen", "16,5", "mm", "10 von 11"};

    SlotView stop =
        slot("Schweißvorgang abbrechen", "mit Angabe des Grundes", SlotView::Look::Plain);
    all.push_back(named<SlotButton>("long_stop", kSide, stop));
    all.back().words = {"Schweißvorgang abbrechen", "mit Angabe des Grundes"};
    SlotView back = stop;
    back.text = "Vorheriger Arbeitsschritt";
    back.sign = Sign::Back;
    back.look = SlotView::Look::Gone;
    all.push_back(named<SlotButton>("long_back", kSide, back));
    all.back().words = {"Vorheriger Arbeitsschritt", "mit Angabe des Grundes"};
    SlotView step =
        slot("Heizelement herausgezogen", "sobald das Signal ertönt", SlotView::Look::Waiting);
    step.large = true;
    step.pedal = true;
    step.pedalText = "Fußschalter";
    all.push_back(named<SlotButton>("long_step", kStep, step));
    all.back().words = {"Heizelement herausgezogen", "sobald das Signal ertönt", "Fußschalter"};
    SlotView act = step;
    act.look = SlotView::Look::Act;
    act.under.clear();
    act.text = "Ensimmäinen levy on kiinnitetty";
    all.push_back(named<SlotButton>("long_act", kStep, act));
    all.back().words = {"Ensimmäinen levy on kiinnitetty", "Fußschalter"};

    StripCellView wide = cell("D", Mark::Act, Tone::Act, "Vorbereitung läuft", "10 von 11");
    wide.sign = Sign::Prepare;
    all.push_back(named<StripCell>("long_cell", kCell, wide));
    all.back().words = {"D", "Vorbereitung läuft", "10 von 11"};
    StripCellView narrow = wide;
    narrow.phase = "Vorbereitung";
    all.push_back(named<StripCell>("long_cell_narrow", kNarrowCell, narrow));
    all.back().words = {"D", "Vorbereitung", "10 von 11"};
    StripCellView free = cell("C", Mark::Free, Tone::Rest, "frei, als nächste Naht 17", "");
    all.push_back(named<StripCell>("long_cell_free", kCell, free));
    all.back().words = {"C", "frei, als nächste Naht 17"};
    all.push_back(named<StripCell>("long_cell_free_narrow", kNarrowCell, free));
    all.back().words = {"C", "frei, als nächste Naht 17"};
    StatusView status;
    status.clock = "14:05";
    status.sound = "kein Tonsignal";
    status.soundOk = false;
    all.push_back(sample<StatusTile>("long_status", kStatus, status));
    all.back().words = {"14:05", "kein Tonsignal"};

    RibbonView ribbon = ribbonView();
    ribbon.pieces[0].name = "Angleichen";
    ribbon.pieces[1].name = "Anwärmen";
    ribbon.pieces[4].name = "Abkühlen";
    all.push_back(sample<Ribbon>("long_ribbon", kRibbon, ribbon));
    all.back().words = {"Angleichen", "Anwärmen", "Abkühlen"};
    all.push_back(sample<Ribbon>("long_ribbon_portrait", QSizeF(768, 70), ribbon));
    all.back().words = {"Angleichen", "Anwärmen", "Abkühlen"};
    all.push_back(sample<CheckRow>(
        "long_check_row", kRow,
        checkRow(
            {"Aufwärmen", "Temperatur", "Leerlauf", "Schutzfolie", "Kanten", "Spaltmaß",
             "erste Platte", "doppelter Spalt", "zweite Platte", "Ausrichtung", "Zugluft"},
            5)));
    all.back().words = {"Spaltmaß"};
    return all;
}

} // namespace seamclock
