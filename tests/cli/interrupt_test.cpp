#include "cli/interrupt.hpp"

#include <doctest/doctest.h>

using namespace cairn::cli;

namespace {

void (*handler_of_interrupts())(int) {
  struct sigaction now {};
  sigaction(SIGINT, nullptr, &now);
  return now.sa_handler;
}

}  // namespace

TEST_CASE("the first interrupt sets the flag, the second meets what was there before") {
  const auto before = signal(SIGINT, SIG_DFL);
  {
    const InterruptGuard guard;
    CHECK(!guard.flag()->load());
    raise(SIGINT);
    CHECK(guard.flag()->load());
    CHECK((handler_of_interrupts() == SIG_DFL));
  }
  CHECK((handler_of_interrupts() == SIG_DFL));
  signal(SIGINT, before);
}

TEST_CASE("a caller that ignores interrupts is obeyed") {
  const auto before = signal(SIGINT, SIG_IGN);
  {
    const InterruptGuard guard;
    CHECK((handler_of_interrupts() == SIG_IGN));
  }
  CHECK((handler_of_interrupts() == SIG_IGN));
  signal(SIGINT, before);
}
