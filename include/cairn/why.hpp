/// \file
/// Why a verdict is what it is: what each part of the procedure is needed for, which changes would avoid a refutation,
/// and which rules of the platform decided. Every answer comes from proving a variant of the model.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "cairn/model.hpp"
#include "cairn/options.hpp"
#include "cairn/result.hpp"
#include "cairn/verdict.hpp"

namespace cairn {

/// Something that a procedure can be imagined without.
struct Part {
  enum class Kind : std::uint8_t {
    step,      ///< a step that does something
    await,     ///< a step that waits
    check,     ///< a step that checks
    ordering,  ///< that one step waits for another
  };

  Kind kind = Kind::step;
  StepId step;    ///< the step; of an ordering the one that waits
  StepId before;  ///< of an ordering the one that is waited for; else nothing

  auto operator<=>(const Part&) const = default;
};

/// "step", "await", "check", "ordering"
[[nodiscard]] std::string_view name_of(Part::Kind kind);

/// Every part, by steps in file order: the step itself, then the orderings by which it waits. An ordering that follows
/// from others is none of them.
[[nodiscard]] std::vector<Part> parts_of(const Model& model);

/// The model without these parts, each one of `parts_of(model)`. What followed a step that is left out follows what
/// that step followed; where a condition asks whether it is done, it asks whether all that it followed is done. Of two
/// steps whose ordering is left out each may come first; all that was ordered otherwise stays so. Steps keep their
/// `id`, and are counted anew.
[[nodiscard]] Model without(const Model& model, const std::vector<Part>& parts);

/// What a proved property owes to a part.
enum class Standing : std::uint8_t {
  needed,   ///< without it the property is refuted
  vacuous,  ///< without it the property holds of nothing (semantics 6.e)
  used,     ///< it holds without it, but by another proof: the one at hand uses it
  idle,     ///< it holds without it
  unknown,  ///< whether it holds without it is undecided
};

/// "needed"
[[nodiscard]] std::string_view name_of(Standing standing);

/// What becomes of a property that was proved when parts are left out.
struct LeftOut {
  std::vector<Part> parts;
  Standing standing = Standing::unknown;
  PropertyVerdict
      outcome;  ///< of the model without them: needed comes with a shortest refutation, unknown with a reason
};

/// A change of one step, as somebody would make it in the file.
struct Change {
  enum class Kind : std::uint8_t {
    value,   ///< set-number, set-priority: another number
    move,    ///< another place
    remove,  ///< the step is taken out
  };

  Kind kind = Kind::remove;
  StepId step;
  std::int64_t value = 0;  ///< value: the new one
  StepId anchor;           ///< move: the step beside the new place
  bool behind = false;     ///< move: right behind `anchor`; else right before it

  auto operator<=>(const Change&) const = default;
};

/// The model with these changes, each of a step of its own. A step that moves leaves its followers to what it followed;
/// right behind its anchor it follows that, and is followed by what followed it; right before it, it takes over what
/// its anchor followed. A step that is taken out is gone as with `without`.
[[nodiscard]] Model with_changes(const Model& model, const std::vector<Change>& changes);

/// Changes with which a refuted property is proved, and not of nothing.
struct Repair {
  std::vector<Change> changes;            ///< one or two, of different steps
  std::vector<PropertyVerdict> verdicts;  ///< of all properties asked, with these changes; in the order asked
  bool all_proved = false;                ///< all of them proved, and none of nothing that held of something before
};

/// What was found by trying changes. A change avoids a refutation when the same run, with the changed step at its new
/// place and without events that cannot happen, no longer breaks the property; only those are put to the proof.
struct Repairs {
  /// Changes of one step in a fixed order, then pairs. Pairs are tried where no single change proves everything asked,
  /// and kept where they do; one of the two by itself avoids a refutation.
  std::vector<Repair> found;
  std::uint64_t elsewhere = 0;  ///< changes of one step that avoid a refutation, but let no refuted property be proved
  std::uint64_t tried = 0;      ///< sets of changes that were put to the proof
  bool all_tried = true;        ///< false: the effort was used up, or a limit met, before all were
};

/// A property, and what its verdict owes to the procedure.
struct PropertyWhy {
  AskedProperty asked;
  Verdict verdict = Verdict::undecided;
  /// Proved: one a part, as `parts_of` lists them.
  std::vector<LeftOut> parts;
  /// Proved: sets of awaits, idle or used each by itself, that cannot all be left out; one of each set has to stay, and
  /// no set can be made smaller. When of each set its first await stays, all other such awaits can be left out
  /// together, unless the last set is of standing `unknown`.
  std::vector<LeftOut> one_of;
  /// Proved by facts: per fact of the proof, in the order of Settled::facts, the parts that make it true: those that it
  /// speaks of, and those without which some event would lose it. Empty where a limit was met before they were known.
  std::vector<std::vector<Part>> facts;
};

/// Another value of one of the platform's rules, and what it would do to the verdicts.
struct OtherRule {
  std::string rule;   ///< its key in a platform file: "orphans"
  std::string value;  ///< as a platform file would give it: "restart", "[tenure, number]"
  Platform platform;  ///< with that value
  /// The verdicts that it would make other ones, in the order asked; of a refuted property with a shortest refutation,
  /// of the model on that platform. Undecided: whether the verdict leans on the rule is unknown.
  std::vector<PropertyVerdict> turned;
};

struct Why {
  Report report;                        ///< what `prove` says of the same question
  std::vector<PropertyWhy> properties;  ///< in the order asked
  std::vector<OtherRule> rules;         ///< every other value of every rule
  Repairs repairs;                      ///< how to avoid the refutations
};

/// Settles every asked property, and asks why. The limits are for all of it: what is not settled by then is unknown. An
/// error where `prove` has one.
[[nodiscard]] Result<Why> why(const Model& model, const ProveOptions& options = {});

}  // namespace cairn
