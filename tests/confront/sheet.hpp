/// \file
/// Formulas beside the answers of the concrete functions, 64 assignments at a time.
#pragma once

#include <cstdint>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "system/evaluate.hpp"
#include "system/variables.hpp"

namespace cairn::confront {

/// How often a kind of question was answered, and how often with yes. Adds up over many sheets.
struct Count {
  std::uint64_t asked = 0;
  std::uint64_t held = 0;
};
using Tally = std::map<std::string, Count, std::less<>>;

/// Checks that each kind was answered with yes and with no at least `least` times, so that agreement means something.
void check_both_answers(const Tally& tally, std::uint64_t least);

/// "4.1 yields 1234 of 5678, …", and the number of answers altogether.
[[nodiscard]] std::string told(const Tally& tally);

/// A list of questions, each a term, and lanes to answer them in. Questions first, then lanes: open a lane, answer in
/// it, and when 64 are full the terms are evaluated and compared with the answers. What differs is kept as text.
class Sheet {
 public:
  using Question = std::size_t;
  /// The questions on one value: what it is. A value that none of its cases has is a difference of its own.
  struct OfValue {
    Question first = 0;
    std::vector<std::int64_t> values;
    std::string what;
  };
  /// The questions on a state: the variables that differ from those of another, which are asked after; the others keep
  /// the value that they have in that state.
  struct OfState {
    std::vector<std::pair<system::VariableId, OfValue>> changed;
    std::vector<system::VariableId> kept;
  };

  /// \param inputs  what the terms are built from
  Sheet(const system::Terms& terms, std::vector<system::Term> inputs, Tally& tally)
      : terms_(&terms), inputs_(std::move(inputs)), tally_(&tally) {}

  Question ask(std::string_view kind, std::string what, system::Term term);
  OfValue ask(std::string_view kind, const std::string& what, const system::Value& value);
  OfState ask(std::string_view kind, const std::string& what, const system::SymbolicState& before,
              const system::SymbolicState& after);

  /// Opens the next lane, in which the inputs at these places are true. `told` is asked for in case of a difference.
  void open(const std::vector<std::size_t>& truths, std::function<std::string()> told);
  /// Makes an input of the open lane true.
  void set(std::size_t input);
  void answer(Question question, bool holds);
  void answer(const OfValue& questions, std::int64_t value);
  void answer(const OfState& questions, const State& before, const State& after);

  /// Evaluates what is still open, and fails the test where something differs.
  void finish();

  /// Something that differs by itself, told in the open lane.
  void differs(const std::string& what);

 private:
  struct Asked {
    Count* count;
    std::string what;
    system::Term term;
    system::Lanes answered = 0;
    system::Lanes holds = 0;
  };

  [[nodiscard]] system::Lanes open_lane() const { return system::Lanes{1} << (lanes_.size() - 1); }
  void evaluate();

  const system::Terms* terms_;
  std::vector<system::Term> inputs_;
  Tally* tally_;
  const system::Space* space_ = nullptr;
  std::vector<Asked> asked_;
  std::vector<system::Lanes> values_;  ///< per input
  std::vector<std::function<std::string()>> lanes_;
  std::optional<system::Program> program_;
  std::vector<system::Lanes> results_, scratch_;
  std::vector<std::string> differences_;
};

}  // namespace cairn::confront
