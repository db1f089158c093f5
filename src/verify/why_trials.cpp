#include "verify/why_trials.hpp"

#include <algorithm>

namespace cairn::verify {

Report Trials::ask(const Model& variant, const std::vector<AskedProperty>& asked) const {
  ProveOptions options = options_;
  options.properties = asked;
  // What is asked of a variant is its verdict; hundreds are tried.
  options.engine = Engine::explore;
  options.confirm_limit = 0;
  options.limits = left();
  return cairn::prove(variant, options).value();
}

Limits Trials::left() const {
  Limits left = options_.limits;
  if (left.seconds) left.seconds = std::max(0.0, *left.seconds - watch_.seconds());
  return left;
}

}  // namespace cairn::verify
