// The changes that are worth trying, what they make of a procedure, and refutations followed through them.
#include "verify/why_changes.hpp"

#include <doctest/doctest.h>

#include <set>

#include "semantics/precedence.hpp"
#include "support/engines.hpp"
#include "support/model_builder.hpp"
#include "support/printing.hpp"
#include "verify/why_follow.hpp"
#include "verify/why_variants.hpp"
#include "why/yard.hpp"

using namespace cairn;
using namespace cairn::test;
using semantics::Precedence;
using verify::order_of;

namespace {

Model chain_of(std::size_t steps) {
  ModelBuilder b;
  const DeviceId a = b.device("a");
  for (std::size_t i = 0; i < steps; ++i) b.save({a});
  return b.model();
}

Change move(StepId step, StepId anchor, bool behind) {
  return {Change::Kind::move, step, 0, anchor, behind};
}

Change remove(StepId step) {
  return {Change::Kind::remove, step, 0, {}, false};
}

std::size_t count_of(const std::vector<Change>& changes, Change::Kind kind) {
  return static_cast<std::size_t>(
      std::count_if(changes.begin(), changes.end(), [&](const Change& c) { return c.kind == kind; }));
}

// The ids of a procedure of which all steps follow one another.
std::vector<std::string> in_order(const Model& model) {
  const Precedence precedence(model.procedure);
  std::vector<Step> steps = model.procedure.steps;
  std::sort(steps.begin(), steps.end(), [&](const Step& a, const Step& b) {
    return precedence.before(step_named(model, a.id), step_named(model, b.id));
  });
  std::vector<std::string> ids;
  for (const Step& step : steps) ids.push_back(step.id);
  return ids;
}

using Ids = std::vector<std::string>;

const char* const branches = R"(steps:
  - save: {devices: yard-1, id: first}
  - any-order:
      - - save: {devices: yard-1, id: left-1}
        - save: {devices: yard-1, id: left-2}
      - save: {devices: yard-2, id: right}
  - save: {devices: yard-1, id: last}
properties: [no-clash]
)";

}  // namespace

TEST_CASE("moving one of n steps in a row leads to (n - 1)^2 other orders") {
  // Each of n steps has n - 1 other places; moving one of two neighbours past the other is the same change, n - 1
  // times: n (n - 1) - (n - 1). Counted by hand, no source.
  for (std::size_t n = 1; n <= 7; ++n) {
    const Model model = chain_of(n);
    const auto changes = verify::changes_of(model);
    CHECK(count_of(changes, Change::Kind::move) == (n - 1) * (n - 1));
    CHECK(count_of(changes, Change::Kind::remove) == n);
    std::set<verify::Order> orders{order_of(model.procedure)};
    for (const Change& change : changes) {
      if (change.kind != Change::Kind::move) continue;
      CHECK(orders.insert(order_of(with_changes(model, {change}).procedure)).second);
    }
  }
}

TEST_CASE("a step moves behind its anchor, or before it") {
  const Model model = at_the_yard(
      "steps: [save: {devices: yard-1, id: a}, save: {devices: yard-1, id: b},\n"
      "  save: {devices: yard-1, id: c}, save: {devices: yard-1, id: d}]\n"
      "properties: [no-clash]\n");
  const StepId a(0), b(1), c(2), d(3);
  CHECK(in_order(with_changes(model, {move(a, c, true)})) == Ids{"b", "c", "a", "d"});
  CHECK(in_order(with_changes(model, {move(d, b, false)})) == Ids{"a", "d", "b", "c"});
  CHECK(in_order(with_changes(model, {move(a, d, true)})) == Ids{"b", "c", "d", "a"});
  CHECK(in_order(with_changes(model, {move(d, a, false), move(b, c, true)})) == Ids{"d", "a", "c", "b"});
  CHECK(in_order(with_changes(model, {remove(b), move(a, d, true)})) == Ids{"c", "d", "a"});
}

