// One question with large answers: which seam, why, what to change. What doesn't fit is on a
// further leaf, never smaller.
#pragma once

#include "app/pages/page.h"

namespace seamclock {

struct ChoiceView {
    struct Choice {
        QString text;
        QString under;
        std::optional<Sign> sign;
        bool chosen = false;
        bool enabled = true;

        bool operator==(const Choice&) const = default;
    };

    QString title;
    QString under; // quiet, below the title
    std::vector<Choice> choices;
    bool narrow = false; // their words are short: one column more where it saves a second leaf
    SlotView back;
    SlotView stop;
    SlotView step;

    bool operator==(const ChoiceView&) const = default;
};

class ChoicePage : public Page {
    Q_OBJECT

public:
    explicit ChoicePage(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const ChoiceView& view);
    const ChoiceView& view() const { return m_view; }

signals:
    void chosen(int index);

protected:
    void place() override;

private:
    static constexpr int kTiles = 18;
    void refresh();

    ChoiceView m_view;
    Sentence* m_title;
    Sentence* m_under;
    std::vector<SlotButton*> m_tiles;
    int m_leaf = 0;
    int m_perLeaf = kTiles;
    bool m_leaves = false;
};

} // namespace seamclock
