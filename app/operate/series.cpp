#include "app/operate/series.h"

#include "core/session/again.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace seamclock {
namespace {

struct Series {
    Q_DECLARE_TR_FUNCTIONS(Series)
};

QString tr(const char* text) {
    return Series::tr(text);
}

bool isAlike(const JobSeam& seam, const Weld& weld) {
    const WeldOpened& opened = weld.opened();
    const auto um = [](double mm) { return std::llround(mm * 1e3); };
    const bool lengths = std::equal(
        seam.lengthsMm.begin(), seam.lengthsMm.end(), opened.lengthsUm.begin(),
        opened.lengthsUm.end(), [&um](double mm, std::int64_t length) { return um(mm) == length; });
    const bool materials = std::equal(
        seam.sheets.begin(), seam.sheets.end(), opened.sheets.begin(), opened.sheets.end(),
        [](const Sheet& one, const Sheet& other) { return one.material == other.material; });
    return lengths && materials && seam.procedure == weld.plan.procedure &&
           um(seam.thicknessMm) == weld.plan.thicknessUm;
}

QString title(const TrialFinding& found, const QString& letter) {
    switch (found.state) {
    case TrialState::Waiting:
        return tr("Trial joint %1 is not released yet.").arg(found.number);
    case TrialState::Refused:
        return tr("Trial joint %1 was not accepted.").arg(found.number);
    case TrialState::Due:
    case TrialState::Released:
        break;
    }
    return tr("No trial joint yet today of this sheet on bench %1.").arg(letter);
}

} // namespace

std::optional<JobSeam> nextAlike(const JobSeams& seams, const Weld& weld) {
    const std::vector<JobSeam> open = seams.openOn(weld.opened().bench);
    const auto found = std::find_if(open.begin(), open.end(), [&](const JobSeam& seam) {
        return isAlike(seam, weld) && seams.of(seam).state == SeamState::Open;
    });
    return found == open.end() ? std::nullopt : std::optional<JobSeam>(*found);
}

std::optional<int> reweldsAllowed(
    const std::vector<JobSeam>& seams, const std::string& job, const std::string& label) {
    const auto found = std::find_if(seams.begin(), seams.end(), [&](const JobSeam& seam) {
        return seam.label == seamOf(label) && isOfJob(seam, job);
    });
    return found == seams.end() ? std::nullopt : found->rewelds;
}

TrialQuestion trialQuestion(const TrialFinding& found, const QString& letter, bool foremanHere) {
    TrialQuestion question;
    ChoiceView& page = question.page;
    page.title = title(found, letter);
    page.under = tr("A trial joint is welded first, tested, and released by the supervisor.");
    const auto add = [&](TrialAnswer answer, const QString& text, const QString& under, Sign sign) {
        ChoiceView::Choice choice;
        choice.text = text;
        choice.under = under;
        choice.sign = sign;
        page.choices.push_back(choice);
        question.answers.push_back(answer);
    };
    if (found.state == TrialState::Waiting && foremanHere) {
        add(TrialAnswer::Release, tr("The foreman releases it"), tr("by his PIN, then go on"),
            Sign::Person);
    }
    add(TrialAnswer::Without, tr("Go on without a trial"), tr("it will be in the record"),
        Sign::Note);
    page.back = hiddenSlot();
    page.stop = plainSlot(tr("Close"), tr("nothing is opened"));
    page.step =
        stepSlot(found.state == TrialState::Due ? tr("Make a trial") : tr("Make another trial"));
    return question;
}

} // namespace seamclock
