// Numbers typed with gloves on: a field that shows the number, its mark and where it stands in the
// allowed range, and a pad of large keys, 1 2 3 on top. The pad keeps the text as typed, unless it
// is told to keep nothing (a PIN); what it means, and whether it is within limits, is the screen's
// to say.
#pragma once

#include <array>
#include <optional>
#include <vector>

#include <QString>

#include "app/parts/mark.h"
#include "app/parts/part.h"
#include "app/parts/slot_button.h"

namespace seamclock {

struct NumberView {
    struct Place {
        QString text; // "209 °C" when done, else its number
        bool done = false;
        bool now = false;

        bool operator==(const Place&) const = default;
    };

    QString title;
    QString where;
    QString unit;
    QString text;                // as typed
    std::optional<Mark> mark;    // Done or Late; none while nothing is typed
    std::vector<Place> places;   // none: no row of places
    std::optional<double> value; // for the triangle; none while nothing is typed
    std::optional<double> low;
    std::optional<double> high;
    std::optional<double> target;
    QString lowText;
    QString highText;
    QString targetText;
    QString allowed; // "allowed 200 to 220 °C"
    QString below;   // "cold"
    QString above;   // "hot"

    bool operator==(const NumberView&) const = default;
};

class NumberField : public Part {
public:
    explicit NumberField(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const NumberView& view);
    const NumberView& view() const { return m_view; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    NumberView m_view;
};

class NumberPad : public Part {
    Q_OBJECT

public:
    // decimalSign: as the language writes it, "." or ","
    explicit NumberPad(QChar decimalSign, QWidget* parent = nullptr);

    // Sets without a signal. Digits and at most one decimal sign; others are left out.
    void setText(const QString& text);
    const QString& text() const { return m_text; }

    void setDecimalSign(QChar decimalSign);
    QChar decimalSign() const { return m_decimal; }
    void setDecimals(int most);             // after the sign; 0 blanks its key. At first 2
    void setMostDigits(int most);           // in all. At first 6
    void setEraseName(const QString& name); // for screen readers: "erase"
    // Keys are told one by one and nothing is kept; there is no decimal sign then.
    void setForgetful();

    // As if its key were pressed: for a keyboard's digits and Backspace.
    void type(QChar digitOrSign);
    void erase();

signals:
    void textChanged(const QString& text);
    void digitTyped(QChar digit); // of a forgetful pad, as the next one
    void eraseTyped();

protected:
    void resizeEvent(QResizeEvent* event) override;
    void lookChanged() override;

private:
    void place();
    void showKeys();
    bool mayType(QChar sign) const;

    QChar m_decimal;
    int m_decimals = 2;
    int m_mostDigits = 6;
    bool m_forgetful = false;
    QString m_text;
    QString m_eraseName = QStringLiteral("erase");
    std::array<SlotButton*, 12> m_keys{}; // 1 to 9, erase, 0, sign
};

} // namespace seamclock
