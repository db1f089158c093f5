/// \file
/// Runs as questions: the transition relation laid out in a row, and something bad in it or not.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "solver/unroller.hpp"
#include "verify/export_draft.hpp"

namespace cairn::verify {

/// Lays out runs of one system for questions on one property.
class RunQuestions {
 public:
  /// \param most_nodes  of the system's pool: where a question would make it larger, there is none
  RunQuestions(solver::Unroller& unroller, const AskedProperty& asked, std::size_t most_nodes);

  /// A run of this length breaks the property with its last event. \param events  a refutation; not empty where the
  /// property is one of 6.1 to 6.5
  [[nodiscard]] std::optional<Draft> breaks(const Trace& events);
  /// No run of at most `most` events breaks it. What a refutation counts is counted: the cold start of 6.7 and the
  /// cables that are lost in 6.8.
  [[nodiscard]] std::optional<Draft> does_not_break(std::size_t most);
  /// The events that a refutation has at most after those that lead to a state at rest.
  [[nodiscard]] std::size_t after_rest() const { return cold_start() + static_cast<std::size_t>(asked_.k); }
  /// There are runs of this length.
  [[nodiscard]] std::optional<Draft> exists(std::size_t length);

 private:
  [[nodiscard]] bool fits() const;
  /// The cold start, which is no event of the relation.
  [[nodiscard]] std::size_t cold_start() const { return asked_.property == Property::survives_cold_start ? 1 : 0; }
  /// That the first `length` events are a run; nothing where that is too large.
  [[nodiscard]] std::optional<std::vector<system::Assertion>> run(std::size_t length);
  /// The property is broken by a run that takes `depth` events to it, `most` all in all.
  [[nodiscard]] system::Term broken_at(std::size_t depth, std::size_t most);

  solver::Unroller& unroller_;
  system::System& system_;
  AskedProperty asked_;
  std::size_t most_nodes_;
  system::Term on_the_way_;
  system::RestBreach at_rest_;
};

}  // namespace cairn::verify
