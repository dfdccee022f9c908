// The numbers of the virtual bench that no plan, bench file or material gives. None decides about a
// real weld. Each has its standing: [memory], [derived], or [practice]: plausible to somebody who
// has stood at such a bench, invented here.
#pragma once

namespace seamclock::bench_numbers {

// The plate
inline constexpr double kPlateThickness = 0.012; // [m] what the tables must open by [practice]
/// For one metre of seam [J/K]: aluminium, 2700 kg/m³ and 900 J/kgK [memory], 150 mm high and 20 mm
/// thick in its body [practice].
inline constexpr double kPlateHeat = 2700 * 900 * 0.150 * 0.020;
inline constexpr double kPlateWarmS = 420;   // [s] to within 1/e of its target [practice]
inline constexpr double kPlateRecoverS = 60; // [s] likewise, of what the sheets took [practice]
inline constexpr double kPlateTravelS = 0.7; // [s] a practised hand, in or out [practice]
inline constexpr double kPlateClear = 1e-3;  // [m] beside each face, to bring it in [practice]
/// Air between face and plate: conductivity at about 150 °C [W/mK] [memory], and what radiation
/// adds: 4·ε·σ·T³ with ε = 0.9 at 450 K [W/m²K] [derived].
inline constexpr double kAirConductivity = 0.035;
inline constexpr double kPlateRadiation = 18.6;
/// A plate that is further away warms the face no more [m] [practice].
inline constexpr double kPlateFar = 0.02;

// Tables, spring and wheel
/// Young's modulus of the sheet that stands out of the clamps [Pa]: PE-HD 0.9, PP 1.4, PVDF 2 GPa
/// cold [memory], and a small part of it where it is warm: one round number [practice].
inline constexpr double kSheetModulus = 0.1e9;
/// An edge that is too warm to keep its form gives way under load: what it gave elastically it
/// gives again in so long [s] [practice].
inline constexpr double kCreepS = 30;
inline constexpr double kFreeWheelS = 0.8; // [s] an unlocked wheel that nobody holds [practice]
inline constexpr double kSpringOffSpeed = 0.010; // [m/s] the spring is let off [practice]
inline constexpr double kClampsEasedShare =
    0.5;                            // of the pressure that the bars still hold [practice]
inline constexpr double kKickJ = 2; // [J] a bar that jumps with more is a kick [practice]

// Edges
/// How straight two edges are after planing and against each other [m]: none of it is modelled, an
/// edge that was never planed is out by this at its ends [practice].
inline constexpr double kUnplanedOff = 0.6e-3;
/// How far along a touch of the hand leaves its grease [m] [practice].
inline constexpr double kTouchReach = 0.08;
/// Pressure under which a plate that is drawn out smears the melt [Pa]: a fifth of the least soak
/// pressure in our tables (0.01 N/mm²) [practice].
inline constexpr double kSmearPa = 2e3;
/// Tables that are drawn back so far part faces that are joined and still molten [m] [practice].
inline constexpr double kParted = 0.3e-3;
/// Two warm faces close to each other lose little; from this distance both lose as in the open [m]
/// [practice].
inline constexpr double kFaceOpen = 0.005;

// The bend test (core/vbench/bend_test.h)
/// Melt when the faces meet, and what of it is left when the pressing is over: each of what the
/// plan leaves in the same model [practice].
inline constexpr double kLeastMeltShare = 0.8;
/// The pressure that must still be there while the plane freezes, of the plan's joining [practice].
inline constexpr double kLeastHoldShare = 0.25;
/// Hotter than the procedure's window by this, melt strings and is damaged [K] [practice].
inline constexpr double kOverheatedK = 20;
/// Of the way from the air's temperature to where crystallising is over: warmer than that a joint
/// bends as it is let go [practice]. For PE-HD at 20 °C: 61 °C.
inline constexpr double kStiffShare = 0.45;
inline constexpr double kMostKinkDeg = 8; // let go while the plane is just solid [practice]
/// Of the melt that is pressed out once the faces have met, this share fills the valley between the
/// rolls; the rest makes them larger. What shrinks and is not followed sinks, with that share of it
/// from the valley. The valley's floor begins so far below the surface, of the bead's height. All
/// three [practice].
inline constexpr double kValleyFill = 0.25;
inline constexpr double kValleySink = 0.5;
inline constexpr double kValleyFloor = 0.10;

} // namespace seamclock::bench_numbers
