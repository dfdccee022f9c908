#include "app/operate/entry_page.h"

#include "app/pages/line_style.h"
#include "app/text/numbers.h"

#include <QLineEdit>

namespace seamclock {
namespace {

QString shortText(double value) {
    return numberText(value, value == static_cast<int>(value) ? 0 : 1);
}

/// "400 + 350 mm".
QString lengthsText(const std::vector<double>& lengthsMm) {
    if (lengthsMm.empty()) {
        return EntryPage::tr("Type it in");
    }
    QStringList each;
    for (const double one : lengthsMm) {
        each.append(shortText(one));
    }
    return each.join(" + ") + " mm";
}

} // namespace

EntryPage::EntryPage(QWidget* parent)
    : Page("entry", parent), m_title(keep(new Sentence("entryTitle", this))),
      m_trouble(keep(new Sentence("entryTrouble", this))),
      m_procedure(keep(new SlotButton("entryProcedure", this))),
      m_thickness(keep(new SlotButton("entryThickness", this))),
      m_length(keep(new SlotButton("entryLength", this))),
      m_ambient(keep(new SlotButton("entryAmbient", this))),
      m_maker(new QLineEdit(this)), m_batches{new QLineEdit(this), new QLineEdit(this)} {
    m_trouble->setQuiet(true);
    m_maker->setObjectName("entryMaker");
    m_batches[0]->setObjectName("entryBatch1");
    m_batches[1]->setObjectName("entryBatch2");
    for (QLineEdit* line : {m_maker, m_batches[0], m_batches[1]}) {
        line->setMaxLength(60);
    }
    connect(m_procedure, &SlotButton::pressed, this, &EntryPage::procedureAsked);
    connect(m_thickness, &SlotButton::pressed, this, [this] {
        emit numberAsked(NumberFor::SheetThickness);
    });
    connect(
        m_length, &SlotButton::pressed, this, [this] { emit numberAsked(NumberFor::SeamLength); });
    connect(m_ambient, &SlotButton::pressed, this, [this] {
        emit numberAsked(NumberFor::ShopTemperature);
    });
}

void EntryPage::show(const EntryDraft& draft, const QString& procedure, const QString& trouble) {
    // Not once for all: the language may have changed.
    m_maker->setPlaceholderText(tr("maker of the sheets"));
    m_batches[0]->setPlaceholderText(tr("batch, first sheet"));
    m_batches[1]->setPlaceholderText(tr("batch, second sheet"));
    for (QLineEdit* line : {m_maker, m_batches[0], m_batches[1]}) {
        line->setAccessibleName(line->placeholderText());
    }
    m_title->setText(tr("Which sheets, and how long is the seam?"));
    m_trouble->setText(trouble);
    bool asked = false; // one is blue: the first that is missing
    const auto tile =
        [&asked](SlotButton* button, const QString& text, const QString& under, bool there) {
            SlotView view;
            view.text = text;
            view.under = under;
            view.look = there || asked ? SlotView::Look::Plain : SlotView::Look::Act;
            asked = asked || !there;
            button->show(view);
        };
    const auto number = [](const std::optional<double>& value, const QString& unit) {
        return value ? shortText(*value) + " " + unit : tr("Type it in");
    };
    tile(
        m_procedure, procedure.isEmpty() ? tr("Choose") : procedure, tr("procedure"),
        !procedure.isEmpty());
    tile(
        m_thickness, number(draft.thicknessMm, "mm"), tr("thickness"),
        draft.thicknessMm.has_value());
    tile(
        m_length, lengthsText(draft.lengthsMm),
        draft.lengthsMm.size() > 1 ? tr("lengths in this clamping") : tr("length of the seam"),
        !draft.lengthsMm.empty());
    tile(
        m_ambient, number(draft.ambientC, "°C"), tr("shop temperature"),
        draft.ambientC.has_value());
    SlotView back;
    back.text = tr("Other seam");
    back.under = tr("back to the job");
    back.sign = Sign::Back;
    m_back->show(back);
    SlotView more;
    more.text = tr("Add a length");
    more.under = tr("a seam in the same clamping");
    more.look = draft.lengthsMm.empty() ? SlotView::Look::Hidden : SlotView::Look::Plain;
    m_stop->show(more);
    const bool whole =
        draft.procedure >= 0 && draft.thicknessMm && !draft.lengthsMm.empty() && draft.ambientC;
    SlotView step;
    step.text = tr("Weld card");
    step.large = true;
    step.look = whole ? SlotView::Look::Act : SlotView::Look::Gone;
    m_step->show(step);
}

void EntryPage::takeLines(EntryDraft& draft) const {
    draft.maker = m_maker->text().trimmed();
    draft.batches[0] = m_batches[0]->text().trimmed();
    draft.batches[1] = m_batches[1]->text().trimmed();
}

void EntryPage::lookChanged() {
    for (QLineEdit* line : {m_maker, m_batches[0], m_batches[1]}) {
        styleLine(*line, look());
    }
}

void EntryPage::place() {
    const Frame frame = frameOf(units(), FrameKind::Page, look().mirrored);
    const QRectF body = frame.body;
    put(m_title, QRectF(body.x() + 6, body.y(), body.width() - 12, 70));
    constexpr double kRow = 96;
    constexpr double kGap = 10;
    const double top = body.y() + 76;
    const double half = (body.width() - kGap) / 2;
    const auto row = [&](int index) { return top + index * (kRow + kGap); };
    put(m_procedure, QRectF(body.x(), row(0), body.width(), kRow));
    if (frame.portrait) {
        put(m_thickness, QRectF(body.x(), row(1), half, kRow));
        put(m_length, QRectF(body.x() + half + kGap, row(1), half, kRow));
        put(m_ambient, QRectF(body.x(), row(2), half, kRow));
        put(m_maker, QRectF(body.x() + half + kGap, row(2), half, kRow));
        put(m_batches[0], QRectF(body.x(), row(3), half, kRow));
        put(m_batches[1], QRectF(body.x() + half + kGap, row(3), half, kRow));
        put(m_trouble, QRectF(body.x() + 6, row(4), body.width() - 12, 100));
    } else {
        const double third = (body.width() - 2 * kGap) / 3;
        const auto column = [&](int index) { return body.x() + index * (third + kGap); };
        put(m_thickness, QRectF(column(0), row(1), third, kRow));
        put(m_length, QRectF(column(1), row(1), third, kRow));
        put(m_ambient, QRectF(column(2), row(1), third, kRow));
        put(m_maker, QRectF(column(0), row(2), third, kRow));
        put(m_batches[0], QRectF(column(1), row(2), third, kRow));
        put(m_batches[1], QRectF(column(2), row(2), third, kRow));
        put(m_trouble, QRectF(body.x() + 6, row(3), body.width() - 12, body.bottom() - row(3)));
    }
    placeSlots(frame);
}

} // namespace seamclock
