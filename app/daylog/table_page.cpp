#include "app/daylog/table_page.h"

#include "app/parts/brush.h"
#include "app/parts/mark.h"
#include "app/parts/type.h"

#include <QPainter>
#include <algorithm>

namespace seamclock {
namespace {

constexpr double kRow = 44;
constexpr double kHead = 40;
constexpr double kSide = 20;

} // namespace

TablePart::TablePart(QWidget* parent) : Part("recordTable", parent) {}

void TablePart::show(const TableView& view, int from) {
    if (view == m_view && from == m_from) {
        return;
    }
    m_view = view;
    m_from = from;
    QStringList words;
    const auto until = std::min(
        m_view.rows.size(), static_cast<std::size_t>(from) + static_cast<std::size_t>(room()));
    for (std::size_t i = static_cast<std::size_t>(from); i < until; ++i) {
        QStringList cells;
        for (const TableView::Cell& cell : m_view.rows[i].cells) {
            cells << cell.text;
            if (!cell.struck.isEmpty()) {
                cells << tr("before: %1").arg(cell.struck);
            }
        }
        words << cells.join(QStringLiteral(", "));
    }
    setAccessibleName(words.join(QStringLiteral(". ")));
    update();
}

int TablePart::room() const {
    const double row = px(kRow) * std::max(1.0, metrics().text);
    return std::max(1, static_cast<int>((height() - px(kHead) - px(16)) / row));
}

void TablePart::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    drawPanel(painter, rect(), px(14), theme().panel, theme().hairline, px(1.5));
    const double left = px(kSide);
    const double wide = width() - 2 * left;
    std::vector<double> places{left};
    for (const double width : m_view.widths) {
        places.push_back(places.back() + width * wide);
    }
    const double gap = px(12);
    for (int c = 0; c < m_view.columns.size(); ++c) {
        const QRectF box(
            places[static_cast<std::size_t>(c)], px(6),
            places[static_cast<std::size_t>(c) + 1] - places[static_cast<std::size_t>(c)] - gap,
            px(kHead - 8));
        painter.setPen(theme().textSoft);
        drawLine(
            painter, box, Qt::AlignLeft | Qt::AlignVCenter, m_view.columns[c],
            fittedSize(m_view.columns[c], px(19), px(11), box.width(), kPlainWeight), kPlainWeight);
    }
    const int rows = room();
    const double high = (height() - px(kHead) - px(12)) / rows;
    for (int r = 0; r < rows; ++r) {
        const auto index = static_cast<std::size_t>(m_from + r);
        if (index >= m_view.rows.size()) {
            break;
        }
        const TableView::Row& row = m_view.rows[index];
        const double top = px(kHead) + r * high;
        painter.setPen(QPen(theme().hairline, px(1.2)));
        painter.drawLine(QPointF(left, top), QPointF(left + wide, top));
        for (std::size_t c = 0; c < row.cells.size() && c + 1 < places.size(); ++c) {
            const TableView::Cell& cell = row.cells[c];
            const bool last = c + 1 == row.cells.size();
            const double right = last ? left + wide : places[c + 1] - gap;
            QRectF box(places[c], top, right - places[c], high);
            const QFont::Weight weight = row.isHead  ? kWordWeight
                                         : cell.soft ? kPlainWeight
                                                     : kLabelWeight;
            const QColor ink = cell.out    ? theme().tone(Tone::Late).ink
                               : cell.soft ? theme().textSoft
                                           : theme().text;
            if (cell.out) {
                const double mark = std::min(px(22), high * 0.6);
                paintMark(
                    painter, QRectF(box.left(), box.center().y() - mark / 2, mark, mark),
                    Mark::Late, ink, theme());
                box.setLeft(box.left() + mark + px(7));
            }
            const double size = std::min(textPx(row.isHead ? 22 : 21), high * 0.62);
            if (!cell.struck.isEmpty()) { // the original, struck, before what stands now
                const double most = box.width() * (cell.text.isEmpty() ? 1 : 0.6);
                const double small = fittedSize(cell.struck, size, px(10), most, kPlainWeight);
                const double words = std::min(most, tabularWidth(cell.struck, small, kPlainWeight));
                painter.setPen(theme().textSoft);
                drawTabular(
                    painter, QRectF(box.left(), top, words, high), Qt::AlignLeft | Qt::AlignVCenter,
                    cell.struck, small, kPlainWeight);
                painter.setPen(QPen(theme().text, px(2)));
                painter.drawLine(
                    QPointF(box.left() - px(2), box.center().y()),
                    QPointF(box.left() + words + px(2), box.center().y()));
                box.setLeft(box.left() + words + px(10));
            }
            painter.setPen(ink);
            const Wrapped words =
                wrapped(cell.text, size, px(11), box.width(), 2, weight, high - px(12));
            drawWrapped(painter, box, Qt::AlignLeft | Qt::AlignVCenter, words, weight);
        }
    }
}

TablePage::TablePage(QWidget* parent) : Page("record", parent), m_part(keep(new TablePart(this))) {
    for (int i = 0; i < kTabs; ++i) {
        auto* tab = keep(new SlotButton(QString("recordTab%1").arg(i), this));
        m_tabs.push_back(tab);
        connect(tab, &SlotButton::pressed, this, [this, i] { emit tabPressed(i); });
    }
}

void TablePage::show(const QStringList& tabs, int at, const TableView& table) {
    m_from = at == m_tab && table.columns == m_table.columns ? m_from : 0;
    m_names = tabs;
    m_tab = at;
    m_table = table;
    place();
}

void TablePage::turn(int by) {
    const int room = m_part->room();
    const int next = m_from + by * room;
    if (next >= 0 && next < static_cast<int>(m_table.rows.size())) {
        m_from = next;
        refresh();
    }
}

void TablePage::refresh() {
    for (int i = 0; i < kTabs; ++i) {
        SlotView tab = hiddenSlot();
        if (i < m_names.size()) {
            tab = plainSlot(m_names[i]);
            tab.look = i == m_tab ? SlotView::Look::Key : SlotView::Look::Plain;
        }
        m_tabs[static_cast<std::size_t>(i)]->show(tab);
    }
    const auto count = static_cast<int>(m_table.rows.size());
    const int room = m_part->room();
    m_from = std::clamp(m_from, 0, std::max(0, count - 1));
    m_part->show(m_table, m_from);
    SlotView back = plainSlot(tr("Rows before"));
    SlotView more = plainSlot(tr("More rows"), tr("%1 in all").arg(count));
    if (m_from == 0) {
        back.look = SlotView::Look::Gone;
    }
    if (m_from + room >= count) {
        more.look = SlotView::Look::Gone;
    }
    m_back->show(back);
    m_stop->show(more);
    m_step->show(stepSlot(tr("Back to the log"), false));
}

void TablePage::place() {
    const Frame frame = frameOf(units(), FrameKind::Page, look().mirrored);
    const QRectF body = frame.body;
    constexpr double kTab = 92;
    constexpr double kGap = 10;
    const double wide = (body.width() - (kTabs - 1) * kGap) / kTabs;
    for (int i = 0; i < kTabs; ++i) {
        put(m_tabs[static_cast<std::size_t>(i)],
            i < m_names.size() ? handed(QRectF(body.x() + i * (wide + kGap), body.y(), wide, kTab))
                               : QRectF());
    }
    put(m_part, body.adjusted(0, kTab + 10, 0, 0));
    placeSlots(frame);
    refresh();
}

} // namespace seamclock
