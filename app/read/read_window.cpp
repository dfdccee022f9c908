#include "app/read/read_window.h"

#include "app/text/record_words.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <QDir>
#include <QKeyEvent>
#include <QPalette>
#include <algorithm>
#include <initializer_list>
#include <utility>

namespace seamclock {
namespace {

constexpr double kStrip = 54; // units, above the page
constexpr double kEdge = 16;
constexpr double kBeside = 900; // two sentences beside each other want so much
constexpr double kHelp = 170;   // the key of Help, at the strip's end

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
      m_said(new Sentence("copySaid", this)), m_help(new FilterCell("copyHelp", this)),
      m_ring(new KeyRing(this)) {
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
    m_guide = new GuideFlow(std::move(parts.readGuide), this);
    m_guide->setHome(GuideHome::Log);
    m_flow = new DayLogFlow(shopOf(parts, clock), m_ring, this);
    for (Page* page : pages()) {
        page->setLook(m_look);
    }
    m_ring->setLook(m_look);
    for (Part* part : std::initializer_list<Part*>{m_mark, m_said, m_help}) {
        part->setLook(*m_look.theme, m_look.metrics);
    }
    FilterCellView help;
    help.value = QCoreApplication::translate("Read", "Help");
    help.sign = Sign::Remark;
    m_help->show(help);
    connect(m_help, &FilterCell::pressed, this, &ReadWindow::openHelp);
    connect(m_guide, &GuideFlow::turned, this, &ReadWindow::turned);
    connect(m_guide, &GuideFlow::left, this, [this] {
        m_guide->close();
        turned();
    });
    connect(m_guide, &GuideFlow::said, this, &ReadWindow::say);
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

/// A file below the reader's own folder is told from there: it is where he looks for it.
void ReadWindow::say(const QString& text) {
    QString told = text;
    m_said->setText(told.replace(QDir::homePath() + QLatin1Char('/'), QStringLiteral("~/")));
    place();
}

std::vector<Page*> ReadWindow::pages() const {
    std::vector<Page*> all = m_flow->pages();
    const std::vector<Page*> guide = m_guide->pages();
    all.insert(all.end(), guide.begin(), guide.end());
    return all;
}

/// Help stands over the log, which keeps its own page.
Page* ReadWindow::currentPage() const {
    return m_guide->page() != nullptr ? m_guide->page() : m_flow->page();
}

void ReadWindow::turned() {
    say({});
    m_ring->leave();
    Page* const now = currentPage();
    for (Page* page : pages()) {
        page->setVisible(page == now);
    }
    m_help->setVisible(m_guide->page() == nullptr);
    if (now == nullptr) {
        return;
    }
    setFocus();
    if (m_guide->page() != nullptr) {
        m_guide->takeKeys();
    } else {
        m_flow->takeKeys();
    }
}

void ReadWindow::openHelp() {
    if (m_guide->page() == nullptr) {
        m_guide->open();
    }
}

void ReadWindow::place() {
    const int strip = static_cast<int>(m_look.metrics.px(kStrip));
    const int edge = static_cast<int>(m_look.metrics.px(kEdge));
    const int help = static_cast<int>(m_look.metrics.px(kHelp));
    const int room = std::max(0, width() - help - edge);
    // Where a file was put is a long word: beside the mark on a wide window, else in a line below.
    const bool says = !m_said->text().isEmpty();
    const bool below = says && room < m_look.metrics.px(kBeside);
    const int half = says && !below ? room / 2 : room;
    const int top = below ? 2 * strip : strip;
    m_mark->setGeometry(edge, 0, std::max(0, half - 2 * edge), strip);
    m_said->setGeometry(
        below ? QRect(edge, strip, std::max(0, width() - 2 * edge), strip)
              : QRect(half, 0, std::max(0, room - half - edge), strip));
    m_help->setGeometry(room, 2, help, strip - 2);
    for (Page* page : m_flow->pages()) {
        page->setGeometry(0, top, width(), height() - top);
    }
    for (Page* page : m_guide->pages()) { // which leave the place of benches above them
        page->setGeometry(rect());
    }
    m_mark->raise();
    m_said->raise();
}

void ReadWindow::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    m_ring->leave();
    place();
}

void ReadWindow::keyPressEvent(QKeyEvent* event) {
    Page* page = currentPage();
    const int key = event->key();
    if (key == Qt::Key_F1) {
        openHelp();
    } else if (key == Qt::Key_Tab || key == Qt::Key_Backtab) {
        m_ring->move(key == Qt::Key_Tab ? 1 : -1);
    } else if (key == Qt::Key_Escape && m_ring->on() != nullptr) {
        m_ring->leave();
    } else if (m_guide->page() != nullptr && key == Qt::Key_Escape) {
        emit m_guide->left();
    } else if (key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Space) {
        if (page != nullptr && !event->isAutoRepeat() && !m_ring->press()) {
            emit page->slotPressed(SlotPlace::Step);
        }
    } else if (key == Qt::Key_Escape) {
        m_flow->escaped();
    } else {
        QWidget::keyPressEvent(event);
    }
}

} // namespace seamclock
