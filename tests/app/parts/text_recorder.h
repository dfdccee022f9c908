// A paint device that keeps, instead of pixels, every piece of text with the rectangle its letters
// fill. So a test sees what was written, in which size, and whether it was cut off, without reading
// pixels.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include <QPaintDevice>
#include <QPaintEngine>
#include <QRectF>
#include <QString>
#include <QWidget>

namespace seamclock {

struct WrittenText {
    QString text;
    QRectF ink; // from cap height to descender, in the device's pixels
    double pixelSize = 0;
};

class TextRecorder : public QPaintDevice {
public:
    explicit TextRecorder(QSize size);
    ~TextRecorder() override;

    const std::vector<WrittenText>& texts() const { return m_texts; }
    // What is wrong with the texts of a thing of that size, each in one line: outside, written over
    // another, or cut with "…". `slack`: px, for a glyph's side bearing.
    std::vector<std::string> troubles(QSizeF size, double slack = 1) const;
    // All that was written, in order, without spaces: words broken into lines or digits stand
    // together again.
    QString all() const;

    QPaintEngine* paintEngine() const override;

protected:
    int metric(PaintDeviceMetric metric) const override;

private:
    class Engine;

    QSize m_size;
    std::vector<WrittenText> m_texts;
    std::unique_ptr<Engine> m_engine;
};

// The same of a widget as it stands, without its children.
std::vector<std::string> textTroubles(QWidget& widget);

} // namespace seamclock
