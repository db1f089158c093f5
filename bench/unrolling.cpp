// How constraints alone go from depth to depth: what each one adds to the clauses, and how long it takes.
//
//     bench_unrolling PROCEDURE PROPERTY...
//
// The properties are among those that the procedure asks for; without any, all of them. CaDiCaL answers, as it comes:
// neither are facts tried first, nor is a proof put to Z3. Variables and clauses are those of the solver so far; the
// last depth of a refutation includes the choice among the shortest ones.
#include <fmt/format.h>

#include <algorithm>
#include <cstdio>
#include <string>
#include <vector>

#include "cairn/files.hpp"
#include "cairn/load.hpp"
#include "cairn/render.hpp"
#include "explore/limits.hpp"
#include "solver/bmc.hpp"
#include "solver/cadical_solver.hpp"

using namespace cairn;

namespace {

void print(const solver::DepthCost& cost) {
  fmt::print("{:>5} {:>10} {:>10} {:>10.3f}\n", cost.depth, cost.variables, cost.clauses, cost.seconds);
  std::fflush(stdout);
}

void measure(const Model& model, const AskedProperty& asked) {
  const FaultBudget faults = asked_with_faults(asked.property) ? model.procedure.faults : FaultBudget{};
  const explore::Watch in_all;
  system::System system(model, faults, system::static_domains(model, faults));
  fmt::print("{}: formulas written in {:.3f} s\n", name_of(asked.property), in_all.seconds());
  fmt::print("{:>5} {:>10} {:>10} {:>10}\n", "depth", "variables", "clauses", "seconds");
  solver::Unroller unroller(system);
  const auto cadical = solver::make_cadical_solver(nullptr);
  solver::BoundedLimits limits;
  limits.progress = print;
  const solver::BoundedAnswer answer = check_bounded(unroller, *cadical, asked, limits);
  const std::string length =
      answer.verdict == Verdict::refuted ? fmt::format(" by {} events", answer.refutation.size()) : "";
  fmt::print("{}{} in {:.3f} s {}\n\n", name_of(answer.verdict), length, in_all.seconds(), answer.complaint);
}

}  // namespace

int main(int count, char** arguments) {
  if (count < 2) {
    fmt::print(stderr, "bench_unrolling PROCEDURE PROPERTY...\n");
    return 2;
  }
  const auto loaded = load_procedure(arguments[1], DiskFiles());
  if (!loaded) {
    fmt::print(stderr, "{}", render_diagnostics(loaded.problems()));
    return 2;
  }
  const Model& model = loaded.value();
  const std::vector<std::string> names(arguments + 2, arguments + count);
  std::vector<AskedProperty> chosen;
  for (const AskedProperty& asked : model.procedure.properties) {
    const bool named = std::find(names.begin(), names.end(), name_of(asked.property)) != names.end();
    if (names.empty() || named) chosen.push_back(asked);
  }
  if (chosen.size() < std::max<std::size_t>(names.size(), 1)) {
    fmt::print(stderr, "{} does not ask for all of these properties\n", arguments[1]);
    return 2;
  }
  for (const AskedProperty& asked : chosen) measure(model, asked);
  return 0;
}
