#include "system/smtlib.hpp"

#include <algorithm>
#include <array>
#include <sstream>
#include <string>
#include <vector>

#include <doctest/doctest.h>

#include "base/text.hpp"
#include "support/solver_programs.hpp"
#include "system/garden.hpp"

using namespace cairn::system;
using namespace cairn::system::test;
using cairn::test::answer_of;
using cairn::test::SolverProgram;

namespace {

std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines;
  std::istringstream stream(text);
  for (std::string line; std::getline(stream, line);) lines.push_back(line);
  return lines;
}

void check_both_answer(const std::string& script, const std::string& answer) {
  CHECK(answer_of(SolverProgram::z3, script) == answer + "\n");
  CHECK(answer_of(SolverProgram::cvc5, script) == answer + "\n");
}

}  // namespace

TEST_CASE("a small question, as printed") {
  Terms terms;
  const Term up = terms.variable("power(yard-1)=up");
  const Term plugged = terms.variable("plugged(c1)'");
  const Term broken = terms.variable("broken(c1)");
  const Term works = terms.both(plugged, !broken);
  const std::vector<Assertion> assertions = {
      {"The cable works where the device is up.", terms.implies(up, works)},
      {"It works, or it is another case.", terms.either(works, terms.differ(up, broken))},
      {"Which of two.", !terms.choose(up, broken, plugged)},
      {"Nothing.", always},
  };
  CHECK(smtlib_question(terms, "Can it be?\n\nNobody knows.", Status::unknown, assertions) ==
        R"(; Can it be?
;
; Nobody knows.
(set-info :smt-lib-version 2.6)
(set-logic QF_UF)
(set-info :status unknown)
(declare-const |power(yard-1)=up| Bool)
(declare-const |plugged(c1)'| Bool)
(declare-const |broken(c1)| Bool)
(declare-const n1 Bool)
(assert (= n1 (and |plugged(c1)'| (not |broken(c1)|))))
; The cable works where the device is up.
(assert (or (not |power(yard-1)=up|) n1))
; It works, or it is another case.
(assert (or n1 (xor |power(yard-1)=up| |broken(c1)|)))
; Which of two.
(assert (not (ite |power(yard-1)=up| |broken(c1)| |plugged(c1)'|)))
; Nothing.
(assert true)
(check-sat)
(exit)
)");
}

TEST_CASE("random questions are answered by both programs as counting assignments answers them") {
  int satisfiable = 0;
  for (std::uint32_t seed = 1; seed <= 40; ++seed) {
    INFO("seed " << seed);
    Garden garden(seed, 6);
    for (int i = 0; i < 150; ++i) garden.grow();
    std::vector<Assertion> assertions;
    std::vector<bool> together(garden.assignments(), true);
    // Every other question is asked until nothing is left of it.
    const std::size_t most = seed % 2 == 0 ? 100 : 3;
    while (assertions.size() < most && std::ranges::count(together, true) > 0) {
      const auto& plant = garden.plants[garden.plants.size() - 1 - garden.below(100)];
      const bool negated = garden.below(2) == 1;
      assertions.push_back({"plant", negated ? !plant.term : plant.term});
      for (Assignment a = 0; a < garden.assignments(); ++a) {
        together[a] = together[a] && plant.table[a] != negated;
      }
    }
    const bool sat = std::ranges::count(together, true) > 0;
    satisfiable += sat ? 1 : 0;
    const auto script =
        smtlib_question(garden.terms, "A random question.", sat ? Status::sat : Status::unsat, assertions);
    check_both_answer(script, sat ? "sat" : "unsat");
  }
  CHECK(satisfiable >= 10);
  CHECK(satisfiable <= 30);
}

TEST_CASE("names that a person may choose are names to both programs, and no two variables become one") {
  const std::array names = {"",          "and",  "a",       "a",    "a~2",         "a",      "|",   "\\",      "a|b",
                            "a\\b",      "let",  "assert",  "n1",   "n2",          "true",   "not", "Bool",    "@x",
                            ".x",        "1",    "x y",     "x\ty", "x\ny",        "x\x01y", "(",   "; no",    "\"",
                            "Größe",     "\xFF", "=",       "=>",   "ite",         "xor",    "_",   "!",       "par",
                            "check-sat", "exit", ":status", "#b1",  "power(a)=up", "x'",     "a~3", "distinct"};
  Terms terms;
  std::vector<Assertion> assertions;
  std::vector<Term> named(names.size());
  std::ranges::transform(names, named.begin(), [&](const char* name) { return terms.variable(name); });
  // Neighbours differ, and so do their pairs: of two variables that became one, one of these could not hold.
  for (std::size_t i = 0; i < named.size(); ++i) {
    std::vector<Term> alone;
    for (std::size_t j = 0; j < named.size(); ++j) alone.push_back(j == i ? named[j] : !named[j]);
    assertions = {{"Only this one.", terms.all(alone)}};
    CHECK(answer_of(SolverProgram::cvc5, smtlib_question(terms, "", Status::sat, assertions)) == "sat\n");
  }
  assertions = {{"All shared.", terms.differ(terms.all(named), terms.any(named))},
                {"All shared, again.", terms.either(terms.all(named), terms.any(named))}};
  check_both_answer(smtlib_question(terms, "", Status::sat, assertions), "sat");
}

TEST_CASE("comments are wrapped to 100 columns and stay comments") {
  Terms terms;
  std::string comment;
  for (int i = 0; i < 60; ++i) comment += "a word and größer ones (check-sat) ";
  const std::vector<Assertion> assertions = {{comment + "\r\nand\n(exit)", always}};
  const auto script = smtlib_question(terms, comment, Status::sat, assertions);
  std::size_t comments = 0;
  for (const auto& line : lines_of(script)) {
    CHECK(cairn::count_code_points(line) <= 100);
    comments += line.starts_with(";") ? 1 : 0;
  }
  CHECK(comments > 2 * comment.size() / 110);
  check_both_answer(script, "sat");
}

TEST_CASE("no expression is deep, however deep the term: both programs read one that is 20,000 deep") {
  Terms terms;
  const auto x = variables(terms, 30);
  Term deep = x[0];
  for (std::size_t i = 1; i < 20'000; ++i) {
    const Term other = x[(i * 7 + 3) % 30];
    deep = terms.choose(x[i % 30], deep, i % 20 == 0 ? terms.differ(deep, other) : other);
  }
  const std::vector<Assertion> both = {{"It holds.", deep}, {"It does not.", terms.both(!deep, x[0])}};
  const auto script = smtlib_question(terms, "", Status::unsat, both);
  int open = 0;
  for (const char c : script) {
    open += c == '(' ? 1 : c == ')' ? -1 : 0;
    REQUIRE(open <= 10);
  }
  CHECK(open == 0);
  check_both_answer(script, "unsat");
}

TEST_CASE("no assertions are satisfiable") {
  const Terms terms;
  check_both_answer(smtlib_question(terms, "Nothing is asked.", Status::sat, {}), "sat");
}
