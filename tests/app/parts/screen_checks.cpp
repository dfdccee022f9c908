#include "tests/app/parts/screen_checks.h"

#include "app/parts/changeover_field.h"
#include "app/parts/press_part.h"
#include "app/parts/slot_button.h"
#include "tests/app/parts/text_recorder.h"

#include <QAccessible>
#include <QLineEdit>
#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <set>

namespace seamclock::test {

QSize Tablet::window() const {
    const QSize lying(qRound(pixels.width() / scale), qRound(pixels.height() / scale));
    return upright ? lying.transposed() : lying;
}

double Tablet::dpi() const {
    return std::hypot(pixels.width(), pixels.height()) / scale / inch;
}

std::string Tablet::name() const {
    return fmt::format(
        "{}x{} at {} on {} inch{}", pixels.width(), pixels.height(), scale, inch,
        upright ? ", upright" : "");
}

const std::vector<Tablet>& tablets() {
    static const std::vector<Tablet> kAll = [] {
        std::vector<Tablet> all;
        for (const QSize pixels : {QSize(1280, 800), QSize(1920, 1200)}) {
            for (const double scale : {1.0, 1.5, 2.0, 2.5}) {
                for (const double inch : {8.0, 10.0, 12.0}) {
                    for (const bool upright : {false, true}) {
                        const Tablet one{pixels, scale, inch, upright};
                        bool known = false;
                        for (const Tablet& other : all) {
                            known = known || (other.window() == one.window() &&
                                              std::abs(other.dpi() - one.dpi()) < 0.01);
                        }
                        if (!known) {
                            all.push_back(one);
                        }
                    }
                }
            }
        }
        return all;
    }();
    return kAll;
}

namespace {

bool canBeTouched(QWidget* widget) {
    if (auto* line = qobject_cast<QLineEdit*>(widget)) {
        // A line inside a larger target: the whole of that takes the press.
        return dynamic_cast<PressPart*>(line->parentWidget()) == nullptr;
    }
    if (auto* part = dynamic_cast<PressPart*>(widget)) {
        return part->isThere();
    }
    QAccessibleInterface* told = QAccessible::queryAccessibleInterface(widget);
    return told != nullptr && told->role() == QAccessible::Slider;
}

} // namespace

std::vector<Target> targetsOf(QWidget& window) {
    std::vector<Target> found;
    for (QWidget* widget : window.findChildren<QWidget*>()) {
        if (widget->isVisible() && canBeTouched(widget)) {
            found.push_back(
                {widget, QRect(widget->mapTo(&window, QPoint()), widget->size()),
                 widget->objectName().toStdString()});
        }
    }
    return found;
}

std::vector<std::string> targetTroubles(QWidget& window, double dpi) {
    std::vector<std::string> wrong;
    const double perMm = dpi / 25.4;
    const std::vector<Target> targets = targetsOf(window);
    for (std::size_t i = 0; i < targets.size(); ++i) {
        const Target& one = targets[i];
        const double wide = one.place.width() / perMm;
        const double high = one.place.height() / perMm;
        if (wide < kTargetMm || high < kTargetMm) {
            wrong.push_back(fmt::format("{}: {:.1f} x {:.1f} mm", one.name, wide, high));
        }
        if (!window.rect().contains(one.place)) {
            wrong.push_back(fmt::format(
                "{} leaves the window: {} {} {} {}", one.name, one.place.left(), one.place.top(),
                one.place.right(), one.place.bottom()));
        }
        for (std::size_t j = i + 1; j < targets.size(); ++j) {
            if (one.place.intersects(targets[j].place)) {
                wrong.push_back(one.name + " over " + targets[j].name);
            }
        }
    }
    return wrong;
}

namespace {

/// Pieces that stand beside each other, digits in their cells, as one.
QStringList writtenOn(QWidget& widget) {
    TextRecorder recorder(widget.size());
    widget.render(&recorder, QPoint(), QRegion(), QWidget::RenderFlags());
    QStringList found;
    QRectF last;
    for (const WrittenText& piece : recorder.texts()) {
        const bool joined = !found.isEmpty() && std::abs(piece.ink.top() - last.top()) < 1 &&
                            piece.ink.left() >= last.right() - 1 &&
                            piece.ink.left() - last.right() < piece.pixelSize * 0.2;
        if (joined) {
            found.back() += piece.text;
        } else {
            found << piece.text;
        }
        last = piece.ink;
    }
    return found;
}

QString bare(QString text) {
    text.remove(QLatin1Char(' ')).remove(QChar(0x00A0));
    return text.toLower();
}

bool saysSomething(const QString& text) {
    return std::any_of(
        text.begin(), text.end(), [](QChar sign) { return sign.isLetterOrNumber(); });
}

void collect(QAccessibleInterface* from, std::vector<QAccessibleInterface*>& all) {
    for (int i = 0; i < from->childCount(); ++i) {
        QAccessibleInterface* child = from->child(i);
        if (child != nullptr && !child->state().invisible) {
            all.push_back(child);
            collect(child, all);
        }
    }
}

} // namespace

std::vector<std::string> spokenTroubles(QWidget& window, int& told) {
    std::vector<std::string> wrong;
    QAccessibleInterface* root = QAccessible::queryAccessibleInterface(&window);
    if (root == nullptr) {
        return {"the window is not in the tree"};
    }
    std::vector<QAccessibleInterface*> all;
    collect(root, all);
    std::set<QObject*> reached;
    for (QAccessibleInterface* one : all) {
        auto* widget = qobject_cast<QWidget*>(one->object());
        if (widget == nullptr) {
            continue;
        }
        reached.insert(widget);
        const bool active = canBeTouched(widget) || one->role() == QAccessible::Button;
        const auto* part = dynamic_cast<Part*>(widget);
        if (!active && part == nullptr) {
            continue;
        }
        const QString name = one->text(QAccessible::Name);
        const std::string what = widget->objectName().toStdString();
        if (qobject_cast<QLineEdit*>(widget) != nullptr) {
            ++told;
            if (name.isEmpty()) {
                wrong.push_back(what + ": a line without a name");
            }
            continue;
        }
        const QStringList written = writtenOn(*widget);
        if (!saysSomething(name) && (active || saysSomething(written.join(QString())))) {
            wrong.push_back(what + " has no name; on it: " + written.join(" | ").toStdString());
            continue;
        }
        ++told;
        if (!active) {
            continue;
        }
        const QString said = bare(name + one->text(QAccessible::Description));
        for (const QString& text : written) {
            if (saysSomething(text) && !said.contains(bare(text))) {
                wrong.push_back(
                    what + " is \"" + name.toStdString() + "\" and lacks \"" + text.toStdString() +
                    '"');
            }
        }
    }
    for (const Target& target : targetsOf(window)) {
        if (reached.count(target.widget) == 0) {
            wrong.push_back(target.name + " is not in the tree");
        }
    }
    return wrong;
}

namespace {

/// Its words lie in the window, under what else stands there.
void underButtons(QWidget& window, QWidget& field, std::vector<std::string>& wrong) {
    TextRecorder recorder(field.size());
    field.render(&recorder, QPoint(), QRegion(), QWidget::RenderFlags());
    for (const SlotButton* button : window.findChildren<SlotButton*>()) {
        if (!button->isVisible() || !button->isThere()) {
            continue;
        }
        const QRectF place(button->mapTo(&window, QPoint()), QSizeF(button->size()));
        for (const WrittenText& text : recorder.texts()) {
            if (text.ink.translated(field.mapTo(&window, QPoint())).intersects(place)) {
                wrong.push_back(
                    "\"" + text.text.toStdString() + "\" lies under " +
                    button->objectName().toStdString());
            }
        }
    }
}

} // namespace

std::vector<std::string> blueTroubles(QWidget& window) {
    std::vector<std::string> blue;
    for (const SlotButton* button : window.findChildren<SlotButton*>()) {
        if (button->isVisible() && button->view().look == SlotView::Look::Act) {
            blue.push_back(button->view().text.toStdString() + " is blue");
        }
    }
    return blue.size() > 1 ? blue : std::vector<std::string>();
}

std::vector<std::string> wordTroubles(QWidget& window, int& parts) {
    std::vector<std::string> wrong;
    for (QWidget* widget : window.findChildren<QWidget*>()) {
        auto* part = dynamic_cast<Part*>(widget);
        if (part == nullptr || !part->isVisible()) {
            continue;
        }
        ++parts;
        for (const std::string& trouble : textTroubles(*part)) {
            wrong.push_back(part->objectName().toStdString() + ": " + trouble);
        }
        if (dynamic_cast<ChangeoverField*>(part) != nullptr) {
            underButtons(window, *part, wrong);
        }
    }
    return wrong;
}

} // namespace seamclock::test
