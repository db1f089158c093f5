// proofs/rank.md
#include "any_state.hpp"

namespace cairn::proofs {

using system::SymbolicState;
using system::Term;
using system::Terms;

namespace {

constexpr const char* page = "rank.md";
using Election = std::vector<ElectionKey>;

// All orders of all subsets of the three keys.
std::vector<Election> elections() {
  std::vector<Election> all{{}};
  for (std::size_t i = 0; i < all.size(); ++i) {
    for (const ElectionKey key : {ElectionKey::priority, ElectionKey::tenure, ElectionKey::number}) {
      if (std::find(all[i].begin(), all[i].end(), key) != all[i].end()) continue;
      Election longer = all[i];
      longer.push_back(key);
      all.push_back(std::move(longer));
    }
  }
  return all;
}

// Of any two devices exactly one outranks the other, and whoever outranks a device outranks all that it outranks.
Term is_total_order(Terms& terms, const SymbolicState& s) {
  std::vector<Term> demands;
  const auto above = [&](DeviceId d, DeviceId e) { return outranks(terms, s, d, e); };
  for_each_device(s.space(), [&](DeviceId d) {
    for_each_device(s.space(), [&](DeviceId e) {
      if (e == d) return;
      demands.push_back(terms.differ(above(d, e), above(e, d)));
      for_each_device(s.space(), [&](DeviceId f) {
        if (f == d || f == e) return;
        demands.push_back(terms.implies(terms.both(above(d, e), above(e, f)), above(d, f)));
      });
    });
  });
  return terms.all(demands);
}

// By every election order at once.
Term always_total_order(int devices, Terms& terms, const SymbolicState& s) {
  std::vector<Term> demands;
  for (const Election& election : elections()) {
    const AnyStack other(devices, {.election = election});
    SymbolicState same(other.space);
    for (system::VariableId v = 0; v < other.space.size(); ++v) same[v] = s[v];
    demands.push_back(is_total_order(terms, same));
  }
  return terms.all(demands);
}

Given all_running(Terms& terms, const SymbolicState& s) {
  std::vector<Term> demands;
  for_each_device(s.space(), [&](DeviceId d) { demands.push_back(running(terms, s, d)); });
  return {"Every device is up or held.", terms.all(demands), "running"};
}

Given strict_partial_order(Terms& terms, const SymbolicState& s) {
  std::vector<Term> demands;
  for_each_device(s.space(), [&](DeviceId d) {
    for_each_device(s.space(), [&](DeviceId e) {
      if (e == d) return;
      demands.push_back(!terms.both(s.senior(d, e), s.senior(e, d)));
      for_each_device(s.space(), [&](DeviceId f) {
        if (f == d || f == e) return;
        demands.push_back(terms.implies(terms.both(s.senior(d, e), s.senior(e, f)), s.senior(d, f)));
      });
    });
  });
  return {"Seniority is a strict partial order.", terms.all(demands)};
}

}  // namespace

void rank(const Questions& questions) {
  AnyStack stack(questions.devices(), {});
  Terms& terms = stack.terms;
  const system::FreeState any = stack.any();
  const system::Assertion claim{"by each of the sixteen election lists, rank is a strict total order.",
                                always_total_order(questions.devices(), terms, any.state)};
  const Given running = all_running(terms, any.state);
  questions.ask(terms, {"rank", page, {a_state(terms, any), running}, claim});
  questions.show(
      terms, "rank.without-weak-order", page,
      "The lemma, with seniority no more than a strict partial order. There is such a state: that two devices have "
      "been up equally long has to be an equivalence.",
      {{"Every variable has one value.", any.typing}, running, strict_partial_order(terms, any.state)},
      {"This is false: " + claim.says, !claim.term});
}

}  // namespace cairn::proofs
