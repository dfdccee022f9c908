#include "app/setup/form_page.h"

#include "app/parts/mark.h"
#include "app/parts/type.h"

#include <QPainter>
#include <algorithm>

namespace seamclock {
namespace {

constexpr double kRow = 92;
constexpr double kGap = 8;
constexpr double kTitle = 56;
constexpr double kSay = 60;
constexpr double kAction = 116;

} // namespace

FormSay::FormSay(const QString& name, QWidget* parent) : Part(name, parent) {}

void FormSay::say(const QStringList& lines, bool late) {
    if (lines == m_lines && late == m_late) {
        return;
    }
    m_lines = lines;
    m_late = late;
    setAccessibleName(lines.join(QLatin1Char(' ')));
    update();
}

void FormSay::paintEvent(QPaintEvent*) {
    if (m_lines.isEmpty()) {
        return;
    }
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    double left = 0;
    const QColor ink = m_late ? theme().tone(Tone::Late).ink : theme().textSoft;
    if (m_late) {
        const double side = px(34);
        paintMark(
            painter, QRectF(0, (std::min<double>(height(), px(60)) - side) / 2, side, side),
            Mark::Late, ink, theme());
        left = side + px(12);
    }
    painter.setPen(ink);
    const double part = height() / static_cast<double>(m_lines.size());
    for (int i = 0; i < m_lines.size(); ++i) {
        const QRectF box(left, part * i, width() - left, part);
        const Wrapped text = wrapped(
            m_lines[i], std::min(textPx(22), px(30)), px(13), box.width(), 4,
            m_late ? kLabelWeight : kPlainWeight, part - px(14)); // room for descenders
        drawWrapped(
            painter, box, Qt::AlignLeft | Qt::AlignVCenter, text,
            m_late ? kLabelWeight : kPlainWeight);
    }
}

FormPage::FormPage(QWidget* parent)
    : Page("form", parent), m_title(keep(new Sentence("formTitle", this))),
      m_say(keep(new FormSay("formSay", this))), m_notes(keep(new FormSay("formNotes", this))),
      m_plot(keep(new Plot("formPlot", this))) {
    for (int i = 0; i < kCells; ++i) {
        auto* cell = keep(new FormCell(QString("formCell%1").arg(i), this));
        m_cells.push_back(cell);
        connect(cell, &FormCell::typed, this, [this, cell](const QString& text) {
            m_focus = cell->field().pointer;
            emit typed(cell->field(), text);
        });
        connect(cell, &FormCell::asked, this, [this, cell] { emit asked(cell->field()); });
        connect(cell, &FormCell::focused, this, [this, cell] {
            m_focus = cell->field().pointer;
            saySomething();
        });
        connect(cell, &FormCell::entered, this, [this] { focusNextChild(); });
    }
    for (int i = 0; i < kActions; ++i) {
        auto* button = keep(new SlotButton(QString("formAction%1").arg(i), this));
        m_actions.push_back(button);
        connect(button, &SlotButton::pressed, this, [this, i] {
            const FormAction action = m_shownActions.at(static_cast<std::size_t>(i));
            emit acted(action);
        });
    }
}

void FormPage::show(const FormPageView& view) {
    m_view = view;
    place();
}

void FormPage::begin() {
    m_leaf = 0;
    m_focus.clear();
}

int FormPage::leaves() const {
    const auto rows = static_cast<int>(m_view.section.rows.size());
    return std::max(1, (rows + m_perLeaf - 1) / m_perLeaf);
}

void FormPage::turnLeaf(int by) {
    const int next = std::clamp(m_leaf + by, 0, leaves() - 1);
    if (next != m_leaf) {
        m_leaf = next;
        m_focus.clear();
        place();
    }
}

FormCell* FormPage::cellOf(const std::string& pointer) {
    for (std::size_t row = 0; row < m_view.section.rows.size(); ++row) {
        for (const FormField& field : m_view.section.rows[row].fields) {
            if (field.pointer == pointer) {
                turnLeaf(static_cast<int>(row) / m_perLeaf - m_leaf);
            }
        }
    }
    const auto found = std::find_if(m_cells.begin(), m_cells.end(), [&](const FormCell* cell) {
        return cell->isVisibleTo(this) && cell->field().pointer == pointer;
    });
    return found == m_cells.end() ? nullptr : *found;
}

SlotButton* FormPage::actionOf(const QString& text) {
    for (std::size_t row = 0; row < m_view.section.rows.size(); ++row) {
        for (const FormAction& action : m_view.section.rows[row].actions) {
            if (action.text == text) {
                turnLeaf(static_cast<int>(row) / m_perLeaf - m_leaf);
                for (std::size_t i = 0; i < m_shownActions.size(); ++i) {
                    if (m_shownActions[i] == action) {
                        return m_actions[i];
                    }
                }
            }
        }
    }
    return nullptr;
}

bool FormPage::isLate(const FormRow& row, std::size_t field) const {
    return !row.fields[field].finding.isEmpty() || (!row.finding.isEmpty() && field == 0);
}

void FormPage::saySomething() {
    QString first;
    QString focused;
    QString help;
    const auto said = [](const FormField& field) {
        return field.caption + QStringLiteral(": ") + field.finding;
    };
    const auto& rows = m_view.section.rows;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const bool here = static_cast<int>(i) / m_perLeaf == m_leaf;
        for (const FormField& field : rows[i].fields) {
            const bool isFocus = field.pointer == m_focus;
            if (isFocus) {
                focused = !field.finding.isEmpty() ? said(field) : rows[i].finding;
                help = field.help;
            }
            if (here && first.isEmpty() && !field.finding.isEmpty()) {
                first = said(field);
            }
        }
        if (here && first.isEmpty()) {
            first = rows[i].finding;
        }
    }
    if (focused.isEmpty()) {
        focused = first;
    }
    if (focused.isEmpty() && !m_view.section.findings.isEmpty()) {
        focused = m_view.section.findings.front();
    }
    if (!focused.isEmpty()) {
        m_say->say({focused}, true);
    } else {
        m_say->say(help.isEmpty() ? QStringList() : QStringList{help}, false);
    }
}

