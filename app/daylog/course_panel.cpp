#include "app/daylog/course_panel.h"

#include "app/parts/brush.h"
#include "app/parts/mark.h"
#include "app/parts/metrics.h"
#include "app/parts/theme.h"
#include "app/parts/type.h"

#include <QCoreApplication>
#include <QPainter>
#include <QStringList>
#include <algorithm>
#include <array>
#include <utility>

namespace seamclock {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Course)
};

// Widths of the columns, parts of what is left beside the labels.
constexpr std::array<double, 5> kWidths{0.168, 0.215, 0.186, 0.155, 0.276};
constexpr double kLabels = 76;  // left of the columns
constexpr double kFigures = 46; // right of them
constexpr double kGap = 11;     // between columns
constexpr double kMost = 1.7;   // a bar is drawn so many plans long at most
constexpr double kColdest = 20; // [°C] at the bottom of the plane's drawing

class Course {
public:
    Course(
        QPainter& painter, const QRectF& box, const CourseView& view, const Theme& theme,
        const Metrics& metrics)
        : m_painter(painter), m_view(view), m_theme(theme), m_metrics(metrics), m_box(box) {
        split();
    }

    void paint() {
        const double heads = 24 * m_row;
        const double bar = 31 * m_row;
        double y = m_box.top();
        QRectF line(m_box.left(), y, m_box.width(), px(heads));
        for (std::size_t i = 0; i < m_view.phases.size(); ++i) {
            text(column(i, line), m_view.phases[i].name, 20, kPlainWeight, m_theme.textSoft);
        }
        y = line.bottom() + px(4 * m_row);
        const QRectF plan(m_box.left(), y, m_box.width(), px(bar));
        label(plan, Words::tr("plan"), kPlainWeight, m_theme.textSoft);
        y = plan.bottom() + px(7 * m_row);
        const QRectF done(m_box.left(), y, m_box.width(), px(bar));
        label(done, Words::tr("done", "beside what was set"), kLabelWeight, m_theme.text);
        for (std::size_t i = 0; i < m_view.phases.size(); ++i) {
            paintBars(i, column(i, plan), column(i, done));
        }
        y = done.bottom() + px(14 * m_row);
        const bool happens = std::any_of(
            m_view.phases.begin(), m_view.phases.end(),
            [](const CourseView::Phase& phase) { return !phase.happenings.empty(); });
        if (happens) {
            const QRectF signs(m_box.left(), y - px(9 * m_row), m_box.width(), px(20 * m_row));
            for (std::size_t i = 0; i < m_view.phases.size(); ++i) {
                paintHappenings(i, column(i, signs));
            }
            y = signs.bottom() + px(4 * m_row);
        }
        const double left = m_box.bottom() - y;
        const bool both = m_view.estimated && !m_view.scaleUnit.isEmpty();
        const double each = both ? (left - px(9 * m_row)) / 2 : left;
        if (!m_view.scaleUnit.isEmpty()) {
            paintScale(QRectF(m_box.left(), y, m_box.width(), each));
            y += each + px(9 * m_row);
        }
        if (m_view.estimated) {
            paintPlane(QRectF(m_box.left(), y, m_box.width(), each));
        }
    }

private:
    double px(double units) const { return m_metrics.px(units); }

    void split() {
        // Lower than drawn, everything is.
        m_row = std::clamp(m_box.height() / px(286), 0.62, 1.15);
        const bool small = m_box.width() < px(620);
        m_labels = px(small ? 58 : kLabels);
        m_figures = px(small ? 34 : kFigures);
        const double room = m_box.width() - m_labels - m_figures - 4 * px(kGap);
        double x = m_box.left() + m_labels;
        for (std::size_t i = 0; i < kWidths.size(); ++i) {
            m_left[i] = x;
            m_wide[i] = room * kWidths[i];
            x += m_wide[i] + px(kGap);
        }
    }

    QRectF column(std::size_t i, const QRectF& line) const {
        return {m_left[i], line.top(), m_wide[i], line.height()};
    }

    /// How wide the plan of that phase is [px].
    double planWidth(std::size_t i) const {
        return m_wide[i] / std::min(m_view.phases[i].length(), kMost);
    }
    double placeOf(std::size_t i, double at) const {
        return m_left[i] + bounded(at * planWidth(i), 0, m_wide[i]);
    }

