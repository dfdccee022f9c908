// A person's name, by a keyboard: the one thing about people that the number pad can't say.
#pragma once

#include "app/pages/page.h"
#include "core/people/person.h"

class QLineEdit;

namespace seamclock {

struct NameView {
    QString title;
    QString under; // quiet, below the line: what is meant, or what is wrong with it
    QString line;  // what the line is for; empty: a name
    int most = static_cast<int>(kLongestName);
    SlotView back;
    SlotView stop;
    SlotView step;

    bool operator==(const NameView&) const = default;
};

class NamePage : public Page {
    Q_OBJECT

public:
    explicit NamePage(QWidget* parent = nullptr);
    bool takesDigits() const override { return true; }

    using QWidget::show;
    void show(const NameView& view);
    const NameView& view() const { return m_view; }
    void setName(const QString& name);
    /// As typed, without blanks at its ends.
    QString name() const;
    /// The keyboard's keys go to the line.
    void takeKeys();

signals:
    void typed();

protected:
    void place() override;
    void lookChanged() override;

private:
    NameView m_view;
    Sentence* m_title;
    Sentence* m_under;
    QLineEdit* m_line;
};

} // namespace seamclock