void FormPage::refresh() {
    m_title->setText(m_view.section.title);
    m_plot->show(m_view.section.plot.value_or(PlotView()));
    m_notes->say(m_view.section.notes, false);
    m_step->show(m_view.step);
    const int count = leaves();
    SlotView before = plainSlot(tr("Rows before"));
    SlotView after = plainSlot(tr("Rows after"), tr("%1 of %2").arg(m_leaf + 1).arg(count));
    before.look = count < 2    ? SlotView::Look::Hidden
                  : m_leaf > 0 ? SlotView::Look::Plain
                               : SlotView::Look::Gone;
    after.look = count < 2            ? SlotView::Look::Hidden
                 : m_leaf + 1 < count ? SlotView::Look::Plain
                                      : SlotView::Look::Gone;
    m_back->show(before);
    m_stop->show(after);
    saySomething();
}

void FormPage::place() {
    const Frame frame = frameOf(units(), FrameKind::Page, look().mirrored);
    const QRectF body = frame.body;
    const bool plot = m_view.section.plot && !m_view.section.plot->isEmpty();
    const bool notes = !m_view.section.notes.isEmpty();
    put(m_title, QRectF(body.x() + 6, body.y(), body.width() - 12, kTitle));
    QRectF rows(body.x(), body.y() + kTitle + 4, body.width(), body.height() - kTitle - 4);
    QRectF side;
    const double noted =
        notes ? (plot ? 58.0 * static_cast<double>(m_view.section.notes.size()) : 90.0) : 0;
    if (plot && frame.portrait) {
        side = QRectF(rows.x(), rows.y(), rows.width(), 300 + noted);
        rows.setTop(side.bottom() + kGap);
    } else if (plot) {
        rows.setWidth(body.width() * 0.6);
        side = QRectF(rows.right() + 12, rows.y(), body.right() - rows.right() - 12, rows.height());
        if (look().mirrored) {
            side.moveLeft(body.x());
            rows.moveRight(body.right());
        }
    } else if (notes) {
        side = QRectF(rows.x(), rows.bottom() - noted, rows.width(), noted);
        rows.setBottom(side.top() - kGap);
    }
    const QRectF say(rows.x() + 6, rows.bottom() - kSay, rows.width() - 12, kSay);
    put(m_say, say);
    rows.setBottom(say.top() - 4);
    QRectF noteBox(side.x() + 6, side.bottom() - noted, side.width() - 12, noted);
    put(m_notes, notes ? noteBox : QRectF());
    put(m_plot,
        plot ? QRectF(side.x(), side.y(), side.width(), side.height() - noted - (notes ? 6 : 0))
             : QRectF());

    m_perLeaf = std::max(1, static_cast<int>((rows.height() + kGap) / (kRow + kGap)));
    m_leaf = std::min(m_leaf, leaves() - 1);
    std::size_t cell = 0;
    std::size_t action = 0;
    m_shownActions.clear();
    for (int line = 0; line < m_perLeaf; ++line) {
        const auto index = static_cast<std::size_t>(m_leaf * m_perLeaf + line);
        if (index >= m_view.section.rows.size()) {
            break;
        }
        const FormRow& row = m_view.section.rows[index];
        const double top = rows.y() + line * (kRow + kGap);
        const auto buttons = static_cast<double>(row.actions.size());
        const double button = row.fields.empty()
                                  ? std::min(360.0, (rows.width() - (buttons - 1) * kGap) / buttons)
                                  : kAction;
        const double forFields =
            rows.width() - (row.fields.empty() ? 0 : buttons * (kAction + kGap));
        double shares = 0;
        for (const FormField& field : row.fields) {
            shares += field.share;
        }
        double left = rows.x();
        const double free = forFields - (static_cast<double>(row.fields.size()) - 1) * kGap;
        for (std::size_t i = 0; i < row.fields.size() && cell < m_cells.size(); ++i) {
            const double width = free * row.fields[i].share / shares;
            m_cells[cell]->show(row.fields[i], isLate(row, i));
            put(m_cells[cell], QRectF(left, top, width, kRow));
            left += width + kGap;
            ++cell;
        }
        for (std::size_t i = 0; i < row.actions.size() && action < m_actions.size(); ++i) {
            m_actions[action]->show(plainSlot(row.actions[i].text));
            m_shownActions.push_back(row.actions[i]);
            put(m_actions[action], QRectF(left, top, button, kRow));
            left += button + kGap;
            ++action;
        }
    }
    for (; cell < m_cells.size(); ++cell) {
        put(m_cells[cell], QRectF());
    }
    for (; action < m_actions.size(); ++action) {
        put(m_actions[action], QRectF());
    }
    placeSlots(frame);
    refresh();
}

} // namespace seamclock
