#include "confront/sheet.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <bit>

namespace cairn::confront {

using system::Lanes;

void check_both_answers(const Tally& tally, std::uint64_t least) {
  for (const auto& each : tally) {
    const Count& count = each.second;
    INFO(each.first << ": " << count.held << " of " << count.asked);
    CHECK(count.held >= least);
    CHECK(count.asked - count.held >= least);
  }
}

std::string told(const Tally& tally) {
  std::string text;
  std::uint64_t all = 0;
  for (const auto& [kind, count] : tally) {
    text += kind + " " + std::to_string(count.held) + " of " + std::to_string(count.asked) + ", ";
    all += count.asked;
  }
  return text + "in all " + std::to_string(all);
}

Sheet::Question Sheet::ask(std::string_view kind, std::string what, system::Term term) {
  Count& count = tally_->try_emplace(std::string(kind)).first->second;
  asked_.push_back({&count, std::string(kind) + ", " + std::move(what), term});
  return asked_.size() - 1;
}

Sheet::OfValue Sheet::ask(std::string_view kind, const std::string& what, const system::Value& value) {
  OfValue questions{asked_.size(), {}, std::string(kind) + ", " + what};
  for (const auto& [integer, holds] : value.cases()) {
    ask(kind, what + " is " + std::to_string(integer), holds);
    questions.values.push_back(integer);
  }
  return questions;
}

Sheet::OfState Sheet::ask(std::string_view kind, const std::string& what, const system::SymbolicState& before,
                          const system::SymbolicState& after) {
  OfState questions;
  const system::Space& space = after.space();
  for (system::VariableId v = 0; v < space.size(); ++v) {
    if (after[v] == before[v]) {
      questions.kept.push_back(v);
    } else {
      questions.changed.emplace_back(v, ask(kind, what + ": " + space.name(v), after[v]));
    }
  }
  space_ = &space;
  return questions;
}

void Sheet::open(const std::vector<std::size_t>& truths, std::function<std::string()> told) {
  if (lanes_.size() == 64) evaluate();
  values_.resize(inputs_.size());
  lanes_.push_back(std::move(told));
  for (const std::size_t input : truths) set(input);
}

void Sheet::set(std::size_t input) {
  values_[input] |= open_lane();
}

void Sheet::answer(Question question, bool holds) {
  asked_[question].answered |= open_lane();
  if (holds) asked_[question].holds |= open_lane();
}

void Sheet::answer(const OfValue& questions, std::int64_t value) {
  bool known = false;
  for (std::size_t i = 0; i < questions.values.size(); ++i) {
    known = known || questions.values[i] == value;
    answer(questions.first + i, questions.values[i] == value);
  }
  if (!known) differs(questions.what + " cannot be " + std::to_string(value));
}

void Sheet::answer(const OfState& questions, const State& before, const State& after) {
  for (const auto& [v, of_value] : questions.changed) answer(of_value, space_->read(after, v));
  for (const system::VariableId v : questions.kept) {
    if (space_->read(before, v) != space_->read(after, v)) differs(space_->name(v) + " is not kept");
  }
}

void Sheet::differs(const std::string& what) {
  constexpr std::size_t enough = 5;
  if (differences_.size() < enough) differences_.push_back(what + "\n  in " + lanes_.back()());
}

void Sheet::evaluate() {
  if (!program_) {
    std::vector<system::Term> outputs;
    for (const Asked& asked : asked_) outputs.push_back(asked.term);
    program_.emplace(*terms_, inputs_, outputs);
    results_.resize(outputs.size());
  }
  program_->run(values_, std::span(results_), scratch_);
  for (std::size_t i = 0; i < asked_.size(); ++i) {
    Asked& asked = asked_[i];
    asked.count->asked += static_cast<std::uint64_t>(std::popcount(asked.answered));
    asked.count->held += static_cast<std::uint64_t>(std::popcount(asked.holds));
    const Lanes wrong = asked.answered & (asked.holds ^ results_[i]);
    if (wrong != 0 && differences_.size() < 5) {
      const auto lane = static_cast<std::size_t>(std::countr_zero(wrong));
      const bool concrete = (asked.holds >> lane & 1U) != 0;
      differences_.push_back(asked.what + (concrete ? ": holds, not by the formula" : ": holds by the formula alone") +
                             "\n  in " + lanes_[lane]());
    }
    asked.answered = asked.holds = 0;
  }
  lanes_.clear();
  std::fill(values_.begin(), values_.end(), 0);
}

void Sheet::finish() {
  if (!lanes_.empty()) evaluate();
  for (const std::string& difference : differences_) FAIL_CHECK(difference);
}

}  // namespace cairn::confront
