#include "explore/split/splitter.hpp"

#include "base/contradiction.hpp"

namespace cairn::explore {

using semantics::Rank;
using unknowns::CaseId;
using unknowns::Literal;
using unknowns::Relation;

// The last choice that has another answer left is answered so; those behind it will be asked anew.
bool Splitter::goes_on() {
  while (!choices_.empty() && ++choices_.back().at == choices_.back().options.size()) choices_.pop_back();
  return !choices_.empty();
}

// What has one answer alone decides nothing: its case has the same instances.
template <class Options>
std::size_t Splitter::choose(const Literal& asked, Options options) {
  if (asked_ == choices_.size()) {
    std::vector<Option> found = options();
    if (found.empty()) throw Contradiction("a comparison has no answer in any instance");
    if (found.size() == 1) found.front().leads_to = here_;
    choices_.push_back({asked, std::move(found), 0});
  }
  const Choice& choice = choices_[asked_++];
  if (choice.asked != asked) throw Contradiction("what is asked in a case depends on what other cases have shown");
  here_ = choice.options[choice.at].leads_to;
  return choice.options[choice.at].answer;
}

bool Splitter::is(Quantity a, Relation relation, Quantity b) {
  const Relation possible = cases_.possible(here_, a, b);
  if (possible.within(relation)) return true;
  if ((possible & relation).none()) return false;
  return choose({a, b, relation}, [&] {
           std::vector<Option> options;
           if (const auto yes = cases_.refine(here_, {a, b, relation})) options.push_back({1, *yes});
           if (const auto no = cases_.refine(here_, {a, b, relation.complement()})) options.push_back({0, *no});
           return options;
         }) != 0;
}

bool Splitter::equal(Quantity a, Quantity b) {
  return is(a, Relation::equal(), b);
}

bool Splitter::less(Quantity a, Quantity b) {
  return is(a, Relation::less(), b);
}

class Splitter::Ranking {
 public:
  Ranking(unknowns::Cases& cases, const std::vector<Rank>& ranks, const std::vector<bool>& higher_wins)
      : cases_(cases), ranks_(ranks), higher_wins_(higher_wins) {}

  std::vector<Option> options(CaseId from) {
    for (winner_ = 0; winner_ < ranks_.size(); ++winner_) beat(from, 0, 0);
    return std::move(options_);
  }

 private:
  // The winner is better than `other` by the key `key`, or equal by that key and better by one behind it. Each way that
  // some instance has leads on to the next of the others.
  // NOLINTNEXTLINE(misc-no-recursion): as deep as there are keys of devices
  void beat(CaseId in, std::size_t other, std::size_t key) {
    if (other == winner_) return beat(in, other + 1, 0);
    if (other == ranks_.size()) return options_.push_back({winner_, in});
    if (key == higher_wins_.size()) return;
    const Quantity ours = ranks_[winner_][key];
    const Quantity theirs = ranks_[other][key];
    const Relation better = higher_wins_[key] ? Relation::greater() : Relation::less();
    if (const auto wins = cases_.refine(in, {ours, theirs, better})) beat(*wins, other + 1, 0);
    if (const auto ties = cases_.refine(in, {ours, theirs, Relation::equal()})) beat(*ties, other, key + 1);
  }

  unknowns::Cases& cases_;
  const std::vector<Rank>& ranks_;
  const std::vector<bool>& higher_wins_;
  std::size_t winner_ = 0;
  std::vector<Option> options_;
};

std::size_t Splitter::best(const std::vector<Rank>& ranks, const std::vector<bool>& higher_wins) {
  const Literal first_two{ranks[0].back(), ranks[1].back(), Relation::any()};
  return choose(first_two, [&] { return Ranking(cases_, ranks, higher_wins).options(here_); });
}

}  // namespace cairn::explore
