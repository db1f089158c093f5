#include "differential/shrink.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>

#include "differential/conditions.hpp"
#include "differential/render.hpp"

namespace cairn::differential {

namespace {

/// Tries changes one after the other and keeps those after which the draft still shows it.
class Shrinker {
 public:
  Shrinker(Draft draft, const Shows& shows) : draft_(std::move(draft)), shows_(shows) {}

  Draft run() {
    do {
      improved_ = false;
      shrink_properties();
      shrink_steps();
      shrink_devices();
      shrink_cables();
      shrink_faults();
      shrink_goal();
      shrink_conditions();
      shrink_settings();
      shrink_rules();
    } while (improved_);
    return draft_;
  }

 private:
  /// True when the change is kept. A change that changes nothing is not.
  bool attempt(const std::function<void(Draft&)>& change) {
    Draft changed = draft_;
    change(changed);
    if (render(changed) == render(draft_) || !shows_(changed)) return false;
    draft_ = changed;
    improved_ = true;
    return true;
  }

  /// Takes out elements of a list, last first, as long as that works.
  template <class List>
  void drop_each(List list) {
    for (std::size_t i = list(draft_).size(); i > 0; --i) {
      if (i > list(draft_).size()) continue;
      attempt([&](Draft& d) { list(d).erase(list(d).begin() + static_cast<std::ptrdiff_t>(i - 1)); });
    }
  }

  void shrink_properties() {
    // To ask for none means to ask for nearly all, so one stays: where it does not matter, one that needs no goal.
    attempt([](Draft& d) { d.properties = {{Property::no_refusal, 0}}; });
    for (std::size_t i = draft_.properties.size(); i > 0 && draft_.properties.size() > 1; --i) {
      attempt([&](Draft& d) { d.properties.erase(d.properties.begin() + static_cast<std::ptrdiff_t>(i - 1)); });
    }
    for (std::size_t i = 0; i < draft_.properties.size(); ++i) {
      if (draft_.properties[i].k > 1) attempt([&](Draft& d) { d.properties[i].k -= 1; });
    }
  }

  void shrink_steps() {
    for (std::size_t l = 0; l < all_lists(draft_.steps).size(); ++l) {
      for (std::size_t i = all_lists(draft_.steps)[l]->size(); i > 0; --i) {
        const auto at = static_cast<std::ptrdiff_t>(i - 1);
        const bool dropped = attempt([&](Draft& d) {
          auto& list = *all_lists(d.steps)[l];
          list.erase(list.begin() + at);
          drop_empty(d.steps);
        });
        if (dropped) break;  // lists may have gone: the next round goes on
        attempt([&](Draft& d) { flatten(*all_lists(d.steps)[l], at); });
      }
    }
    for (std::size_t i = 0; i < all_steps(draft_.steps).size(); ++i) {
      const auto step = [i](Draft& d) -> StepDraft& { return *all_steps(d.steps)[i]; };
      attempt([&](Draft& d) { step(d).via.reset(); });
      attempt([&](Draft& d) { step(d).after.clear(); });
      attempt([&](Draft& d) { step(d).id.reset(); });
      attempt([&](Draft& d) { step(d).as_mapping = false; });
      attempt([&](Draft& d) { step(d).stack_of = false; });
      drop_each([&](Draft & d) -> auto& { return step(d).devices; });
    }
  }

  /// An any-order becomes its branches, one after the other.
  static void flatten(std::vector<Item>& list, std::ptrdiff_t at) {
    const Item item = *(list.begin() + at);
    if (item.branches.empty()) return;
    auto place = list.erase(list.begin() + at);
    for (const auto& branch : item.branches)
      place = list.insert(place, branch.begin(), branch.end()) + static_cast<std::ptrdiff_t>(branch.size());
  }

  static bool is_of(const std::string& name, const std::string& device) {
    return name == device || name.starts_with(device + "/") || name.find("--" + device + "/") != std::string::npos;
  }

