#include "base/crew.hpp"

namespace cairn {

Crew::Crew(unsigned size) {
  try {
    for (Worker worker = 1; worker < size; ++worker) {
      threads_.emplace_back([this, worker] { serve(worker); });
    }
  } catch (...) {
    dismiss();
    throw;
  }
}

Crew::~Crew() {
  dismiss();
}

void Crew::dismiss() {
  {
    const std::scoped_lock lock(mutex_);
    over_ = true;
  }
  begun_.notify_all();
  for (std::thread& thread : threads_) thread.join();
  threads_.clear();
}

void Crew::run(std::size_t tasks, const Work& work) {
  Lock lock(mutex_);
  work_ = &work;
  tasks_ = tasks;
  taken_ = done_ = 0;
  begun_.notify_all();
  work_off(0, lock);
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
    (*work_)(task, worker);
    lock.lock();
    if (++done_ == tasks_) ended_.notify_one();
  }
}

}  // namespace cairn
