/// \file
/// The three documents as read: shapes checked, names not yet looked up, `$name` where a template has one.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "cairn/model.hpp"
#include "syntax/condition_parser.hpp"
#include "syntax/reader.hpp"
#include "syntax/reference.hpp"

namespace cairn::syntax {

/// A platform has no names to look up and no place for a parameter: it is read into the Platform itself.
struct PlatformDraft {
  Platform platform;
  bool numbers_known = false;     ///< False: nothing can be said about ranges of numbers.
  bool priorities_known = false;  ///< The same of priorities.
};

struct PortDraft {
  Name name;
  std::optional<bool> enabled, startup_enabled;
  std::optional<Side> side, startup_side, operational_side;
};

struct DeviceDraft {
  Name name;
  std::optional<Located<std::uint64_t>> address;  ///< Nothing: given by cairn, or open.
  std::optional<Place> open_address;              ///< `address: any`
  bool on = true;
  std::optional<Value> number, next_number, priority, startup_priority, tenure;
  std::string software = "1";
  std::vector<PortDraft> ports;
  bool sound = true;  ///< False: a part could not be read, and what stands in its place is not what was meant.
};

struct CableDraft {
  std::optional<Reference> ends;  ///< Nothing: not readable, reported.
  std::string written;            ///< The ends as the site writes them.
  std::optional<Name> id;
  bool plugged = true;
};

struct StackDraft {
  std::optional<Name> primary;
  std::vector<Name> members;
  bool members_known = false;
};

struct SiteDraft {
  std::string title;
  const Node* platform = nullptr;  ///< A path or a platform in place; null when it is missing.
  bool devices_known = false;      ///< False: no name can be looked up.
  std::vector<DeviceDraft> devices;
  std::vector<CableDraft> cables;
  std::optional<StackDraft> stack;
};

struct StepDraft {
  Place place;               ///< of the verb
  std::optional<Verb> verb;  ///< Nothing: not readable, reported; the step keeps its place among the others.
  std::optional<Name> id;
  std::vector<Name> after;
  std::string note;
  std::optional<Name> via;
  std::optional<Name> device;               ///< power-on, power-off, restart, set-number, set-priority
  std::optional<Reference> port;            ///< enable, disable, set-side, clear-side
  std::optional<Reference> cable;           ///< plug, unplug
  std::vector<Name> devices;                ///< apply, save
  std::optional<Name> stack_of;             ///< apply, save
  std::optional<Value> value;               ///< set-number, set-priority
  Side side = Side::none;                   ///< set-side
  std::optional<ConditionDraft> condition;  ///< await, check
  std::string condition_text;
};

/// What stands at one place of a procedure: a step, or branches in any order.
struct Block;
struct BlockItem {
  std::size_t step = 0;         ///< Its place in ProcedureDraft::steps, where there are no branches.
  std::vector<Block> branches;  ///< `any-order`
};
/// Items one after another.
struct Block {
  std::vector<BlockItem> items;
};

struct ParameterDraft {
  Name name;
  Range range;
};

struct GoalDraft {
  Place place;
  std::optional<Place> stack_place;  ///< Nothing: there is no `stack`.
  std::vector<Name> stack;
  std::optional<Name> primary;
  bool saved = false;
  std::optional<ConditionDraft> where;
  std::string where_text;
};

struct PropertyDraft {
  AskedProperty asked;
  Place place;
};

struct ProcedureDraft {
  Place place;  ///< of the key `procedure`, or where the document begins
  std::string title;
  const Node* site = nullptr;  ///< A path or a site in place; null when it is missing.
  std::vector<ParameterDraft> parameters;
  std::optional<AssumptionDraft> assume;
  std::optional<Place> assume_place;  ///< where there is one, readable or not
  std::optional<Located<std::vector<Name>>> keep;
  std::vector<StepDraft> steps;  ///< In file order, depth first.
  Block order;
  std::optional<GoalDraft> goal;
  FaultBudget faults;
  std::optional<std::vector<PropertyDraft>> properties;
};

}  // namespace cairn::syntax
