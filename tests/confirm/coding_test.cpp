// States as rows: nothing is lost, and nothing but a difference makes a difference.
#include "system/coding.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <utility>

#include "confirm/sets.hpp"
#include "confront/states.hpp"
#include "explore/quayside.hpp"

using namespace cairn;
using confront::values_of;
using system::Coding;
using system::StateWriter;
using system::VariableId;

namespace {

// The domains that just hold the states.
system::Domains around(const system::Space& space, const std::vector<State>& states) {
  system::Domains domains(space.size());
  for (VariableId v = 0; v < space.size(); ++v) {
    for (const State& s : states) domains[v].push_back(space.read(s, v));
    std::sort(domains[v].begin(), domains[v].end());
    domains[v].erase(std::unique(domains[v].begin(), domains[v].end()), domains[v].end());
  }
  return domains;
}

}  // namespace

TEST_CASE("a state is read from its row as it was written, whatever state was written before") {
  confront::Random random(3);
  for (int round = 0; round < 30; ++round) {
    const Model model = confront::random_model(random);
    const semantics::World world(model);
    const system::Space space(model, model.procedure.faults);
    const system::Domains domains = confront::wide_domains(space);
    std::vector<State> states;
    for (std::size_t i = 0; i < 60; ++i) {
      const auto sort = static_cast<confront::Sort>(i % confront::sort_count);
      states.push_back(confront::random_state(random, world, space, domains, sort));
      if (i % 5 == 4) states.push_back(states[i / 2]);
    }
    const Coding coding(space, around(space, states));
    StateWriter writer(coding);
    std::vector<std::vector<std::uint64_t>> rows;
    for (const State& s : states) {
      std::vector<std::uint64_t> row(coding.words());
      std::vector<std::uint64_t> from_values(coding.words());
      REQUIRE(writer.write(s, row.data()));
      REQUIRE(coding.write(values_of(space, s), from_values.data()));
      REQUIRE(row == from_values);
      REQUIRE(coding.read(row.data()) == values_of(space, s));
      rows.push_back(std::move(row));
    }
    for (std::size_t i = 0; i < states.size(); ++i) {
      for (std::size_t j = 0; j < i; ++j) REQUIRE((rows[i] == rows[j]) == (states[i] == states[j]));
    }
  }
}

TEST_CASE("a value outside its domain is told, and the state after it is written whole") {
  const Model model = test::append_to_chain(3);
  const system::Space space(model, {});
  std::vector<State> states = test::reachable(model, {});
  const Coding coding(space, around(space, states));
  StateWriter writer(coding);
  std::vector<std::uint64_t> row(coding.words());
  std::vector<std::uint64_t> from_values(coding.words());
  REQUIRE(writer.write(states[1], row.data()));
  State strange = states[1];
  strange.devices[0].priority = 221;
  strange.devices[1].power = Power::off;
  CHECK_FALSE(writer.write(strange, row.data()));
  CHECK_FALSE(coding.write(values_of(space, strange), row.data()));
  CHECK(writer.write(states[2], row.data()));
  CHECK(coding.write(values_of(space, states[2]), from_values.data()));
  CHECK(row == from_values);
}
