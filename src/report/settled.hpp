/// \file
/// How verdicts were settled, in words.
#pragma once

#include "cairn/why.hpp"
#include "report/layout.hpp"

namespace cairn::report {

/// One sentence for all properties that were settled alike; nothing of those that are undecided.
void tell_settled(Page& page, const Report& report);

/// The facts of all proofs by facts, each once and numbered, with the parts of the procedure that make it true; then
/// which of them each proof stands on.
void tell_facts(Page& page, const Model& model, const Why& why);

}  // namespace cairn::report
