// The benches' cells and the clock's tile, above every page; and the banner of a standing alarm.
#pragma once

#include "app/pages/page.h"
#include "app/parts/press_part.h"
#include "app/parts/strip.h"

#include <vector>

namespace seamclock {

class StripBar : public QWidget {
    Q_OBJECT

public:
    explicit StripBar(QWidget* parent = nullptr);

    void setLook(const PageLook& look);
    using QWidget::show;
    void show(const std::vector<StripCellView>& cells, const StatusView& status);
    /// A banner stands in the benches' place: their cells are away, and no press goes to them.
    void setCovered(bool covered);
    /// What is not the clock's tile.
    QRect benchesPlace() const;

signals:
    void benchPressed(int post);
    void statusPressed();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void place();

    PageLook m_look;
    std::vector<StripCell*> m_cells;
    StatusTile* m_status;
    std::size_t m_benches = 0;
    bool m_covered = false;
};

/// Stands until its trouble is over or was seen; the screen's white frame goes with it. What is
/// told and no trouble stands there for a while, in the calm colour.
class AlarmBanner : public PressPart {
    Q_OBJECT

public:
    explicit AlarmBanner(QWidget* parent = nullptr);

    void setText(const QString& text, const QString& button, bool calm);
    const QString& text() const { return m_text; }
    bool isCalm() const { return m_calm; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QString m_text;
    QString m_button;
    bool m_calm = false;
};

} // namespace seamclock
