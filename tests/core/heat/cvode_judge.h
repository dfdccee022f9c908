// The same equations as core/heat, solved another way, to judge it by: nodes that stand on the face
// and on the middle instead of cells, heat kept exactly as the material's curves give it instead of
// in a table, both directions at once instead of one after the other, and time in the hands of
// SUNDIALS CVODE (variable order BDF; Hindmarsh et al., ACM Trans. Math. Softw. 31, 2005). It takes
// from core/heat the material alone. Nothing is pressed in it.
#pragma once

#include "core/heat/material.h"

#include <memory>
#include <vector>

namespace seamclock::test {

struct JudgeGrid {
    int inward = 140; // intervals; they grow evenly from the face
    int across = 12;
    double finest = 0.05e-3; // [m]
    double depth = 0.08;     // [m]
    double tolerance = 1e-6; // CVODE's, relative
};

class CvodeJudge {
public:
    CvodeJudge(
        const Material& material, double thickness, double ambientC, double sideAir,
        const JudgeGrid& grid);
    ~CvodeJudge();
    CvodeJudge(const CvodeJudge&) = delete;
    CvodeJudge& operator=(const CvodeJudge&) = delete;

    /// What stands at the face for so long. At each of `times` that is passed (in seconds since the
    /// beginning, rising) the face's temperature is added to `faces`, by CVODE's own polynomial.
    /// False: CVODE gave up.
    bool go(double faceCelsius, double conductance, double seconds);
    bool
    go(double faceCelsius, double conductance, double seconds, const std::vector<double>& times,
       std::vector<double>& faces);

    double seconds() const;
    double faceC() const; // at the middle of the thickness
    std::size_t nodes() const;
    long steps() const;

    struct Parts; // public for CVODE's callbacks alone

private:
    std::unique_ptr<Parts> m_parts;
};

} // namespace seamclock::test
