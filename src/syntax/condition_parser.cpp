#include "syntax/condition_parser.hpp"

#include <algorithm>
#include <array>
#include <functional>

#include <fmt/format.h>

#include "base/text.hpp"

namespace cairn::syntax {

namespace {

using Kind = Condition::Kind;

/// What stands between the parentheses of a word.
enum class Takes : std::uint8_t { device, devices, port, cable, step };

struct WordRule {
  std::string_view word;
  Kind kind;
  Takes takes;
};

constexpr std::array<WordRule, 15> word_rules = {{
    {"up", Kind::up, Takes::device},
    {"held", Kind::held, Takes::device},
    {"starting", Kind::starting, Takes::device},
    {"off", Kind::off, Takes::device},
    {"linked", Kind::linked, Takes::cable},
    {"cable-up", Kind::cable_up, Takes::cable},
    {"together", Kind::together, Takes::devices},
    {"primary", Kind::primary, Takes::device},
    {"follower", Kind::follower, Takes::device},
    {"number", Kind::number, Takes::device},
    {"priority", Kind::priority, Takes::device},
    {"saved", Kind::saved, Takes::device},
    {"enabled", Kind::enabled, Takes::port},
    {"side", Kind::side, Takes::port},
    {"done", Kind::done, Takes::step},
}};

bool is_number(Kind kind) {
  return kind == Kind::number || kind == Kind::priority;
}

bool fits(Takes takes, Reference::Form form) {
  if (takes == Takes::port) return form == Reference::Form::port;
  if (takes == Takes::cable) return form != Reference::Form::port;
  return form == Reference::Form::name;
}

std::string_view shape_of(Takes takes) {
  switch (takes) {
    case Takes::device:
      return "one device";
    case Takes::devices:
      return "devices, with commas between them";
    case Takes::port:
      return "one port, DEVICE/PORT";
    case Takes::cable:
      return "one cable, its id or DEVICE/PORT--DEVICE/PORT";
    case Takes::step:
      return "the id of one step, or its place";
  }
  return {};
}

/// A text that is read from left to right. The first failure is reported; after it nothing else is.
class Text {
 public:
  Text(const Node& node, Problems& problems) : text_(node.text), positions_(node), problems_(problems) {
    skip_blanks();
  }

  [[nodiscard]] bool at_end() const { return at_ >= text_.size(); }
  [[nodiscard]] char next() const { return at_end() ? '\0' : text_[at_]; }

  bool take(std::string_view sign) {
    if (!text_.substr(at_).starts_with(sign)) return false;
    at_ += sign.size();
    skip_blanks();
    return true;
  }

  /// The word (letters, digits and dashes, as in names) that comes next; not taken.
  [[nodiscard]] std::string_view peek_word() const {
    static constexpr std::string_view letters = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_.";
    const auto end = std::min(text_.find_first_not_of(letters, at_), text_.size());
    return text_.substr(at_, end - at_);
  }

  bool take_word(std::string_view word) {
    if (peek_word() != word) return false;
    return take(word);
  }

  std::optional<Reference> take_reference() {
    const auto scanned = scan_reference(text_, at_, true);
    if (const auto* failure = std::get_if<NotScanned>(&scanned)) {
      fail_at(failure->at.offset, failure->at.length, failure->expected);
      return std::nullopt;
    }
    skip_blanks();
    return located(std::get<Scanned>(scanned), text_, positions_);
  }

  std::optional<Sign> take_sign() {
    static constexpr std::array<Word<Sign>, 6> signs = {{{"<=", Sign::less_or_equal},
                                                         {">=", Sign::greater_or_equal},
                                                         {"!=", Sign::not_equal},
                                                         {"=", Sign::equal},
                                                         {"<", Sign::less},
                                                         {">", Sign::greater}}};
    for (const auto& [word, sign] : signs) {
      if (take(word)) return sign;
    }
    return std::nullopt;
  }

  /// An integer or `$NAME`.
  std::optional<Value> take_value() {
    const auto start = at_;
    if (take("$")) {
      const auto name = std::string(peek_word());
      if (const auto why = not_a_name(name, false)) {
        fail_at(start, 1, "`$` and the name of a parameter");
        return std::nullopt;
      }
      const auto place = positions_.at(start, at_ + name.size() - start);
      take(name);
      return Value{0, name, place};
    }
    const bool plus = next() == '+';
    if (plus) ++at_;
    const auto word = peek_word();
    const auto number = plus && word.starts_with('-') ? std::nullopt : to_integer(word);
    if (!number) {
      fail_at(start, (plus ? 1 : 0) + word.size(), "an integer of 64 bits or `$` and the name of a parameter");
      return std::nullopt;
    }
    const auto place = positions_.at(start, at_ + word.size() - start);
    take(word);
    return Value{*number, {}, place};
  }

  /// Reports what comes next, once.
  void fail(std::string expected, std::string nearest = {}) {
    const auto word = peek_word();
    fail_at(at_, word.empty() ? 1 : word.size(), std::move(expected), std::move(nearest));
  }

