#include "app/first/first_view.h"

#include "app/text/language.h"

#include <QCoreApplication>
#include <QSettings>
#include <QStringList>
#include <utility>

namespace seamclock {
namespace {

struct First {
    Q_DECLARE_TR_FUNCTIONS(First)
};

QString tr(const char* text) {
    return First::tr(text);
}

ChoiceView::Choice tile(const QString& text, const QString& under, Sign sign) {
    ChoiceView::Choice choice;
    choice.text = text;
    choice.under = under;
    choice.sign = sign;
    return choice;
}

void add(FirstQuestion& question, FirstItem item, ChoiceView::Choice choice) {
    question.items.push_back(item);
    question.page.choices.push_back(std::move(choice));
}

void addDemo(FirstQuestion& question, DemoFolder demo) {
    switch (demo) {
    case DemoFolder::None:
        add(question, FirstItem::Demo,
            tile(
                tr("Look round the demo shop"), tr("invented; in a folder of its own"),
                Sign::Look));
        break;
    case DemoFolder::Whole:
        add(question, FirstItem::Demo,
            tile(tr("Into the demo shop"), tr("invented; in a folder of its own"), Sign::Look));
        add(question, FirstItem::RemoveDemo,
            tile(tr("Remove the demo shop"), tr("its folder, nothing else"), Sign::Erase));
        break;
    case DemoFolder::Half:
        add(question, FirstItem::RemoveDemo,
            tile(tr("Remove the demo shop"), tr("what is left of it"), Sign::Erase));
        break;
    case DemoFolder::Stranger: {
        ChoiceView::Choice taken = tile(
            tr("Look round the demo shop"), tr("something else stands in its place"), Sign::Look);
        taken.enabled = false;
        add(question, FirstItem::Demo, std::move(taken));
        break;
    }
    }
}

/// Of a step that is kept: what there is.
QString keptText(const FirstState& state, FirstStep step) {
    switch (step) {
    case FirstStep::Screen:
        return tr("chosen");
    case FirstStep::Shop:
        return state.shop;
    case FirstStep::Foreman:
        return state.foreman;
    case FirstStep::Bench:
        return state.bench;
    case FirstStep::Operator:
        return state.welder;
    }
    return {};
}

QString stepWord(FirstStep step) {
    switch (step) {
    case FirstStep::Screen:
        return tr("Language and units");
    case FirstStep::Shop:
        return tr("Name of the shop");
    case FirstStep::Foreman:
        return tr("The foreman");
    case FirstStep::Bench:
        return tr("A bench");
    case FirstStep::Operator:
        return tr("Somebody who welds");
    }
    return {};
}

Sign stepSign(FirstStep step) {
    switch (step) {
    case FirstStep::Screen:
        return Sign::Menu;
    case FirstStep::Shop:
        return Sign::Note;
    case FirstStep::Foreman:
        return Sign::Shield;
    case FirstStep::Bench:
        return Sign::Spring;
    case FirstStep::Operator:
        return Sign::Person;
    }
    return Sign::Note;
}

FirstItem itemOf(FirstStep step) {
    switch (step) {
    case FirstStep::Screen:
        return FirstItem::Screen;
    case FirstStep::Shop:
        return FirstItem::Shop;
    case FirstStep::Foreman:
        return FirstItem::Foreman;
    case FirstStep::Bench:
        return FirstItem::Bench;
    case FirstStep::Operator:
        return FirstItem::Operator;
    }
    return FirstItem::Screen;
}

const char* codeOf(FirstStep step) {
    switch (step) {
    case FirstStep::Screen:
        return "screen";
    case FirstStep::Shop:
        return "shop";
    case FirstStep::Foreman:
        return "foreman";
    case FirstStep::Bench:
        return "bench";
    case FirstStep::Operator:
        return "operator";
    }
    return "";
}

} // namespace

bool isKept(const FirstState& state, FirstStep step) {
    switch (step) {
    case FirstStep::Screen:
        return state.screen;
    case FirstStep::Shop:
        return !state.shop.isEmpty();
    case FirstStep::Foreman:
        return !state.foreman.isEmpty();
    case FirstStep::Bench:
        return !state.bench.isEmpty();
    case FirstStep::Operator:
        return !state.welder.isEmpty();
    }
    return false;
}

std::optional<FirstStep> nextStep(const FirstState& state) {
    for (const FirstStep step : kFirstSteps) {
        if (!isKept(state, step) && state.later.count(step) == 0) {
            return step;
        }
    }
    return std::nullopt;
}

QString meaningOf(FirstStep step) {
    switch (step) {
    case FirstStep::Screen:
        return tr("Both can be changed at any time: touch the clock.");
    case FirstStep::Shop:
        return tr("It stands on records, reports and cards. Later: papers have none.");
    case FirstStep::Foreman:
        return tr("The foreman enters people, keeps benches, seals the day. Later: no bench can be "
                  "kept, so there is no weld card.");
    case FirstStep::Bench:
        return tr("Later: without a bench there is no weld card. The demo shop has two.");
    case FirstStep::Operator:
        return tr("Steps are written in this name. Later: the log names nobody.");
    }
    return {};
}

ChoiceView screenQuestion(const Preferences& now) {
    ChoiceView page;
    page.title = stepWord(FirstStep::Screen);
    page.under = meaningOf(FirstStep::Screen);
    for (const Language language : kLanguages) {
        ChoiceView::Choice choice = tile(ownNameOf(language), {}, Sign::Note);
        choice.chosen = language == now.language;
        page.choices.push_back(std::move(choice));
    }
    ChoiceView::Choice metric = tile(tr("mm, N, °C"), tr("of cards"), Sign::Spring);
    metric.chosen = now.units == UnitSystem::Metric;
    ChoiceView::Choice imperial = tile(tr("inch, lbf, °F"), tr("of cards"), Sign::Spring);
    imperial.chosen = now.units == UnitSystem::Imperial;
    page.choices.push_back(std::move(metric));
    page.choices.push_back(std::move(imperial));
    page.back = hiddenSlot();
    page.stop = hiddenSlot();
    page.step = stepSlot(tr("Go on"));
    return page;
}

FirstQuestion guideQuestion(const FirstState& state) {
    FirstQuestion question;
    question.page.title = tr("Seamclock guides you. It decides nothing.");
    question.page.under = tr("The machine's own instructions, the standard in force, local rules "
                             "and a qualified welder decide.");
    addDemo(question, state.demo);
    question.page.back = hiddenSlot();
    question.page.stop = plainSlot(tr("End the program"));
    question.page.step = stepSlot(tr("Set up the shop"));
    return question;
}

FirstQuestion overviewQuestion(const FirstState& state) {
    FirstQuestion question;
    const bool ready = isKept(state, FirstStep::Bench);
    question.page.title = ready ? tr("The shop is set up. Next: a weld card.")
                                : tr("There is no bench yet, so no weld card.");
    question.page.under =
        ready ? tr("The rest is in Set-up and under \"Who is it?\": touch the clock.")
              : tr("What was left for later is done here.");
    for (const FirstStep step : kFirstSteps) {
        const bool kept = isKept(state, step);
        ChoiceView::Choice choice =
            tile(stepWord(step), kept ? keptText(state, step) : tr("not yet"), stepSign(step));
        choice.enabled = !kept || step == FirstStep::Screen || step == FirstStep::Shop;
        add(question, itemOf(step), std::move(choice));
    }
    addDemo(question, state.demo);
    question.page.back = hiddenSlot();
    question.page.stop = plainSlot(tr("End the program"));
    question.page.step = !ready       ? stepSlot(stepWord(FirstStep::Bench))
                         : state.done ? stepSlot(tr("Back to the bench"), false)
                                      : stepSlot(tr("A weld card"));
    return question;
}

ChoiceView foremanFirst(FirstStep step) {
    ChoiceView page;
    page.title = step == FirstStep::Bench ? tr("A bench is kept in a foreman's name.")
                                          : tr("People are entered by a foreman.");
    page.under = meaningOf(step);
    page.choices.push_back(tile(tr("Enter the foreman"), tr("name and PIN"), Sign::Shield));
    page.back = hiddenSlot();
    page.stop = plainSlot(tr("Later"));
    page.step = hiddenSlot();
    return page;
}

FirstState readFirst(const QString& file) {
    FirstState state;
    if (file.isEmpty()) {
        return state;
    }
    const QSettings settings(file, QSettings::IniFormat);
    state.screen = settings.value("first/screen", false).toBool();
    state.begun = settings.value("first/begun", false).toBool();
    state.done = settings.value("first/done", false).toBool();
    const QStringList later = settings.value("first/later").toStringList();
    for (const FirstStep step : kFirstSteps) {
        if (later.contains(QLatin1String(codeOf(step)))) {
            state.later.insert(step);
        }
    }
    return state;
}

void writeFirst(const FirstState& state, const QString& file) {
    if (file.isEmpty()) {
        return;
    }
    QSettings settings(file, QSettings::IniFormat);
    settings.setValue("first/screen", state.screen);
    settings.setValue("first/begun", state.begun);
    settings.setValue("first/done", state.done);
    QStringList later;
    for (const FirstStep step : state.later) {
        later << QLatin1String(codeOf(step));
    }
    settings.setValue("first/later", later);
}

} // namespace seamclock
