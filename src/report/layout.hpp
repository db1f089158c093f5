/// \file
/// Lines of text for a terminal of 80 columns: wrapping, padding, colour. Colour is never the only carrier of a
/// meaning.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "cairn/render.hpp"

namespace cairn::report {

/// The width that everything fits into, except a single word that is longer.
inline constexpr std::size_t page_width = 80;

/// `text` as one line that no terminal acts upon: line breaks and tabs become blanks, other control characters U+FFFD.
[[nodiscard]] std::string in_one_line(std::string_view text);

/// The columns that a terminal gives to `text`.
[[nodiscard]] std::size_t width_of(std::string_view text);

/// `text` with blanks after it, up to `width` columns.
[[nodiscard]] std::string padded(std::string_view text, std::size_t width);

/// `name` (ASCII) where it fits into `width` columns (at least 5), else its head and its tail with two dots between.
[[nodiscard]] std::string shortened(const std::string& name, std::size_t width);

/// `text`, made fit for a terminal, broken at blanks into lines of at most `width` columns. A longer word has a line to
/// itself.
[[nodiscard]] std::vector<std::string> wrapped(std::string_view text, std::size_t width);

/// What a colour stands for.
enum class Tone { plain, heading, good, bad, open, fault, faint };

/// A text that grows line by line.
class Page {
 public:
  explicit Page(const TextStyle& style) : style_(style) {}

  [[nodiscard]] const TextStyle& style() const { return style_; }
  /// `text` in the colour of `tone`, where there are colours.
  [[nodiscard]] std::string painted(std::string_view text, Tone tone) const;

  /// One line as it stands.
  void line(std::string_view text = {});
  /// An empty line, unless the page is empty.
  void gap();
  /// A heading, with a gap above it.
  void heading(std::string_view text);
  /// `text` wrapped beside `label`, which takes `label_width` columns after `indent` blanks.
  void entry(std::size_t indent, std::string_view label, std::size_t label_width, std::string_view text,
             Tone label_tone = Tone::plain, Tone text_tone = Tone::plain);
  /// `text` wrapped after `indent` blanks.
  void paragraph(std::size_t indent, std::string_view text, Tone tone = Tone::plain);

  [[nodiscard]] std::string take() { return std::move(text_); }

 private:
  TextStyle style_;
  std::string text_;
};

}  // namespace cairn::report
