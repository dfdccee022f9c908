// A seam that no job names, or several short ones in one clamping, entered by hand: procedure,
// thickness, lengths and shop temperature by large tiles, maker and batch by a keyboard. It keeps
// what was typed; the window asks and answers.
#pragma once

#include "app/operate/weld_view.h"
#include "app/pages/page.h"

#include <QString>
#include <optional>
#include <vector>

class QLineEdit;

namespace seamclock {

struct EntryDraft {
    int procedure = -1; // in the floor's list
    std::optional<double> thicknessMm;
    std::vector<double> lengthsMm; // of all seams in this clamping
    std::optional<double> ambientC;
    QString maker;
    QString batches[2];
};

class EntryPage : public Page {
    Q_OBJECT

public:
    explicit EntryPage(QWidget* parent = nullptr);
    bool takesDigits() const override { return true; }

    using QWidget::show;
    /// `procedure`: its title; texts for what is still missing are the page's.
    void show(const EntryDraft& draft, const QString& procedure, const QString& trouble);
    /// The lines as typed.
    void takeLines(EntryDraft& draft) const;

signals:
    void procedureAsked();
    void numberAsked(seamclock::NumberFor what);

protected:
    void place() override;
    void lookChanged() override;

private:
    Sentence* m_title;
    Sentence* m_trouble;
    SlotButton* m_procedure;
    SlotButton* m_thickness;
    SlotButton* m_length;
    SlotButton* m_ambient;
    QLineEdit* m_maker;
    QLineEdit* m_batches[2];
};

} // namespace seamclock
