#include "explore/reduce/match_steps.hpp"

#include <utility>

namespace cairn::explore {

namespace {

using Mark = std::uint64_t;

Mark scrambled(Mark mark) {
  mark = (mark ^ mark >> 31) * 0x9e37'79b9'7f4a'7c15;
  return mark ^ mark >> 29;
}

Mark joined(Mark a, Mark b) {
  return scrambled(scrambled(a) + b);
}

/// Marks a step by what it would do to those who stand for its devices, ports and cables. Numbers that are given, or
/// asked for, are left out, since the steps tell which of them stand for which; so are the steps that are asked for.
class Marker {
 public:
  explicit Marker(const Renaming& renaming) : renaming_(renaming) {}

  [[nodiscard]] Mark of(const Step& step) const {
    const bool gives_number = step.verb == Verb::set_number;
    Mark mark = joined(static_cast<Mark>(step.verb), static_cast<Mark>(step.side));
    for (const Mark part :
         {of(step.device), of(step.via), of(step.port), of(step.cable), of(step.stack_of), of(step.devices),
          gives_number ? Mark{0} : static_cast<Mark>(step.value), of(step.condition)}) {
      mark = joined(mark, part);
    }
    return mark;
  }

 private:
  template <class Tag>
  [[nodiscard]] Mark of(Id<Tag> id) const {
    return id ? renaming_[id].value : Id<Tag>::nothing;
  }

  // A sum, since their order says nothing.
  [[nodiscard]] Mark of(const std::vector<DeviceId>& devices) const {
    Mark sum = 0;
    for (const DeviceId d : devices) sum += scrambled(of(d));
    return sum;
  }

  [[nodiscard]] Mark of(const Condition& condition) const {
    const bool of_number = condition.kind == Condition::Kind::number;
    Mark mark = joined(static_cast<Mark>(condition.kind), static_cast<Mark>(condition.sign));
    for (const Mark part :
         {of(condition.devices), of(condition.port), of(condition.cable), static_cast<Mark>(condition.side),
          of_number ? Mark{0} : static_cast<Mark>(condition.value)}) {
      mark = joined(mark, part);
    }
    for (const Condition& part : condition.parts) mark = joined(mark, of(part));
    return mark;
  }

  const Renaming& renaming_;
};

}  // namespace

StepMatcher::StepMatcher(const Model& model)
    : model_(model), precedence_(model.procedure), marks_(marks(Renaming::identity(model))) {}

StepMatcher::Marks StepMatcher::marks(const Renaming& renaming) const {
  const Marker marker(renaming);
  Marks alone;
  for (const Step& step : model_.procedure.steps) alone.push_back(marker.of(step));
  Marks in_place;
  for (std::size_t i = 0; i < alone.size(); ++i) {
    Mark before = 0;
    Mark after = 0;
    for (std::size_t j = 0; j < alone.size(); ++j) {
      if (precedence_.before(StepId(j), StepId(i))) before += scrambled(alone[j]);
      if (precedence_.before(StepId(i), StepId(j))) after += scrambled(alone[j]);
    }
    in_place.push_back(joined(joined(alone[i], before), after));
  }
  return in_place;
}

// In file order: of several that are marked alike the first stands for the first, and so on.
void StepMatcher::match(Swap& swap) const {
  const Marks images = marks(swap);
  std::vector<std::uint8_t> matched(images.size(), 0);
  for (std::size_t i = 0; i < images.size(); ++i) {
    for (std::size_t j = i; matched[i] == 0 && j < images.size(); ++j) {
      if (matched[j] != 0 || images[i] != marks_[j]) continue;
      swap.steps[i] = StepId(j);
      swap.steps[j] = StepId(i);
      matched[i] = matched[j] = 1;
    }
  }
  add_numbers(swap);
}

void StepMatcher::add_numbers(Swap& swap) const {
  for (std::size_t i = 0; i < swap.steps.size(); ++i) {
    const Step& of = model_[StepId(i)];
    const Step& image = model_[swap.steps[i]];
    if (of.verb != Verb::set_number || of.value == image.value || swap.image(of.value) != of.value) continue;
    swap.numbers.emplace_back(of.value, image.value);
    swap.numbers.emplace_back(image.value, of.value);
  }
}

}  // namespace cairn::explore
