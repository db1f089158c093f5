// The solvers that ship: their limits, their interruption, and their answers to formulas with known sizes.
#include <doctest/doctest.h>

#include <array>
#include <atomic>
#include <chrono>
#include <functional>
#include <memory>
#include <thread>
#include <utility>
#include <vector>

#include "base/heap.hpp"
#include "solver/cadical_solver.hpp"
#include "solver/pigeonholes.hpp"
#include "solver/z3_solver.hpp"
#include "support/allocator.hpp"

using namespace cairn::solver;
using cairn::test::add_pigeonholes;
using cairn::test::allocator_is_replaced;

namespace {

using Clock = std::chrono::steady_clock;

double seconds_since(Clock::time_point start) {
  return std::chrono::duration<double>(Clock::now() - start).count();
}

// Does something after a while.
class Later {
 public:
  Later(std::chrono::milliseconds pause, const std::function<void()>& act)
      : thread_([act, pause] {
          std::this_thread::sleep_for(pause);
          act();
        }) {}
  // Makes the flag true.
  Later(std::atomic<bool>& flag, std::chrono::milliseconds pause) : Later(pause, [&flag] { flag = true; }) {}
  ~Later() { thread_.join(); }

 private:
  std::thread thread_;
};

using Make = std::function<std::unique_ptr<Solver>(const std::atomic<bool>*)>;

void for_each_maker(const std::function<void(const Make&)>& test) {
  SUBCASE("Z3") {
    test(make_z3_solver);
  }
  SUBCASE("CaDiCaL") {
    test(make_cadical_solver);
  }
}

}  // namespace

// hole6 has 42 variables and 133 clauses, hole10 has 110 and 561 (pigeonholes.hpp names the source).
TEST_CASE("pigeonhole formulas have their published sizes and no model") {
  for_each_maker([](const Make& make) {
    const std::vector<std::array<std::size_t, 3>> published{
        {6, 42, 133}, {7, 56, 204}, {8, 72, 297}, {9, 90, 415}, {10, 110, 561}};
    for (const auto& [holes, variables, clauses] : published) {
      const auto solver = make(nullptr);
      add_pigeonholes(*solver, holes + 1, holes);
      CHECK(solver->variables() == variables);
      CHECK(solver->clauses() == clauses);
      if (holes <= 7) CHECK(solver->check({}, {}) == Outcome::unsatisfiable);
    }
  });
}

TEST_CASE("an interrupt ends a hard question within a second") {
  for_each_maker([](const Make& make) {
    std::atomic<bool> interrupt = false;
    const auto solver = make(&interrupt);
    add_pigeonholes(*solver, 13, 12);
    const Later later(interrupt, std::chrono::milliseconds(300));
    const auto start = Clock::now();
    CHECK(solver->check({}, {}) == Outcome::unknown);
    CHECK(solver->cause() == Cause::interrupted);
    CHECK(seconds_since(start) >= 0.3);
    CHECK(seconds_since(start) < 1.3);
  });
}

TEST_CASE("what comes after an interrupt is not begun, and is answered once the flag is false again") {
  for_each_maker([](const Make& make) {
    std::atomic<bool> interrupt = true;
    const auto solver = make(&interrupt);
    add_pigeonholes(*solver, 6, 5);
    CHECK(solver->check({}, {}) == Outcome::unknown);
    CHECK(solver->cause() == Cause::interrupted);
    interrupt = false;
    CHECK(solver->check({}, {}) == Outcome::unsatisfiable);
  });
}

TEST_CASE("a question that was interrupted in the middle can be asked again, and others too") {
  for_each_maker([](const Make& make) {
    std::atomic<bool> interrupt = false;
    const auto solver = make(&interrupt);
    const auto [sits] = add_pigeonholes(*solver, 13, 12);
    {
      const Later later(interrupt, std::chrono::milliseconds(100));
      CHECK(solver->check({}, {}) == Outcome::unknown);
    }
    interrupt = false;
    const std::vector<Literal> crowd{sits[0][0], sits[1][0]};
    CHECK(solver->check(crowd, {}) == Outcome::unsatisfiable);
    CHECK(solver->core() == crowd);
    const Literal open = solver->declare();
    solver->add({open, sits[0][0]});
    CHECK(solver->check(crowd, {}) == Outcome::unsatisfiable);
  });
}

TEST_CASE("seconds bound a hard question") {
  for_each_maker([](const Make& make) {
    const auto solver = make(nullptr);
    add_pigeonholes(*solver, 13, 12);
    const auto start = Clock::now();
    CHECK(solver->check({}, {.seconds = 0.3, .effort = {}, .megabytes = {}}) == Outcome::unknown);
    CHECK(solver->cause() == Cause::time);
    CHECK(seconds_since(start) >= 0.3);
    CHECK(seconds_since(start) < 1.3);
  });
}

