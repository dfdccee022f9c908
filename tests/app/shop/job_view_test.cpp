// Jobs, seams, tables and batches as they are listed.
#include "app/shop/job_view.h"

#include <gtest/gtest.h>
#include <set>

namespace seamclock {
namespace {

JobSeam seam(const std::string& job, const std::string& label) {
    JobSeam out;
    out.job = job;
    out.label = label;
    out.what = "floor";
    out.thicknessMm = 8.5;
    out.lengthsMm = {620, 580};
    out.sheets = {{"PE-HD", {}, "", "", 8'500, {}}, {"PE-HD", {}, "", "", 8'500, {}}};
    return out;
}

SeamProgress progress(const JobSeam& of, JobSeamState state, const std::string& verdict = "") {
    SeamProgress out{of.job, of.label, state, "", "", {}};
    if (!verdict.empty()) {
        SeamJoint joint;
        joint.line.weld = out.weld = "weld:1";
        joint.line.number = 12;
        joint.line.verdict = verdict;
        joint.line.open = false;
        joint.line.phase = "closed";
        out.joints.push_back(joint);
    }
    return out;
}

TEST(JobView, EachStateHasAWordAndAShapeOfItsOwn) {
    std::set<Mark> marks;
    for (const JobSeamState state :
         {JobSeamState::Open, JobSeamState::Running, JobSeamState::Done, JobSeamState::ToDecide,
          JobSeamState::ToRedo, JobSeamState::CutOut}) {
        marks.insert(lookOf(state).mark);
        EXPECT_FALSE(stateText(state).isEmpty());
    }
    EXPECT_EQ(marks.size(), 6U);
}

TEST(JobView, AJobSaysHowFarItIs) {
    const std::vector<JobSeam> seams{seam("J1", "S1"), seam("J1", "S2"), seam("J2", "S1")};
    JobProgress is;
    is.seams = {
        progress(seams[0], JobSeamState::Done, "within limits"),
        progress(seams[1], JobSeamState::ToDecide, "out of limits"),
        progress(seams[2], JobSeamState::Open)};
    const ListView view = jobList(seams, is);
    ASSERT_EQ(view.rows.size(), 2U);
    EXPECT_EQ(view.rows[0].text, "Job J1");
    EXPECT_EQ(view.rows[0].second, "1 of 2 seams are made");
    EXPECT_EQ(view.rows[0].third, "to decide: 1");
    EXPECT_EQ(view.rows[0].mark, Mark::Trouble);
    EXPECT_EQ(view.rows[1].mark, Mark::Open);
    std::vector<std::size_t> places;
    const ListView own = seamList("J1", seams, is, {}, places);
    EXPECT_EQ(places, (std::vector<std::size_t>{0, 1}));
    EXPECT_EQ(own.rows[0].text, "S1: floor");
    EXPECT_EQ(own.rows[0].second, "PE-HD, 8.5 mm, 620 + 580 mm long");
    EXPECT_EQ(own.rows[0].third, "made: joint 12, within limits");
    EXPECT_EQ(own.rows[1].third, "to decide: joint 12 is out of limits");
}

TEST(JobView, ASeamThatCannotBeReadStandsBelowTheJobsAndTakesNoneWithIt) {
    const std::vector<JobSeam> seams{seam("J1", "S1")};
    JobProgress is;
    is.seams = {progress(seams[0], JobSeamState::Open)};
    const ListView view = jobList(seams, is, {"a.log: a fact of a seam can't be read"});
    ASSERT_EQ(view.rows.size(), 2U);
    EXPECT_EQ(view.rows[0].text, "Job J1");
    EXPECT_EQ(view.rows[1].text, "A seam can't be read");
    EXPECT_EQ(view.rows[1].second, "a.log: a fact of a seam can't be read");
    EXPECT_EQ(view.rows[1].mark, Mark::Trouble);
    EXPECT_FALSE(view.rows[1].enabled);
}

TEST(JobView, ATablesFaultsStandByLineAndColumn) {
    const JobCsv wrong = readJobCsv("label,material,procedure,thickness_mm,length_mm\n"
                                    "S1,PE-HD,p,\"8,5\",1180\nS1,PE-HD,p,8,1180\n");
    const ListView view = tableList("a.csv", "J1", wrong);
    ASSERT_EQ(view.rows.size(), 2U);
    EXPECT_EQ(view.rows[0].text, "Line 2, thickness_mm");
    EXPECT_TRUE(view.rows[0].second.startsWith("\"8,5\" is not a number"));
    EXPECT_EQ(view.rows[1].text, "Line 3, label");
    EXPECT_EQ(view.step.look, SlotView::Look::Gone);
    const JobCsv good =
        readJobCsv("label,material,procedure,thickness_mm,length_mm\nS1,PE-HD,p,8,1180\n");
    EXPECT_EQ(tableList("a.csv", "J1", good).title, "a.csv: one seam for job J1");
}

TEST(JobView, ABatchIsNamedAsItWasNotedAndAsItWasCorrected) {
    EXPECT_EQ(
        batchWord({1, "PE-HD", "", "", "B-1", false, true}), "B-1 (as it was noted at first)");
    EXPECT_EQ(batchWord({1, "PE-HD", "", "", "B-2", true, false}), "B-2 (as it was corrected)");
    BatchFound found;
    BatchJoint joint;
    joint.line.number = 7;
    joint.line.seam = "S1";
    joint.line.job = "J1";
    joint.line.day = "2030-01-07";
    joint.line.bench = "east";
    joint.line.verdict = "within limits with remarks";
    joint.line.open = false;
    joint.sheets = {{2, "PE-HD", "", "", "B-1", false, false}};
    found.joints = {joint};
    const auto rows = batchRows(found, {});
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_EQ(rows[0].text, "Joint 7, seam S1 of job J1");
    EXPECT_EQ(rows[0].second, "7 Jan 2030 · bench east · sheet 2: B-1");
    EXPECT_EQ(rows[0].mark, Mark::Done);
    EXPECT_FALSE(sheetRows({{1, "PE-HD", "", "", "", false, false}})[0].enabled);
}

} // namespace
} // namespace seamclock
