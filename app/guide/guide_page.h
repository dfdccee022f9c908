// One chapter to read, with keys that a glove can press: a screen up and down, a chapter back and
// on. A finger drags it as well, and a link leads to its chapter.
#pragma once

#include "app/guide/guide.h"
#include "app/pages/page.h"

class QKeyEvent;
class QTextBrowser;
class QUrl;

namespace seamclock {

class GuidePage : public Page {
    Q_OBJECT

public:
    explicit GuidePage(QWidget* parent = nullptr);

    /// `mark`: where it is scrolled to, the first of its places that holds these words; empty: its
    /// beginning.
    void show(const Guide& guide, int chapter, const QString& mark = {});
    int chapter() const { return m_chapter; }
    /// By so many screens; kept within the chapter.
    void scroll(int screens);
    QTextBrowser* text() const { return m_text; }
    /// What its step says, which leads out. Sets the page's other words anew, in the language of
    /// now.
    void setHome(const QString& text);

signals:
    void chapterAsked(int chapter);

protected:
    void keyPressEvent(QKeyEvent* event) override; // arrows, Home, End
    void showEvent(QShowEvent* event) override;
    void place() override;
    void lookChanged() override;

private:
    void set();
    void follow(const QUrl& link);
    void keysNow();
    void refresh();

    Guide m_guide;
    int m_chapter = 0;
    double m_set = 0; // the width that the text was set for [px]
    QString m_mark;
    QTextBrowser* m_text;
    SlotButton* m_up;
    SlotButton* m_down;
    SlotButton* m_before;
    SlotButton* m_after;
    QString m_home;
};

} // namespace seamclock
