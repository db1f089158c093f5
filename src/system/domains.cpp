#include "system/domains.hpp"

#include <algorithm>
#include <utility>

#include "system/build.hpp"

namespace cairn::system {

using Kind = Variable::Kind;

namespace {

bool insert(std::vector<std::int64_t>& values, std::int64_t value) {
  const auto place = std::lower_bound(values.begin(), values.end(), value);
  if (place != values.end() && *place == value) return false;
  values.insert(place, value);
  return true;
}

/// Domains that grow by what single events, and single passes, lead to. Each event sees at once what those before it
/// led to, so that a procedure is walked through in few rounds; the whole relation, which is dear, is built at the end.
class Growth {
 public:
  Growth(const Space& space, Domains& domains)
      : space_(space), domains_(domains), events_(events_of(space)), now_(space) {
    for (VariableId v = 0; v < space.size(); ++v) free(v);
  }

  void run() {
    do {
      while (grows_by_events()) {
      }
    } while (grows_by_a_pass());
  }

 private:
  void free(VariableId v) {
    now_[v] = free_value(domains_[v], [this](std::int64_t) { return terms_.variable({}); });
  }

  bool grows_by_events() {
    bool grown = false;
    const Derived derived = derive(terms_, now_);  // a link that comes about on the way waits for the next round
    for (const Event& event : events_) {
      if (may_happen(terms_, now_, derived, event) == never) continue;
      grown = take_in(take(terms_, now_, derived, event)) || grown;
    }
    return grown;
  }

  bool grows_by_a_pass() {
    const Derived derived = derive(terms_, now_);
    return take_in(carry_out(terms_, now_, derived, plan_pass(terms_, now_, derived)));
  }

  bool take_in(const SymbolicState& after) {
    bool grown = false;
    for (VariableId v = 0; v < space_.size(); ++v) {
      if (after[v] == now_[v]) continue;
      bool here = false;
      for (const Value::Case& each : after[v].cases()) here = insert(domains_[v], each.value) || here;
      if (here) free(v);
      grown = grown || here;
    }
    return grown;
  }

  const Space& space_;
  Domains& domains_;
  std::vector<Event> events_;
  Terms terms_;
  SymbolicState now_;
};

// Adds what events lead to until they lead nowhere else.
Domains closed(const Model& model, const FaultBudget& budget, Domains domains) {
  const Space space(model, budget);
  while (true) {
    Growth(space, domains).run();
    const System system(model, budget, domains);
    bool grown = false;
    for (VariableId v = 0; v < space.size(); ++v) {
      for (const Value::Case& each : system.next[v].cases()) grown = insert(domains[v], each.value) || grown;
    }
    if (!grown) return domains;
  }
}

}  // namespace

Domains static_domains(const Model& model, const FaultBudget& budget) {
  const Space space(model, budget);
  Terms constants;
  const SymbolicState start = settle_to_the_end(constants, initial_state(space)).end;
  Domains domains(space.size());
  for (VariableId v = 0; v < space.size(); ++v) domains[v] = {start[v].cases().front().value};
  return closed(model, budget, std::move(domains));
}

namespace {

// Every device may have the number, or the priority, of any other.
void share(const Space& space, Domains& domains, Kind in_force, Kind next) {
  std::vector<std::int64_t> all;
  const auto for_each = [&](auto visit) {
    for_each_device(space, [&](DeviceId d) {
      for (const Kind kind : {in_force, next}) visit(domains[space.of_device(kind, d)]);
    });
  };
  for_each([&](const std::vector<std::int64_t>& values) {
    for (const std::int64_t value : values) insert(all, value);
  });
  for_each([&](std::vector<std::int64_t>& values) { values = all; });
}

}  // namespace

Domains stated_domains(const Model& model, const FaultBudget& budget) {
  const Space space(model, budget);
  Domains domains = static_domains(model, budget);
  while (true) {
    const Domains before = domains;
    share(space, domains, Kind::number, Kind::next_number);
    share(space, domains, Kind::priority, Kind::startup_priority);
    if (domains == before) return domains;
    domains = closed(model, budget, std::move(domains));
  }
}

}  // namespace cairn::system
