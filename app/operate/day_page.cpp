#include "app/operate/day_page.h"

#include "app/parts/sign.h"
#include "app/parts/type.h"

#include <QPainter>
#include <algorithm>

namespace seamclock {

JointRow::JointRow(const QString& name, QWidget* parent) : PressPart(name, parent) {}

void JointRow::show(const JointRowView& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    setAccessibleName(spoken({view.number, view.seam, view.time, view.reason}));
    update();
}

void JointRow::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double pen = px(m_view.chosen ? 4.5 : 1.5);
    const QRectF box = QRectF(rect()).adjusted(pen / 2, pen / 2, -pen / 2, -pen / 2);
    painter.setPen(QPen(m_view.chosen ? theme().text : theme().edge, pen));
    painter.setBrush(theme().panel);
    painter.drawRoundedRect(box, px(14), px(14));
    const double mark = px(42);
    paintMark(
        painter, QRectF(px(18), (height() - mark) / 2, mark, mark), m_view.mark,
        theme().tone(m_view.tone).ink, theme());
    const double x = px(76);
    const double wide = width() - x - px(18);
    painter.setPen(theme().text);
    const QRectF upper(x, px(8), wide, height() * 0.42);
    drawTabular(
        painter, upper, Qt::AlignLeft | Qt::AlignVCenter, m_view.number, px(30), kNumberWeight);
    const double past = tabularWidth(m_view.number, px(30), kNumberWeight) + px(12);
    const double clock = tabularWidth(m_view.time, px(21), kPlainWeight);
    const double seam = wide - past - clock - px(10);
    drawLine(
        painter, upper.adjusted(past, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, m_view.seam,
        fittedSize(m_view.seam, px(24), px(15), seam, kLabelWeight), kLabelWeight);
    painter.setPen(theme().textSoft);
    drawTabular(
        painter, upper, Qt::AlignRight | Qt::AlignVCenter, m_view.time, px(21), kPlainWeight);
    const QRectF lower(x, height() * 0.47, wide, height() * 0.49 - px(6));
    const double sign = m_view.remarks ? px(26) : 0;
    if (m_view.remarks) {
        paintSign(
            painter, QRectF(x, lower.center().y() - sign / 2, sign, sign), Sign::Note,
            theme().textSoft);
    }
    painter.setPen(m_view.tone == Tone::Late ? theme().tone(Tone::Late).ink : theme().textSoft);
    const double left = sign > 0 ? sign + px(8) : 0;
    const Wrapped reason = wrapped(
        m_view.reason, textPx(23), px(13), wide - left, 2, kPlainWeight, lower.height() - px(6));
    drawWrapped(
        painter, lower.adjusted(left, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, reason,
        kPlainWeight);
}

JointPanel::JointPanel(QWidget* parent) : Part("jointPanel", parent) {}

void JointPanel::show(const JointView& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    setAccessibleName(view.verdict + ". " + view.reason);
    update();
}

void JointPanel::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(
        theme().kind == ThemeKind::Contrast ? QPen(theme().edge, px(2)) : QPen(Qt::NoPen));
    painter.setBrush(theme().panel);
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), px(14), px(14));
    const double x = px(22);
    const double wide = width() - 2 * x;
    const double mark = px(54);
    paintMark(
        painter, QRectF(x, px(18), mark, mark), m_view.mark, theme().tone(m_view.tone).ink,
        theme());
    const double past = x + mark + px(18);
    const double beside = width() - past - x;
    painter.setPen(m_view.tone == Tone::Late ? theme().tone(Tone::Late).ink : theme().text);
    drawLine(
        painter, QRectF(past, px(8), beside, px(46)), Qt::AlignLeft | Qt::AlignVCenter,
        m_view.verdict, fittedSize(m_view.verdict, px(38), px(20), beside, kWordWeight),
        kWordWeight);
    painter.setPen(theme().text);
    drawLine(
        painter, QRectF(past, px(52), beside, px(30)), Qt::AlignLeft | Qt::AlignVCenter,
        m_view.reason, fittedSize(m_view.reason, px(23), px(13), beside, kLabelWeight),
        kLabelWeight);
    painter.setPen(theme().textSoft);
    drawLine(
        painter, QRectF(x, px(86), wide, px(30)), Qt::AlignLeft | Qt::AlignVCenter, m_view.about,
        fittedSize(m_view.about, px(21), px(13), wide, kPlainWeight), kPlainWeight);

    // Set against done, in as many columns as fit side by side.
    constexpr double kSet = 0.42; // of a column's width
    constexpr double kDone = 0.71;
    const double top = px(126);
    const double bottom = height() - px(16);
    const bool narrow = width() < px(620);
    const auto count = static_cast<int>(m_view.rows.size());
    const int columns = narrow || count <= 8 ? 1 : 2;
    const int lines = (count + columns - 1) / columns + 1;
    const double row = std::min(px(40), (bottom - top) / std::max(lines, 1));
    const double column = (wide - (columns - 1) * px(24)) / columns;
    const double size = std::min(px(22), row * 0.6);
    for (int c = 0; c < columns; ++c) {
        const double left = x + c * (column + px(24));
        const auto cell = [&](int line, double from, double share, const QString& text,
                              QFont::Weight weight, const QColor& ink) {
            painter.setPen(ink);
            const QRectF box(left + column * from, top + line * row, column * share, row);
            drawTabular(
                painter, box, Qt::AlignLeft | Qt::AlignVCenter, text,
                fittedSize(text, size, px(11), box.width() - px(14), weight), weight);
        };
        cell(0, kSet, kDone - kSet, tr("set"), kPlainWeight, theme().textSoft);
        cell(0, kDone, 1 - kDone, tr("done"), kLabelWeight, theme().text);
        painter.setPen(QPen(theme().hairline, px(1.5)));
        painter.drawLine(QPointF(left, top + row), QPointF(left + column, top + row));
        for (int line = 1; line < lines; ++line) {
            const int index = c * (lines - 1) + line - 1;
            if (index >= count) {
                break;
            }
            const JointView::Row& shown = m_view.rows[static_cast<std::size_t>(index)];
            cell(line, 0, kSet, shown.item, kPlainWeight, theme().textSoft);
            cell(line, kSet, kDone - kSet, shown.set, kPlainWeight, theme().text);
            cell(
                line, kDone, 1 - kDone, shown.actual, kNumberWeight,
                shown.out ? theme().tone(Tone::Late).ink : theme().text);
        }
    }
}