TEST_CASE("before and behind steps that have neighbours side by side") {
  const Model model = at_the_yard(branches);
  const StepId first = step_named(model, "first"), right = step_named(model, "right"), last = step_named(model, "last");
  const auto comes_before = [](const Model& m, StepId earlier, StepId later) {
    return Precedence(m.procedure).before(earlier, later);
  };
  // Behind `first` is ahead of both branches; before `right` is in its branch.
  CHECK(comes_before(with_changes(model, {move(last, first, true)}), last, StepId(1)));
  CHECK(comes_before(with_changes(model, {move(last, first, true)}), last, right));
  CHECK(comes_before(with_changes(model, {move(last, right, false)}), last, right));
  CHECK_FALSE(comes_before(with_changes(model, {move(last, right, false)}), last, StepId(2)));
  // Before `last` is behind both branches.
  CHECK(comes_before(with_changes(model, {move(first, last, false)}), right, first));
  CHECK(comes_before(with_changes(model, {move(first, last, false)}), StepId(2), first));
}

TEST_CASE("no step moves among those that may come before it or after it as they like") {
  const Model model = at_the_yard(branches);
  const StepId right = step_named(model, "right");
  for (const Change& change : verify::changes_of(model)) {
    if (change.kind != Change::Kind::move || change.step != right) continue;
    CHECK(model[change.anchor].id.substr(0, 4) != "left");
  }
}

TEST_CASE("other priorities rank differently; other numbers are free or asked for") {
  // The site has 180, 120 and 190 of 1 to 200.
  const Model model = at_the_yard(R"(steps:
  - set-priority: {device: yard-3, to: 150}
  - set-number: {device: yard-3, to: 2}
  - await: number(yard-3) = 1 or priority(yard-3) > 155
properties: [no-clash]
)");
  CHECK(verify::other_values(model, StepId(0)) == std::vector<std::int64_t>{155, 120, 180, 119, 181, 190, 191});
  // Numbers 1 to 9; 1, 2 and 3 are in use, 1 is asked for.
  CHECK(verify::other_values(model, StepId(1)) == std::vector<std::int64_t>{1, 4, 9});
}

TEST_CASE("a value that the platform does not have is brought back into its range") {
  const Model model = at_the_yard(
      "steps: [set-priority: {device: yard-3, to: -9223372036854775808}]\n"
      "properties: [no-clash]\n");
  const auto values = verify::other_values(model, StepId(0));
  REQUIRE_FALSE(values.empty());
  CHECK(values.front() == 1);
  CHECK(values.back() == 191);
}

TEST_CASE("steps are found again after others are taken out") {
  const Model model = chain_of(4);
  const auto places = verify::places_after(model, {remove(StepId(1)), move(StepId(0), StepId(3), true)});
  CHECK(places == std::vector<StepId>{StepId(0), StepId(), StepId(1), StepId(2)});
}

TEST_CASE("a refutation is followed with the step at its new place") {
  const Model model = quickstart("append-cabled-early.yaml");
  const Report report = prove(model, test::exploring()).value();
  const auto refuted = [&](Property property) {
    for (const PropertyVerdict& p : report.properties) {
      if (p.asked.property == property) return p;
    }
    return PropertyVerdict();
  };
  const auto avoided = [&](Property property, const Change& change) {
    return verify::avoids(model, {change}, report.faults, refuted(property));
  };
  const StepId plug(2), save(4);
  // Cabled before it is up, or after its priority is lowered, yard-3 does no harm; saving changes nothing.
  CHECK(avoided(Property::primary_stays, move(plug, StepId(0), false)));
  CHECK(avoided(Property::primary_stays, move(plug, save, true)));
  CHECK(avoided(Property::primary_stays, remove(plug)));
  CHECK_FALSE(avoided(Property::primary_stays, remove(save)));
  CHECK_FALSE(avoided(Property::primary_stays, {Change::Kind::value, StepId(3), 10, {}, false}));
  // Without the cable nothing follows, and the procedure does not end.
  CHECK_FALSE(avoided(Property::reaches_goal, remove(plug)));
  CHECK(avoided(Property::reaches_goal, move(plug, save, true)));
  CHECK(avoided(Property::survives_cold_start, move(plug, save, true)));
}

TEST_CASE("a change that leaves the run as it is avoids nothing") {
  for (const char* name : {"append-cabled-early.yaml", "append-outranks.yaml"}) {
    const Model model = quickstart(name);
    const Report report = prove(model, test::exploring()).value();
    for (const PropertyVerdict& p : report.properties) {
      if (p.verdict == Verdict::refuted) CHECK_FALSE(verify::avoids(model, {}, report.faults, p));
    }
  }
}
