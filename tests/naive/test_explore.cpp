// The reference by itself: section 6, and which refutation is preferred.
#include "naive/explore.hpp"
#include "naive/small_models.hpp"

using namespace cairn;
using namespace cairn::naive;

namespace {

constexpr std::size_t many = 10'000;

Answer answer(const Model& model, Property property, std::int64_t k = 0) {
  return explore(model, model.procedure.faults, {{property, k}}, many)->answers.front();
}

}  // namespace

TEST_CASE("a chain of two under one break: split at once, and three states") {
  // Whole; cut, with b starting as orphans do; cut, with b up and its own leader.
  const Model model = small_model({}, chain("ab"), "faults: {cable-breaks: 1}\n");
  const Answer split = answer(model, Property::no_split);
  CHECK(split.preferred == Trace{{Event::Kind::broke, 0}});
  CHECK(split.explored == 3);
  CHECK(answer(model, Property::members_stay).preferred.size() == 1);
  CHECK_FALSE(answer(model, Property::primary_stays).refuted);
  CHECK_FALSE(answer(model, Property::no_clash).refuted);
}

TEST_CASE("5.a two chains of two steps in any order visit a grid of nine states") {
  const Model model = small_model({}, "devices: {a: {}, b: {number: 2}}\n",
                                  "steps:\n  - any-order:\n"
                                  "      - [save: a, apply: a]\n      - [save: b, apply: b]\n");
  CHECK(answer(model, Property::no_refusal).explored == 9);
}

TEST_CASE("6.8 all cables are lost where there are fewer than k, and the length counts them") {
  const Model model = small_model({}, chain("ab"), "steps: [{save: a}]\ngoal: {stack: [a, b]}\n");
  CHECK(answer(model, Property::tolerates_loss, 3).preferred == Trace{{Event::Kind::step, 0}, {Event::Kind::broke, 0}});
  const Model lone = small_model({}, chain("a"), "goal: {stack: [a]}\n");
  CHECK_FALSE(answer(lone, Property::tolerates_loss, 1).refuted);
}

TEST_CASE("6.8 a ring of three bears one loss and not two") {
  const std::string ring = chain("abc");
  const std::string closed =
      ring.substr(0, ring.find("stack:")) + "  c/t2--a/t1: {}\n" + ring.substr(ring.find("stack:"));
  const Model model = small_model({}, closed, "goal: {stack: [a, b, c]}\n");
  CHECK_FALSE(answer(model, Property::tolerates_loss, 1).refuted);
  CHECK(answer(model, Property::tolerates_loss, 2).preferred ==
        Trace{{Event::Kind::broke, 0}, {Event::Kind::broke, 1}});
}

TEST_CASE("6.1 a newcomer that is cut off splits the stack too") {
  const Model model = small_model({{"side-leads-to", "any"}}, chain("abc"), "keep: [a, b]\nsteps: [{disable: c/t1}]\n");
  CHECK(answer(model, Property::no_split).preferred.size() == 1);
}

TEST_CASE("6.2 and 6.3 a step that takes a kept device down; 6.c a crash alone does not") {
  const Model model = small_model({}, chain("ab"), "keep: [a]\nsteps: [{restart: a}]\nfaults: {crashes: 1}\n");
  CHECK(answer(model, Property::primary_stays).preferred == Trace{{Event::Kind::step, 0}});
  const Model still = small_model({}, chain("a"), "faults: {crashes: 1}\n");
  CHECK_FALSE(answer(still, Property::primary_stays).refuted);
  CHECK_FALSE(answer(still, Property::members_stay).refuted);
}

TEST_CASE("6.6 complete, the goal, and not too many members") {
  const std::string goal = "goal: {stack: [a, b], primary: a}\n";
  CHECK_FALSE(answer(small_model({}, chain("ab"), goal), Property::reaches_goal).refuted);
  CHECK(answer(small_model({{"max-members", "1"}}, chain("ab"), goal), Property::reaches_goal).preferred.empty());
  const Answer stuck =
      answer(small_model({}, chain("ab"), "steps: [{await: held(a)}]\n" + goal), Property::reaches_goal);
  CHECK(stuck.refuted);
  CHECK(stuck.preferred.empty());
}

