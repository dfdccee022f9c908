#include "tests/core/heat/cvode_judge.h"

#include <algorithm>
#include <cmath>
#include <cvode/cvode.h>
#include <nvector/nvector_serial.h>
#include <sundials/sundials_context.h>
#include <sunlinsol/sunlinsol_band.h>
#include <sunmatrix/sunmatrix_band.h>
#include <vector>

namespace seamclock::test {
namespace {

double between(double celsius, double low, double high) { // 1 below, 0 above
    return std::clamp((high - celsius) / (high - low), 0.0, 1.0);
}

/// Heat of a cubic metre, exactly: the specific heat's straight pieces integrated.
class Plastic {
public:
    explicit Plastic(const Material& material) : m_material(material) {
        for (const auto& point : material.specificHeat.points) {
            m_knots.push_back({point.celsius, point.value, 0});
        }
        for (std::size_t i = 1; i < m_knots.size(); ++i) {
            const Knot& low = m_knots[i - 1];
            m_knots[i].heat = low.heat + (low.specific + m_knots[i].specific) / 2 *
                                             (m_knots[i].celsius - low.celsius);
        }
    }

    double kept(double celsius, double crystalline) const { // what is crystalline, as it was
        if (!m_material.crystals) {
            return crystalline;
        }
        const Crystallinity& c = *m_material.crystals;
        const double most = between(celsius, c.meltsFrom, c.meltsTo);
        const double least = between(celsius, c.crystallisesTo, c.crystallisesFrom);
        return std::min(std::max(crystalline, least), most);
    }

    double heat(double celsius, double crystalline) const { // [J/m³]
        double sum = sensible(celsius);
        if (m_material.crystals) {
            sum += m_material.crystals->heat * (1 - kept(celsius, crystalline));
        }
        return sum * m_material.density;
    }

    double conductivity(double celsius, double crystalline) const {
        const double solid = kept(celsius, crystalline);
        return solid * m_material.conductivity.at(celsius) +
               (1 - solid) * m_material.meltConductivity.at(celsius);
    }

    /// Newton's method between bounds that close in; `perHeat` is dT/dH there.
    double celsius(double heat, double crystalline, double guess, double& perHeat) const {
        double low = -60;
        double high = 420;
        double at = guess;
        for (int round = 0; round < 100; ++round) {
            const double wrong = this->heat(at, crystalline) - heat;
            (wrong > 0 ? high : low) = at;
            perHeat = 1 / slope(at, crystalline);
            double next = at - wrong * perHeat;
            if (!(next > low && next < high)) {
                next = (low + high) / 2;
            }
            if (std::fabs(next - at) < 1e-9) {
                return next;
            }
            at = next;
        }
        return at;
    }

private:
    struct Knot {
        double celsius;
        double specific;
        double heat;
    };

    double sensible(double celsius) const {
        if (celsius <= m_knots.front().celsius) {
            return m_knots.front().specific * (celsius - m_knots.front().celsius);
        }
        std::size_t i = 0;
        while (i + 1 < m_knots.size() && m_knots[i + 1].celsius < celsius) {
            ++i;
        }
        const double over = celsius - m_knots[i].celsius;
        return m_knots[i].heat +
               (m_knots[i].specific + m_material.specificHeat.at(celsius)) / 2 * over;
    }

    double slope(double celsius, double crystalline) const {
        double sum = m_material.specificHeat.at(celsius);
        if (m_material.crystals) {
            const Crystallinity& c = *m_material.crystals;
            const double most = between(celsius, c.meltsFrom, c.meltsTo);
            const double least = between(celsius, c.crystallisesTo, c.crystallisesFrom);
            if (crystalline > most && most > 0) {
                sum += c.heat / (c.meltsTo - c.meltsFrom);
            } else if (crystalline < least && least < 1) {
                sum += c.heat / (c.crystallisesFrom - c.crystallisesTo);
            }
        }
        return sum * m_material.density;
    }

    Material m_material;
    std::vector<Knot> m_knots;
};

/// Nodes from 0 on; the first interval is `finest`, and each is as much longer than the one before.
std::vector<double> growingNodes(int intervals, double finest, double length) {
    const auto lengthFor = [&](double growth) {
        double sum = 0;
        double width = finest;
        for (int i = 0; i < intervals; ++i, width *= growth) {
            sum += width;
        }
        return sum;
    };
    double low = 1;
    double high = 3;
    for (int round = 0; round < 100; ++round) {
        const double middle = (low + high) / 2;
        (lengthFor(middle) < length ? low : high) = middle;
    }
    std::vector<double> nodes{0};
    double width = finest;
    for (int i = 0; i < intervals; ++i, width *= low) {
        nodes.push_back(nodes.back() + width);
    }
    return nodes;
}

/// What belongs to each node: from the middle of one interval to that of the next.
std::vector<double> sharesOf(const std::vector<double>& nodes) {
    std::vector<double> shares(nodes.size(), 0);
    for (std::size_t i = 1; i < nodes.size(); ++i) {
        shares[i - 1] += (nodes[i] - nodes[i - 1]) / 2;
        shares[i] += (nodes[i] - nodes[i - 1]) / 2;
    }
    return shares;
}

} // namespace

struct CvodeJudge::Parts {
    Plastic plastic;
    std::vector<double> x; // inward
    std::vector<double> y; // across, from the middle
    std::vector<double> dx;
    std::vector<double> dy;
    double ambient;
    double sideAir;
    double faceCelsius = 0;
    double conductance = 0;
    double now = 0;

