#include "base/crew.hpp"

#include <new>
#include <system_error>

namespace cairn {

// A small crew does all that a large one does.
Crew::Crew(unsigned most) {
  try {
    while (size() < most) {
      threads_.emplace_back([this, worker = size()] { serve(worker); });
    }
  } catch (const std::system_error&) {  // no further thread is granted
    return;
  } catch (const std::bad_alloc&) {  // there is no room for one
    return;
  }
}

Crew::~Crew() {
  {
    const std::scoped_lock lock(mutex_);
    over_ = true;
  }
  begun_.notify_all();
  for (std::thread& thread : threads_) thread.join();
}

void Crew::start(std::size_t tasks, Work work) {
  const Lock lock(mutex_);
  work_ = std::move(work);
  tasks_ = tasks;
  taken_ = done_ = 0;
  begun_.notify_all();
}

void Crew::finish() {
  Lock lock(mutex_);
  work_off(0, lock);
  ended_.wait(lock, [this] { return done_ == tasks_; });
}

void Crew::call_off() {
  Lock lock(mutex_);
  tasks_ = taken_;
  ended_.wait(lock, [this] { return done_ == tasks_; });
}

void Crew::serve(Worker worker) {
  for (Lock lock(mutex_); !over_;) {
    begun_.wait(lock, [this] { return over_ || taken_ < tasks_; });
    if (!over_) work_off(worker, lock);
  }
}

void Crew::work_off(Worker worker, Lock& lock) {
  while (taken_ < tasks_) {
    const std::size_t task = taken_++;
    lock.unlock();
    work_(task, worker);
    lock.lock();
    if (++done_ == tasks_) ended_.notify_one();
  }
}

}  // namespace cairn
