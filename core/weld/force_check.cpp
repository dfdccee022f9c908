#include "core/weld/force_check.h"

namespace seamclock {

bool isForceMark(const CheckMade& made) {
    return made.check == kDrag && made.place == kForcePlace;
}

CheckMade forceMark(const WeldPlan& plan) {
    CheckMade made;
    made.check = kDrag;
    made.passed = true;
    made.valueMilli = plan.scale->joining.setMilli;
    made.place = kForcePlace;
    return made;
}

} // namespace seamclock
