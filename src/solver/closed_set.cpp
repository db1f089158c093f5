#include "solver/closed_set.hpp"

#include <algorithm>
#include <new>
#include <optional>
#include <utility>

#include "solver/at_rest.hpp"
#include "solver/row_table.hpp"
#include "system/rows.hpp"

namespace cairn::solver {

using system::Block;
using system::most_rows;
using system::RowProgram;
using system::Term;

namespace {

/// Terms that hold where a property is broken, as the flags of a program from a certain place on.
struct Breaches {
  std::vector<AskedProperty> asked;
  std::vector<Term> terms;

  void add(const AskedProperty& property, Term broken) {
    if (broken == system::never) return;
    asked.push_back(property);
    terms.push_back(broken);
  }
};

/// One event: its program, what it breaks by itself, and the states that wait for it.
struct EventBatch {
  Breaches breaches;
  RowProgram program;
  std::vector<std::uint32_t> waiting;
};

/// Rows that an event left outside the set, so that passes follow.
struct Stirred {
  struct Origin {
    std::uint32_t state;
    std::uint32_t event;
    std::uint32_t passes;
  };
  std::vector<Origin> origins;
  std::vector<std::uint64_t> rows;

  void push(const Origin& origin, const std::uint64_t* row, std::size_t words) {
    origins.push_back(origin);
    rows.insert(rows.end(), row, row + words);
  }
  /// Takes the last `count` out: their rows go to `out`.
  std::vector<Origin> pop(std::size_t count, std::size_t words, std::vector<std::uint64_t>& out) {
    std::vector<Origin> last(origins.end() - static_cast<std::ptrdiff_t>(count), origins.end());
    out.assign(rows.end() - static_cast<std::ptrdiff_t>(count * words), rows.end());
    origins.resize(origins.size() - count);
    rows.resize(rows.size() - count * words);
    return last;
  }
};

bool asks(const std::vector<AskedProperty>& asked, Property property) {
  return std::any_of(asked.begin(), asked.end(), [&](const AskedProperty& a) { return a.property == property; });
}

/// Does the work; ends by an exception where there is something to tell before the end.
class Confirmer {
 public:
  Confirmer(system::Moves& moves, StateSet& set, const std::vector<AskedProperty>& asked, std::uint64_t most,
            const AskLimits& ask)
      : moves_(moves), set_(set), asked_(asked), most_(most), ask_(ask), coding_(moves.space, moves.domains) {}

  SetConfirmation run() {
    try {
      if (set_.size() > std::min(most_, RowTable::most_rows)) end(SetConfirmation::Outcome::too_large);
      check_first_alone();
      read_in();
      check_first();
      write_programs();
      for (std::uint64_t base = 0; base < table_->size(); base += most_rows) look_at(base);
      for (std::uint32_t event = 0; event < batches_.size(); ++event) take(event, 1);
      pass(1);
      look_at_rest();
    } catch (const Over&) {
    } catch (const std::bad_alloc&) {
      told_.outcome = SetConfirmation::Outcome::stopped;
      told_.reason = Reason::memory;
    }
    return std::move(told_);
  }

 private:
  struct Over {};

  [[noreturn]] void end(SetConfirmation::Outcome outcome) {
    told_.outcome = outcome;
    throw Over();
  }
  [[noreturn]] void differ(Difference difference) {
    told_.difference = std::move(difference);
    end(SetConfirmation::Outcome::differs);
  }
  [[noreturn]] void differ(Difference::Kind kind, std::uint64_t state, Trace events,
                           std::optional<AskedProperty> property = {}, std::vector<std::int64_t> reached = {}) {
    differ({kind, set_.at(state), std::move(events), property, std::move(reached)});
  }
  void ask_limits(std::uint64_t bytes) {
    const std::optional<Reason> met = ask_(bytes);
    if (!met) return;
    told_.reason = *met;
    end(SetConfirmation::Outcome::stopped);
  }
  void ask_limits() { ask_limits(RowTable::bytes(coding_.words(), set_.size())); }

