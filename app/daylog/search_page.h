// What the day log is searched for: words on a line that a keyboard types into, and tiles for the
// rest: operator, material, job, and what is done with the day.
#pragma once

#include "app/pages/page.h"

#include <vector>

class QLineEdit;

namespace seamclock {

struct SearchView {
    struct Tile {
        QString text;
        QString under;
        std::optional<Sign> sign;
        bool chosen = false;
        bool enabled = true;

        bool operator==(const Tile&) const = default;
    };

    QString title;
    std::vector<Tile> tiles;

    bool operator==(const SearchView&) const = default;
};

class SearchPage : public Page {
    Q_OBJECT

public:
    explicit SearchPage(QWidget* parent = nullptr);
    bool takesDigits() const override { return true; }

    void show(const SearchView& view);
    using QWidget::show;
    const SearchView& view() const { return m_view; }
    QString words() const;
    void setWords(const QString& words);
    void takeKeys();

signals:
    void tilePressed(int index);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void place() override;
    void lookChanged() override;

private:
    static constexpr int kTiles = 9;
    SearchView m_view;
    Sentence* m_title;
    QLineEdit* m_line;
    std::vector<SlotButton*> m_tiles;
};

} // namespace seamclock
