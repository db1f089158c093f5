// How long it takes to confirm a closed set by the formulas, beside the exploration that found it.
//
//     bench_closed_set [--reduced] PROCEDURE...
//
// With --reduced what is never asked is forgotten (docs/reductions.md, orders apart), and the set is confirmed as one
// of partial states.
//
// Each is done a few times, in turn; the shortest times are told. Properties with and without faults are asked by
// themselves, as `cairn prove` does. What the exploration refutes is left out. Writing the formulas of a model down as
// programs takes a few milliseconds whatever the size of the set: small sets show hardly anything else.
#include <fmt/format.h>

#include <algorithm>
#include <cstdio>
#include <limits>
#include <string>
#include <string_view>

#include "cairn/files.hpp"
#include "cairn/load.hpp"
#include "cairn/render.hpp"
#include "verify/closed_set.hpp"

using namespace cairn;

namespace {

std::string_view name_of(solver::SetConfirmation::Outcome outcome) {
  switch (outcome) {
    case solver::SetConfirmation::Outcome::agrees:
      return "agrees";
    case solver::SetConfirmation::Outcome::differs:
      return "differs";
    case solver::SetConfirmation::Outcome::unclear:
      return "unclear";
    default:
      return "unfinished";
  }
}

constexpr double long_enough = 2;  // seconds in all, after which nothing is done again
constexpr int times = 9;

// Orders apart.
constexpr Reductions forgetting{.orders = false};

void measure(const std::string& file, const semantics::World& world, const FaultBudget& faults,
             const std::vector<AskedProperty>& asked, bool reduced) {
  if (asked.empty()) return;
  const explore::Guard no_limits({}, {});
  const explore::Watch all_in_all;
  double exploring = std::numeric_limits<double>::max();
  double confirming = exploring;
  solver::SetConfirmation confirmation;
  constexpr std::uint64_t any_number = std::numeric_limits<std::uint64_t>::max();
  for (int i = 0; i < times && (i == 0 || all_in_all.seconds() < long_enough); ++i) {
    const explore::Watch first;
    const explore::Exploration found =
        explore::explore(world, faults, asked, no_limits, {.reductions = reduced ? forgetting : Reductions::none()});
    exploring = std::min(exploring, first.seconds());
    if (!found.every_state_visited) {
      fmt::print("{:<32} all is refuted before every state is visited\n", file);
      return;
    }
    std::vector<AskedProperty> kept;
    for (const explore::Answer& answer : found.answers) {
      if (!answer.refutation) kept.push_back(answer.asked);
    }
    const explore::Watch second;
    confirmation =
        reduced ? verify::confirm_reduced_set(world, faults, kept, *found.visited, forgetting, any_number, no_limits)
                : verify::confirm_closed_set(world, faults, kept, *found.visited, any_number, no_limits);
    confirming = std::min(confirming, second.seconds());
  }
  const solver::SetEffort& effort = confirmation.effort;
  fmt::print("{:<32} {:>9} {:>9} {:>9} {:>10.2f} {:>11.2f} {:>6.2f}  {}\n", file, effort.states, effort.events,
             effort.passes, exploring * 1e3, confirming * 1e3, confirming / exploring, name_of(confirmation.outcome));
}

}  // namespace

int main(int count, char** arguments) {
  fmt::print("{:<32} {:>9} {:>9} {:>9} {:>10} {:>11} {:>6}\n", "procedure", "states", "events", "passes", "explore ms",
             "confirm ms", "ratio");
  bool reduced = false;
  for (int i = 1; i < count; ++i) {
    const std::string path = arguments[i];
    if (path == "--reduced") {
      reduced = true;
      continue;
    }
    const auto loaded = load_procedure(path, DiskFiles());
    if (!loaded) {
      fmt::print(stderr, "{}", render_diagnostics(loaded.problems()));
      return 2;
    }
    const Model& model = loaded.value();
    const semantics::World world(model);
    std::vector<AskedProperty> with_faults;
    std::vector<AskedProperty> without;
    for (const AskedProperty& asked : model.procedure.properties) {
      const bool together = model.procedure.faults.none() || asked_with_faults(asked.property);
      (together ? with_faults : without).push_back(asked);
    }
    const std::string file = path.substr(path.find_last_of('/') + 1);
    measure(file, world, model.procedure.faults, with_faults, reduced);
    measure(file + ", no faults", world, {}, without, reduced);
  }
  return 0;
}
