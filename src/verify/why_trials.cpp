#include "verify/why_trials.hpp"

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

}  // namespace cairn::verify