  void fail(const Place& place, std::string message, std::string expected) {
    if (!failed_) problems_.add(place, std::move(message), std::move(expected));
    failed_ = true;
  }

  [[nodiscard]] Place place_of_next() const { return positions_.at(at_, std::max<std::size_t>(1, peek_word().size())); }
  [[nodiscard]] bool failed() const { return failed_; }
  Problems& problems() { return problems_; }

 private:
  void skip_blanks() {
    while (!at_end() && std::string_view(" \t\n").find(text_[at_]) != std::string_view::npos) ++at_;
  }

  void fail_at(std::size_t offset, std::size_t length, std::string expected, std::string nearest = {}) {
    if (failed_) return;
    failed_ = true;
    const bool end = offset >= text_.size();
    if (!end) length = std::max(length, code_point_at(text_, offset).length);
    problems_.add(positions_.at(offset, length),
                  end ? std::string("the condition ends too early")
                      : fmt::format("{} cannot stand here in a condition", quoted(text_.substr(offset, length))),
                  std::move(expected), std::move(nearest));
  }

  std::string_view text_;
  Positions positions_;
  Problems& problems_;
  std::size_t at_ = 0;
  bool failed_ = false;
};

/// The joins, which conditions and assumptions share. `Atom` is read by `take_atom`, which has failed where it gives
/// nothing.
template <class Atom>
class Parser {
 public:
  using Tree = Formula<Atom>;
  using Join = typename Tree::Join;

  Parser(Text& text, std::function<std::optional<Atom>(Text&)> take_atom)
      : text_(text), take_atom_(std::move(take_atom)) {}

  std::optional<Tree> whole() {
    auto tree = condition(0);
    if (tree && !text_.at_end()) {
      text_.fail("and, or, implies or the end of the condition");
      return std::nullopt;
    }
    return tree;
  }

 private:
  // condition = either [ "implies" condition ]
  std::optional<Tree> condition(int depth) {
    if (too_deep(depth)) return std::nullopt;
    auto left = chain(Join::any, "or", depth);
    if (!left || !text_.take_word("implies")) return left;
    auto right = condition(depth + 1);
    if (!right) return std::nullopt;
    return joined(Join::implies, {std::move(*left), std::move(*right)});
  }

  // either = both { "or" both }, both = unary { "and" unary }
  std::optional<Tree> chain(Join join, std::string_view word, int depth) {
    std::vector<Tree> parts;
    do {
      auto part = join == Join::any ? chain(Join::all, "and", depth) : unary(depth);
      if (!part) return std::nullopt;
      parts.push_back(std::move(*part));
    } while (text_.take_word(word));
    if (parts.size() == 1) return std::move(parts.front());
    return joined(join, std::move(parts));
  }

  // unary = "not" unary | "(" condition ")" | atom
  std::optional<Tree> unary(int depth) {
    if (too_deep(depth)) return std::nullopt;
    if (text_.take_word("not")) {
      auto part = unary(depth + 1);
      if (!part) return std::nullopt;
      std::vector<Tree> parts;
      parts.push_back(std::move(*part));
      return joined(Join::negation, std::move(parts));
    }
    if (text_.take("(")) {
      auto inner = condition(depth + 1);
      if (inner && !text_.take(")")) {
        text_.fail("`)`, and, or or implies");
        return std::nullopt;
      }
      return inner;
    }
    auto atom = take_atom_(text_);
    if (!atom) return std::nullopt;
    Tree tree;
    tree.atom = std::move(*atom);
    return tree;
  }

  static Tree joined(Join join, std::vector<Tree> parts) {
    Tree tree;
    tree.join = join;
    tree.parts = std::move(parts);
    return tree;
  }

  bool too_deep(int depth) {
    if (depth < deepest_condition) return false;
    text_.fail(text_.place_of_next(), fmt::format("the condition is nested more than {} deep", deepest_condition), "");
    return true;
  }

