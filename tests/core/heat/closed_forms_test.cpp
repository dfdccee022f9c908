// The sheet against problems that can be solved by hand. C&J: Carslaw & Jaeger, Conduction of Heat
// in Solids, 2nd ed.; each formula is worked out here again, and the numbers that the project's
// issue on heat prints stand beside it.
#include "core/heat/squeeze.h"
#include "tests/core/heat/constant_material.h"

#include <gtest/gtest.h>
#include <numeric>

namespace seamclock::test {
namespace {

constexpr double kPi = 3.14159265358979323846;
constexpr double kStart = 20; // [°C]
constexpr double kWall = 215;
constexpr double kClose = 1e7; // [W/m²K] as good as a wall at that temperature

/// Changes of sign of f between low and high, narrowed to the last bits.
template <class Function>
double rootOf(Function f, double low, double high) {
    const bool rising = f(low) < 0;
    for (int round = 0; round < 200; ++round) {
        const double middle = (low + high) / 2;
        ((f(middle) < 0) == rising ? low : high) = middle;
    }
    return (low + high) / 2;
}

double errorFunctionC(double depth, double seconds) { // C&J 2.4 (10)
    return kStart + (kWall - kStart) * std::erfc(depth / (2 * std::sqrt(kDiffusivity * seconds)));
}

SheetSurroundings wall() {
    SheetSurroundings around;
    around.faceCelsius = kWall;
    around.faceConductance = kClose;
    return around;
}

SheetField wallField(const ThermalTable& table) {
    return SheetField(
        table, sheetGrid(millimetres(10), millimetres(60), millimetres(0.05), 1.03, 1), kStart);
}

TEST(HalfSpace, WarmsByTheErrorFunctionBehindAWallOfOneTemperature) {
    const ThermalTable table(constantMaterial());
    SheetField field = wallField(table);
    double at = 0;
    struct Row {
        double seconds;
        double depthMm;
        double printed; // [°C] in the issue, to 0.005 K
    };
    for (const Row& row : {Row{60, 2, 149.00}, Row{100, 5, 97.33}}) {
        conductUntil(field, wall(), at, row.seconds, 0.02, 0.002);
        at = row.seconds;
        const double depth = row.depthMm / 1e3;
        EXPECT_NEAR(errorFunctionC(depth, row.seconds), row.printed, 0.005);
        // second order: cells of 0.05 to 0.2 mm, steps of 2 % of the time that has passed
        EXPECT_NEAR(celsiusAt(field, depth), row.printed, 0.05);
    }
    double worst = 0;
    for (std::size_t i = 0; i < field.columns(); ++i) {
        worst =
            std::max(worst, std::fabs(field.celsius(i, 0) - errorFunctionC(field.depthOf(i), 100)));
    }
    EXPECT_LT(worst, 0.05) << "at any depth";
}

TEST(HalfSpace, TakesTheWallsFluxOfTheClosedForm) {
    const ThermalTable table(constantMaterial());
    SheetField field = wallField(table);
    conductUntil(field, wall(), 0, 99.5, 0.02, 0.002);
    const double before = field.heatThroughFace();
    field.conduct(wall(), 1);
    const double flux = (field.heatThroughFace() - before) / field.halfThickness();
    const double exact =
        kConductivity * (kWall - kStart) / std::sqrt(kPi * kDiffusivity * 100); // C&J 2.4 (13)
    EXPECT_NEAR(exact, 10025, 0.5);
    EXPECT_NEAR(flux, exact, 0.001 * exact); // a step's mean for its middle
    const double total = 2 * kConductivity * (kWall - kStart) *
                         std::sqrt(100 / (kPi * kDiffusivity)); // C&J 2.4 (14)
    EXPECT_NEAR(before / field.halfThickness(), total * std::sqrt(0.995), 0.002 * total);
}

// C&J 11.2 (I), Neumann: with the same values in both phases the front is at 2λ√(κt), where
// λ·√π·erf λ·erfc λ·e^{λ²}·L = c·((wall − melting)·erfc λ − (melting − start)·erf λ).
TEST(MeltingFront, MovesAsNeumannSays) {
    constexpr double kMelting = 131;
    constexpr double kLatent = 190e3;
    const double lambda = rootOf(
        [](double x) {
            const double flux =
                (kWall - kMelting) / std::erf(x) - (kMelting - kStart) / std::erfc(x);
            return kSpecificHeat * flux * std::exp(-x * x) - kLatent * x * std::sqrt(kPi);
        },
        1e-3, 2);
    EXPECT_NEAR(lambda, 0.33596, 5e-6);

    Material material = constantMaterial();
    // As narrow as the table's steps let it be: two of them.
    material.crystals = Crystallinity{kMelting - 0.25, kMelting + 0.25, 100, 101, kLatent};
    const ThermalTable table(material);
    SheetField field(
        table, sheetGrid(millimetres(10), millimetres(60), millimetres(0.02), 1.01, 1), kStart);
    struct Row {
        double seconds;
        double printedMm;
    };
    double at = 0;
    for (const Row& row : {Row{30, 1.535}, Row{60, 2.170}, Row{100, 2.802}, Row{150, 3.432}}) {
        conductUntil(field, wall(), at, row.seconds, 0.002, 0.002);
        at = row.seconds;
        const double exact = 2e3 * lambda * std::sqrt(kDiffusivity * row.seconds);
        EXPECT_NEAR(exact, row.printedMm, 0.0006);
        // All that is molten, for the front lies somewhere in one cell.
        double molten = 0;
        for (std::size_t i = 0; i < field.columns(); ++i) {
            molten += (1 - field.crystalline(i, 0)) * field.grid().inward[i] * 1e3;
        }
        EXPECT_NEAR(molten, row.printedMm, 0.01 * row.printedMm) << row.seconds; // the 1 %
    }
}

/// The roots of α·tan α = L.
std::vector<double> slabRoots(double l, int count) {
    std::vector<double> roots;
    for (int n = 0; n < count; ++n) {
        roots.push_back(rootOf(
            [&](double a) { return a * std::sin(a) - l * std::cos(a); }, n * kPi,
            n * kPi + kPi / 2));
    }
    return roots;
}

struct Slab {
    double half = 5e-3;       // [m]
    double conductance = 200; // [W/m²K]: L = 2.6, so that many terms count
    double l() const { return conductance * half / kConductivity; }

