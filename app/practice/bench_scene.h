// The practice bench, painted: the seam from its end in its temperatures with the whole bench below
// it, the front of the scale, and the row along the seam. Each shows a BenchDrawing and decides
// nothing; a touch of a place along the seam, or of an edge, is told and left to the page.
#pragma once

#include "app/parts/press_part.h"
#include "app/practice/bench_drawing.h"

#include <QPixmap>

namespace seamclock {

class BenchScene : public Part {
    Q_OBJECT

public:
    explicit BenchScene(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const BenchDrawing& drawing);
    const BenchDrawing& drawing() const { return m_drawing; }
    /// Where the seam from its end and the bench stand within it [units]; the rest is others'.
    void setPlaces(const QRectF& seam, const QRectF& bench);
    /// What stands through it in large letters.
    void setWatermark(const QString& word);

signals:
    /// The hand on the edge of sheet 0 or 1.
    void edgeTouched(int sheet);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void lookChanged() override { m_ground = QPixmap(); }
    void resizeEvent(QResizeEvent*) override { m_ground = QPixmap(); }

private:
    void paintGround(QPainter& painter);

    BenchDrawing m_drawing;
    QRectF m_seam;
    QRectF m_bench;
    QString m_word;
    QPixmap m_ground; // panel and watermark, painted once
};

/// Its own small scene for pictures beside each other: one joint from its end.
void paintSeamFromEnd(
    QPainter& painter, const QRectF& box, const BenchDrawing& drawing, const Theme& theme,
    const Metrics& metrics);

class ScaleFront : public Part {
public:
    explicit ScaleFront(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const BenchDrawing& drawing);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    ScaleView m_scale;
    double m_reading = 0;
    QString m_text;
};

/// Beads along the seam, above and below it, front at the left.
class SeamRow : public PressPart {
    Q_OBJECT

public:
    explicit SeamRow(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const BenchDrawing& drawing);

signals:
    void placeChosen(int place);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    bool event(QEvent* event) override;

private:
    void chooseAt(double x);

    std::vector<PlaceDrawing> m_places;
    double m_beadMm = 0;
    int m_place = 0;
    QString m_text;
};

} // namespace seamclock
