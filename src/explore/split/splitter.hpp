/// \file
/// Comparisons that are not decided, decided one way after the other (semantics 9).
#pragma once

#include <vector>

#include "semantics/decider.hpp"
#include "unknowns/cases.hpp"

namespace cairn::explore {

/// Carries out a piece of work again and again, each time with other answers to what is not decided in a case, until
/// every answer that some instance gives was given once.
class Splitter final : public semantics::Decider {
 public:
  explicit Splitter(unknowns::Cases& cases) : cases_(cases) {}

  /// Calls `work` for every way to decide what it asks, beginning in `from`; afterwards here() is the case that the
  /// answers led to. The work must ask the same where it is answered the same, and may do other such work in its
  /// course.
  template <class Work>
  void in_every_case(unknowns::CaseId from, Work work) {
    const unknowns::CaseId here = here_;
    const std::size_t asked = asked_;
    std::vector<Choice> choices;
    choices.swap(choices_);
    do {
      here_ = from;
      asked_ = 0;
      work();
    } while (goes_on());
    choices.swap(choices_);
    asked_ = asked;
    here_ = here;
  }

  /// What is decided so far, in the work that is being carried out.
  [[nodiscard]] unknowns::CaseId here() const { return here_; }

  bool equal(Quantity a, Quantity b) override;
  bool less(Quantity a, Quantity b) override;
  std::size_t best(const std::vector<semantics::Rank>& ranks, const std::vector<bool>& higher_wins) override;

 private:
  /// An answer, and the case that it leads to.
  struct Option {
    std::size_t answer;
    unknowns::CaseId leads_to;
  };
  /// A question, and the one of its answers that is given now.
  struct Choice {
    unknowns::Literal asked;  ///< the comparison; of a ranking, that of the first two by their last key
    std::vector<Option> options;
    std::size_t at = 0;
  };
  /// Goes through the ways in which one rank is better than each of the others.
  class Ranking;

  [[nodiscard]] bool goes_on();
  bool is(Quantity a, unknowns::Relation relation, Quantity b);
  template <class Options>
  std::size_t choose(const unknowns::Literal& asked, Options options);

  unknowns::Cases& cases_;
  unknowns::CaseId here_ = unknowns::Cases::undecided;
  std::vector<Choice> choices_;  ///< of the work, in the order asked
  std::size_t asked_ = 0;        ///< of those, so many in this round
};

}  // namespace cairn::explore
