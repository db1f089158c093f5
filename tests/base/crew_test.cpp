#include "base/crew.hpp"

#include <doctest/doctest.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <atomic>
#include <functional>
#include <numeric>
#include <set>
#include <thread>
#include <vector>

#include "support/allocator.hpp"

using namespace cairn;

namespace {

// How often each of the tasks was done.
std::vector<int> counts(Crew& crew, std::size_t tasks) {
  std::vector<int> done(tasks, 0);  // not atomic: one task, one element
  crew.run(tasks, [&](std::size_t task, Crew::Worker) { ++done[task]; });
  return done;
}

bool each_once(Crew& crew, std::size_t tasks) {
  const std::vector<int> done = counts(crew, tasks);
  return std::all_of(done.begin(), done.end(), [](int n) { return n == 1; });
}

// One task for each of the crew, and each waits for the others: nobody does two, and nobody is left without, however
// busy the machine is. One after the other, this would never end.
void meet(Crew& crew, const std::function<void(Crew::Worker)>& work) {
  std::atomic<unsigned> present{0};
  crew.run(crew.size(), [&](std::size_t, Crew::Worker worker) {
    work(worker);
    ++present;
    while (present < crew.size()) std::this_thread::yield();
  });
  CHECK(present == crew.size());
}

}  // namespace

TEST_CASE("every task is done once, whether there are more tasks than workers or fewer") {
  for (const unsigned size : {1U, 2U, 3U, 8U}) {
    CAPTURE(size);
    Crew crew(size);
    CHECK(crew.size() == size);
    for (const std::size_t tasks : {0U, 1U, 2U, 3U, 7U, 8U, 9U, 1000U}) {
      CAPTURE(tasks);
      CHECK(each_once(crew, tasks));
    }
  }
}

TEST_CASE("a crew works off one list after the other, and sees what the last one wrote") {
  Crew crew(4);
  std::vector<std::uint64_t> sums(64, 0);
  for (std::uint64_t round = 1; round <= 2000; ++round) {
    const std::vector<std::uint64_t> before = sums;
    crew.run(sums.size(),
             [&](std::size_t task, Crew::Worker) { sums[task] = before[(task + 1) % before.size()] + round; });
  }
  const std::uint64_t each = 2000 * 2001 / 2;
  CHECK(std::accumulate(sums.begin(), sums.end(), std::uint64_t{0}) == each * sums.size());
}

TEST_CASE("several work at the same time") {
  Crew crew(3);
  meet(crew, [](Crew::Worker) {});
}

TEST_CASE("workers have numbers of their own, and the caller is number 0") {
  Crew crew(4);
  std::vector<std::set<std::thread::id>> threads(crew.size());
  for (int round = 0; round < 50; ++round) {
    meet(crew, [&](Crew::Worker worker) { threads[worker].insert(std::this_thread::get_id()); });
  }
  CHECK(threads[0] == std::set{std::this_thread::get_id()});
  for (const auto& ids : threads) CHECK(ids.size() == 1);
}

TEST_CASE("a crew that is never called ends") {
  const Crew idle(8);
  CHECK(idle.size() == 8);
}

// Each thread wants a stack, and there is no room for more than the C library has kept of threads that ended.
TEST_CASE("where the system grants no further thread, those that there are do all" *
          doctest::skip(test::allocator_is_replaced)) {
  const pid_t child = fork();
  REQUIRE(child >= 0);
  if (child == 0) {
    const rlimit nothing_more{1, 1};
    if (setrlimit(RLIMIT_AS, &nothing_more) != 0) _exit(2);
    Crew crew(200);
    _exit(crew.size() < 200 && each_once(crew, 9) ? 0 : 1);
  }
  int status = 0;
  REQUIRE(waitpid(child, &status, 0) == child);
  CHECK(WIFEXITED(status));
  CHECK(WEXITSTATUS(status) == 0);
}
