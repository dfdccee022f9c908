#include "app/daylog/day_page.h"

#include "app/parts/brush.h"
#include "app/parts/sign.h"
#include "app/parts/type.h"

#include <QMouseEvent>
#include <QPainter>
#include <QTouchEvent>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

namespace seamclock {
namespace {

constexpr double kOuter = 16;
constexpr double kTop = 12;
constexpr double kCells = 90;
constexpr double kBetween = 8;
constexpr double kRow = 104;
constexpr double kRowGap = 8;
constexpr double kButtons = 92;

} // namespace

// ---- a line

JointRow::JointRow(const QString& name, QWidget* parent) : PressPart(name, parent) {}

void JointRow::show(const JointRowView& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    setAccessibleName(spoken({view.number, view.seam, view.time, view.reason, view.decided}));
    update();
}

QRectF JointRow::markPlace() const {
    const double mark = px(42);
    return {px(18), (height() - mark) / 2, mark, mark};
}

void JointRow::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double pen = px(m_view.chosen ? 4.5 : 1.5);
    const QRectF box = QRectF(rect()).adjusted(pen / 2, pen / 2, -pen / 2, -pen / 2);
    painter.setPen(QPen(m_view.chosen ? theme().text : theme().edge, pen));
    painter.setBrush(theme().panel);
    painter.drawRoundedRect(box, px(14), px(14));
    paintMark(
        painter, markPlace(), m_view.mark, theme().tone(m_view.tone).ink, theme(), m_view.fraction);
    const double x = px(76);
    const double wide = width() - x - px(18);
    painter.setPen(theme().text);
    const QRectF upper(x, px(8), wide, height() * 0.42);
    drawTabular(
        painter, upper, Qt::AlignLeft | Qt::AlignVCenter, m_view.number, px(30), kNumberWeight);
    const double past = tabularWidth(m_view.number, px(30), kNumberWeight) + px(12);
    const double small = fittedSize(m_view.time, px(21), px(13), wide * 0.34, kPlainWeight);
    const double clock = tabularWidth(m_view.time, small, kPlainWeight);
    const double seam = wide - past - clock - px(10);
    drawLine(
        painter, upper.adjusted(past, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, m_view.seam,
        fittedSize(m_view.seam, px(24), px(13), seam, kLabelWeight), kLabelWeight);
    painter.setPen(theme().textSoft);
    drawTabular(
        painter, upper, Qt::AlignRight | Qt::AlignVCenter, m_view.time, small, kPlainWeight);
    QRectF lower(x, height() * 0.47, wide, height() * 0.49 - px(6));
    if (!m_view.decided.isEmpty()) { // a person's word: with the person's sign, at the end
        const double sign = px(26);
        const double most = lower.width() * 0.38;
        const double size = fittedSize(m_view.decided, px(20), px(12), most, kLabelWeight);
        const double words = std::min(most, textWidth(m_view.decided, size, kLabelWeight));
        const double left = lower.right() - words;
        painter.setPen(theme().text);
        drawLine(
            painter, QRectF(left, lower.top(), words, lower.height()),
            Qt::AlignLeft | Qt::AlignVCenter, m_view.decided, size, kLabelWeight);
        paintSign(
            painter, QRectF(left - sign - px(6), lower.center().y() - sign / 2, sign, sign),
            Sign::Person, theme().text);
        lower.setRight(left - sign - px(14));
    }
    const double sign = m_view.remarks ? px(26) : 0;
    if (m_view.remarks) {
        paintSign(
            painter, QRectF(x, lower.center().y() - sign / 2, sign, sign), Sign::Note,
            theme().textSoft);
    }
    painter.setPen(m_view.tone == Tone::Late ? theme().tone(Tone::Late).ink : theme().textSoft);
    const double left = sign > 0 ? sign + px(8) : 0;
    const Wrapped reason = wrapped(
        m_view.reason, textPx(23), px(11), lower.width() - left, 3, kPlainWeight,
        lower.height() - px(2));
    drawWrapped(
        painter, lower.adjusted(left, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, reason,
        kPlainWeight);
}

// ---- what stands above

FilterCell::FilterCell(const QString& name, QWidget* parent) : PressPart(name, parent) {}

void FilterCell::show(const FilterCellView& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    setAccessibleName(spoken({view.name, view.value}));
    update();
}

void FilterCell::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    drawPanel(
        painter, rect(), px(14), theme().panel, m_view.narrows ? theme().text : theme().edge,
        px(m_view.narrows ? 4.5 : 2));
    double x = px(18);
    if (m_view.sign) {
        const double side = px(36);
        paintSign(
            painter, QRectF(x, (height() - side) / 2.0, side, side), *m_view.sign, theme().text);
        x += side + px(12);
    }
    const double wide = width() - x - px(12);
    if (m_view.name.isEmpty()) {
        painter.setPen(theme().text);
        const Wrapped words =
            wrapped(m_view.value, px(28), px(14), wide, 2, kWordWeight, height() - px(20));
        drawWrapped(
            painter, QRectF(x, 0, wide, height()), Qt::AlignLeft | Qt::AlignVCenter, words,
            kWordWeight);
        return;
    }
    painter.setPen(theme().textSoft);
    drawLine(
        painter, QRectF(x, px(14), wide, px(26)), Qt::AlignLeft | Qt::AlignVCenter, m_view.name,
        fittedSize(m_view.name, px(22), px(12), wide, kPlainWeight), kPlainWeight);
    painter.setPen(theme().text);
    drawTabular(
        painter, QRectF(x, px(44), wide, px(32)), Qt::AlignLeft | Qt::AlignVCenter, m_view.value,
        fittedSize(m_view.value, px(27), px(12), wide, kWordWeight), kWordWeight);
}

BenchCell::BenchCell(QWidget* parent) : PressPart("dayRunning", parent) {}

void BenchCell::show(const BenchCellView& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    setAccessibleName(
        view.leave.isEmpty()
            ? spoken({view.letter, view.phase, view.time, tr("back to"), tr("the benches")})
            : view.leave);
    update();
}

void BenchCell::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    drawPanel(painter, rect(), px(14), theme().button, theme().edge, px(2));
    if (!m_view.leave.isEmpty()) {
        painter.setPen(theme().text);
        drawLine(
            painter, rect(), Qt::AlignCenter, m_view.leave,
            fittedSize(m_view.leave, px(30), px(14), width() * 0.9, kWordWeight), kWordWeight);
        return;
    }
    const double middle = height() / 2.0;
    double x = px(18);
    painter.setPen(theme().text);
    drawLine(
        painter, QRectF(x, 0, px(60), height()), Qt::AlignLeft | Qt::AlignVCenter, m_view.letter,
        px(44), kWordWeight);
    x += std::max(textWidth(m_view.letter, px(44), kWordWeight), px(30)) + px(10);
    const double mark = px(36);
    paintMark(
        painter, QRectF(x, middle - mark / 2, mark, mark), m_view.mark,
        theme().tone(m_view.tone).ink, theme(), m_view.fraction);
    x += mark + px(12);
    const double right = std::min(px(180), (width() - x) * 0.56);
    const double wide = width() - x - right - px(16) - px(14);
    if (m_view.time.isEmpty()) {
        const Wrapped words =
            wrapped(m_view.phase, px(24), px(12), wide, 2, kLabelWeight, height() - px(24));
        drawWrapped(
            painter, QRectF(x, 0, wide, height()), Qt::AlignLeft | Qt::AlignVCenter, words,
            kLabelWeight);
    } else {
        drawLine(
            painter, QRectF(x, px(14), wide, px(26)), Qt::AlignLeft | Qt::AlignVCenter,
            m_view.phase, fittedSize(m_view.phase, px(22), px(11), wide, kLabelWeight),
            kLabelWeight);
        drawTabular(
            painter, QRectF(x, px(42), wide, px(34)), Qt::AlignLeft | Qt::AlignVCenter, m_view.time,
            fittedSize(m_view.time, px(30), px(13), wide, kNumberWeight), kNumberWeight);
    }
    const QRectF back(width() - right - px(16), px(14), right, px(26));
    painter.setPen(theme().textSoft);
    drawLine(
        painter, back, Qt::AlignRight | Qt::AlignVCenter, tr("back to"),
        fittedSize(tr("back to"), px(22), px(11), right, kPlainWeight), kPlainWeight);
    painter.setPen(theme().text);
    drawLine(
        painter, back.translated(0, px(30)), Qt::AlignRight | Qt::AlignVCenter, tr("the benches"),
        fittedSize(tr("the benches"), px(26), px(12), right, kWordWeight), kWordWeight);
}

