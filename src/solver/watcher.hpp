/// \file
/// Ends a question from outside when a limit is met.
#pragma once

#include <atomic>
#include <condition_variable>
#include <cstdint>
#include <functional>
#include <mutex>
#include <optional>
#include <thread>

#include "solver/solver.hpp"

namespace cairn::solver {

/// A thread that lives as long as the watcher. Solvers that are told to stop may be deaf at that moment, so it tells
/// them again and again until the watcher is destroyed. Where there is nothing to watch, there is no thread.
class Watcher {
 public:
  /// What is watched, and how.
  struct Task {
    const std::atomic<bool>* interrupt = nullptr;  ///< may be null
    std::optional<double> seconds;                 ///< from now on
    std::optional<std::uint64_t> megabytes;
    std::function<std::uint64_t()> bytes_in_use;  ///< called from the thread
    std::function<void()> stop;                   ///< called from the thread; tells the solver to stop
  };

  /// Where the system grants no thread, the limit of memory is met at once, and nobody is told to stop.
  explicit Watcher(Task task);
  Watcher(const Watcher&) = delete;
  Watcher& operator=(const Watcher&) = delete;
  ~Watcher();

  /// The limit that was met, or Cause::none.
  [[nodiscard]] Cause met() const { return met_.load(); }

 private:
  [[nodiscard]] Cause look(double elapsed) const;
  void watch();

  Task task_;
  std::atomic<Cause> met_ = Cause::none;
  std::mutex mutex_;
  std::condition_variable ended_;
  bool over_ = false;  ///< guarded by mutex_
  std::thread thread_;
};

}  // namespace cairn::solver