    void text(
        const QRectF& box, const QString& words, double units, QFont::Weight weight,
        const QColor& ink, Qt::Alignment alignment = Qt::AlignLeft) {
        m_painter.setPen(ink);
        const double wanted = std::min(m_metrics.textPx(units), box.height() * 0.86);
        drawTabular(
            m_painter, box, alignment | Qt::AlignVCenter, words,
            fittedSize(words, wanted, px(9), box.width(), weight), weight);
    }

    void label(const QRectF& line, const QString& words, QFont::Weight weight, const QColor& ink) {
        text({line.left(), line.top(), m_labels - px(6), line.height()}, words, 20, weight, ink);
    }

    void paintBars(std::size_t i, const QRectF& planBox, const QRectF& doneBox) {
        const CourseView::Phase& phase = m_view.phases[i];
        const double planned = planWidth(i);
        const double corner = px(6);
        const double inset = px(9);
        const QRectF plan(planBox.left(), planBox.top(), planned, planBox.height());
        if (!phase.plan.isEmpty()) {
            QPen edge(m_theme.edge, px(1.6));
            if (!phase.timed) {
                edge.setStyle(Qt::DashLine);
            }
            m_painter.setPen(edge);
            m_painter.setBrush(phase.timed ? QBrush(m_theme.raised) : QBrush(Qt::NoBrush));
            m_painter.drawRoundedRect(plan, corner, corner);
            text(plan.adjusted(inset, 0, -px(4), 0), phase.plan, 20, kPlainWeight, m_theme.text);
        }
        if (phase.done.isEmpty()) {
            return;
        }
        const bool out = phase.grade == Grade::Out;
        const Field calm = m_theme.tone(Tone::Normal);
        const double wide = bounded(std::min(phase.share, kMost) * planned, px(8), m_wide[i]);
        const QRectF done(doneBox.left(), doneBox.top(), wide, doneBox.height());
        const double limit = phase.limit ? placeOf(i, *phase.limit) : done.right();
        const bool past = out && phase.limit && phase.share > *phase.limit + 1e-9;
        m_painter.setPen(QPen(calm.ink, px(1.8)));
        m_painter.setBrush(calm.field);
        if (past) {
            m_painter.drawRect(QRectF(done.topLeft(), QPointF(limit, done.bottom())));
            m_painter.fillRect(
                QRectF(QPointF(limit, done.top()), done.bottomRight()),
                m_theme.tone(Tone::Late).ink);
        } else {
            m_painter.drawRoundedRect(done, corner, corner);
        }
        const double end = past ? limit : done.right();
        const bool marked = out || phase.grade == Grade::Remark;
        const double mark = doneBox.height() * 0.72;
        // Words stand in the bar, or behind a bar that is too short for them.
        const double words = tabularWidth(phase.done, px(15), kLabelWeight);
        const bool inside = end - done.left() > words + 2 * inset;
        const double from = inside ? done.left() + inset : done.right() + px(6);
        const double to = inside ? end - px(4) : doneBox.right() + px(8);
        text(
            {from, done.top(), std::max(to - from, px(20)), done.height()}, phase.done, 20,
            kLabelWeight, inside ? calm.on : m_theme.text);
        if (past) {
            m_painter.setPen(QPen(m_theme.tone(Tone::Late).ink, px(4), Qt::SolidLine, Qt::FlatCap));
            m_painter.drawLine(
                QPointF(limit, planBox.top() - px(4)), QPointF(limit, done.bottom() + px(5)));
        }
        if (marked) {
            const double room = done.right() - end;
            const double x = past && room >= mark
                                 ? end + (room - mark) / 2
                                 : std::min(done.right() + px(4), m_left[i] + m_wide[i] - mark);
            const QRectF place(x, done.center().y() - mark / 2, mark, mark);
            if (out) {
                paintMark(
                    m_painter, place, Mark::Late,
                    past && room >= mark ? m_theme.panel : m_theme.tone(Tone::Late).ink, m_theme);
            } else {
                paintSign(m_painter, place, Sign::Note, m_theme.text);
            }
        }
    }

