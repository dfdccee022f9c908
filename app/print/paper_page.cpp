#include "app/print/paper_page.h"

#include "app/parts/type.h"

#include <QLocale>

namespace seamclock {

Paper paperOfLocale() {
    // Of the machine, not of the language: English is read on A4, too.
    return QLocale::system().measurementSystem() == QLocale::ImperialUSSystem ? Paper::Letter
                                                                              : Paper::A4;
}

QPageLayout pageOf(Paper paper, double marginMm) {
    return QPageLayout(
        QPageSize(paper == Paper::A4 ? QPageSize::A4 : QPageSize::Letter), QPageLayout::Portrait,
        QMarginsF(marginMm, marginMm, marginMm, marginMm), QPageLayout::Millimeter);
}

QFont paperFont(double size, QFont::Weight weight) {
    QFont font = partFont(size, weight);
    font.setStyleStrategy(
        static_cast<QFont::StyleStrategy>(font.styleStrategy() | QFont::PreferNoShaping));
    return font;
}

} // namespace seamclock
