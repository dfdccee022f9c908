// The numbers of the virtual bench that no plan, bench file or material gives. None decides about a
// real weld. Each has its standing: [memory], [derived], or [practice]: plausible to somebody who
// has stood at such a bench, invented here.
#pragma once

namespace seamclock::bench_numbers {

// The plate
inline constexpr double kPlateThickness = 0.012; // [m] what the tables must open by [practice]
/// For one metre of seam [J/K]: aluminium, 2700 kg/m³ and 900 J/kgK [memory], 150 mm high and 20 mm
/// thick in its body [practice].
inline constexpr double kPlateHeight = 0.150;
inline constexpr double kPlateHeat = 2700 * 900 * kPlateHeight * 0.020;
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
/// plan leaves in the same model, by a plate as warm as this one within its window [practice].
inline constexpr double kLeastMeltShare = 0.9;
inline constexpr double kLeastLeftShare = 0.82;
/// Of the way from melting to the skin that a changeover on the table's limit leaves: colder than
/// that, crystals begin in the skin before it is pressed. About twice the limit, then, or on the
/// limit in a draught; a plate at its lower limit leaves 0.72 [practice].
inline constexpr double kLeastSkinShare = 0.6;
/// The pressure that must still be there while the plane freezes, of the plan's joining: half, as
/// in the verdict's limit for a reading found low [practice].
inline constexpr double kLeastHoldShare = 0.5;
/// Hotter than the procedure's window by this, melt strings and is damaged; colder by this, it is
/// too tough to wet the other face, however deep it is. What a good thermometer may be off is
/// within both [K] [practice].
inline constexpr double kOverheatedK = 10;
inline constexpr double kUnderheatedK = 3;
/// Melt that is so hot strings: a thread follows the plate that leaves, so much longer before it
/// tears for each kelvin beyond that [m/K]; then half of it hangs on the edge, half on the plate
/// [practice].
inline constexpr double kThreadPerK = 1e-3;
/// An edge that leaned must have been melted back to within so much of the plate, both sheets
/// together, or air kept its lower side cold [m] [practice].
inline constexpr double kMostBehind = 0.3e-3;
/// Of the way from the air's temperature to where crystallising is over: warmer than that a joint
/// bends as it is let go [practice]. For PE-HD at 20 °C: 61 °C.
inline constexpr double kStiffShare = 0.45;
inline constexpr double kMostKinkDeg = 8; // let go while the plane is just solid [practice]
/// Of the melt that is pressed out once the faces have met, this share fills the valley between the
/// rolls; the rest makes them larger. The valley's floor begins so far below the surface, of the
/// bead's height. Both [practice].
inline constexpr double kValleyFill = 0.25;
inline constexpr double kValleyFloor = 0.10;
/// What shrinks and is not followed comes out of the valley: all of it, as the skins of the rolls
/// are cold by then [derived].
inline constexpr double kValleySink = 1;
/// Melt that leaves faster than so many times the plan's mean pace in build-up shoots into the
/// rolls, and tears so much again as it is out of what fills the valley. A build-up in 0.4 of the
/// table's time hardly does [practice].
inline constexpr double kTornPace = 2.5;
inline constexpr double kTornShare = 1;

} // namespace seamclock::bench_numbers
