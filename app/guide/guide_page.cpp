#include "app/guide/guide_page.h"

#include "app/guide/guide_document.h"

#include <QKeyEvent>
#include <QScrollBar>
#include <QScroller>
#include <QTextBrowser>
#include <QUrl>
#include <algorithm>
#include <cmath>
#include <vector>

namespace seamclock {
namespace {

constexpr double kBody = 24;    // units
constexpr double kLargest = 40; // with larger words
constexpr double kGap = 10;
constexpr double kKeys = 190; // the column of keys
constexpr double kPadding = 18;
constexpr double kOverlap = 0.88; // of a screen: a line of the last one stays to read on from

} // namespace

GuidePage::GuidePage(QWidget* parent)
    : Page("guide", parent), m_text(new QTextBrowser(this)),
      m_up(keep(new SlotButton("guideUp", this))), m_down(keep(new SlotButton("guideDown", this))),
      m_before(keep(new SlotButton("guideBefore", this))),
      m_after(keep(new SlotButton("guideAfter", this))) {
    m_text->setObjectName("guideText");
    m_text->setOpenLinks(false);
    m_text->setFrameShape(QFrame::NoFrame);
    m_text->setFocusPolicy(Qt::NoFocus); // the window's keys are the pedal's, too
    m_text->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_text->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn); // its width is always taken
    m_text->setTextInteractionFlags(Qt::LinksAccessibleByMouse);
    QScroller::grabGesture(m_text->viewport(), QScroller::LeftMouseButtonGesture);
    connect(m_text, &QTextBrowser::anchorClicked, this, &GuidePage::follow);
    connect(m_text->verticalScrollBar(), &QScrollBar::valueChanged, this, &GuidePage::keysNow);
    connect(m_text->verticalScrollBar(), &QScrollBar::rangeChanged, this, &GuidePage::keysNow);
    connect(m_up, &SlotButton::pressed, this, [this] { scroll(-1); });
    connect(m_down, &SlotButton::pressed, this, [this] { scroll(1); });
    connect(m_before, &SlotButton::pressed, this, [this] { emit chapterAsked(m_chapter - 1); });
    connect(m_after, &SlotButton::pressed, this, [this] { emit chapterAsked(m_chapter + 1); });
}

void GuidePage::show(const Guide& guide, int chapter, const QString& mark) {
    m_guide = guide;
    m_chapter = chapter;
    m_mark = mark;
    m_set = 0;
    refresh();
    place();
}

void GuidePage::setHome(const QString& text) {
    m_home = text;
    refresh();
}

void GuidePage::refresh() {
    m_back->show(plainSlot(tr("Contents"), tr("of the guide")));
    m_stop->show(plainSlot(tr("Search"), tr("by a word")));
    m_step->show(stepSlot(m_home, false));
    keysNow();
}

void GuidePage::keysNow() {
    const QScrollBar* bar = m_text->verticalScrollBar();
    const auto key = [](SlotButton* button, const QString& text, bool there) {
        SlotView view = plainSlot(text);
        view.enabled = there;
        view.look = there ? SlotView::Look::Plain : SlotView::Look::Gone;
        button->show(view);
    };
    key(m_up, tr("Up"), bar->value() > bar->minimum());
    key(m_down, tr("Down"), bar->value() < bar->maximum());
    key(m_before, tr("Chapter before"), m_chapter > 0);
    key(m_after, tr("Next chapter"), m_chapter + 1 < static_cast<int>(m_guide.chapters.size()));
}

void GuidePage::scroll(int screens) {
    QScrollBar* bar = m_text->verticalScrollBar();
    bar->setValue(
        bar->value() + screens * static_cast<int>(m_text->viewport()->height() * kOverlap));
}

void GuidePage::keyPressEvent(QKeyEvent* event) {
    QScrollBar* bar = m_text->verticalScrollBar();
    switch (event->key()) {
    case Qt::Key_Up:
        scroll(-1);
        return;
    case Qt::Key_Down:
        scroll(1);
        return;
    case Qt::Key_Home:
        bar->setValue(bar->minimum());
        return;
    case Qt::Key_End:
        bar->setValue(bar->maximum());
        return;
    case Qt::Key_Left:
        if (m_chapter > 0) {
            emit chapterAsked(m_chapter - 1);
        }
        return;
    case Qt::Key_Right:
        if (m_chapter + 1 < static_cast<int>(m_guide.chapters.size())) {
            emit chapterAsked(m_chapter + 1);
        }
        return;
    }
    Page::keyPressEvent(event);
}

