// Help's pages by presses: contents, chapter, scrolling by keys that a glove can press, search.
#include "app/guide/guide_flow.h"

#include "app/text/language.h"
#include "tests/app/guide/shipped_guide.h"

#include <QScrollBar>
#include <QTest>
#include <QTextBlock>
#include <QTextBrowser>
#include <QTextTable>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

class Help : public ::testing::Test {
protected:
    Help() : m_flow([] { return readGuide(test::sourceFolder() + "/docs/guide", {}); }, &m_window) {
        m_window.resize(1280, 800);
        m_window.show();
        QObject::connect(&m_flow, &GuideFlow::turned, [this] {
            for (Page* page : m_flow.pages()) {
                page->setVisible(page == m_flow.page());
            }
        });
        QObject::connect(&m_flow, &GuideFlow::left, [this] { m_left = true; });
        QObject::connect(&m_flow, &GuideFlow::said, [this](const QString& said) { m_said = said; });
        look(ThemeKind::Dark);
    }
    ~Help() override { speak(Language::English); }

    void look(ThemeKind theme, QSize size = QSize(1280, 800), double text = 1) {
        PageLook now;
        now.theme = &Theme::of(theme);
        now.metrics.text = text;
        m_window.resize(size);
        for (Page* page : m_flow.pages()) {
            page->resize(size);
            page->setLook(now);
        }
    }
    void press(SlotPlace place) { emit m_flow.page()->slotPressed(place); }
    SlotButton* key(const char* name) { return m_flow.chapterPage()->findChild<SlotButton*>(name); }
    QScrollBar* bar() { return m_flow.chapterPage()->text()->verticalScrollBar(); }

    QWidget m_window;
    GuideFlow m_flow;
    bool m_left = false;
    QString m_said;
};

TEST_F(Help, OpensItsContentsAndEachChapter) {
    m_flow.open();
    ASSERT_EQ(m_flow.page(), m_flow.listPage());
    const auto& rows = m_flow.listPage()->view().rows;
    ASSERT_EQ(rows.size(), m_flow.guide().chapters.size());
    EXPECT_TRUE(m_flow.listPage()->view().under.contains("qualified welder decide"));
    EXPECT_FALSE(m_flow.listPage()->view().under.contains("in English"));
    for (int i = 0; i < static_cast<int>(rows.size()); ++i) {
        m_flow.showChapter(i);
        ASSERT_EQ(m_flow.page(), m_flow.chapterPage());
        const QString title = m_flow.guide().chapters[static_cast<std::size_t>(i)].title;
        EXPECT_EQ(m_flow.chapterPage()->text()->document()->begin().text(), title);
        EXPECT_GT(bar()->maximum(), 0) << "more than a screen";
        EXPECT_EQ(bar()->value(), 0);
    }
    press(SlotPlace::Back);
    EXPECT_EQ(m_flow.page(), m_flow.listPage());
    press(SlotPlace::Step);
    EXPECT_TRUE(m_left);
}

TEST_F(Help, IsReadByKeysThatAGloveCanPress) {
    m_flow.open();
    m_flow.showChapter(0);
    for (const QSize size : {QSize(1280, 800), QSize(800, 1280)}) {
        look(ThemeKind::Light, size);
        for (const char* name : {"guideUp", "guideDown", "guideBefore", "guideAfter"}) {
            ASSERT_NE(key(name), nullptr);
            EXPECT_GE(key(name)->height(), kTargetUnits) << name;
            EXPECT_GE(key(name)->width(), kTargetUnits) << name;
        }
    }
    look(ThemeKind::Light);
    EXPECT_EQ(key("guideUp")->view().look, SlotView::Look::Gone) << "it stands at the beginning";
    EXPECT_EQ(key("guideBefore")->view().look, SlotView::Look::Gone);
    emit key("guideDown")->pressed();
    const int once = bar()->value();
    EXPECT_GT(once, 0);
    EXPECT_LT(once, m_flow.chapterPage()->text()->viewport()->height()) << "a line stays";
    EXPECT_EQ(key("guideUp")->view().look, SlotView::Look::Plain);
    emit key("guideUp")->pressed();
    EXPECT_EQ(bar()->value(), 0);
    for (int i = 0; i < 100; ++i) {
        emit key("guideDown")->pressed();
    }
    EXPECT_EQ(bar()->value(), bar()->maximum());
    EXPECT_EQ(key("guideDown")->view().look, SlotView::Look::Gone);
    emit key("guideAfter")->pressed();
    EXPECT_EQ(m_flow.chapterPage()->chapter(), 1);
    EXPECT_EQ(bar()->value(), 0) << "a chapter begins at its beginning";
    QTest::keyClick(m_flow.chapterPage(), Qt::Key_Down);
    EXPECT_GT(bar()->value(), 0);
    QTest::keyClick(m_flow.chapterPage(), Qt::Key_End);
    EXPECT_EQ(bar()->value(), bar()->maximum());
    QTest::keyClick(m_flow.chapterPage(), Qt::Key_Right);
    EXPECT_EQ(m_flow.chapterPage()->chapter(), 2);
    QTest::keyClick(m_flow.chapterPage(), Qt::Key_Left);
    EXPECT_EQ(m_flow.chapterPage()->chapter(), 1);
}

