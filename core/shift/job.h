// A job: the seams of one piece of work, each with its sheets, its procedure and the bench it is
// wished on. Read from a folder of job-*.json; a seam's bench is a file beside it.
#pragma once

#include "core/base/result.h"
#include "core/weld/event.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace seamclock {

struct JobSeam {
    std::string id;  // "seam:UUID" in the log; "": of a job that lies in a file
    std::string job; // its name: the order, else the id; labels are each once in it
    std::string label;
    std::string what;
    std::string part;      // what it is a seam of; "" if not told
    std::string procedure; // id
    std::string benchFile; // with its path; empty where only `bench` is told
    std::string bench;     // its id, from a table; empty: any, or as benchFile says
    double thicknessMm = 0;
    std::vector<double> lengthsMm;
    std::optional<double> dragN;    // absent: not measured yet
    std::optional<double> ambientC; // absent: the procedure's own
    bool shielded = false;
    std::optional<int> beadPlaces; // to measure along the seam; absent: one a seam
    std::optional<int> rewelds;    // how often it may be welded again; absent: not said
    std::vector<Sheet> sheets;
};

/// What tells seams apart: a label alone comes again from job to job.
struct SeamName {
    std::string label;
    std::string job;

    bool operator==(const SeamName&) const = default;
    bool operator<(const SeamName& other) const {
        return label != other.label ? label < other.label : job < other.job;
    }
};
inline SeamName nameOf(const JobSeam& seam) {
    return {seam.label, seam.job};
}

/// What a job may ask for.
inline constexpr int kMostBeadPlaces = 20;
inline constexpr int kMostRewelds = 9;

struct Job {
    std::string name;       // the order, else the id; "" if neither is told
    std::string operatorId; // "person:ID" of the first operator
    std::vector<JobSeam> seams;
    std::string order; // as it stands on papers, all three; "" if not told
    std::string shop;
    std::string part;
};

/// A job's JSON file. Errors: as the file says; Malformed with the place.
Result<Job> readJobFile(const std::string& file);

/// The first job (by file name) of the folder. Missing: there is none; Unreadable, Malformed:
/// as the file says.
Result<Job> readFirstJob(const std::string& folder);

} // namespace seamclock
