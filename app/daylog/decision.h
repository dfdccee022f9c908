// A foreman's word on a joint: what he may say, with which reasons, and how it is asked. The
// verdict is worked out from the events; this is a person's, stands beside it, and changes nothing
// of it.
#pragma once

#include "app/daylog/joint_view.h"
#include "app/pages/choice_page.h"
#include "core/weld/event.h"

#include <QString>
#include <string>
#include <vector>

namespace seamclock {

struct DecisionQuestion {
    ChoiceView page;
    std::vector<std::string> reasons; // the codes, in the choices' order; the last choice is typed
};
DecisionQuestion decisionQuestion(const JointView& joint, std::int64_t number, Decision decision);

/// Below the question for the PIN: "Joint 1043 is accepted: …".
QString decisionForWhat(std::int64_t number, bool trial, Decision decision, const QString& reason);

/// Why a value is corrected.
DecisionQuestion correctionQuestion(const Correctable& value, const QString& is);

/// What was typed as the event keeps it. Malformed, OutOfRange: with the value and what is allowed.
Result<std::string> corrected(const Correctable& value, const QString& typed);
/// "0 to 400 °C"
QString allowedText(const Correctable& value);

} // namespace seamclock
