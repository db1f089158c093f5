/// \file
/// Threads that share out the tasks of one list.
#pragma once

#include <condition_variable>
#include <cstddef>
#include <functional>
#include <mutex>
#include <thread>
#include <utility>
#include <vector>

namespace cairn {

/// Waits between lists, and ends with its owner. One owner at a time may call it.
class Crew {
 public:
  /// Which of the crew does a task: below size().
  using Worker = unsigned;
  using Work = std::function<void(std::size_t task, Worker worker)>;

  /// \param most  how many work side by side, at least 1; the caller of run() is one of them. Where the system grants
  ///              fewer threads, as many as it grants
  explicit Crew(unsigned most);
  Crew(const Crew&) = delete;
  Crew& operator=(const Crew&) = delete;
  ~Crew();

  [[nodiscard]] unsigned size() const { return static_cast<unsigned>(threads_.size()) + 1; }

  /// Calls `work` once for each task below `tasks`, in no order that could be relied on, and returns when all are done.
  /// What `work` has written is then seen by the caller. It must not throw.
  void run(std::size_t tasks, Work work) {
    start(tasks, std::move(work));
    finish();
  }

  /// The same in two halves, between which the caller does something else. Demands that the list before is finished, or
  /// called off.
  void start(std::size_t tasks, Work work);
  void finish();
  /// Instead of finish(): leaves out the tasks that nobody has begun.
  void call_off();

 private:
  using Lock = std::unique_lock<std::mutex>;

  void serve(Worker worker);
  void work_off(Worker worker, Lock& lock);

  std::mutex mutex_;
  std::condition_variable begun_, ended_;
  bool over_ = false;
  Work work_;
  std::size_t tasks_ = 0;
  std::size_t taken_ = 0;  ///< of the tasks
  std::size_t done_ = 0;   ///< of those taken
  std::vector<std::thread> threads_;
};

}  // namespace cairn
