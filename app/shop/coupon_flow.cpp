// The part of ShopFlow for strength tests: what is asked one after the other until a series is
// whole, what it comes to, and the foreman's PIN that keeps it.
#include "app/shop/coupon_view.h"
#include "app/shop/shop_errand.h"
#include "app/shop/shop_flow.h"
#include "app/text/numbers.h"
#include "app/text/record_words.h"
#include "app/text/words.h"

#include <cmath>

namespace seamclock {
namespace {

constexpr double kThinnestMm = 0.1;
constexpr double kThickestMm = 1'000;

/// What a joint says of the coupons that were cut from it.
void takeJoint(CouponTested& coupons, const NumberedJoint& joint) {
    coupons.weld = joint.weld;
    coupons.welder = joint.by;
    coupons.procedure = joint.opened->plan.procedure;
    coupons.material = joint.opened->sheets.front().material;
    coupons.thicknessUm = joint.opened->sheets.front().thicknessUm;
}

} // namespace

void ShopFlow::showTests() {
    reading(tr("Strength tests"));
    ask<CouponsRead>(
        [](LogReader& log) { return readCoupons(log); },
        [this](const CouponsRead& all) {
            list(
                couponList(all, names()),
                [this, series = all.series](int index) {
                    showSeries(series.at(series.size() - 1 - static_cast<std::size_t>(index)));
                },
                [this] { beginCoupons(); }, [this] { showStart(); });
        });
}

void ShopFlow::showSeries(const CouponSeries& series) {
    list(
        couponPage(series, names()), {},
        [this, series] {
            if (needsForeman()) {
                askHow(series.now(), series.id);
            }
        },
        [this] { showTests(); });
}

void ShopFlow::beginCoupons() {
    if (!needsForeman()) {
        return;
    }
    ChoiceView view;
    view.title = tr("What was tested?");
    view.under = tr("Coupons cut from a joint, or from a trial that a procedure was tried with.");
    view.choices = {
        choiceOf(tr("Pulled, of a joint"), tr("welded and parent strength"), Sign::Clamp),
        choiceOf(tr("Bent, of a joint"), tr("how far, cracked or not"), Sign::Wheel),
        choiceOf(tr("Pulled, of a trial"), tr("without a joint here"), Sign::Clamp),
        choiceOf(tr("Bent, of a trial"), tr("without a joint here"), Sign::Wheel)};
    view.back = hiddenSlot();
    view.stop = plainSlot(tr("Close"), tr("nothing is kept"));
    view.step = hiddenSlot();
    choose(
        view,
        [this](int index) {
            const bool bend = index % 2 == 1;
            if (index >= 2) {
                askSheets(bend);
                return;
            }
            CouponTested about;
            about.test = bend ? "bend" : "tensile";
            askJoint(about, [this](const CouponTested& of, const NumberedJoint& joint) {
                askHow(of, {}, jointText(joint, names()));
            });
        },
        {}, [this] { showTests(); });
}

void ShopFlow::askJoint(
    const CouponTested& about,
    std::function<void(const CouponTested&, const NumberedJoint&)> then) {
    ValueTask task;
    task.title = tr("Of which joint?");
    task.where = tr("Its number, as it stands on the sheet.");
    task.least = 1;
    task.most = 9'999'999;
    task.decimals = 0;
    task.back = hiddenSlot();
    task.stop = plainSlot(tr("Close"), tr("nothing is kept"));
    m_value->ask(task);
    turnTo(
        m_value,
        [this, about, then = std::move(then)] {
            const auto number = m_value->value();
            if (!number) {
                return;
            }
            const auto joint = static_cast<std::int64_t>(*number);
            askWhich(
                joint,
                [this, joint, about, then](const NumberedJoint& one) {
                    if (!one.opened || one.opened->sheets.empty()) {
                        emit said(tr("There is no joint %1 in this log.").arg(joint));
                        return;
                    }
                    CouponTested of = about;
                    takeJoint(of, one);
                    then(of, one);
                },
                [this] { showTests(); });
        },
        [this] { showTests(); });
}

void ShopFlow::askWhich(
    std::int64_t number, std::function<void(const NumberedJoint&)> then, Press stop) {
    ask<std::vector<NumberedJoint>>(
        [number](LogReader& log) { return jointsNumbered(log, number); },
        [this, number, then = std::move(then),
         stop = std::move(stop)](const std::vector<NumberedJoint>& found) {
            if (found.size() < 2) {
                then(found.empty() ? NumberedJoint() : found.front());
                return;
            }
            ChoiceView view;
            view.title = tr("Which joint %1?").arg(number);
            view.under = tr("Another tablet's log, which was brought in, has that number, too.");
            for (const NumberedJoint& one : found) {
                view.choices.push_back(choiceOf(
                    one.opened ? instantText(one.at) : tr("can't be read"), jointText(one, names()),
                    Sign::Note));
            }
            view.back = hiddenSlot();
            view.stop = plainSlot(tr("Close"), {});
            view.step = hiddenSlot();
            choose(
                view, [found, then](int index) { then(found.at(static_cast<std::size_t>(index))); },
                {}, stop);
        });
}

void ShopFlow::askSheets(bool bend) {
    ChoiceView view;
    view.title = tr("By which procedure was the trial welded?");
    const std::vector<ProcedureDocument> procedures = m_room.procedures();
    for (const ProcedureDocument& one : procedures) {
        ChoiceView::Choice choice;
        choice.text = fromUtf8(one.procedure.title);
        choice.under = fromUtf8(one.procedure.material);
        view.choices.push_back(choice);
    }
    view.back = hiddenSlot();
    view.stop = plainSlot(tr("Close"), tr("nothing is kept"));
    view.step = hiddenSlot();
    choose(
        view,
        [this, bend, procedures](int index) {
            const Procedure& procedure = procedures.at(static_cast<std::size_t>(index)).procedure;
            CouponTested about;
            about.test = bend ? "bend" : "tensile";
            about.material = procedure.material;
            about.procedure = procedure.id;
            askThickness(about);
        },
        {}, [this] { showTests(); });
}

void ShopFlow::askThickness(const CouponTested& about) {
    ValueTask task;
    task.title = tr("Thickness of the sheets");
    task.where = tr("As measured, in millimetres.");
    task.unit = QStringLiteral("mm");
    task.least = kThinnestMm;
    task.most = kThickestMm;
    task.back = hiddenSlot();
    task.stop = plainSlot(tr("Close"), tr("nothing is kept"));
    m_value->ask(task);
    turnTo(
        m_value,
        [this, about] {
            if (const auto thickness = m_value->value()) {
                CouponTested next = about;
                next.thicknessUm = std::llround(*thickness * 1e3);
                askHow(next, {});
            }
        },
        [this] { showTests(); });
}

void ShopFlow::askHow(const CouponTested& about, const std::string& series, const QString& joint) {
    const bool bend = about.test == "bend";
    ChoiceView view;
    view.title = tr("How does the laboratory tell it?");
    view.under = joint;
    if (bend) {
        view.choices = {
            choiceOf(tr("Angles"), tr("each coupon in degrees"), Sign::Wheel),
            choiceOf(tr("Travel of the ram"), tr("each coupon in mm"), Sign::Spring)};
    } else {
        view.choices = {
            choiceOf(tr("Strengths"), tr("each coupon in N/mm²"), Sign::Clamp),
            choiceOf(tr("Forces"), tr("with width and thickness"), Sign::Spring)};
    }
    const int anew = static_cast<int>(view.choices.size());
    if (!series.empty()) { // what was entered stands, but for what is touched
        view.title = tr("What is to be put right?");
        view.choices[0].under = tr("all anew: %1").arg(view.choices[0].under);
        view.choices[1].under = tr("all anew: %1").arg(view.choices[1].under);
        view.choices.push_back(choiceOf(tr("One number"), tr("the others stay"), Sign::Note));
        view.choices.push_back(choiceOf(
            tr("Another joint"), tr("cut from another one; the numbers stay"), Sign::Search));
    }
    view.back = hiddenSlot();
    view.stop = plainSlot(tr("Close"), tr("nothing is kept"));
    view.step = hiddenSlot();
    choose(
        view,
        [this, about, series, bend, anew](int index) {
            if (index == anew) {
                m_draft.emplace(CouponDraft::of(about, series));
                askEntered();
                return;
            }
            if (index > anew) {
                askOtherJoint(about, series);
                return;
            }
            const CouponBy by = bend         ? (index == 1 ? CouponBy::Ram : CouponBy::Angle)
                                : index == 1 ? CouponBy::Load
                                             : CouponBy::Strength;
            beginDraft(CouponDraft(about, by, series));
        },
        {}, [this] { showTests(); });
}

/// Which of the numbers that were entered.
void ShopFlow::askEntered() {
    const std::vector<CouponDraft::Entered> all = m_draft->entered();
    ChoiceView view;
    view.title = tr("Which number?");
    for (const CouponDraft::Entered& one : all) {
        view.choices.push_back(choiceOf(one.text, {}, Sign::Note));
    }
    view.back = hiddenSlot();
    view.stop = plainSlot(tr("Close"), tr("nothing is kept"));
    view.step = hiddenSlot();
    choose(
        view, [this, all](int index) { retype(all.at(static_cast<std::size_t>(index))); }, {},
        [this] {
            m_draft.reset();
            showTests();
        });
}

void ShopFlow::retype(const CouponDraft::Entered& one) {
    ValueTask task = m_draft->taskOf(one);
    task.back = hiddenSlot();
    task.stop = plainSlot(tr("Close"), tr("it stays"));
    m_value->ask(task);
    turnTo(
        m_value,
        [this, one] {
            const auto value = m_value->value();
            if (!value) {
                return;
            }
            if (!m_draft->isBend()) {
                m_draft->replace(one, *value);
                showDraft();
                return;
            }
            ChoiceView view = crackedQuestion(one.at + 1);
            view.back = hiddenSlot();
            choose(
                view,
                [this, one, value = *value](int index) { // both or neither
                    m_draft->replace(one, value);
                    m_draft->replaceCracked(one, index == 1);
                    showDraft();
                },
                {}, {});
        },
        [this] { showDraft(); });
}

/// The joint that they were cut from; its welder, procedure and sheets come with it.
void ShopFlow::askOtherJoint(const CouponTested& about, const std::string& series) {
    askJoint(about, [this, series](const CouponTested& moved, const NumberedJoint& joint) {
        m_draft.emplace(CouponDraft::of(moved, series));
        m_draft->setJoint(
            tr("Joint %1").arg(joint.opened->number) + QStringLiteral(": ") +
            jointText(joint, names()));
        showDraft();
    });
}

void ShopFlow::beginDraft(CouponDraft draft) {
    m_draft.emplace(std::move(draft));
    askCoupon();
}

void ShopFlow::askCoupon() {
    if (m_draft->step() == CouponStep::Cracked) {
        askCracked();
        return;
    }
    ValueTask task = m_draft->task();
    task.back =
        m_draft->isEmpty() ? hiddenSlot() : plainSlot(tr("Take back"), tr("the last number"));
    const bool more = m_draft->step() == CouponStep::Welded;
    task.stop = m_draft->isWhole() ? plainSlot(
                                         more ? tr("No more welded") : tr("No more coupons"),
                                         more ? tr("now the parent sheet") : tr("to the result"))
                                   : plainSlot(tr("Close"), tr("nothing is kept"));
    m_value->ask(task, m_draft->typed());
    turnTo(
        m_value,
        [this] {
            if (const auto value = m_value->value()) {
                m_draft->take(*value);
                askCoupon();
            }
        },
        [this] {
            if (!m_draft->isWhole()) {
                m_draft.reset();
                showTests();
            } else if (m_draft->next()) {
                askCoupon();
            } else {
                showDraft();
            }
        },
        [this] {
            m_draft->takeBack();
            askCoupon();
        });
}

ChoiceView ShopFlow::crackedQuestion(std::size_t number) {
    ChoiceView view;
    view.title = tr("Did it crack or break?");
    view.under = tr("Bend coupon %1.").arg(static_cast<qulonglong>(number));
    view.choices = {
        choiceOf(tr("It held"), tr("no crack seen"), Sign::Shield),
        choiceOf(tr("It cracked"), tr("or broke"), Sign::Look)};
    view.stop = hiddenSlot();
    view.step = hiddenSlot();
    return view;
}

void ShopFlow::askCracked() {
    ChoiceView view = crackedQuestion(m_draft->count());
    view.back = plainSlot(tr("Take back"), m_draft->isByRam() ? tr("the travel") : tr("the angle"));
    choose(
        view,
        [this](int index) {
            m_draft->takeCracked(index == 1);
            askCoupon();
        },
        {}, {},
        [this] {
            m_draft->takeBack();
            askCoupon();
        });
}

void ShopFlow::showDraft() {
    if (m_draft->step() == CouponStep::Cracked) { // left between the two
        askCracked();
        return;
    }
    ListView view;
    view.title = tr("What it comes to");
    view.under = m_draft->series().empty()
                     ? tr("It is kept by a foreman's PIN.")
                     : tr("What was entered before stays in the record, with the reason.");
    if (!m_draft->joint().isEmpty()) { // that they are moved to
        view.under = m_draft->joint();
    }
    view.rows = draftRows(m_draft->tested());
    const auto words = wordRows(m_draft->tested(), names());
    const int first = static_cast<int>(view.rows.size());
    for (const auto& [word, row] : words) {
        view.rows.push_back(row);
    }
    view.back = plainSlot(tr("Another coupon"), tr("go on typing"));
    view.stop = plainSlot(tr("Close"), tr("nothing is kept"));
    view.step = stepSlot(tr("Keep it"));
    if (!m_draft->isWhole()) {
        view.step.look = SlotView::Look::Gone;
    }
    list(
        view,
        [this, first, count = static_cast<int>(words.size())](int index) {
            if (index >= first && index < first + count) {
                index == first ? askStandard() : askWelder();
            }
        },
        [this] {
            if (m_draft->isWhole()) {
                keepDraft();
            }
        },
        [this] {
            m_draft.reset();
            showTests();
        },
        [this] { askCoupon(); });
}

void ShopFlow::askStandard() {
    askWords(
        tr("By which standard was it tested?"), tr("As it stands on the laboratory's paper."),
        tr("the standard"),
        [this](const QString& standard) {
            m_draft->tested().standard = standard.toStdString();
            showDraft();
        },
        [this] { showDraft(); });
}

void ShopFlow::askWelder() {
    ChoiceView view;
    view.title = tr("Who welded the trial?");
    const std::vector<Person> people = welders();
    for (const Person& person : people) {
        view.choices.push_back(choiceOf(plainText(person.name), {}, Sign::Person));
    }
    view.back = hiddenSlot();
    view.stop = plainSlot(tr("Close"), {});
    view.step = hiddenSlot();
    choose(
        view,
        [this, people](int index) {
            m_draft->tested().welder = people.at(static_cast<std::size_t>(index)).id;
            showDraft();
        },
        {}, [this] { showDraft(); });
}

void ShopFlow::keepDraft() {
    if (m_draft->series().empty()) {
        sendDraft();
        return;
    }
    askWords(
        tr("Why is it put right?"), tr("A few words, by the keyboard."), tr("why"),
        [this](const QString& why) {
            m_draft->tested().reason = why.toStdString();
            showDraft(); // what comes back when the PIN's page is left
            sendDraft();
        },
        [this] { showDraft(); });
}

void ShopFlow::sendDraft() {
    const CouponDraft draft = *m_draft;
    const QString what =
        draft.series().empty() ? tr("Coupons are entered.") : tr("Coupons are put right.");
    m_room.ask(what, [this, draft, what](const ProvenPerson& by) {
        errand<std::string>(
            [by, draft](Office& office) -> Result<std::string> {
                if (draft.series().empty()) {
                    return office.noteCoupons(by, draft.tested());
                }
                const auto put = office.correctCoupons(by, draft.series(), draft.tested());
                return put ? Result<std::string>(draft.series())
                           : tl::unexpected<Error>(put.error());
            },
            what,
            [this] {
                m_draft.reset();
                if (page() != nullptr) {
                    showTests();
                }
            });
    });
}

} // namespace seamclock
