/// \file
/// The sets that are put to the formulas, as rows: of states, found by hash, or of partial states, found by hints.
#pragma once

#include <limits>
#include <optional>
#include <span>
#include <vector>

#include "solver/closed_set.hpp"
#include "solver/row_table.hpp"
#include "system/rows.hpp"

namespace cairn::solver {

/// Filled first, asked afterwards.
class RowSet {
 public:
  RowSet() = default;
  RowSet(const RowSet&) = delete;
  RowSet& operator=(const RowSet&) = delete;
  virtual ~RowSet() = default;

  static constexpr std::uint64_t most_rows = RowTable::most_rows;
  /// The place of no row.
  static constexpr std::uint32_t nowhere = std::numeric_limits<std::uint32_t>::max();

  /// Bytes that it takes once all is read in.
  [[nodiscard]] virtual std::uint64_t bytes() const = 0;
  /// Called once, before anything is read in.
  virtual void make_room() = 0;
  /// Reads the next `count` states in, at most system::most_rows.
  /// \return the first that holds a value outside its domain; then the set is of no use
  [[nodiscard]] virtual std::optional<std::uint64_t> read_in(std::size_t count) = 0;
  [[nodiscard]] virtual const std::uint64_t* operator[](std::uint64_t index) const = 0;

  /// The `count` states from `base` on are looked at next.
  virtual void look_at(std::uint64_t base, std::size_t count) = 0;
  /// A hint: where an event leads that may happen in the state at `base` + `row`, of those that look_at() named;
  /// `nowhere` where the set tells of no such state. A set that needs no hints tells 0.
  [[nodiscard]] std::uint32_t target(std::size_t row, std::size_t event) const {
    return targets_.empty() ? 0 : targets_[row * events_ + event];
  }

  /// Rows that are not in the set.
  struct Outside {
    system::Block may_be;  ///< not known to be in it
    system::Block surely;  ///< known not to be in it
  };
  /// \param rows     `count` rows, at most system::most_rows
  /// \param targets  a hint for each, where in the set to look
  [[nodiscard]] virtual Outside outside(const std::uint64_t* rows, std::size_t count,
                                        std::span<const std::uint32_t> targets) const = 0;

 protected:
  std::size_t events_ = 0;
  std::vector<std::uint32_t> targets_;  ///< of the rows that are looked at, events_ each
};

/// States: one is in the set where the same row is. No hints are needed.
class WholeRows final : public RowSet {
 public:
  WholeRows(StateSet& set, const system::Coding& coding) : set_(set), coding_(coding), writer_(coding) {}

  [[nodiscard]] std::uint64_t bytes() const override { return RowTable::bytes(coding_.words(), set_.size()); }
  void make_room() override { table_.emplace(coding_.words(), set_.size()); }
  [[nodiscard]] std::optional<std::uint64_t> read_in(std::size_t count) override;
  [[nodiscard]] const std::uint64_t* operator[](std::uint64_t index) const override { return (*table_)[index]; }
  void look_at(std::uint64_t, std::size_t) override {}
  [[nodiscard]] Outside outside(const std::uint64_t* rows, std::size_t count,
                                std::span<const std::uint32_t> targets) const override;

 private:
  StateSet& set_;
  const system::Coding& coding_;
  system::StateWriter writer_;
  std::optional<RowTable> table_;
};

/// Partial states: one is in the set where what is known at its target is known in it too, and is the same.
class PartialRows final : public RowSet {
 public:
  /// \param events  that hints are given for, ascending
  PartialRows(PartialStateSet& set, const system::Space& space, const system::Coding& coding,
              std::vector<Event> events);

  [[nodiscard]] std::uint64_t bytes() const override { return set_.size() * 2 * coding_.words() * sizeof(rows_[0]); }
  void make_room() override { rows_.reserve(set_.size() * 2 * coding_.words()); }
  [[nodiscard]] std::optional<std::uint64_t> read_in(std::size_t count) override;
  [[nodiscard]] const std::uint64_t* operator[](std::uint64_t index) const override {
    return rows_.data() + index * 2 * coding_.words();
  }
  void look_at(std::uint64_t base, std::size_t count) override;
  [[nodiscard]] Outside outside(const std::uint64_t* rows, std::size_t count,
                                std::span<const std::uint32_t> targets) const override;

 private:
  [[nodiscard]] std::uint64_t size() const { return rows_.size() / (2 * coding_.words()); }
  /// Whether every variable that is known has a value of its domain.
  [[nodiscard]] bool within(const State& s) const;

  PartialStateSet& set_;
  const system::Space& space_;
  const system::Coding& coding_;
  system::StateWriter writer_;
  std::vector<Event> of_event_;
  std::vector<std::uint64_t> rows_;
  std::vector<system::VariableId> unknown_;
  std::vector<PartialStateSet::Way> ways_;
};

}  // namespace cairn::solver
