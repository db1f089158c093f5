/// \file
/// A proof by facts as questions: it begins well, each event keeps each fact, and what has the facts is not bad.
#pragma once

#include <vector>

#include "solver/fact.hpp"
#include "verify/export_draft.hpp"

namespace cairn::verify {

/// The obligations of the proof that `asked` holds by `facts`, and questions that show that they do not speak of
/// nothing. The system's domains are those that the facts are told in; its pool grows.
[[nodiscard]] std::vector<Draft> questions_of_facts(system::System& system, const AskedProperty& asked,
                                                    const std::vector<solver::Fact>& facts);

/// That the property is broken before the first event, as the stack settles in the state that the site describes.
/// Demands that it is one of 6.1 to 6.5.
[[nodiscard]] Draft question_of_start(system::System& system, const AskedProperty& asked, bool broken);

}  // namespace cairn::verify
