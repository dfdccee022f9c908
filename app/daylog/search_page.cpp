#include "app/daylog/search_page.h"

#include "app/pages/line_style.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <algorithm>

namespace seamclock {

namespace {

constexpr int kLongestSearch = 80; // characters

} // namespace

SearchPage::SearchPage(QWidget* parent)
    : Page("search", parent), m_title(keep(new Sentence("searchTitle", this))),
      m_line(new QLineEdit(this)) {
    m_line->setObjectName("searchLine");
    m_line->setMaxLength(kLongestSearch);
    connect(m_line, &QLineEdit::returnPressed, this, [this] { emit slotPressed(SlotPlace::Step); });
    for (int i = 0; i < kTiles; ++i) {
        auto* tile = keep(new SlotButton(QString("choiceSearch%1").arg(i), this));
        m_tiles.push_back(tile);
        connect(tile, &SlotButton::pressed, this, [this, i] { emit tilePressed(i); });
    }
    m_stop->show(hiddenSlot());
}

void SearchPage::show(const SearchView& view) {
    m_view = view;
    m_title->setText(view.title);
    // Not once for all: the language may have changed.
    m_line->setPlaceholderText(tr("number, seam, batch, remark, name"));
    m_line->setAccessibleName(m_line->placeholderText());
    m_back->show(plainSlot(tr("Clear"), tr("all joints again")));
    m_step->show(stepSlot(tr("Search")));
    place();
}

void SearchPage::keyPressEvent(QKeyEvent* event) {
    // It comes only through the line, which has told it already.
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        event->accept();
        return;
    }
    Page::keyPressEvent(event);
}

QString SearchPage::words() const {
    return m_line->text().simplified();
}

void SearchPage::setWords(const QString& words) {
    m_line->setText(words);
}

void SearchPage::takeKeys() {
    m_line->setFocus();
}

void SearchPage::lookChanged() {
    styleLine(*m_line, look());
}

void SearchPage::place() {
    const Frame frame = frameOf(units(), FrameKind::Page, look().mirrored);
    const QRectF body = frame.body;
    constexpr double kTitle = 58;
    constexpr double kLine = 96;
    constexpr double kGap = 10;
    put(m_title, QRectF(body.x() + 6, body.y(), body.width() - 12, kTitle));
    put(m_line, QRectF(body.x(), body.y() + kTitle + 4, body.width(), kLine));
    const double top = body.y() + kTitle + 4 + kLine + 12;
    const auto count = static_cast<int>(m_view.tiles.size());
    const int columns = frame.portrait ? 2 : 3;
    const int rows = std::max(1, (count + columns - 1) / columns);
    const double high = std::clamp((body.bottom() - top - (rows - 1) * kGap) / rows, 92.0, 150.0);
    const double wide = (body.width() - (columns - 1) * kGap) / columns;
    for (int i = 0; i < kTiles; ++i) {
        SlotButton* button = m_tiles[static_cast<std::size_t>(i)];
        SlotView slot = hiddenSlot();
        if (i < count) {
            const SearchView::Tile& tile = m_view.tiles[static_cast<std::size_t>(i)];
            slot = plainSlot(tile.text, tile.under);
            slot.tile = true;
            slot.sign = tile.sign;
            slot.enabled = tile.enabled;
            slot.look = !tile.enabled ? SlotView::Look::Gone
                        : tile.chosen ? SlotView::Look::Act
                                      : SlotView::Look::Plain;
        }
        button->show(slot);
        const int row = i / columns;
        const int column = i % columns;
        const QRectF box(body.x() + column * (wide + kGap), top + row * (high + kGap), wide, high);
        put(button, i < count ? box : QRectF());
    }
    placeSlots(frame);
}

} // namespace seamclock
