#include "app/guide/guide_flow.h"

#include "app/text/language.h"
#include "app/text/words.h"

#include <algorithm>

namespace seamclock {

GuideFlow::GuideFlow(Read read, QWidget* window)
    : PageFlow(window), m_read(std::move(read)), m_list(new ListPage(window)),
      m_chapter(new GuidePage(window)) {
    m_list->setObjectName("guideList");
    take(pages());
    connect(m_list, &ListPage::chosen, this, &GuideFlow::chosen);
    connect(m_list, &ListPage::typed, this, &GuideFlow::find);
    connect(
        m_chapter, &GuidePage::chapterAsked, this, [this](int chapter) { showChapter(chapter); });
}

void GuideFlow::open() {
    if (m_guide.chapters.empty() || m_spoken != codeOf(spoken())) {
        auto guide =
            m_read ? m_read() : Result<Guide>(fail(ErrorCode::Missing, "there is no guide"));
        // its tables quote the screen in the language of now
        if (!guide) {
            tell(guide.error());
            return;
        }
        m_guide = std::move(*guide);
        m_spoken = codeOf(spoken());
        m_reads = false;
    }
    if (m_reads) {
        turnTo(m_chapter);
    } else {
        showContents();
    }
}

void GuideFlow::close() {
    shut();
}

void GuideFlow::turning(Page*) {
    m_chapter->setHome(homeText());
}

void GuideFlow::showContents() {
    m_searches = false;
    m_reads = false;
    drawList();
    turnTo(m_list);
}

void GuideFlow::showSearch() {
    m_searches = true;
    m_hits.clear();
    m_list->setLine({});
    drawList();
    turnTo(m_list);
}

void GuideFlow::drawList() {
    ListView view;
    view.title = m_searches ? tr("Search the guide") : tr("Help: the user guide");
    view.under =
        tr("It guides. The machine's instructions, the standard in force, local rules and a "
           "qualified welder decide.");
    if (spoken() != Language::English) {
        view.under += QLatin1Char(' ') + tr("The guide itself is in English.");
    }
    if (m_searches) {
        view.line = tr("A word, or its beginning");
        for (const GuideHit& hit : m_hits) {
            ListRowView row;
            row.text = m_guide.chapters[static_cast<std::size_t>(hit.chapter)].title;
            row.second = hit.text;
            view.rows.push_back(row);
        }
        if (m_hits.empty() && !m_list->lineText().isEmpty()) {
            view.under = tr("No place in the guide holds these words.");
        }
        view.back = plainSlot(tr("Contents"), tr("of the guide"));
        view.stop = plainSlot(homeText());
        view.step = m_hits.empty() ? hiddenSlot() : stepSlot(tr("Open the first"), false);
    } else {
        view.columns = 2;
        for (const GuideChapter& chapter : m_guide.chapters) {
            ListRowView row;
            row.text = chapter.title;
            row.second = chapter.about;
            view.rows.push_back(row);
        }
        view.back = hiddenSlot();
        view.stop = plainSlot(tr("Search"), tr("by a word"));
        view.step = stepSlot(homeText(), false);
    }
    m_list->show(view);
}

QString GuideFlow::homeText() const {
    switch (m_home) {
    case GuideHome::Bench:
        return tr("Back to the bench");
    case GuideHome::Practice:
        return tr("Back to practice");
    case GuideHome::Log:
        return tr("Back to the log");
    }
    return {};
}

void GuideFlow::find() {
    m_hits = findInGuide(m_guide, m_list->lineText());
    drawList();
}

void GuideFlow::showChapter(int chapter, const QString& mark) {
    const auto last = static_cast<int>(m_guide.chapters.size()) - 1;
    if (last < 0) {
        return;
    }
    m_reads = true;
    m_chapter->show(m_guide, std::clamp(chapter, 0, last), mark);
    turnTo(m_chapter);
}

void GuideFlow::takeKeys() {
    if (isTyping()) {
        m_list->takeKeys();
    } else if (page() == m_chapter) {
        m_chapter->setFocus();
    }
}

bool GuideFlow::takesPress(SlotPlace place) {
    switch (place) {
    case SlotPlace::Back:
        showContents();
        break;
    case SlotPlace::Stop:
        if (isTyping()) {
            emit left();
        } else {
            showSearch();
        }
        break;
    case SlotPlace::Earlier:
        break;
    case SlotPlace::Step:
        if (isTyping()) {
            chosen(0); // also Enter in the line
        } else {
            emit left();
        }
        break;
    }
    return true;
}

void GuideFlow::chosen(int index) {
    if (!m_searches) {
        showChapter(index);
    } else if (index >= 0 && index < static_cast<int>(m_hits.size())) {
        showChapter(m_hits[static_cast<std::size_t>(index)].chapter, m_list->lineText());
    }
}

} // namespace seamclock
