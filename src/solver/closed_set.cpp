#include "solver/closed_set.hpp"

#include <algorithm>
#include <new>
#include <numeric>
#include <optional>
#include <utility>

#include "solver/at_rest.hpp"
#include "solver/row_set.hpp"
#include "solver/set_judge.hpp"
#include "solver/set_programs.hpp"
#include "solver/stirred.hpp"

namespace cairn::solver {

using system::Block;
using system::most_rows;

namespace {

/// Does the work; ends by an exception where there is something to tell before the end.
class Confirmer {
 public:
  Confirmer(system::Moves& moves, const system::Coding& coding, StateSet& set, RowSet& rows, RowKind kind,
            const std::vector<AskedProperty>& asked, std::uint64_t most, const AskLimits& ask)
      : moves_(moves),
        coding_(coding),
        set_(set),
        table_(rows),
        kind_(kind),
        asked_(asked),
        most_(most),
        judge_(ask),
        evaluator_(coding, kind),
        words_(evaluator_.words()) {}

  SetConfirmation run() {
    try {
      if (set_.size() > std::min(most_, RowSet::most_rows)) judge_.end(SetConfirmation::Outcome::too_large);
      check_first_alone();
      read_in();
      check_first();
      programs_.emplace(moves_, coding_, asked_, kind_);
      waiting_.resize(moves_.events.size());
      for (std::uint64_t base = 0; base < set_.size(); base += most_rows) look_at(base);
      for (std::uint32_t event = 0; event < waiting_.size(); ++event) take(event, 1);
      pass(1);
      look_at_rest();
      if (judge_.told().doubt) judge_.end(SetConfirmation::Outcome::unclear);
    } catch (const SetJudge::Over&) {
    } catch (const std::bad_alloc&) {
      judge_.told().outcome = SetConfirmation::Outcome::stopped;
      judge_.told().reason = Reason::memory;
    }
    return std::move(judge_.told());
  }

 private:
  using Kind = Difference::Kind;
  using Values = std::vector<std::optional<std::int64_t>>;

  void ask_limits() { judge_.ask_limits(table_.bytes()); }

  /// Of the flag of the run before.
  template <class What>
  void judge(std::size_t flag, std::size_t count, What what) {
    judge_.judge(evaluator_.may_hold(flag), evaluator_.holds(flag), count, what);
  }

  // Depth zero: the initial state before, while and after it settles (4.6). All constants.
  void check_first_alone() {
    if (moves_.first.unfinished != system::never) judge_.differ({Kind::endless, {}, {}, {}, {}});
    for (const AskedProperty& a : asked_) {
      if (speaks_of_goal(a.property)) continue;
      std::vector<system::Term> cases{broken_in(moves_.terms, moves_.first.end, moves_.first.end_derived, a.property)};
      for (const system::Stage& stage : moves_.first.stages) {
        cases.push_back(broken_in(moves_.terms, stage.state, stage.derived, a.property));
        cases.push_back(broken_by(moves_.terms, stage.state, stage.pass, a.property));
      }
      if (moves_.terms.any(cases) != system::never) judge_.differ({Kind::broken, {}, {}, a, {}});
    }
  }

  void check_first() {
    std::vector<std::int64_t> values;
    for (system::VariableId v = 0; v < moves_.space.size(); ++v) {
      values.push_back(moves_.first.end[v].cases().front().value);
    }
    Difference missing{Kind::first_missing, {}, {}, {}, Values(values.begin(), values.end())};
    rows_.assign(words_, 0);
    if (!coding_.write(values, rows_.data())) judge_.differ(missing);
    const std::uint32_t first = 0;
    const RowSet::Outside outside = table_.outside(rows_.data(), 1, std::span(&first, 1));
    judge_.judge(outside.may_be, outside.surely, 1, [&](std::size_t) { return missing; });
  }

  void read_in() {
    ask_limits();
    table_.make_room();
    for (std::uint64_t base = 0; base < set_.size(); base += most_rows) {
      ask_limits();
      const std::size_t count = std::min<std::uint64_t>(most_rows, set_.size() - base);
      const std::optional<std::uint64_t> strange = table_.read_in(count);
      if (strange) judge_.differ({Kind::strange, set_.at(*strange), {}, {}, {}});
    }
    judge_.told().effort.states = set_.size();
  }

