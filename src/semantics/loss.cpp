#include "semantics/loss.hpp"

#include <algorithm>
#include <numeric>

#include "semantics/properties.hpp"

namespace cairn::semantics {

namespace {

// The next choice of `chosen.size()` places out of n in lexicographic order; false after the last.
bool advance(std::vector<std::size_t>& chosen, std::size_t n) {
  for (std::size_t i = chosen.size(); i-- > 0;) {
    if (chosen[i] == n - chosen.size() + i) continue;
    ++chosen[i];
    std::iota(chosen.begin() + static_cast<std::ptrdiff_t>(i) + 1, chosen.end(), chosen[i] + 1);
    return true;
  }
  return false;
}

}  // namespace

// Every set is tried: where a side that leads to two neighbours forms no link (3.b), a loss may also form one, so that
// no smaller set speaks for a larger.
Loss find_fatal_loss(const World& world, const State& s, std::int64_t k, const std::function<bool()>& interrupted) {
  const std::vector<CableId> cables = breakable(s);
  const std::size_t size = static_cast<std::size_t>(std::min(k, static_cast<std::int64_t>(cables.size())));
  std::vector<std::size_t> chosen(size);
  std::iota(chosen.begin(), chosen.end(), 0);
  Derived derived;
  do {
    if (interrupted()) return {true, {}};
    State after = s;
    for (const std::size_t i : chosen) after[cables[i]].broken = true;
    derive(world, after, derived);
    if (!goal_stack_apart(world, derived)) continue;
    std::vector<CableId> fatal;
    fatal.reserve(size);
    for (const std::size_t i : chosen) fatal.push_back(cables[i]);
    return {false, std::move(fatal)};
  } while (advance(chosen, cables.size()));
  return {};
}

}  // namespace cairn::semantics
