/// \file
/// A model: one platform, one site, one procedure, with every name resolved and every default filled in.
/// Loading (cairn/load.hpp) makes it; after that it never changes. Section numbers are those of docs/semantics.md.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "cairn/condition.hpp"
#include "cairn/diagnostic.hpp"
#include "cairn/ids.hpp"
#include "cairn/property.hpp"
#include "cairn/unknowns.hpp"

namespace cairn {

/// When a member number or a priority that is set comes into force.
enum class Takes : std::uint8_t { at_restart, at_once };
/// What priority and port settings are filed under (5.f).
enum class SettingsFollow : std::uint8_t { device, number };
/// When a side that is set becomes operational.
enum class SideTakes : std::uint8_t { on_apply, at_once };
/// Which operational sides form a link (3.b).
enum class Facing : std::uint8_t { opposite, any };
/// Whether a side that leads to two neighbours still forms links (3.b).
enum class SideLeadsTo : std::uint8_t { one_neighbour, any };
/// What devices do that are cut off from their leader (4.2.a).
enum class Orphans : std::uint8_t { carry_on, restart };
/// Whether software tags must be equal for a link to form (3.b).
enum class Software : std::uint8_t { must_match, any };
/// One key of the election order (4.4); the address is always compared last.
enum class ElectionKey : std::uint8_t { priority, tenure, number };

/// What a device has that was never configured.
struct Factory {
  std::int64_t number = 0;
  std::int64_t priority = 0;
  bool enabled = false;
  Side side = Side::none;
};

/// The rules of a device family (semantics 7). Nothing about a family is assumed in silence.
struct Platform {
  std::string title;
  Range numbers;     ///< 0 <= low <= high
  Range priorities;  ///< the same
  Factory factory;
  Takes number_takes = Takes::at_restart;
  Takes priority_takes = Takes::at_restart;
  SettingsFollow settings_follow = SettingsFollow::device;
  SideTakes side_takes = SideTakes::on_apply;
  bool side_needs_disabled = false;
  Facing facing = Facing::opposite;
  SideLeadsTo side_leads_to = SideLeadsTo::one_neighbour;
  Orphans orphans = Orphans::carry_on;
  Software software = Software::must_match;
  std::vector<ElectionKey> election;
  std::int64_t max_members = 1;
};

/// A stack-capable port as the site file has it (2.b).
struct Port {
  std::string name;  ///< As written, with its device: "yard-1/t2".
  DeviceId device;
  bool enabled = false;
  bool startup_enabled = false;
  Side side = Side::none;
  Side startup_side = Side::none;
  Side operational_side = Side::none;
  bool enabled_stated = false;  ///< False: `enabled` is the platform's factory value.
  bool side_stated = false;     ///< False: `side` is the platform's factory value.
};

/// A switch as the site file has it (1.a, 2.a).
struct Device {
  std::string name;
  std::uint64_t address = 0;    ///< 48 bits, compared unsigned; 0 where it is open (Unknowns::addresses).
  bool address_stated = false;  ///< False: given by cairn, in file order.
  bool on = true;
  Quantity number = 0;
  Quantity next_number = 0;
  Quantity priority = 0;
  Quantity startup_priority = 0;
  Quantity tenure = 0;  ///< Larger has been up longer.
  bool tenure_stated = false;
  bool number_stated = false;    ///< False: `number` is the platform's factory value.
  bool priority_stated = false;  ///< False: `priority` is the platform's factory value.
  std::string software;
  std::vector<PortId> ports;  ///< In file order.
};

/// A cable (1.b).
struct Cable {
  std::string name;  ///< Its id where it has one, else its ends as the site writes them.
  std::string ends;  ///< "yard-1/t2--yard-2/t1", as the site writes them.
  PortId a;
  PortId b;
  bool plugged = true;
};

/// The stack that runs at the start (1.c, 2.h).
struct RunningStack {
  DeviceId primary;
  std::vector<DeviceId> members;  ///< In file order of the list; the primary is one of them.
};

struct Site {
  std::string title;
  std::vector<Device> devices;
  std::vector<Port> ports;  ///< Ports of one device stand together.
  std::vector<Cable> cables;
  std::optional<RunningStack> stack;
};

/// What a step does (5.1 to 5.14).
enum class Verb : std::uint8_t {
  power_on,
  power_off,
  restart,
  set_number,
  set_priority,
  enable,
  disable,
  set_side,
  clear_side,
  apply,
  save,
  plug,
  unplug,
  await,
  check,
};

/// One step. Which fields count depends on the verb.
struct Step {
  std::string id;  ///< Its `id`, or its place: "s7".
  Verb verb = Verb::await;
  DeviceId device;                ///< The device that is handled; of a port step, the port's device.
  DeviceId via;                   ///< The console of a configuring step (5.h); nothing where the verb takes none,
                                  ///< and for `apply` and `save` without `via`: each device's own.
  PortId port;                    ///< enable, disable, set-side, clear-side
  CableId cable;                  ///< plug, unplug
  Quantity value = 0;             ///< set-number, set-priority: as written, in range or not
  Side side = Side::none;         ///< set-side; none for clear-side
  std::vector<DeviceId> devices;  ///< apply, save: the devices named; empty where `stack_of` is given
  DeviceId stack_of;              ///< apply, save: this device and all together with it (5.g)
  Condition condition;            ///< await, check
  std::string condition_text;     ///< await, check: the condition as written
  std::vector<StepId> after;      ///< The steps it must directly follow; all others follow from these.
  std::string note;
  Span span;  ///< Where the step stands in the procedure file.
};

/// What must be reached (6.b).
struct Goal {
  std::vector<DeviceId> stack;  ///< Not empty.
  DeviceId primary;             ///< Nothing where the goal names none.
  bool saved = false;
  std::optional<Condition> where;
  std::string where_text;
};

/// How many faults of each kind may strike (5.c).
struct FaultBudget {
  std::int64_t cable_breaks = 0;
  std::int64_t crashes = 0;
  std::int64_t omissions = 0;
  std::int64_t late_starts = 0;
  bool mends = false;