  static bool speaks_of(const ConditionDraft& condition, const std::string& device) {
    const auto in_name = [&](const std::string& name) { return is_of(name, device); };
    const auto in_part = [&](const ConditionDraft& part) { return speaks_of(part, device); };
    return std::any_of(condition.names.begin(), condition.names.end(), in_name) ||
           std::any_of(condition.parts.begin(), condition.parts.end(), in_part);
  }

  static bool speaks_of(const StepDraft& step, const std::string& device) {
    return is_of(step.subject, device) || (step.via && *step.via == device) ||
           std::find(step.devices.begin(), step.devices.end(), device) != step.devices.end() ||
           speaks_of(step.condition, device);
  }

  static void drop_steps(std::vector<Item>& items, const std::function<bool(const StepDraft&)>& which) {
    std::erase_if(items, [&](const Item& item) { return item.branches.empty() && which(item.step); });
    for (Item& item : items) {
      for (auto& branch : item.branches) drop_steps(branch, which);
    }
    drop_empty(items);
  }

  /// With everything that is of the device or speaks of it.
  static void drop_device(Draft& d, const std::string& name) {
    std::erase_if(d.devices, [&](const DeviceDraft& device) { return device.name == name; });
    while (true) {
      const auto cable = std::find_if(d.cables.begin(), d.cables.end(), [&](const CableDraft& c) {
        return device_of(c.a) == name || device_of(c.b) == name;
      });
      if (cable == d.cables.end()) break;
      drop_cable(d, cable);
    }
    if (d.stack) std::erase(d.stack->members, name);
    if (d.stack && d.stack->members.empty()) d.stack.reset();
    if (d.stack && d.stack->primary == name) d.stack->primary = d.stack->members.front();
    if (d.keep) std::erase(*d.keep, name);
    if (d.goal) std::erase(d.goal->stack, name);
    if (d.goal && d.goal->stack.empty()) d.goal.reset();
    if (d.goal && d.goal->primary == name) d.goal->primary.reset();
    if (d.goal && d.goal->where && speaks_of(*d.goal->where, name)) d.goal->where.reset();
    drop_steps(d.steps, [&](const StepDraft& step) { return speaks_of(step, name); });
  }

  /// With the steps that handle it.
  static void drop_cable(Draft& d, std::vector<CableDraft>::iterator place) {
    const std::string name = place->name();
    d.cables.erase(place);
    drop_steps(d.steps, [&](const StepDraft& step) { return step.subject == name; });
  }

  void shrink_devices() {
    for (const std::string& name : device_names(draft_)) attempt([&](Draft& d) { drop_device(d, name); });
    attempt([](Draft& d) { d.stack.reset(); });
    if (draft_.stack) drop_each([](Draft & d) -> auto& { return d.stack->members; });
    attempt([](Draft& d) { d.keep.reset(); });
    if (draft_.keep) drop_each([](Draft & d) -> auto& { return *d.keep; });
    for (std::size_t i = 0; i < draft_.devices.size(); ++i) {
      drop_each([i](Draft & d) -> auto& { return d.devices[i].ports; });
    }
  }

  void shrink_cables() {
    drop_each([](Draft & d) -> auto& { return d.cables; });
    for (std::size_t i = 0; i < draft_.cables.size(); ++i) {
      attempt([i](Draft& d) { drop_cable(d, d.cables.begin() + static_cast<std::ptrdiff_t>(i)); });
      if (i < draft_.cables.size()) attempt([i](Draft& d) { d.cables[i].plugged.reset(); });
    }
  }

  void shrink_faults() {
    for (std::int64_t FaultBudget::*kind :
         {&FaultBudget::cable_breaks, &FaultBudget::crashes, &FaultBudget::omissions, &FaultBudget::late_starts}) {
      while (draft_.faults.*kind > 0 && attempt([&](Draft& d) { d.faults.*kind -= 1; })) {
      }
    }
    attempt([](Draft& d) { d.faults.mends = false; });
  }

