#include "naive/settle.hpp"

#include <stdexcept>

#include "naive/derived.hpp"

namespace cairn::naive {

namespace {

DeviceId best_ranked(const Model& model, const World& world, const std::set<DeviceId>& candidates) {
  DeviceId best = *candidates.begin();
  for (const DeviceId d : candidates) {
    if (outranks(model, world, d, best)) best = d;
  }
  return best;
}

/// What 4.1 and 4.2 say of one class.
class ClassPass {
 public:
  ClassPass(const Model& model, const World& before, const std::set<DeviceId>& members)
      : model_(model), before_(before), members_(members) {
    for (const DeviceId d : members) {
      if (before[d].leader == d) leaders_.insert(d);
      (fresh(d) ? fresh_ : admitted_).insert(d);
    }
  }

  void run(Pass& pass) const {
    std::set<DeviceId> stay;
    for (const DeviceId d : members_) {
      if (yields(d)) {
        hold(pass, d);
      } else {
        stay.insert(d);
      }
    }
    if (!leaders_.empty()) {
      for (const DeviceId d : stay) {
        if (fresh(d)) pass.after[d].leader = winner();                     // 4.2.c
        if (!fresh(d) && before_[d].leader != winner()) restart(pass, d);  // 4.2.d
      }
    } else if (admitted_.empty()) {  // 4.2.b
      const DeviceId elected = best_ranked(model_, before_, fresh_);
      for (const DeviceId d : stay) pass.after[d].leader = elected;
    } else if (model_.platform.orphans == Orphans::carry_on) {  // 4.2.a
      const DeviceId elected = best_ranked(model_, before_, admitted_);
      for (const DeviceId d : stay) pass.after[d].leader = elected;
    } else {  // 4.2.a
      for (const DeviceId d : stay) {
        if (!fresh(d)) restart(pass, d);
      }
    }
  }

 private:
  [[nodiscard]] bool fresh(DeviceId d) const { return !before_[d].leader; }
  [[nodiscard]] bool leader_in_class(DeviceId d) const { return members_.contains(before_[d].leader); }

  [[nodiscard]] DeviceId winner() const {
    // A device that others follow leads itself (6.d): where leaders are in the class, so is a leader present.
    if (leaders_.empty()) throw std::logic_error("Semantics 4.2: a leader is in a class and does not lead itself");
    return best_ranked(model_, before_, leaders_);
  }

  /// 4.1
  [[nodiscard]] bool yields(DeviceId d) const {
    for (const DeviceId e : members_) {
      if (e != d && before_[e].number == before_[d].number && yields_to(d, e)) return true;
    }
    return false;
  }

  [[nodiscard]] bool yields_to(DeviceId d, DeviceId e) const {
    if (fresh(d) && !fresh(e)) return true;                                    // 4.1.a
    if (fresh(d) && fresh(e) && outranks(model_, before_, e, d)) return true;  // 4.1.b
    if (fresh(d) || fresh(e)) return false;
    if (before_[d].leader != before_[e].leader && leader_in_class(d) && leader_in_class(e)) {
      return before_[d].leader != winner();  // 4.1.c
    }
    return !leader_in_class(d) && leader_in_class(e);  // 4.1.d, 4.1.e
  }

  static void hold(Pass& pass, DeviceId d) {  // 4.3.a
    pass.held.insert(d);
    pass.after[d].power = Power::held;
    pass.after[d].leader = DeviceId();
  }

  static void restart(Pass& pass, DeviceId d) {  // 4.3.b
    pass.restarted.insert(d);
    pass.after[d].power = Power::starting;
    pass.after[d].leader = DeviceId();
    forget_seniority(pass.after, d);
  }

  const Model& model_;
  const World& before_;
  const std::set<DeviceId>& members_;
  std::set<DeviceId> leaders_;   // 4.2: the leaders present
  std::set<DeviceId> fresh_;     // leader none
  std::set<DeviceId> admitted_;  // the others
};

}  // namespace

bool outranks(const Model& model, const World& world, DeviceId d, DeviceId e) {
  for (const ElectionKey key : model.platform.election) {
    switch (key) {
      case ElectionKey::priority:  // 4.4.a
        if (world[d].priority != world[e].priority) return world[d].priority > world[e].priority;
        break;
      case ElectionKey::tenure:  // 4.4.b
        if (world.senior.contains({d, e})) return true;
        if (world.senior.contains({e, d})) return false;
        break;
      case ElectionKey::number:  // 4.4.c
        if (world[d].number != world[e].number) return world[d].number < world[e].number;
        break;
    }
  }
  return model[d].address < model[e].address;  // 4.4.d
}

std::vector<Pass> settle(const Model& model, const World& world) {
  Pass pass{.before = world, .after = world, .held = {}, .restarted = {}};
  for (const auto& members : classes(model, world)) ClassPass(model, world, members).run(pass);
  std::vector<Pass> passes = {pass};
  if (pass.unsettled()) {
    for (Pass& next : settle(model, pass.after)) passes.push_back(std::move(next));
  }
  return passes;
}

}  // namespace cairn::naive
