// What idles and what protects, of procedures of which it can be said by reasoning. The yard: yard-1 leads with
// priority 180, yard-3 joins and would come with 190; all settings take at once.
#include <doctest/doctest.h>

#include "support/engines.hpp"
#include "support/printing.hpp"
#include "why/yard.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

using Names = std::vector<std::string>;

Model procedure(const std::string& name) {
  return load_procedure(CAIRN_SOURCE_DIR "/models/procedures/" + name, DiskFiles()).value();
}

DropOne dropped_from(const Model& model, const ProveOptions& options = test::exploring()) {
  auto answer = drop_one(model, options);
  if (!answer) FAIL(render_diagnostics(answer.problems()));
  return std::move(answer).value();
}

Names that_are(Standing standing, const Model& model, const DropOne& answer) {
  Names names;
  for (const Dropped& dropped : answer.dropped) {
    if (dropped.standing() == standing) names.push_back(name_of(model, dropped.part));
  }
  return names;
}

const Dropped& named(const std::string& name, const Model& model, const DropOne& answer) {
  const auto at =
      std::ranges::find(answer.dropped, name, [&](const Dropped& dropped) { return name_of(model, dropped.part); });
  REQUIRE(at != answer.dropped.end());
  return *at;
}

const LeftOut& proof_of(Property property, const Dropped& dropped) {
  const auto at =
      std::ranges::find(dropped.proofs, property, [](const LeftOut& proof) { return proof.outcome.asked.property; });
  REQUIRE(at != dropped.proofs.end());
  return *at;
}

std::vector<Property> lost_without(const std::string& name, const Model& model, const DropOne& answer) {
  std::vector<Property> lost;
  for (const LeftOut& proof : named(name, model, answer).proofs) {
    if (proof.standing != Standing::idle) lost.push_back(proof.outcome.asked.property);
  }
  return lost;
}

// How often the settling of all that the model asks tells how far it has come.
int calls_of_progress(const Model& model) {
  int calls = 0;
  ProveOptions options = test::exploring();
  options.progress = [&](const Progress&) { ++calls; };
  CHECK(prove(model, options).ok());
  return calls;
}

}  // namespace

TEST_CASE("awaits, checks, saves and orderings are left out, and no other step") {
  const Model model = at_the_yard(R"(steps:
  - power-on: yard-3
  - await: up(yard-3)
  - any-order:
      - check: up(yard-1)
      - save: yard-3
      - apply: yard-3
properties: [no-clash]
)");
  CHECK(names_of(model, protections_of(model)) ==
        Names{"s2", "s1 before s2", "s3", "s2 before s3", "s4", "s2 before s4", "s2 before s5"});
  const DropOne answer = dropped_from(model);
  REQUIRE(answer.dropped.size() == 7);
  for (std::size_t i = 0; i < answer.dropped.size(); ++i) {
    CHECK(answer.dropped[i].part == protections_of(model)[i]);
    CHECK(answer.dropped[i].proofs.front().parts == std::vector{answer.dropped[i].part});
  }
}

TEST_CASE("an await at the end idles, one before a command does not") {
  const Model model = quickstart("append.yaml");
  const DropOne answer = dropped_from(model);
  CHECK(answer.report.verdict() == Verdict::proved);
  CHECK(that_are(Standing::idle, model, answer) == Names{"s1 before s2", "s6", "s5 before s6"});
  const Dropped& await = named("s2", model, answer);
  CHECK(await.standing() == Standing::needed);
  REQUIRE(await.proofs.size() == 7);
  const LeftOut& proof = proof_of(Property::primary_stays, await);
  CHECK(proof.standing == Standing::needed);
  // s3 is typed into a switch that is still starting, which refuses it, and then the cable goes in.
  CHECK(told(without(model, proof.parts), proof.outcome.events) == "s1, s3, s4, started yard-3, s5");
  CHECK(proof_of(Property::no_clash, await).standing == Standing::idle);
}

TEST_CASE("a save protects what a power cut would undo") {
  const Model model = quickstart("append.yaml");
  const DropOne answer = dropped_from(model);
  const LeftOut& proof = proof_of(Property::survives_cold_start, named("s4", model, answer));
  CHECK(proof.standing == Standing::needed);
  CHECK(proof.outcome.events.back().kind == Event::Kind::cold_start);
}

TEST_CASE("an ordering protects where its two steps may come the other way round") {
  const Model model = quickstart("append.yaml");
  const DropOne answer = dropped_from(model);
  // Saved before the priority is set, the start after the contest that it loses brings the old priority back.
  CHECK(named("s3 before s4", model, answer).standing() == Standing::needed);
  CHECK(proof_of(Property::primary_stays, named("s3 before s4", model, answer)).standing == Standing::idle);
  // s3 need not wait for s2: then it may be refused, and the cable goes in all the same.
  const LeftOut& proof = proof_of(Property::primary_stays, named("s2 before s3", model, answer));
  CHECK(proof.standing == Standing::needed);
  CHECK(told(without(model, proof.parts), proof.outcome.events) == "s1, s3, started yard-3, s2, s4, s5");
}

TEST_CASE("a check protects where a step may be forgotten, and idles where none may") {
  const Model model = procedure("guard-by-check.yaml");
  CHECK(lost_without("s9", model, dropped_from(model)) == std::vector{Property::primary_stays, Property::members_stay});
  ProveOptions careful = test::exploring();
  careful.omissions = 0;
  CHECK(named("s9", model, dropped_from(model, careful)).standing() == Standing::idle);
}

