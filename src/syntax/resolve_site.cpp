#include "syntax/resolve_site.hpp"

#include <algorithm>
#include <map>
#include <unordered_map>
#include <utility>

#include <fmt/format.h>

#include "base/text.hpp"

namespace cairn::syntax {

namespace {

using unknowns::Relation;

class SiteResolver {
 public:
  SiteResolver(const SiteDraft& draft, const PlatformDraft* platform, Names& names, Claims& claims, Problems& problems)
      : draft_(draft), names_(names), claims_(claims), problems_(problems) {
    if (platform == nullptr) return;
    platform_known_ = true;
    if (platform->numbers_known) numbers_ = platform->platform.numbers;
    if (platform->priorities_known) priorities_ = platform->platform.priorities;
    factory_ = platform->platform.factory;
  }

  Site run() {
    site_.title = draft_.title;
    if (draft_.devices_known) {
      names_.devices.emplace("there is no device");
      for (const auto& device : draft_.devices) add_device(device);
      give_addresses();
      names_.cables.emplace("there is no cable");
      for (const auto& cable : draft_.cables) add_cable(cable);
      if (draft_.stack) add_stack(*draft_.stack);
    }
    return std::move(site_);
  }

 private:
  static constexpr Range any_natural = {0, no_limit};

  Quantity number_of(const std::optional<Value>& value, std::string_view what, Range within, Quantity otherwise) {
    if (!value) return otherwise;
    const Quantity quantity = names_.quantity(*value, problems_);
    const std::string wanted =
        within.high == no_limit ? "0 or more" : fmt::format("the platform's range, {} to {}", within.low, within.high);
    if (!is_known(quantity)) {
      claims_.push_back({{{quantity, within.low, Relation::less()}, {quantity, within.high, Relation::greater()}},
                         value->place,
                         fmt::format("{} is out of range", what),
                         wanted});
      return quantity;
    }
    if (!value->parameter.empty() || within.contains(quantity)) return quantity;
    problems_.add(value->place, fmt::format("{} is {}", what, value->number), wanted);
    return otherwise;
  }

  void add_device(const DeviceDraft& draft) {
    Device device;
    device.name = draft.name.value;
    device.on = draft.on;
    device.number = number_of(draft.number, "`number`", numbers_, factory_.number);
    device.number_stated = draft.number.has_value();
    device.next_number = number_of(draft.next_number, "`next-number`", numbers_, device.number);
    device.priority = number_of(draft.priority, "`priority`", priorities_, factory_.priority);
    device.priority_stated = draft.priority.has_value();
    device.startup_priority = number_of(draft.startup_priority, "the startup priority", priorities_, device.priority);
    device.tenure = number_of(draft.tenure, "`tenure`", any_natural, 0);
    device.tenure_stated = draft.tenure.has_value();
    device.software = draft.software;
    const DeviceId id(site_.devices.size());
    names_.devices->add(device.name, id.value);
    names_.ports.emplace_back(fmt::format("{} has no port", quoted(device.name)));
    for (const auto& port : draft.ports) device.ports.push_back(add_port(port, device.name, id));
    site_.devices.push_back(std::move(device));
  }

  PortId add_port(const PortDraft& draft, const std::string& device_name, DeviceId device) {
    Port port;
    port.name = fmt::format("{}/{}", device_name, draft.name.value);
    port.device = device;
    port.enabled = draft.enabled.value_or(factory_.enabled);
    port.enabled_stated = draft.enabled.has_value();
    port.startup_enabled = draft.startup_enabled.value_or(port.enabled);
    port.side = draft.side.value_or(factory_.side);
    port.side_stated = draft.side.has_value();
    port.startup_side = draft.startup_side.value_or(port.side);
    port.operational_side = draft.operational_side.value_or(port.side);
    const PortId id(site_.ports.size());
    names_.ports[device.value].add(draft.name.value, id.value);
    site_.ports.push_back(std::move(port));
    return id;
  }

  /// Devices without an address get one in file order, counting only those that leave it out.
  void give_addresses() {
    constexpr std::uint64_t base = 0x020000000000, step = 0x000001000000;
    std::uint64_t given = 0;
    for (std::size_t i = 0; i < draft_.devices.size(); ++i) {
      const auto& draft = draft_.devices[i];
      site_.devices[i].address_stated = draft.address || draft.open_address;
      if (draft.address) site_.devices[i].address = draft.address->value;
      if (!draft.address && !draft.open_address) site_.devices[i].address = base + ++given * step;
    }
    std::unordered_map<std::uint64_t, std::size_t> owner;
    for (std::size_t i = 0; i < draft_.devices.size(); ++i) {
      if (draft_.devices[i].open_address) continue;
      const auto [first, is_new] = owner.emplace(site_.devices[i].address, i);
      if (!is_new) report_equal_addresses(first->second, i);
    }
  }

  void report_equal_addresses(std::size_t first, std::size_t second) {
    // Of a stated address and a given one the stated one is at fault.
    if (!draft_.devices[second].address) std::swap(first, second);
    const auto& other = draft_.devices[first];
    problems_.add(draft_.devices[second].address->place,
                  fmt::format("{} and {} have the same address", quoted(draft_.devices[second].name.value),
                              quoted(other.name.value)),
                  other.address
                      ? "an address that differs from all others"
                      : fmt::format("another address: {} states none and is given this one", quoted(other.name.value)));
  }

  void add_cable(const CableDraft& draft) {
    const CableId id(site_.cables.size());
    Cable cable;
    cable.ends = draft.written;
    cable.name = draft.id ? draft.id->value : draft.written;
    cable.plugged = draft.plugged;
    if (draft.id && !names_.cables->add(draft.id->value, id.value)) {
      problems_.add(draft.id->place, fmt::format("the id {} stands twice", quoted(draft.id->value)),
                    "cable ids that all differ");
    }
    if (draft.ends) connect(*draft.ends, cable, id);
    site_.cables.push_back(std::move(cable));
  }

