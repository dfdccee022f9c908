// Help on the screen: contents, a chapter, a search, and which of them stands. It is read from the
// disk when it is first opened; when it can't be, one sentence says so. A bench that calls for
// hands takes the screen from it; opened again, it stands where it was left. Every window that has
// Help has it by this: the operator's, practice's and that of a copy.
#pragma once

#include "app/guide/guide_page.h"
#include "app/pages/page_flow.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

namespace seamclock {

/// Where it was opened, and leads back to.
enum class GuideHome : std::uint8_t { Bench, Practice, Log };

class GuideFlow : public PageFlow {
    Q_OBJECT

public:
    using Read = std::function<Result<Guide>()>;
    /// Its pages become children of `window`.
    GuideFlow(Read read, QWidget* window);
    void setHome(GuideHome home) { m_home = home; }

    std::vector<Page*> pages() const { return {m_list, m_chapter}; }
    ListPage* listPage() const { return m_list; }
    GuidePage* chapterPage() const { return m_chapter; }
    const Guide& guide() const { return m_guide; }

    /// The contents, or the chapter that was left.
    void open();
    void close();
    void showContents();
    void showChapter(int chapter, const QString& mark = {});
    void showSearch();
    /// The keyboard's focus goes where it belongs.
    void takeKeys();
    /// Whether a word may be typed just now: the window's own keys wait.
    bool isTyping() const { return page() == m_list && m_searches; }

signals:
    void left();

private:
    void turning(Page* next) override;
    bool takesPress(SlotPlace place) override;
    void drawList();
    void find();
    void chosen(int index);
    QString homeText() const;

    Read m_read;
    Guide m_guide;
    ListPage* m_list;
    GuidePage* m_chapter;
    bool m_searches = false;
    bool m_reads = false; // a chapter was open when it was left
    GuideHome m_home = GuideHome::Bench;
    std::vector<GuideHit> m_hits;
    QString m_spoken; // that its list was drawn in
};

} // namespace seamclock