    /// C&J 3.11 (12): begun at 1, in air at 0; `height` from the middle.
    double cooling(double height, double seconds) const {
        double sum = 0;
        for (const double a : slabRoots(l(), 60)) {
            sum += 2 * l() * std::cos(a * height / half) /
                   ((l() * (l() + 1) + a * a) * std::cos(a)) *
                   std::exp(-a * a * kDiffusivity * seconds / (half * half));
        }
        return sum;
    }
    /// The same series once more, steady, behind a face at 1: each term dies away as e^{−αx/half}
    /// (C&J 5.9 by separation; worked out here).
    double fin(double depth, double height) const {
        double sum = 0;
        for (const double a : slabRoots(l(), 60)) {
            sum += 2 * l() * std::cos(a * height / half) /
                   ((l() * (l() + 1) + a * a) * std::cos(a)) * std::exp(-a * depth / half);
        }
        return sum;
    }
};

SheetSurroundings air(const Slab& slab) {
    SheetSurroundings around;
    around.airCelsius = kStart;
    around.sideConductance = slab.conductance;
    return around;
}

TEST(SheetInAir, CoolsFromItsSidesAsItsFourierSeries) {
    const Slab slab;
    EXPECT_NEAR(slab.cooling(2e-3, 0), 1, 0.01); // the series itself, at the start
    const ThermalTable table(constantMaterial());
    SheetField field(
        table, sheetGrid(millimetres(10), millimetres(2), millimetres(1), 1, 40), kWall);
    double at = 0;
    for (const double until : {10.0, 40.0, 120.0}) {
        conductUntil(field, air(slab), at, until, 0.02, 0.02);
        at = until;
        for (std::size_t row = 0; row < field.rows(); ++row) {
            const double exact =
                kStart + (kWall - kStart) * slab.cooling(field.heightOf(row), until);
            // second order: cells of 0.125 mm, steps of 2 %
            EXPECT_NEAR(field.celsius(0, row), exact, 0.05) << until << ' ' << row;
        }
    }
}

TEST(SheetInAir, IsTheProductOfHalfSpaceAndSlabBehindACooledFace) { // C&J 1.15, 5.6
    const Slab slab;
    const ThermalTable table(constantMaterial());
    SheetField field(
        table, sheetGrid(millimetres(10), millimetres(40), millimetres(0.1), 1.06, 20), kWall);
    SheetSurroundings around = air(slab);
    around.faceCelsius = kStart;
    around.faceConductance = kClose;
    double at = 0;
    for (const double until : {5.0, 30.0}) {
        conductUntil(field, around, at, until, 0.02, 0.005);
        at = until;
        double worst = 0;
        for (std::size_t row = 0; row < field.rows(); ++row) {
            for (std::size_t i = 0; i < field.columns(); ++i) {
                const double inward =
                    std::erf(field.depthOf(i) / (2 * std::sqrt(kDiffusivity * until)));
                const double exact =
                    kStart + (kWall - kStart) * inward * slab.cooling(field.heightOf(row), until);
                worst = std::max(worst, std::fabs(field.celsius(i, row) - exact));
            }
        }
        EXPECT_LT(worst, 0.2) << until; // cells of 0.1 by 0.25 mm, nearest to the corner
    }
}

TEST(SheetInAir, StandsAsAFinOfHalfItsThicknessBehindAFaceHeldWarm) {
    const Slab slab;
    EXPECT_NEAR(slab.fin(0, 2e-3), 1, 0.01);
    const ThermalTable table(constantMaterial());
    SheetField field(
        table, sheetGrid(millimetres(10), millimetres(40), millimetres(0.15), 1.07, 20), kStart);
    SheetSurroundings around = air(slab);
    around.faceCelsius = kWall;
    around.faceConductance = kClose;
    // Long steps, for what stands does not depend on them.
    conductUntil(field, around, 0, 4000, 0.1, 0.1);
    for (const double depthMm : {1.0, 3.0, 6.0, 12.0}) {
        for (const std::size_t row : {std::size_t{0}, std::size_t{10}, std::size_t{17}}) {
            const double depth = depthMm / 1e3;
            const double exact = kStart + (kWall - kStart) * slab.fin(depth, field.heightOf(row));
            // the rest is the grid's, nearest to the corner of face and surface most
            EXPECT_NEAR(celsiusAt(field, depth, row), exact, 0.3) << depthMm << ' ' << row;
        }
    }
    // What comes in by the face leaves by the side.
    const double in = field.heatThroughFace();
    const double out = field.heatThroughSide();
    field.conduct(around, 100);
    EXPECT_NEAR((field.heatThroughFace() - in) / (field.heatThroughSide() - out), 1, 1e-3);
}

TEST(SheetInAir, BalancesContactAndConductionOnTheFace) {
    // C&J 2.7 (1): a half space at 0 behind a conductance h in air at 1.
    constexpr double kContact = 1500;
    const double l = kContact / kConductivity;
    const double root = std::sqrt(kDiffusivity * 60);
    const double face = 1 - std::exp(l * l * root * root) * std::erfc(l * root);
    const ThermalTable table(constantMaterial());
    SheetField field = wallField(table);
    SheetSurroundings around;
    around.faceCelsius = kWall;
    around.faceConductance = kContact;
    conductUntil(field, around, 0, 60, 0.02, 0.002);
    EXPECT_NEAR(field.faceCelsius(around, 0), kStart + (kWall - kStart) * face, 0.05);
}

/// A film of one fluid, or of two, in even cells.
struct Film {
    std::vector<double> fluidity;
    std::vector<double> widths;

