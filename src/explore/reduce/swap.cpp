#include "explore/reduce/swap.hpp"

#include <algorithm>
#include <tuple>

namespace cairn::explore {

namespace {

template <class Id>
std::vector<Id> each_for_itself(std::size_t count) {
  std::vector<Id> all;
  for (std::size_t i = 0; i < count; ++i) all.emplace_back(i);
  return all;
}

template <class Id>
std::vector<Id> composed(const std::vector<Id>& second, const std::vector<Id>& first) {
  std::vector<Id> all;
  all.reserve(first.size());
  for (const Id id : first) all.push_back(second[id.value]);
  return all;
}

template <class Id>
std::vector<std::pair<Id, Id>> exchanged(const std::vector<Id>& images) {
  std::vector<std::pair<Id, Id>> pairs;
  for (std::size_t i = 0; i < images.size(); ++i) {
    if (Id(i) < images[i]) pairs.emplace_back(Id(i), images[i]);
  }
  return pairs;
}

auto in_order(const DeviceState& d) {
  return std::tie(d.power, d.leader, d.seniority, d.number, d.next_number, d.priority, d.startup_priority);
}
auto in_order(const PortState& p) {
  return std::tie(p.enabled, p.startup_enabled, p.side, p.startup_side, p.operational_side);
}
auto in_order(const CableState& c) {
  return std::tie(c.plugged, c.broken);
}

}  // namespace

Renaming Renaming::identity(const Model& model) {
  return {each_for_itself<DeviceId>(model.site.devices.size()), each_for_itself<PortId>(model.site.ports.size()),
          each_for_itself<CableId>(model.site.cables.size()), each_for_itself<StepId>(model.procedure.steps.size())};
}

Renaming Renaming::after(const Renaming& other) const {
  return {composed(devices, other.devices), composed(ports, other.ports), composed(cables, other.cables),
          composed(steps, other.steps)};
}

Event Renaming::image(const Event& event) const {
  Event image = event;
  switch (event.kind) {
    case Event::Kind::step:
    case Event::Kind::omitted:
      image.place = (*this)[event.step()].value;
      break;
    case Event::Kind::started:
    case Event::Kind::started_late:
    case Event::Kind::crashed:
      image.place = (*this)[event.device()].value;
      break;
    case Event::Kind::broke:
    case Event::Kind::mended:
      image.place = (*this)[event.cable()].value;
      break;
    case Event::Kind::cold_start:
      break;
  }
  return image;
}

std::int64_t Swap::image(std::int64_t number) const {
  for (const auto& [from, to] : numbers) {
    if (from == number) return to;
  }
  return number;
}

Exchange::Exchange(const Swap& swap)
    : swap_(swap),
      devices_(exchanged(swap.devices)),
      ports_(exchanged(swap.ports)),
      cables_(exchanged(swap.cables)),
      steps_(exchanged(swap.steps)) {
  for (std::size_t i = 0; i < swap.devices.size(); ++i) {
    if (DeviceId(i) <= swap.devices[i]) looked_at_.emplace_back(i);
  }
}

DeviceState Exchange::image(const DeviceState& device) const {
  DeviceState image = device;
  if (image.leader) image.leader = swap_[image.leader];
  image.number = swap_.image(image.number);
  image.next_number = swap_.image(image.next_number);
  return image;
}

// Where the first of a pair is as the image of the second, the second is as the image of the first, since the swap
// undoes itself: one of the two is looked at.
bool Exchange::lowers(const State& s) const {
  for (const auto& [a, b] : steps_) {
    if (s.done[a.value] != s.done[b.value]) return s.done[b.value] < s.done[a.value];
  }
  for (const DeviceId d : looked_at_) {
    const DeviceState moved = image(s[swap_[d]]);
    if (!(moved == s[d])) return in_order(moved) < in_order(s[d]);
  }
  for (const auto& [a, b] : ports_) {
    if (!(s[a] == s[b])) return in_order(s[b]) < in_order(s[a]);
  }
  for (const auto& [a, b] : cables_) {
    if (!(s[a] == s[b])) return in_order(s[b]) < in_order(s[a]);
  }
  return false;
}

void Exchange::apply(State& s) const {
  for (const auto& [a, b] : devices_) std::swap(s[a], s[b]);
  for (DeviceState& device : s.devices) device = image(device);
  for (const auto& [a, b] : ports_) std::swap(s[a], s[b]);
  for (const auto& [a, b] : cables_) std::swap(s[a], s[b]);
  for (const auto& [a, b] : steps_) std::swap(s.done[a.value], s.done[b.value]);
}

}  // namespace cairn::explore
