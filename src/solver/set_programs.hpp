/// \file
/// The questions that a closed set is asked, as programs on rows.
#pragma once

#include <vector>

#include "cairn/property.hpp"
#include "solver/row_evaluator.hpp"
#include "system/moves.hpp"

namespace cairn::solver {

/// 6.7 and 6.8 are asked of states that are complete and at rest.
[[nodiscard]] inline bool asks_complete_at_rest(const AskedProperty& asked) {
  return asked.property == Property::survives_cold_start || asked.property == Property::tolerates_loss;
}

/// Terms that hold where a property is broken, as the flags of a program from a certain place on.
struct Breaches {
  std::vector<AskedProperty> asked;
  std::vector<system::Term> terms;

  void add(const AskedProperty& property, system::Term broken);
};

/// One event, taken: flags are what it breaks by itself.
struct EventProgram {
  Breaches breaches;
  system::RowProgram program;
};

/// Built once for a model and what is asked of it.
class SetPrograms {
 public:
  /// \param moves  with a cold start where 6.7 is asked
  SetPrograms(system::Moves& moves, const system::Coding& coding, const std::vector<AskedProperty>& asked,
              RowKind kind);

  /// Of a state of the set. Flags: a pass changes it (of a partial state: the pass is unsettled, and `after` is what it
  /// leaves); it is complete and at rest, where that is asked; in_place(); per event, that it may happen.
  [[nodiscard]] const system::RowProgram& look() const { return look_; }
  [[nodiscard]] const Breaches& in_place() const { return in_place_; }

  /// In the order of moves.events.
  [[nodiscard]] const std::vector<EventProgram>& events() const { return events_; }

  /// Carries out a pass. Flags: it is unsettled; on_the_way().
  [[nodiscard]] const system::RowProgram& pass() const { return pass_; }
  [[nodiscard]] const Breaches& on_the_way() const { return on_the_way_; }

 private:
  static std::vector<EventProgram> event_programs(system::Moves& moves, const system::Coding& coding,
                                                  const std::vector<AskedProperty>& asked);

  std::vector<EventProgram> events_;
  Breaches on_the_way_, in_place_;
  system::RowProgram pass_, look_;
};

}  // namespace cairn::solver
