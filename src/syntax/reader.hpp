/// \file
/// Typed access to nodes. Whatever is not as it should be is added to the problems, and reading goes on.
#pragma once

#include <array>
#include <cstdint>
#include <functional>
#include <initializer_list>
#include <limits>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "cairn/model.hpp"
#include "syntax/problems.hpp"
#include "syntax/yaml.hpp"

namespace cairn::syntax {

/// An integer, or the name of the parameter that stands for it (semantics 9.a).
struct Value {
  std::int64_t number = 0;
  std::string parameter;  ///< Empty where the integer is given.
  Place place;
};

/// "`abc`", "quoted text", "a list", …: what was found where something else was wanted.
[[nodiscard]] std::string describe(const Node& node);

/// Adds: "`what` is …", expected `expected`.
void wrong(const Node& node, std::string_view what, std::string expected, Problems& problems);

/// The decimal integer with an optional sign that `text` is, if it is one and fits 64 bits.
[[nodiscard]] std::optional<std::int64_t> to_integer(std::string_view text);

/// Why `name` is no name of a device, port, cable, parameter or step; nothing when it is one.
/// `ends_at_dashes`: `--` is forbidden, as in names of devices and ports.
[[nodiscard]] std::optional<std::string> not_a_name(std::string_view name, bool ends_at_dashes);

inline constexpr std::int64_t no_limit = std::numeric_limits<std::int64_t>::max();

// Each of these returns nothing after adding a problem. `what` is the key or the thing that the node gives.
std::optional<Name> read_text(const Node& node, std::string_view what, Problems& problems);
/// A name that something else declares, not yet looked up.
std::optional<Name> read_mention(const Node& node, std::string_view what, Problems& problems);
std::optional<Name> read_name(const Node& node, std::string_view what, bool ends_at_dashes, Problems& problems);
std::optional<std::int64_t> read_integer(const Node& node, std::string_view what, Range within, Problems& problems);
std::optional<Value> read_value(const Node& node, std::string_view what, Problems& problems);
std::optional<bool> read_boolean(const Node& node, std::string_view what, Problems& problems);
std::optional<Range> read_range(const Node& node, std::string_view what, std::int64_t least, Problems& problems);

/// A list of scalars as text, `element` says of what: "device". Elements that are wrong or stand twice are reported and
/// left out; whether each name is known is not yet asked.
std::optional<std::vector<Name>> read_names(const Node& node, std::string_view what, std::string_view element,
                                            bool may_be_empty, Problems& problems);

/// A word that stands for a value.
template <class E>
struct Word {
  std::string_view word;
  E value;
};

std::optional<std::size_t> read_word_index(const Node& node, std::string_view what,
                                           std::span<const std::string_view> words, Problems& problems);

/// One of a few words.
template <class E, std::size_t N>
std::optional<E> read_word(const Node& node, std::string_view what, const std::array<Word<E>, N>& words,
                           Problems& problems) {
  std::array<std::string_view, N> spelled;
  for (std::size_t i = 0; i < N; ++i) spelled[i] = words[i].word;
  const auto index = read_word_index(node, what, spelled, problems);
  if (!index) return std::nullopt;
  return words[*index].value;
}

inline constexpr std::array<Word<Side>, 3> side_words = {
    {{"none", Side::none}, {"east", Side::east}, {"west", Side::west}}};

/// The entries of a mapping whose keys are chosen by the user: names with what they name. Keys that stand twice or are
/// no scalars are reported and left out. An empty value counts as an empty mapping.
struct NamedEntry {
  Name name;
  const Node* key;
  const Node* value;
};
std::vector<NamedEntry> read_entries(const Node& node, std::string_view what, Problems& problems);

/// The fields of a mapping whose keys are fixed. Reports at once what is no mapping, unknown keys and repeated keys.
class Fields {
 public:
  /// `what` names the mapping in messages: "a device entry".
  Fields(const Node& node, std::string_view what, std::span<const std::string_view> known, Problems& problems);
  Fields(const Node& node, std::string_view what, std::initializer_list<std::string_view> known, Problems& problems)
      : Fields(node, what, std::span(known.begin(), known.size()), problems) {}

  /// True when the node is a mapping, or empty, which counts as one.
  [[nodiscard]] bool is_mapping() const { return is_mapping_; }
  /// The value of `key`, or null.
  [[nodiscard]] const Node* find(std::string_view key) const;
  /// The value of `key`; null after reporting that it is missing, unless an unknown key was perhaps meant to be it.
  const Node* require(std::string_view key);
  /// Where `key` itself stands; else where the mapping begins.
  [[nodiscard]] Place place_of(std::string_view key) const;

 private:
  const Node& node_;
  std::string what_;
  Problems& problems_;
  bool is_mapping_ = false;
  std::vector<std::string> meant_;  ///< known keys that are nearest to unknown ones
};

}  // namespace cairn::syntax
