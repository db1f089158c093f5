#include "solver/row_set.hpp"

#include <algorithm>
#include <utility>

#include "solver/blocks.hpp"

namespace cairn::solver {

std::optional<std::uint64_t> WholeRows::read_in(std::size_t count) {
  const std::uint64_t base = table_->size();
  for (std::size_t i = 0; i < count; ++i) {
    if (!writer_.write(set_.at(base + i), table_->next() + i * coding_.words())) return base + i;
  }
  table_->add(count);
  return std::nullopt;
}

RowSet::Outside WholeRows::outside(const std::uint64_t* rows, std::size_t count,
                                   std::span<const std::uint32_t> /*targets*/) const {
  system::Block missing = table_->find(rows, count);
  for (std::uint64_t& word : missing.words) word = ~word;
  return {missing, missing};
}

PartialRows::PartialRows(PartialStateSet& set, const system::Space& space, const system::Coding& coding,
                         std::vector<Event> events)
    : set_(set), space_(space), coding_(coding), writer_(coding), of_event_(std::move(events)) {
  events_ = of_event_.size();
}

bool PartialRows::within(const State& s) const {
  for (system::VariableId v = 0; v < space_.size(); ++v) {
    const bool known = std::find(unknown_.begin(), unknown_.end(), v) == unknown_.end();
    if (known && !coding_.place(v, space_.read(s, v))) return false;
  }
  return true;
}

// What is not known may have any value, also one of no domain: it is wiped out.
std::optional<std::uint64_t> PartialRows::read_in(std::size_t count) {
  const std::size_t words = coding_.words();
  const std::uint64_t base = size();
  rows_.resize(rows_.size() + count * 2 * words);
  for (std::size_t i = 0; i < count; ++i) {
    std::uint64_t* const row = rows_.data() + (base + i) * 2 * words;
    const State& s = set_.at(base + i);
    set_.unknown(base + i, unknown_);
    if (!writer_.write(s, row) && !within(s)) return base + i;
    for (const system::VariableId v : unknown_) {
      const system::Coding::Field& field = coding_.field(v);
      if (field.width == 0) continue;  // of one value, which is known
      const std::uint64_t mask = ((std::uint64_t{1} << field.width) - 1) << field.shift;
      row[field.word] &= ~mask;
      row[words + field.word] |= mask;
    }
  }
  return std::nullopt;
}

void PartialRows::look_at(std::uint64_t base, std::size_t count) {
  targets_.assign(count * events_, nowhere);
  for (std::size_t row = 0; row < count; ++row) {
    set_.ways(base + row, ways_);
    for (const PartialStateSet::Way& way : ways_) {
      const auto event = std::lower_bound(of_event_.begin(), of_event_.end(), way.event);
      if (event == of_event_.end() || *event != way.event) continue;
      targets_[row * events_ + static_cast<std::size_t>(event - of_event_.begin())] =
          static_cast<std::uint32_t>(way.to);
    }
  }
}

RowSet::Outside PartialRows::outside(const std::uint64_t* rows, std::size_t count,
                                     std::span<const std::uint32_t> targets) const {
  const std::size_t words = coding_.words();
  Outside out;
  for (std::size_t i = 0; i < count; ++i) {
    std::uint64_t open = 0;                                             // known there, and not here
    std::uint64_t differ = targets[i] < size() ? 0 : std::uint64_t{1};  // known in both, and not the same
    for (std::size_t w = 0; differ == 0 && w < words; ++w) {
      const std::uint64_t* const row = rows + i * 2 * words;
      const std::uint64_t* const there = (*this)[targets[i]];
      const std::uint64_t known_there = ~there[words + w];
      open |= known_there & row[words + w];
      differ |= known_there & ~row[words + w] & (row[w] ^ there[w]);
    }
    if ((open | differ) != 0) insert(out.may_be, i);
    if (differ != 0) insert(out.surely, i);
  }
  return out;
}

}  // namespace cairn::solver