  // Depth zero: the initial state before, while and after it settles (4.6). All constants.
  void check_first_alone() {
    if (moves_.first.unfinished != system::never) differ({Difference::Kind::endless, {}, {}, {}, {}});
    for (const AskedProperty& a : asked_) {
      if (speaks_of_goal(a.property)) continue;
      std::vector<Term> cases{broken_in(moves_.terms, moves_.first.end, moves_.first.end_derived, a.property)};
      for (const system::Stage& stage : moves_.first.stages) {
        cases.push_back(broken_in(moves_.terms, stage.state, stage.derived, a.property));
        cases.push_back(broken_by(moves_.terms, stage.state, stage.pass, a.property));
      }
      if (moves_.terms.any(cases) != system::never) differ({Difference::Kind::broken, {}, {}, a, {}});
    }
  }

  void check_first() {
    std::vector<std::int64_t> values;
    for (system::VariableId v = 0; v < moves_.space.size(); ++v) {
      values.push_back(moves_.first.end[v].cases().front().value);
    }
    rows_.resize(coding_.words());
    if (!coding_.write(values, rows_.data()) || (missing(1).words[0] & 1) != 0) {
      differ({Difference::Kind::first_missing, {}, {}, {}, std::move(values)});
    }
  }

  void read_in() {
    ask_limits();
    table_.emplace(coding_.words(), set_.size());
    system::StateWriter writer(coding_);
    for (std::uint64_t base = 0; base < set_.size(); base += most_rows) {
      ask_limits();
      const std::size_t count = std::min<std::uint64_t>(most_rows, set_.size() - base);
      for (std::size_t i = 0; i < count; ++i) {
        std::uint64_t* const row = table_->next() + i * coding_.words();
        if (!writer.write(set_.at(base + i), row)) differ(Difference::Kind::strange, base + i, {});
      }
      table_->add(count);
    }
    told_.effort.states = table_->size();
  }

  RowProgram program(const std::vector<Term>& flags, const system::SymbolicState* after) {
    return {moves_.terms, moves_.now, coding_, flags, after};
  }

  void write_programs() {
    for (const system::Move& move : moves_.events) {
      Breaches breaches;
      for (const AskedProperty& a : asked_) {
        breaches.add(a, broken_by(moves_.terms, moves_.now.state, moves_.now_derived, move.event, a.property));
      }
      RowProgram taken = program(breaches.terms, &move.after);
      batches_.push_back({std::move(breaches), std::move(taken), {}});
    }
    write_pass();
    write_look();
  }

  // In every state on the way, and by what settling does next.
  void write_pass() {
    for (const AskedProperty& a : asked_) {
      on_the_way_.add(a, broken_in(moves_.terms, moves_.now.state, moves_.now_derived, a.property));
      on_the_way_.add(a, broken_by(moves_.terms, moves_.now.state, moves_.pass, a.property));
    }
    std::vector<Term> flags{moves_.pass.unsettled};
    flags.insert(flags.end(), on_the_way_.terms.begin(), on_the_way_.terms.end());
    pass_.emplace(program(flags, &moves_.passed));
  }

  void write_look() {
    system::Terms& terms = moves_.terms;
    std::vector<Term> changes;
    for (system::VariableId v = 0; v < moves_.space.size(); ++v) {
      changes.push_back(!equal(terms, moves_.passed[v], moves_.now.state[v]));
    }
    const Term complete_at_rest =
        terms.both(at_rest(terms, moves_.now.state, moves_.now_derived), complete(terms, moves_.now.state));
    std::vector<Term> flags{terms.any(changes), asks_of_rest() ? complete_at_rest : system::never};
    for (const AskedProperty& a : asked_) {
      in_place_.add(a, broken_in(terms, moves_.now.state, moves_.now_derived, a.property));
      if (a.property != Property::reaches_goal) continue;
      in_place_.add(a, broken_at_rest(terms, moves_.now.state, moves_.now_derived, a, 0).broken);
    }
    flags.insert(flags.end(), in_place_.terms.begin(), in_place_.terms.end());
    for (const system::Move& move : moves_.events) flags.push_back(move.may_happen);
    look_.emplace(program(flags, nullptr));
  }

  [[nodiscard]] bool asks_of_rest() const {
    return asks(asked_, Property::survives_cold_start) || asks(asked_, Property::tolerates_loss);
  }

