/// \file
/// The names of a model, looked up with the nearest one at hand.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "cairn/ids.hpp"
#include "syntax/problems.hpp"
#include "syntax/reference.hpp"

namespace cairn::syntax {

/// Names of one kind of thing. Each name means one thing; a nearest name is offered from all of them.
class NameTable {
 public:
  /// `absent` begins the message on a name that is unknown: "there is no device".
  explicit NameTable(std::string absent) : absent_(std::move(absent)) {}
  NameTable(NameTable&&) = default;
  NameTable& operator=(NameTable&&) = default;

  /// False when `name` means something already; then nothing changes.
  bool add(const std::string& name, std::size_t place);
  [[nodiscard]] std::optional<std::size_t> find(const std::string& name) const;
  /// The place of the thing; nothing after reporting that it is unknown.
  std::optional<std::size_t> look_up(const Name& name, Problems& problems) const;

 private:
  std::string absent_;
  std::unordered_map<std::string, std::size_t> places_;
  std::vector<std::string_view> spelled_;  ///< the keys of `places_`, in the order added
};

/// The names that a site declares and a procedure adds. A table is absent where its document could not be read: then
/// names are not looked up, since not knowing them is no fault of those who use them.
class Names {
 public:
  std::optional<NameTable> devices;
  std::vector<NameTable> ports;  ///< one table a device
  std::optional<NameTable> cables;
  std::optional<NameTable> steps;
  std::optional<NameTable> parameters;

  // Each gives nothing where the name is unknown (reported) or cannot be looked up.
  std::optional<DeviceId> device(const Name& name, Problems& problems) const;
  std::optional<PortId> port(const Name& device, const Name& port, Problems& problems) const;
  std::optional<PortId> port(const Reference& reference, Problems& problems) const;
  std::optional<CableId> cable(const Reference& reference, Problems& problems) const;
  std::optional<StepId> step(const Name& name, Problems& problems) const;

  /// The devices that are known, in the order of `names`.
  std::vector<DeviceId> all_devices(const std::vector<Name>& names, Problems& problems) const;
  /// What stands for the parameter, or the integer; 0 after reporting a parameter that is not declared.
  Quantity quantity(const Value& value, Problems& problems) const;
};

}  // namespace cairn::syntax
