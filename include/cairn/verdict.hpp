/// \file
/// What cairn says of a procedure: per property a verdict, for every refutation the events that show it.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "cairn/ids.hpp"
#include "cairn/model.hpp"
#include "cairn/property.hpp"

namespace cairn {

/// One event (semantics 5). `place` is a StepId, DeviceId or CableId by the kind.
struct Event {
  enum class Kind : std::uint8_t {
    step,          ///< 5.a, of a step
    started,       ///< 5.b, of a device
    broke,         ///< 5.c.1, of a cable
    mended,        ///< 5.c.3, of a cable
    crashed,       ///< 5.c.2, of a device
    omitted,       ///< 5.c.4, of a step
    started_late,  ///< 5.c.5, of a device
    cold_start,    ///< 6.a, of all devices at once; `place` is 0
  };

  Kind kind = Kind::step;
  std::uint32_t place = 0;

  [[nodiscard]] StepId step() const { return StepId(place); }
  [[nodiscard]] DeviceId device() const { return DeviceId(place); }
  [[nodiscard]] CableId cable() const { return CableId(place); }
  auto operator<=>(const Event&) const = default;
};

/// Who acts in an event: the operator carries out steps, devices complete their starts, faults do the rest.
enum class Actor : std::uint8_t { operator_, device, fault };
[[nodiscard]] Actor actor_of(Event::Kind kind);

/// The name that verdicts use: "started-late".
[[nodiscard]] std::string_view name_of(Event::Kind kind);

/// A sequence of events from the initial state. Settling (semantics 4) is left out: it follows from the state.
using Trace = std::vector<Event>;

enum class Verdict : std::uint8_t { proved, refuted, undecided };
[[nodiscard]] std::string_view name_of(Verdict verdict);

/// Why a verdict is undecided.
enum class Reason : std::uint8_t { time, memory, interrupted, contradiction };
[[nodiscard]] std::string_view name_of(Reason reason);

/// How a verdict was settled, and what else agreed.
struct Settled {
  enum class By : std::uint8_t {
    refutation,  ///< a run that breaks the property
    facts,       ///< facts that a solver has found to be an invariant which excludes what is bad
    states,      ///< every reachable state visited
    unrolling,   ///< constraints on runs of every length that there is
  };
  By by = By::states;
  std::vector<std::string> facts;  ///< by facts: each in words
  std::string not_by_facts;        ///< by states, where facts were tried: why they do not do
  std::string not_compared;        ///< with both engines, where one alone has settled it: why the other has not
  bool any_number = false;      ///< by facts: they hold however many faults strike, of the kinds that may strike at all
  bool reduced = false;         ///< by states: those that make no difference were left out (docs/reductions.md)
  bool every_instance = false;  ///< by states: of a template, those of all instances (semantics 9)
  bool unclear = false;         ///< by states, reduced: evaluated again, but the formulas could not tell of all of them
  std::size_t length = 0;       ///< by unrolling: no run has more events than this
  /// By refutation: replayed, and the constraints are satisfied by these events. By facts: every reachable state was
  /// visited too, and agrees. By states: the set was evaluated again with the formulas; where it is reduced, each state
  /// for all that differ from it in what is never asked. Always by two writings of the semantics.
  bool confirmed = false;
};

/// "facts"
[[nodiscard]] std::string_view name_of(Settled::By by);

/// How long the parts took, in seconds; shown only where asked for, since it differs from run to run.
struct Timing {
  double exploring = 0;
  double replaying = 0;
  double solving = 0;     ///< proofs by facts, and constraints alone
  double confirming = 0;  ///< refutations put to the formulas, closed sets evaluated again

  void add(const Timing& other);
};

/// What solvers did, in counts that are the same on every machine.
struct SolverWork {
  std::uint64_t questions = 0;  ///< put to them
  std::uint64_t conflicts = 0;  ///< of the one that searches, in all of them
  std::uint64_t judging = 0;    ///< of the one that judges, in its own units

  void add(const SolverWork& other);
  /// What was done since `before`, which counted the same.
  [[nodiscard]] SolverWork since(const SolverWork& before) const;
};

/// What it took to settle one property. What several were asked together in is counted for each.
struct Cost {
  Timing timing;
  SolverWork solving;