  // Up to most_rows states of the set, from `base` on.
  void look_at(std::uint64_t base) {
    ask_limits();
    const std::size_t count = std::min<std::uint64_t>(most_rows, set_.size() - base);
    look_for_changes(base, count);
    const auto in_set = [&](Kind kind, std::optional<AskedProperty> property) {
      return [=, this](std::size_t row) { return Difference{kind, set_.at(base + row), {}, property, {}}; };
    };
    judge(0, count, in_set(Kind::unsettled, {}));
    const Block at_rest = evaluator_.holds(1);
    for_each_row(at_rest, count, [&](std::size_t row) { at_rest_.push_back(number(base + row)); });
    for (const AskedProperty& a : asked_) {
      if (asks_complete_at_rest(a))
        judge_.judge(without(evaluator_.may_hold(1), at_rest), {}, count, in_set(Kind::broken, a));
    }
    std::size_t flag = 2;
    for (const AskedProperty& a : programs_->in_place().asked) judge(flag++, count, in_set(Kind::broken, a));
    table_.look_at(base, count);
    for (std::size_t event = 0; event < waiting_.size(); ++event, ++flag) {
      const Block happens = evaluator_.holds(flag);
      for_each_row(happens, count, [&](std::size_t row) {
        waiting_[event].push_back({number(base + row), table_.target(row, event)});
      });
      judge_.judge(without(evaluator_.may_hold(flag), happens), {}, count, [&](std::size_t row) {
        return Difference{Kind::leads_out, set_.at(base + row), {moves_.events[event].event}, {}, {}};
      });
    }
    for (std::uint32_t event = 0; event < waiting_.size(); ++event) take(event, most_rows);
    pass(most_rows);
  }

  // A pass leaves a state of the set as it is; a partial one at least as one of those that it stands for.
  void look_for_changes(std::uint64_t base, std::size_t count) {
    if (!evaluator_.partial()) return evaluator_.run(programs_->look(), table_[base], count, nullptr);
    rows_.resize(count * words_);
    evaluator_.run(programs_->look(), table_[base], count, rows_.data());
    std::vector<std::uint32_t> same(count);
    std::iota(same.begin(), same.end(), number(base));
    const RowSet::Outside outside = table_.outside(rows_.data(), count, same);
    judge_.judge(outside.may_be, outside.surely, count, [&](std::size_t row) {
      return Difference{Kind::unsettled, set_.at(base + row), {}, {}, {}};
    });
  }

  // Takes the event in the states that wait for it, as long as there are `enough` of them for a run to be worth while.
  void take(std::uint32_t event, std::size_t enough) {
    std::vector<Waiting>& waiting = waiting_[event];
    while (waiting.size() >= enough) {
      ask_limits();
      const std::size_t count = std::min(most_rows, waiting.size());
      const std::vector<Waiting> some(waiting.end() - static_cast<std::ptrdiff_t>(count), waiting.end());
      waiting.resize(waiting.size() - count);
      take(event, some);
    }
  }

  void take(std::uint32_t event, const std::vector<Waiting>& from) {
    const EventProgram& taken = programs_->events()[event];
    rows_.resize(from.size() * words_);
    for (std::size_t i = 0; i < from.size(); ++i) std::copy_n(table_[from[i].state], words_, row(i));
    evaluator_.run(taken.program, rows_.data(), from.size(), rows_.data());
    judge_.told().effort.events += from.size();
    for (std::size_t i = 0; i < taken.breaches.asked.size(); ++i) {
      judge(i, from.size(),
            [&](std::size_t at) { return after(Kind::broken, from[at], event, row(at), taken.breaches.asked[i]); });
    }
    targets_.clear();
    for (const Waiting& each : from) targets_.push_back(each.target);
    // What is in the set is settled and not bad: it is looked at in its turn.
    const RowSet::Outside outside = table_.outside(rows_.data(), from.size(), targets_);
    for_each_row(outside.may_be, from.size(), [&](std::size_t at) {
      stirred_.push({from[at], event, 0}, row(at), words_);
    });
  }

  // Carries out a pass on the stirred rows, as long as there are `enough` of them.
  void pass(std::size_t enough) {
    while (stirred_.origins.size() >= enough) {
      ask_limits();
      const std::size_t count = std::min(most_rows, stirred_.origins.size());
      const std::vector<Stirred::Origin> origins = stirred_.pop(count, words_, rows_);
      pass(origins);
    }
  }

  void pass(const std::vector<Stirred::Origin>& origins) {
    const std::size_t count = origins.size();
    const std::vector<std::uint64_t> before = rows_;
    evaluator_.run(programs_->pass(), before.data(), count, rows_.data());
    judge_.told().effort.passes += count;
    const auto after_origin = [&](Kind kind, std::optional<AskedProperty> property) {
      return [&, kind, property](std::size_t at) {
        return after(kind, origins[at].from, origins[at].event, row(at), property);
      };
    };
    const std::vector<AskedProperty>& on_the_way = programs_->on_the_way().asked;
    for (std::size_t i = 0; i < on_the_way.size(); ++i) {
      judge(1 + i, count, [&](std::size_t at) {
        return after(Kind::broken, origins[at].from, origins[at].event, before.data() + at * words_, on_the_way[i]);
      });
    }
    targets_.clear();
    for (const Stirred::Origin& origin : origins) targets_.push_back(origin.from.target);
    const RowSet::Outside outside = table_.outside(rows_.data(), count, targets_);
    // Another pass follows where this one was unsettled for sure; where that is not known, none may be needed.
    const Block unsettled = evaluator_.holds(0);
    judge_.judge(without(outside.may_be, unsettled), without(outside.surely, evaluator_.may_hold(0)), count,
                 after_origin(Kind::leads_out, {}));
    for_each_row(both(outside.may_be, unsettled), count, [&](std::size_t at) {
      const Stirred::Origin next{origins[at].from, origins[at].event, origins[at].passes + 1};
      if (next.passes > moves_.space.devices() + 1) judge_.differ(after_origin(Kind::endless, {})(at));
      stirred_.push(next, row(at), words_);
    });
  }

