/// \file
/// Writes procedures as a careful engineer would: every recipe knows the platform's rules and heeds them. What it
/// writes is mostly right; differential/spoil.hpp then makes the mistakes.
#pragma once

#include "differential/draft.hpp"
#include "differential/random.hpp"

namespace cairn::differential {

class Author {
 public:
  explicit Author(Random& random) : random_(random) {}

  /// Platform, site, steps and goal; neither faults nor properties yet.
  Draft write();

 private:
  // The site: who runs, who waits, and what is cabled.
  void choose_platform();
  DeviceDraft& add_device(bool on);
  void add_members(std::size_t count, bool ring);
  DeviceDraft& add_newcomer(bool on);
  void link(const std::string& a, const std::string& b, bool plugged);
  void state_port(const std::string& port, Side side);
  void shuffle_site();

  // Steps.
  void step(Verb verb, const std::string& subject);
  void step_via(Verb verb, const std::string& subject, const std::string& device);
  void save_or_apply(Verb verb, const std::string& device);
  void await(const ConditionDraft& condition);
  void restart_and_wait(const std::string& device);
  void set_number(const std::string& device, std::int64_t number);
  void configure_port(const std::string& port, Side side);
  void prepare(const std::string& device, const std::vector<std::pair<std::string, Side>>& ports);
  void plug(std::size_t cable);
  void save_all();
  void branch_out(std::size_t from);

  // Recipes: each makes its own site and writes the steps and the goal.
  void append();
  void insert();
  void close();
  void renumber();
  void hand_over();
  void take_out();
  void swap();
  void merge();
  void intrude();
  void wander();

  void aim(const std::vector<std::string>& stack, bool with_primary);
  std::int64_t free_number();
  std::int64_t taken_or_free_number();
  std::string east(const std::string& device) const { return device + "/t2"; }
  std::string west(const std::string& device) const { return device + "/t1"; }

  Random& random_;
  Draft draft_;
  std::vector<std::string> members_;
  std::vector<std::int64_t> numbers_;  ///< Not yet given to anybody, in random order.
};

}  // namespace cairn::differential
