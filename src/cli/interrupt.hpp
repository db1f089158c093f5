/// \file
/// Ctrl-C: the first one asks for an end and for what is known by then, the second ends the program at once.
#pragma once

#include <signal.h>

#include <atomic>

namespace cairn::cli {

/// While it lives, SIGINT sets the flag, once; after that SIGINT does again what it did before.
class InterruptGuard {
 public:
  InterruptGuard();
  InterruptGuard(const InterruptGuard&) = delete;
  InterruptGuard& operator=(const InterruptGuard&) = delete;
  ~InterruptGuard();

  [[nodiscard]] const std::atomic<bool>* flag() const;

 private:
  struct sigaction before_ {};
};

/// A closed pipe is told by the write that meets it, not by a signal.
void ignore_closed_pipes();

}  // namespace cairn::cli