    std::vector<double> celsius; // guesses, then what the last look found
    std::vector<double> perHeat;
    std::vector<double> conductivity;
    std::vector<double> crystalline;

    SUNContext context = nullptr;
    N_Vector heat = nullptr;
    N_Vector between = nullptr;
    SUNMatrix matrix = nullptr;
    SUNLinearSolver solver = nullptr;
    void* cvode = nullptr;
    bool sound = false;
    long stepsBefore = 0;

    explicit Parts(const Material& material) : plastic(material) {}

    std::size_t at(std::size_t i, std::size_t j) const { return i * y.size() + j; }

    void look(const double* h) {
        for (std::size_t n = 0; n < celsius.size(); ++n) {
            celsius[n] = plastic.celsius(h[n], crystalline[n], celsius[n], perHeat[n]);
            conductivity[n] = plastic.conductivity(celsius[n], crystalline[n]);
        }
    }

    /// Calls through(node, other, conductance [W/mK of one metre]) for each pair that touches.
    template <class Through>
    void pairs(Through through) const {
        for (std::size_t i = 0; i < x.size(); ++i) {
            for (std::size_t j = 0; j < y.size(); ++j) {
                const std::size_t here = at(i, j);
                if (i + 1 < x.size()) {
                    const std::size_t other = at(i + 1, j);
                    const double k = (conductivity[here] + conductivity[other]) / 2;
                    through(here, other, k * dy[j] / (x[i + 1] - x[i]));
                }
                if (j + 1 < y.size()) {
                    const std::size_t other = at(i, j + 1);
                    const double k = (conductivity[here] + conductivity[other]) / 2;
                    through(here, other, k * dx[i] / (y[j + 1] - y[j]));
                }
            }
        }
    }

    void rates(const double* h, double* out) {
        look(h);
        std::fill(out, out + celsius.size(), 0.0);
        pairs([&](std::size_t one, std::size_t other, double g) {
            const double flow = g * (celsius[one] - celsius[other]);
            out[one] -= flow;
            out[other] += flow;
        });
        for (std::size_t j = 0; j < y.size(); ++j) {
            out[at(0, j)] += conductance * dy[j] * (faceCelsius - celsius[at(0, j)]);
        }
        for (std::size_t i = 0; i < x.size(); ++i) {
            const std::size_t side = at(i, y.size() - 1);
            out[side] += sideAir * dx[i] * (ambient - celsius[side]);
        }
        for (std::size_t i = 0; i < x.size(); ++i) {
            for (std::size_t j = 0; j < y.size(); ++j) {
                out[at(i, j)] /= dx[i] * dy[j];
            }
        }
    }

