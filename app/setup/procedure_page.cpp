#include "app/setup/procedure_page.h"

#include "app/parts/brush.h"
#include "app/parts/sign.h"
#include "app/parts/type.h"

#include <QPainter>
#include <algorithm>

namespace seamclock {

ValueTable::ValueTable(const QString& name, QWidget* parent) : Part(name, parent) {}

void ValueTable::show(const ProcedureView& view) {
    m_values = view.values;
    m_source = view.source;
    m_gaps = view.gaps;
    QStringList words;
    for (const ValueRow& row : m_values) {
        words << row.what + QStringLiteral(": ") + row.value + QStringLiteral(", ") + row.standing;
    }
    setAccessibleName(words.join(QStringLiteral("; ")));
    update();
}

void ValueTable::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Theme& look = theme();
    drawPanel(
        painter, rect(), px(14), look.panel,
        look.kind == ThemeKind::Contrast ? look.edge : QColor(Qt::transparent), px(2));
    const QRectF inner = QRectF(rect()).adjusted(px(16), px(10), -px(14), -px(10));
    const bool gaps = !m_gaps.isEmpty();
    const double foot = px(gaps ? 90 : 46);
    const double room = inner.height() - foot;
    const auto count = static_cast<int>(m_values.size());
    // the office's 20 px, or the 19 of a card's unit words where a table is long
    const double least = px(25);
    const int fit = std::max(1, static_cast<int>(room / least));
    const int shown = count <= fit ? count : fit - 1;
    const int lines = count <= fit ? count : fit;
    const double row = std::min(px(34), room / std::max(1, lines));
    const double size = std::min(px(20), row * 0.76);
    const double column[] = {0, 0.3, 0.6};
    for (int i = 0; i < shown; ++i) {
        const ValueRow& value = m_values[static_cast<std::size_t>(i)];
        const double top = inner.top() + row * i;
        const auto cell = [&](int place, double from, const QString& text, QFont::Weight weight,
                              const QColor& ink) {
            const double begin = inner.left() + inner.width() * from;
            const double end = place == 2
                                   ? inner.right()
                                   : inner.left() + inner.width() * column[place + 1] - px(8);
            painter.setPen(ink);
            const QRectF box(begin, top, end - begin, row);
            const double fitted = fittedSize(text, size, px(11), box.width(), weight);
            drawLine(painter, box, Qt::AlignLeft | Qt::AlignVCenter, text, fitted, weight);
        };
        cell(0, column[0], value.what, kPlainWeight, look.textSoft);
        cell(1, column[1], value.value, kLabelWeight, look.text);
        const double side = px(22);
        const double left = inner.left() + inner.width() * column[2];
        const bool attested = value.sign == Sign::Shield;
        paintSign(
            painter, QRectF(left, top + (row - side) / 2, side, side), value.sign,
            attested ? look.tone(Tone::Normal).ink : look.textSoft);
        cell(
            2, column[2] + (side + px(8)) / inner.width(), value.standing, kPlainWeight,
            attested ? look.tone(Tone::Normal).ink : look.text);
    }
    if (shown < count) {
        painter.setPen(look.textSoft);
        drawLine(
            painter, QRectF(inner.left(), inner.top() + row * shown, inner.width(), row),
            Qt::AlignLeft | Qt::AlignVCenter, tr("and %1 more, under Attest").arg(count - shown),
            size, kPlainWeight);
    }
    double top = inner.bottom() - foot + px(4);
    painter.setPen(look.textSoft);
    const Wrapped source =
        wrapped(m_source, px(19), px(12), inner.width(), 2, kPlainWeight, px(40));
    drawWrapped(
        painter, QRectF(inner.left(), top, inner.width(), px(42)), Qt::AlignLeft | Qt::AlignVCenter,
        source, kPlainWeight);
    if (gaps) {
        top += px(44);
        painter.setPen(look.tone(Tone::Soon).ink);
        const Wrapped text =
            wrapped(m_gaps, px(19), px(12), inner.width(), 2, kLabelWeight, px(40));
        drawWrapped(
            painter, QRectF(inner.left(), top, inner.width(), px(42)),
            Qt::AlignLeft | Qt::AlignVCenter, text, kLabelWeight);
    }
}

ProcedurePage::ProcedurePage(QWidget* parent)
    : Page("procedure", parent), m_title(keep(new Sentence("procedureTitle", this))),
      m_about(keep(new Sentence("procedureAbout", this))),
      m_plot(keep(new Plot("procedurePlot", this))),
      m_table(keep(new ValueTable("procedureValues", this))) {
    m_about->setQuiet(true);
    for (int i = 0; i < kTabs; ++i) {
        auto* tab = keep(new ListRow(QString("procedureTab%1").arg(i), this));
        m_tabs.push_back(tab);
        connect(tab, &ListRow::pressed, this, [this, i] { emit tabChosen(i); });
    }
}

void ProcedurePage::show(const ProcedureView& view) {
    m_view = view;
    m_title->setText(view.title);
    m_about->setText(view.about);
    for (int i = 0; i < kTabs && i < view.tabs.size(); ++i) {
        ListRowView tab;
        tab.text = view.tabs[i];
        tab.chosen = i == view.tab;
        m_tabs[static_cast<std::size_t>(i)]->show(tab);
    }
    m_plot->show(view.plot);
    m_table->show(view);
    m_back->show(view.back);
    m_stop->show(view.stop);
    m_step->show(view.step);
    place();
}

void ProcedurePage::place() {
    const Frame frame = frameOf(units(), FrameKind::Page, look().mirrored);
    const QRectF body = frame.body;
    constexpr double kGap = 8;
    put(m_title, QRectF(body.x() + 6, body.y(), body.width() - 12, 52));
    put(m_about, QRectF(body.x() + 6, body.y() + 50, body.width() - 12, 52));
    const int count = std::min(kTabs, static_cast<int>(m_view.tabs.size()));
    const int most = frame.portrait ? 4 : 8;
    const int lines = std::max(1, (count + most - 1) / most);
    const int columns = std::max(1, (count + lines - 1) / lines);
    const double top = body.y() + 106;
    const double width = (body.width() - (columns - 1) * kGap) / columns;
    for (int i = 0; i < kTabs; ++i) {
        const int line = i / columns;
        const QRectF box(
            body.x() + (i % columns) * (width + kGap), top + line * (90 + kGap), width, 90);
        put(m_tabs[static_cast<std::size_t>(i)], i < count ? box : QRectF());
    }
    QRectF rest = body;
    rest.setTop(top + lines * (90 + kGap));
    const bool plot = !m_view.plot.isEmpty();
    QRectF left = rest;
    QRectF right = rest;
    if (frame.portrait) {
        left.setHeight(rest.height() * 0.42);
        right.setTop(left.bottom() + kGap);
    } else {
        left.setWidth(rest.width() * 0.46);
        right.setLeft(left.right() + 10);
    }
    put(m_plot, plot ? handed(left) : QRectF());
    put(m_table, handed(plot ? right : rest));
    placeSlots(frame);
}

} // namespace seamclock
