#include "syntax/positions.hpp"

#include <algorithm>
#include <string_view>

namespace cairn::syntax {

namespace {

bool is_space(char c) {
  return c == ' ' || c == '\t' || c == '\n' || c == '\r';
}

std::uint32_t narrow(std::size_t n) {
  return static_cast<std::uint32_t>(n);
}

/// The offset of every byte of `value` in `text` from `at` on, where folding may have changed blanks and breaks only.
std::vector<std::uint32_t> align(std::string_view text, std::size_t at, std::string_view value) {
  std::vector<std::uint32_t> offsets;
  offsets.reserve(value.size() + 1);
  for (const char c : value) {
    if (is_space(c)) {
      offsets.push_back(narrow(at));
      if (at < text.size() && is_space(text[at])) ++at;
      continue;
    }
    while (at < text.size() && is_space(text[at])) ++at;
    if (at >= text.size() || text[at] != c) return {};
    offsets.push_back(narrow(at));
    ++at;
  }
  offsets.push_back(narrow(at));
  return offsets;
}

}  // namespace

Positions::Positions(const Node& scalar) : whole_(scalar.place) {
  const auto text = scalar.place.source->text();
  std::size_t start = scalar.place.offset;
  if (scalar.kind == Node::Kind::quoted && start < text.size()) {
    const bool block = text[start] == '|' || text[start] == '>';
    start = block ? std::min(text.find('\n', start), text.size()) : start + 1;
  }
  if (text.substr(std::min(start, text.size())).starts_with(scalar.text)) {
    in_one_piece_ = true;
    shift_ = narrow(start);
  } else {
    offsets_ = align(text, start, scalar.text);
  }
}

Place Positions::at(std::size_t offset, std::size_t length) const {
  if (in_one_piece_) return {whole_.source, narrow(shift_ + offset), narrow(std::max<std::size_t>(1, length))};
  if (offset >= offsets_.size()) return whole_;
  const auto first = offsets_[offset];
  const auto last = offsets_[std::min(offset + std::max<std::size_t>(1, length), offsets_.size()) - 1];
  return {whole_.source, first, std::max(last, first) - first + 1};
}

}  // namespace cairn::syntax