    Film(double depth, double nearFluidity, double share, double farFluidity, int cells = 400) {
        for (int i = 0; i < cells; ++i) {
            widths.push_back(depth / cells);
            fluidity.push_back(i < share * cells ? nearFluidity : farFluidity);
        }
    }
    static Film uniform(double depth, double fluidity) { return Film(depth, fluidity, 1, 0); }
};

double rateOf(const Film& film, double half, double pressure, double index, FilmWall wall) {
    return squeezeFilm(film.fluidity, film.widths, half, pressure, index, wall).rate;
}

/// K of the closed form: rate = K·(p·(n + 2) / b^(n + 1))^(1/n).
double rateFrom(double k, double half, double pressure, double index) {
    return k * std::pow(pressure * (index + 2) / std::pow(half, index + 1), 1 / index);
}

TEST(SqueezeFilm, ThinsAsStefanSays) {
    // 10⁴ Pa·s, 10 mm thick, 0.15 MPa, begun at 4 mm: 1/h² = 1/h₀² + 2·p·t/(μ·s²).
    constexpr double kViscosity = 1e4;
    constexpr double kPressure = 0.15e6;
    const auto rate = [](double h) {
        return rateOf(Film(h, 1 / kViscosity, 1, 0, 100), 5e-3, kPressure, 1, FilmWall::Plate);
    };
    double h = 4e-3;
    double at = 0;
    struct Row {
        double seconds;
        double printedMm;
    };
    for (const Row& row : {Row{0.5, 2.169}, Row{1, 1.661}, Row{5, 0.800}}) {
        while (at < row.seconds - 1e-9) { // the midpoint rule: 1e-4 of h with steps of 5 ms
            const double step = 0.005;
            h -= step * rate(h - step / 2 * rate(h));
            at += step;
        }
        const double exact =
            1 / std::sqrt(1 / 16e-6 + 2 * kPressure * row.seconds / (kViscosity * 1e-4));
        EXPECT_NEAR(exact * 1e3, row.printedMm, 0.0005);
        EXPECT_NEAR(h * 1e3, row.printedMm, 0.001);
    }
}

// Between two walls, from stress = m·rate^n: K = 2n/(2n + 1)·(h/2)^((2n + 1)/n)·m^(−1/n); with one
// wall free, n/(2n + 1)·h^((2n + 1)/n)·m^(−1/n), which is half a film twice as deep.
TEST(SqueezeFilm, DrivesAPowerLawMeltByTheClosedForm) {
    constexpr double kConsistency = 25000;
    constexpr double kDepth = 1.2e-3;
    for (const double n : {1.0, 0.45, 0.3}) {
        for (const double half : {2.5e-3, 5e-3, 25e-3}) {
            const double f = std::pow(kConsistency, -1 / n);
            const double power = (2 * n + 1) / n;
            const double walls = 2 * n / (2 * n + 1) * std::pow(kDepth / 2, power) * f;
            const double free = n / (2 * n + 1) * std::pow(kDepth, power) * f;
            const Film film = Film::uniform(kDepth, f);
            const double wallsRate = rateFrom(walls, half, 0.15e6, n);
            const double freeRate = rateFrom(free, half, 0.15e6, n);
            // 400 cells, second order
            EXPECT_NEAR(rateOf(film, half, 0.15e6, n, FilmWall::Plate) / wallsRate, 1, 1e-3) << n;
            EXPECT_NEAR(rateOf(film, half, 0.15e6, n, FilmWall::Sheet) / freeRate, 1, 1e-3) << n;
        }
    }
}

TEST(SqueezeFilm, PressesAsTheMeanOverTheThickness) {
    // The pressure's integral by hand, from the surface (nothing) to the middle: dp/dy =
    // −(V·y/K)^n.
    constexpr double n = 0.45;
    constexpr double kHalf = 5e-3;
    constexpr double kRateOverK = 1e9;
    constexpr int kParts = 20000;
    double pressure = 0;
    double sum = 0;
    for (int i = kParts; i-- > 0;) {
        const double step = kHalf / kParts;
        const double fall = std::pow(kRateOverK * (i + 0.5) * step, n) * step;
        sum += (pressure + fall / 2) * step;
        pressure += fall;
    }
    EXPECT_NEAR(rateFrom(1, kHalf, sum / kHalf, n) / kRateOverK, 1, 1e-4);
}

TEST(SqueezeFilm, FlowsInAParabolaWhereTheFluidIsNewtons) {
    const Film walls = Film::uniform(1e-3, 1e-4);
    const SheetFlow held =
        squeezeFilm(walls.fluidity, walls.widths, 5e-3, 0.15e6, 1, FilmWall::Plate);
    const SheetFlow loose =
        squeezeFilm(walls.fluidity, walls.widths, 5e-3, 0.15e6, 1, FilmWall::Sheet);
    double z = 0;
    double all = 0;
    for (std::size_t i = 0; i < walls.widths.size(); ++i) {
        const double part = (z + walls.widths[i] / 2) / 1e-3;
        EXPECT_NEAR(held.share[i] * 1e-3, 6 * part * (1 - part), 0.005);
        EXPECT_NEAR(loose.share[i] * 1e-3, 1.5 * (1 - part * part), 0.005);
        z += walls.widths[i];
        all += held.share[i] * walls.widths[i];
    }
    EXPECT_NEAR(all, 1, 1e-12);
}

// Two fluids, one behind the other, u′ = G·f(z)·(z − c): between walls c makes u nothing at both,
// and K = ∫ f·z·(z − c) dz; with the face free c = 0.
TEST(SqueezeFilm, SolvesTwoFluidsAsByHand) {
    constexpr double h = 1e-3;
    constexpr double kHalf = 5e-3;
    for (const double share : {0.25, 0.5, 0.8}) {
        const double a = share * h;
        const double f1 = 1 / 5e3;
        const double f2 = 1 / 5e4;
        const double c = (f1 * a * a / 2 + f2 * (h * h - a * a) / 2) / (f1 * a + f2 * (h - a));
        const auto k = [&](double still) {
            return f1 * (a * a * a / 3 - still * a * a / 2) +
                   f2 * ((h * h * h - a * a * a) / 3 - still * (h * h - a * a) / 2);
        };
        const Film film(h, f1, share, f2);
        EXPECT_NEAR(
            rateOf(film, kHalf, 0.15e6, 1, FilmWall::Plate) / rateFrom(k(c), kHalf, 0.15e6, 1), 1,
            1e-3);
        EXPECT_NEAR(
            rateOf(film, kHalf, 0.15e6, 1, FilmWall::Sheet) / rateFrom(k(0), kHalf, 0.15e6, 1), 1,
            1e-3);
    }
}

TEST(SqueezeFilm, StandsStillWithoutMeltOrPressure) {
    const Film film = Film::uniform(1e-3, 1e-4);
    EXPECT_EQ(rateOf(film, 5e-3, 0, 1, FilmWall::Plate), 0);
    EXPECT_EQ(rateOf(Film::uniform(1e-3, 0), 5e-3, 1e5, 1, FilmWall::Plate), 0);
}

TEST(Fluidity, FollowsTheActivationEnergyAndStopsAtTheSolid) {
    Material material = constantMaterial();
    material.crystals = Crystallinity{120, 135, 112, 120, 195e3};
    material.flow = PowerLawFlow{25000, 0.45, 27000, 190, 0};
    const ThermalTable table(material);
    const auto at = [&](double celsius) {
        const SheetField field(
            table, sheetGrid(millimetres(10), millimetres(1), millimetres(1), 1, 1), celsius);
        return fluidity(field, material, 1).front();
    };
    const double reference = std::pow(25000, -1 / 0.45);
    EXPECT_NEAR(at(190) / reference, 1, 1e-6);
    const double shift = 27000 / 8.314462618 * (1 / 463.15 - 1 / 503.15); // to 230 °C; CODATA 2018
    EXPECT_NEAR(at(230) / reference, std::exp(shift / 0.45), 1e-6 * std::exp(shift / 0.45));
    EXPECT_EQ(at(119), 0);
    EXPECT_GT(at(134), 0);
    EXPECT_LT(at(134), at(136) * 0.9); // with crystals in it, it flows less
}

} // namespace
} // namespace seamclock::test