    void jacobian(const double* h, SUNMatrix into) {
        look(h);
        SUNMatZero(into);
        const auto volume = [&](std::size_t n) { return dx[n / y.size()] * dy[n % y.size()]; };
        const auto add = [&](std::size_t row, std::size_t column, double g) {
            SM_ELEMENT_B(into, static_cast<sunindextype>(row), static_cast<sunindextype>(column)) +=
                g * perHeat[column] / volume(row);
        };
        pairs([&](std::size_t one, std::size_t other, double g) {
            add(one, one, -g);
            add(one, other, g);
            add(other, other, -g);
            add(other, one, g);
        });
        for (std::size_t j = 0; j < y.size(); ++j) {
            add(at(0, j), at(0, j), -conductance * dy[j]);
        }
        for (std::size_t i = 0; i < x.size(); ++i) {
            const std::size_t side = at(i, y.size() - 1);
            add(side, side, -sideAir * dx[i]);
        }
    }
};

namespace {

int ratesFor(double, N_Vector heat, N_Vector out, void* parts) {
    static_cast<CvodeJudge::Parts*>(parts)->rates(NV_DATA_S(heat), NV_DATA_S(out));
    return 0;
}

int jacobianFor(
    double, N_Vector heat, N_Vector, SUNMatrix into, void* parts, N_Vector, N_Vector, N_Vector) {
    static_cast<CvodeJudge::Parts*>(parts)->jacobian(NV_DATA_S(heat), into);
    return 0;
}

} // namespace

CvodeJudge::CvodeJudge(
    const Material& material, double thickness, double ambientC, double sideAir,
    const JudgeGrid& grid)
    : m_parts(std::make_unique<Parts>(material)) {
    Parts& p = *m_parts;
    p.x = growingNodes(grid.inward, grid.finest, grid.depth);
    p.y = growingNodes(grid.across, thickness / 2 / grid.across, thickness / 2);
    p.dx = sharesOf(p.x);
    p.dy = sharesOf(p.y);
    p.ambient = ambientC;
    p.sideAir = sideAir;
    const std::size_t count = p.x.size() * p.y.size();
    p.crystalline.assign(count, p.plastic.kept(ambientC, 1));
    p.celsius.assign(count, ambientC);
    p.perHeat.assign(count, 0);
    p.conductivity.assign(count, 0);
    if (SUNContext_Create(nullptr, &p.context) != 0) {
        return;
    }
    const auto length = static_cast<sunindextype>(count);
    const auto band = static_cast<sunindextype>(p.y.size());
    p.heat = N_VNew_Serial(length, p.context);
    p.between = N_VClone(p.heat);
    N_VConst(p.plastic.heat(ambientC, 1), p.heat);
    p.matrix = SUNBandMatrix(length, band, band, p.context);
    p.solver = SUNLinSol_Band(p.heat, p.matrix, p.context);
    p.cvode = CVodeCreate(CV_BDF, p.context);
    // A kelvin is about 2e6 J/m³ at rest: the absolute tolerance is 5 K times the relative one.
    p.sound = CVodeInit(p.cvode, ratesFor, 0, p.heat) == CV_SUCCESS &&
              CVodeSStolerances(p.cvode, grid.tolerance, grid.tolerance * 1e7) == CV_SUCCESS &&
              CVodeSetUserData(p.cvode, &p) == CV_SUCCESS &&
              CVodeSetLinearSolver(p.cvode, p.solver, p.matrix) == CV_SUCCESS &&
              CVodeSetJacFn(p.cvode, jacobianFor) == CV_SUCCESS &&
              CVodeSetMaxNumSteps(p.cvode, 1000000) == CV_SUCCESS;
}

CvodeJudge::~CvodeJudge() {
    CVodeFree(&m_parts->cvode);
    SUNLinSolFree(m_parts->solver);
    SUNMatDestroy(m_parts->matrix);
    N_VDestroy(m_parts->heat);
    N_VDestroy(m_parts->between);
    SUNContext_Free(&m_parts->context);
}

bool CvodeJudge::go(double faceCelsius, double conductance, double seconds) {
    std::vector<double> none;
    return go(faceCelsius, conductance, seconds, {}, none);
}

bool CvodeJudge::go(
    double faceCelsius, double conductance, double seconds, const std::vector<double>& times,
    std::vector<double>& faces) {
    Parts& p = *m_parts;
    if (!p.sound) {
        return false;
    }
    p.faceCelsius = faceCelsius;
    p.conductance = conductance;
    const double end = p.now + seconds;
    p.stepsBefore = steps();
    if (CVodeReInit(p.cvode, p.now, p.heat) != CV_SUCCESS ||
        CVodeSetStopTime(p.cvode, end) != CV_SUCCESS) {
        return false;
    }
    auto next = std::upper_bound(times.begin(), times.end(), p.now);
    while (p.now < end) {
        double reached = p.now;
        const int answer = CVode(p.cvode, end, p.heat, &reached, CV_ONE_STEP);
        if (answer < 0) {
            return false;
        }
        p.now = answer == CV_TSTOP_RETURN ? end : reached;
        for (; next != times.end() && *next <= p.now; ++next) {
            if (CVodeGetDky(p.cvode, std::min(*next, reached), 0, p.between) != CV_SUCCESS) {
                return false;
            }
            double unused = 0;
            faces.push_back(
                p.plastic.celsius(NV_Ith_S(p.between, 0), p.crystalline[0], p.celsius[0], unused));
        }
        // What has melted or crystallised by now is so: within a step the curves of the last one
        // hold, and they agree where it ended.
        p.look(NV_DATA_S(p.heat));
        for (std::size_t n = 0; n < p.celsius.size(); ++n) {
            p.crystalline[n] = p.plastic.kept(p.celsius[n], p.crystalline[n]);
        }
    }
    return true;
}

double CvodeJudge::seconds() const {
    return m_parts->now;
}

double CvodeJudge::faceC() const {
    return m_parts->celsius[0];
}

std::size_t CvodeJudge::nodes() const {
    return m_parts->celsius.size();
}

long CvodeJudge::steps() const {
    long count = 0;
    CVodeGetNumSteps(m_parts->cvode, &count);
    return m_parts->stepsBefore + count;
}

} // namespace seamclock::test
