#include "verify/why_trials.hpp"

#include <algorithm>

namespace cairn::verify {

Report Trials::ask(const Model& variant, const std::vector<AskedProperty>& asked) const {
  ProveOptions options = options_;
  options.properties = asked;
  // What is asked of a variant is its verdict; hundreds are tried.
  options.engine = Engine::explore;
  options.confirm_limit = 0;
  options.forgetting_limit = std::min<std::uint64_t>(options.forgetting_limit, 100'000);
  options.limits = left();
  return cairn::prove(variant, options).value();
}

}  // namespace cairn::verify
