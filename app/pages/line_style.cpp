#include "app/pages/line_style.h"

#include "app/parts/type.h"

#include <QLineEdit>
#include <algorithm>

namespace seamclock {

void styleLine(QLineEdit& line, const PageLook& look) {
    const Theme& theme = *look.theme;
    line.setFont(partFont(look.metrics.px(28), kLabelWeight));
    line.setStyleSheet(
        QString(
            "QLineEdit { background: %1; color: %2; border: %3px solid %4; border-radius: %5px; "
            "padding-left: %5px; }")
            .arg(theme.panel.name(), theme.text.name())
            .arg(std::max(1.0, look.metrics.px(2)))
            .arg(theme.edge.name())
            .arg(look.metrics.px(14)));
}

} // namespace seamclock
