/// \file
/// The states that an exploration visited, for whoever looks at them again.
#pragma once

#include <optional>
#include <utility>

#include "explore/layout.hpp"
#include "explore/store.hpp"

namespace cairn::explore {

/// Packed as they were stored; the initial state, settled, is the first. Immutable.
class Visited {
 public:
  /// \param any  any state of the world
  Visited(Layout layout, Store store, State any)
      : layout_(std::move(layout)), store_(std::move(store)), any_(std::move(any)) {}

  [[nodiscard]] StateIndex size() const { return store_.size(); }
  /// Bytes in use.
  [[nodiscard]] std::uint64_t bytes() const { return store_.bytes_with(0); }
  /// A state of the same world, for read() to write into.
  [[nodiscard]] const State& any() const { return any_; }
  /// Reads a state into `out`, which must be one of the same world.
  void read(StateIndex index, State& out) const { layout_.unpack(store_[index], out); }

  /// How they are packed.
  [[nodiscard]] const Layout& layout() const { return layout_; }
  [[nodiscard]] const std::uint64_t* packed(StateIndex index) const { return store_[index]; }
  /// The state that is packed like this, or nothing.
  [[nodiscard]] std::optional<StateIndex> find(const std::uint64_t* packed) const { return store_.find(packed); }

 private:
  Layout layout_;
  Store store_;
  State any_;
};

}  // namespace cairn::explore