    void paintHappenings(std::size_t i, const QRectF& box) {
        const double side = box.height();
        const auto& all = m_view.phases[i].happenings;
        std::vector<double> wanted;
        for (const CourseView::Happening& one : all) {
            wanted.push_back(placeOf(i, one.at) - side / 2);
        }
        const std::vector<double> at = spreadOut(wanted, side, box.left(), box.right());
        for (std::size_t k = 0; k < all.size(); ++k) {
            paintSign(
                m_painter, QRectF(at[k], box.top(), side, side), all[k].sign, m_theme.textSoft);
        }
    }

    void ground(const QRectF& box) {
        for (std::size_t i = 0; i < m_view.phases.size(); ++i) {
            const QRectF at = column(i, box);
            m_painter.fillRect(at, m_theme.raised);
            if (m_theme.kind == ThemeKind::Contrast) {
                m_painter.setPen(QPen(m_theme.edge, px(1)));
                m_painter.setBrush(Qt::NoBrush);
                m_painter.drawRect(at);
            }
        }
    }

    void paintScale(const QRectF& box) {
        ground(box);
        const QRectF names(box.left(), box.top(), m_labels - px(6), box.height());
        text(
            names.adjusted(0, 0, 0, -names.height() / 2), Words::tr("scale"), 20, kPlainWeight,
            m_theme.text);
        text(
            names.adjusted(0, names.height() / 2, 0, 0), m_view.scaleUnit, 18, kPlainWeight,
            m_theme.textSoft);
        const double pad = px(6);
        const auto y = [&](double value) {
            const double part = bounded(value / (m_view.scaleTop * 1.12), 0, 1);
            return box.bottom() - pad - part * (box.height() - 2 * pad);
        };
        const QRectF figures(box.right() - m_figures + px(7), 0, m_figures - px(7), px(20));
        const double set = m_view.scaleTop;
        text(
            figures.translated(0, bounded(y(set) - px(10), box.top(), box.bottom() - px(20))),
            m_view.scaleTopText, 20, kPlainWeight, m_theme.textSoft);
        text(
            figures.translated(0, box.bottom() - px(20)), QStringLiteral("0"), 20, kPlainWeight,
            m_theme.textSoft);
        const Field calm = m_theme.tone(Tone::Normal);
        for (std::size_t i = 0; i < m_view.phases.size(); ++i) {
            const CourseView::Phase& phase = m_view.phases[i];
            const QRectF at = column(i, box);
            if (phase.band) {
                const double top = y(phase.band->high);
                const double high = std::max(y(phase.band->low) - top, px(7));
                m_painter.setPen(QPen(calm.ink, px(1.6)));
                m_painter.setBrush(calm.field);
                m_painter.drawRect(QRectF(at.left(), top, at.width(), high));
            }
            if (phase.climb) {
                QPen line(m_theme.textSoft, px(1.8), Qt::DashLine);
                m_painter.setPen(line);
                m_painter.drawLine(
                    QPointF(at.left(), y(phase.climb->low)),
                    QPointF(placeOf(i, 1), y(phase.climb->high)));
            }
            for (const CourseView::Reading& reading : phase.readings) {
                const double half = px(8);
                const QPointF middle(
                    bounded(placeOf(i, reading.at), at.left() + half, at.right() - half),
                    y(reading.value));
                QPainterPath diamond(middle - QPointF(half, 0));
                diamond.lineTo(middle - QPointF(0, half));
                diamond.lineTo(middle + QPointF(half, 0));
                diamond.lineTo(middle + QPointF(0, half));
                diamond.closeSubpath();
                m_painter.setPen(QPen(m_theme.panel, px(1.6)));
                m_painter.setBrush(reading.out ? m_theme.tone(Tone::Late).ink : m_theme.text);
                m_painter.drawPath(diamond);
                if (reading.out) { // told by its form, too
                    m_painter.setPen(QPen(m_theme.panel, px(2)));
                    m_painter.drawLine(
                        middle - QPointF(half * 0.5, 0), middle + QPointF(half * 0.5, 0));
                }
            }
        }
    }

