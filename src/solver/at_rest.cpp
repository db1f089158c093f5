#include "solver/at_rest.hpp"

#include <algorithm>
#include <array>
#include <numeric>

#include "solver/blocks.hpp"

namespace cairn::solver {

using system::Block;
using system::Rails;
using system::Term;

namespace {

constexpr Block none{};

Block first_rows(std::size_t count) {
  Block rows;
  for (std::size_t i = 0; i < count; ++i) insert(rows, i);
  return rows;
}

// What is known of Booleans: of Blocks, everything.
const Block& may_hold(const Block& holds) {
  return holds;
}
const Block& may_hold(const Rails& rails) {
  return rails.may_hold;
}
Block surely_holds(const Block& holds) {
  return holds;
}
Block surely_holds(const Rails& rails) {
  return without(rails.may_hold, rails.may_fail);
}

void let_hold(Block& block, std::size_t place) {
  insert(block, place);
}
void let_hold(Rails& rails, std::size_t place) {
  insert(rails.may_hold, place);
  rails.may_fail.words[place / 64] &= ~(std::uint64_t{1} << place % 64);
}

}  // namespace

ColdStart::ColdStart(system::Moves& moves, const system::Coding& coding)
    : most_passes_(moves.space.devices() + 2),
      cold_(moves.terms, moves.now, coding, {}, &*moves.cold),
      pass_(moves.terms, moves.now, coding, std::array{moves.pass.unsettled}, &moves.passed),
      goal_(moves.terms, moves.now, coding, std::array{!system::goal(moves.terms, moves.now.state, moves.now_derived)},
            nullptr) {}

ColdStart::Outcome ColdStart::run(RowEvaluator& evaluator, const std::uint64_t* rows, std::size_t count,
                                  std::uint64_t& passes) const {
  const std::size_t words = evaluator.words();
  Outcome outcome{none, first_rows(count), none, std::vector<std::uint64_t>(count * words)};
  evaluator.run(cold_, rows, count, outcome.reached.data());
  std::vector<std::uint64_t> after(count * words);
  for (std::size_t i = 0; i < most_passes_ && any(outcome.endless); ++i) {
    evaluator.run(pass_, outcome.reached.data(), count, after.data());
    for_each_row(outcome.endless, count, [&](std::size_t row) {
      std::copy_n(after.data() + row * words, words, outcome.reached.data() + row * words);
      ++passes;
    });
    const Block unsettled = evaluator.holds(0);
    insert(outcome.unclear, both(outcome.endless, without(evaluator.may_hold(0), unsettled)));
    outcome.endless = both(outcome.endless, unsettled);
  }
  evaluator.run(goal_, outcome.reached.data(), count, nullptr);
  outcome.missed = without(evaluator.holds(0), outcome.unclear);
  insert(outcome.unclear, without(evaluator.may_hold(0), outcome.missed));
  return outcome;
}

Losses::Losses(system::Moves& moves, const system::Coding& coding, std::int64_t k)
    : coding_(coding),
      k_(k),
      cables_(moves.space.cables()),
      breach_(broken_at_rest(moves.terms, moves.now.state, moves.now_derived, {Property::tolerates_loss, k}, 0)),
      breakable_(moves.terms, moves.now.booleans, breach_.breakable),
      fatal_(
          moves.terms,
          [&] {
            std::vector<Term> inputs = moves.now.booleans;
            inputs.insert(inputs.end(), breach_.lost.begin(), breach_.lost.end());
            return inputs;
          }(),
          std::array{breach_.broken}) {}

template <class Word>
std::optional<std::vector<std::uint32_t>> Losses::breakable(const std::vector<Word>& state) const {
  std::vector<Word> plugged_and_unbroken(cables_);
  std::vector<Word> registers;
  breakable_.run(state, plugged_and_unbroken, registers);
  std::vector<std::uint32_t> cables;
  for (std::uint32_t c = 0; c < cables_; ++c) {
    if (!any(may_hold(plugged_and_unbroken[c]))) continue;
    if (!any(surely_holds(plugged_and_unbroken[c]))) return std::nullopt;
    cables.push_back(c);
  }
  return cables;
}

namespace {

/// Every way to choose some of the first `all` numbers, in ascending order.
class Choices {
 public:
  Choices(std::size_t all, std::size_t some) : all_(all), chosen_(some) {
    std::iota(chosen_.begin(), chosen_.end(), std::size_t{0});
  }
  [[nodiscard]] const std::vector<std::size_t>& operator*() const { return chosen_; }
  /// False where there is no other.
  bool next() {
    std::size_t i = chosen_.size();
    while (i > 0 && chosen_[i - 1] == all_ - chosen_.size() + i - 1) --i;
    if (i == 0) return false;
    std::iota(chosen_.begin() + static_cast<std::ptrdiff_t>(i) - 1, chosen_.end(), chosen_[i - 1] + 1);
    return true;
  }

 private:
  std::size_t all_;
  std::vector<std::size_t> chosen_;
};

}  // namespace

template <class Word>
std::optional<Losses::Fatal> Losses::find_fatal(std::vector<Word> inputs,
                                                const std::function<void(std::size_t)>& foretell) const {
  const auto known = breakable(inputs);
  if (!known) return Fatal{{}, false};
  const std::vector<std::uint32_t>& cables = *known;
  const std::size_t booleans = inputs.size();
  const std::size_t some = std::min(cables.size(), static_cast<std::size_t>(k_));
  Choices choices(cables.size(), some);
  std::vector<std::vector<std::size_t>> tried;
  std::vector<Word> registers;
  std::optional<Fatal> perhaps;
  for (bool more = true; more;) {
    inputs.resize(booleans);
    inputs.resize(booleans + cables_);
    tried.clear();
    while (more && tried.size() < system::most_rows) {
      for (const std::size_t i : *choices) let_hold(inputs[booleans + cables[i]], tried.size());
      tried.push_back(*choices);
      more = choices.next();
    }
    foretell(tried.size());
    Word fatal;
    fatal_.run(inputs, std::span(&fatal, 1), registers);
    const auto first_of = [&](const Block& rows, bool sure) {
      std::optional<Fatal> found;
      for_each_row(rows, tried.size(), [&](std::size_t place) {
        if (found) return;
        found = Fatal{{}, sure};
        for (const std::size_t i : tried[place]) found->cables.push_back(CableId(cables[i]));
      });
      return found;
    };
    if (auto found = first_of(surely_holds(fatal), true)) return found;
    if (!perhaps) perhaps = first_of(may_hold(fatal), false);
  }
  return perhaps;
}

std::optional<Losses::Fatal> Losses::find_fatal(RowKind kind, const std::uint64_t* row,
                                                const std::function<void(std::size_t)>& foretell) const {
  if (kind == RowKind::partial) return find_fatal(rails_of(coding_, row), foretell);
  return find_fatal(booleans_of(coding_, row), foretell);
}

}  // namespace cairn::solver
