#include "verify/why_trials.hpp"

#include <algorithm>

namespace cairn::verify {

Report Trials::ask(const Model& variant, const std::vector<AskedProperty>& asked) const {
  ProveOptions options = options_;
  options.properties = asked;
  if (options.limits.seconds) options.limits.seconds = std::max(0.0, *options.limits.seconds - watch_.seconds());
  return prove(variant, options).value();
}

}  // namespace cairn::verify
