#include "semantics/world.hpp"

#include "base/contradiction.hpp"

namespace cairn::semantics {

World::World(const Model& model, Decider* decider)
    : model_(&model),
      decider_(decider),
      ends_(model.site.devices.size()),
      cables_at_(model.site.ports.size()),
      keeps_(model.site.devices.size(), 0) {
  for (std::size_t i = 0; i < model.site.cables.size(); ++i) {
    const CableId c(i);
    const PortId a = model[c].a;
    const PortId b = model[c].b;
    const DeviceId at_a = model[a].device;
    const DeviceId at_b = model[b].device;
    const bool fits = model.platform.software == Software::any || model[at_a].software == model[at_b].software;
    joints_.push_back({at_a, at_b, a, b, fits});
    ends_[at_a.value].push_back({c, a, b, at_b});
    ends_[at_b.value].push_back({c, b, a, at_a});
    cables_at_[a.value].push_back(c);
    cables_at_[b.value].push_back(c);
  }
  for (const DeviceId d : model.procedure.keep) keeps_[d.value] = 1;
  for (std::size_t i = 0; i < model.site.devices.size(); ++i) addresses_.push_back(model.address(DeviceId(i)));
}

Decider& World::decider() const {
  if (decider_ == nullptr) throw Contradiction("a template was taken for a plain model");
  return *decider_;
}

}  // namespace cairn::semantics
