/// \file
/// An input text and the places in it.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "cairn/diagnostic.hpp"

namespace cairn::syntax {

/// One input text, indexed so that any place in it is told as line and column at once.
/// A byte order mark at its start is taken off. Lines end with LF or CRLF.
class Source {
 public:
  /// `file` is the name that diagnostics use. Demands a text below 2^32 bytes.
  Source(std::string file, std::string text);

  [[nodiscard]] const std::string& file() const { return file_; }
  [[nodiscard]] std::string_view text() const { return text_; }

  /// The stretch of `length` bytes from `offset` on, cut at the end of its line.
  [[nodiscard]] Span span(std::size_t offset, std::size_t length) const;

  /// The line that holds `offset`, without its break. Empty when it is longer than a person would read.
  [[nodiscard]] std::string line(std::size_t offset) const;

 private:
  static constexpr std::size_t block_size = 1024;
  static constexpr std::size_t longest_shown_line = 4096;

  /// The bytes of line `number` (from 0) without its break.
  [[nodiscard]] std::string_view bytes_of_line(std::size_t number) const;
  /// The line (from 0) that holds `offset`.
  [[nodiscard]] std::size_t line_of(std::size_t offset) const;
  /// Code points before `offset`.
  [[nodiscard]] std::size_t code_points_before(std::size_t offset) const;

  std::string file_;
  std::string text_;
  std::vector<std::uint32_t> line_starts_;
  std::vector<std::uint32_t> blocks_;  ///< code points before each block of `block_size` bytes
};

/// A stretch of a source, cheap to keep in every node.
struct Place {
  const Source* source = nullptr;
  std::uint32_t offset = 0;
  std::uint32_t length = 1;  ///< in bytes

  [[nodiscard]] Span span() const { return source->span(offset, length); }
};

/// Something that was read, and where.
template <class T>
struct Located {
  T value{};
  Place place;
};

using Name = Located<std::string>;

}  // namespace cairn::syntax
