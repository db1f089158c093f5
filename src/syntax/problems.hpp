/// \file
/// Every problem of a run, collected.
#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "cairn/diagnostic.hpp"
#include "syntax/source.hpp"

namespace cairn::syntax {

/// Collects problems from all files of a run. Hostile input may hold millions: beyond `most` they are only counted.
class Problems {
 public:
  static constexpr std::size_t most = 10'000;

  /// A problem of a stretch of text.
  void add(const Place& place, std::string message, std::string expected = {}, std::string nearest = {});
  /// A problem of a whole file.
  void add(const std::string& file, std::string message, std::string expected = {});

  /// The candidate nearest to `word`, or nothing; within a budget for the whole run, since both may be many.
  [[nodiscard]] std::string nearest_to(std::string_view word, std::span<const std::string_view> candidates);

  [[nodiscard]] bool none() const { return found_.empty(); }
  /// How many there are so far: a reader that finds no more than before has read without a problem.
  [[nodiscard]] std::size_t count() const { return found_.size() + left_out_; }

  /// All of them, without repetitions, by file in the order of `files`, then by line and column.
  [[nodiscard]] Diagnostics sorted(const std::vector<std::string>& files) const;

 private:
  void keep(Diagnostic problem);

  Diagnostics found_;
  std::size_t left_out_ = 0;
  std::size_t comparisons_left_ = 2'000'000;
};

}  // namespace cairn::syntax