TEST_CASE("megabytes bound a hard question of Z3") {
  const auto solver = make_z3_solver(nullptr);
  add_pigeonholes(*solver, 13, 12);
  CHECK(solver->check({}, {.seconds = 60, .effort = {}, .megabytes = 1}) == Outcome::unknown);
  CHECK(solver->cause() == Cause::memory);
}

TEST_CASE("without any time left not even an easy question is begun") {
  for_each_maker([](const Make& make) {
    const auto solver = make(nullptr);
    const Literal a = solver->declare();
    solver->add({a});
    CHECK(solver->check({}, {.seconds = 0, .effort = {}, .megabytes = {}}) == Outcome::unknown);
    CHECK(solver->cause() == Cause::time);
    CHECK(solver->check({}, {}) == Outcome::satisfiable);
  });
}

// What CaDiCaL is held to is all that the process has on the heap.
TEST_CASE("megabytes bound a question of CaDiCaL before it is begun" * doctest::skip(allocator_is_replaced)) {
  const std::vector<char> ballast(2'000'000);
  const auto solver = make_cadical_solver(nullptr);
  add_pigeonholes(*solver, 6, 5);
  CHECK(solver->check({}, {.seconds = {}, .effort = {}, .megabytes = 1}) == Outcome::unknown);
  CHECK(solver->cause() == Cause::memory);
  CHECK(solver->check({}, {.seconds = {}, .effort = {}, .megabytes = 1'000'000}) == Outcome::unsatisfiable);
}

TEST_CASE("megabytes end a question of CaDiCaL in the middle" * doctest::skip(allocator_is_replaced)) {
  constexpr std::uint64_t room = 100'000'000;
  const auto solver = make_cadical_solver(nullptr);
  add_pigeonholes(*solver, 13, 12);
  const std::uint64_t megabytes = (cairn::heap_in_use() + room) / 1'000'000;
  std::vector<char> ballast;
  const Later later(std::chrono::milliseconds(300), [&ballast] { ballast.resize(room); });
  const auto start = Clock::now();
  CHECK(solver->check({}, {.seconds = 60, .effort = {}, .megabytes = megabytes}) == Outcome::unknown);
  CHECK(solver->cause() == Cause::memory);
  CHECK(seconds_since(start) >= 0.3);
  CHECK(seconds_since(start) < 1.5);
}

TEST_CASE("the same effort gives the same outcome at the same cost") {
  for_each_maker([](const Make& make) {
    const auto told = [&](std::uint64_t effort) {
      const auto solver = make(nullptr);
      add_pigeonholes(*solver, 9, 8);
      const Outcome outcome = solver->check({}, {.seconds = {}, .effort = effort, .megabytes = {}});
      if (outcome == Outcome::unknown) CHECK(solver->cause() == Cause::effort);
      return std::pair(outcome, solver->effort());
    };
    for (const std::uint64_t effort : {std::uint64_t{100}, std::uint64_t{1000}, std::uint64_t{3000}}) {
      const auto first = told(effort);
      CHECK(first.first == Outcome::unknown);
      CHECK(first.second >= effort);
      CHECK(told(effort) == first);
      CHECK(told(effort) == first);
    }
    // What it takes to answer is the boundary between the two outcomes.
    const auto [outcome, enough] = told(~std::uint64_t{0});
    CHECK(outcome == Outcome::unsatisfiable);
    CHECK(told(enough + 1).first == Outcome::unsatisfiable);
    CHECK(told(enough / 2).first == Outcome::unknown);
  });
}

TEST_CASE("solvers do not see each other") {
  for_each_maker([](const Make& make) {
    const auto one = make(nullptr);
    const auto other = make(nullptr);
    const Literal a = one->declare();
    one->add({a});
    const Literal b = other->declare();
    other->add({!b});
    CHECK(one->check({}, {}) == Outcome::satisfiable);
    CHECK(one->value(a));
    CHECK(other->check({}, {}) == Outcome::satisfiable);
    CHECK_FALSE(other->value(b));
  });
}

TEST_CASE("two solvers may work at once") {
  for_each_maker([](const Make& make) {
    std::vector<Outcome> outcomes(2, Outcome::unknown);
    {
      std::vector<std::thread> threads;
      threads.reserve(outcomes.size());
      for (Outcome& outcome : outcomes) {
        threads.emplace_back([&outcome, &make] {
          const auto solver = make(nullptr);
          add_pigeonholes(*solver, 8, 7);
          outcome = solver->check({}, {.seconds = 60, .effort = {}, .megabytes = {}});
        });
      }
      for (std::thread& each : threads) each.join();
    }
    CHECK(outcomes == std::vector<Outcome>(2, Outcome::unsatisfiable));
  });
}

TEST_CASE("the version is that of the library") {
  CHECK(z3_version().substr(0, 5) == "Z3 4.");
}