DayPage::DayPage(QWidget* parent)
    : Page("day", parent), m_panel(keep(new JointPanel(this))),
      m_nothing(keep(new Sentence("dayNothing", this))) {
    for (int i = 0; i < kRows; ++i) {
        auto* row = keep(new JointRow(QString("joint%1").arg(i), this));
        m_rows.push_back(row);
        connect(row, &JointRow::pressed, this, [this, i] { emit rowChosen(i); });
    }
}

void DayPage::showList(const std::vector<JointRowView>& rows, bool older, bool newer) {
    m_shown = std::min(static_cast<int>(rows.size()), kRows);
    for (int i = 0; i < m_shown; ++i) {
        m_rows[static_cast<std::size_t>(i)]->show(rows[static_cast<std::size_t>(i)]);
    }
    SlotView back;
    back.text = tr("Newer");
    back.look = newer ? SlotView::Look::Plain : SlotView::Look::Gone;
    SlotView stop;
    stop.text = tr("Older");
    stop.look = older ? SlotView::Look::Plain : SlotView::Look::Gone;
    SlotView step;
    step.text = tr("Back to the bench");
    step.large = true;
    m_back->show(back);
    m_stop->show(stop);
    m_step->show(step);
    m_nothing->setText({});
    place();
}

void DayPage::showJoint(const JointView& view) {
    m_panel->show(view);
}

void DayPage::showNothing(const QString& why) {
    showList({}, false, false);
    m_nothing->setText(why);
    place();
}

void DayPage::place() {
    const Frame frame = frameOf(units(), FrameKind::Page, look().mirrored);
    const QRectF body = frame.body;
    constexpr double kRow = 106;
    constexpr double kGap = 8;
    QRectF list = body;
    QRectF panel = body;
    if (frame.portrait) {
        list.setHeight(body.height() * 0.46);
        panel.setTop(list.bottom() + 12);
    } else {
        list.setWidth(body.width() * 0.36);
        panel.setLeft(list.right() + 12);
    }
    m_perLeaf = std::clamp(static_cast<int>((list.height() + kGap) / (kRow + kGap)), 1, kRows);
    for (int i = 0; i < kRows; ++i) {
        const QRectF box(list.x(), list.y() + i * (kRow + kGap), list.width(), kRow);
        put(m_rows[static_cast<std::size_t>(i)],
            i < std::min(m_shown, m_perLeaf) ? handed(box) : QRectF());
    }
    const bool nothing = !m_nothing->text().isEmpty();
    put(m_nothing, nothing ? body.adjusted(6, 0, -6, -body.height() / 2) : QRectF());
    put(m_panel, nothing || m_shown == 0 ? QRectF() : handed(panel));
    placeSlots(frame);
}

} // namespace seamclock