  /// What is wrong with a row, to which the event led.
  [[nodiscard]] Difference after(Kind kind, const Waiting& from, std::uint32_t event, const std::uint64_t* row,
                                 std::optional<AskedProperty> property) const {
    return {kind, set_.at(from.state), {moves_.events[event].event}, property, values(row)};
  }

  void look_at_rest() {
    for (const AskedProperty& a : asked_) {
      if (a.property == Property::survives_cold_start) cold_start(a);
      if (a.property == Property::tolerates_loss) lose(a);
    }
  }

  void cold_start(const AskedProperty& asked) {
    const ColdStart cold(moves_, coding_);
    for (std::size_t base = 0; base < at_rest_.size(); base += most_rows) {
      ask_limits();
      const std::size_t count = std::min(most_rows, at_rest_.size() - base);
      std::vector<std::uint64_t> rows(count * words_);
      for (std::size_t i = 0; i < count; ++i) std::copy_n(table_[at_rest_[base + i]], words_, rows.data() + i * words_);
      ColdStart::Outcome outcome = cold.run(evaluator_, rows.data(), count, judge_.told().effort.passes);
      rows_ = std::move(outcome.reached);
      const auto afterwards = [&](Kind kind) {
        return [&, kind](std::size_t at) {
          return Difference{kind, set_.at(at_rest_[base + at]), {{Event::Kind::cold_start, 0}}, asked, values(row(at))};
        };
      };
      judge_.judge(outcome.endless, outcome.endless, count, afterwards(Kind::endless));
      judge_.judge(outcome.missed, outcome.missed, count, afterwards(Kind::broken));
      judge_.judge(outcome.unclear, {}, count, afterwards(Kind::broken));
    }
  }

  void lose(const AskedProperty& asked) {
    const Losses losses(moves_, coding_, asked.k);
    for (const std::uint32_t state : at_rest_) {
      const auto fatal = losses.find_fatal(kind_, table_[state], [&](std::size_t count) {
        ask_limits();
        judge_.told().effort.losses += count;
        if (judge_.told().effort.losses > most_) judge_.end(SetConfirmation::Outcome::too_large);
      });
      if (!fatal) continue;
      Difference broken{Kind::broken, set_.at(state), {}, asked, {}};
      for (const CableId c : fatal->cables) broken.events.push_back({Event::Kind::broke, c.value});
      if (fatal->sure) judge_.differ(std::move(broken));
      judge_.doubt(std::move(broken));
    }
  }

  [[nodiscard]] std::uint64_t* row(std::size_t at) { return rows_.data() + at * words_; }

  [[nodiscard]] Values values(const std::uint64_t* row) const {
    const std::vector<std::int64_t> all = coding_.read(row);
    Values values(all.begin(), all.end());
    if (!evaluator_.partial()) return values;
    for (system::VariableId v = 0; v < values.size(); ++v) {
      const system::Coding::Field& field = coding_.field(v);
      if (field.width != 0 && (row[coding_.words() + field.word] >> field.shift & 1) != 0) values[v].reset();
    }
    return values;
  }

  static std::uint32_t number(std::uint64_t state) { return static_cast<std::uint32_t>(state); }

  system::Moves& moves_;
  const system::Coding& coding_;
  StateSet& set_;
  RowSet& table_;
  RowKind kind_;
  const std::vector<AskedProperty>& asked_;
  std::uint64_t most_;
  SetJudge judge_;

  RowEvaluator evaluator_;
  std::size_t words_;  ///< of a row
  std::optional<SetPrograms> programs_;
  std::vector<std::vector<Waiting>> waiting_;  ///< per event of moves_
  Stirred stirred_;
  std::vector<std::uint32_t> at_rest_;  ///< states of the set that are complete and at rest

  std::vector<std::uint64_t> rows_;     ///< that are being worked on
  std::vector<std::uint32_t> targets_;  ///< hints for them
};

}  // namespace

SetConfirmation confirm_closed_set(system::Moves& moves, StateSet& set, const std::vector<AskedProperty>& asked,
                                   std::uint64_t most, const AskLimits& ask) {
  const system::Coding coding(moves.space, moves.domains);
  WholeRows rows(set, coding);
  return Confirmer(moves, coding, set, rows, RowKind::whole, asked, most, ask).run();
}

SetConfirmation confirm_partial_set(system::Moves& moves, PartialStateSet& set, const std::vector<AskedProperty>& asked,
                                    std::uint64_t most, const AskLimits& ask) {
  const system::Coding coding(moves.space, moves.domains);
  std::vector<Event> events;
  for (const system::Move& move : moves.events) events.push_back(move.event);
  PartialRows rows(set, moves.space, coding, std::move(events));
  return Confirmer(moves, coding, set, rows, RowKind::partial, asked, most, ask).run();
}

}  // namespace cairn::solver
