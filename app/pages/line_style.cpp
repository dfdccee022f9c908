#include "app/pages/line_style.h"

#include "app/parts/type.h"

#include <QLineEdit>
#include <QPalette>
#include <algorithm>

namespace seamclock {

namespace {

constexpr double kLetters = 28;
constexpr double kSmallest = 13;
constexpr double kInset = 14;

} // namespace

void styleLine(QLineEdit& line, const PageLook& look) {
    const Theme& theme = *look.theme;
    line.setFont(partFont(look.metrics.px(kLetters), kLabelWeight));
    line.setStyleSheet(
        QString("QLineEdit { background: %1; border: %2px solid %3; border-radius: %4px; "
                "padding-left: %4px; }")
            .arg(theme.panel.name())
            .arg(std::max(1.0, look.metrics.px(2)))
            .arg(theme.edge.name())
            .arg(look.metrics.px(kInset)));
    // Not in the sheet, which would take half of its colour for what the line is for.
    QPalette inks = line.palette();
    inks.setColor(QPalette::Text, theme.text);
    inks.setColor(QPalette::PlaceholderText, theme.textSoft);
    line.setPalette(inks);
}

void fitLine(QLineEdit& line, const PageLook& look) {
    const auto px = [&look](double units) { return look.metrics.px(units); };
    const double wide = line.width() - px(2 * kInset + 8); // the frame, and the cursor's place
    line.setFont(partFont(
        fittedSize(line.text(), px(kLetters), px(kSmallest), wide, kLabelWeight), kLabelWeight));
}

} // namespace seamclock
