#include "app/setup/heat_page.h"

#include "app/parts/brush.h"
#include "app/parts/type.h"

#include <QPainter>
#include <algorithm>

namespace seamclock {

HeatRows::HeatRows(const QString& name, QWidget* parent) : Part(name, parent) {}

void HeatRows::setRows(const std::vector<HeatValueRow>& rows, const QString& caution) {
    if (rows == m_rows && caution == m_caution) {
        return;
    }
    m_rows = rows;
    m_caution = caution;
    QStringList words;
    for (const HeatValueRow& row : rows) {
        words << row.what << row.value;
    }
    setAccessibleName(spoken(words << caution));
    update();
}

void HeatRows::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Theme& look = theme();
    drawPanel(painter, rect(), px(14), look.panel, Qt::transparent, 0);
    const QRectF inner = QRectF(rect()).adjusted(px(14), px(8), -px(14), -px(8));
    const double foot = m_caution.isEmpty() ? 0 : px(46);
    const double pitch =
        (inner.height() - foot) / static_cast<double>(std::max<std::size_t>(1, m_rows.size()));
    // In a narrow column the value stands under what it is of.
    const bool twoLines = inner.width() < px(430);
    const double size = std::min({textPx(22), px(26), twoLines ? pitch * 0.42 : pitch * 0.8});
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        const HeatValueRow& row = m_rows[i];
        const QRectF box(
            inner.left(), inner.top() + pitch * static_cast<double>(i), inner.width(), pitch);
        const double value = std::min(
            textWidth(row.value, size, kLabelWeight), box.width() * (twoLines ? 1.0 : 0.6));
        const double words = twoLines ? box.width() : box.width() - value - px(10);
        const double height = twoLines ? pitch * 0.48 : pitch;
        const double small = twoLines ? std::min(px(18), pitch * 0.36) : size;
        painter.setPen(look.textSoft);
        drawLine(
            painter, QRectF(box.left(), box.top(), words, height), Qt::AlignLeft | Qt::AlignVCenter,
            row.what, fittedSize(row.what, small, px(12), words, kPlainWeight), kPlainWeight);
        painter.setPen(row.late ? look.tone(Tone::Late).ink : look.text);
        drawLine(
            painter,
            QRectF(
                twoLines ? box.left() : box.right() - value,
                twoLines ? box.top() + height : box.top(), value, height),
            (twoLines ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter, row.value,
            fittedSize(row.value, size, px(12), value, kLabelWeight), kLabelWeight);
    }
    if (!m_caution.isEmpty()) {
        painter.setPen(look.tone(Tone::Late).ink);
        const Wrapped text =
            wrapped(m_caution, px(20), px(12), inner.width(), 2, kLabelWeight, px(44));
        drawWrapped(
            painter, QRectF(inner.left(), inner.bottom() - foot, inner.width(), foot),
            Qt::AlignLeft | Qt::AlignVCenter, text, kLabelWeight);
    }
}

HeatPage::HeatPage(QWidget* parent)
    : Page("heat", parent), m_title(keep(new Sentence("heatTitle", this))),
      m_under(keep(new Sentence("heatUnder", this))), m_plot(keep(new Plot("heatPlot", this))),
      m_rows(keep(new HeatRows("heatRows", this))), m_worker(new HeatWorker(this)) {
    connect(m_worker, &HeatWorker::came, this, &HeatPage::spreadCameWith);
    m_under->setQuiet(true);
    for (const WhatIf what : {WhatIf::Plate, WhatIf::Air, WhatIf::Changeover, WhatIf::Cooling}) {
        auto* slider =
            keep(new ValueSlider(QString("heatSlider%1").arg(static_cast<int>(what)), this));
        m_sliders.push_back(slider);
        connect(
            slider, &ValueSlider::moved, this, [this, what](double value) { move(what, value); });
    }
}

