#include "report/layout.hpp"

#include <algorithm>

#include "base/text.hpp"

namespace cairn::report {

namespace {

std::string_view code_of(Tone tone) {
  switch (tone) {
    case Tone::plain:
      return "";
    case Tone::heading:
      return "\x1b[1m";
    case Tone::good:
      return "\x1b[1;32m";
    case Tone::bad:
      return "\x1b[1;31m";
    case Tone::open:
      return "\x1b[1;33m";
    case Tone::fault:
      return "\x1b[33m";
    case Tone::faint:
      return "\x1b[2m";
  }
  return "";
}

}  // namespace

std::string in_one_line(std::string_view text) {
  std::string line(text);
  std::replace_if(
      line.begin(), line.end(), [](char c) { return c == '\n' || c == '\r' || c == '\t'; }, ' ');
  return printable(line);
}

std::size_t width_of(std::string_view text) {
  std::size_t width = 0;
  for (std::size_t at = 0; at < text.size();) {
    const CodePoint character = code_point_at(text, at);
    width += static_cast<std::size_t>(columns_of(character.value));
    at += character.length;
  }
  return width;
}

std::string padded(std::string_view text, std::size_t width) {
  std::string out(text);
  const std::size_t taken = width_of(text);
  if (taken < width) out.append(width - taken, ' ');
  return out;
}

std::string shortened(const std::string& name, std::size_t width) {
  if (name.size() <= width) return name;
  const std::size_t tail = (width - 2) / 2;
  return name.substr(0, width - 2 - tail) + ".." + name.substr(name.size() - tail);
}

std::vector<std::string> wrapped(std::string_view text, std::size_t width) {
  const std::string fit = in_one_line(text);
  std::vector<std::string> lines(1);
  std::size_t taken = 0;
  for (std::size_t at = 0; at < fit.size();) {
    const std::size_t end = std::min(fit.find(' ', at), fit.size());
    const std::string word = fit.substr(at, end - at);
    at = end + 1;
    if (word.empty()) continue;
    const std::size_t needed = width_of(word);
    if (taken > 0 && taken + 1 + needed > width) {
      lines.emplace_back();
      taken = 0;
    }
    if (taken > 0) lines.back() += ' ';
    taken += needed + (taken > 0 ? 1 : 0);
    lines.back() += word;
  }
  return lines;
}

std::string Page::painted(std::string_view text, Tone tone) const {
  if (!style_.colour || tone == Tone::plain || text.empty()) return std::string(text);
  return std::string(code_of(tone)) + std::string(text) + "\x1b[0m";
}

void Page::line(std::string_view text) {
  text_ += text;
  text_ += '\n';
}

void Page::gap() {
  if (!text_.empty()) line();
}

void Page::heading(std::string_view text) {
  gap();
  for (const auto& part : wrapped(text, page_width)) line(painted(part, Tone::heading));
}

void Page::entry(std::size_t indent, std::string_view label, std::size_t label_width, std::string_view text,
                 Tone label_tone, Tone text_tone) {
  const std::string margin(indent, ' ');
  const std::size_t taken = width_of(label);
  std::string before = margin + painted(label, label_tone);
  if (taken < label_width) {
    before.append(label_width - taken, ' ');
  } else {
    // A label that does not fit has a line to itself.
    line(before);
    before.assign(indent + label_width, ' ');
  }
  for (const auto& part : wrapped(text, page_width - indent - label_width)) {
    line(before.append(painted(part, text_tone)));
    before.assign(indent + label_width, ' ');
  }
}

void Page::paragraph(std::size_t indent, std::string_view text, Tone tone) {
  for (const auto& part : wrapped(text, page_width - indent)) line(std::string(indent, ' ') + painted(part, tone));
}

}  // namespace cairn::report
