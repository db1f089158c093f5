// The thread that ends a question from outside.
#include <doctest/doctest.h>

#include <atomic>
#include <chrono>
#include <thread>

#include "solver/watcher.hpp"

using namespace cairn::solver;

namespace {

// Waits until the watcher has told to stop twice, or for too long.
Cause met_by(Watcher::Task task) {
  std::atomic<int> told = 0;
  task.stop = [&told] { ++told; };
  Cause met = Cause::none;
  {
    const Watcher watcher(std::move(task));
    for (int i = 0; i < 1000 && told < 2; ++i) std::this_thread::sleep_for(std::chrono::milliseconds(5));
    met = watcher.met();
  }
  CHECK((told == 0) == (met == Cause::none));
  return met;
}

}  // namespace

TEST_CASE("a limit that is met tells to stop, again and again") {
  std::atomic<bool> interrupt = true;
  CHECK(met_by({&interrupt, {}, {}, {}, {}}) == Cause::interrupted);
  CHECK(met_by({nullptr, 0.01, {}, {}, {}}) == Cause::time);
  CHECK(met_by({nullptr, 0.0, {}, {}, {}}) == Cause::time);
  CHECK(met_by({nullptr, {}, 7, [] { return std::uint64_t{7'000'000}; }, {}}) == Cause::memory);
}

TEST_CASE("limits that are not met tell nothing, and the end is not waited for") {
  std::atomic<bool> interrupt = false;
  bool told = false;
  const auto start = std::chrono::steady_clock::now();
  {
    const Watcher watcher({&interrupt, 1000.0, 7, [] { return std::uint64_t{6'999'999}; }, [&told] { told = true; }});
    std::this_thread::sleep_for(std::chrono::milliseconds(50));
    CHECK(watcher.met() == Cause::none);
  }
  CHECK_FALSE(told);
  CHECK(std::chrono::steady_clock::now() - start < std::chrono::seconds(5));
}

TEST_CASE("where there is nothing to watch, nothing happens") {
  const Watcher watcher({});
  CHECK(watcher.met() == Cause::none);
}
