#include "syntax/source.hpp"

#include <algorithm>

#include "base/text.hpp"

namespace cairn::syntax {

namespace {
constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
}

Source::Source(std::string file, std::string text) : file_(std::move(file)), text_(std::move(text)) {
  if (text_.starts_with(byte_order_mark)) text_.erase(0, byte_order_mark.size());
  line_starts_.push_back(0);
  for (std::size_t i = 0; i < text_.size(); ++i) {
    if (text_[i] == '\n') line_starts_.push_back(static_cast<std::uint32_t>(i + 1));
  }
  std::size_t before = 0;
  for (std::size_t at = 0; at <= text_.size(); at += block_size) {
    blocks_.push_back(static_cast<std::uint32_t>(before));
    before += count_code_points(std::string_view(text_).substr(at, block_size));
  }
}

std::size_t Source::line_of(std::size_t offset) const {
  const auto after = std::upper_bound(line_starts_.begin(), line_starts_.end(), offset);
  return static_cast<std::size_t>(after - line_starts_.begin()) - 1;
}

std::string_view Source::bytes_of_line(std::size_t number) const {
  const std::size_t start = line_starts_[number];
  const std::size_t end = number + 1 < line_starts_.size() ? line_starts_[number + 1] - 1 : text_.size();
  std::string_view bytes = std::string_view(text_).substr(start, end - start);
  if (bytes.ends_with('\r')) bytes.remove_suffix(1);
  return bytes;
}

std::size_t Source::code_points_before(std::size_t offset) const {
  const std::size_t block = offset / block_size;
  const std::size_t start = block * block_size;
  return blocks_[block] + count_code_points(std::string_view(text_).substr(start, offset - start));
}

Span Source::span(std::size_t offset, std::size_t length) const {
  offset = std::min(offset, text_.size());
  const std::size_t number = line_of(offset);
  const std::size_t start = line_starts_[number];
  const std::size_t end = std::min(offset + length, start + bytes_of_line(number).size());
  Span span;
  span.file = file_;
  span.line = static_cast<int>(number + 1);
  span.column = static_cast<int>(code_points_before(offset) - code_points_before(start) + 1);
  if (end > offset) {
    span.length = std::max(1, static_cast<int>(code_points_before(end) - code_points_before(offset)));
  }
  return span;
}

std::string Source::line(std::size_t offset) const {
  const auto bytes = bytes_of_line(line_of(std::min(offset, text_.size())));
  if (bytes.size() > longest_shown_line) return {};
  return std::string(bytes);
}

}  // namespace cairn::syntax
