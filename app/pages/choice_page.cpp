#include "app/pages/choice_page.h"

#include <algorithm>

namespace seamclock {

ChoicePage::ChoicePage(QWidget* parent)
    : Page("choice", parent), m_title(keep(new Sentence("choiceTitle", this))),
      m_under(keep(new Sentence("choiceUnder", this))) {
    m_under->setQuiet(true);
    for (int i = 0; i < kTiles; ++i) {
        auto* tile = keep(new SlotButton(QString("choice%1").arg(i), this));
        m_tiles.push_back(tile);
        connect(tile, &SlotButton::pressed, this, [this, i] {
            if (m_leaves && i == m_perLeaf - 1) {
                const int shownHere = m_perLeaf - 1;
                const auto count = static_cast<int>(m_view.choices.size());
                m_leaf = (m_leaf + 1) * shownHere < count ? m_leaf + 1 : 0;
                refresh();
                return;
            }
            const int index = m_leaf * (m_leaves ? m_perLeaf - 1 : m_perLeaf) + i;
            if (index < static_cast<int>(m_view.choices.size())) {
                emit chosen(index);
            }
        });
    }
}

void ChoicePage::show(const ChoiceView& view) {
    if (view == m_view) {
        return;
    }
    if (view.title != m_view.title) {
        m_leaf = 0;
    }
    m_view = view;
    place();
}

void ChoicePage::refresh() {
    m_title->setText(m_view.title);
    m_under->setText(m_view.under);
    m_back->show(m_view.back);
    m_stop->show(m_view.stop);
    m_step->show(m_view.step);
    const auto count = static_cast<int>(m_view.choices.size());
    const int shownHere = m_leaves ? m_perLeaf - 1 : m_perLeaf;
    for (int i = 0; i < kTiles; ++i) {
        SlotView tile;
        tile.look = SlotView::Look::Hidden;
        const int index = m_leaf * shownHere + i;
        if (m_leaves && i == m_perLeaf - 1) {
            tile.look = SlotView::Look::Plain;
            tile.text = tr("More");
            tile.tile = true;
            tile.under = tr("%1 in all").arg(count);
        } else if (i < shownHere && index < count) {
            const ChoiceView::Choice& choice = m_view.choices[static_cast<std::size_t>(index)];
            tile.text = choice.text;
            tile.tile = true;
            tile.under = choice.under;
            tile.sign = choice.sign;
            tile.enabled = choice.enabled;
            tile.look = !choice.enabled ? SlotView::Look::Gone
                        : choice.chosen ? SlotView::Look::Chosen
                                        : SlotView::Look::Plain;
        }
        m_tiles[static_cast<std::size_t>(i)]->show(tile);
    }
}

void ChoicePage::place() {
    const Frame frame = frameOf(units(), FrameKind::Page, look().mirrored);
    const QRectF body = frame.body;
    const bool quiet = !m_view.under.isEmpty();
    const double under = quietHeight(m_view.under, body.width() - 12);
    const double head = quiet ? 72 + under : 76;
    put(m_title, QRectF(body.x() + 6, body.y(), body.width() - 12, 70));
    put(m_under, quiet ? QRectF(body.x() + 6, body.y() + 66, body.width() - 12, under) : QRectF());
    constexpr double kLeast = 94;
    const double most = 128 * std::max(1.0, look().metrics.text);
    constexpr double kGap = 10;
    const double room = body.height() - head;
    const int rows = std::max(1, static_cast<int>((room + kGap) / (kLeast + kGap)));
    const auto count = static_cast<int>(m_view.choices.size());
    int columns = frame.portrait ? 1 : 2;
    if (m_view.narrow && count > rows * columns) {
        ++columns;
    }
    m_perLeaf = std::min(kTiles, rows * columns);
    m_leaves = count > m_perLeaf;
    // few answers are larger ones
    const int needed = m_leaves ? rows : std::max(1, (count + columns - 1) / columns);
    const double tile = std::clamp((room - (needed - 1) * kGap) / needed, kLeast, most);
    const double width = (body.width() - (columns - 1) * kGap) / columns;
    for (int i = 0; i < kTiles; ++i) {
        const int row = i / columns;
        const int column = i % columns;
        QRectF box(
            body.x() + column * (width + kGap), body.y() + head + row * (tile + kGap), width, tile);
        put(m_tiles[static_cast<std::size_t>(i)], i < m_perLeaf ? box : QRectF());
    }
    placeSlots(frame);
    refresh();
}

} // namespace seamclock