WhoDecides::WhoDecides(QWidget* parent) : Part("dayWho", parent) {}

void WhoDecides::setText(const QString& text) {
    if (text != m_text) {
        m_text = text;
        setAccessibleName(text);
        update();
    }
}

void WhoDecides::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double sign = px(34);
    paintSign(painter, QRectF(px(8), px(6), sign, sign), Sign::Person, theme().textSoft);
    painter.setPen(theme().textSoft);
    const QRectF below(0, px(44), width(), height() - px(46));
    const Wrapped words =
        wrapped(m_text, px(20), px(11), below.width(), 3, kPlainWeight, below.height());
    drawWrapped(painter, below, Qt::AlignLeft | Qt::AlignVCenter, words, kPlainWeight);
}

// ---- the page

DayPage::DayPage(QWidget* parent)
    : Page("day", parent), m_day(keep(new FilterCell("dayDay", this))),
      m_bench(keep(new FilterCell("dayBench", this))),
      m_verdict(keep(new FilterCell("dayVerdict", this))),
      m_search(keep(new FilterCell("daySearch", this))), m_running(keep(new BenchCell(this))),
      m_panel(keep(new JointPanel(this))), m_who(keep(new WhoDecides(this))),
      m_nothing(keep(new Sentence("dayNothing", this))) {
    for (int i = 0; i < kRows; ++i) {
        auto* row = keep(new JointRow(QString("joint%1").arg(i), this));
        m_rows.push_back(row);
        row->installEventFilter(this);
        connect(row, &JointRow::pressed, this, [this, row] {
            emit rowChosen(QString::fromStdString(row->view().weld));
        });
    }
    const auto tells = [this](PressPart* cell, DayPress what) {
        connect(cell, &PressPart::pressed, this, [this, what] { emit pressed(what); });
    };
    tells(m_day, DayPress::Day);
    tells(m_bench, DayPress::Bench);
    tells(m_verdict, DayPress::Verdict);
    tells(m_search, DayPress::Search);
    tells(m_running, DayPress::Running);
    m_newer = button("dayNewer", DayPress::Newer);
    m_older = button("dayOlder", DayPress::Older);
    m_accept = button("dayAccept", DayPress::Accept);
    m_repair = button("dayRepair", DayPress::Repair);
    m_cutOut = button("dayCutOut", DayPress::CutOut);
    m_record = button("dayRecord", DayPress::Record);
    m_back->show(hiddenSlot());
    m_stop->show(hiddenSlot());
    m_step->show(plainSlot(tr("Back to the bench"))); // for keys: its place is the bench's cell
}