  /// True when no fault can strike at all. (Without breaks there is nothing to mend.)
  [[nodiscard]] bool none() const { return cable_breaks == 0 && crashes == 0 && omissions == 0 && late_starts == 0; }
  bool operator==(const FaultBudget&) const = default;
};

struct Procedure {
  std::string title;
  std::vector<DeviceId> keep;  ///< In the site's order; defaults filled in (6).
  bool keep_stated = false;
  std::vector<Step> steps;  ///< In file order, depth first.
  std::optional<Goal> goal;
  FaultBudget faults;
  std::vector<AskedProperty> properties;  ///< In the order asked for; defaults filled in.
};

/// The three documents joined.
struct Model {
  Platform platform;
  Site site;
  Procedure procedure;
  Unknowns unknowns;               ///< What it leaves open, where it is a template.
  std::vector<std::string> files;  ///< Every file read, the procedure first, each as named.

  [[nodiscard]] const Device& operator[](DeviceId d) const { return site.devices[d.value]; }
  [[nodiscard]] const Port& operator[](PortId p) const { return site.ports[p.value]; }
  [[nodiscard]] const Cable& operator[](CableId c) const { return site.cables[c.value]; }
  [[nodiscard]] const Step& operator[](StepId s) const { return procedure.steps[s.value]; }

  /// The address of d, or what stands for it where it is open (9.b).
  [[nodiscard]] Quantity address(DeviceId d) const {
    for (std::size_t i = 0; i < unknowns.addresses.size(); ++i) {
      if (unknowns.addresses[i] == d) return unknown(unknowns.address(i));
    }
    return static_cast<Quantity>((*this)[d].address);
  }
};

}  // namespace cairn
