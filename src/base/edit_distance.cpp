#include "base/edit_distance.hpp"

#include <algorithm>
#include <cctype>
#include <vector>

namespace cairn {

std::size_t edit_distance(std::string_view a, std::string_view b) {
  // Three rows of the usual table: the row before last is needed for swaps.
  std::vector<std::size_t> before(b.size() + 1), last(b.size() + 1), row(b.size() + 1);
  for (std::size_t j = 0; j <= b.size(); ++j) last[j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    row[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t replaced = last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
      row[j] = std::min({last[j] + 1, row[j - 1] + 1, replaced});
      if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) row[j] = std::min(row[j], before[j - 2] + 1);
    }
    before.swap(last);
    last.swap(row);
  }
  return last[b.size()];
}

namespace {

std::string lower(std::string_view word) {
  std::string out(word);
  for (char& c : out) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  return out;
}

std::size_t common_prefix(std::string_view a, std::string_view b) {
  return static_cast<std::size_t>(std::mismatch(a.begin(), a.end(), b.begin(), b.end()).first - a.begin());
}

}  // namespace

std::string nearest(std::string_view word, std::span<const std::string_view> candidates) {
  constexpr std::size_t longest = 64;
  if (word.empty() || word.size() > longest) return {};
  const std::size_t most = word.size() == 1 ? 0 : std::clamp<std::size_t>(word.size() / 3, 1, 4);
  const std::string small = lower(word);
  std::size_t best = 2 * most + 2;  // distances are doubled, so that a wrong case counts half
  std::string_view found;
  for (const auto candidate : candidates) {
    if (candidate.size() > word.size() + most || word.size() > candidate.size() + most) continue;
    const std::string small_candidate = lower(candidate);
    std::size_t distance = 2 * edit_distance(small, small_candidate);
    if (small != word || small_candidate != candidate) {
      distance = std::min(2 * edit_distance(word, candidate), distance + 1);
    }
    // Of two as near, the one that begins alike for longer: `power-of` is meant to be `power-off`, not `power-on`.
    const bool as_near = distance == best && !found.empty();
    const bool nearer =
        distance < best || (as_near && common_prefix(small, small_candidate) > common_prefix(small, lower(found)));
    if (nearer) {
      best = distance;
      found = candidate;
    }
  }
  return std::string(found);
}

}  // namespace cairn
