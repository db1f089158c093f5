#include "cli/interrupt.hpp"

namespace cairn::cli {

namespace {

// A signal handler reaches nothing but what is global.
std::atomic<bool> asked_to_end{false};
static_assert(std::atomic<bool>::is_always_lock_free, "a signal handler may not wait");

void ask_to_end(int) {
  asked_to_end.store(true);
}

}  // namespace

InterruptGuard::InterruptGuard() {
  struct sigaction action {};
  action.sa_handler = ask_to_end;
  action.sa_flags = static_cast<int>(SA_RESETHAND);
  sigemptyset(&action.sa_mask);
  sigaction(SIGINT, nullptr, &before_);
  // A caller that wants the signal ignored, as a shell does for jobs in the background, is obeyed.
  if (before_.sa_handler != SIG_IGN) sigaction(SIGINT, &action, nullptr);
}

InterruptGuard::~InterruptGuard() {
  sigaction(SIGINT, &before_, nullptr);
}

const std::atomic<bool>* InterruptGuard::flag() const {
  return &asked_to_end;
}

void ignore_closed_pipes() {
  signal(SIGPIPE, SIG_IGN);
}

}  // namespace cairn::cli
