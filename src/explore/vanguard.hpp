/// \file
/// Several scouts, and the stretches of a layer that they explore side by side.
#pragma once

#include <algorithm>
#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "base/crew.hpp"
#include "explore/scout.hpp"

namespace cairn::explore {

/// Goes ahead of one search. What comes of it is the same for every number of scouts: each stretch by itself. While the
/// search takes over what they have brought, and adds to the store, the scouts are out for more.
class Vanguard {
 public:
  /// \param expander  whose like the scouts work with; must outlive this
  /// \param store     read while scouts are out; must outlive this
  /// \param words     64-bit words a packed state
  /// \param stretch   states a stretch, but for the first and the last of a layer: each ends at a multiple of it
  /// \param crew      who the scouts are; must outlive this
  Vanguard(const semantics::World& world, const Expander& expander, const Store& store, std::size_t words,
           StateIndex stretch, Crew& crew);
  Vanguard(const Vanguard&) = delete;
  Vanguard& operator=(const Vanguard&) = delete;
  ~Vanguard() { recall(); }

  /// Sends the scouts out, who have to be back: to explore stretches from `begin` on, as many as make it worth while,
  /// and none beyond `end`. Of `at_rest`, `sentry`, `seen` and `ask` see Scout::explore(); they may change meanwhile.
  void send_out(StateIndex begin, StateIndex end, std::vector<AskedProperty> at_rest, const Sentry& sentry,
                const Sightings& seen, AskLimits ask);
  [[nodiscard]] bool is_out() const { return out_; }

  /// What they have explored, ascending: valid until they are sent out for the second time from now.
  [[nodiscard]] std::span<const Stretch> bring_in();
  /// Calls them back where they are out; what they have explored is lost.
  void recall();

 private:
  /// Many, so that nobody waits long for the last; but not more than there is room for.
  [[nodiscard]] static std::size_t stretches_for(unsigned scouts) {
    return std::max<std::size_t>(std::min<std::size_t>(32 * std::size_t{scouts}, 512), 4 * std::size_t{scouts});
  }

  void explore(Stretch& stretch, Crew::Worker worker);

  StateIndex stretch_;
  Crew& crew_;
  bool out_ = false;
  const semantics::World& world_;
  const Expander& expander_;
  const Store& store_;
  std::size_t words_;
  /// Each made by the thread that it works in: what two threads write to must not lie side by side.
  std::vector<std::unique_ptr<Scout>> scouts_;
  std::vector<Stretch> stretches_, brought_in_;  ///< those that are being explored, and those before
  std::size_t count_ = 0;                        ///< of those that are being explored
  std::vector<AskedProperty> at_rest_;
  std::optional<Sentry> sentry_;
  std::optional<Sightings> seen_;
  AskLimits ask_;
};

}  // namespace cairn::explore