  void connect(const Reference& ends, Cable& cable, CableId id) {
    const auto a = names_.port(ends.names[0], ends.names[1], problems_);
    const auto b = names_.port(ends.names[2], ends.names[3], problems_);
    if (!a || !b) return;
    cable.a = *a;
    cable.b = *b;
    const auto& first = site_.ports[a->value];
    const auto& second = site_.ports[b->value];
    const bool is_new = names_.cables->add(fmt::format("{}--{}", first.name, second.name), id.value);
    names_.cables->add(fmt::format("{}--{}", second.name, first.name), id.value);
    if (first.device == second.device) {
      problems_.add(ends.place, fmt::format("this cable joins {} to itself", quoted(ends.names[0].value)),
                    "ports of two different devices");
    } else if (!is_new) {
      problems_.add(ends.place,
                    fmt::format("a second cable between {} and {}", quoted(first.name), quoted(second.name)),
                    "one cable between two ports, in whichever order they are written");
    } else if (cable.plugged) {
      occupy(*a, ends.place, cable.ends);
      occupy(*b, ends.place, cable.ends);
    }
  }

  void occupy(PortId port, const Place& place, const std::string& cable) {
    const auto [other, free] = plugged_.emplace(port.value, cable);
    if (free) return;
    problems_.add(place, fmt::format("two plugged cables on {}", quoted(site_.ports[port.value].name)),
                  fmt::format("`plugged: false` for all but one (the other is {})", quoted(other->second)));
  }

  void add_stack(const StackDraft& draft) {
    RunningStack stack;
    std::map<Quantity, DeviceId> holder;  // of a member number
    for (const auto& name : draft.members) {
      const auto member = names_.device(name, problems_);
      if (!member) continue;
      stack.members.push_back(*member);
      check_member(*member, name, holder);
    }
    if (draft.primary) add_primary(*draft.primary, draft, stack);
    site_.stack = std::move(stack);
  }

  void check_member(DeviceId member, const Name& name, std::map<Quantity, DeviceId>& holder) {
    const auto& device = site_.devices[member.value];
    if (!device.on) {
      problems_.add(name.place,
                    fmt::format("{} is a member of the running stack and its power is off", quoted(name.value)),
                    "members that are on");
    }
    const auto& draft = draft_.devices[member.value];
    // A number out of range has been told already, and the factory's stands in for it.
    const bool known = is_known(device.number);
    const bool replaced = known && draft.number && draft.number->number != device.number;
    if (replaced || !draft.sound || !platform_known_ || (known && !numbers_.contains(device.number))) return;
    const auto [other, is_new] = holder.emplace(device.number, member);
    if (is_new) return claim_to_differ(member, name, holder);
    problems_.add(name.place,
                  fmt::format("{} has the number {}, which {} has too", quoted(name.value), device.number,
                              quoted(site_.devices[other->second.value].name)),
                  "members of the running stack with different numbers");
  }

  // Of a number that is open: from those of the members before.
  void claim_to_differ(DeviceId member, const Name& name, const std::map<Quantity, DeviceId>& holder) {
    const Quantity number = site_.devices[member.value].number;
    for (const auto& [taken, other] : holder) {
      if (other == member || (is_known(number) && is_known(taken))) continue;
      claims_.push_back(
          {{{number, taken, Relation::equal()}},
           name.place,
           fmt::format("{} has the number of {}", quoted(name.value), quoted(site_.devices[other.value].name)),
           "members of the running stack with different numbers"});
    }
  }

  void add_primary(const Name& name, const StackDraft& draft, RunningStack& stack) {
    const auto primary = names_.device(name, problems_);
    if (!primary) return;
    stack.primary = *primary;
    const bool member = std::find(stack.members.begin(), stack.members.end(), *primary) != stack.members.end();
    if (!member && draft.members_known) {
      problems_.add(name.place, fmt::format("the primary {} is not among the members", quoted(name.value)),
                    "one of `members`");
    }
  }

  const SiteDraft& draft_;
  Names& names_;
  Claims& claims_;
  Problems& problems_;
  Range numbers_ = any_natural;
  Range priorities_ = any_natural;
  Factory factory_;
  bool platform_known_ = false;
  Site site_;
  std::unordered_map<std::uint32_t, std::string> plugged_;  ///< which cable is plugged into a port
};

}  // namespace

Site resolve_site(const SiteDraft& draft, const PlatformDraft* platform, Names& names, Claims& claims,
                  Problems& problems) {
  return SiteResolver(draft, platform, names, claims, problems).run();
}

std::vector<DeviceId> open_addresses(const SiteDraft& draft) {
  std::vector<DeviceId> devices;
  for (std::size_t i = 0; i < draft.devices.size(); ++i) {
    if (draft.devices[i].open_address) devices.emplace_back(i);
  }
  return devices;
}

std::vector<Parameter> declare_parameters_of(const SiteDraft& draft, Names& names) {
  auto& table = names.parameters.emplace("there is no parameter");
  std::vector<Parameter> parameters;
  for (const auto& device : draft.devices) {
    for (const auto* value :
         {&device.number, &device.next_number, &device.priority, &device.startup_priority, &device.tenure}) {
      if (!*value || (*value)->parameter.empty()) continue;
      const std::string& name = (*value)->parameter;
      if (table.add(name, parameters.size())) parameters.push_back({name, {0, no_limit}});
    }
  }
  return parameters;
}

}  // namespace cairn::syntax