TEST_CASE("without a save that is waited for no run is complete, and what then holds of nothing is lost") {
  const Model model = at_the_yard(R"(steps:
  - power-on: yard-3
  - await: up(yard-3)
  - set-priority: {device: yard-3, to: 90}
  - save: yard-3
  - await: saved(yard-3)
goal: {stack: [yard-1, yard-2]}
properties: [survives-cold-start]
)");
  const DropOne answer = dropped_from(model);
  const Dropped& save = named("s4", model, answer);
  CHECK(save.standing() == Standing::vacuous);
  CHECK(save.proofs.front().outcome.vacuous == "no run is complete");
}

TEST_CASE("of all properties together a part is what it is for the one that it matters to most") {
  const auto of = [](std::initializer_list<Standing> standings) {
    Dropped dropped;
    for (const Standing standing : standings) dropped.proofs.push_back({{}, standing, {}});
    return dropped.standing();
  };
  CHECK(of({Standing::idle, Standing::idle}) == Standing::idle);
  CHECK(of({Standing::idle, Standing::unknown}) == Standing::unknown);
  CHECK(of({Standing::unknown, Standing::vacuous, Standing::idle}) == Standing::vacuous);
  CHECK(of({Standing::vacuous, Standing::unknown, Standing::needed}) == Standing::needed);
}

TEST_CASE("what a condition asks of an await that is left out, it asks of what came before") {
  const Model model = at_the_yard(R"(steps:
  - any-order:
      - - power-on: yard-3
        - await: {condition: up(yard-3), id: seen}
      - - await: {condition: done(seen), id: told}
        - set-priority: {device: yard-3, to: 90, id: tame}
properties: [no-refusal]
)");
  const DropOne answer = dropped_from(model);
  const Dropped& seen = named("seen", model, answer);
  CHECK(seen.standing() == Standing::needed);
  CHECK(told(without(model, {seen.part}), seen.proofs.front().outcome.events) == "s1, told, tame");
  const Dropped& tell = named("told", model, answer);
  CHECK(told(without(model, {tell.part}), tell.proofs.front().outcome.events) == "tame");
}

TEST_CASE("what is refuted with every part in its place is not asked again") {
  const Model model = quickstart("append-outranks.yaml");
  const DropOne answer = dropped_from(model);
  CHECK(answer.report.verdict() == Verdict::refuted);
  for (const Dropped& dropped : answer.dropped) {
    REQUIRE(dropped.proofs.size() == 4);
    for (const LeftOut& proof : dropped.proofs) CHECK(proof.outcome.asked.property != Property::primary_stays);
  }
  ProveOptions options = test::exploring();
  options.properties = {{Property::primary_stays, 0}};
  CHECK(dropped_from(model, options).dropped.empty());
}

TEST_CASE("it agrees with what why says of the same parts, property by property") {
  const Model model = procedure("guard-by-check.yaml");
  const DropOne answer = dropped_from(model);
  const Why all = why(model, test::exploring()).value();
  REQUIRE(all.properties.size() == 7);
  for (std::size_t i = 0; i < all.properties.size(); ++i) {
    for (const Dropped& dropped : answer.dropped) {
      const auto same = std::ranges::find(all.properties[i].parts, dropped.part,
                                          [](const LeftOut& left_out) { return left_out.parts.front(); });
      REQUIRE(same != all.properties[i].parts.end());
      CHECK(same->standing == dropped.proofs[i].standing);
      CHECK(same->outcome.events == dropped.proofs[i].outcome.events);
    }
  }
}

TEST_CASE("an interrupt leaves what is settled standing, and the rest unknown with the reason") {
  const Model model = quickstart("append.yaml");
  const DropOne undisturbed = dropped_from(model);
  const Model first = without(model, {undisturbed.dropped.front().part});
  const int calls_before = calls_of_progress(model) + calls_of_progress(first);
  std::atomic<bool> interrupt = false;
  ProveOptions options = test::exploring();
  options.limits.interrupt = &interrupt;
  int calls = 0;
  options.progress = [&](const Progress&) { interrupt = ++calls > calls_before; };
  const DropOne answer = dropped_from(model, options);
  CHECK(answer.report.verdict() == Verdict::proved);
  REQUIRE(answer.dropped.size() == undisturbed.dropped.size());
  CHECK(answer.dropped.front().standing() == undisturbed.dropped.front().standing());
  for (std::size_t i = 1; i < answer.dropped.size(); ++i) {
    CHECK(answer.dropped[i].standing() == Standing::unknown);
    CHECK(answer.dropped[i].proofs.front().outcome.reason == Reason::interrupted);
  }
}

TEST_CASE("without any time nothing is settled, and nothing is left out") {
  ProveOptions options = test::exploring();
  options.limits.seconds = 0;
  const DropOne answer = dropped_from(quickstart("append.yaml"), options);
  CHECK(answer.report.verdict() == Verdict::undecided);
  CHECK(answer.dropped.empty());
}

TEST_CASE("a question that prove does not take, drop_one does not take") {
  CHECK_FALSE(drop_one(quickstart("append.yaml"), asking(Property::tolerates_loss)).ok());
}
