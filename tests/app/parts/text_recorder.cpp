#include "tests/app/parts/text_recorder.h"

#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace seamclock {

class TextRecorder::Engine : public QPaintEngine {
public:
    explicit Engine(std::vector<WrittenText>& texts)
        : QPaintEngine(QPaintEngine::AllFeatures), m_texts(texts) {}

    bool begin(QPaintDevice*) override { return true; }
    bool end() override { return true; }
    void updateState(const QPaintEngineState&) override {}
    void drawPixmap(const QRectF&, const QPixmap&, const QRectF&) override {}
    void drawPath(const QPainterPath&) override {}
    void drawPolygon(const QPointF*, int, PolygonDrawMode) override {}
    Type type() const override { return QPaintEngine::User; }

    void drawTextItem(const QPointF& at, const QTextItem& item) override {
        const QFontMetricsF metrics(item.font());
        static const QString kDescending = QStringLiteral("gjpqy,;Q");
        double descent = 0;
        for (const QChar letter : item.text()) {
            if (kDescending.contains(letter)) {
                // the letters' own descent: the font's leaves room for accents below
                descent = std::max(descent, metrics.tightBoundingRect(QString(letter)).bottom());
            }
        }
        const QRectF ink(
            at.x(), at.y() - metrics.capHeight(), item.width(), metrics.capHeight() + descent);
        const QTransform& to = painter()->deviceTransform(); // it may be turned
        m_texts.push_back(
            {item.text(), to.mapRect(ink),
             item.font().pixelSize() * std::hypot(to.m21(), to.m22())});
    }

private:
    std::vector<WrittenText>& m_texts;
};

TextRecorder::TextRecorder(QSize size)
    : m_size(size), m_engine(std::make_unique<Engine>(m_texts)) {}

TextRecorder::~TextRecorder() = default;

QString TextRecorder::all() const {
    QString joined;
    for (const WrittenText& text : m_texts) {
        joined += text.text;
    }
    return joined.remove(QLatin1Char(' '));
}

std::vector<std::string> TextRecorder::troubles(QSizeF size, double slack) const {
    const QRectF box = QRectF(QPointF(), size).adjusted(-slack, -slack, slack, slack);
    std::vector<std::string> found;
    for (std::size_t i = 0; i < m_texts.size(); ++i) {
        const std::string text = '"' + m_texts[i].text.toStdString() + '"';
        const QRectF& ink = m_texts[i].ink;
        if (!box.contains(ink)) {
            found.push_back(
                text + " reaches outside: " + std::to_string(ink.left()) + " " +
                std::to_string(ink.top()) + " " + std::to_string(ink.right()) + " " +
                std::to_string(ink.bottom()) + " of " + std::to_string(size.width()) + " x " +
                std::to_string(size.height()));
        }
        if (m_texts[i].text.contains(QChar(0x2026))) {
            found.push_back(text + " is cut");
        }
        for (std::size_t j = i + 1; j < m_texts.size(); ++j) {
            const QRectF both = ink.intersected(m_texts[j].ink);
            if (both.width() > 2 && both.height() > 2) {
                found.push_back(text + " over \"" + m_texts[j].text.toStdString() + '"');
            }
        }
    }
    return found;
}

QPaintEngine* TextRecorder::paintEngine() const {
    return m_engine.get();
}

int TextRecorder::metric(PaintDeviceMetric metric) const {
    switch (metric) {
    case PdmWidth:
        return m_size.width();
    case PdmHeight:
        return m_size.height();
    case PdmDevicePixelRatio:
        return 1;
    case PdmDevicePixelRatioScaled:
        return static_cast<int>(QPaintDevice::devicePixelRatioFScale());
    case PdmDpiX:
    case PdmDpiY:
    case PdmPhysicalDpiX:
    case PdmPhysicalDpiY:
        return 96;
    case PdmDepth:
        return 32;
    case PdmNumColors:
    case PdmWidthMM:
    case PdmHeightMM:
        break;
    }
    return 0;
}

std::vector<std::string> textTroubles(QWidget& widget) {
    TextRecorder recorder(widget.size());
    widget.render(&recorder, QPoint(), QRegion(), QWidget::RenderFlags());
    return recorder.troubles(widget.size());
}

} // namespace seamclock