  Text& text_;
  std::function<std::optional<Atom>(Text&)> take_atom_;
};

const WordRule* find_word(std::string_view word) {
  const auto found =
      std::find_if(word_rules.begin(), word_rules.end(), [&](const WordRule& r) { return r.word == word; });
  return found == word_rules.end() ? nullptr : &*found;
}

void fail_at_word(Text& text) {
  std::array<std::string_view, word_rules.size() + 1> words{"not"};
  std::transform(word_rules.begin(), word_rules.end(), words.begin() + 1, [](const WordRule& r) { return r.word; });
  const auto word = text.peek_word();
  text.fail(word.empty() ? "a condition, such as up(DEVICE)" : one_of(words), text.problems().nearest_to(word, words));
}

/// "(" ref { "," ref } ")", as many and of the form that the word takes.
bool take_references(Text& text, const WordRule& rule, AtomDraft& atom) {
  const auto mismatch = [&](const Place& place) {
    text.fail(place, fmt::format("{} takes {}", rule.word, shape_of(rule.takes)),
              fmt::format("{}(…) with {}", rule.word, shape_of(rule.takes)));
    return false;
  };
  if (!text.take("(")) {
    text.fail(fmt::format("`(` after {}", rule.word));
    return false;
  }
  do {
    auto reference = text.take_reference();
    if (!reference) return false;
    if (!fits(rule.takes, reference->form)) return mismatch(reference->place);
    if (!atom.references.empty() && rule.takes != Takes::devices) return mismatch(reference->place);
    atom.references.push_back(std::move(*reference));
  } while (text.take(","));
  if (text.take(")")) return true;
  text.fail(rule.takes == Takes::devices ? "`,` or `)`" : "`)`");
  return false;
}

bool take_comparison(Text& text, const WordRule& rule, AtomDraft& atom) {
  const auto place = text.place_of_next();
  const auto sign = text.take_sign();
  if (!is_number(rule.kind) && rule.kind != Kind::side) {
    if (sign)
      text.fail(place, fmt::format("{} is compared with nothing", rule.word),
                "and, or, implies or the end of the condition");
    return !sign;
  }
  if (!sign) {
    text.fail(is_number(rule.kind) ? "=, !=, <, <=, > or >=" : "= or !=");
    return false;
  }
  atom.sign = *sign;
  if (is_number(rule.kind)) {
    const auto value = text.take_value();
    if (value) atom.value = *value;
    return value.has_value();
  }
  if (*sign != Sign::equal && *sign != Sign::not_equal) {
    text.fail(place, "a side is neither less nor more than another", "= or !=");
    return false;
  }
  for (const auto& [word, side] : side_words) {
    if (!text.take_word(word)) continue;
    atom.side = side;
    return true;
  }
  constexpr std::array<std::string_view, 3> words = {"none", "east", "west"};
  text.fail(one_of(words), text.problems().nearest_to(text.peek_word(), words));
  return false;
}

std::optional<AtomDraft> take_atom(Text& text) {
  const WordRule* rule = find_word(text.peek_word());
  if (rule == nullptr) {
    fail_at_word(text);
    return std::nullopt;
  }
  text.take(rule->word);
  AtomDraft atom;
  atom.kind = rule->kind;
  if (!take_references(text, *rule, atom) || !take_comparison(text, *rule, atom)) return std::nullopt;
  return atom;
}

std::optional<OperandDraft> take_operand(Text& text) {
  if (text.take_word("address")) {
    if (!text.take("(")) {
      text.fail("`(` after address");
      return std::nullopt;
    }
    const auto device = text.take_reference();
    if (!device) return std::nullopt;
    if (device->form != Reference::Form::name) {
      text.fail(device->place, "address takes one device", "address(DEVICE)");
      return std::nullopt;
    }
    if (!text.take(")")) {
      text.fail("`)`");
      return std::nullopt;
    }
    return OperandDraft{std::nullopt, device->names[0]};
  }
  const char next = text.next();
  const bool begins_value = next == '$' || next == '+' || next == '-' || (next >= '0' && next <= '9');
  if (!begins_value) {
    text.fail("an integer, `$` and the name of a parameter, or address(DEVICE)");
    return std::nullopt;
  }
  const auto value = text.take_value();
  if (!value) return std::nullopt;
  return OperandDraft{value, std::nullopt};
}

std::optional<ComparisonDraft> take_comparison_of_operands(Text& text) {
  ComparisonDraft comparison;
  const auto left = take_operand(text);
  if (!left) return std::nullopt;
  const auto sign = text.take_sign();
  if (!sign) {
    text.fail("=, !=, <, <=, > or >=");
    return std::nullopt;
  }
  const auto place = text.place_of_next();
  const auto right = take_operand(text);
  if (!right) return std::nullopt;
  if (left->address.has_value() != right->address.has_value()) {
    text.fail(place, "an address is compared with addresses alone, a number with numbers",
              left->address ? "address(DEVICE)" : "an integer or a parameter");
    return std::nullopt;
  }
  return ComparisonDraft{*left, *sign, *right};
}

bool is_text(const Node& node, std::string_view what, Problems& problems) {
  if (node.is_scalar()) return true;
  wrong(node, what, "a condition, such as up(DEVICE)", problems);
  return false;
}

}  // namespace

std::optional<ConditionDraft> parse_condition(const Node& node, std::string_view what, Problems& problems) {
  if (!is_text(node, what, problems)) return std::nullopt;
  Text text(node, problems);
  return Parser<AtomDraft>(text, take_atom).whole();
}

std::optional<AssumptionDraft> parse_assumption(const Node& node, Problems& problems) {
  if (!node.is_scalar()) {
    wrong(node, "`assume`", "a comparison, such as $n != 4", problems);
    return std::nullopt;
  }
  Text text(node, problems);
  return Parser<ComparisonDraft>(text, take_comparison_of_operands).whole();
}

}  // namespace cairn::syntax
