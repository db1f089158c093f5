/// \file
/// From YAML text to nodes that know where they stand. The only file that knows the library.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "syntax/problems.hpp"
#include "syntax/source.hpp"

namespace cairn::syntax {

struct Entry;

/// A YAML value. Aliases are replaced by what they stand for, with the places of the original.
struct Node {
  enum class Kind : std::uint8_t {
    empty,     ///< nothing where a value could stand: `x:`
    plain,     ///< an unquoted scalar, as written; also `null` and `~`
    quoted,    ///< a quoted or a block scalar: text whatever it says
    sequence,  ///< `items`
    mapping,   ///< `entries`, in file order, keys not compared with each other
  };

  Kind kind = Kind::empty;
  Place place;
  std::string text;  ///< of a scalar
  std::vector<Node> items;
  std::vector<Entry> entries;

  [[nodiscard]] bool is_scalar() const { return kind == Kind::plain || kind == Kind::quoted; }
};

struct Entry {
  Node key;
  Node value;
};

/// What no input may exceed. Values are counted after aliases are replaced.
inline constexpr int deepest_nesting = 200;
inline constexpr std::size_t most_values = 1'000'000;

/// The one document of `source`, or nothing after at least one problem was added. Explicit tags are refused.
[[nodiscard]] std::optional<Node> parse_yaml(const Source& source, Problems& problems);

}  // namespace cairn::syntax
