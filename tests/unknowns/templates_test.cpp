// Semantics 9, sentence by sentence, from the text of a template to its verdict.
#include <doctest/doctest.h>

#include "cairn/prove.hpp"
#include "cairn/walk.hpp"
#include "support/engines.hpp"
#include "syntax/models.hpp"
#include "unknowns/instantiate.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

/// Two devices that each lead a stack of its own meet when a cable is plugged: the better one goes on.
std::string meeting(const std::string& election, const std::string& first, const std::string& second) {
  return "site:\n"
         "  site: Quayside terminal, two sheds\n"
         "  platform:\n"
         "    platform: Harbour family\n"
         "    numbers: [1, 9]\n"
         "    priorities: [0, 255]\n"
         "    factory: {number: 1, priority: 100, enabled: true, side: none}\n"
         "    number-takes: at-once\n"
         "    priority-takes: at-once\n"
         "    settings-follow: device\n"
         "    side-takes: at-once\n"
         "    side-needs-disabled: false\n"
         "    facing: any\n"
         "    side-leads-to: any\n"
         "    software: any\n"
         "    orphans: carry-on\n"
         "    election: [" +
         election +
         "]\n"
         "  devices:\n"
         "    shed-1: {number: 1, " +
         first +
         ", ports: {t1: {side: west}}}\n"
         "    shed-2: {number: 2, " +
         second +
         ", ports: {t1: {side: east}}}\n"
         "  cables: {shed-1/t1--shed-2/t1: {plugged: false, id: span}}\n"
         "steps: [{plug: span}]\n"
         "keep: [shed-1]\n"
         "properties: [primary-stays]\n";
}

Result<Model> loaded(const std::string& text) {
  return load_procedure("p.yaml", MemoryFiles({{"p.yaml", "procedure: Join two sheds\n" + text}}));
}

PropertyVerdict verdict_on(const std::string& text) {
  const auto model = loaded(text);
  REQUIRE_MESSAGE(model.ok(), told(model));
  const Report report = prove(model.value(), exploring()).value();
  return report.properties.front();
}

const std::string open_priority = "priority: $p, address: 02:00:00:00:00:01";
const std::string known_address = "priority: 100, address: 02:00:00:00:00:02";

}  // namespace

TEST_CASE("9.a a parameter stands for any integer of its range: in a step, a condition and the site") {
  const std::string site = meeting("priority", "priority: 100, address: 02:00:00:00:00:01", open_priority);
  const auto with_range = [&](const std::string& range) {
    return verdict_on("parameters: {p: " + range + "}\n" +
                      with(site, ":01, ports: {t1: {side: east", ":02, ports: {t1: {side: east"));
  };
  CHECK(with_range("[0, 100]").verdict == Verdict::proved);
  const PropertyVerdict refuted = with_range("[0, 101]");
  CHECK(refuted.verdict == Verdict::refuted);
  CHECK(refuted.instance->values == std::vector<std::int64_t>{101});

  // In a step it may be out of the platform's range: that is a refusal.
  const std::string step =
      "parameters: {n: [5, 12]}\n" + meeting("priority", "priority: 9", "priority: 8") + "assume: $n != 11\n";
  const std::string asked =
      with(with(step, "{plug: span}", "{set-number: {device: shed-2, to: $n}}, {check: number(shed-2) = $n}"),
           "[primary-stays]", "[no-refusal]");
  const PropertyVerdict refusal = verdict_on(asked);
  CHECK(refusal.verdict == Verdict::refuted);
  CHECK(refusal.instance->values.front() >= 10);
  CHECK(verdict_on(with(asked, "$n != 11", "$n < 10")).verdict == Verdict::proved);
}

TEST_CASE("9.b an open address is any that differs from all others") {
  CHECK(verdict_on(meeting("priority", "priority: 100, address: any", known_address)).verdict == Verdict::refuted);
  // Nothing is lower than the lowest.
  CHECK(verdict_on(meeting("priority", "address: any", "address: 00:00:00:00:00:00")).verdict == Verdict::refuted);
  CHECK(verdict_on(meeting("priority", "address: 00:00:00:00:00:00", "address: any")).verdict == Verdict::proved);
}

TEST_CASE("9.c the instances are those at which `assume` holds") {
  const std::string text = meeting("priority", "priority: 100, address: any", "priority: $p, address: any");
  const auto assuming = [&](const std::string& assume) {
    return verdict_on("parameters: {p: [0, 255]}\nassume: " + assume + "\n" + text).verdict;
  };
  CHECK(assuming("$p <= 100") == Verdict::refuted);
  CHECK(assuming("$p < 100") == Verdict::proved);
  CHECK(assuming("$p <= 100 and address(shed-1) < address(shed-2)") == Verdict::proved);
  CHECK(assuming("$p = 100 implies address(shed-1) < address(shed-2)") == Verdict::refuted);
  CHECK(assuming("$p > 100 or address(shed-2) < address(shed-1)") == Verdict::refuted);
}

TEST_CASE("9.d proved of every instance, or refuted with one that replays, none of which has a shorter refutation") {
  const auto model = loaded("parameters: {p: [0, 255]}\n" +
                            meeting("priority", "priority: 100, address: any", "priority: $p, address: any"));
  REQUIRE(model.ok());
  const Report report = prove(model.value(), exploring()).value();
  const PropertyVerdict& refuted = report.properties.front();
  REQUIRE(refuted.verdict == Verdict::refuted);
  CHECK(refuted.events == Trace{{Event::Kind::step, 0}});
  REQUIRE(refuted.instance);
  const Model plain = unknowns::instantiate(model.value(), *refuted.instance);
  CHECK_FALSE(plain.unknowns.any());
  CHECK(std::holds_alternative<Walk>(replay(plain, {}, refuted.asked, refuted.events)));
  CHECK(refuted.settled.confirmed);
}

TEST_CASE("9.e a template without instances is an error that names the parts of `assume` at fault") {
  const std::string text = meeting("priority", "priority: 100, address: any", "priority: $p, address: any");
  const auto problem = [&](const std::string& assume) {
    return told(loaded("parameters: {p: [0, 255]}\nassume: " + assume + "\n" + text));
  };
  CHECK(problem("$p < 0") == "p.yaml:3:1 `$p < 0` holds for no choice of what is open");
  CHECK(problem("$p != 7 and $p < 50 and address(shed-1) != address(shed-2) and $p > 60") ==
        "p.yaml:3:1 no choice of what is open makes `$p < 50` and `$p > 60` hold together");
  CHECK(problem("1 > 2") == "p.yaml:3:1 `1 > 2` holds for no choice of what is open");
}

TEST_CASE("9.e a template of which some instance would be an error is one itself, and names the instance") {
  const std::string text = meeting("priority", "priority: $p", "priority: 7");
  CHECK(told(loaded("parameters: {p: [0, 256]}\n" + text)).find("`priority` is out of range in an instance: p = 256") !=
        std::string::npos);
  CHECK(told(loaded("parameters: {p: [0, 256]}\nassume: $p != 256\n" + text)).empty());
  const std::string stack = with(meeting("priority", "next-number: $n", "priority: 7"), "number: 2", "number: $n") + "";
  const std::string members =
      with(stack, "  cables:", "  stack: {primary: shed-1, members: [shed-1, shed-2]}\n  cables:");
  CHECK(told(loaded("parameters: {n: [1, 4]}\n" + members))
            .find("`shed-2` has the number of `shed-1` in an instance: n = 1") != std::string::npos);
  CHECK(told(loaded("parameters: {n: [2, 4]}\n" + members)).empty());
}
