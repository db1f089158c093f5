/// \file
/// Semantics 3, Derived, as terms: which cables are up, which links have formed, who is together with whom.
#pragma once

#include <vector>

#include "system/variables.hpp"

namespace cairn::system {

/// What follows from a state.
class Derived {
 public:
  /// 3.a, one a cable
  std::vector<Term> cable_up;
  /// 3.b, one a cable
  std::vector<Term> linked;
  /// No link can form because a device goes down: nowhere does a side lead to two neighbours, or nobody minds (3.b).
  bool links_only_vanish = true;

  explicit Derived(std::uint32_t devices) : devices_(devices), together_(std::size_t{devices} * devices) {}

  /// 3.c, of two devices; of one device, that it is up.
  [[nodiscard]] Term together(DeviceId d, DeviceId e) const { return together_[place(d, e)]; }
  void set_together(DeviceId d, DeviceId e, Term term) { together_[place(d, e)] = together_[place(e, d)] = term; }

 private:
  [[nodiscard]] std::size_t place(DeviceId d, DeviceId e) const { return std::size_t{d.value} * devices_ + e.value; }
  std::uint32_t devices_;
  std::vector<Term> together_;
};

[[nodiscard]] Derived derive(Terms& terms, const SymbolicState& s);

/// The same, but for who is together with whom.
[[nodiscard]] Derived derive_links(Terms& terms, const SymbolicState& s);

/// 3.c, by Warshall's closure: fills in who is together from who is up and which pairs are linked directly.
void close_together(Terms& terms, const Space& space, Derived& derived);

}  // namespace cairn::system
