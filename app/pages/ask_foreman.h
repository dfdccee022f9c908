// How a room of screens asks a foreman to prove himself: the pages of PINs are the operator's.
#pragma once

#include "core/people/credentials.h"

#include <QString>
#include <functional>

namespace seamclock {

/// Asks a foreman for his PIN; `then` gets the proof. The page that asked comes back in either
/// case.
using AskForeman =
    std::function<void(const QString& forWhat, std::function<void(const ProvenPerson&)> then)>;

} // namespace seamclock
