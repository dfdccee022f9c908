// A page of words: what a lesson teaches, what rings, how far a score is worked out.
#pragma once

#include "app/pages/page.h"
#include "app/parts/mark.h"

#include <QStringList>
#include <optional>

namespace seamclock {

struct TellView {
    QString title;
    std::optional<Sign> sign;
    QStringList lines;              // paragraphs
    std::optional<double> progress; // 0 to 1, as a bar below
    SlotView back;
    SlotView stop;
    SlotView step;

    bool operator==(const TellView&) const = default;
};

class TellText : public Part {
public:
    explicit TellText(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const TellView& view);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    TellView m_view;
};

class TellPage : public Page {
    Q_OBJECT

public:
    explicit TellPage(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const TellView& view);
    const TellView& view() const { return m_view; }

protected:
    void place() override;

private:
    TellView m_view;
    TellText* m_text;
};

} // namespace seamclock