  void add(const Cost& other);
};

/// What the reductions have spared explorations (docs/reductions.md).
struct Savings {
  std::uint64_t outcomes = 0;  ///< of events that were taken, in the explorations that were reduced
  /// Of those, the outcomes that had been visited before but for what was forgotten: seniority, settings, budgets,
  /// which of several devices alike is which. One may count in several places.
  std::uint64_t by_seniority = 0, by_settings = 0, by_budgets = 0, by_alike = 0;
  std::uint64_t events_left_out = 0;  ///< by orders, in states that others were taken in
  std::uint64_t states_left = 0;      ///< by orders: states that were left as they are
  std::uint64_t states_alone = 0;     ///< that were visited to choose orders, of parts by themselves

  void add(const Savings& other);
};

/// The answer on one property.
struct PropertyVerdict {
  AskedProperty asked;
  Verdict verdict = Verdict::undecided;
  Trace events;                      ///< Refuted: a shortest refutation, replayed before it is reported.
  std::optional<Instance> instance;  ///< Refuted, of a template: the instance that the events refute (9.d).
  Reason reason{};                   ///< Undecided: why.
  std::string contradiction;         ///< Undecided by contradiction: which two ways disagree, for a bug report.
  std::uint64_t explored = 0;        ///< States visited for the question, the same on all that shared an exploration.
  Settled settled;                   ///< Proved or refuted: how.
  std::string vacuous;               ///< Proved of nothing: why (6.e); else empty.
  Cost cost;
};

/// A contest or a merge that was decided by something that the site file does not state.
struct UnstatedTie {
  enum class Key : std::uint8_t { address, tenure };
  Key key = Key::address;
  DeviceId winner;
  DeviceId loser;

  auto operator<=>(const UnstatedTie&) const = default;
};

/// A group of values of one device that came from the platform's factory values.
struct FactoryValues {
  DeviceId device;
  bool number = false;
  bool priority = false;
  std::vector<PortId> enabled;  ///< Ports whose `enabled` the site does not state.
  std::vector<PortId> side;     ///< Ports whose `side` the site does not state.
};

/// What a verdict rests on, beside the platform's stated rules and those that hold for all (semantics 1.d).
struct RestsOn {
  std::vector<UnstatedTie> ties;       ///< Sorted; of the runs that were explored.
  std::vector<FactoryValues> factory;  ///< In the site's order.
};

/// Something that the procedure or the question provides for, and that happens in no run.
struct Emptiness {
  enum class Kind : std::uint8_t {
    never_waits,    ///< an await whose condition holds whenever its turn comes
    cannot_fail,    ///< a check that holds whenever its turn comes
    never_strikes,  ///< a kind of fault that is allowed
    no_contest,     ///< that rank decides anything: who leads, or who yields of two with the same number
  };

  Kind kind = Kind::never_waits;
  StepId step;          ///< never_waits, cannot_fail
  Event::Kind fault{};  ///< never_strikes: broke, crashed, omitted, started_late or mended

  bool operator==(const Emptiness&) const = default;
};

/// "never-waits"
[[nodiscard]] std::string_view name_of(Emptiness::Kind kind);

/// The answer on one procedure.
struct Report {
  FaultBudget faults;                       ///< The budget in force, overrides applied.
  std::vector<PropertyVerdict> properties;  ///< In the order asked for.
  RestsOn rests_on;
  /// Of all runs of the properties asked, steps in file order first; nothing where not every run was looked at.
  std::optional<std::vector<Emptiness>> findings;
  Timing timing;    ///< Of all properties; what several were asked together in counts once.
  Savings savings;  ///< The same.

  /// Refuted when a property is, else undecided when one is, else proved.
  [[nodiscard]] Verdict verdict() const;
  /// True when two ways to one answer disagreed: nothing may be claimed (exit status 70).
  [[nodiscard]] bool contradicted() const;
  /// True when an interrupt left a property undecided.
  [[nodiscard]] bool interrupted() const;
};

}  // namespace cairn
