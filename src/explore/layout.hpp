/// \file
/// How a state is packed into words: only what can change, each field in the bits that it needs.
#pragma once

#include <cstdint>
#include <vector>

#include "cairn/state.hpp"
#include "explore/domains.hpp"
#include "semantics/world.hpp"

namespace cairn::explore {

/// Packs the states of one world under one fault budget. Two states are equal exactly when their words are.
class Layout {
 public:
  Layout(const semantics::World& world, const FaultBudget& budget);

  /// 64-bit words a state, at least 1.
  [[nodiscard]] std::size_t words() const { return words_; }

  /// Writes `s` to words() words at `out`.
  /// \throws Contradiction where a value stands in `s` that was thought impossible.
  void pack(const State& s, std::uint64_t* out) const;

  /// Reads what was packed into `out`, which must be a state of the same world: what never changes is not touched.
  void unpack(const std::uint64_t* in, State& out) const;

 private:
  /// A run of bits that lies within one word.
  struct Bits {
    std::uint32_t word = 0;
    std::uint32_t shift = 0;
    std::uint64_t mask = 0;

    void put(std::uint64_t* words, std::uint64_t code) const { words[word] |= code << shift; }
    [[nodiscard]] std::uint64_t get(const std::uint64_t* words) const { return words[word] >> shift & mask; }
  };
  /// A field of the devices, ports or cables at `place` that takes one of `values`, stored by its place among them.
  template <class Thing, class T>
  struct Field {
    Bits bits;
    std::uint32_t place;
    T Thing::*member;
    Values<T> values;
  };
  struct Flag {
    Bits bits;
    std::uint32_t place;
    bool CableState::*member;
  };
  struct Count {
    Bits bits;
    std::int64_t FaultBudget::*member;
  };

  Bits take_bits(std::size_t width);
  template <class Thing, class T>
  void add(std::vector<Field<Thing, T>>& fields, std::size_t place, T Thing::*member, const Values<T>& values);
  void add_devices(const semantics::World& world, const Domains& domains);
  void add_ports(const Domains& domains);
  void add_cables(const Domains& domains, const FaultBudget& budget);
  void add_budget(const FaultBudget& budget);

  std::size_t words_ = 1;
  std::size_t used_ = 0;        ///< bits of the last word
  std::uint32_t id_width_ = 0;  ///< bits of a leader and of a level of seniority: 0 is none, places count from 1
  std::vector<Bits> standing_;  ///< per device: power, leader and seniority together
  std::vector<Field<DeviceState, std::int64_t>> settings_;
  std::vector<Field<PortState, bool>> enabled_;
  std::vector<Field<PortState, Side>> sides_;
  std::vector<Flag> cables_;
  std::vector<Bits> done_;  ///< per step
  std::vector<Count> left_;
  std::vector<Bits> halted_;  ///< one, or none where no step is a check
};

}  // namespace cairn::explore
