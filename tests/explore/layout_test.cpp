#include "explore/layout.hpp"

#include <doctest/doctest.h>

#include <random>

#include "base/contradiction.hpp"
#include "explore/expander.hpp"
#include "explore/quayside.hpp"
#include "explore/ties.hpp"
#include "semantics/state.hpp"

using namespace cairn;
using namespace cairn::explore;

namespace {

constexpr FaultBudget some_faults{.cable_breaks = 2, .crashes = 2, .omissions = 1, .late_starts = 1, .mends = true};

}  // namespace

TEST_CASE("packing keeps every state of a random run as it is") {
  const Model model = test::append_to_chain(5);
  const semantics::World world(model);
  const Layout layout(world, some_faults);
  std::mt19937 random(20);  // NOLINT: the same runs every time
  std::vector<std::uint64_t> packed(layout.words());
  for (int run = 0; run < 200; ++run) {
    State s = semantics::initial_state(world, some_faults);
    State again = s;
    semantics::Scratch scratch;
    TieNotes unheard(world);
    semantics::settle(world, s, scratch, unheard);
    std::vector<Event> events;
    for (int i = 0; i < 60; ++i) {
      layout.pack(s, packed.data());
      layout.unpack(packed.data(), again);
      REQUIRE(again == s);
      semantics::events_in(world, s, scratch.derived, events);
      if (events.empty()) break;
      (void)semantics::take(world, s, scratch.derived, events[random() % events.size()]);
      semantics::settle(world, s, scratch, unheard);
    }
  }
}

TEST_CASE("a state of a stack of 16 that grows packs into at most 64 bytes") {
  const Model model = test::append_to_chain(16);
  const semantics::World world(model);
  CHECK(Layout(world, {.cable_breaks = 2}).words() * sizeof(std::uint64_t) <= 64);
  CHECK(Layout(world, {.crashes = 1}).words() * sizeof(std::uint64_t) <= 64);
}

TEST_CASE("a value that nothing brings about is not stored in silence") {
  const Model model = test::append_to_chain(2);
  const semantics::World world(model);
  const Layout layout(world, {});
  State s = semantics::initial_state(world, {});
  s.devices.back().number = 7;  // the joiner's number is 1, and 3 after its step
  std::vector<std::uint64_t> packed(layout.words());
  CHECK_THROWS_AS(layout.pack(s, packed.data()), Contradiction);
}
