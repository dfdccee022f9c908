#include "app/shop/plan_page.h"

#include "app/parts/brush.h"
#include "app/parts/type.h"

#include <QPainter>
#include <algorithm>

namespace seamclock {
namespace {

constexpr double kLine = 46;
constexpr double kUprightLine = 58; // for two lines of words
constexpr double kMore = 150;

} // namespace

StepLines::StepLines(QWidget* parent) : Part("planSteps", parent) {}

void StepLines::show(std::vector<PlanStep> steps) {
    if (steps == m_steps) {
        return;
    }
    m_steps = std::move(steps);
    QStringList words;
    for (const PlanStep& step : m_steps) {
        words << spoken({step.time, step.text});
    }
    setAccessibleName(words.join(QLatin1Char(' ')));
    update();
}

void StepLines::setLine(double units) {
    m_line = units;
    update();
}

int StepLines::room() const {
    return std::max(
        1, static_cast<int>((height() - px(8)) / px(m_line * std::max(1.0, metrics().text))));
}

void StepLines::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    drawPanel(painter, rect(), px(14), theme().panel, theme().hairline, px(1.5));
    const int rows = room();
    const double high = (height() - px(8)) / rows;
    const double size = std::min(textPx(22), high * 0.6);
    double times = 0;
    for (const PlanStep& step : m_steps) {
        times = std::max(times, tabularWidth(step.time, size, kLabelWeight));
    }
    for (int i = 0; i < rows && i < static_cast<int>(m_steps.size()); ++i) {
        const PlanStep& step = m_steps[static_cast<std::size_t>(i)];
        const double top = px(4) + i * high;
        double left = px(16);
        painter.setPen(theme().text);
        drawTabular(
            painter, QRectF(left, top, times, high), Qt::AlignRight | Qt::AlignVCenter, step.time,
            size, kLabelWeight);
        left += times + px(14);
        const double side = std::min(px(28), high * 0.7);
        if (step.mark) {
            paintMark(
                painter, QRectF(left, top + (high - side) / 2, side, side), *step.mark,
                theme().tone(step.tone).ink, theme());
        }
        left += side + px(12);
        const QRectF box(left, top, width() - left - px(14), high);
        painter.setPen(step.mark ? theme().text : theme().textSoft);
        // Two lines with their ascenders and descenders, whatever the size of words.
        const Wrapped text =
            wrapped(step.text, size, px(12), box.width(), 2, kPlainWeight, high * 0.8);
        drawWrapped(painter, box, Qt::AlignLeft | Qt::AlignVCenter, text, kPlainWeight);
    }
}

PlanPage::PlanPage(QWidget* parent)
    : Page("dayPlan", parent), m_title(keep(new Sentence("planTitle", this))),
      m_under(keep(new Sentence("planUnder", this))), m_chart(keep(new PlanChart(this))),
      m_lines(keep(new StepLines(this))), m_more(keep(new SlotButton("planMore", this))) {
    m_under->setQuiet(true);
    connect(m_more, &SlotButton::pressed, this, &PlanPage::turn);
}

void PlanPage::show(const PlanView& view, const QString& benches, const QString& people) {
    m_from = view.at == m_view.at ? m_from : 0;
    m_view = view;
    m_benches = benches;
    m_people = people;
    m_now = Milliseconds{0};
    place();
}

void PlanPage::setNow(Milliseconds now) {
    m_now = now;
    m_chart->setNow(now);
}

void PlanPage::setBusy(bool busy) {
    if (busy != m_busy) {
        m_busy = busy;
        refresh();
    }
}

std::vector<PlanStep> PlanPage::shown() const {
    const auto first =
        m_view.steps.begin() +
        std::min<std::ptrdiff_t>(m_from, static_cast<std::ptrdiff_t>(m_view.steps.size()));
    const auto count = std::min<std::ptrdiff_t>(m_lines->room(), m_view.steps.end() - first);
    return {first, first + count};
}

void PlanPage::turn() {
    const int next = m_from + m_lines->room();
    m_from = next < static_cast<int>(m_view.steps.size()) ? next : 0;
    refresh();
}

void PlanPage::refresh() {
    m_title->setText(
        m_busy && m_view.title.isEmpty() ? tr("The plan is being worked out.") : m_view.title);
    m_under->setText(m_view.under);
    m_chart->show(m_view);
    m_chart->setNow(m_now);
    m_lines->show(shown());
    const auto count = static_cast<int>(m_view.steps.size());
    const int room = m_lines->room();
    SlotView more = plainSlot(
        tr("More steps"), tr("%1 of %2").arg(m_from / room + 1).arg((count + room - 1) / room));
    if (count <= room) {
        more.look = SlotView::Look::Gone;
    }
    m_more->show(more);
    m_back->show(plainSlot(tr("Benches"), m_benches));
    m_stop->show(plainSlot(tr("Who welds"), m_people));
    m_step->show(stepSlot(tr("Back to the shop"), false));
}

void PlanPage::place() {
    const Frame frame = frameOf(units(), FrameKind::Page, look().mirrored);
    const QRectF body = frame.body;
    const double words = std::max(1.0, look().metrics.text);
    put(m_title, QRectF(body.x() + 6, body.y(), body.width() - 12, 50));
    put(m_under, QRectF(body.x() + 6, body.y() + 50, body.width() - 12, 36));
    const double line = frame.portrait ? kUprightLine : kLine;
    const double wanted = line * words * (frame.portrait ? 6 : 3) + 8;
    m_lines->setLine(line);
    const double steps = std::max(96.0, std::min(wanted, (body.height() - 100) * 0.45));
    const QRectF chart(body.x(), body.y() + 90, body.width(), body.height() - 90 - steps - 10);
    put(m_chart, chart);
    put(m_lines, handed(QRectF(body.x(), chart.bottom() + 10, body.width() - kMore - 10, steps)));
    put(m_more, handed(QRectF(body.right() - kMore, chart.bottom() + 10, kMore, steps)));
    placeSlots(frame);
    refresh();
}

} // namespace seamclock
