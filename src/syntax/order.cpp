#include "syntax/order.hpp"

#include <algorithm>
#include <cstdint>

namespace cairn::syntax {

namespace {

/// Walks the tree in file order and hands every item the steps that have just ended.
class Walker {
 public:
  explicit Walker(std::size_t count) : predecessors_(count) {}

  /// The last steps of `block`, when `before` are the last steps before it.
  std::vector<std::size_t> walk(const Block& block, std::vector<std::size_t> before) {
    for (const auto& item : block.items) {
      if (too_many()) return {};
      before = walk(item, before);
    }
    return before;
  }

  [[nodiscard]] bool too_many() const { return waits_ > most_waits; }
  Predecessors& predecessors() { return predecessors_; }

 private:
  std::vector<std::size_t> walk(const BlockItem& item, const std::vector<std::size_t>& before) {
    if (item.branches.empty()) {
      waits_ += before.size();
      if (!too_many()) predecessors_[item.step] = before;
      return {item.step};
    }
    std::vector<std::size_t> last;
    for (const auto& branch : item.branches) {
      if (too_many()) return {};
      const auto ends = walk(branch, before);
      last.insert(last.end(), ends.begin(), ends.end());
    }
    return last;
  }

  Predecessors predecessors_;
  std::size_t waits_ = 0;
};

constexpr std::size_t none = static_cast<std::size_t>(-1);

/// Takes away, again and again, every step that waits for no step that is left.
class Elimination {
 public:
  explicit Elimination(const Predecessors& predecessors)
      : predecessors_(predecessors),
        followers_(predecessors.size()),
        waits_(predecessors.size()),
        gone_(predecessors.size()) {
    for (std::size_t s = 0; s < predecessors.size(); ++s) {
      waits_[s] = predecessors[s].size();
      for (const auto p : predecessors[s]) followers_[p].push_back(s);
      if (waits_[s] == 0) free_.push_back(s);
    }
  }

  void run() {
    while (!free_.empty()) {
      const auto s = free_.back();
      free_.pop_back();
      take(s);
    }
  }

  void take(std::size_t s) {
    if (gone_[s]) return;
    gone_[s] = true;
    order_.push_back(s);
    for (const auto f : followers_[s]) {
      if (--waits_[f] == 0) free_.push_back(f);
    }
  }

  [[nodiscard]] bool gone(std::size_t s) const { return gone_[s]; }
  /// A predecessor of `s` that is left: there is one when `s` itself is left after run().
  [[nodiscard]] std::size_t left_before(std::size_t s) const {
    const auto& before = predecessors_[s];
    return *std::find_if(before.begin(), before.end(), [&](std::size_t p) { return !gone_[p]; });
  }
  [[nodiscard]] const std::vector<std::size_t>& order() const { return order_; }

 private:
  const Predecessors& predecessors_;
  std::vector<std::vector<std::size_t>> followers_;
  std::vector<std::size_t> waits_;
  std::vector<bool> gone_;
  std::vector<std::size_t> free_, order_;
};

/// A circle that is met when going back from `start`, where every step has a predecessor that is left.
std::vector<std::size_t> circle_before(std::size_t start, const Elimination& left, std::size_t count) {
  std::vector<std::size_t> met(count, none), path;
  auto s = start;
  while (met[s] == none) {
    met[s] = path.size();
    path.push_back(s);
    s = left.left_before(s);
  }
  std::vector<std::size_t> circle(path.begin() + static_cast<std::ptrdiff_t>(met[s]), path.end());
  std::reverse(circle.begin(), circle.end());
  std::rotate(circle.begin(), std::min_element(circle.begin(), circle.end()), circle.end());
  return circle;
}

}  // namespace

std::optional<Predecessors> file_order(const Block& order, std::size_t count) {
  Walker walker(count);
  walker.walk(order, {});
  if (walker.too_many()) return std::nullopt;
  return std::move(walker.predecessors());
}

std::vector<std::vector<std::size_t>> circles(const Predecessors& predecessors) {
  constexpr std::size_t most_circles = 100;  // each costs a walk over the steps
  std::vector<std::vector<std::size_t>> found;
  Elimination left(predecessors);
  left.run();
  for (std::size_t s = 0; s < predecessors.size() && found.size() < most_circles; ++s) {
    while (!left.gone(s) && found.size() < most_circles) {
      found.push_back(circle_before(s, left, predecessors.size()));
      for (const auto member : found.back()) left.take(member);
      left.run();
    }
  }
  return found;
}

void leave_out_redundant(Predecessors& predecessors) {
  constexpr std::size_t most_steps = 4096;  // a bit for every pair of them: 2 MB
  const auto count = predecessors.size();
  if (count > most_steps) {
    for (auto& before : predecessors) {
      std::sort(before.begin(), before.end());
      before.erase(std::unique(before.begin(), before.end()), before.end());
    }
    return;
  }
  Elimination elimination(predecessors);
  elimination.run();
  std::vector<std::size_t> rank(count);
  for (std::size_t i = 0; i < count; ++i) rank[elimination.order()[i]] = i;

  const std::size_t words = (count + 63) / 64;
  std::vector<std::vector<std::uint64_t>> earlier(count, std::vector<std::uint64_t>(words));
  for (const auto s : elimination.order()) {
    auto& before = predecessors[s];
    // The latest first: whatever precedes one that is kept needs no mention.
    std::sort(before.begin(), before.end(), [&](std::size_t a, std::size_t b) { return rank[a] > rank[b]; });
    std::vector<std::size_t> kept;
    for (const auto p : before) {
      if ((earlier[s][p / 64] >> (p % 64) & 1u) != 0) continue;
      kept.push_back(p);
      earlier[s][p / 64] |= std::uint64_t{1} << (p % 64);
      for (std::size_t w = 0; w < words; ++w) earlier[s][w] |= earlier[p][w];
    }
    std::sort(kept.begin(), kept.end());
    before = std::move(kept);
  }
}

}  // namespace cairn::syntax
