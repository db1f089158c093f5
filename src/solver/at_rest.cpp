#include "solver/at_rest.hpp"

#include <algorithm>
#include <array>
#include <numeric>

namespace cairn::solver {

using system::Block;
using system::Term;

namespace {

constexpr Block none{};

bool any(const Block& block) {
  return std::any_of(block.words.begin(), block.words.end(), [](std::uint64_t word) { return word != 0; });
}

Block first_rows(std::size_t count) {
  Block rows;
  for (std::size_t i = 0; i < count; ++i) rows.words[i / 64] |= std::uint64_t{1} << i % 64;
  return rows;
}

Block both(const Block& a, const Block& b) {
  Block block;
  for (std::size_t g = 0; g < block.words.size(); ++g) block.words[g] = a.words[g] & b.words[g];
  return block;
}

}  // namespace

ColdStart::ColdStart(system::Moves& moves, const system::Coding& coding)
    : words_(coding.words()),
      most_passes_(moves.space.devices() + 2),
      cold_(moves.terms, moves.now, coding, {}, &*moves.cold),
      pass_(moves.terms, moves.now, coding, std::array{moves.pass.unsettled}, &moves.passed),
      goal_(moves.terms, moves.now, coding, std::array{!system::goal(moves.terms, moves.now.state, moves.now_derived)},
            nullptr) {}

ColdStart::Outcome ColdStart::run(const std::uint64_t* rows, std::size_t count, std::uint64_t& passes) const {
  system::RowProgram::Scratch scratch;
  Outcome outcome{none, first_rows(count), std::vector<std::uint64_t>(count * words_)};
  cold_.run(rows, count, {}, outcome.reached.data(), scratch);
  std::vector<std::uint64_t> after(count * words_);
  for (std::size_t i = 0; i < most_passes_ && any(outcome.endless); ++i) {
    Block unsettled;
    pass_.run(outcome.reached.data(), count, std::span(&unsettled, 1), after.data(), scratch);
    for_each_row(outcome.endless, count, [&](std::size_t row) {
      std::copy_n(after.data() + row * words_, words_, outcome.reached.data() + row * words_);
      ++passes;
    });
    outcome.endless = both(outcome.endless, unsettled);
  }
  goal_.run(outcome.reached.data(), count, std::span(&outcome.missed, 1), nullptr, scratch);
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

std::vector<std::uint32_t> Losses::breakable(const std::vector<Block>& state) const {
  std::vector<Block> plugged_and_unbroken(cables_), registers;
  breakable_.run(state, plugged_and_unbroken, registers);
  std::vector<std::uint32_t> cables;
  for (std::uint32_t c = 0; c < cables_; ++c) {
    if (any(plugged_and_unbroken[c])) cables.push_back(c);
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

std::optional<std::vector<CableId>> Losses::find_fatal(const std::uint64_t* row,
                                                       const std::function<void(std::size_t)>& foretell) const {
  std::vector<Block> inputs = booleans_of(coding_, row);
  const std::vector<std::uint32_t> cables = breakable(inputs);
  const std::size_t booleans = inputs.size();
  const std::size_t some = std::min(cables.size(), static_cast<std::size_t>(k_));
  Choices choices(cables.size(), some);
  std::vector<std::vector<std::size_t>> tried;
  std::vector<Block> registers;
  for (bool more = true; more;) {
    inputs.resize(booleans);
    inputs.resize(booleans + cables_);
    tried.clear();
    while (more && tried.size() < system::most_rows) {
      const std::size_t place = tried.size();
      for (const std::size_t i : *choices) {
        inputs[booleans + cables[i]].words[place / 64] |= std::uint64_t{1} << place % 64;
      }
      tried.push_back(*choices);
      more = choices.next();
    }
    foretell(tried.size());
    Block fatal;
    fatal_.run(inputs, std::span(&fatal, 1), registers);
    std::optional<std::vector<CableId>> found;
    for_each_row(fatal, tried.size(), [&](std::size_t place) {
      if (found) return;
      found.emplace();
      for (const std::size_t i : tried[place]) found->push_back(CableId(cables[i]));
    });
    if (found) return found;
  }
  return std::nullopt;
}

}  // namespace cairn::solver
