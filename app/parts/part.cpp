#include "app/parts/part.h"

namespace seamclock {

Part::Part(const QString& name, QWidget* parent)
    : QWidget(parent), m_theme(&Theme::of(ThemeKind::Dark)) {
    setObjectName(name);
    setFocusPolicy(Qt::NoFocus);
}

void Part::setLook(const Theme& theme, Metrics metrics) {
    if (m_theme == &theme && m_metrics == metrics) {
        return;
    }
    m_theme = &theme;
    m_metrics = metrics;
    lookChanged();
    update();
}

QString spoken(const QStringList& words) {
    QStringList said;
    for (const QString& word : words) {
        if (!word.isEmpty()) {
            said << word;
        }
    }
    return said.join(QStringLiteral(", "));
}

} // namespace seamclock
