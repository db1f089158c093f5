// Semantics 4.4, Rank. Every key is also tried last, after keys that do not decide.
#include <utility>

#include "spec/class_of_devices.hpp"

using namespace cairn;
using namespace cairn::test;
using semantics::outranks;

namespace {

bool first_outranks(std::vector<ElectionKey> election, DeviceIs first, DeviceIs second) {
  ModelBuilder b;
  b.platform().election = std::move(election);
  const DeviceId d = b.device("first", std::move(first));
  const DeviceId e = b.device("second", std::move(second));
  const Run run(b);
  const bool wins = outranks(run.world(), run.state(), d, e);
  CHECK(outranks(run.world(), run.state(), e, d) == !wins);
  return wins;
}

constexpr auto priority = ElectionKey::priority;
constexpr auto tenure = ElectionKey::tenure;
constexpr auto number = ElectionKey::number;

}  // namespace

TEST_CASE("4.4.a the higher priority wins, in running") {
  CHECK(first_outranks({priority}, {.priority = 6, .address = 9}, {.priority = 5, .address = 8}));
  CHECK_FALSE(first_outranks({priority}, {.priority = 5, .address = 8}, {.priority = 6, .address = 9}));
  CHECK(first_outranks({priority}, {.priority = 6, .startup_priority = 1, .address = 9},
                       {.priority = 5, .startup_priority = 8, .address = 8}));
  CHECK(first_outranks({tenure, number, priority}, {.number = 1, .priority = 6, .address = 9},
                       {.number = 1, .priority = 5, .address = 8}));
}

TEST_CASE("4.4.b whoever has been up longer wins") {
  CHECK(first_outranks({tenure}, {.tenure = 2, .address = 9}, {.tenure = 1, .address = 8}));
  CHECK_FALSE(first_outranks({tenure}, {.tenure = 1, .address = 8}, {.tenure = 2, .address = 9}));
  CHECK(first_outranks({priority, number, tenure}, {.number = 1, .tenure = 2, .address = 9},
                       {.number = 1, .tenure = 1, .address = 8}));
  CHECK(first_outranks({tenure}, {.address = 8}, {.address = 9}));
}

TEST_CASE("4.4.c the lower number wins") {
  CHECK(first_outranks({number}, {.number = 1, .address = 9}, {.number = 2, .address = 8}));
  CHECK_FALSE(first_outranks({number}, {.number = 2, .address = 8}, {.number = 1, .address = 9}));
  CHECK(first_outranks({tenure, priority, number}, {.number = 1, .address = 9}, {.number = 2, .address = 8}));
  CHECK(first_outranks({number}, {.number = 1, .next_number = 9, .address = 9},
                       {.number = 2, .next_number = 3, .address = 8}));
}

TEST_CASE("4.4.d the lower address wins, always appended, compared unsigned") {
  for (const auto& election : {std::vector<ElectionKey>{}, {priority, tenure, number}}) {
    CHECK(first_outranks(election, {.number = 1, .address = 8}, {.number = 1, .address = 9}));
    CHECK_FALSE(first_outranks(election, {.number = 1, .address = 9}, {.number = 1, .address = 8}));
    CHECK(first_outranks(election, {.number = 1, .address = 0x7fffffffffff}, {.number = 1, .address = 0x800000000000}));
  }
}

TEST_CASE("4.4 the keys are compared one after the other, in the platform's order") {
  const DeviceIs strong{.number = 9, .priority = 9, .tenure = 1, .address = 9};
  const DeviceIs old{.number = 5, .priority = 5, .tenure = 9, .address = 8};
  const DeviceIs low{.number = 1, .priority = 1, .tenure = 5, .address = 7};
  CHECK(first_outranks({priority, tenure, number}, strong, old));
  CHECK(first_outranks({priority, number, tenure}, strong, low));
  CHECK(first_outranks({tenure, priority, number}, old, strong));
  CHECK(first_outranks({tenure, number, priority}, old, low));
  CHECK(first_outranks({number, priority, tenure}, low, strong));
  CHECK(first_outranks({number, tenure, priority}, low, old));
  CHECK(first_outranks({}, low, strong));
}

TEST_CASE("4.4.e a fresh device never displaces a leader that is present, whatever its priority") {
  const Class k({{.number = 2, .priority = 1}, {.number = 1, .priority = 9, .tenure = 9}});
  const auto plan = k.plan({0, -1});
  CHECK(plan.admitted == Admitted{{k.d[1], k.d[0]}});
  CHECK_FALSE(plan.unsettled());
}
