#include "explore/reduce/automorphism.hpp"

#include <algorithm>

#include "semantics/state.hpp"

namespace cairn::explore {

namespace {

/// Each condition of the definition in docs/reductions.md, in its order.
class Check {
 public:
  Check(const semantics::World& world, const Swap& swap) : world_(world), model_(world.model()), swap_(swap) {}

  [[nodiscard]] bool undoes_itself() const {
    const auto undone = [](const auto& images) {
      for (std::size_t i = 0; i < images.size(); ++i) {
        if (images[i].value >= images.size() || images[images[i].value].value != i) return false;
      }
      return true;
    };
    return undone(swap_.devices) && undone(swap_.ports) && undone(swap_.cables) && undone(swap_.steps) &&
           std::ranges::all_of(swap_.numbers, [&](const auto& pair) {
             return swap_.image(pair.first) == pair.second && swap_.image(pair.second) == pair.first;
           });
  }

  // 1.a, 1.b. What the site does not state decides what is told of ties.
  [[nodiscard]] bool keeps_the_site() const {
    for (std::size_t i = 0; i < model_.site.devices.size(); ++i) {
      const Device& device = model_.site.devices[i];
      const Device& image = model_[swap_[DeviceId(i)]];
      if (device.software != image.software) return false;
      if (device.address_stated != image.address_stated || device.tenure_stated != image.tenure_stated) return false;
    }
    for (std::size_t i = 0; i < model_.site.ports.size(); ++i) {
      const PortId p(i);
      if (model_[swap_[p]].device != swap_[model_[p].device]) return false;
    }
    for (std::size_t i = 0; i < model_.site.cables.size(); ++i) {
      const CableId c(i);
      if (!joins(model_[swap_[c]], swap_[model_[c].a], swap_[model_[c].b])) return false;
    }
    return true;
  }

  // 2, Initial state
  [[nodiscard]] bool keeps_the_initial_state() const {
    const State s = semantics::initial_state(world_, {});
    State image = s;
    Exchange(swap_).apply(image);
    return image == s;
  }

  // 5.4: a number that would be refused stands for one that would be.
  [[nodiscard]] bool keeps_the_range_of_numbers() const {
    const Range& range = world_.platform().numbers;
    return std::ranges::all_of(
        swap_.numbers, [&](const auto& pair) { return range.contains(pair.first) == range.contains(pair.second); });
  }

  [[nodiscard]] bool keeps_the_steps() const {
    for (std::size_t i = 0; i < world_.steps().size(); ++i) {
      const StepId step(i);
      if (!is_image(model_[step], model_[swap_[step]])) return false;
    }
    return true;
  }

  // 5.a: "everything it must follow done"
  [[nodiscard]] bool keeps(const semantics::Precedence& precedence) const {
    for (std::size_t i = 0; i < world_.steps().size(); ++i) {
      for (std::size_t j = 0; j < world_.steps().size(); ++j) {
        if (precedence.before(StepId(i), StepId(j)) != precedence.before(swap_[StepId(i)], swap_[StepId(j)])) {
          return false;
        }
      }
    }
    return true;
  }

  // 6, 6.b
  [[nodiscard]] bool keeps_what_is_asked() const {
    if (!is_image(model_.procedure.keep, model_.procedure.keep)) return false;
    if (!model_.procedure.goal) return true;
    const Goal& goal = *model_.procedure.goal;
    return is_image(goal.stack, goal.stack) && is_image(goal.primary, goal.primary) &&
           (!goal.where || is_image(*goal.where, *goal.where));
  }

 private:
  static bool joins(const Cable& cable, PortId a, PortId b) {
    return (cable.a == a && cable.b == b) || (cable.a == b && cable.b == a);
  }

  // Nothing stands for nothing.
  template <class Tag>
  [[nodiscard]] bool is_image(Id<Tag> of, Id<Tag> image) const {
    return of ? image && swap_[of] == image : !image;
  }

  // As sets. That nothing else is in `image` is seen when its own image is looked at, or, of what is its own image, by
  // counting: two devices do not stand for one.
  [[nodiscard]] bool is_image(const std::vector<DeviceId>& of, const std::vector<DeviceId>& image) const {
    return std::ranges::all_of(of, [&](DeviceId d) { return std::ranges::find(image, swap_[d]) != image.end(); });
  }

  // 5.d
  [[nodiscard]] bool is_image(const Step& of, const Step& image) const {
    const std::int64_t value = of.verb == Verb::set_number ? swap_.image(of.value) : of.value;
    return of.verb == image.verb && is_image(of.device, image.device) && is_image(of.via, image.via) &&
           is_image(of.port, image.port) && is_image(of.cable, image.cable) && value == image.value &&
           of.side == image.side && is_image(of.devices, image.devices) && is_image(of.stack_of, image.stack_of) &&
           is_image(of.condition, image.condition);
  }

  // 8: of numbers that stand for others it is asked which they are, not which is less.
  [[nodiscard]] bool is_image(const Condition& of, const Condition& image) const {
    const bool of_number = of.kind == Condition::Kind::number;
    const bool by_order = of.sign != Sign::equal && of.sign != Sign::not_equal;
    if (of_number && by_order && !swap_.numbers.empty()) return false;
    const std::int64_t value = of_number ? swap_.image(of.value) : of.value;
    return of.kind == image.kind && is_image(of.devices, image.devices) && is_image(of.port, image.port) &&
           is_image(of.cable, image.cable) && is_image(of.step, image.step) && of.sign == image.sign &&
           value == image.value && of.side == image.side &&
           std::ranges::equal(of.parts, image.parts,
                              [&](const Condition& a, const Condition& b) { return is_image(a, b); });
  }

  const semantics::World& world_;
  const Model& model_;
  const Swap& swap_;
};

}  // namespace

bool Automorphisms::contain(const Swap& swap) const {
  const Check check(world_, swap);
  return check.undoes_itself() && check.keeps_the_site() && check.keeps_the_initial_state() &&
         check.keeps_the_range_of_numbers() && check.keeps_the_steps() && check.keeps(precedence_) &&
         check.keeps_what_is_asked() && rank_.sees_nothing_of(swap);
}

}  // namespace cairn::explore
