#include "app/operate/questions.h"

#include "app/text/words.h"
#include "core/weld/intent.h"

#include <QCoreApplication>
#include <QKeySequence>
#include <string_view>

namespace seamclock {
namespace {

struct Questions {
    Q_DECLARE_TR_FUNCTIONS(Questions)
};

QString tr(const char* text) {
    return Questions::tr(text);
}

bool isOfASheet(std::string_view check) {
    return check == "film_off" || check == "edges_planed" || check == "first_sheet" ||
           check == "second_sheet";
}

} // namespace

Reasons reasonsFor(const AskReason& asked, const QString& coolingShort, bool foremanHere) {
    Reasons reasons;
    reasons.page.back = hiddenSlot();
    const auto add = [&](const char* choice, const QString& text) {
        reasons.answers.emplace_back(choice, text);
        ChoiceView::Choice one;
        one.text = text;
        reasons.page.choices.push_back(one);
    };
    switch (asked.what) {
    case ReasonFor::Stop:
        reasons.page.title = tr("Stop this weld? Say why.");
        reasons.page.under = tr("The joint is cut out and kept in the list as stopped.");
        if (asked.code == kStopInAlignment) {
            reasons.page.back = plainSlot(tr("Turned too far"), tr("and back: it goes on"));
        }
        add("bead_missing", tr("Bead missing at one end"));
        add("sheet_slipped", tr("A sheet slipped"));
        add("changeover_late", tr("Changeover too late"));
        add("plate_cold_or_dirty", tr("Plate cold or dirty"));
        add("wrong_sheet", tr("Wrong sheet or setting"));
        add("bench_trouble", tr("Trouble with the bench"));
        add("power_was_off", tr("Power was off"));
        add("another", tr("Another reason"));
        break;
    case ReasonFor::EarlyRelease:
        reasons.page.title = tr("Cooling is %1 short. Why?").arg(coolingShort);
        reasons.page.under = tr("It will be out of limits.");
        add("foreman_decided", tr("The foreman decided"));
        add("bench_needed", tr("The bench is needed"));
        add("cut_out_anyway", tr("It will be cut out"));
        add("another", tr("Another reason"));
        break;
    case ReasonFor::Owed:
        if (asked.code == "bead_not_measured") {
            reasons.page.title = tr("The bead is not measured. Say why.");
            add("not_reachable", tr("The place can't be reached"));
            add("no_gauge", tr("No gauge at hand"));
            add("another", tr("Another reason"));
            break;
        }
        reasons.page.title = tr("Out of limits: %1. Say why.").arg(findingWord(asked.code));
        add("hand_was_slow", tr("The hand was slow"));
        add("plate_stuck", tr("The plate stuck"));
        add("disturbed", tr("Somebody disturbed it"));
        add("wrong_tap", tr("A wrong tap"));
        add("bench_trouble", tr("Trouble with the bench"));
        add("another", tr("Another reason"));
        break;
    case ReasonFor::Trial:
        if (!foremanHere) {
            reasons.page.title = tr("Only a foreman releases a trial joint.");
            reasons.page.under = tr("No foreman has a PIN on this tablet.");
            break;
        }
        reasons.page.title = tr("The trial joint: what does the supervisor say?");
        reasons.page.under = tr("The foreman's PIN is asked next; the record keeps the name.");
        add("trial_held", tr("It held: go on with the series"));
        add("trial_failed", tr("Not good: cut it out"));
        break;
    case ReasonFor::CheckLeftOut:
        if (isForemansCheck(asked.code)) {
            reasons.page.back = plainSlot(tr("Stop this weld"), tr("say why"));
            if (!foremanHere) {
                reasons.page.title = tr("Only a foreman may go on here.");
                reasons.page.under = tr("No foreman has a PIN on this tablet.");
                break;
            }
            reasons.page.title = tr("The foreman may go on. Why?");
            reasons.page.under = tr("The foreman's PIN is asked next; the record keeps the name.");
            add("cannot_be_set", asked.code == kForemansScale ? tr("No other bench can take it")
                                                              : tr("The plate can't be set so"));
            add("no_tool", tr("No gauge at hand"));
            add("trial", tr("It is a trial"));
            add("another", tr("Another reason"));
            break;
        }
        reasons.page.title = tr("Go on without this check? Say why.");
        reasons.page.under = tr("It will be in the record.");
        // In a series a sheet is in somebody's hands only where its film and edges are done.
        if (isOfASheet(asked.code)) {
            add(kOtherMaterial, tr("It is another material"));
            reasons.page.choices.back().under = tr("the foreman's PIN is asked");
        }
        if (asked.code == "shielded") {
            add(kOtherAmbient, tr("Another shop temperature"));
            reasons.page.choices.back().under = tr("type it in");
        }
        add("not_needed", tr("Not needed for this weld"));
        add("cannot_be_set", tr("The bench can't be set so"));
        add("no_tool", tr("No tool at hand"));
        add("another", tr("Another reason"));
        break;
    }
    reasons.page.stop = plainSlot(tr("Close"), tr("back to the weld"));
    reasons.page.step = hiddenSlot();
    return reasons;
}

/// "English, Deutsch, …": each in itself, so that who can't read the screen finds it.
QString ownNames() {
    QStringList all;
    for (const Language one : kLanguages) {
        all.append(ownNameOf(one));
    }
    return all.join(", ");
}

Menu menuFor(const Preferences& now, const QString& atBench, bool demo) {
    Menu menu;
    const QString themes[] = {tr("dark"), tr("light"), tr("high contrast")};
    menu.page.title = tr("Day, people, screen and hands");
    const auto add = [&menu](MenuItem item, const QString& text, const QString& under, Sign sign) {
        menu.items.push_back(item);
        ChoiceView::Choice one;
        one.text = text;
        one.under = under;
        one.sign = sign;
        menu.page.choices.push_back(one);
    };
    add(MenuItem::Day, tr("The day's joints"), tr("list and records"), Sign::Search);
    add(MenuItem::Card, tr("Weld card"), tr("of the weld on this bench"), Sign::Note);
    add(MenuItem::Heat, tr("What if"), tr("heat in the sheet, estimated"), Sign::PlateTemperature);
    add(MenuItem::People, atBench.isEmpty() ? tr("Who is it?") : atBench,
        tr("people, PINs, the day's seal"), Sign::Person);
    add(MenuItem::Setup, tr("Set-up"), tr("procedures, benches"), Sign::Spring);
    add(MenuItem::Shop, tr("Jobs and shop"), tr("plan, tests, charts, due"), Sign::Note);
    add(MenuItem::Practice, tr("Practice"), tr("a bench that harms nobody"), Sign::Wheel);
    add(MenuItem::Help, tr("Help"), tr("the guide, what alarms mean"), Sign::Remark);
    add(MenuItem::Speech, ownNameOf(now.language), ownNames(), Sign::Note);
    if (demo) {
        add(MenuItem::LeaveDemo, tr("Leave the demo"), tr("to the shop's own log"), Sign::Back);
        add(MenuItem::RemoveDemo, tr("Remove the demo"), tr("its folder, nothing else"),
            Sign::Erase);
    } else {
        add(MenuItem::FirstSteps, tr("First steps"), tr("shop's name, demo shop"), Sign::Note);
    }
    add(MenuItem::Theme, tr("Screen: %1").arg(themes[static_cast<int>(now.theme)]),
        tr("dark, light, high contrast"), Sign::Look);
    add(MenuItem::Hand, now.mirrored ? tr("Left-handed") : tr("Right-handed"),
        tr("where the buttons stand"), Sign::Wheel);
    add(MenuItem::Pedal,
        now.pedalKey == 0 ? tr("Foot switch: none")
                          : tr("Foot switch: %1").arg(QKeySequence(now.pedalKey).toString()),
        tr("the key that it types"), Sign::Pedal);
    add(MenuItem::Words, tr("Words: %1 %").arg(qRound(now.text * 100)), tr("100, 125, 150, 200 %"),
        Sign::Note);
    // A small tablet has the last on a second leaf.
    add(MenuItem::Units,
        now.units == UnitSystem::Metric ? tr("Card in mm, N, °C") : tr("Card in inch, lbf, °F"),
        tr("readings stay the scale's"), Sign::Spring);
    add(MenuItem::Motion, now.lessMotion ? tr("Less motion") : tr("Even motion"),
        tr("of the changeover's front"), Sign::Changeover);
    menu.page.narrow = true;
    menu.page.back = hiddenSlot();
    menu.page.stop = plainSlot(tr("End the program"), tr("open welds stay"));
    menu.page.step = stepSlot(tr("Back to the bench"), false);
    return menu;
}

namespace {

/// The next size; after the largest the smallest.
double largerWords(double now) {
    for (const double size : kTextSizes) {
        if (size > now) {
            return size;
        }
    }
    return kTextSizes[0];
}

} // namespace

Preferences changedBy(MenuItem item, Preferences now) {
    switch (item) {
    case MenuItem::Theme:
        now.theme = now.theme == ThemeKind::Dark    ? ThemeKind::Light
                    : now.theme == ThemeKind::Light ? ThemeKind::Contrast
                                                    : ThemeKind::Dark;
        break;
    case MenuItem::Hand:
        now.mirrored = !now.mirrored;
        break;
    case MenuItem::Motion:
        now.lessMotion = !now.lessMotion;
        break;
    case MenuItem::Words:
        now.text = largerWords(now.text);
        break;
    case MenuItem::Speech: {
        const auto place = static_cast<std::size_t>(now.language);
        now.language = kLanguages[(place + 1) % kLanguages.size()];
        break;
    }
    case MenuItem::Units:
        now.units = now.units == UnitSystem::Metric ? UnitSystem::Imperial : UnitSystem::Metric;
        break;
    case MenuItem::Day:
    case MenuItem::Card:
    case MenuItem::Heat:
    case MenuItem::People:
    case MenuItem::Setup:
    case MenuItem::Shop:
    case MenuItem::Practice:
    case MenuItem::FirstSteps:
    case MenuItem::LeaveDemo:
    case MenuItem::RemoveDemo:
    case MenuItem::Help:
    case MenuItem::Pedal:
        break;
    }
    return now;
}

// The levels' names are the standards' (EN 16296, DVS 2202; as trade.md has them, not re-read).
Closer closerQuestion(const Weld& weld) {
    Closer closer;
    const Graded* given = nullptr;
    int photos = 0;
    for (const Event& event : weld.events) {
        if (const auto* graded = std::get_if<Graded>(&event.d)) {
            given = graded;
        }
        photos += std::holds_alternative<PhotoAdded>(event.d) ? 1 : 0;
    }
    const auto add = [&](const char* scheme, const char* level, const QString& text) {
        ChoiceView::Choice choice;
        choice.text = text;
        choice.under = QString::fromUtf8(scheme);
        choice.sign = Sign::Look;
        choice.chosen = given != nullptr && given->scheme == scheme && given->level == level;
        closer.page.choices.push_back(choice);
        closer.grades.emplace_back(scheme, level);
    };
    for (const char* level : {"B", "C", "D"}) {
        add("EN 16296", level, tr("Level %1").arg(QLatin1String(level)));
    }
    for (const char* level : {"I", "II", "III"}) {
        add("DVS 2202", level, tr("Group %1").arg(QLatin1String(level)));
    }
    ChoiceView::Choice photo;
    photo.text = tr("A photo");
    photo.under = photos == 0 ? tr("where something is wrong") : tr("%1 kept").arg(photos);
    photo.sign = Sign::Camera;
    closer.page.choices.push_back(photo);
    closer.page.narrow = true;
    closer.page.title = tr("How does the bead look to you?");
    closer.page.under = tr("Your own grade. It changes nothing of the verdict.");
    closer.page.back = hiddenSlot();
    closer.page.stop = plainSlot(tr("Close"), tr("back to the weld"));
    closer.page.step = hiddenSlot();
    return closer;
}

ChoiceView procedureQuestion(const std::vector<ProcedureDocument>& procedures) {
    ChoiceView view;
    view.title = tr("Which procedure?");
    for (const ProcedureDocument& one : procedures) {
        ChoiceView::Choice choice;
        choice.text = fromUtf8(one.procedure.title);
        choice.under = fromUtf8(one.procedure.material);
        view.choices.push_back(choice);
    }
    view.back = hiddenSlot();
    view.stop = plainSlot(tr("Close"), tr("nothing is kept"));
    view.step = hiddenSlot();
    return view;
}

} // namespace seamclock
