#include "app/read/read_window.h"

#include "app/text/record_words.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <QKeyEvent>
#include <QPalette>
#include <algorithm>
#include <utility>

namespace seamclock {
namespace {

constexpr double kStrip = 54; // units, above the page
constexpr double kEdge = 16;

QString minuteText(const Instant& at) {
    return dateText(at) + QLatin1Char(' ') + clockText(at).left(5);
}

DayLogShop shopOf(ReadParts& parts, const Clock& clock) {
    DayLogShop shop;
    shop.log = parts.seen.copy.file;
    shop.readOnly = true;
    shop.ask = [](const QString&, const std::function<void(const ProvenPerson&)>&) {};
    shop.act = [](const std::string&, const WeldDetail&, const ProvenPerson&) -> Result<void> {
        return fail(ErrorCode::Refused, "this is a copy: nothing can be written to it");
    };
    shop.hasForeman = [] { return false; };
    shop.materials = [materials = std::move(parts.materials)] { return materials; };
    shop.units = [units = parts.units] { return units; };
    shop.now = [&clock] { return clock.now(); };
    shop.folder = parts.folder;
    shop.work = parts.work;
    shop.closeDay = [] {};
    return shop;
}

} // namespace

QString copyLine(const CopySeen& seen, std::chrono::minutes offset) {
    Instant made;
    made.utc = seen.madeUtc;
    made.offset = offset;
    const QString then = minuteText(made);
    const bool practice = seen.copy.world == "practice";
    if (seen.lastRow) {
        const QString text =
            practice
                ? QCoreApplication::translate(
                      "Read", "Copy of practice, read only: made %1, last entry %2.")
                : QCoreApplication::translate("Read", "Copy, read only: made %1, last entry %2.");
        return text.arg(then, minuteText(*seen.lastRow));
    }
    const QString text =
        practice ? QCoreApplication::translate("Read", "Copy of practice, read only: made %1.")
                 : QCoreApplication::translate("Read", "Copy, read only: made %1.");
    return text.arg(then);
}

ReadWindow::ReadWindow(ReadParts parts, const Clock& clock)
    : m_look(parts.look), m_mark(new Sentence("copyMark", this)),
      m_said(new Sentence("copySaid", this)) {
    setObjectName("readWindow");
    setWindowTitle(QCoreApplication::translate("Read", "Seamclock"));
    setFocusPolicy(Qt::StrongFocus);
    const Instant now = clock.now();
    m_mark->setText(copyLine(parts.seen, now.offset));
    m_said->setQuiet(true);
    m_mark->setQuiet(true);
    if (parts.seen.copy.world == "practice") {
        m_look.watermark = QCoreApplication::translate("Read", "PRACTICE");
    }
    m_flow = new DayLogFlow(shopOf(parts, clock), this);
    for (Page* page : m_flow->pages()) {
        page->setLook(m_look);
    }
    for (Sentence* line : {m_mark, m_said}) {
        line->setLook(*m_look.theme, m_look.metrics);
    }
    connect(m_flow, &DayLogFlow::turned, this, &ReadWindow::turned);
    connect(m_flow, &DayLogFlow::left, this, &ReadWindow::quitAsked);
    connect(m_flow, &DayLogFlow::said, this, &ReadWindow::say);
    connect(m_flow, &DayLogFlow::kept, this, &ReadWindow::say);
    QPalette ground = palette();
    ground.setColor(QPalette::Window, m_look.theme->ground);
    setPalette(ground);
    m_flow->open();
    // Where a bench would stand, one touch closes the copy.
    RunningBench close;
    close.cell.leave = QCoreApplication::translate("Read", "Close");
    m_flow->look(now, {close});
}

void ReadWindow::say(const QString& text) {
    m_said->setText(text);
    place();
}

void ReadWindow::turned() {
    say({});
    for (Page* page : m_flow->pages()) {
        page->setVisible(page == m_flow->page());
    }
    if (m_flow->page() != nullptr) {
        setFocus();
        m_flow->takeKeys();
    }
}

void ReadWindow::place() {
    const int strip = static_cast<int>(m_look.metrics.px(kStrip));
    const int edge = static_cast<int>(m_look.metrics.px(kEdge));
    const int half = m_said->text().isEmpty() ? width() : width() / 2;
    m_mark->setGeometry(edge, 0, half - 2 * edge, strip);
    m_said->setGeometry(half, 0, std::max(0, width() - half - edge), strip);
    for (Page* page : m_flow->pages()) {
        page->setGeometry(0, strip, width(), height() - strip);
    }
}

void ReadWindow::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    place();
}

void ReadWindow::keyPressEvent(QKeyEvent* event) {
    Page* page = m_flow->page();
    const int key = event->key();
    if (key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Space) {
        if (page != nullptr && !event->isAutoRepeat()) {
            emit page->slotPressed(SlotPlace::Step);
        }
    } else if (key == Qt::Key_Escape) {
        m_flow->typed(QChar(0x1b));
    } else if (!event->text().isEmpty()) {
        m_flow->typed(event->text().front()); // a tab among them
    } else {
        QWidget::keyPressEvent(event);
    }
}

} // namespace seamclock
