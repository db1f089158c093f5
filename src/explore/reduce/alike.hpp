/// \file
/// States that differ only in which of several devices alike is which count as one (docs/reductions.md, Alike).
#pragma once

#include <cstdint>
#include <memory>
#include <vector>

#include "cairn/property.hpp"
#include "explore/reduce/swap.hpp"
#include "semantics/world.hpp"

namespace cairn::explore {

/// Immutable: threads share it.
class Alike {
 public:
  /// The swaps that were applied to a state, by their place, the first first.
  using Applied = std::vector<std::uint32_t>;

  /// \param swaps  each maps the model to itself (Automorphisms)
  Alike(const Model& model, const std::vector<Swap>& swaps);

  /// Of what is asked of the world; nothing where no two devices are alike.
  [[nodiscard]] static std::shared_ptr<const Alike> find(const semantics::World& world,
                                                         const std::vector<AskedProperty>& asked);

  /// Replaces `s` by one of the states that swaps make of it: the same for as many of these as can be told at little
  /// cost; for all of them where parts are exchanged that have nothing to do with one another. `applied` is
  /// overwritten.
  void arrange(State& s, Applied& applied) const;

  /// What stands for what in the state that was there before `applied`, where `renaming` tells it of the one after.
  [[nodiscard]] Renaming before(const Renaming& renaming, const Applied& applied) const;
  [[nodiscard]] Renaming identity() const { return identity_; }

  /// States that swaps make of `s`, itself the first, none twice; about `most`, where there are more.
  [[nodiscard]] std::vector<State> images(const State& s, std::size_t most) const;

  /// Adds to what was noted of some states what would have been noted of all that swaps make of them.
  template <class Notes>
  void complete(Notes& notes) const {
    for (bool grows = true; grows;) {
      grows = false;
      for (const Exchange& exchange : exchanges_) grows = notes.add_images(exchange.swap()) || grows;
    }
  }

 private:
  Renaming identity_;
  std::vector<Exchange> exchanges_;
};

}  // namespace cairn::explore
