#include "app/setup/plot.h"

#include "app/parts/brush.h"
#include "app/parts/type.h"

#include <QAreaSeries>
#include <QChart>
#include <QChartView>
#include <QGraphicsLayout>
#include <QLegend>
#include <QLegendMarker>
#include <QLineSeries>
#include <QPainter>
#include <QScatterSeries>
#include <QValueAxis>
#include <algorithm>
#include <array>
#include <limits>

namespace seamclock {
namespace {

constexpr std::array<Qt::PenStyle, 4> kStyles{
    Qt::SolidLine, Qt::DashLine, Qt::DotLine, Qt::DashDotLine};

struct Extent {
    double low = std::numeric_limits<double>::infinity();
    double high = -std::numeric_limits<double>::infinity();

    void take(double value) {
        low = std::min(low, value);
        high = std::max(high, value);
    }
};

QLineSeries* lineOf(const std::vector<QPointF>& points, QObject* parent) {
    auto* series = new QLineSeries(parent);
    for (const QPointF& point : points) {
        series->append(point);
    }
    return series;
}

} // namespace

bool PlotView::isEmpty() const {
    return lines.empty() && bands.empty() && points.empty();
}

Plot::Plot(const QString& name, QWidget* parent)
    : Part(name, parent), m_chart(new QChartView(this)) {
    m_chart->setObjectName(name + "Chart");
    m_chart->setRenderHint(QPainter::Antialiasing);
    m_chart->setFrameShape(QFrame::NoFrame);
    m_chart->setFocusPolicy(Qt::NoFocus);
    m_chart->setInteractive(false);
    m_chart->setAttribute(Qt::WA_TransparentForMouseEvents);
    m_chart->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_chart->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
}

void Plot::show(const PlotView& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    draw();
}

void Plot::lookChanged() {
    draw();
}

void Plot::resizeEvent(QResizeEvent*) {
    const int inset = static_cast<int>(px(8));
    m_chart->setGeometry(rect().adjusted(inset, inset, -inset, -inset));
}

void Plot::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    drawPanel(
        painter, rect(), px(14), theme().panel,
        theme().kind == ThemeKind::Contrast ? theme().edge : QColor(Qt::transparent), px(2));
}

void Plot::draw() {
    const Theme& look = theme();
    auto* chart = new QChart;
    chart->setAnimationOptions(QChart::NoAnimation);
    chart->setBackgroundVisible(false);
    chart->setMargins(QMargins(0, 0, 0, 0));
    chart->layout()->setContentsMargins(0, 0, 0, 0);
    const QFont small = partFont(px(20), kPlainWeight);
    auto* x = new QValueAxis(chart);
    auto* y = new QValueAxis(chart);
    Extent across;
    Extent up;
    up.take(0);
    const auto extend = [&](const std::vector<QPointF>& points) {
        for (const QPointF& point : points) {
            across.take(point.x());
            up.take(point.y());
        }
    };
    bool legend = false;
    const auto join = [&](QAbstractSeries* series, const QString& name) {
        series->setName(name);
        chart->addSeries(series);
        if (name.isEmpty()) {
            for (QLegendMarker* marker : chart->legend()->markers(series)) {
                marker->setVisible(false);
            }
        } else {
            legend = true;
        }
    };
    for (const PlotView::Band& band : m_view.bands) {
        extend(band.low);
        extend(band.high);
        auto* area = new QAreaSeries(lineOf(band.high, chart), lineOf(band.low, chart));
        QColor fill = look.tone(Tone::Normal).ink;
        fill.setAlphaF(0.28F);
        area->setBrush(fill);
        area->setPen(QPen(look.tone(Tone::Normal).ink, px(1.5)));
        join(area, band.name);
    }
    for (const PlotView::Line& line : m_view.lines) {
        extend(line.points);
        auto* series = lineOf(line.points, nullptr);
        const auto style = static_cast<std::size_t>(line.style) % kStyles.size();
        series->setPen(QPen(look.text, px(3), kStyles[style], Qt::FlatCap));
        join(series, line.name);
    }
    for (const PlotView::Points& each : m_view.points) {
        extend(each.points);
        auto* series = new QScatterSeries;
        for (const QPointF& point : each.points) {
            series->append(point);
        }
        series->setMarkerShape(
            each.wrong ? QScatterSeries::MarkerShapeTriangle : QScatterSeries::MarkerShapeCircle);
        series->setMarkerSize(px(each.wrong ? 22 : 13));
        series->setColor(each.wrong ? look.tone(Tone::Late).ink : look.text);
        series->setBorderColor(look.panel);
        join(series, each.name);
    }
    if (!(across.high > across.low)) {
        across = {0, 1};
    }
    if (!(up.high > up.low)) {
        up.high = up.low + 1;
    }
    x->setRange(across.low, across.high);
    y->setRange(up.low, up.high);
    for (QValueAxis* axis : {x, y}) {
        axis->setTickCount(axis == x ? 6 : 5);
        axis->applyNiceNumbers();
        axis->setLabelFormat("%g");
        axis->setLabelsFont(small);
        axis->setTitleFont(small);
        axis->setLabelsColor(look.text);
        axis->setTitleBrush(look.textSoft);
        axis->setLinePen(QPen(look.edge, px(1.5)));
        axis->setGridLinePen(QPen(look.hairline, px(1)));
        axis->setTitleText(axis == x ? m_view.x : m_view.y);
    }
    chart->addAxis(x, Qt::AlignBottom);
    chart->addAxis(y, Qt::AlignLeft);
    for (QAbstractSeries* series : chart->series()) {
        series->attachAxis(x);
        series->attachAxis(y);
    }
    chart->legend()->setVisible(legend);
    chart->legend()->setAlignment(Qt::AlignTop);
    chart->legend()->setFont(small);
    chart->legend()->setLabelColor(look.text);
    chart->legend()->setMarkerShape(QLegend::MarkerShapeFromSeries);
    for (QAbstractSeries* series : chart->series()) {
        if (const auto* area = qobject_cast<QAreaSeries*>(series)) {
            for (QLegendMarker* marker : chart->legend()->markers(series)) {
                marker->setShape(QLegend::MarkerShapeRectangle);
                marker->setBrush(area->brush());
                marker->setPen(area->pen());
            }
        }
    }
    QChart* before = m_chart->chart();
    m_chart->setChart(chart);
    delete before;
    m_chart->setBackgroundBrush(look.panel);
    QStringList names{m_view.y, m_view.x};
    setAccessibleName(spoken(names));
    update();
}

} // namespace seamclock
