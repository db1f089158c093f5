/// \file
/// Text for people: UTF-8 that is checked and counted, words that are quoted, listed and put in the plural.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace cairn {

/// Where `text` first stops being UTF-8 (RFC 3629: no overlong form, no surrogate, nothing above U+10FFFF), in bytes.
[[nodiscard]] std::optional<std::size_t> first_invalid_utf8(std::string_view text);

/// The code point that starts at byte `at` of valid UTF-8, and its length in bytes.
struct CodePoint {
  std::uint32_t value = 0;
  std::size_t length = 1;
};
[[nodiscard]] CodePoint code_point_at(std::string_view text, std::size_t at);

/// The number of characters (code points) of `text`. A byte that is no UTF-8 counts as one, unless it looks like the
/// continuation of the character before it.
[[nodiscard]] std::size_t count_code_points(std::string_view text);

/// How many columns a terminal gives to a code point: 0 for combining marks, 2 for wide East Asian forms, else 1.
[[nodiscard]] int columns_of(std::uint32_t code_point);

/// True for C0 and C1 controls and DEL, which must not reach a terminal.
[[nodiscard]] bool is_control(std::uint32_t code_point);

/// `text` made fit for a terminal: what is no UTF-8 and every control but the tab becomes U+FFFD, one for one.
[[nodiscard]] std::string printable(std::string_view text);

/// `word` between backticks, made printable, and shortened in the middle when it is longer than a line.
[[nodiscard]] std::string quoted(std::string_view word);

/// "a", "a or b", "a, b or c".
[[nodiscard]] std::string one_of(std::span<const std::string_view> words);

/// `text` without the blanks, tabs and line feeds at its ends.
[[nodiscard]] std::string trimmed(std::string_view text);

/// "1 step", "2 steps".
[[nodiscard]] std::string counted(std::size_t n, std::string_view thing);

}  // namespace cairn
