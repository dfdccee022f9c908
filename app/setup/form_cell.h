// One field of a form: its caption with the unit, and what is typed or chosen. The whole tile is
// the target, as a finger does not meet a line of letters.
#pragma once

#include "app/parts/press_part.h"
#include "app/setup/form.h"

class QLineEdit;

namespace seamclock {

class FormCell : public PressPart {
    Q_OBJECT

public:
    explicit FormCell(const QString& name, QWidget* parent = nullptr);

    using QWidget::show;
    /// `late`: something is wrong with it, or with its row.
    void show(const FormField& field, bool late);
    const FormField& field() const { return m_field; }
    bool isTyped() const;
    void takeKeys();
    /// As a person at a keyboard who replaces the value.
    void type(const QString& text);

signals:
    void typed(const QString& text);
    /// A value that is chosen on a page of its own.
    void asked();
    void focused();
    void entered();

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void lookChanged() override;
    bool eventFilter(QObject* watched, QEvent* event) override;
    bool takesPress() const override { return m_field.kind != FormField::Kind::Shown; }

private:
    void placeLine();
    void styleLine();

    FormField m_field;
    bool m_late = false;
    QLineEdit* m_line;
};

} // namespace seamclock
