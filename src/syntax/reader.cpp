#include "syntax/reader.hpp"

#include <algorithm>
#include <charconv>
#include <unordered_map>
#include <unordered_set>

#include <fmt/format.h>

#include "base/text.hpp"

namespace cairn::syntax {

namespace {

bool is_letter_or_digit(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
}
bool is_name_character(char c) {
  return is_letter_or_digit(c) || c == '-' || c == '_' || c == '.';
}

/// Text may break lines and hold tabs; any other control would reach the terminal of whoever reads a report.
bool holds_control(std::string_view text) {
  for (std::size_t at = 0; at < text.size();) {
    const auto character = code_point_at(text, at);
    if (is_control(character.value) && character.value != '\n' && character.value != '\t') return true;
    at += character.length;
  }
  return false;
}

}  // namespace

std::string describe(const Node& node) {
  switch (node.kind) {
    case Node::Kind::empty:
      return "empty";
    case Node::Kind::plain:
      return quoted(node.text);
    case Node::Kind::quoted:
      return fmt::format("the text {}", quoted(node.text));
    case Node::Kind::sequence:
      return "a list";
    case Node::Kind::mapping:
      return "a mapping";
  }
  return {};
}

void wrong(const Node& node, std::string_view what, std::string expected, Problems& problems) {
  problems.add(node.place, fmt::format("{} is {}", what, describe(node)), std::move(expected));
}

std::optional<std::int64_t> to_integer(std::string_view text) {
  if (text.starts_with('+')) {
    text.remove_prefix(1);
    if (text.starts_with('-')) return std::nullopt;
  }
  std::int64_t n = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), n);
  if (error != std::errc() || end != text.data() + text.size()) return std::nullopt;
  return n;
}

std::optional<std::string> not_a_name(std::string_view name, bool ends_at_dashes) {
  if (name.empty()) return "a name is not empty";
  if (!is_letter_or_digit(name.front())) return "a name begins with an ASCII letter or a digit";
  if (!std::all_of(name.begin(), name.end(), is_name_character)) {
    return "a name consists of ASCII letters, digits, `-`, `_` and `.`";
  }
  if (ends_at_dashes && name.find("--") != std::string_view::npos) return "`--` stands in no name of a device or port";
  return std::nullopt;
}

std::optional<Name> read_text(const Node& node, std::string_view what, Problems& problems) {
  if (!node.is_scalar()) {
    wrong(node, what, "text", problems);
    return std::nullopt;
  }
  if (holds_control(node.text)) {
    problems.add(node.place, fmt::format("{} holds a control character", what), "text without control characters");
    return std::nullopt;
  }
  return Name{node.text, node.place};
}

std::optional<Name> read_mention(const Node& node, std::string_view what, Problems& problems) {
  if (node.is_scalar()) return Name{node.text, node.place};
  wrong(node, what, "a name", problems);
  return std::nullopt;
}

std::optional<Name> read_name(const Node& node, std::string_view what, bool ends_at_dashes, Problems& problems) {
  if (!node.is_scalar()) {
    wrong(node, what, "a name", problems);
    return std::nullopt;
  }
  if (const auto why = not_a_name(node.text, ends_at_dashes)) {
    problems.add(node.place, fmt::format("{} is no name", quoted(node.text)), *why);
    return std::nullopt;
  }
  return Name{node.text, node.place};
}

namespace {

std::string integer_within(Range within) {
  if (within.high == no_limit) {
    return within.low == std::numeric_limits<std::int64_t>::min() ? "an integer"
                                                                  : fmt::format("an integer of {} or more", within.low);
  }
  return fmt::format("an integer from {} to {}", within.low, within.high);
}

}  // namespace

std::optional<std::int64_t> read_integer(const Node& node, std::string_view what, Range within, Problems& problems) {
  const auto n = node.kind == Node::Kind::plain ? to_integer(node.text) : std::nullopt;
  if (!n || !within.contains(*n)) {
    wrong(node, what, integer_within(within), problems);
    return std::nullopt;
  }
  return n;
}

std::optional<Value> read_value(const Node& node, std::string_view what, Problems& problems) {
  if (node.kind == Node::Kind::plain && node.text.starts_with('$')) {
    const auto name = node.text.substr(1);
    if (const auto why = not_a_name(name, false)) {
      problems.add(node.place, fmt::format("{} names no parameter", quoted(node.text)),
                   fmt::format("`$` and a name: {}", *why));
      return std::nullopt;
    }
    return Value{0, name, node.place};
  }
  const auto n = node.kind == Node::Kind::plain ? to_integer(node.text) : std::nullopt;
  if (!n) {
    wrong(node, what, "an integer of 64 bits", problems);
    return std::nullopt;
  }
  return Value{*n, {}, node.place};
}

std::optional<bool> read_boolean(const Node& node, std::string_view what, Problems& problems) {
  if (node.kind == Node::Kind::plain && node.text == "true") return true;
  if (node.kind == Node::Kind::plain && node.text == "false") return false;
  wrong(node, what, "true or false", problems);
  return std::nullopt;
}

