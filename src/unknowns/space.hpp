/// \file
/// The instances of a template (semantics 9.a to 9.c), and whether any of them is as a path condition says.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "cairn/model.hpp"
#include "unknowns/bounds.hpp"

namespace cairn::unknowns {

/// What is open in a template, within what it is bounded, and what is assumed. Immutable.
class Space {
 public:
  /// Of the unknowns of a model, under its own assumption.
  explicit Space(const Model& model);
  /// The same under these assumptions instead, all of them.
  Space(const Model& model, std::span<const Assumption> assumed);

  [[nodiscard]] std::size_t size() const { return ranges_.size(); }

  /// What holds in every instance, as far as it is convex. Nothing where that alone leaves no instance.
  [[nodiscard]] const std::optional<Bounds>& bounds() const { return bounds_; }

  /// An instance in which all of the literals hold: the same one for the same literals in the same order. Complete:
  /// nothing where there is none.
  [[nodiscard]] std::optional<Instance> find(std::span<const Literal> literals) const;

 private:
  class Search;

  void bound_all();

  std::vector<Range> ranges_;            ///< by UnknownId
  std::size_t parameters_ = 0;           ///< of those, the first so many
  std::vector<std::int64_t> addresses_;  ///< those that are known
  Assumption assume_;
  std::optional<Bounds> bounds_;
};

/// The parts of an assumption that must all hold, in their order; none of one that says nothing.
[[nodiscard]] std::vector<Assumption> conjuncts_of(const std::optional<Assumption>& assume);

}  // namespace cairn::unknowns