  // Up to most_rows states of the set, from `base` on.
  void look_at(std::uint64_t base) {
    ask_limits();
    const std::size_t count = std::min<std::uint64_t>(most_rows, table_->size() - base);
    run(*look_, (*table_)[base], count, nullptr);
    for_each_row(flags_[0], count, [&](std::size_t row) { differ(Difference::Kind::unsettled, base + row, {}); });
    for_each_row(flags_[1], count, [&](std::size_t row) { at_rest_.push_back(number(base + row)); });
    std::size_t flag = 2;
    for (const AskedProperty& a : in_place_.asked) {
      for_each_row(flags_[flag++], count,
                   [&](std::size_t row) { differ(Difference::Kind::broken, base + row, {}, a); });
    }
    for (EventBatch& batch : batches_) {
      for_each_row(flags_[flag++], count, [&](std::size_t row) { batch.waiting.push_back(number(base + row)); });
    }
    for (std::uint32_t event = 0; event < batches_.size(); ++event) take(event, most_rows);
    pass(most_rows);
  }

  // Takes the event in the states that wait for it, as long as there are `enough` of them for a run to be worth while.
  void take(std::uint32_t event, std::size_t enough) {
    EventBatch& batch = batches_[event];
    while (batch.waiting.size() >= enough) {
      ask_limits();
      const std::size_t count = std::min(most_rows, batch.waiting.size());
      const std::vector<std::uint32_t> states(batch.waiting.end() - static_cast<std::ptrdiff_t>(count),
                                              batch.waiting.end());
      batch.waiting.resize(batch.waiting.size() - count);
      take(event, states);
    }
  }

  void take(std::uint32_t event, const std::vector<std::uint32_t>& states) {
    const EventBatch& batch = batches_[event];
    const std::size_t words = coding_.words();
    rows_.resize(states.size() * words);
    for (std::size_t i = 0; i < states.size(); ++i) std::copy_n((*table_)[states[i]], words, rows_.data() + i * words);
    run(batch.program, rows_.data(), states.size(), rows_.data());
    told_.effort.events += states.size();
    for (std::size_t i = 0; i < batch.breaches.asked.size(); ++i) {
      for_each_row(flags_[i], states.size(), [&](std::size_t row) {
        differ(Difference::Kind::broken, states[row], {moves_.events[event].event}, batch.breaches.asked[i],
               values(row));
      });
    }
    // What is in the set is settled and not bad: it is looked at in its turn.
    for_each_row(missing(states.size()), states.size(), [&](std::size_t row) {
      stirred_.push({states[row], event, 0}, rows_.data() + row * words, words);
    });
  }

  // Carries out a pass on the stirred rows, as long as there are `enough` of them.
  void pass(std::size_t enough) {
    while (stirred_.origins.size() >= enough) {
      ask_limits();
      const std::size_t count = std::min(most_rows, stirred_.origins.size());
      const std::vector<Stirred::Origin> origins = stirred_.pop(count, coding_.words(), rows_);
      pass(origins);
    }
  }

  void pass(const std::vector<Stirred::Origin>& origins) {
    const std::size_t count = origins.size();
    const std::size_t words = coding_.words();
    const std::vector<std::uint64_t> before = rows_;
    run(*pass_, before.data(), count, rows_.data());
    told_.effort.passes += count;
    for (std::size_t i = 0; i < on_the_way_.asked.size(); ++i) {
      for_each_row(flags_[1 + i], count, [&](std::size_t row) {
        rows_ = before;
        differ_after(Difference::Kind::broken, origins[row], row, on_the_way_.asked[i]);
      });
    }
    const Block unsettled = flags_[0];
    for_each_row(missing(count), count, [&](std::size_t row) {
      if ((unsettled.words[row / 64] >> row % 64 & 1) == 0)
        differ_after(Difference::Kind::leads_out, origins[row], row);
      const Stirred::Origin next{origins[row].state, origins[row].event, origins[row].passes + 1};
      if (next.passes > moves_.space.devices() + 1) differ_after(Difference::Kind::endless, next, row);
      stirred_.push(next, rows_.data() + row * words, words);
    });
  }