// Only now the parts of the text's own frame have their sizes.
void GuidePage::showEvent(QShowEvent* event) {
    Page::showEvent(event);
    set();
}

void GuidePage::follow(const QUrl& link) {
    for (std::size_t i = 0; i < m_guide.chapters.size(); ++i) {
        if (m_guide.chapters[i].file == link.path()) {
            emit chapterAsked(static_cast<int>(i));
            return;
        }
    }
}

void GuidePage::lookChanged() {
    m_set = 0;
    const Theme& theme = *look().theme;
    const int wide = static_cast<int>(look().metrics.px(kPadding));
    m_text->setStyleSheet(
        QStringLiteral(
            "QTextBrowser { background: %1; border-radius: %2px; padding: %3px; }"
            "QScrollBar:vertical { background: %1; width: %4px; margin: 0; }"
            "QScrollBar::handle:vertical { background: %5; border-radius: %6px; min-height: %7px; }"
            "QScrollBar::add-line:vertical, QScrollBar::sub-line:vertical { height: 0; }")
            .arg(theme.panel.name())
            .arg(static_cast<int>(look().metrics.px(14)))
            .arg(wide)
            .arg(wide)
            .arg(theme.edge.name())
            .arg(wide / 2 - 1)
            .arg(wide * 4));
}

void GuidePage::set() {
    const double width = m_text->viewport()->width();
    if (m_guide.chapters.empty() || !isVisible() || std::abs(width - m_set) < 1) {
        return;
    }
    QScrollBar* bar = m_text->verticalScrollBar();
    const bool again = m_set > 0;
    const double at =
        again && bar->maximum() > 0 ? static_cast<double>(bar->value()) / bar->maximum() : 0.0;
    m_set = width;
    const Theme& theme = *look().theme;
    GuideLook made;
    made.unit = look().metrics.perUnit;
    made.letters = std::min(kBody * look().metrics.text, kLargest);
    made.text = theme.text;
    made.soft = theme.textSoft;
    made.edge = theme.edge;
    made.raised = theme.raised;
    made.caution = theme.tone(Tone::Soon).field;
    made.onCaution = theme.tone(Tone::Soon).on;
    made.widest = width;
    const auto chapter = static_cast<std::size_t>(
        std::clamp<int>(m_chapter, 0, static_cast<int>(m_guide.chapters.size()) - 1));
    m_text->setAccessibleName(m_guide.chapters[chapter].title);
    setChapter(*m_text->document(), m_guide, m_guide.chapters[chapter], made);
    if (again) {
        bar->setValue(static_cast<int>(at * bar->maximum()));
        return;
    }
    m_text->moveCursor(QTextCursor::Start);
    bar->setValue(0);
    for (const QString& word : m_mark.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        const QTextCursor found = m_text->document()->find(word);
        if (!found.isNull()) {
            m_text->setTextCursor(found);
            bar->setValue(
                bar->value() + m_text->cursorRect(found).top() - m_text->viewport()->height() / 4);
            break;
        }
    }
}

void GuidePage::place() {
    const Frame frame = frameOf(units(), FrameKind::Page, look().mirrored);
    const QRectF body = frame.body;
    QRectF text = body;
    const std::vector<SlotButton*> keys{m_up, m_down, m_before, m_after};
    const auto count = static_cast<double>(keys.size());
    if (frame.portrait) {
        const double high = kTargetUnits;
        text.setBottom(body.bottom() - high - kGap);
        const double wide = (body.width() - (count - 1) * kGap) / count;
        for (std::size_t i = 0; i < keys.size(); ++i) {
            const double left = body.left() + static_cast<double>(i) * (wide + kGap);
            put(keys[i], handed(QRectF(left, text.bottom() + kGap, wide, high)));
        }
    } else {
        text.setRight(body.right() - kKeys - kGap);
        const double high = (body.height() - (count - 1) * kGap) / count;
        for (std::size_t i = 0; i < keys.size(); ++i) {
            const double top = body.top() + static_cast<double>(i) * (high + kGap);
            put(keys[i], handed(QRectF(text.right() + kGap, top, kKeys, high)));
        }
    }
    put(m_text, handed(text));
    placeSlots(frame);
    set();
}

} // namespace seamclock
