#include "unknowns/instantiate.hpp"

#include "unknowns/literal.hpp"

namespace cairn::unknowns {

namespace {

/// Puts values in the places of codes.
class Filler {
 public:
  explicit Filler(const Instance& instance) : instance_(instance) {}

  void fill(Quantity& q) const { q = value_of(q, instance_.values); }

  void fill(Device& device) const {
    for (Quantity* q :
         {&device.number, &device.next_number, &device.priority, &device.startup_priority, &device.tenure}) {
      fill(*q);
    }
  }

  // NOLINTNEXTLINE(misc-no-recursion): no deeper than the reader lets a condition be
  void fill(Condition& condition) const {
    fill(condition.value);
    for (Condition& part : condition.parts) fill(part);
  }

  void fill(Step& step) const {
    fill(step.value);
    fill(step.condition);
  }

 private:
  const Instance& instance_;
};

}  // namespace

Model instantiate(const Model& model, const Instance& instance) {
  Model plain = model;
  plain.unknowns = {};
  const Filler filler(instance);
  for (Device& device : plain.site.devices) filler.fill(device);
  for (Step& step : plain.procedure.steps) filler.fill(step);
  if (plain.procedure.goal && plain.procedure.goal->where) filler.fill(*plain.procedure.goal->where);
  const std::vector<DeviceId>& open = model.unknowns.addresses;
  for (std::size_t i = 0; i < open.size(); ++i) {
    Device& device = plain.site.devices[open[i].value];
    device.address = static_cast<std::uint64_t>(instance.values[model.unknowns.address(i).value]);
    device.address_stated = true;
  }
  return plain;
}

}  // namespace cairn::unknowns
