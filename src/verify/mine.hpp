/// \file
/// Candidates for facts: read off the procedure, and off states that were visited.
#pragma once

#include <cstdint>
#include <map>
#include <vector>

#include "cairn/state.hpp"
#include "solver/fact.hpp"

namespace cairn::verify {

/// From the text alone: the laws, the order of the steps, what the budget of breaks allows, the values that a variable
/// can have at all, and for what only steps change, its value until and after each of them.
/// \param domains  those that the facts are told in
[[nodiscard]] std::vector<solver::Fact> candidates_from_text(const system::Space& space,
                                                             const system::Domains& domains);

/// The same facts, but of those that bound values by themselves many are told as one: for each kind of variable what
/// never changes, and what no step changes.
[[nodiscard]] std::vector<solver::Fact> gathered(const system::Space& space, const std::vector<bool>& touched,
                                                 const std::vector<solver::Fact>& facts);

/// Which variables a step may change by itself.
[[nodiscard]] std::vector<bool> touched_by_steps(const system::Space& space, const system::Domains& domains);

/// The simplest first: without conditions before with, and values that never change by themselves before those that do.
void sort_by_simplicity(const system::Space& space, std::vector<solver::Fact>& facts);

/// Gathers settled states, and tells what they have in common.
class Miner {
 public:
  explicit Miner(const system::Space& space);

  /// \param in_pairs  whether it is also looked at for what two variables have in common, which takes far longer
  void add(const State& s, bool in_pairs = true);

  /// Which values each variable takes at all, once a step is done, until it is done, and between a step and the one
  /// that directly follows it.
  [[nodiscard]] std::vector<solver::Fact> single() const;
  /// Of two variables, which values the one takes while the other has a certain value.
  [[nodiscard]] std::vector<solver::Fact> paired() const;
  /// The same between a step and the one that directly follows it.
  [[nodiscard]] std::vector<solver::Fact> paired_between_steps() const;

 private:
  /// Per variable the set of its values, as bits by their place in values_.
  using Seen = std::vector<std::uint64_t>;
  /// A state, each value by its place in values_.
  using Row = std::vector<std::uint8_t>;
  using Guard = std::vector<solver::Within>;
  static constexpr std::size_t most_values = 64;

  [[nodiscard]] std::uint8_t place_of(system::VariableId v, std::int64_t value);
  /// Of a variable with too many values nothing is told.
  [[nodiscard]] bool is_told(system::VariableId v) const { return values_[v].size() <= most_values; }
  [[nodiscard]] std::vector<std::int64_t> values(system::VariableId v, std::uint64_t seen) const;
  [[nodiscard]] bool holds(const Row& row, const Guard& guard) const;
  [[nodiscard]] Seen seen_where(const Guard& guard) const;
  [[nodiscard]] std::vector<Guard> guards_of_one_step() const;
  [[nodiscard]] std::vector<Guard> guards_between_steps() const;
  void pair_up(const Guard& guard, std::vector<solver::Fact>& facts) const;

  const system::Space& space_;
  std::vector<std::vector<std::int64_t>> values_;  ///< per variable, in the order met
  std::vector<Row> rows_;
  std::map<std::vector<std::uint8_t>, Seen> at_point_;  ///< by which steps are done
};

}  // namespace cairn::verify
