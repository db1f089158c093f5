/// \file
/// The relation of a system beside the concrete events and their settling.
#pragma once

#include <string>
#include <vector>

#include "confront/course.hpp"
#include "confront/models.hpp"
#include "confront/sheet.hpp"
#include "system/build.hpp"

namespace cairn::confront {

class Relation {
 public:
  /// \param name  what a failure calls the model
  Relation(const semantics::World& world, system::System& system, std::string name, Tally& tally);

  /// Of any state: whether it is settled, and what may happen.
  void answer_state(const State& s, bool is_settled);
  /// Of a settled state: that one event is to happen, which may, and no more than one.
  void answer_choice(const State& s, Random& random);
  /// Of a settled state, for each event that may happen: what it leads to, and what it breaks.
  void answer_events(const State& s);
  /// Evaluates what is still open, and fails the test where something differs.
  void finish() { sheet_.finish(); }

 private:
  Sheet ask(Tally& tally);
  [[nodiscard]] State as_counted(const State& s) const;
  [[nodiscard]] std::vector<Event> events_in(const State& s) const;
  void open(const State& s);
  void happens(std::size_t place) { sheet_.set(system_.now.booleans.size() + place); }
  [[nodiscard]] std::size_t place_of(const Event& event) const;
  void answer_event(const State& s, std::size_t place);

  const semantics::World& world_;
  system::System& system_;
  std::string name_;
  Course course_;
  Sheet::Question settled_ = 0, one_event_ = 0, stirs_ = 0, unfinished_ = 0, leads_ = 0;
  std::vector<Sheet::Question> may_happen_, strays_, broken_;
  Sheet::OfState next_;
  Sheet sheet_;
};

}  // namespace cairn::confront
