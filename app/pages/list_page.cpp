#include "app/pages/list_page.h"

#include "app/pages/line_style.h"
#include "app/parts/brush.h"
#include "app/parts/sign.h"
#include "app/parts/type.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QPainter>
#include <algorithm>

namespace seamclock {

ListRow::ListRow(const QString& name, QWidget* parent) : PressPart(name, parent) {}

void ListRow::show(const ListRowView& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    const QString tick = !view.ticked ? QString() : *view.ticked ? tr("ticked") : tr("not ticked");
    setAccessibleName(spoken({view.text, view.second, view.third, tick}));
    update();
}

std::optional<Mark> ListRow::markShown() const {
    if (m_view.ticked) {
        return *m_view.ticked ? std::optional(Mark::Done) : std::nullopt;
    }
    return m_view.mark;
}

QRectF ListRow::markPlace() const {
    const bool narrow = m_view.second.isEmpty() && m_view.third.isEmpty() && width() < px(300);
    const double side = px(42);
    return {px(narrow ? 12 : 20), (height() - side) / 2, side, side};
}

void ListRow::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Theme& look = theme();
    const bool chosen = m_view.ticked.value_or(m_view.chosen);
    drawPanel(
        painter, rect(), px(14), m_view.enabled ? look.panel : QColor(Qt::transparent),
        chosen ? look.text : look.edge, px(chosen ? 4.5 : 1.5));
    const bool alone = m_view.second.isEmpty() && m_view.third.isEmpty();
    const QRectF place = markPlace();
    double left = place.left();
    const double side = place.width();
    if (m_view.ticked) {
        if (*m_view.ticked) {
            paintMark(painter, place, Mark::Done, look.tone(Tone::Normal).ink, look);
        } else {
            painter.setPen(QPen(look.edge, px(3)));
            painter.setBrush(Qt::NoBrush);
            painter.drawRoundedRect(place.adjusted(px(4), px(4), -px(4), -px(4)), px(6), px(6));
        }
        left += side + px(16);
    } else if (m_view.mark) {
        paintMark(painter, place, *m_view.mark, look.tone(m_view.tone).ink, look);
        left += side + px(16);
    } else if (m_view.sign) {
        paintSign(painter, place, *m_view.sign, look.textSoft);
        left += side + px(16);
    }
    struct Line {
        QString text;
        double size;
        QFont::Weight weight;
        QColor ink;
    };
    const QColor soft = look.textSoft;
    std::vector<Line> lines;
    lines.push_back(
        {m_view.text, std::min(textPx(28), px(34)), kLabelWeight,
         m_view.enabled ? look.text : soft});
    if (!m_view.second.isEmpty()) {
        lines.push_back({m_view.second, std::min(textPx(20), px(26)), kPlainWeight, soft});
    }
    if (!m_view.third.isEmpty()) {
        const QColor ink = m_view.tone == Tone::Rest ? look.text : look.tone(m_view.tone).ink;
        lines.push_back({m_view.third, std::min(textPx(20), px(26)), kLabelWeight, ink});
    }
    const double wide = width() - left - px(alone ? 10 : 16);
    const double top = px(8);
    const double pitch = (height() - 2 * top) / static_cast<double>(lines.size());
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const Line& line = lines[i];
        painter.setPen(line.ink);
        const QRectF box(left, top + pitch * static_cast<double>(i), wide, pitch);
        const Wrapped fitted = wrapped(
            line.text, std::min(line.size, pitch * 0.86), px(13), wide, alone ? 2 : 1, line.weight,
            pitch - px(4));
        drawWrapped(painter, box, Qt::AlignLeft | Qt::AlignVCenter, fitted, line.weight);
    }
}

ListPage::ListPage(QWidget* parent)
    : Page("list", parent), m_title(keep(new Sentence("listTitle", this))),
      m_under(keep(new Sentence("listUnder", this))), m_line(new QLineEdit(this)),
      m_more(keep(new SlotButton("listMore", this))) {
    m_under->setQuiet(true);
    m_line->setObjectName("listLine");
    m_line->setMaxLength(400);
    m_line->hide();
    connect(m_line, &QLineEdit::textEdited, this, &ListPage::typed);
    connect(m_line, &QLineEdit::textChanged, this, [this] { fitLine(*m_line, look()); });
    connect(m_line, &QLineEdit::returnPressed, this, [this] { emit slotPressed(SlotPlace::Step); });
    for (int i = 0; i < kRows; ++i) {
        auto* row = keep(new ListRow(QString("listRow%1").arg(i), this));
        m_rows.push_back(row);
        connect(row, &ListRow::pressed, this, [this, i] {
            const int index = m_leaf * m_perLeaf + i;
            if (index < static_cast<int>(m_view.rows.size())) {
                emit chosen(index);
            }
        });
    }
    connect(m_more, &SlotButton::pressed, this, [this] {
        const auto count = static_cast<int>(m_view.rows.size());
        m_leaf = (m_leaf + 1) * m_perLeaf < count ? m_leaf + 1 : 0;
        place();
    });
}

