/// \file
/// One random model with a free state of it: the two writings side by side.
#pragma once

#include <doctest/doctest.h>

#include <array>
#include <string>

#include "confront/sheet.hpp"
#include "confront/states.hpp"
#include "semantics/derived.hpp"
#include "semantics/state.hpp"
#include "system/derived.hpp"

namespace cairn::confront {

struct Round {
  explicit Round(std::uint64_t seed_of_model)
      : seed(seed_of_model),
        random(seed),
        model(random_model(random)),
        world(model),
        space(model, model.procedure.faults),
        domains(wide_domains(space)),
        now(system::free_state(terms, space, domains, "")),
        derived(system::derive(terms, now.state)) {}
  Round(const Round&) = delete;
  Round& operator=(const Round&) = delete;

  std::uint64_t seed;
  Random random;
  Model model;
  semantics::World world;
  system::Space space;
  system::Domains domains;
  system::Terms terms;
  system::FreeState now;
  system::Derived derived;

  State draw(Sort sort) { return random_state(random, world, space, domains, sort); }

  /// Opens a lane of the sheet for the state.
  void open(Sheet& sheet, const State& s) const {
    sheet.open(assignment_of(domains, values_of(space, s)),
               [this, s] { return "model " + std::to_string(seed) + ": " + told(space, s); });
  }
};

}  // namespace cairn::confront
