#include <algorithm>
#include <string>
#include <vector>

#include <fmt/format.h>

#include "base/text.hpp"
#include "cairn/render.hpp"
#include "report/layout.hpp"

namespace cairn {

namespace {

using report::Page;
using report::Tone;

/// A line cut to a window around the marked stretch, and what stands under it.
struct Excerpt {
  std::string line;
  std::string marks;
};

/// The characters of a line as a terminal shows them, each with the columns that it takes. A tab is shown as a blank.
struct Shown {
  std::string text;
  int columns = 1;
};

std::vector<Shown> characters_of(const std::string& line) {
  const std::string fit = report::in_one_line(line);
  std::vector<Shown> characters;
  for (std::size_t at = 0; at < fit.size();) {
    const auto character = code_point_at(fit, at);
    characters.push_back({fit.substr(at, character.length), columns_of(character.value)});
    at += character.length;
  }
  return characters;
}

/// Demands a column that the line has, or the one behind its end.
Excerpt excerpt_of(const Diagnostic& problem) {
  constexpr std::size_t most_shown = 72;
  constexpr std::size_t most_before = 40;
  const auto characters = characters_of(problem.source_line);
  const std::size_t marked = std::min(static_cast<std::size_t>(problem.span.column - 1), characters.size());
  const std::size_t marked_end = marked + static_cast<std::size_t>(std::max(1, problem.span.length));
  std::size_t first = 0;
  if (characters.size() > most_shown && marked > most_before) first = marked - most_before;
  const std::size_t last = std::min(characters.size(), first + most_shown);

  Excerpt excerpt;
  if (first > 0) {
    excerpt.line = "..";
    excerpt.marks = "  ";
  }
  for (std::size_t i = first; i < last; ++i) {
    const auto& [text, columns] = characters[i];
    excerpt.line += text;
    if (i < marked_end) excerpt.marks.append(static_cast<std::size_t>(columns), i < marked ? ' ' : '^');
  }
  if (marked == characters.size()) excerpt.marks += '^';
  if (last < characters.size()) excerpt.line += "..";
  return excerpt;
}

std::string position_of(const Span& span) {
  std::string file = span.file == "-" ? "standard input" : report::in_one_line(span.file);
  if (span.line == 0) return file;
  if (span.column == 0) return fmt::format("{}:{}", file, span.line);
  return fmt::format("{}:{}:{}", file, span.line, span.column);
}

void add(Page& page, const Diagnostic& problem) {
  constexpr std::size_t indent = 4, label_width = 10;
  page.line(fmt::format("{}: {}", page.painted(position_of(problem.span), Tone::faint),
                        page.painted(report::in_one_line(problem.message), Tone::bad)));
  if (!problem.source_line.empty() && problem.span.column > 0) {
    const auto excerpt = excerpt_of(problem);
    page.line(fmt::format("    {}", excerpt.line));
    page.line(fmt::format("    {}", page.painted(excerpt.marks, Tone::bad)));
  }
  if (!problem.expected.empty()) page.entry(indent, "expected", label_width, problem.expected);
  if (!problem.nearest.empty()) page.entry(indent, "nearest", label_width, problem.nearest);
}

}  // namespace

std::string render_diagnostics(const Diagnostics& problems, const TextStyle& style) {
  Page page(style);
  for (const auto& problem : problems) {
    add(page, problem);
    page.line();
  }
  page.line(counted(problems.size(), "problem") + ".");
  return page.take();
}

}  // namespace cairn
