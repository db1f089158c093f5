/// \file
/// The limits of a run, as the exploration asks for them.
#pragma once

#include <algorithm>
#include <chrono>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>

#include "cairn/options.hpp"
#include "cairn/verdict.hpp"

namespace cairn::explore {

/// Thrown where a limit ends a piece of work in the middle; caught by the exploration that does it.
struct Stopped {
  Reason reason;
};

/// Asked now and then in the middle of a piece of work: the limit that is met, or nothing.
using AskLimits = std::function<std::optional<Reason>()>;

/// Measures from its construction on.
class Watch {
 public:
  [[nodiscard]] double seconds() const {
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start_).count();
  }

 private:
  std::chrono::steady_clock::time_point start_ = std::chrono::steady_clock::now();
};

/// Says when to stop, and why, and what is left until then. One a call of prove or lint, shared by all that it does.
class Guard {
 public:
  Guard(const Limits& limits, std::function<void(const Progress&)> progress)
      : limits_(limits), progress_(std::move(progress)) {}

  [[nodiscard]] bool interrupted() const {
    return limits_.interrupt != nullptr && limits_.interrupt->load(std::memory_order_relaxed);
  }

  /// The same limits, counted from the same time, for one of `several` who work side by side: each gets its part of the
  /// memory for states.
  [[nodiscard]] Guard for_one_of(std::size_t several) const {
    Guard other = *this;
    other.sharers_ *= several;
    return other;
  }
  /// The same for another thread than the one that progress is reported from.
  [[nodiscard]] Guard without_progress() const {
    Guard other = *this;
    other.progress_ = {};
    return other;
  }

  /// The limits that are left for what begins now. Of memory it is all, whoever shares it: they are for solvers, which
  /// are held to what all of the process has in use (solver::Bounds).
  [[nodiscard]] Limits left() const {
    Limits left = limits_;
    if (left.seconds) left.seconds = std::max(0.0, *left.seconds - watch_.seconds());
    return left;
  }

  /// The limit that is met, where `bytes` are in use or about to be.
  [[nodiscard]] std::optional<Reason> met(std::uint64_t bytes) const {
    if (interrupted()) return Reason::interrupted;
    if (limits_.seconds && watch_.seconds() >= *limits_.seconds) return Reason::time;
    if (limits_.megabytes && bytes / 1'000'000 >= std::max<std::uint64_t>(1, *limits_.megabytes / sharers_)) {
      return Reason::memory;
    }
    return {};
  }

  void report(Progress progress) const {
    if (!progress_) return;
    progress.seconds = watch_.seconds();
    progress_(progress);
  }

 private:
  Limits limits_;
  std::uint64_t sharers_ = 1;  ///< of the memory
  std::function<void(const Progress&)> progress_;
  Watch watch_;
};

}  // namespace cairn::explore