std::optional<Range> read_range(const Node& node, std::string_view what, std::int64_t least, Problems& problems) {
  if (node.kind != Node::Kind::sequence || node.items.size() != 2) {
    wrong(node, what, "a list of two integers, the lowest and the highest", problems);
    return std::nullopt;
  }
  const auto low = read_integer(node.items[0], fmt::format("the lowest of {}", what), {least, no_limit}, problems);
  const auto high =
      read_integer(node.items[1], fmt::format("the highest of {}", what), {low.value_or(least), no_limit}, problems);
  if (!low || !high) return std::nullopt;
  return Range{*low, *high};
}

std::optional<std::vector<Name>> read_names(const Node& node, std::string_view what, std::string_view element,
                                            bool may_be_empty, Problems& problems) {
  if (node.kind != Node::Kind::sequence) {
    wrong(node, what, fmt::format("a list of {}s", element), problems);
    return std::nullopt;
  }
  if (node.items.empty() && !may_be_empty) {
    problems.add(node.place, fmt::format("{} is an empty list", what), fmt::format("at least one {}", element));
    return std::nullopt;
  }
  std::vector<Name> names;
  std::unordered_set<std::string> seen;
  for (const auto& item : node.items) {
    const auto name = read_mention(item, fmt::format("an element of {}", what), problems);
    if (!name) continue;
    if (seen.insert(name->value).second) {
      names.push_back(*name);
    } else {
      problems.add(name->place, fmt::format("{} stands twice in {}", quoted(name->value), what),
                   fmt::format("each {} once", element));
    }
  }
  return names;
}

std::optional<std::size_t> read_word_index(const Node& node, std::string_view what,
                                           std::span<const std::string_view> words, Problems& problems) {
  if (!node.is_scalar()) {
    wrong(node, what, one_of(words), problems);
    return std::nullopt;
  }
  const auto found = std::find(words.begin(), words.end(), node.text);
  if (found == words.end()) {
    problems.add(node.place, fmt::format("{} is {}", what, describe(node)), one_of(words),
                 problems.nearest_to(node.text, words));
    return std::nullopt;
  }
  return static_cast<std::size_t>(found - words.begin());
}

namespace {

void report_repeated(const Name& key, const Place& first, Problems& problems) {
  problems.add(key.place, fmt::format("the key {} stands twice", quoted(key.value)),
               fmt::format("each key once (it stands on line {} already)", first.span().line));
}

}  // namespace

std::vector<NamedEntry> read_entries(const Node& node, std::string_view what, Problems& problems) {
  std::vector<NamedEntry> entries;
  if (node.kind != Node::Kind::mapping) {
    if (node.kind != Node::Kind::empty) wrong(node, what, "a mapping", problems);
    return entries;
  }
  std::unordered_map<std::string_view, Place> seen;
  for (const auto& [key, value] : node.entries) {
    if (!key.is_scalar()) {
      problems.add(key.place, fmt::format("a key of {} is {}", what, describe(key)), "a name");
      continue;
    }
    const auto [first, is_new] = seen.emplace(key.text, key.place);
    if (is_new) {
      entries.push_back({{key.text, key.place}, &key, &value});
    } else {
      report_repeated({key.text, key.place}, first->second, problems);
    }
  }
  return entries;
}

Fields::Fields(const Node& node, std::string_view what, std::span<const std::string_view> known, Problems& problems)
    : node_(node), what_(what), problems_(problems) {
  is_mapping_ = node.kind == Node::Kind::mapping || node.kind == Node::Kind::empty;
  for (const auto& [name, key, value] : read_entries(node, what, problems)) {
    if (std::find(known.begin(), known.end(), name.value) != known.end()) continue;
    meant_.push_back(problems.nearest_to(name.value, known));
    problems.add(name.place, fmt::format("{} is no key of {}", quoted(name.value), what), one_of(known), meant_.back());
  }
}

const Node* Fields::find(std::string_view key) const {
  const auto found = std::find_if(node_.entries.begin(), node_.entries.end(),
                                  [&](const Entry& e) { return e.key.is_scalar() && e.key.text == key; });
  return found == node_.entries.end() ? nullptr : &found->value;
}

const Node* Fields::require(std::string_view key) {
  const Node* value = find(key);
  const bool reported = std::find(meant_.begin(), meant_.end(), key) != meant_.end();
  if (value == nullptr && is_mapping_ && !reported) {
    problems_.add(node_.place, fmt::format("`{}` is missing: {} needs it", key, what_));
  }
  return value;
}

Place Fields::place_of(std::string_view key) const {
  const auto found = std::find_if(node_.entries.begin(), node_.entries.end(),
                                  [&](const Entry& e) { return e.key.is_scalar() && e.key.text == key; });
  return found == node_.entries.end() ? node_.place : found->key.place;
}

}  // namespace cairn::syntax
