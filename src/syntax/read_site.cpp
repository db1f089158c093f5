#include "syntax/read_site.hpp"

#include <charconv>

#include <fmt/format.h>

#include "base/text.hpp"

namespace cairn::syntax {

namespace {

/// Six pairs of hexadecimal digits with colons between them, as a number.
std::optional<std::uint64_t> parse_address(std::string_view text) {
  constexpr std::size_t octets = 6;
  if (text.size() != octets * 3 - 1) return std::nullopt;
  std::uint64_t address = 0;
  for (std::size_t i = 0; i < octets; ++i) {
    const char* first = text.data() + i * 3;
    std::uint64_t octet = 0;
    const auto [end, error] = std::from_chars(first, first + 2, octet, 16);
    const bool separated = i + 1 == octets || first[2] == ':';
    if (error != std::errc() || end != first + 2 || !separated) return std::nullopt;
    address = address << 8u | octet;
  }
  return address;
}

void read_address(const Node& node, DeviceDraft& device, Problems& problems) {
  if (node.is_scalar() && node.text == "any") {
    device.open_address = node.place;
    return;
  }
  const auto address = node.is_scalar() ? parse_address(node.text) : std::nullopt;
  if (address) {
    device.address = Located<std::uint64_t>{*address, node.place};
  } else {
    wrong(node, "`address`", "six pairs of hexadecimal digits, such as 02:00:00:00:01:0a, or any", problems);
  }
}

PortDraft read_port_entry(const NamedEntry& entry, Problems& problems) {
  PortDraft port;
  port.name = entry.name;
  Fields fields(*entry.value, "a port entry", {"enabled", "side", "startup", "operational"}, problems);
  if (const Node* n = fields.find("enabled")) port.enabled = read_boolean(*n, "`enabled`", problems);
  if (const Node* n = fields.find("side")) port.side = read_word(*n, "`side`", side_words, problems);
  if (const Node* n = fields.find("operational"))
    port.operational_side = read_word(*n, "`operational`", side_words, problems);
  if (const Node* n = fields.find("startup")) {
    Fields startup(*n, "`startup` of a port", {"enabled", "side"}, problems);
    if (const Node* e = startup.find("enabled")) port.startup_enabled = read_boolean(*e, "`enabled`", problems);
    if (const Node* s = startup.find("side")) port.startup_side = read_word(*s, "`side`", side_words, problems);
  }
  return port;
}

DeviceDraft read_device(const NamedEntry& entry, Problems& problems) {
  static constexpr std::array<Word<bool>, 2> power_words = {{{"up", true}, {"off", false}}};
  const auto problems_before = problems.count();
  DeviceDraft device;
  device.name = entry.name;
  Fields fields(*entry.value, "a device entry",
                {"address", "power", "number", "next-number", "priority", "startup", "tenure", "software", "ports"},
                problems);
  if (const Node* n = fields.find("address")) read_address(*n, device, problems);
  if (const Node* n = fields.find("power")) device.on = read_word(*n, "`power`", power_words, problems).value_or(true);
  if (const Node* n = fields.find("number")) device.number = read_value(*n, "`number`", problems);
  if (const Node* n = fields.find("next-number")) device.next_number = read_value(*n, "`next-number`", problems);
  if (const Node* n = fields.find("priority")) device.priority = read_value(*n, "`priority`", problems);
  if (const Node* n = fields.find("startup")) {
    Fields startup(*n, "`startup` of a device", {"priority"}, problems);
    if (const Node* p = startup.find("priority")) device.startup_priority = read_value(*p, "`priority`", problems);
  }
  if (const Node* n = fields.find("tenure")) device.tenure = read_value(*n, "`tenure`", problems);
  if (const Node* n = fields.find("software")) {
    device.software = read_text(*n, "`software`", problems).value_or(Name{}).value;
  }
  if (const Node* n = fields.find("ports")) {
    for (const auto& port : read_entries(*n, "`ports`", problems)) {
      read_name(*port.key, "a port", true, problems);
      device.ports.push_back(read_port_entry(port, problems));
    }
  }
  device.sound = problems.count() == problems_before;
  return device;
}

CableDraft read_cable_entry(const NamedEntry& entry, Problems& problems) {
  CableDraft cable;
  cable.written = entry.name.value;
  Fields fields(*entry.value, "a cable entry", {"plugged", "id"}, problems);
  if (const Node* n = fields.find("plugged")) cable.plugged = read_boolean(*n, "`plugged`", problems).value_or(true);
  if (const Node* n = fields.find("id")) cable.id = read_name(*n, "`id`", false, problems);
  cable.ends = read_ends(*entry.key, problems);
  return cable;
}

StackDraft read_stack(const Node& node, Problems& problems) {
  StackDraft stack;
  Fields fields(node, "`stack`", {"primary", "members"}, problems);
  if (const Node* n = fields.require("primary")) stack.primary = read_mention(*n, "`primary`", problems);
  if (const Node* n = fields.require("members")) {
    auto members = read_names(*n, "`members`", "device", false, problems);
    stack.members_known = members.has_value();
    stack.members = std::move(members).value_or(std::vector<Name>{});
  }
  return stack;
}

}  // namespace

SiteDraft read_site(const Node& node, Problems& problems) {
  SiteDraft site;
  Fields fields(node, "a site", {"site", "platform", "devices", "cables", "stack"}, problems);
  if (const Node* n = fields.find("site")) site.title = read_text(*n, "`site`", problems).value_or(Name{}).value;
  site.platform = fields.require("platform");
  if (const Node* n = fields.require("devices")) {
    const auto entries = read_entries(*n, "`devices`", problems);
    site.devices_known = n->kind == Node::Kind::mapping;
    if (entries.empty() && (site.devices_known || n->kind == Node::Kind::empty)) {
      problems.add(fields.place_of("devices"), "`devices` is empty", "at least one device");
    }
    for (const auto& entry : entries) {
      // A device whose name is wrong is kept, so that those who name it are not reported too.
      read_name(*entry.key, "a device", true, problems);
      site.devices.push_back(read_device(entry, problems));
    }
  }
  if (const Node* n = fields.find("cables")) {
    for (const auto& entry : read_entries(*n, "`cables`", problems)) {
      site.cables.push_back(read_cable_entry(entry, problems));
    }
  }
  if (const Node* n = fields.find("stack")) site.stack = read_stack(*n, problems);
  return site;
}

}  // namespace cairn::syntax
