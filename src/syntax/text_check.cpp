#include "syntax/text_check.hpp"

#include <fmt/format.h>

#include "base/text.hpp"

namespace cairn::syntax {

namespace {

/// True for the first byte of a character that may stand in a model.
bool may_stand(std::string_view text, std::size_t at, const CodePoint& character) {
  constexpr std::uint32_t next_line = 0x85;  // printable by YAML 1.2.2, section 5.1
  switch (character.value) {
    case '\t':
    case '\n':
    case next_line:
      return true;
    case '\r':
      return text.substr(at + 1).starts_with('\n');
    case 0xFFFE:
    case 0xFFFF:
      return false;
    default:
      return !is_control(character.value);
  }
}

Place place_at(const Source& source, std::size_t at, std::size_t length) {
  return {&source, static_cast<std::uint32_t>(at), static_cast<std::uint32_t>(length)};
}

}  // namespace

bool is_text(const Source& source, Problems& problems) {
  const auto text = source.text();
  if (const auto bad = first_invalid_utf8(text)) {
    const bool wide = text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF");
    problems.add(place_at(source, *bad, 1),
                 wide ? "this looks like UTF-16"
                      : fmt::format("the byte {:#04x} is no UTF-8", static_cast<unsigned char>(text[*bad])),
                 "a text file in UTF-8");
    return false;
  }
  for (std::size_t at = 0; at < text.size();) {
    const auto character = code_point_at(text, at);
    if (!may_stand(text, at, character)) {
      const bool lone = character.value == '\r';
      problems.add(place_at(source, at, character.length),
                   lone ? "a carriage return without a line feed"
                        : fmt::format("the control character U+{:04X} has no place in a model", character.value),
                   lone ? "lines that end with LF or CRLF" : "a text file in UTF-8");
      return false;
    }
    at += character.length;
  }
  return true;
}

}  // namespace cairn::syntax