SlotButton* DayPage::button(const QString& name, DayPress what) {
    auto* made = keep(new SlotButton(name, this));
    connect(made, &SlotButton::pressed, this, [this, what] { emit pressed(what); });
    return made;
}

void DayPage::show(const DayPageView& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    m_day->show(view.day);
    m_bench->show(view.bench);
    m_verdict->show(view.verdict);
    m_search->show(view.search);
    m_running->show(view.running);
    m_nothing->setText(view.nothing);
    m_who->setText(view.who);
    place();
}

void DayPage::showJoint(const JointView& view) {
    m_panel->show(view);
    place();
}

QRect DayPage::bannerPlace() const {
    // Upright the day stands in one line with the bench that runs, which stays to be seen.
    const QRect others =
        m_bench->geometry().united(m_verdict->geometry()).united(m_search->geometry());
    if (height() > width()) {
        return others;
    }
    return m_day->geometry()
        .united(m_bench->geometry())
        .united(m_verdict->geometry())
        .united(m_search->geometry());
}

void DayPage::setCovered(bool covered) {
    if (covered != m_covered) {
        m_covered = covered;
        for (FilterCell* cell : {m_day, m_bench, m_verdict, m_search}) {
            cell->setVisible(!covered);
        }
    }
}

void DayPage::wheelEvent(QWheelEvent* event) {
    constexpr int kNotch = 120;
    m_wheel += event->angleDelta().y();
    const int lines = m_wheel / kNotch;
    m_wheel -= lines * kNotch;
    if (lines != 0) {
        emit scrolled(-lines);
    }
    event->accept();
}

