/// \file
/// Semantics 9.e: a template has instances, and none of them is an error as a plain model.
#pragma once

#include <string>
#include <vector>

#include "cairn/model.hpp"
#include "syntax/draft.hpp"
#include "syntax/problems.hpp"
#include "unknowns/literal.hpp"

namespace cairn::syntax {

/// What would be an error in an instance where any of `wrong` holds.
struct Claim {
  std::vector<unknowns::Literal> wrong;
  Place place;
  std::string message;   ///< what is wrong then: "`number` is `$n`"
  std::string expected;  ///< as of a plain model
};
using Claims = std::vector<Claim>;

/// Reports an assumption that no instance keeps, or else each claim that some instance breaks, with such an instance.
void check_instances(const Model& model, const ProcedureDraft& draft, const Claims& claims, Problems& problems);

}  // namespace cairn::syntax
