#include "app/parts/slides.h"

#include <QAccessibleWidget>
#include <QWidget>
#include <algorithm>

namespace seamclock {

namespace {

class SpokenSlider : public QAccessibleWidget, public QAccessibleValueInterface {
public:
    SpokenSlider(QWidget* widget, Slides& slides)
        : QAccessibleWidget(widget, QAccessible::Slider), m_slides(slides) {}

    void* interface_cast(QAccessible::InterfaceType type) override {
        return type == QAccessible::ValueInterface ? static_cast<QAccessibleValueInterface*>(this)
                                                   : QAccessibleWidget::interface_cast(type);
    }
    QVariant currentValue() const override { return m_slides.range().now; }
    QVariant maximumValue() const override { return m_slides.range().high; }
    QVariant minimumValue() const override { return m_slides.range().low; }
    QVariant minimumStepSize() const override { return m_slides.range().step; }
    void setCurrentValue(const QVariant& value) override {
        bool number = false;
        const double to = value.toDouble(&number);
        const Slides::Range range = m_slides.range();
        if (number) {
            m_slides.slideTo(std::clamp(to, range.low, range.high));
        }
    }

private:
    Slides& m_slides;
};

} // namespace

QAccessibleInterface* spokenSlider(QObject* object) {
    auto* slides = dynamic_cast<Slides*>(object);
    auto* widget = qobject_cast<QWidget*>(object);
    return slides == nullptr || widget == nullptr ? nullptr : new SpokenSlider(widget, *slides);
}

} // namespace seamclock
