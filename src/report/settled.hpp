/// \file
/// How verdicts were settled, in words.
#pragma once

#include "cairn/why.hpp"
#include "report/layout.hpp"

namespace cairn::report {

/// One sentence for all properties that were settled alike; nothing of those that are undecided.
void tell_settled(Page& page, const Report& report);

/// The facts of each proof by facts, one a line, each with the parts of the procedure that make it true; properties
/// with the same facts together.
void tell_facts(Page& page, const Model& model, const Why& why);

}  // namespace cairn::report
