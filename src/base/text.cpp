#include "base/text.hpp"

#include <algorithm>
#include <array>

#include <fmt/format.h>

namespace cairn {

namespace {

constexpr std::string_view replacement = "\xEF\xBF\xBD";  // U+FFFD

bool continues(char c) {
  return (static_cast<unsigned char>(c) & 0xC0u) == 0x80u;
}

/// The length of the well-formed character at `at`, or 0. RFC 3629, section 4.
std::size_t well_formed_length(std::string_view text, std::size_t at) {
  const auto byte = [&](std::size_t i) -> unsigned {
    return at + i < text.size() ? static_cast<unsigned char>(text[at + i]) : 0u;
  };
  const auto tail = [&](std::size_t i) { return (byte(i) & 0xC0u) == 0x80u; };
  const unsigned first = byte(0);
  if (first < 0x80) return 1;
  if (first >= 0xC2 && first <= 0xDF) return tail(1) ? 2 : 0;
  if (first >= 0xE0 && first <= 0xEF) {
    const bool overlong = first == 0xE0 && byte(1) < 0xA0;
    const bool surrogate = first == 0xED && byte(1) > 0x9F;
    return tail(1) && tail(2) && !overlong && !surrogate ? 3 : 0;
  }
  if (first >= 0xF0 && first <= 0xF4) {
    const bool overlong = first == 0xF0 && byte(1) < 0x90;
    const bool too_large = first == 0xF4 && byte(1) > 0x8F;
    return tail(1) && tail(2) && tail(3) && !overlong && !too_large ? 4 : 0;
  }
  return 0;
}

struct Stretch {
  std::uint32_t first, last;
};

template <std::size_t N>
bool within(const std::array<Stretch, N>& stretches, std::uint32_t code_point) {
  return std::any_of(stretches.begin(), stretches.end(),
                     [=](const Stretch& s) { return s.first <= code_point && code_point <= s.last; });
}

}  // namespace

std::optional<std::size_t> first_invalid_utf8(std::string_view text) {
  for (std::size_t at = 0; at < text.size();) {
    const auto length = well_formed_length(text, at);
    if (length == 0) return at;
    at += length;
  }
  return std::nullopt;
}

CodePoint code_point_at(std::string_view text, std::size_t at) {
  const auto length = std::max<std::size_t>(1, well_formed_length(text, at));
  const auto first = static_cast<unsigned char>(text[at]);
  if (length == 1) return {first, 1};
  std::uint32_t value = first & (0xFFu >> (length + 1));
  for (std::size_t i = 1; i < length; ++i) value = (value << 6u) | (static_cast<unsigned char>(text[at + i]) & 0x3Fu);
  return {value, length};
}

std::size_t count_code_points(std::string_view text) {
  return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) { return !continues(c); }));
}

int columns_of(std::uint32_t code_point) {
  // The blocks that matter in file text; Unicode Standard Annex #11 lists the wide ones in full.
  static constexpr std::array<Stretch, 5> combining = {
      {{0x0300, 0x036F}, {0x200B, 0x200F}, {0x20D0, 0x20FF}, {0xFE00, 0xFE0F}, {0xFE20, 0xFE2F}}};
  static constexpr std::array<Stretch, 8> wide = {{{0x1100, 0x115F},
                                                   {0x2E80, 0x303E},
                                                   {0x3041, 0xA4CF},
                                                   {0xAC00, 0xD7A3},
                                                   {0xF900, 0xFAFF},
                                                   {0xFE30, 0xFE6F},
                                                   {0xFF00, 0xFF60},
                                                   {0x1F300, 0x1FAFF}}};
  if (within(combining, code_point)) return 0;
  return within(wide, code_point) ? 2 : 1;
}

bool is_control(std::uint32_t code_point) {
  return code_point < 0x20 || (code_point >= 0x7F && code_point < 0xA0);
}

std::string printable(std::string_view text) {
  std::string out;
  out.reserve(text.size());
  for (std::size_t at = 0; at < text.size();) {
    const auto length = well_formed_length(text, at);
    const bool shown = length > 0 && (text[at] == '\t' || !is_control(code_point_at(text, at).value));
    if (shown) {
      out += text.substr(at, length);
    } else {
      out += replacement;
    }
    at += std::max<std::size_t>(1, length);
    // A stray continuation byte counts as no character of its own (count_code_points).
    while (length == 0 && at < text.size() && continues(text[at])) ++at;
  }
  return out;
}

std::string quoted(std::string_view word) {
  constexpr std::size_t longest = 80;
  constexpr std::size_t shown = 36;
  const auto start_of_character = [&](std::size_t at) {
    while (at > 0 && continues(word[at])) --at;
    return at;
  };
  if (word.size() <= longest) return fmt::format("`{}`", printable(word));
  return fmt::format("`{}…{}`", printable(word.substr(0, start_of_character(shown))),
                     printable(word.substr(start_of_character(word.size() - shown))));
}

std::string one_of(std::span<const std::string_view> words) {
  std::string out;
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (i > 0) out += i + 1 == words.size() ? " or " : ", ";
    out += words[i];
  }
  return out;
}

std::string trimmed(std::string_view text) {
  constexpr std::string_view blanks = " \t\n";
  const auto first = text.find_first_not_of(blanks);
  if (first == std::string_view::npos) return {};
  return std::string(text.substr(first, text.find_last_not_of(blanks) - first + 1));
}

std::string counted(std::size_t n, std::string_view thing) {
  return fmt::format("{} {}{}", n, thing, n == 1 ? "" : "s");
}

}  // namespace cairn
