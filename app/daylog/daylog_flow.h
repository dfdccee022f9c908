// The day log on the screen: which of its pages stands, and what a press does. Reading is done on
// threads of its own (log_reading.h), and the page shows what it has meanwhile. Anybody may look;
// what a foreman says of a joint (a decision, a sign-off, a correction) takes his PIN and becomes
// an event. The window shows page() while this is open and hands it every press; a bench that calls
// for hands takes the screen from it at any time, and it is gone then.
#pragma once

#include "app/daylog/day_page.h"
#include "app/daylog/day_papers.h"
#include "app/daylog/decision.h"
#include "app/daylog/log_reading.h"
#include "app/daylog/photo_page.h"
#include "app/daylog/search_page.h"
#include "app/daylog/table_page.h"
#include "app/pages/ask_foreman.h"
#include "app/pages/key_ring.h"
#include "app/pages/page_flow.h"

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace seamclock {

/// What the log's pages need of the shop.
struct DayLogShop {
    std::string log; // its path
    AskForeman ask;
    /// A foreman's step on a joint that has ended, in his name.
    std::function<Result<void>(const std::string& weld, const WeldDetail&, const ProvenPerson&)>
        act;
    std::function<bool()> hasForeman; // one with a PIN
    std::function<std::vector<Material>()> materials;
    std::function<UnitSystem()> units;
    std::function<Instant()> now; // at which a paper is made
    QString folder;               // into which papers and tables go
    PaperWork work;
    std::function<void()> closeDay; // the page of the day's seal, by PIN
    std::vector<std::string> job;   // the labels of this tablet's seams
    std::string jobName{};
    bool readOnly = false; // a copy: nobody can decide
};

/// A bench as it stands now.
struct RunningBench {
    std::string id;
    std::string weld; // "weld:UUID", empty: free
    bool open = false;
    BenchCellView cell;
    bool selected = false;
};

class DayLogFlow : public PageFlow {
    Q_OBJECT

public:
    /// Its pages become children of `window`, whose ring of keys is `ring`.
    DayLogFlow(DayLogShop shop, KeyRing* ring, QWidget* window);

    std::vector<Page*> pages() const {
        return {m_day, m_choice, m_search, m_table, m_photo, m_name};
    }
    DayPage* dayPage() const { return m_day; }
    ChoicePage* choicePage() const { return m_choice; }
    SearchPage* searchPage() const { return m_search; }
    TablePage* tablePage() const { return m_table; }
    PhotoPage* photoPage() const { return m_photo; }
    NamePage* namePage() const { return m_name; }
    const DayFilter& filter() const { return m_filter; }

    /// The newest joints, the newest of them chosen; or where it was left by a PIN's page.
    void open();
    /// That joint, found by its number.
    void openAt(const std::string& weld, std::int64_t number);
    /// The pages are left.
    void close();
    /// Something is still being read or worked out.
    bool isBusy() const { return m_reading.isBusy(); }
    /// With the window's timer: the benches as they are, and whether the log has grown.
    void look(const Instant& now, const std::vector<RunningBench>& benches);
    /// Escape: one page back, and from the list to the bench.
    void escaped();
    /// The keyboard's focus goes where it belongs on the page that stands.
    void takeKeys();

    bool eventFilter(QObject* watched, QEvent* event) override;
    /// Those that this machine knows, its own first; asked for when the log is opened.
    void setPrinters(const QStringList& names) { m_printers = names; }

signals:
    /// Back to the bench at that place in what look() was told; -1: the one that was left.
    void left(int bench);

private:
    void turning(Page* next) override;
    void dayPressed(DayPress what);

    // the list
    void showDay();
    void drawDay();
    void restart();
    void readAround();
    void askPage(std::size_t page);
    void scroll(int lines);
    void chooseLine(int by);
    int known() const;
    const JointRowView* line(int index) const;
    int leaf() const;
    void readJoint();
    DayNames jointNames() const;
    void drawJoint();
    void askFilter(FilterBy by);
    void askFilter(FilterBy by, bool search, const std::optional<std::string>& before);
    void askJob();
    void narrow(const DayFilter& filter);
    void showSearch();
    void searchTile(int index);

    // one joint
    void showRecord();
    void recordTile(int index);
    void showTable(int tab);
    void showPhotos();
    void showPhoto(std::size_t index);
    void decide(Decision decision);
    void decideBecause(Decision decision, const std::string& reason);
    DayPapers papers() const;
    void makePaper(std::function<Result<QString>(LogReader&)> work, const QString& done);
    void askTable();
    /// A file or a printer, and what is to be done with that one; `stop`: with none.
    void askWhere(
        const QString& title, std::function<void()> save,
        const std::function<void(const QString& printer)>& print, Press stop);
    void makeReport();
    void signOff();
    void correct();
    void correctValue(const Correctable& value);
    void correctBecause(const Correctable& value, const std::string& is, const std::string& reason);
    void act(const WeldDetail& detail, const QString& forWhat, const QString& done);

    static constexpr std::size_t kPage = 40;      // lines that are read at once
    static constexpr std::size_t kMostPages = 12; // whose lines are held
    static constexpr int kMostPrinters = 7;       // that are offered

    DayLogShop m_shop;
    LogReading m_reading;
    DayPage* m_day;
    ChoicePage* m_choice;
    SearchPage* m_search;
    TablePage* m_table;
    PhotoPage* m_photo;
    NamePage* m_name;
    KeyRing* m_ring;

    DayNames m_names;
    DayFilter m_filter;
    struct PageOfLines {
        std::optional<JointKey> after; // where the one before ended; absent: the newest
        std::vector<JointRowView> rows;
        std::size_t count = 0; // of its lines, also when they are not held
        bool there = false;
        bool asked = false;
    };
    std::vector<PageOfLines> m_lines;
    bool m_whole = false; // the last page is the last
    int m_top = 0;        // the line that stands first
    std::string m_chosen; // "weld:UUID"
    bool m_choosesFirst = false;
    QString m_nothing;
    std::uint64_t m_listTurn = 0; // of the list: an answer to an older one is dropped
    std::uint64_t m_jointTurn = 0;
    std::optional<JointSeen> m_joint;
    std::optional<HeatEstimate> m_heat;
    std::vector<RunningBench> m_benches;
    std::optional<Milliseconds> m_lookedAt; // whether the log has grown
    QStringList m_printers;                 // of this machine
    bool m_looking = false;
    std::int64_t m_head = -1;
};

} // namespace seamclock
