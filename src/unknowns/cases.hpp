/// \file
/// Path conditions: what has been decided of what a template leaves open. Each stands for the instances that it leaves.
#pragma once

#include <cstdint>
#include <optional>
#include <unordered_map>
#include <vector>

#include "unknowns/space.hpp"

namespace cairn::unknowns {

using CaseId = std::uint32_t;

/// All path conditions that were ever come to, each kept once. Every one leaves an instance. Not for several threads.
class Cases {
 public:
  /// The space must outlive this, and have an instance.
  explicit Cases(const Space& space);

  /// Nothing is decided yet.
  static constexpr CaseId undecided = 0;

  /// `from` with one more literal: `from` itself where that says nothing new; nothing where it leaves no instance.
  [[nodiscard]] std::optional<CaseId> refine(CaseId from, const Literal& literal);

  /// The instances of both; nothing where there is none.
  [[nodiscard]] std::optional<CaseId> both(CaseId a, CaseId b);

  /// Whether all instances of `narrow` are of `wide`, as far as their literals show.
  [[nodiscard]] bool is_within(CaseId narrow, CaseId wide);

  /// How two quantities may stand to each other, as far as the literals show.
  [[nodiscard]] Relation possible(CaseId in, Quantity a, Quantity b);

  /// What was decided, sorted, at most one literal on two quantities.
  [[nodiscard]] const std::vector<Literal>& literals(CaseId in) const { return cases_[in].literals; }
  /// One of its instances.
  [[nodiscard]] const Instance& instance(CaseId in) const { return cases_[in].instance; }
  /// About so many are in use.
  [[nodiscard]] std::uint64_t bytes() const;

 private:
  struct Case {
    std::vector<Literal> literals;
    Instance instance;
  };
  struct Refinement {
    CaseId from;
    Literal literal;
    bool operator==(const Refinement&) const = default;
  };
  struct Hash {
    std::size_t operator()(const Refinement& refinement) const;
    std::size_t operator()(const std::vector<Literal>& literals) const;
  };

  std::optional<CaseId> refine_anew(CaseId from, const Literal& literal);
  const Bounds& bounds_of(CaseId in);
  [[nodiscard]] Relation told(CaseId in, const Literal& literal) const;

  const Space& space_;
  std::vector<Case> cases_;
  std::uint64_t literals_ = 0;  ///< of all cases
  std::unordered_map<std::vector<Literal>, CaseId, Hash> known_;
  std::unordered_map<Refinement, std::optional<CaseId>, Hash> refined_;
  std::unordered_map<std::uint64_t, bool> within_;
  std::unordered_map<CaseId, Bounds> bounds_;  ///< of the cases asked of last: they are large, and made again at need
};

}  // namespace cairn::unknowns
