#include "support/platforms.hpp"

#include <algorithm>
#include <array>
#include <vector>

#include "support/model_builder.hpp"

namespace cairn::test {

namespace {

// All orders of all subsets of the three keys: 16 of them.
std::vector<std::vector<ElectionKey>> elections() {
  std::vector<std::vector<ElectionKey>> all;
  std::array keys = {ElectionKey::priority, ElectionKey::tenure, ElectionKey::number};
  do {
    for (std::size_t length = 0; length <= keys.size(); ++length) {
      all.emplace_back(keys.begin(), keys.begin() + static_cast<std::ptrdiff_t>(length));
    }
  } while (std::next_permutation(keys.begin(), keys.end()));
  std::sort(all.begin(), all.end());
  all.erase(std::unique(all.begin(), all.end()), all.end());
  return all;
}

}  // namespace

void for_each_platform(const std::function<void(const Platform&)>& visit) {
  Platform platform = ModelBuilder().platform();
  for (unsigned bits = 0; bits < 512; ++bits) {
    const auto bit = [bits](unsigned place) { return (bits >> place & 1u) != 0; };
    platform.number_takes = bit(0) ? Takes::at_once : Takes::at_restart;
    platform.priority_takes = bit(1) ? Takes::at_once : Takes::at_restart;
    platform.settings_follow = bit(2) ? SettingsFollow::number : SettingsFollow::device;
    platform.side_takes = bit(3) ? SideTakes::at_once : SideTakes::on_apply;
    platform.side_needs_disabled = bit(4);
    platform.facing = bit(5) ? Facing::any : Facing::opposite;
    platform.side_leads_to = bit(6) ? SideLeadsTo::any : SideLeadsTo::one_neighbour;
    platform.orphans = bit(7) ? Orphans::restart : Orphans::carry_on;
    platform.software = bit(8) ? Software::any : Software::must_match;
    for (const auto& election : elections()) {
      platform.election = election;
      visit(platform);
    }
  }
}

}  // namespace cairn::test
