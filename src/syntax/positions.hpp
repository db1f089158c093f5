/// \file
/// Where in a file the parts of a scalar stand: conditions and references are read from the text of a scalar, and their
/// problems are shown where the user wrote them.
#pragma once

#include <cstdint>
#include <vector>

#include "syntax/yaml.hpp"

namespace cairn::syntax {

/// Where the bytes of a scalar's text stand in its source. Exact for plain, quoted and block scalars without escapes;
/// of a scalar with escapes every place is the whole scalar.
class Positions {
 public:
  explicit Positions(const Node& scalar);

  /// The place of `length` bytes of the text from `offset` on, as far as they stand on one line. At the end of the
  /// text: the place behind it.
  [[nodiscard]] Place at(std::size_t offset, std::size_t length) const;

 private:
  Place whole_;
  std::uint32_t shift_ = 0;             ///< where the text stands in one piece: its start
  std::vector<std::uint32_t> offsets_;  ///< else the offset of every byte; empty where not known
  bool in_one_piece_ = false;
};

}  // namespace cairn::syntax
