// The day log over a copy of a log, on an office computer: the same pages as the foreman's, without
// a bench, a key or a writer behind them. Whatever page stands, the line above it says that this is
// a copy, from when it is and up to when it tells. Papers and tables go into the reader's own
// folder; beside the copy nothing is written and nothing is locked (core/copies/copy_look.h).
// The user guide is here too, by its key beside that line and by F1.
#pragma once

#include "app/daylog/daylog_flow.h"
#include "app/guide/guide_flow.h"
#include "app/pages/key_ring.h"
#include "app/pages/page.h"
#include "core/base/instant.h"
#include "core/copies/copy_look.h"
#include "core/heat/material.h"
#include "core/units/measure.h"

#include <QString>
#include <QWidget>
#include <vector>

namespace seamclock {

struct ReadParts {
    CopySeen seen;
    PageLook look;
    UnitSystem units = UnitSystem::Metric;
    std::vector<Material> materials;
    QString folder; // for papers and tables
    PaperWork work;
    GuideFlow::Read readGuide{}; // empty: there is none
};

/// "Copy, read only: made 7 Jan 2030 16:40, last entry 7 Jan 2030 16:38." `offset`: of this
/// computer.
QString copyLine(const CopySeen& seen, std::chrono::minutes offset);

class ReadWindow : public QWidget {
    Q_OBJECT

public:
    /// This computer's clock, for the times that are shown and printed; it must outlive the window.
    ReadWindow(ReadParts parts, const Clock& clock);

    DayLogFlow* dayLog() const { return m_flow; }
    GuideFlow* guide() const { return m_guide; }
    Page* currentPage() const;
    const Sentence* mark() const { return m_mark; }
    const Sentence* said() const { return m_said; }

signals:
    void quitAsked();

protected:
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void say(const QString& text);
    void turned();
    void openHelp();
    void place();
    std::vector<Page*> pages() const;

    PageLook m_look;
    Sentence* m_mark;
    Sentence* m_said;
    FilterCell* m_help;
    KeyRing* m_ring;
    DayLogFlow* m_flow;
    GuideFlow* m_guide;
};

} // namespace seamclock
