/// \file
/// A state and an event that a solver has found, and what of them matters.
#pragma once

#include <optional>
#include <vector>

#include "solver/obligations.hpp"
#include "system/evaluate.hpp"

namespace cairn::solver {

/// Reads steps of one relation off the models of its solver.
class StepReader {
 public:
  explicit StepReader(Obligations& obligations);

  /// What the solver has found: a state, and an event if one was asked for.
  struct Step {
    std::vector<system::Lanes> inputs;  ///< the Booleans of the state, then those of the events, all lanes alike
    Values before;
    bool with_event = true;
  };
  /// After `satisfiable`. \param with_event  an event was asked for
  [[nodiscard]] Step read(bool with_event) const;
  /// The state after the event.
  [[nodiscard]] Values after(const Step& step);

  /// What of the step is enough for `target`, which holds there, as assumptions that cannot hold together: all that the
  /// step says, and that the target does not hold.
  [[nodiscard]] std::vector<Literal> denial(const Step& step, system::Term target);
  /// What a core of the denial says of the state.
  [[nodiscard]] Known told(const std::vector<Literal>& core);

 private:
  Obligations& obligations_;
  std::vector<system::Term> inputs_;
  /// The cases of System::next, in the order of the space; made when first asked.
  std::optional<system::Program> next_;
  std::vector<system::Lanes> scratch_;
};

}  // namespace cairn::solver
