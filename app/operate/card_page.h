// The weld card on the screen: the ribbon blown up to columns.
#pragma once

#include "app/operate/card_view.h"
#include "app/pages/page.h"

namespace seamclock {

class CardPanel : public Part {
public:
    explicit CardPanel(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const CardView& view);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void paintColumn(QPainter& painter, const QRectF& box, const CardView::Column& column) const;
    void paintArithmetic(QPainter& painter, const QRectF& box) const;
    void paintSources(QPainter& painter, const QRectF& box) const;
    void panel(QPainter& painter, const QRectF& box) const;

    CardView m_view;
};

class CardPage : public Page {
    Q_OBJECT

public:
    explicit CardPage(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const CardView& view, bool onlyLook);
    /// No page is made of this card: in practice it is no real weld's.
    void setPrintable(bool printable) { m_printable = printable; }

protected:
    void place() override;

private:
    bool m_printable = true;
    CardPanel* m_panel;
};

} // namespace seamclock