TEST_CASE("6.7 a primary that wins no election is not the primary after a cold start") {
  const std::string goal = "goal: {stack: [a, b], primary: a}\n";
  const std::map<char, std::string> weak = {{'a', "startup: {priority: 1}"}};
  CHECK_FALSE(answer(small_model({}, chain("ab"), goal), Property::survives_cold_start).refuted);
  CHECK(answer(small_model({}, chain("ab", weak), goal), Property::survives_cold_start).preferred ==
        Trace{{Event::Kind::cold_start, 0}});
}

TEST_CASE("6.e proofs of nothing") {
  const std::string goal = "steps: [{await: held(a)}]\ngoal: {stack: [a]}\n";
  const Model stuck = small_model({}, chain("ab"), "keep: [b]\n" + goal);
  CHECK(answer(stuck, Property::primary_stays).vacuous);
  CHECK(answer(stuck, Property::survives_cold_start).vacuous);
  CHECK(answer(stuck, Property::tolerates_loss, 1).vacuous);
  CHECK_FALSE(answer(stuck, Property::no_refusal).vacuous);
  CHECK(answer(small_model({}, chain("ab"), ""), Property::no_refusal).vacuous);
  CHECK_FALSE(answer(small_model({}, chain("ab"), ""), Property::primary_stays).vacuous);
}

TEST_CASE("shorter, then fewer faults, then fewer switches, then earlier in the file") {
  const Event step1{Event::Kind::step, 0};
  const Event step2{Event::Kind::step, 1};
  const Event started{Event::Kind::started, 0};
  const Event omitted{Event::Kind::omitted, 0};
  CHECK(preferred({omitted}, {step1, step2}));
  CHECK(preferred({started, step1, started}, {step1, step2, omitted}));
  CHECK(preferred({step2, step1, started}, {step1, started, step2}));
  CHECK(preferred({step1, step2}, {step2, step1}));
  CHECK(preferred({step2, step1}, {started, started}));
  CHECK_FALSE(preferred({step1}, {step1}));
}

TEST_CASE("a replay accepts the refutation and nothing near it") {
  const Model model = small_model({}, chain("ab"), "keep: [a]\nsteps: [{save: a}, {restart: a}, {save: b}]\n");
  const AskedProperty asked{Property::primary_stays, 0};
  const auto step = [](std::uint32_t s) { return Event{Event::Kind::step, s}; };
  CHECK(replay(model, {}, asked, {step(0), step(1)}) == "");
  CHECK(replay(model, {}, asked, {step(0)}) != "");
  CHECK(replay(model, {}, asked, {step(1)}) != "");
  CHECK(replay(model, {}, asked, {step(0), step(1), step(2)}) != "");
  CHECK(replay(model, {}, asked, {step(0), {Event::Kind::crashed, 0}}) != "");
}

TEST_CASE("5.k a run without end is seen") {
  // b's two cables are on one side, so while all three are on there is no link at all. Whoever of a and c starts while
  // the other is starting finds b and follows it; when the other has started, the link is cut again.
  const std::string site =
      "devices:\n"
      "  a: {number: 1, ports: {p: {side: east}}}\n"
      "  b: {number: 2, priority: 9, ports: {p: {side: east}, q: {side: east}}}\n"
      "  c: {number: 3, ports: {p: {side: east}}}\n"
      "cables: {a/p--b/p: {}, b/q--c/p: {}}\n";
  const std::string procedure = "steps: [{restart: a}]\n";
  const auto asks = [&](const Rules& rules) { return answer(small_model(rules, site, procedure), Property::no_clash); };
  CHECK(asks({{"facing", "any"}}).cycle);
  CHECK_FALSE(asks({{"facing", "any"}, {"side-leads-to", "any"}}).cycle);
  CHECK_FALSE(asks({{"facing", "any"}, {"orphans", "carry-on"}}).cycle);
}
