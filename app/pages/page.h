// What every page of the window shares: its look, its three slots in their fixed places, and that a
// press of a slot is told once. A page shows values and keeps none of its own but what is typed.
#pragma once

#include "app/pages/frame.h"
#include "app/parts/part.h"
#include "app/parts/slot_button.h"

#include <QWidget>
#include <vector>

namespace seamclock {

enum class SlotPlace { Back, Earlier, Stop, Step };

struct PageLook {
    const Theme* theme = &Theme::of(ThemeKind::Dark);
    Metrics metrics;
    bool mirrored = false;
    QString watermark; // through the page, behind everything; empty: none
};

/// Large and faint across the box.
void paintWatermark(QPainter& painter, const QRectF& box, const QString& word, const Theme& theme);

/// One line or two of plain words, painted.
class Sentence : public Part {
public:
    explicit Sentence(const QString& name, QWidget* parent = nullptr);

    void setText(const QString& text);
    const QString& text() const { return m_text; }
    /// Smaller, and not as bold.
    void setQuiet(bool quiet);
    /// In the ink of a passed limit: a refusal.
    void setLate(bool late);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QString m_text;
    bool m_quiet = false;
    bool m_late = false;
};

class Page : public QWidget {
    Q_OBJECT

    // Before the parts, which the constructors of pages hand over one by one.
    PageLook m_look;
    std::vector<Part*> m_parts;

public:
    explicit Page(const QString& name, QWidget* parent = nullptr);

    void setLook(const PageLook& look);
    const PageLook& look() const { return m_look; }
    /// Whether 1 to 4 are digits of something that is typed here, and so choose no bench.
    virtual bool takesDigits() const { return false; }
    /// What stands in the step's slot, for keys and pedal.
    const SlotView& stepView() const { return m_step->view(); }
    SlotButton* stepButton() const { return m_step; }

signals:
    void slotPressed(seamclock::SlotPlace place);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    virtual void place() = 0;
    virtual void lookChanged() {}

    /// A part whose look follows the page's.
    template <class P>
    P* keep(P* part) {
        m_parts.push_back(part);
        return part;
    }
    void put(QWidget* part, const QRectF& units);
    /// Where that box stands for the hand that this tablet is set to. Grids of answers and keys
    /// keep their order: they are read.
    QRectF handed(const QRectF& box) const;
    QSizeF units() const;
    /// How high quiet words must be to be read: two lines where one would be too small [units].
    double quietHeight(const QString& text, double width) const;
    void placeSlots(const Frame& frame);

    SlotButton* m_back;
    SlotButton* m_earlier;
    SlotButton* m_stop;
    SlotButton* m_step;
};

/// What stands in a page's slots: nothing; a quiet button; the step, to press now or not yet.
SlotView hiddenSlot();
SlotView plainSlot(const QString& text, const QString& under = {});
SlotView stepSlot(const QString& text, bool now = true);

} // namespace seamclock
