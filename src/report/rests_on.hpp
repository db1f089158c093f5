/// \file
/// What a verdict rests on: faults allowed and not considered, rules, ties, factory values, and what no model has.
#pragma once

#include "cairn/verdict.hpp"
#include "report/layout.hpp"

namespace cairn::report {

/// Writes the section, its heading included.
void tell_rests_on(Page& page, const Model& model, const Report& report);

/// Entries of that section: contests that were decided by what the site does not state, where there are any; and what
/// to be careful of.
void tell_ties(Page& page, const Model& model, const Report& report);
void tell_caution(Page& page);

/// "1 cable break, 2 crashes; broken cables may work again", or "none".
[[nodiscard]] std::string faults_in_words(const FaultBudget& faults);

}  // namespace cairn::report
