// The page for "what if": four values to move, what comes of it as curves and numbers. Curves come
// at once; the spread follows from a thread of its own when the hand has come to rest.
#pragma once

#include "app/pages/page.h"
#include "app/setup/heat_view.h"
#include "app/setup/heat_worker.h"

namespace seamclock {

class HeatRows : public Part {
public:
    explicit HeatRows(const QString& name, QWidget* parent = nullptr);

    void setRows(const std::vector<HeatValueRow>& rows, const QString& caution);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::vector<HeatValueRow> m_rows;
    QString m_caution;
};

class HeatPage : public Page {
    Q_OBJECT

public:
    explicit HeatPage(QWidget* parent = nullptr);

    /// The plan's course; the sliders stand on it. Missing: no values for its plastic.
    Result<void> open(const HeatCourse& course, const std::vector<Material>& materials);
    /// All four as the plan has them.
    void reset();
    const HeatView& view() const { return m_view; }
    ValueSlider* slider(WhatIf what) { return m_sliders[static_cast<std::size_t>(what)]; }
    /// The spread of what stands now is there.
    bool hasSpread() const { return m_hasSpread; }

signals:
    void spreadCame();

protected:
    void place() override;

private:
    void move(WhatIf what, double value);
    void work();
    void spreadCameWith(const HeatEstimate& estimate);
    void refresh();

    HeatCourse m_course; // as moved
    std::vector<Material> m_materials;
    HeatEstimate m_plan;
    HeatEstimate m_now;
    HeatView m_view;
    bool m_hasSpread = false;
    Sentence* m_title;
    Sentence* m_under;
    std::vector<ValueSlider*> m_sliders;
    Plot* m_plot;
    HeatRows* m_rows;
    HeatWorker* m_worker;
};

} // namespace seamclock