void ListPage::show(const ListView& view) {
    if (view == m_view) {
        return;
    }
    if (view.title != m_view.title) {
        m_leaf = 0;
    }
    m_view = view;
    place();
}

void ListPage::setLine(const QString& text) {
    m_line->setText(text);
}

QString ListPage::lineText() const {
    return m_line->text().trimmed();
}

void ListPage::takeKeys() {
    if (m_view.line) {
        m_line->setFocus();
    }
}

void ListPage::lookChanged() {
    styleLine(*m_line, look());
    fitLine(*m_line, look());
}

void ListPage::refresh() {
    m_title->setText(m_view.title);
    m_under->setLate(!m_view.trouble.isEmpty());
    m_under->setText(m_view.trouble.isEmpty() ? m_view.under : m_view.trouble);
    m_line->setPlaceholderText(m_view.line.value_or(QString()));
    m_line->setAccessibleName(m_line->placeholderText());
    m_back->show(m_view.back);
    m_stop->show(m_view.stop);
    m_step->show(m_view.step);
    const auto count = static_cast<int>(m_view.rows.size());
    for (int i = 0; i < kRows; ++i) {
        const int index = m_leaf * m_perLeaf + i;
        if (i < m_perLeaf && index < count) {
            m_rows[static_cast<std::size_t>(i)]->show(m_view.rows[static_cast<std::size_t>(index)]);
        }
    }
    const int leaves = (count + m_perLeaf - 1) / m_perLeaf;
    m_more->show(plainSlot(tr("More: %1 of %2").arg(m_leaf + 1).arg(std::max(1, leaves))));
}

void ListPage::keyPressEvent(QKeyEvent* event) {
    // It comes only through the line, which has told it already.
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        event->accept();
        return;
    }
    Page::keyPressEvent(event);
}

void ListPage::place() {
    const Frame frame = frameOf(units(), FrameKind::Page, look().mirrored);
    const QRectF body = frame.body;
    const bool told = !m_view.under.isEmpty() || !m_view.trouble.isEmpty();
    constexpr double kBetween = 8;
    double top = body.y();
    put(m_title, QRectF(body.x() + 6, top, body.width() - 12, 54));
    top += 56;
    // A refusal has more to say; where the screen lies there are rows to keep room for.
    const double under = !m_view.trouble.isEmpty() ? 92
                         : frame.portrait ? 4 + quietHeight(m_view.under, body.width() - 12)
                                          : 50;
    put(m_under, told ? QRectF(body.x() + 6, top - 2, body.width() - 12, under - 2) : QRectF());
    top += told ? under : 0;
    put(m_line, m_view.line ? QRectF(body.x(), top, body.width(), 90) : QRectF());
    top += m_view.line ? 90 + kBetween : 0;
    fitLine(*m_line, look());

    const bool threeLines =
        std::any_of(m_view.rows.begin(), m_view.rows.end(), [](const auto& row) {
            return !row.third.isEmpty() && !row.second.isEmpty();
        });
    const double row = threeLines ? 98 : 92;
    const int columns = frame.portrait ? 1 : m_view.columns;
    const int lines =
        std::max(1, static_cast<int>((body.bottom() - top + kBetween) / (row + kBetween)));
    const auto count = static_cast<int>(m_view.rows.size());
    m_leaves = count > std::min(kRows, lines * columns);
    // the last place of a leaf is the way to the next
    m_perLeaf = std::max(1, std::min(kRows, lines * columns) - (m_leaves ? 1 : 0));
    if (m_leaf * m_perLeaf >= count) {
        m_leaf = 0;
    }
    const double width = (body.width() - (columns - 1) * kBetween) / columns;
    const auto box = [&](int i) {
        const int line = i / columns;
        return QRectF(
            body.x() + (i % columns) * (width + kBetween), top + line * (row + kBetween), width,
            row);
    };
    for (int i = 0; i < kRows; ++i) {
        const bool there = i < m_perLeaf && m_leaf * m_perLeaf + i < count;
        put(m_rows[static_cast<std::size_t>(i)], there ? box(i) : QRectF());
    }
    put(m_more, m_leaves ? box(m_perLeaf) : QRectF());
    placeSlots(frame);
    refresh();
}

} // namespace seamclock
