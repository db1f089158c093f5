/// \file
/// How things are named: `device`, `device/port`, `cable`, `device/port--device/port`.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>

#include "syntax/positions.hpp"
#include "syntax/reader.hpp"

namespace cairn::syntax {

/// A part of a text, in bytes.
struct Stretch {
  std::size_t offset = 0;
  std::size_t length = 0;
};

/// A reference as it stands in a text.
struct Scanned {
  std::size_t names = 1;  ///< 1: a name; 2: a port; 4: the two ends of a cable
  std::array<Stretch, 4> at{};
};

struct NotScanned {
  Stretch at;
  std::string expected;
};

/// Reads a reference from `at` on and moves `at` behind it. Where `blanks` is true they may stand between its parts.
[[nodiscard]] std::variant<Scanned, NotScanned> scan_reference(std::string_view text, std::size_t& at, bool blanks);

/// A reference with its places, not yet looked up.
struct Reference {
  enum class Form : std::uint8_t { name, port, ends };
  Form form = Form::name;
  std::array<Name, 4> names;  ///< name: [0]; port: device [0], port [1]; ends: device, port, device, port
  Place place;

  /// As it was written, without blanks.
  [[nodiscard]] std::string text() const;
};

/// What `scanned` says in `text`, with places.
[[nodiscard]] Reference located(const Scanned& scanned, std::string_view text, const Positions& positions);

// A scalar that is a reference and nothing else. `what` is the thing that the node gives.
std::optional<Reference> read_port(const Node& node, std::string_view what, Problems& problems);
std::optional<Reference> read_cable(const Node& node, std::string_view what, Problems& problems);
/// The key of a cable, a scalar: its two ends.
std::optional<Reference> read_ends(const Node& key, Problems& problems);

}  // namespace cairn::syntax
