#include "metamorphic/relations.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "differential/conditions.hpp"
#include "metamorphic/changes.hpp"

namespace cairn::metamorphic {

using differential::Draft;
using differential::Item;
using differential::Random;

namespace {

bool reorder_cables(Random& random, Draft& draft) {
  random.shuffle(draft.cables);
  return draft.cables.size() > 1;
}

/// The file order of devices counts in the addresses of those that state none, so all are stated first.
bool reorder_devices(Random& random, Draft& draft) {
  write_defaults(draft);
  random.shuffle(draft.devices);
  return draft.devices.size() > 1;
}

bool enlarge_budget(Random& random, Draft& draft) {
  switch (random.below(5)) {
    case 0:
      draft.faults.cable_breaks += 1;
      break;
    case 1:
      draft.faults.crashes += 1;
      break;
    case 2:
      draft.faults.omissions += 1;
      break;
    case 3:
      draft.faults.late_starts += 1;
      break;
    default:
      draft.faults.mends = true;
      break;
  }
  return true;
}

bool keep_more(Random& random, Draft& draft) {
  if (!draft.keep) return false;
  const std::string& more = random.pick(draft.devices).name;
  if (std::find(draft.keep->begin(), draft.keep->end(), more) != draft.keep->end()) return false;
  draft.keep->push_back(more);
  return true;
}

/// 6.8 where links do not depend on other cables: who loses more is together no longer.
bool lose_more(Random&, Draft& draft) {
  if (draft.platform.side_leads_to != SideLeadsTo::any) return false;
  for (AskedProperty& asked : draft.properties) asked.k += asked.property == Property::tolerates_loss ? 1 : 0;
  return true;
}

bool wrap_one_branch(Random& random, Draft& draft) {
  auto& list = *random.pick(all_lists(draft.steps));
  if (list.empty()) return false;
  Item& item = random.pick(list);
  Item fork;
  fork.branches = {{item}};
  item = fork;
  return true;
}

/// The places of steps change with it, but random models call steps by their ids.
bool reorder_branches(Random&, Draft& draft) {
  for (auto* list : all_lists(draft.steps)) {
    for (Item& item : *list) {
      if (item.branches.size() < 2) continue;
      std::rotate(item.branches.begin(), item.branches.begin() + 1, item.branches.end());
      return true;
    }
  }
  return false;
}

bool add_true_check(Random&, Draft& draft) {
  Item check;
  check.step.verb = Verb::check;
  const auto up = differential::atom("up", {draft.devices.front().name});
  check.step.condition = {.word = "implies", .names = {}, .sign = {}, .value = {}, .parts = {up, up}};
  draft.steps.push_back(check);
  return true;
}

}  // namespace

const std::vector<Relation>& relations() {
  static const std::vector<Relation> all = {
      {"devices-renamed", Promise::identical, rename_devices},
      {"defaults-written", Promise::identical, [](Random&, Draft& d) { return write_defaults(d); }},
      {"consoles-written", Promise::identical, [](Random&, Draft& d) { return write_consoles(d); }},
      {"east-and-west-exchanged", Promise::identical, [](Random&, Draft& d) { return exchange_sides(d); }},
      {"numbers-moved", Promise::identical, [](Random&, Draft& d) { return move_numbers(d, 3); }},
      {"cables-turned", Promise::identical, [](Random&, Draft& d) { return turn_cables(d); }},
      {"branch-of-one", Promise::identical, wrap_one_branch},
      {"cables-reordered", Promise::same_lengths, reorder_cables},
      {"devices-reordered", Promise::same_lengths, reorder_devices},
      {"branches-reordered", Promise::same_lengths, reorder_branches},
      {"true-check-added", Promise::same_verdicts, add_true_check},
      {"budget-enlarged", Promise::harder, enlarge_budget},
      {"more-to-keep", Promise::harder, keep_more},
      {"more-to-lose", Promise::no_better, lose_more},
  };
  return all;
}

namespace {

std::string compare(Promise promise, const PropertyVerdict& before, const PropertyVerdict& after) {
  if (promise == Promise::harder || promise == Promise::no_better) {
    if (before.verdict != Verdict::refuted || after.verdict == Verdict::undecided) return {};
    if (after.verdict == Verdict::proved) return "refuted before, proved after";
    if (promise == Promise::no_better || after.events.size() <= before.events.size()) return {};
    return fmt::format("a refutation of {} events became one of {}", before.events.size(), after.events.size());
  }
  if (before.verdict != after.verdict) {
    return fmt::format("{} before, {} after", name_of(before.verdict), name_of(after.verdict));
  }
  if (promise == Promise::same_verdicts || before.verdict == Verdict::undecided) return {};
  if (before.vacuous != after.vacuous)
    return fmt::format("vacuous: \"{}\" before, \"{}\" after", before.vacuous, after.vacuous);
  if (before.verdict == Verdict::proved && before.explored != after.explored) {
    return fmt::format("{} states before, {} after", before.explored, after.explored);
  }
  if (before.events.size() != after.events.size()) {
    return fmt::format("a refutation of {} events became one of {}", before.events.size(), after.events.size());
  }
  if (promise == Promise::identical && before.events != after.events) return "another refutation of the same length";
  return {};
}

}  // namespace

std::string broken(Promise promise, const Report& before, const Report& after) {
  for (std::size_t i = 0; i < after.properties.size(); ++i) {
    const std::string how = compare(promise, before.properties[i], after.properties[i]);
    if (!how.empty()) return std::string(name_of(before.properties[i].asked.property)) + ": " + how;
  }
  return {};
}

}  // namespace cairn::metamorphic
