// Which plastics a screen warns of. That PVC gives off hydrogen chloride and fluoropolymers toxic
// fume when overheated was read in published texts (the project's trade notes); that the others
// give off none is not claimed, only that nothing is said of them here.
#include "core/procedure/fume.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

TEST(Fume, IsToldOfChlorineAndFluorine) {
    EXPECT_EQ(fumeOf("PVC-U"), Fume::HydrogenChloride);
    EXPECT_EQ(fumeOf("PVC-C"), Fume::HydrogenChloride);
    EXPECT_EQ(fumeOf("pvc"), Fume::HydrogenChloride);
    EXPECT_EQ(fumeOf("CPVC"), Fume::HydrogenChloride);
    for (const char* chlorine :
         {"uPVC", "U-PVC", "PVCU", "P.V.C.", "PVCX", "Hart-PVC", "poly(vinyl chloride)",
          "Polyvinylchlorid"}) {
        EXPECT_EQ(fumeOf(chlorine), Fume::HydrogenChloride) << chlorine;
    }
    for (const char* fluoropolymer :
         {"PVDF", "PVDF-HP", "ECTFE", "PTFE", "ETFE", "FEP", "PFA", "E-CTFE", "M-PVDF", "m-pvdf",
          "poly(vinylidene fluoride)", "Fluorpolymer", "PVC/PVDF"}) {
        EXPECT_EQ(fumeOf(fluoropolymer), Fume::Fluorine) << fluoropolymer;
    }
}

TEST(Fume, IsNotToldOfPlasticsThatOnlyLookAlike) {
    for (const char* other :
         {"PE-HD", "PE", "PP", "PP-H", "ABS", "PETG", "", "P", "PV", "PA 6", "PMMA"}) {
        EXPECT_EQ(fumeOf(other), Fume::None) << other;
    }
}

} // namespace
} // namespace seamclock
