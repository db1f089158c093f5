/// \file
/// An event in an operator's words.
#pragma once

#include <string>
#include <string_view>

#include "cairn/model.hpp"
#include "cairn/verdict.hpp"
#include "cairn/walk.hpp"

namespace cairn::report {

/// "operator", "device" or "fault".
[[nodiscard]] std::string_view name_of(Actor actor);

/// What a step asks for, without who does it: "set the number of yard-3 to 9, at its console".
[[nodiscard]] std::string what_to_do(const Model& model, const Step& step);

/// What happens, beside the name of who acts: "sets the number of yard-3 to 9, at its console (s3)". `before` and
/// `left` tell whether a check held and why a device refused.
[[nodiscard]] std::string what_happens(const Model& model, const Moment& moment);

/// The same as a clause of its own: "the operator sets the number of yard-3 to 9 (s3)", "cable splice breaks".
[[nodiscard]] std::string as_clause(const Model& model, const Moment& moment);

/// Why a device would not take a step, in the state before it: "yard-3 is off".
[[nodiscard]] std::string why_refused(const Model& model, const Moment& moment);

}  // namespace cairn::report