TEST_F(Help, StandsWhereItWasLeft) {
    m_flow.open();
    m_flow.showChapter(3);
    m_flow.chapterPage()->scroll(1);
    const int at = bar()->value();
    m_flow.close(); // a bench has called
    EXPECT_EQ(m_flow.page(), nullptr);
    m_flow.open();
    ASSERT_EQ(m_flow.page(), m_flow.chapterPage());
    EXPECT_EQ(m_flow.chapterPage()->chapter(), 3);
    EXPECT_EQ(bar()->value(), at);
}

TEST_F(Help, FindsAWordAndLeadsToItsPlace) {
    m_flow.open();
    press(SlotPlace::Stop);
    ASSERT_TRUE(m_flow.isTyping());
    press(SlotPlace::Step); // Enter, with nothing typed
    EXPECT_TRUE(m_flow.isTyping());
    m_flow.listPage()->setLine("spill");
    emit m_flow.listPage()->typed();
    ASSERT_FALSE(m_flow.listPage()->view().rows.empty());
    press(SlotPlace::Step);
    ASSERT_EQ(m_flow.page(), m_flow.chapterPage());
    const QTextBrowser* text = m_flow.chapterPage()->text();
    const QRect found = text->cursorRect();
    EXPECT_TRUE(text->viewport()->rect().contains(found.center())) << "it is seen";
    EXPECT_TRUE(text->textCursor().selectedText().contains("spill", Qt::CaseInsensitive));
    press(SlotPlace::Stop);
    m_flow.listPage()->setLine("nosuchwordatall");
    emit m_flow.listPage()->typed();
    EXPECT_TRUE(m_flow.listPage()->view().rows.empty());
    EXPECT_TRUE(m_flow.listPage()->view().under.contains("holds these words"));
}

TEST_F(Help, FollowsALinkToItsChapter) {
    m_flow.open();
    m_flow.showChapter(1);
    emit m_flow.chapterPage()->text()->anchorClicked(QUrl("03-first-morning.md"));
    EXPECT_EQ(m_flow.chapterPage()->chapter(), 2);
    emit m_flow.chapterPage()->text()->anchorClicked(QUrl("https://example.org/other"));
    EXPECT_EQ(m_flow.chapterPage()->chapter(), 2) << "nothing outside is opened";
}

/// The brightest pair that a reader has to tell apart, of every piece of text.
double worstContrast(const QTextDocument& document, const QColor& ground) {
    double worst = 21;
    for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
        QColor behind = ground;
        if (block.blockFormat().background().style() != Qt::NoBrush) {
            behind = block.blockFormat().background().color();
        }
        if (const QTextTable* table = QTextCursor(block).currentTable()) {
            const auto cell = table->cellAt(QTextCursor(block)).format().toTableCellFormat();
            if (cell.background().style() != Qt::NoBrush) {
                behind = cell.background().color();
            }
        }
        for (auto at = block.begin(); !at.atEnd(); ++at) {
            const QColor ink = at.fragment().charFormat().foreground().color();
            worst = std::min(worst, contrastRatio(ink, behind));
        }
    }
    return worst;
}

TEST_F(Help, CanBeReadInEveryThemeAndGrowsWithTheWords) {
    m_flow.open();
    for (const ThemeKind theme : {ThemeKind::Dark, ThemeKind::Light, ThemeKind::Contrast}) {
        look(theme);
        for (int i = 0; i < static_cast<int>(m_flow.guide().chapters.size()); ++i) {
            m_flow.showChapter(i);
            EXPECT_GE(
                worstContrast(*m_flow.chapterPage()->text()->document(), Theme::of(theme).panel),
                4.5)
                << "chapter " << i << " theme " << static_cast<int>(theme);
        }
    }
    const auto letters = [this] {
        const QTextBlock about = m_flow.chapterPage()->text()->document()->begin().next();
        return about.begin().fragment().charFormat().font().pixelSize();
    };
    m_flow.showChapter(0);
    const int plain = letters();
    look(ThemeKind::Light, QSize(800, 1280), 1.5);
    m_flow.showChapter(0);
    EXPECT_GE(letters(), plain * 3 / 2 - 1);
    // Nothing is wider than the page: there is no way to see it.
    EXPECT_LE(
        m_flow.chapterPage()->text()->document()->size().width(),
        m_flow.chapterPage()->text()->viewport()->width() + 1);
}

TEST_F(Help, SaysInAnotherLanguageThatTheGuideIsEnglish) {
    speak(Language::German);
    m_flow.open();
    const QString under = m_flow.listPage()->view().under;
    EXPECT_TRUE(under.contains("englisch", Qt::CaseInsensitive)) << under.toStdString();
    EXPECT_FALSE(under.contains("It guides"));
    const auto& chapters = m_flow.guide().chapters;
    EXPECT_TRUE(std::any_of(chapters.begin(), chapters.end(), [](const GuideChapter& one) {
        return one.text.contains("No sound. Watch this screen. The weld goes on. (");
    })) << "and its tables quote the German screen";
}

TEST(HelpWithoutAGuide, SaysItInOneSentenceAndStaysWhereItWas) {
    QWidget window;
    QString said;
    GuideFlow flow({}, &window);
    QObject::connect(&flow, &GuideFlow::said, [&said](const QString& text) { said = text; });
    flow.open();
    EXPECT_EQ(flow.page(), nullptr);
    EXPECT_FALSE(said.isEmpty());
}

} // namespace
} // namespace seamclock
