// Facts drawn from what is left when orders are left out, or devices alike count once: they hold of all that was left
// out too.
#include <doctest/doctest.h>
#include <fmt/format.h>

#include <string>

#include "cairn/load.hpp"
#include "explore/explore.hpp"
#include "solver/fact.hpp"
#include "verify/told_proofs.hpp"

using namespace cairn;
using solver::Fact;

namespace {

enum class Then { joined, left };

// Technicians who prepare one spare device each, side by side; then all are cabled to one stack, one after another, or
// left for another night.
std::string lanes(int technicians, Then then) {
  std::string cables;
  std::string prepared;
  std::string joined;
  std::string names = "quay-1";
  std::string before = "quay-1";
  std::string devices = "    quay-1: {number: 1, priority: 200, ports: {w: {}, e: {side: east, enabled: true}}}\n";
  for (int i = 1; i <= technicians; ++i) {
    devices += fmt::format("    spare-{}: {{power: off, ports: {{w: {{}}, e: {{}}}}}}\n", i);
    if (then == Then::joined)
      cables += fmt::format("    {}/e--spare-{}/w: {{plugged: false, id: run-{}}}\n", before, i, i);
    prepared += fmt::format(
        "      - - power-on: spare-{0}\n        - await: up(spare-{0})\n"
        "        - set-number: {{device: spare-{0}, to: {1}}}\n        - set-side: {{port: spare-{0}/w, side: west}}\n"
        "        - set-side: {{port: spare-{0}/e, side: east}}\n        - enable: spare-{0}/w\n"
        "        - enable: spare-{0}/e\n        - save: spare-{0}\n        - restart: spare-{0}\n"
        "        - await: up(spare-{0}) and number(spare-{0}) = {1}\n",
        i, i + 1);
    if (then == Then::left) continue;
    joined += fmt::format("  - plug: run-{0}\n  - await: follower(spare-{0})\n", i);
    before = fmt::format("spare-{}", i);
    names += ", " + before;
  }
  if (then == Then::joined) cables = "  cables:\n" + cables;
  return fmt::format(
      "procedure: Spare devices, prepared side by side\n"
      "site:\n  site: Quayside terminal, spare yard\n"
      "  platform: {{platform: Spare yard, numbers: [1, 9], priorities: [0, 255], max-members: 9,\n"
      "    factory: {{number: 1, priority: 10, enabled: false, side: none}}, priority-takes: at-once,\n"
      "    number-takes: at-restart, settings-follow: device, side-takes: on-apply, side-needs-disabled: true,\n"
      "    facing: opposite, side-leads-to: any, software: must-match, orphans: carry-on,\n"
      "    election: [priority, tenure]}}\n"
      "  devices:\n{}{}  stack: {{primary: quay-1, members: [quay-1]}}\n"
      "steps:\n  - any-order:\n{}{}"
      "goal:\n  stack: [{}]\n  primary: quay-1\n",
      devices, cables, prepared, joined, names);
}

Model read(const std::string& text) {
  const MemoryFiles files({{"lanes.yaml", text}});
  auto model = load_procedure("lanes.yaml", files);
  REQUIRE_MESSAGE(model.ok(), text);
  return std::move(model.value());
}

// How many states of the full exploration are without some of the facts.
std::size_t without_some(const Model& model, const std::vector<Fact>& facts) {
  const semantics::World world(model);
  const explore::Exploration all = explore::explore(world, {}, {}, explore::Guard({}, {}));
  const system::Space space(model, {});
  system::Terms terms;
  State s = all.visited->any();
  std::size_t count = 0;
  for (explore::StateIndex i = 0; i < all.visited->size(); ++i) {
    all.visited->read(i, s);
    solver::Values values;
    for (system::VariableId v = 0; v < space.size(); ++v) values.push_back(space.read(s, v));
    const bool fails = std::ranges::any_of(facts, [&](const Fact& f) { return fails_in(terms, space, f, values); });
    count += fails ? 1 : 0;
  }
  return count;
}

// Every property is proved by facts that hold in every state.
void expect_proofs_by_facts(const Model& model, const Reductions& reductions) {
  ProveOptions options;
  options.confirm_limit = 0;
  options.forgetting_limit = 0;
  options.reductions = reductions;
  std::vector<verify::ToldProof> proofs;
  const Report report = verify::prove(model, options, proofs).value();
  REQUIRE(proofs.size() == report.properties.size());
  for (const PropertyVerdict& p : report.properties) {
    CAPTURE(name_of(p.asked.property));
    CHECK(p.verdict == Verdict::proved);
    CHECK(p.settled.by == Settled::By::facts);
    CHECK(p.settled.not_by_facts.empty());
  }
  for (const verify::ToldProof& proof : proofs) {
    CAPTURE(name_of(proof.asked.property));
    CHECK(without_some(model, proof.facts) == 0);
  }
}

}  // namespace

TEST_CASE("where orders are left out, what is proved is proved by facts that hold in every order") {
  expect_proofs_by_facts(read(lanes(2, Then::joined)), Reductions::all());
}

TEST_CASE("where devices alike count once, what is proved is proved by facts that hold of each of them") {
  Reductions reductions;
  reductions.orders = false;
  const Model model = read(lanes(2, Then::left));
  const semantics::World world(model);
  REQUIRE(explore::explore(world, {}, {}, explore::Guard({}, {}), {.reductions = reductions}).alike != nullptr);
  expect_proofs_by_facts(model, reductions);
}

TEST_CASE("a fact that is false in some order is noticed by the tests above") {
  const Model model = read(lanes(2, Then::joined));
  const system::Space space(model, {});
  // In the file's order the first technician is done before the second begins.
  const solver::Within first{space.done(StepId(9)), {0}};
  const solver::Within second{space.done(StepId(10)), {0}};
  CHECK(without_some(model, {solver::within(second, {first})}) > 0);
}
