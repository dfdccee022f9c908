// What the person at the bench is told after a damaged log was set aside: one standing sentence.
#pragma once

#include "core/rescue/set_aside.h"

#include <QString>

namespace seamclock {

QString logNotice(const SetAside& aside);

} // namespace seamclock
