// What says on every screen of it that this is practice: black and white stripes around, the word
// at the top right. Neither is a signal's colour. Beside the word stand the bench's cell and the
// lesson with its process time, which is also where a trainee finds what no control does.
#pragma once

#include "app/pages/page.h"
#include "app/parts/press_part.h"
#include "app/parts/strip.h"
#include "app/parts/stripes.h"

#include <QPixmap>

namespace seamclock {

/// The word that stands everywhere.
QString practiceWord();

struct LessonLineView {
    QString lesson; // "Lesson 4, weld 2 of 5"
    QString time;   // "process time 4:31, speed × 1"
    bool pressable = false;

    bool operator==(const LessonLineView&) const = default;
};

class LessonLine : public PressPart {
    Q_OBJECT

public:
    explicit LessonLine(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const LessonLineView& view);
    const LessonLineView& view() const { return m_view; }

protected:
    void paintEvent(QPaintEvent* event) override;
    bool takesPress() const override { return m_view.pressable; }

private:
    LessonLineView m_view;
};

class PracticeTag : public Part {
public:
    explicit PracticeTag(QWidget* parent = nullptr);

protected:
    void paintEvent(QPaintEvent* event) override;
    void lookChanged() override { m_stripes = QPixmap(); }

private:
    QPixmap m_stripes; // painted once
};

class PracticeStrip : public QWidget {
    Q_OBJECT

public:
    explicit PracticeStrip(QWidget* parent = nullptr);

    void setLook(const PageLook& look);
    using QWidget::show;
    /// No cell: no weld is open.
    void show(const std::optional<StripCellView>& cell, const LessonLineView& line);
    const LessonLineView& line() const { return m_line->view(); }
    /// A banner stands in the place of cell and line.
    void setCovered(bool covered);
    QRect freePlace() const;

signals:
    void linePressed();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void place();

    PageLook m_look;
    StripCell* m_cell;
    LessonLine* m_line;
    PracticeTag* m_tag;
    bool m_withCell = false;
    bool m_covered = false;
};

} // namespace seamclock