  [[noreturn]] void differ_after(Difference::Kind kind, const Stirred::Origin& origin, std::size_t row,
                                 std::optional<AskedProperty> property = {}) {
    differ(kind, origin.state, {moves_.events[origin.event].event}, property, values(row));
  }

  void look_at_rest() {
    for (const AskedProperty& a : asked_) {
      if (a.property == Property::survives_cold_start) cold_start(a);
      if (a.property == Property::tolerates_loss) lose(a);
    }
  }

  void cold_start(const AskedProperty& asked) {
    const ColdStart cold(moves_, coding_);
    const std::size_t words = coding_.words();
    for (std::size_t base = 0; base < at_rest_.size(); base += most_rows) {
      ask_limits();
      const std::size_t count = std::min(most_rows, at_rest_.size() - base);
      std::vector<std::uint64_t> rows(count * words);
      for (std::size_t i = 0; i < count; ++i)
        std::copy_n((*table_)[at_rest_[base + i]], words, rows.data() + i * words);
      ColdStart::Outcome outcome = cold.run(rows.data(), count, told_.effort.passes);
      rows_ = std::move(outcome.reached);
      const Trace events{{Event::Kind::cold_start, 0}};
      for_each_row(outcome.endless, count, [&](std::size_t row) {
        differ(Difference::Kind::endless, at_rest_[base + row], events, asked, values(row));
      });
      for_each_row(outcome.missed, count, [&](std::size_t row) {
        differ(Difference::Kind::broken, at_rest_[base + row], events, asked, values(row));
      });
    }
  }

  void lose(const AskedProperty& asked) {
    const Losses losses(moves_, coding_, asked.k);
    for (const std::uint32_t state : at_rest_) {
      const auto fatal = losses.find_fatal((*table_)[state], [&](std::size_t count) {
        ask_limits();
        told_.effort.losses += count;
        if (told_.effort.losses > most_) end(SetConfirmation::Outcome::too_large);
      });
      if (!fatal) continue;
      Trace events;
      for (const CableId c : *fatal) events.push_back({Event::Kind::broke, c.value});
      differ(Difference::Kind::broken, state, std::move(events), asked);
    }
  }

  void run(const RowProgram& program, const std::uint64_t* rows, std::size_t count, std::uint64_t* after) {
    flags_.resize(std::max(flags_.size(), program.flags()));
    program.run(rows, count, flags_, after, scratch_);
  }

  /// Of the first `count` of rows_, those that are not in the set.
  [[nodiscard]] Block missing(std::size_t count) const {
    Block rows = table_->find(rows_.data(), count);
    for (std::uint64_t& word : rows.words) word = ~word;
    return rows;
  }

  [[nodiscard]] std::vector<std::int64_t> values(std::size_t row) const {
    return coding_.read(rows_.data() + row * coding_.words());
  }

  static std::uint32_t number(std::uint64_t state) { return static_cast<std::uint32_t>(state); }

  system::Moves& moves_;
  StateSet& set_;
  const std::vector<AskedProperty>& asked_;
  std::uint64_t most_;
  const AskLimits& ask_;
  system::Coding coding_;
  SetConfirmation told_;

  std::optional<RowTable> table_;
  std::optional<RowProgram> look_;  ///< a pass changes the state; it is complete and at rest; in_place_; may happen
  Breaches in_place_;
  std::vector<EventBatch> batches_;  ///< one an event of moves_
  std::optional<RowProgram> pass_;   ///< it is unsettled; on_the_way_
  Breaches on_the_way_;
  Stirred stirred_;
  std::vector<std::uint32_t> at_rest_;  ///< states of the set that are complete and at rest

  std::vector<std::uint64_t> rows_;  ///< that are being worked on
  std::vector<Block> flags_;         ///< of the run before
  RowProgram::Scratch scratch_;
};

}  // namespace

SetConfirmation confirm_closed_set(system::Moves& moves, StateSet& set, const std::vector<AskedProperty>& asked,
                                   std::uint64_t most, const AskLimits& ask) {
  return Confirmer(moves, set, asked, most, ask).run();
}

}  // namespace cairn::solver