  void shrink_goal() {
    attempt([](Draft& d) { d.goal.reset(); });
    if (!draft_.goal) return;
    attempt([](Draft& d) { d.goal->where.reset(); });
    attempt([](Draft& d) { d.goal->primary.reset(); });
    attempt([](Draft& d) { d.goal->saved.reset(); });
    drop_each([](Draft & d) -> auto& { return d.goal->stack; });
  }

  void shrink_conditions() {
    for (std::size_t i = 0; i < all_conditions(draft_).size(); ++i) {
      for (std::size_t part = 0; part < all_conditions(draft_)[i]->parts.size(); ++part) {
        attempt([&](Draft& d) {
          ConditionDraft& whole = *all_conditions(d)[i];
          const ConditionDraft kept = whole.parts[part];
          whole = kept;
        });
      }
      attempt([&](Draft& d) {
        ConditionDraft& whole = *all_conditions(d)[i];
        if (whole.word != "up") whole = atom("up", {d.devices.front().name});
      });
    }
  }

  void shrink_settings() {
    for (std::size_t i = 0; i < draft_.devices.size(); ++i) {
      const auto reset = [&](auto field) { attempt([&](Draft& d) { (d.devices[i].*field).reset(); }); };
      reset(&DeviceDraft::address);
      reset(&DeviceDraft::on);
      reset(&DeviceDraft::number);
      reset(&DeviceDraft::next_number);
      reset(&DeviceDraft::priority);
      reset(&DeviceDraft::startup_priority);
      reset(&DeviceDraft::tenure);
      reset(&DeviceDraft::software);
      for (std::size_t p = 0; p < draft_.devices[i].ports.size(); ++p) {
        const auto reset_port = [&](auto field) { attempt([&](Draft& d) { (d.devices[i].ports[p].*field).reset(); }); };
        reset_port(&PortDraft::enabled);
        reset_port(&PortDraft::startup_enabled);
        reset_port(&PortDraft::side);
        reset_port(&PortDraft::startup_side);
        reset_port(&PortDraft::operational);
      }
    }
  }

  /// Towards the rules with the least behind them.
  void shrink_rules() {
    drop_each([](Draft & d) -> auto& { return d.platform.election; });
    attempt([](Draft& d) { d.max_members_stated = false; });
    attempt([](Draft& d) { d.platform.number_takes = Takes::at_once; });
    attempt([](Draft& d) { d.platform.priority_takes = Takes::at_once; });
    attempt([](Draft& d) { d.platform.settings_follow = SettingsFollow::device; });
    attempt([](Draft& d) { d.platform.side_takes = SideTakes::at_once; });
    attempt([](Draft& d) { d.platform.side_needs_disabled = false; });
    attempt([](Draft& d) { d.platform.facing = Facing::any; });
    attempt([](Draft& d) { d.platform.side_leads_to = SideLeadsTo::any; });
    attempt([](Draft& d) { d.platform.orphans = Orphans::carry_on; });
    attempt([](Draft& d) { d.platform.software = Software::any; });
    attempt([](Draft& d) { d.platform.factory.enabled = true; });
    attempt([](Draft& d) { d.platform.factory.side = Side::none; });
  }

  Draft draft_;
  const Shows& shows_;
  bool improved_ = false;
};

}  // namespace

Draft shrink(Draft draft, const Shows& shows) {
  return Shrinker(std::move(draft), shows).run();
}

std::string keep_found(const Draft& draft, const std::string& directory, const std::string& name,
                       const std::string& why) {
  std::filesystem::create_directories(directory);
  const std::string path = directory + "/" + name + ".yaml";
  std::string comment = why;
  std::replace(comment.begin(), comment.end(), '\n', ' ');
  std::ofstream(path) << "# " << comment << "\n" << render(draft);
  return path;
}

}  // namespace cairn::differential
