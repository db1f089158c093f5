// The election order (semantics 4.4) as data, against two published elections that are lexicographic as well and break
// ties in opposite directions. Ours is fixed: the higher priority, then the lower address; so a key whose direction
// differs is carried over as its complement.
//
// IEEE Std 802.1Q (spanning tree, bridge identifier): the numerically lowest identifier wins, the priority being its
// more significant part, the bridge's address the less significant; the priority is 16 bits wide and in use a multiple
// of 4096, by default 32768.
// RFC 9568 (virtual router redundancy), sections 5.2.4 and 6.4: the higher priority wins, 1 to 254 where the router is
// not the owner of the address, by default 100; on equal priorities the greater primary address, "based on an unsigned
// integer comparison of the IPvX addresses in network byte order".
// Both rules are written down from memory.
#include <algorithm>
#include <cstdint>
#include <functional>
#include <vector>

#include "spec/random_models.hpp"
#include "support/run.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

constexpr std::uint64_t all_48_bits = 0xffffffffffff;

/// A candidate of one of the two elections, in that election's own values.
struct Candidate {
  std::int64_t priority;
  std::uint64_t address;
};

using CarryOver = std::function<Candidate(const Candidate&)>;

/// IEEE 802.1Q: the lower priority wins. The address needs no change.
Candidate from_bridge(const Candidate& bridge) {
  return {0xffff - bridge.priority, bridge.address};
}

/// RFC 9568: the greater address wins. The priority needs no change.
Candidate from_router(const Candidate& router) {
  return {router.priority, all_48_bits - router.address};
}

/// The place of the candidate that leads when all of them come up at once in one chain.
std::size_t elected(const std::vector<Candidate>& candidates, const CarryOver& carry_over) {
  ModelBuilder b;
  b.platform().election = {ElectionKey::priority};
  b.platform().priorities = {0, 0xffff};
  std::vector<DeviceId> d;
  for (std::size_t i = 0; i < candidates.size(); ++i) {
    const Candidate ours = carry_over(candidates[i]);
    d.push_back(b.device("d" + std::to_string(i), {.priority = ours.priority, .address = ours.address}));
  }
  b.chain(d);
  Run run(b);
  run.settle();
  run.cold_start();
  const DeviceId leader = run.leader(d.front());
  CHECK(std::all_of(d.begin(), d.end(), [&](DeviceId e) { return run.leader(e) == leader; }));
  return leader.value;
}

/// The identifier as the standard composes it: two octets of priority, six of address.
std::uint64_t bridge_identifier(const Candidate& bridge) {
  return (static_cast<std::uint64_t>(bridge.priority) << 48u) | bridge.address;
}

std::size_t root_bridge(const std::vector<Candidate>& bridges) {
  const auto lower = [](const Candidate& a, const Candidate& b) { return bridge_identifier(a) < bridge_identifier(b); };
  return static_cast<std::size_t>(std::min_element(bridges.begin(), bridges.end(), lower) - bridges.begin());
}

std::size_t active_router(const std::vector<Candidate>& routers) {
  std::size_t active = 0;
  for (std::size_t i = 1; i < routers.size(); ++i) {
    const bool more = routers[i].priority > routers[active].priority;
    const bool equal = routers[i].priority == routers[active].priority;
    if (more || (equal && routers[i].address > routers[active].address)) active = i;
  }
  return active;
}

constexpr std::uint64_t ipv4(std::uint64_t a, std::uint64_t b, std::uint64_t c, std::uint64_t d) {
  return a << 24u | b << 16u | c << 8u | d;
}

/// All candidates have different addresses; priorities are few, so that ties are frequent.
std::vector<Candidate> draw(Random& random, const std::vector<std::int64_t>& priorities, std::uint64_t addresses) {
  std::vector<Candidate> candidates;
  const std::size_t count = 2 + below(random, 5);
  while (candidates.size() < count) {
    const std::uint64_t address = random() % addresses;
    const bool taken = std::any_of(candidates.begin(), candidates.end(),
                                   [&](const Candidate& other) { return other.address == address; });
    if (!taken) candidates.push_back({priorities[below(random, priorities.size())], address});
  }
  return candidates;
}

}  // namespace

TEST_CASE("4.4 IEEE 802.1Q: the lower bridge identifier, priority before address") {
  CHECK(elected({{32768, 0x02000000010b}, {4096, 0xfe00000000ff}}, from_bridge) == 1);
  CHECK(elected({{32768, 0x02000000010b}, {32768, 0x02000000010a}}, from_bridge) == 1);
  CHECK(elected({{0, 0x02000000010b}, {61440, 0x000000000001}}, from_bridge) == 0);
  // Compared unsigned: an address whose first bit is set is a large one.
  CHECK(elected({{32768, 0x800000000000}, {32768, 0x7fffffffffff}}, from_bridge) == 1);
}

TEST_CASE("4.4 IEEE 802.1Q: random bridges") {
  Random random(8021);
  std::vector<std::int64_t> priorities;
  for (std::int64_t p = 0; p <= 61440; p += 4096) priorities.push_back(p);
  for (int i = 0; i < 300; ++i) {
    const auto bridges = draw(random, i % 2 == 0 ? priorities : std::vector<std::int64_t>{32768}, all_48_bits);
    CHECK(elected(bridges, from_bridge) == root_bridge(bridges));
  }
}

TEST_CASE("4.4 RFC 9568: the higher priority, then the greater address") {
  // Documentation addresses (RFC 5737).
  CHECK(elected({{100, ipv4(192, 0, 2, 1)}, {254, ipv4(192, 0, 2, 2)}}, from_router) == 1);
  CHECK(elected({{254, ipv4(192, 0, 2, 1)}, {100, ipv4(192, 0, 2, 2)}}, from_router) == 0);
  CHECK(elected({{100, ipv4(192, 0, 2, 1)}, {100, ipv4(192, 0, 2, 2)}}, from_router) == 1);
  // Compared unsigned: 203.0.113.1 is greater than 10.0.0.1, though its first bit is set.
  CHECK(elected({{100, ipv4(203, 0, 113, 1)}, {100, ipv4(10, 0, 0, 1)}}, from_router) == 0);
}

TEST_CASE("4.4 RFC 9568: random routers") {
  Random random(9568);
  for (int i = 0; i < 300; ++i) {
    const auto routers =
        draw(random, i % 2 == 0 ? std::vector<std::int64_t>{1, 99, 100, 101, 254} : std::vector<std::int64_t>{100},
             1ull << 32u);
    CHECK(elected(routers, from_router) == active_router(routers));
  }
}
