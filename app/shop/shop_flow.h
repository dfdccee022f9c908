// The foreman's pages of how the shop is doing: jobs and their seams, the day's plan, strength
// tests, charts, what is due, batches of sheet. Which of them stands and what a press does is here;
// what is shown is worked out by the views, and everything that is read or planned on a thread of
// its own. Anybody may look; what is kept (seams, coupons) takes a foreman's PIN and is a fact in
// his name. A bench that calls for hands takes the screen at any time; what was typed by then
// waits.
#pragma once

#include "app/daylog/day_view.h"
#include "app/pages/ask_foreman.h"
#include "app/pages/desk.h"
#include "app/pages/page_flow.h"
#include "app/setup/form_page.h"
#include "app/setup/setup_files.h"
#include "app/shop/control_chart_page.h"
#include "app/shop/coupon_draft.h"
#include "app/shop/job_view.h"
#include "app/shop/numbered_joint.h"
#include "app/shop/plan_page.h"
#include "app/shop/seam_form.h"
#include "app/shop/shop_reading.h"
#include "app/shop/value_page.h"
#include "core/quality/coupons.h"
#include "core/session/job_day.h"

#include <functional>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace seamclock {

/// What these pages need of the shop floor.
struct ShopRoom {
    std::string log; // its path
    AskForeman ask;
    std::function<bool()> hasForeman; // one with a PIN
    std::function<std::vector<BenchDocument>()> benches;
    std::function<QString(const std::string& bench)> letter;
    std::function<std::vector<ProcedureDocument>()> procedures;
    std::function<Instant()> now;
    std::vector<JobSeam> seams; // of the job that lies in a file
    QString folder;             // where tables are looked for first
};

class ShopFlow : public PageFlow {
    Q_OBJECT

public:
    /// `desk` must outlive it; its pages become children of `window`.
    ShopFlow(Desk& desk, ShopRoom room, QWidget* window);

    std::vector<Page*> pages() const {
        return {m_choice, m_list, m_plan, m_chart, m_value, m_form, m_name};
    }
    ChoicePage* choicePage() const { return m_choice; }
    ListPage* listPage() const { return m_list; }
    PlanPage* planPage() const { return m_plan; }
    ControlChartPage* chartPage() const { return m_chart; }
    ValuePage* valuePage() const { return m_value; }
    FormPage* formPage() const { return m_form; }
    NamePage* namePage() const { return m_name; }

    /// The page of what there is, or coupons and a seam that were being typed.
    void open();
    /// The pages are left.
    void close();
    /// Something is still being read or worked out.
    bool isBusy() const { return m_reading.isBusy(); }
    /// With the window's timer: the plan's line of now, and whether the log has grown.
    void look(const Instant& now);
    /// Of the keyboard, where no line takes it.
    void typed(QChar sign);
    void erased();
    void takeKeys();

signals:
    void left();
    /// To the joint's page in the day log.
    void jointAsked(const QString& weld, qint64 number);
    /// The log keeps other seams than before.
    void seamsKept();

private:
    void askWords(
        const QString& title, const QString& under, const QString& line,
        std::function<void(const QString&)> then, Press stop);
    void reading(const QString& title);
    DayNames names() const;
    bool needsForeman();

    /// What comes of it is dropped once another page stands.
    template <class T>
    void ask(std::function<Result<T>(LogReader&)> work, std::function<void(const T&)> then) {
        m_reading.ask<T>(
            std::move(work), [this, at = turn(), then = std::move(then)](const Result<T>& come) {
                if (at != turn()) {
                    return;
                }
                if (!come) {
                    tell(come.error());
                    return;
                }
                then(*come);
            });
    }
    template <class T>
    void
    errand(std::function<Result<T>(Office&)> work, const QString& done, std::function<void()> then);

    void showStart();

    // the day's plan
    void showPlan();
    void askPlan();
    void chooseBenches();
    void choosePeople();
    std::vector<Person> welders() const;
    std::vector<std::string> planned() const;

    // strength tests
    void showTests();
    void showSeries(const CouponSeries& series);
    void beginCoupons();
    void askJoint(
        const CouponTested& about,
        std::function<void(const CouponTested&, const NumberedJoint&)> then);
    /// Of the joints with that number, of which there are several once another tablet's log was
    /// brought in: whoever asked chooses. "" if there is none.
    void askWhich(std::int64_t number, std::function<void(const NumberedJoint&)> then, Press stop);
    void askSheets(bool bend);
    void askThickness(const CouponTested& about);
    void
    askHow(const CouponTested& about, const std::string& series, const QString& joint = QString());
    void beginDraft(CouponDraft draft);
    void askCoupon();
    static ChoiceView crackedQuestion(std::size_t number);
    void askCracked();
    void askEntered();
    void retype(const CouponDraft::Entered& one);
    void askOtherJoint(const CouponTested& about, const std::string& series);
    void showDraft();
    void askStandard();
    void askWelder();
    void keepDraft();
    void sendDraft();

    // charts, what is due, batches
    void showCharts();
    void showChart(std::size_t index, std::size_t until);
    void showDue();
    void showBatches(bool byJoint);
    void findBatch(const QString& batch);
    void findSheets(const QString& number);
    void showSheets(std::int64_t joint, const QString& number, const NumberedJoint& one);

    // jobs
    struct JobsSeen {
        std::vector<JobSeam> seams;
        JobProgress progress;
        std::vector<std::string> unread; // as KeptSeams
    };
    void askJobs(std::function<void()> then);
    void showJobs();
    void listJobs();
    void showSeams(const std::string& job);
    void showSeam(const std::string& job, std::size_t place);
    std::vector<std::string> untouched(const std::string& job) const;
    void takeAway(const std::vector<std::string>& ids, const QString& what);
    void askTable();
    void showFiles(const std::string& job, const QString& trouble);
    void readTable(const std::string& job, const QString& path);
    void showTable(const QString& file, const std::string& job, const JobCsv& table);
    void keepSeams(std::vector<JobSeam> seams, const QString& done);
    SeamChoices seamChoices() const;
    void typeSeam();
    void showForm();
    void showSeamDraft();

    Desk& m_desk;
    ShopRoom m_room;
    ShopReading m_reading;
    ChoicePage* m_choice;
    ListPage* m_list;
    PlanPage* m_plan;
    ControlChartPage* m_chart;
    ValuePage* m_value;
    FormPage* m_form;
    NamePage* m_name;

    std::set<std::string> m_benchesOut;              // not planned with
    std::optional<std::set<std::string>> m_peopleIn; // as chosen; absent: all operators
    std::optional<Instant> m_plannedAt;
    std::int64_t m_plannedHead = -1; // the log's last row, when the plan was asked for
    bool m_planning = false;
    bool m_planAgain = false; // was asked for once more meanwhile
    std::optional<Milliseconds> m_lookedAt;
    bool m_looking = false;

    std::optional<CouponDraft> m_draft;
    std::vector<ShopChart> m_charts;
    std::int64_t m_within = 90; // days
    JobsSeen m_jobs;
    std::vector<FileRow> m_files;
    std::optional<SeamValues> m_typing; // a seam by hand
    bool m_asksWhole = false;           // its keeping was asked for: everything that lacks is told
};

} // namespace seamclock
