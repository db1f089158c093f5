/// \file
/// The state variables of a model: which there are, in which order, and what they are called.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "cairn/model.hpp"
#include "cairn/state.hpp"

namespace cairn::system {

/// The place of a state variable in every SymbolicState of a space.
using VariableId = std::uint32_t;

/// A state variable (semantics 2). `place` and `other` are devices, ports, cables or steps by the kind.
struct Variable {
  enum class Kind : std::uint8_t {
    power,             ///< 2.a, of a device; the integers of Power
    leader,            ///< 2.a; the place of a device, or `nobody`
    number,            ///< 2.a
    next_number,       ///< 2.a
    priority,          ///< 2.a, running
    startup_priority,  ///< 2.a
    senior,            ///< 2.a, of two devices: `place` has been up longer than `other`
    enabled,           ///< 2.b, of a port: running
    startup_enabled,   ///< 2.b
    side,              ///< 2.b, running; the integers of Side
    startup_side,      ///< 2.b
    operational_side,  ///< 2.b
    plugged,           ///< 2.c, of a cable
    broken,            ///< 2.c
    done,              ///< 2.d, of a step
    left,              ///< 2.e; `place` is a Fault
    halted,            ///< 2.f
  };
  Kind kind = Kind::power;
  std::uint32_t place = 0;
  std::uint32_t other = 0;
  auto operator<=>(const Variable&) const = default;
};

/// The fault kinds that have a budget (5.c), as places of Variable::Kind::left.
enum class Fault : std::uint8_t { cable_break, crash, omission, late_start };
inline constexpr std::uint32_t fault_count = 4;

/// The leader of a device that has none.
inline constexpr std::int64_t nobody = -1;

/// Whether faults are counted against the budget, or strike as often as they like where their kind is allowed at all.
enum class Counting : std::uint8_t { counted, uncounted };

/// Immutable; the model must outlive it.
class Space {
 public:
  Space(const Model& model, const FaultBudget& budget, Counting counting = Counting::counted);

  [[nodiscard]] const Model& model() const { return *model_; }
  [[nodiscard]] const Platform& platform() const { return model_->platform; }
  [[nodiscard]] const FaultBudget& budget() const { return budget_; }
  [[nodiscard]] bool counts_faults() const { return counting_ == Counting::counted; }
  [[nodiscard]] std::uint32_t devices() const { return static_cast<std::uint32_t>(model_->site.devices.size()); }
  [[nodiscard]] std::uint32_t ports() const { return static_cast<std::uint32_t>(model_->site.ports.size()); }
  [[nodiscard]] std::uint32_t cables() const { return static_cast<std::uint32_t>(model_->site.cables.size()); }
  [[nodiscard]] std::uint32_t steps() const { return static_cast<std::uint32_t>(model_->procedure.steps.size()); }
  [[nodiscard]] DeviceId device_a(CableId c) const { return (*model_)[(*model_)[c].a].device; }
  [[nodiscard]] DeviceId device_b(CableId c) const { return (*model_)[(*model_)[c].b].device; }

  [[nodiscard]] std::size_t size() const { return variables_.size(); }
  [[nodiscard]] const Variable& operator[](VariableId v) const { return variables_[v]; }
  [[nodiscard]] VariableId of_device(Variable::Kind kind, DeviceId d) const {
    return d.value * per_device + static_cast<VariableId>(kind);
  }
  /// Demands that the devices differ.
  [[nodiscard]] VariableId senior(DeviceId d, DeviceId e) const {
    return senior_ + d.value * (devices() - 1) + e.value - (e.value > d.value ? 1 : 0);
  }
  [[nodiscard]] VariableId of_port(Variable::Kind kind, PortId p) const {
    return ports_ + p.value * per_port + static_cast<VariableId>(kind) -
           static_cast<VariableId>(Variable::Kind::enabled);
  }
  [[nodiscard]] VariableId plugged(CableId c) const { return cables_ + 2 * c.value; }
  [[nodiscard]] VariableId broken(CableId c) const { return cables_ + 2 * c.value + 1; }
  [[nodiscard]] VariableId done(StepId s) const { return done_ + s.value; }
  [[nodiscard]] VariableId left(Fault fault) const { return left_ + static_cast<VariableId>(fault); }
  [[nodiscard]] VariableId halted() const { return left_ + fault_count; }

  /// The budget of one kind.
  [[nodiscard]] std::int64_t budget_of(Fault fault) const;

  /// "priority of yard-1"
  [[nodiscard]] std::string name(VariableId v) const;
  /// A value of the variable in words: "up", "yard-2", "220".
  [[nodiscard]] std::string value_name(VariableId v, std::int64_t value) const;
  /// True for variables whose values are 0 and 1.
  [[nodiscard]] bool is_truth(VariableId v) const;

  /// The value of the variable in a concrete state.
  [[nodiscard]] std::int64_t read(const State& s, VariableId v) const;

 private:
  static constexpr VariableId per_device = 6;
  static constexpr VariableId per_port = 5;

  const Model* model_;
  FaultBudget budget_;
  Counting counting_;
  std::vector<Variable> variables_;
  VariableId senior_ = 0, ports_ = 0, cables_ = 0, done_ = 0, left_ = 0;
};

}  // namespace cairn::system
