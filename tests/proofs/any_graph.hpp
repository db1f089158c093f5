/// \file
/// Devices of which any two may be linked: what the lemmas of proofs/ speak about, for the concrete semantics.
#pragma once

#include <random>
#include <vector>

#include "semantics/settle.hpp"
#include "support/model_builder.hpp"

namespace cairn::test {

/// n devices with a cable between any two, each in ports of its own, and a state of them. Where the side of every port
/// is as it is here, a link has formed exactly where the cable is plugged and both devices are up.
class AnyGraph {
 public:
  AnyGraph(std::size_t devices, Orphans orphans, std::vector<ElectionKey> election = {});
  AnyGraph(const AnyGraph&) = delete;
  AnyGraph& operator=(const AnyGraph&) = delete;

  [[nodiscard]] std::size_t size() const { return model_.site.devices.size(); }
  [[nodiscard]] std::size_t pairs() const { return model_.site.cables.size(); }
  [[nodiscard]] const semantics::World& world() const { return world_; }
  [[nodiscard]] Orphans orphans() const { return model_.platform.orphans; }

  /// Everything arbitrary, but that a device has a leader only while it is up, and seniority only while it is up or
  /// held (2.a). Numbers and priorities are from 1 to n.
  void draw(std::mt19937_64& random);
  /// Draws again who leads, such that each class follows one device of its own.
  void draw_leaders_of_a_settled_state(std::mt19937_64& random);

  State state;

 private:
  Model model_;
  semantics::World world_;
};

/// Each class follows one leader inside it: what proofs/settled.md says that a settled state is.
[[nodiscard]] bool each_class_follows_one_inside(const semantics::World& world, const State& s);

/// One pass; true when it was unsettled.
bool pass(const semantics::World& world, State& s, semantics::Scratch& scratch);

}  // namespace cairn::test
