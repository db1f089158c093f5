/// \file
/// A model together with the tables that the semantics looks up again and again.
#pragma once

#include <cstdint>
#include <vector>

#include "cairn/model.hpp"
#include "semantics/decider.hpp"

namespace cairn::semantics {

/// One end of a cable, seen from the device at that end.
struct CableEnd {
  CableId cable;
  PortId here;
  PortId there;
  DeviceId other;  ///< the device at the other end
};

/// What a cable joins, close at hand: links are derived anew for every state.
struct Joint {
  DeviceId device_a;
  DeviceId device_b;
  PortId port_a;
  PortId port_b;
  bool software_fits;  ///< 3.b: "the software tags are equal where the platform says software: must-match"
};

/// Immutable; the model must outlive it.
class World {
 public:
  /// \param decider  who is asked about what the model leaves open; nobody needs to be there where it is no template
  explicit World(const Model& model, Decider* decider = nullptr);

  [[nodiscard]] const Model& model() const { return *model_; }
  [[nodiscard]] const Platform& platform() const { return model_->platform; }
  [[nodiscard]] const Site& site() const { return model_->site; }
  [[nodiscard]] const std::vector<Step>& steps() const { return model_->procedure.steps; }

  [[nodiscard]] std::size_t device_count() const { return model_->site.devices.size(); }
  [[nodiscard]] std::size_t cable_count() const { return model_->site.cables.size(); }

  /// The ends of cables at the ports of d.
  [[nodiscard]] const std::vector<CableEnd>& ends_at(DeviceId d) const { return ends_[d.value]; }
  /// The cables that name the port p.
  [[nodiscard]] const std::vector<CableId>& cables_at(PortId p) const { return cables_at_[p.value]; }
  [[nodiscard]] const Joint& joint(CableId c) const { return joints_[c.value]; }
  [[nodiscard]] DeviceId device_a(CableId c) const { return joints_[c.value].device_a; }
  [[nodiscard]] DeviceId device_b(CableId c) const { return joints_[c.value].device_b; }
  /// Semantics 6: d is to be undisturbed.
  [[nodiscard]] bool keeps(DeviceId d) const { return keeps_[d.value] != 0; }

  [[nodiscard]] Quantity address(DeviceId d) const { return addresses_[d.value]; }
  [[nodiscard]] bool equal(Quantity a, Quantity b) const {
    return is_known(a) && is_known(b) ? a == b : decider().equal(a, b);
  }
  [[nodiscard]] bool less(Quantity a, Quantity b) const {
    return is_known(a) && is_known(b) ? a < b : decider().less(a, b);
  }
  [[nodiscard]] bool is_in(const Range& range, Quantity q) const {
    return is_known(q) ? range.contains(q) : !less(q, range.low) && !less(range.high, q);
  }
  /// True where not even an instance makes them equal, as far as this is plain.
  [[nodiscard]] static bool surely_differ(Quantity a, Quantity b) { return is_known(a) && is_known(b) && a != b; }
  /// Whether somebody is there to decide what is open: of a template.
  [[nodiscard]] bool is_template() const { return decider_ != nullptr; }
  /// \throws Contradiction where nobody is there
  [[nodiscard]] Decider& decider() const;

 private:
  const Model* model_;
  Decider* decider_;
  std::vector<std::vector<CableEnd>> ends_;
  std::vector<std::vector<CableId>> cables_at_;
  std::vector<Joint> joints_;
  std::vector<std::uint8_t> keeps_;
  std::vector<Quantity> addresses_;
};

}  // namespace cairn::semantics
