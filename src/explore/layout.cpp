#include "explore/layout.hpp"

#include <algorithm>
#include <bit>

#include "base/contradiction.hpp"

namespace cairn::explore {

namespace {

std::size_t width_of(std::uint64_t largest) {
  return static_cast<std::size_t>(std::bit_width(largest));
}

template <class T>
std::uint64_t code_of(const Values<T>& values, T value) {
  const auto found = std::find(values.begin(), values.end(), value);
  if (found == values.end()) throw Contradiction("a state holds a value that no step or site entry gives");
  return static_cast<std::uint64_t>(found - values.begin());
}

}  // namespace

Layout::Layout(const semantics::World& world, const FaultBudget& budget) {
  const Domains domains = domains_of(world);
  add_devices(world, domains);
  add_ports(domains);
  add_cables(domains, budget);
  for (std::size_t i = 0; i < world.steps().size(); ++i) done_.push_back(take_bits(1));
  add_budget(budget);
  if (domains.checks) halted_.push_back(take_bits(1));
}

Layout::Bits Layout::take_bits(std::size_t width) {
  if (used_ + width > 64) {
    ++words_;
    used_ = 0;
  }
  const Bits bits{static_cast<std::uint32_t>(words_ - 1), static_cast<std::uint32_t>(used_),
                  width == 64 ? ~std::uint64_t{0} : (std::uint64_t{1} << width) - 1};
  used_ += width;
  return bits;
}

template <class Thing, class T>
void Layout::add(std::vector<Field<Thing, T>>& fields, std::size_t place, T Thing::*member, const Values<T>& values) {
  if (values.size() == 1) return;
  fields.push_back({take_bits(width_of(values.size() - 1)), static_cast<std::uint32_t>(place), member, values});
}

void Layout::add_devices(const semantics::World& world, const Domains& domains) {
  id_width_ = static_cast<std::uint32_t>(width_of(world.device_count()));
  for (std::size_t i = 0; i < world.device_count(); ++i) {
    standing_.push_back(take_bits(2 + 2 * id_width_));
    add(settings_, i, &DeviceState::number, domains.numbers[i]);
    add(settings_, i, &DeviceState::next_number, domains.numbers[i]);
    add(settings_, i, &DeviceState::priority, domains.priorities[i]);
    add(settings_, i, &DeviceState::startup_priority, domains.priorities[i]);
  }
}

void Layout::add_ports(const Domains& domains) {
  for (std::size_t i = 0; i < domains.enabled.size(); ++i) {
    add(enabled_, i, &PortState::enabled, domains.enabled[i]);
    add(enabled_, i, &PortState::startup_enabled, domains.enabled[i]);
    add(sides_, i, &PortState::side, domains.sides[i]);
    add(sides_, i, &PortState::startup_side, domains.sides[i]);
    add(sides_, i, &PortState::operational_side, domains.sides[i]);
  }
}

void Layout::add_cables(const Domains& domains, const FaultBudget& budget) {
  for (std::uint32_t i = 0; i < domains.replugged.size(); ++i) {
    if (domains.replugged[i] != 0) cables_.push_back({take_bits(1), i, &CableState::plugged});
    if (budget.cable_breaks > 0) cables_.push_back({take_bits(1), i, &CableState::broken});
  }
}

void Layout::add_budget(const FaultBudget& budget) {
  for (const auto member :
       {&FaultBudget::cable_breaks, &FaultBudget::crashes, &FaultBudget::omissions, &FaultBudget::late_starts}) {
    const auto most = static_cast<std::uint64_t>(budget.*member);
    if (most > 0) left_.push_back({take_bits(width_of(most)), member});
  }
}

void Layout::pack(const State& s, std::uint64_t* out) const {
  std::fill_n(out, words_, 0);
  for (std::size_t i = 0; i < standing_.size(); ++i) {
    const DeviceState& d = s.devices[i];
    const std::uint64_t leader = d.leader ? d.leader.value + std::uint64_t{1} : 0;
    standing_[i].put(out,
                     static_cast<std::uint64_t>(d.power) | leader << 2 | std::uint64_t{d.seniority} << (2 + id_width_));
  }
  for (const auto& f : settings_) f.bits.put(out, code_of(f.values, s.devices[f.place].*f.member));
  for (const auto& f : enabled_) f.bits.put(out, s.ports[f.place].*f.member ? 1 : 0);
  for (const auto& f : sides_) f.bits.put(out, code_of(f.values, s.ports[f.place].*f.member));
  for (const Flag& f : cables_) f.bits.put(out, s.cables[f.place].*f.member ? 1 : 0);
  for (std::size_t i = 0; i < done_.size(); ++i) done_[i].put(out, s.done[i]);
  for (const Count& f : left_) f.bits.put(out, static_cast<std::uint64_t>(s.left.*f.member));
  for (const Bits& bits : halted_) bits.put(out, s.halted ? 1 : 0);
}

void Layout::unpack(const std::uint64_t* in, State& out) const {
  for (std::size_t i = 0; i < standing_.size(); ++i) {
    const std::uint64_t code = standing_[i].get(in);
    const std::uint64_t ids = (std::uint64_t{1} << id_width_) - 1;
    const std::uint64_t leader = code >> 2 & ids;
    DeviceState& d = out.devices[i];
    d.power = static_cast<Power>(code & 3);
    d.leader = leader == 0 ? DeviceId() : DeviceId(leader - 1);
    d.seniority = static_cast<std::uint32_t>(code >> (2 + id_width_));
  }
  for (const auto& f : settings_) out.devices[f.place].*f.member = f.values[f.bits.get(in)];
  for (const auto& f : enabled_) out.ports[f.place].*f.member = f.bits.get(in) != 0;
  for (const auto& f : sides_) out.ports[f.place].*f.member = f.values[f.bits.get(in)];
  for (const Flag& f : cables_) out.cables[f.place].*f.member = f.bits.get(in) != 0;
  for (std::size_t i = 0; i < done_.size(); ++i) out.done[i] = static_cast<std::uint8_t>(done_[i].get(in));
  for (const Count& f : left_) out.left.*f.member = static_cast<std::int64_t>(f.bits.get(in));
  for (const Bits& bits : halted_) out.halted = bits.get(in) != 0;
}

}  // namespace cairn::explore