    void paintPlane(const QRectF& box) {
        ground(box);
        const QRectF names(box.left(), box.top(), m_labels - px(6), box.height());
        const Wrapped words = wrapped(
            Words::tr("weld plane, °C est."), std::min(m_metrics.textPx(20), box.height() / 3.4),
            px(10), names.width(), 3, kPlainWeight, names.height());
        m_painter.setPen(m_theme.text);
        drawWrapped(m_painter, names, Qt::AlignLeft | Qt::AlignVCenter, words, kPlainWeight);
        const double pad = px(6);
        const auto y = [&](double celsius) {
            const double part = bounded((celsius - kColdest) / (m_view.hottest - kColdest), 0, 1);
            return box.bottom() - pad - part * (box.height() - 2 * pad);
        };
        constexpr double kBandC = 165; // orchid and slate of the temperature's own colours
        constexpr double kLineC = 75;
        double last = box.bottom();
        for (std::size_t i = 0; i < m_view.phases.size(); ++i) {
            const CourseView::Phase& phase = m_view.phases[i];
            if (phase.plane.empty()) {
                continue;
            }
            QPainterPath band(
                QPointF(placeOf(i, phase.plane.front().at), y(phase.plane.front().high)));
            QPainterPath line(
                QPointF(placeOf(i, phase.plane.front().at), y(phase.plane.front().likely)));
            for (const CourseView::Point& point : phase.plane) {
                band.lineTo(placeOf(i, point.at), y(point.high));
                line.lineTo(placeOf(i, point.at), y(point.likely));
            }
            for (auto point = phase.plane.rbegin(); point != phase.plane.rend(); ++point) {
                band.lineTo(placeOf(i, point->at), y(point->low));
            }
            band.closeSubpath();
            m_painter.save();
            m_painter.setClipRect(column(i, box));
            m_painter.setPen(QPen(temperatureColour(kBandC), px(3), Qt::SolidLine, Qt::FlatCap));
            m_painter.setBrush(temperatureColour(kBandC));
            m_painter.drawPath(band);
            m_painter.setBrush(Qt::NoBrush);
            const bool dark = m_theme.kind != ThemeKind::Light;
            m_painter.setPen(QPen(
                dark ? textOnPlate() : mixed(temperatureColour(kLineC), m_theme.text, 0.55),
                px(dark ? 2 : 3)));
            m_painter.drawPath(line);
            m_painter.restore();
            last = y(phase.plane.back().likely);
            if (!phase.figure.isEmpty()) {
                const QRectF figure(
                    m_left[i] + px(8), box.bottom() - px(26), m_wide[i] - px(10), px(20));
                text(figure, phase.figure, 20, kLabelWeight, m_theme.text);
            }
        }
        text(
            {box.right() - m_figures + px(7),
             bounded(last - px(10), box.top(), box.bottom() - px(20)), m_figures - px(7), px(20)},
            m_view.releaseFigure, 20, kLabelWeight, m_theme.text);
    }

    QPainter& m_painter;
    const CourseView& m_view;
    const Theme& m_theme;
    const Metrics& m_metrics;
    QRectF m_box;
    double m_row = 1; // how high a line is, of what is drawn where there is room
    double m_labels = 0;
    double m_figures = 0;
    std::array<double, 5> m_left{};
    std::array<double, 5> m_wide{};
};

} // namespace

void paintCourse(
    QPainter& painter, const QRectF& box, const CourseView& view, const Theme& theme,
    const Metrics& metrics) {
    if (view.phases.size() == kWidths.size() && box.height() > 0) {
        Course(painter, box, view, theme, metrics).paint();
    }
}

QString spokenCourse(const CourseView& view) {
    QStringList out;
    for (const CourseView::Phase& phase : view.phases) {
        if (phase.done.isEmpty()) {
            continue;
        }
        out << (phase.grade == Grade::Out ? Words::tr("%1 %2, plan %3, out of limits")
                                          : Words::tr("%1 %2, plan %3"))
                   .arg(phase.name, phase.done, phase.plan);
        for (const auto& [sign, words] :
             {std::pair(Sign::Sound, Words::tr("signals: %1")),
              std::pair(Sign::Remark, Words::tr("remarks: %1"))}) {
            const auto count = std::count_if(
                phase.happenings.begin(), phase.happenings.end(),
                [sign = sign](const CourseView::Happening& one) { return one.sign == sign; });
            if (count > 0) {
                out.back() += Words::tr(", %1").arg(words.arg(count));
            }
        }
    }
    if (view.estimated) {
        out << Words::tr("weld plane at release about %1 °C, an estimate").arg(view.releaseFigure);
    }
    return out.join(QStringLiteral(". "));
}

} // namespace seamclock
