// Set-up on the screen: which of its pages stands, and what a press does. Anybody may look; what is
// kept takes a foreman's PIN, is written on the desk's thread as a new document or an attestation
// in the foreman's name, and then holds for new plans. A document under edit is only here until
// then: while the PIN is asked for it waits, and it does when a bench is touched meanwhile; it goes
// when its form is closed, or the program ends.
#pragma once

#include "app/pages/ask_foreman.h"
#include "app/pages/desk.h"
#include "app/pages/page_flow.h"
#include "app/setup/form_page.h"
#include "app/setup/procedure_page.h"
#include "app/setup/setup_files.h"
#include "app/setup/setup_shop.h"

#include <functional>
#include <map>
#include <optional>
#include <set>
#include <string>

namespace seamclock {

class SetupFlow : public PageFlow {
    Q_OBJECT

public:
    /// All must outlive it; its pages become children of `window`. `folder`: where files are looked
    /// for first.
    SetupFlow(Desk& desk, SetupShop& shop, AskForeman ask, QString folder, QWidget* window);

    std::vector<Page*> pages() const { return {m_list, m_procedure, m_form, m_choice}; }
    ListPage* listPage() const { return m_list; }
    ProcedurePage* procedurePage() const { return m_procedure; }
    FormPage* formPage() const { return m_form; }
    ChoicePage* choicePage() const { return m_choice; }

    /// The list, or the form that was left with something changed.
    void open();
    /// A new bench whose document was begun elsewhere: its form, at the calibration.
    void openCalibration(const QString& name, const std::string& document);
    /// The pages are left; a form with changes waits.
    void close();
    /// The keyboard's focus goes where it belongs on the page that stands.
    void takeKeys();
    /// Whether something was changed and not saved.
    bool isChanged() const;

signals:
    void left();

private:
    enum class Kind { Procedure, Bench };
    struct Editing {
        Kind kind = Kind::Procedure;
        QString name;
        JsonDraft draft;
        std::string before;                // the document's text as it was read
        std::vector<FormSection> sections; // with their findings
        QStringList findings;              // of no section
        std::map<std::string, QString> typed;
        std::size_t section = 0;
        int wrong = 0;
        bool isNew = false;
    };

    void showStart();
    void showProcedure(const std::string& id, int tab = 0);
    const ProcedureDocument* procedure(const std::string& id) const;

    void edit(Kind kind, const QString& name, const std::string& bytes, bool isNew);
    void look();
    void showSections();
    void showSection();
    void typedInto(const FormField& field, const QString& text);
    void askedFor(const FormField& field);
    void acted(const FormAction& action);
    void askOrder(const std::vector<std::string>& chosen);
    void save();
    void saveProcedure(const ProvenPerson& by);
    void saveBench(const ProvenPerson& by);
    void leaveForm();

    void showFiles(
        const QString& title, const QString& ending,
        const std::function<std::optional<QString>(const QString& path)>& read, const Press& stop,
        const QString& trouble = {});
    std::optional<QString> importProcedure(const QString& path);
    std::optional<QString> readPoints(const QString& path);

    void attest(const std::string& id, bool withdraws);
    void showGroups();
    void showCells(std::size_t group);
    void askEdition();
    void keepAttestation();
    void inForce(const Result<std::vector<ProcedureDocument>>& now, const QString& told);

    Desk& m_desk;
    SetupShop& m_shop;
    AskForeman m_ask;
    QString m_folder;
    ListPage* m_list;
    ProcedurePage* m_procedure;
    FormPage* m_form;
    ChoicePage* m_choice;

    std::string m_id; // the procedure that is shown
    std::optional<Editing> m_editing;
    std::vector<FileRow> m_files;
    std::set<std::string> m_ticked; // cells
    bool m_withdraws = false;
};

} // namespace seamclock
