#include "solver/watcher.hpp"

#include <algorithm>
#include <chrono>
#include <system_error>
#include <utility>

namespace cairn::solver {

namespace {

using Clock = std::chrono::steady_clock;
using Seconds = std::chrono::duration<double>;

// Short against the second within which an interrupt has to be answered, long against what a look costs.
constexpr Seconds between_looks{0.02};

}  // namespace

Watcher::Watcher(Task task) : task_(std::move(task)) {
  if (task_.interrupt == nullptr && !task_.seconds && !task_.megabytes) return;
  try {
    thread_ = std::thread([this] { watch(); });
  } catch (const std::system_error&) {  // a thread that is not granted wants its room for a stack
    met_ = Cause::memory;
  }
}

Watcher::~Watcher() {
  if (!thread_.joinable()) return;
  {
    const std::lock_guard lock(mutex_);
    over_ = true;
  }
  ended_.notify_one();
  thread_.join();
}

Cause Watcher::look(double elapsed) const {
  if (task_.interrupt != nullptr && task_.interrupt->load(std::memory_order_relaxed)) return Cause::interrupted;
  if (task_.seconds && elapsed >= *task_.seconds) return Cause::time;
  if (task_.megabytes && task_.bytes_in_use() / 1'000'000 >= *task_.megabytes) return Cause::memory;
  return Cause::none;
}

void Watcher::watch() {
  const auto start = Clock::now();
  std::unique_lock lock(mutex_);
  while (!over_) {
    const double elapsed = Seconds(Clock::now() - start).count();
    if (met_ == Cause::none) met_ = look(elapsed);
    if (met_ != Cause::none) task_.stop();
    Seconds pause = between_looks;
    if (task_.seconds && met_ == Cause::none) pause = std::min(pause, Seconds(*task_.seconds - elapsed));
    ended_.wait_for(lock, pause, [this] { return over_; });
  }
}

}  // namespace cairn::solver
