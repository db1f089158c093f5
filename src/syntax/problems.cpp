#include "syntax/problems.hpp"

#include <algorithm>
#include <tuple>

#include <fmt/format.h>

#include "base/edit_distance.hpp"
#include "base/text.hpp"

namespace cairn::syntax {

void Problems::keep(Diagnostic problem) {
  if (found_.size() < most) {
    found_.push_back(std::move(problem));
  } else {
    ++left_out_;
  }
}

void Problems::add(const Place& place, std::string message, std::string expected, std::string nearest) {
  if (found_.size() >= most) {
    ++left_out_;
    return;
  }
  keep({place.span(), std::move(message), std::move(expected), std::move(nearest), place.source->line(place.offset)});
}

void Problems::add(const std::string& file, std::string message, std::string expected) {
  Span whole;
  whole.file = file;
  keep({whole, std::move(message), std::move(expected), {}, {}});
}

std::string Problems::nearest_to(std::string_view word, std::span<const std::string_view> candidates) {
  if (candidates.size() > comparisons_left_) return {};
  comparisons_left_ -= candidates.size();
  return nearest(word, candidates);
}

Diagnostics Problems::sorted(const std::vector<std::string>& files) const {
  const auto rank = [&](const Diagnostic& d) {
    const auto file = std::find(files.begin(), files.end(), d.span.file) - files.begin();
    return std::tuple(file, d.span.line, d.span.column);
  };
  const auto same = [&](const Diagnostic& a, const Diagnostic& b) {
    return rank(a) == rank(b) && a.message == b.message && a.expected == b.expected;
  };
  Diagnostics all = found_;
  std::stable_sort(all.begin(), all.end(), [&](const auto& a, const auto& b) { return rank(a) < rank(b); });
  // A text that aliases bring in several times is wrong several times, but told once.
  all.erase(std::unique(all.begin(), all.end(), same), all.end());
  if (left_out_ > 0) {
    Diagnostic rest;
    rest.span.file = files.empty() ? std::string() : files.front();
    rest.message = fmt::format("{} are left out here", counted(left_out_, "further problem"));
    all.push_back(std::move(rest));
  }
  return all;
}

}  // namespace cairn::syntax
