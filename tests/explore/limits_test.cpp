#include <doctest/doctest.h>

#include <atomic>
#include <thread>

#include "cairn/prove.hpp"
#include "explore/limits.hpp"
#include "explore/quayside.hpp"
#include "support/engines.hpp"
#include "support/model_builder.hpp"

using namespace cairn;

namespace {

// Far more states than any limit below lets pass, and more than any machine visits in the time that is given.
Model large() {
  Model model = test::append_to_chain(14);
  model.procedure.faults = {.crashes = 2};
  return model;
}

const PropertyVerdict& verdict_on(const Report& report, Property property) {
  for (const PropertyVerdict& verdict : report.properties) {
    if (verdict.asked.property == property) return verdict;
  }
  FAIL("the property was not asked");
  return report.properties.front();
}

ProveOptions asking(std::vector<Property> properties) {
  ProveOptions options = test::exploring();
  for (const Property p : properties) options.properties.push_back({p, 0});
  return options;
}

}  // namespace

TEST_CASE("a time limit leaves what is not settled undecided, and what is settled standing") {
  ProveOptions options = asking({Property::no_split, Property::no_clash, Property::reaches_goal});
  options.limits.seconds = 0.5;
  const Result<Report> report = prove(large(), options);
  REQUIRE(report);
  CHECK(verdict_on(report.value(), Property::no_split).verdict == Verdict::refuted);
  CHECK(verdict_on(report.value(), Property::no_clash).verdict == Verdict::undecided);
  CHECK(verdict_on(report.value(), Property::no_clash).reason == Reason::time);
  CHECK(verdict_on(report.value(), Property::reaches_goal).verdict == Verdict::proved);
}

TEST_CASE("no time at all decides nothing") {
  ProveOptions options = asking({Property::no_clash});
  options.limits.seconds = 0;
  const Result<Report> report = prove(large(), options);
  REQUIRE(report);
  CHECK(report.value().verdict() == Verdict::undecided);
}

TEST_CASE("a memory limit is told as such") {
  ProveOptions options = asking({Property::no_clash});
  options.limits.megabytes = 8;
  const Result<Report> report = prove(large(), options);
  REQUIRE(report);
  const PropertyVerdict& verdict = verdict_on(report.value(), Property::no_clash);
  CHECK(verdict.verdict == Verdict::undecided);
  CHECK(verdict.reason == Reason::memory);
  CHECK(verdict.explored > 1000);
}

TEST_CASE("an interrupt ends the run, and is told as such") {
  std::atomic<bool> interrupt{false};
  ProveOptions options = asking({Property::no_clash});
  options.limits.interrupt = &interrupt;
  options.progress = [&](const Progress& progress) {
    if (progress.states > 2000) interrupt = true;
  };
  const Result<Report> report = prove(large(), options);
  REQUIRE(report);
  CHECK(report.value().interrupted());
  CHECK(verdict_on(report.value(), Property::no_clash).explored < 200'000);
}

TEST_CASE("progress grows and never goes back") {
  std::vector<Progress> seen;
  ProveOptions options = asking({Property::no_clash});
  options.limits.megabytes = 8;
  options.progress = [&](const Progress& progress) { seen.push_back(progress); };
  REQUIRE(prove(large(), options));
  REQUIRE(seen.size() > 10);
  for (std::size_t i = 1; i < seen.size(); ++i) {
    CHECK(seen[i].states >= seen[i - 1].states);
    CHECK(seen[i].depth >= seen[i - 1].depth);
    CHECK(seen[i].seconds >= seen[i - 1].seconds);
  }
}

TEST_CASE("a memory limit holds in a state with thousands of successors too") {
  test::ModelBuilder b;
  const DeviceId d = b.device("yard-1");
  b.unordered();
  for (int i = 0; i < 3000; ++i) b.save({d});
  ProveOptions options = asking({Property::no_clash});
  options.limits.megabytes = 20;
  std::uint64_t states = 0;
  options.progress = [&](const Progress& progress) { states = progress.states; };
  const Result<Report> report = prove(b.model(), options);
  REQUIRE(report);
  CHECK(report.value().properties.front().reason == Reason::memory);
  CHECK(states * 3000 / 8 <= 20'000'000);  // a bit a step is the least that a state takes
}

TEST_CASE("a limit larger than any memory is none") {
  ProveOptions options = asking({Property::reaches_goal});
  options.limits.megabytes = ~std::uint64_t{0};
  CHECK(prove(test::append_to_chain(2), options).value().verdict() == Verdict::proved);
}

TEST_CASE("who shares the memory stops at a part of it, and solvers are held to all of it") {
  Limits limits;
  limits.megabytes = 100;
  const explore::Guard whole(limits, {});
  const explore::Guard half = whole.for_one_of(2);
  const explore::Guard sixth = half.for_one_of(3);
  CHECK_FALSE(whole.met(99'999'999));
  CHECK(whole.met(100'000'000) == Reason::memory);
  CHECK_FALSE(half.met(49'999'999));
  CHECK(half.met(50'000'000) == Reason::memory);
  CHECK_FALSE(sixth.met(15'999'999));
  CHECK(sixth.met(16'000'000) == Reason::memory);
  CHECK(sixth.left().megabytes == 100U);
  // However many share it, one megabyte is left to each.
  CHECK_FALSE(whole.for_one_of(1000).met(999'999));
  CHECK(whole.for_one_of(1000).met(1'000'000) == Reason::memory);
}

TEST_CASE("no memory limit, none for one of several") {
  CHECK_FALSE(explore::Guard({}, {}).for_one_of(2).met(~std::uint64_t{0}));
}

TEST_CASE("several threads are interrupted, and progress comes from the caller's alone") {
  std::atomic<bool> interrupt{false};
  ProveOptions options = asking({Property::no_clash, Property::reaches_goal});
  options.jobs = 4;
  options.stretch = 16;
  options.limits.interrupt = &interrupt;
  const std::thread::id caller = std::this_thread::get_id();
  std::atomic<bool> elsewhere{false};
  options.progress = [&](const Progress& progress) {
    if (std::this_thread::get_id() != caller) elsewhere = true;
    if (progress.states > 20'000) interrupt = true;
  };
  const Result<Report> report = prove(large(), options);
  REQUIRE(report);
  CHECK(report.value().interrupted());
  CHECK_FALSE(elsewhere);
  CHECK(verdict_on(report.value(), Property::no_clash).explored > 20'000);
  CHECK(verdict_on(report.value(), Property::no_clash).explored < 200'000);
}

TEST_CASE("a memory limit ends one thread and several at the same state") {
  ProveOptions options = asking({Property::no_split, Property::no_clash, Property::reaches_goal});
  options.limits.megabytes = 16;
  options.stretch = 32;
  const Report alone = prove(large(), options).value();
  CHECK(verdict_on(alone, Property::no_clash).reason == Reason::memory);
  for (const unsigned jobs : {2U, 3U, 8U}) {
    options.jobs = jobs;
    const Report together = prove(large(), options).value();
    for (std::size_t i = 0; i < alone.properties.size(); ++i) {
      CHECK(together.properties[i].verdict == alone.properties[i].verdict);
      CHECK(together.properties[i].events == alone.properties[i].events);
      CHECK(together.properties[i].explored == alone.properties[i].explored);
    }
  }
}