Result<void> HeatPage::open(const HeatCourse& course, const std::vector<Material>& materials) {
    auto plan = likelyHeat(course, materials);
    if (!plan) {
        return tl::unexpected<Error>(plan.error());
    }
    m_materials = materials;
    m_plan = std::move(*plan);
    reset();
    return {};
}

void HeatPage::reset() {
    m_course = m_plan.course;
    m_now = m_plan;
    m_hasSpread = false;
    refresh();
    m_worker->ask(m_course, m_materials);
}

void HeatPage::move(WhatIf what, double value) {
    m_course = changedCourse(m_course, what, value);
    work();
}

void HeatPage::work() {
    auto now = likelyHeat(m_course, m_materials);
    if (!now) {
        return; // the plan's plastic is known, or the page would not stand
    }
    m_now = std::move(*now);
    m_hasSpread = false;
    refresh();
    m_worker->ask(m_course, m_materials);
}

void HeatPage::spreadCameWith(const HeatEstimate& estimate) {
    m_now = estimate;
    m_hasSpread = true;
    refresh();
    emit spreadCame();
}

void HeatPage::refresh() {
    m_view = heatView(m_plan, m_now, m_hasSpread);
    m_title->setText(m_view.title);
    m_under->setText(m_view.under);
    for (std::size_t i = 0; i < m_sliders.size(); ++i) {
        m_sliders[i]->show(m_view.sliders[i]);
    }
    m_plot->show(m_view.plot);
    m_rows->setRows(m_view.rows, m_view.caution);
    m_back->show(m_view.back);
    m_stop->show(m_view.stop);
    m_step->show(m_view.step);
    place();
}

void HeatPage::place() {
    const Frame frame = frameOf(units(), FrameKind::Page, look().mirrored);
    const QRectF body = frame.body;
    constexpr double kGap = 8;
    constexpr double kSlider = 92;
    constexpr double kFour = 4 * kSlider + 3 * kGap;
    constexpr double kOneLine = 46;
    const bool two = frame.portrait && quietHeight(m_under->text(), body.width() - 12) > kOneLine;
    const double told = two ? 58 : 40;
    const double high = two ? 106 : 92;
    QRectF titles(body.x(), body.y(), body.width(), high);
    QRectF sliders = body.adjusted(0, high, 0, 0);
    if (frame.portrait) {
        sliders.setHeight(kFour);
    } else {
        // Ends and track of a slider need so much on any screen; on a low one it begins at the top.
        sliders.setWidth(std::max(body.width() * 0.34, 416.0));
        if (sliders.height() < kFour) {
            sliders.setTop(body.top());
            titles.setLeft(sliders.right() + kGap);
        }
    }
    QRectF left = body.adjusted(0, high, 0, 0);
    QRectF right = left;
    if (frame.portrait) {
        left.setTop(sliders.bottom() + kGap);
        left.setHeight((body.bottom() - left.top()) * (two ? 0.52 : 0.5));
        right.setTop(left.bottom() + kGap);
    } else {
        left.setLeft(sliders.right() + kGap);
        left.setWidth((body.right() - left.left() - kGap) * 0.515);
        right.setLeft(left.right() + kGap);
    }
    put(m_title, handed(QRectF(titles.x() + 6, titles.y(), titles.width() - 12, 50)));
    put(m_under,
        handed(QRectF(titles.x() + 6, titles.y() + high - told - 4, titles.width() - 12, told)));
    const auto count = static_cast<double>(m_sliders.size());
    const double height = (sliders.height() - (count - 1) * kGap) / count;
    for (std::size_t i = 0; i < m_sliders.size(); ++i) {
        const double top = sliders.top() + static_cast<double>(i) * (height + kGap);
        put(m_sliders[i], handed(QRectF(sliders.left(), top, sliders.width(), height)));
    }
    put(m_plot, handed(left));
    put(m_rows, handed(right));
    placeSlots(frame);
}

} // namespace seamclock
