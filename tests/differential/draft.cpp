#include "differential/draft.hpp"

namespace cairn::differential {

PortDraft factory_port(const std::string& name) {
  PortDraft port;
  port.name = name;
  return port;
}

std::string device_of(const std::string& port) {
  return port.substr(0, port.find('/'));
}

DeviceDraft* find_device(Draft& draft, const std::string& name) {
  for (DeviceDraft& device : draft.devices) {
    if (device.name == name) return &device;
  }
  return nullptr;
}

PortDraft* find_port(Draft& draft, const std::string& name) {
  for (DeviceDraft& device : draft.devices) {
    for (PortDraft& port : device.ports) {
      if (port.name == name) return &port;
    }
  }
  return nullptr;
}

std::vector<std::string> port_names(const Draft& draft) {
  std::vector<std::string> names;
  for (const DeviceDraft& device : draft.devices) {
    for (const PortDraft& port : device.ports) names.push_back(port.name);
  }
  return names;
}

std::vector<std::string> device_names(const Draft& draft) {
  std::vector<std::string> names;
  for (const DeviceDraft& device : draft.devices) names.push_back(device.name);
  return names;
}

std::vector<StepDraft*> all_steps(std::vector<Item>& items) {
  std::vector<StepDraft*> all;
  for (Item& item : items) {
    if (item.branches.empty()) all.push_back(&item.step);
    for (auto& branch : item.branches) {
      for (StepDraft* step : all_steps(branch)) all.push_back(step);
    }
  }
  return all;
}

std::vector<std::vector<Item>*> all_lists(std::vector<Item>& items) {
  std::vector<std::vector<Item>*> all = {&items};
  for (Item& item : items) {
    for (auto& branch : item.branches) {
      for (auto* list : all_lists(branch)) all.push_back(list);
    }
  }
  return all;
}

void drop_empty(std::vector<Item>& items) {
  std::vector<Item> kept;
  for (Item& item : items) {
    const bool was_fork = !item.branches.empty();
    for (auto& branch : item.branches) drop_empty(branch);
    std::erase_if(item.branches, [](const auto& branch) { return branch.empty(); });
    if (!was_fork || !item.branches.empty()) kept.push_back(item);
  }
  items = kept;
}

std::vector<ConditionDraft*> all_conditions(Draft& draft) {
  std::vector<ConditionDraft*> all;
  for (StepDraft* step : all_steps(draft.steps)) {
    if (step->verb == Verb::await || step->verb == Verb::check) all.push_back(&step->condition);
  }
  if (draft.goal && draft.goal->where) all.push_back(&*draft.goal->where);
  for (std::size_t i = 0; i < all.size(); ++i) {
    for (ConditionDraft& part : all[i]->parts) all.push_back(&part);
  }
  return all;
}

}  // namespace cairn::differential
