/// \file
/// A model as somebody is writing it: names still names, defaults still left out, mistakes allowed. Random models are
/// made, spoiled, changed and shrunk in this form, written as YAML, and read back by the library's own reader.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "cairn/model.hpp"

namespace cairn::differential {

/// One side of a comparison in `assume`: a quantity, or the address of a device.
struct AssumedDraft {
  Quantity quantity = 0;
  std::string address_of;
};
struct AssumptionDraft {
  AssumedDraft left;
  std::string sign;
  AssumedDraft right;
};

struct PortDraft {
  std::string name;  ///< With its device: "a/t1".
  std::optional<bool> enabled, startup_enabled;
  std::optional<Side> side, startup_side, operational;
};

struct DeviceDraft {
  std::string name;
  std::optional<std::string> address;
  std::optional<bool> on;
  std::optional<std::int64_t> number, next_number, priority, startup_priority, tenure;
  std::optional<std::string> software;
  std::vector<PortDraft> ports;
};

struct CableDraft {
  std::string a, b;  ///< Ports.
  std::optional<bool> plugged;
  std::optional<std::string> id;

  [[nodiscard]] std::string ends() const { return a + "--" + b; }
  [[nodiscard]] std::string name() const { return id ? *id : ends(); }
};

struct StackDraft {
  std::string primary;
  std::vector<std::string> members;
};

/// A condition: an atom with its word, its names and perhaps a comparison; or `not`, `and`, `or`, `implies` of parts.
struct ConditionDraft {
  std::string word;
  std::vector<std::string> names;
  std::string sign;
  std::string value;
  std::vector<ConditionDraft> parts;
};

struct StepDraft {
  Verb verb = Verb::save;
  std::string subject;               ///< The device, port or cable that the verb takes; of `apply` and `save` unused.
  std::vector<std::string> devices;  ///< apply, save
  bool stack_of = false;             ///< apply, save: devices[0] and all together with it.
  std::int64_t to = 0;
  Side side = Side::none;
  ConditionDraft condition;
  std::optional<std::string> via, id;
  std::vector<std::string> after;
  bool as_mapping = false;  ///< Written with its keys even where the short form says everything.
};

/// A step, or an any-order of branches where there are branches.
struct Item {
  StepDraft step;
  std::vector<std::vector<Item>> branches;
};

struct GoalDraft {
  std::vector<std::string> stack;
  std::optional<std::string> primary;
  std::optional<bool> saved;
  std::optional<ConditionDraft> where;
};

/// A template where it has parameters, open addresses ("any") or assumptions. Where a number may stand, the code of a
/// parameter may (cairn/quantity.hpp); parameters are called p0, p1, and so on.
struct Draft {
  std::vector<Range> parameters;
  std::vector<std::vector<AssumptionDraft>> assume;  ///< All of these, of each one at least.
  Platform platform;
  bool max_members_stated = false;
  std::vector<DeviceDraft> devices;
  std::vector<CableDraft> cables;
  std::optional<StackDraft> stack;
  std::optional<std::vector<std::string>> keep;
  std::vector<Item> steps;
  std::optional<GoalDraft> goal;
  FaultBudget faults;
  std::vector<AskedProperty> properties;
};

/// A port of which nothing is stated.
PortDraft factory_port(const std::string& name);

/// "a" of "a/t1".
std::string device_of(const std::string& port);

DeviceDraft* find_device(Draft& draft, const std::string& name);
PortDraft* find_port(Draft& draft, const std::string& name);

/// Every port name, in file order.
std::vector<std::string> port_names(const Draft& draft);
std::vector<std::string> device_names(const Draft& draft);

/// Every step, depth first.
std::vector<StepDraft*> all_steps(std::vector<Item>& items);

/// The lists of items, depth first: the procedure itself, then every branch.
std::vector<std::vector<Item>*> all_lists(std::vector<Item>& items);

/// Takes out branches and any-orders that became empty: format.md allows neither.
void drop_empty(std::vector<Item>& items);

/// Every condition that occurs in the steps and the goal.
std::vector<ConditionDraft*> all_conditions(Draft& draft);

}  // namespace cairn::differential
