#include "verify/rests_on.hpp"

namespace cairn::verify {

std::vector<FactoryValues> factory_values(const Model& model) {
  std::vector<FactoryValues> all;
  for (std::size_t i = 0; i < model.site.devices.size(); ++i) {
    const Device& device = model.site.devices[i];
    FactoryValues values;
    values.device = DeviceId(i);
    values.number = !device.number_stated;
    values.priority = !device.priority_stated;
    for (const PortId p : device.ports) {
      if (!model[p].enabled_stated) values.enabled.push_back(p);
      if (!model[p].side_stated) values.side.push_back(p);
    }
    const bool any = values.number || values.priority || !values.enabled.empty() || !values.side.empty();
    if (any) all.push_back(std::move(values));
  }
  return all;
}

}  // namespace cairn::verify