/// A line is pressed at once, as everything is; a hand that then moves on drags the list.
bool DayPage::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::MouseButtonPress) {
        m_dragFrom = static_cast<QMouseEvent*>(event)->globalPosition().y();
    } else if (event->type() == QEvent::MouseMove && m_dragFrom) {
        drag(static_cast<QMouseEvent*>(event)->globalPosition().y());
    } else if (event->type() == QEvent::TouchBegin || event->type() == QEvent::TouchUpdate) {
        const auto& points = static_cast<QTouchEvent*>(event)->points();
        if (!points.isEmpty()) {
            const double y = points.front().globalPosition().y();
            if (event->type() == QEvent::TouchBegin) {
                m_dragFrom = y;
            } else if (m_dragFrom) {
                drag(y);
            }
        }
    } else if (event->type() == QEvent::MouseButtonRelease || event->type() == QEvent::TouchEnd) {
        m_dragFrom.reset();
    }
    return Page::eventFilter(watched, event);
}

void DayPage::drag(double y) {
    const double lines = (*m_dragFrom - y) / std::max(m_pitch, 1.0);
    const int whole = static_cast<int>(lines);
    if (whole != 0) {
        *m_dragFrom -= whole * m_pitch;
        emit scrolled(whole);
    }
}

void DayPage::place() {
    const QSizeF size = units();
    const double width = size.width();
    const double height = size.height();
    const bool portrait = height > width;
    const double inner = width - 2 * kOuter;
    double top = kTop;
    const auto put4 = [&](QWidget* cell, double x, double wide, double y) {
        put(cell, handed(QRectF(x, y, wide, kCells)));
    };
    if (portrait) {
        const double half = (inner - kBetween) / 2;
        put4(m_day, kOuter, half, top);
        put4(m_running, kOuter + half + kBetween, half, top);
        top += kCells + kBetween;
        const double third = (inner - 2 * kBetween) / 3;
        put4(m_bench, kOuter, third, top);
        put4(m_verdict, kOuter + third + kBetween, third, top);
        put4(m_search, kOuter + 2 * (third + kBetween), third, top);
    } else {
        const double room = inner - 4 * kBetween;
        double x = kOuter;
        const auto next = [&](QWidget* cell, double share) {
            put4(cell, x, room * share, top);
            x += room * share + kBetween;
        };
        next(m_day, 0.192);
        next(m_bench, 0.149);
        next(m_verdict, 0.166);
        next(m_search, 0.158);
        next(m_running, 0.335);
    }
    if (m_covered) {
        for (FilterCell* cell : {m_day, m_bench, m_verdict, m_search}) {
            cell->setVisible(false);
        }
    }
    top += kCells + 12;
    const QRectF body(kOuter, top, inner, height - top - kOuter);
    QRectF list = body;
    QRectF panel = body;
    if (portrait) {
        const double lines = std::floor((body.height() * 0.4 + kRowGap) / (kRow + kRowGap));
        list.setHeight(std::max(2.0, lines) * (kRow + kRowGap) - kRowGap);
        panel.setTop(list.bottom() + 12);
    } else {
        list.setWidth(body.width() * 0.33);
        panel.setLeft(list.right() + 12);
    }
    const int fits = static_cast<int>((list.height() + kRowGap) / (kRow + kRowGap));
    const int before = m_rowsWhole;
    m_rowsWhole = std::clamp(fits, 2, kRows);
    m_pitch = look().metrics.px(kRow + kRowGap);
    const bool paged = m_view.newer || m_view.older;
    const int lines = paged ? rowsPaged() : m_rowsWhole;
    const auto there = static_cast<int>(m_view.rows.size());
    for (int i = 0; i < kRows; ++i) {
        JointRow* row = m_rows[static_cast<std::size_t>(i)];
        const bool shown = i < std::min(there, lines);
        if (shown) {
            row->show(m_view.rows[static_cast<std::size_t>(i)]);
        }
        const QRectF box(list.x(), list.y() + i * (kRow + kRowGap), list.width(), kRow);
        put(row, shown ? handed(box) : QRectF());
    }
    const double pager = list.y() + lines * (kRow + kRowGap);
    const double half = (list.width() - kBetween) / 2;
    put(m_newer, paged ? handed(QRectF(list.x(), pager, half, kCells + 4)) : QRectF());
    put(m_older,
        paged ? handed(QRectF(list.x() + half + kBetween, pager, half, kCells + 4)) : QRectF());
    SlotView newer = plainSlot(tr("Newer"));
    newer.look = m_view.newer ? SlotView::Look::Plain : SlotView::Look::Gone;
    m_newer->show(newer);
    SlotView older = plainSlot(tr("Older"));
    older.look = m_view.older ? SlotView::Look::Plain : SlotView::Look::Gone;
    m_older->show(older);

    const JointView& joint = m_panel->view();
    const bool nothing = !m_view.nothing.isEmpty();
    const bool one = !nothing && !joint.weld.empty();
    put(m_nothing,
        nothing ? handed(QRectF(list.x() + 6, list.y(), body.width() - 12, 150)) : QRectF());
    put(m_panel, one ? handed(panel) : QRectF());
    m_panel->setFoot(one ? kButtons + 26 : 0);
    const double side = 22;
    const double y = panel.bottom() - kButtons - 13;
    const double who = portrait && width < 700 ? 74 : 94;
    put(m_who, one ? handed(QRectF(panel.x() + side, y, who, kButtons)) : QRectF());
    const double left = panel.x() + side + who + 5;
    const double each = (panel.right() - side - left - 3 * kBetween) / 4;
    const auto decides = [&](SlotButton* button, int index, const QString& text, bool offered) {
        SlotView slot = plainSlot(text);
        if (!offered) {
            slot.look = SlotView::Look::Gone;
        }
        button->show(slot);
        put(button,
            one ? handed(QRectF(left + index * (each + kBetween), y, each, kButtons)) : QRectF());
    };
    const bool may = m_view.mayDecide && joint.ended;
    decides(
        m_accept, 0, joint.trial ? tr("Release", "a trial joint, by the foreman") : tr("Accept"),
        may);
    decides(m_repair, 1, tr("Repair"), may);
    decides(m_cutOut, 2, tr("Cut out"), may);
    decides(m_record, 3, tr("Record"), one);
    put(m_back, QRectF());
    put(m_earlier, QRectF());
    put(m_stop, QRectF());
    put(m_step, QRectF());
    if (before != m_rowsWhole) {
        emit resized();
    }
}

} // namespace seamclock
