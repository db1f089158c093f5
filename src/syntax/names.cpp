#include "syntax/names.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "base/text.hpp"

namespace cairn::syntax {

bool NameTable::add(const std::string& name, std::size_t place) {
  const auto [entry, is_new] = places_.emplace(name, place);
  if (is_new) spelled_.push_back(entry->first);
  return is_new;
}

std::optional<std::size_t> NameTable::find(const std::string& name) const {
  const auto found = places_.find(name);
  if (found == places_.end()) return std::nullopt;
  return found->second;
}

std::optional<std::size_t> NameTable::look_up(const Name& name, Problems& problems) const {
  if (const auto place = find(name.value)) return place;
  problems.add(name.place, fmt::format("{} {}", absent_, quoted(name.value)), {},
               problems.nearest_to(name.value, spelled_));
  return std::nullopt;
}

namespace {

template <class Id>
std::optional<Id> look_up(const std::optional<NameTable>& table, const Name& name, Problems& problems) {
  const auto place = table ? table->look_up(name, problems) : std::nullopt;
  if (!place) return std::nullopt;
  return Id(*place);
}

}  // namespace

std::optional<DeviceId> Names::device(const Name& name, Problems& problems) const {
  return look_up<DeviceId>(devices, name, problems);
}

std::optional<PortId> Names::port(const Name& device_name, const Name& port_name, Problems& problems) const {
  const auto owner = device(device_name, problems);
  if (!owner) return std::nullopt;
  const auto place = ports[owner->value].look_up(port_name, problems);
  if (!place) return std::nullopt;
  return PortId(*place);
}

std::optional<PortId> Names::port(const Reference& reference, Problems& problems) const {
  return port(reference.names[0], reference.names[1], problems);
}

std::optional<CableId> Names::cable(const Reference& reference, Problems& problems) const {
  if (!cables) return std::nullopt;
  if (reference.form == Reference::Form::name) return look_up<CableId>(cables, reference.names[0], problems);
  const auto before = problems.count();
  const auto a = port(reference.names[0], reference.names[1], problems);
  const auto b = port(reference.names[2], reference.names[3], problems);
  if (!a || !b || problems.count() != before) return std::nullopt;
  return look_up<CableId>(cables, Name{reference.text(), reference.place}, problems);
}

std::optional<StepId> Names::step(const Name& name, Problems& problems) const {
  return look_up<StepId>(steps, name, problems);
}

std::vector<DeviceId> Names::all_devices(const std::vector<Name>& names, Problems& problems) const {
  std::vector<DeviceId> found;
  for (const auto& name : names) {
    if (const auto id = device(name, problems)) found.push_back(*id);
  }
  return found;
}

Quantity Names::quantity(const Value& value, Problems& problems) const {
  // Integers so low that codes begin there are out of every range, like the lowest that is none.
  if (value.parameter.empty()) return std::max(value.number, least_known);
  const auto place = parameters ? parameters->look_up({value.parameter, value.place}, problems) : std::nullopt;
  return place ? unknown(UnknownId(*place)) : 0;
}

}  // namespace cairn::syntax
