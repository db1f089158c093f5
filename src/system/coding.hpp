/// \file
/// States as rows of 64-bit words: each variable by the place of its value in its domain, in as few bits as that takes.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "system/variables.hpp"

namespace cairn::system {

/// Writes and reads rows. Two states within the domains are equal exactly when their rows are. Immutable.
class Coding {
 public:
  Coding(const Space& space, Domains domains);

  /// Words a row, at least 1.
  [[nodiscard]] std::size_t words() const { return words_; }

  /// The bits of one variable, which lie within one word; none where it has a single value.
  struct Field {
    std::uint32_t word = 0;
    std::uint32_t shift = 0;
    std::uint32_t width = 0;
  };
  [[nodiscard]] const Field& field(VariableId v) const { return fields_[v]; }
  [[nodiscard]] const std::vector<std::int64_t>& domain(VariableId v) const { return domains_[v]; }
  [[nodiscard]] std::size_t size() const { return fields_.size(); }

  /// The place of a value in the domain of the variable, or nothing.
  [[nodiscard]] std::optional<std::size_t> place(VariableId v, std::int64_t value) const;

  /// Writes the words() words of a row, from the values of all variables.
  /// \return false where a value lies outside its domain; then the row is of no use
  [[nodiscard]] bool write(std::span<const std::int64_t> values, std::uint64_t* row) const;

  /// What write() was given.
  [[nodiscard]] std::int64_t read(const std::uint64_t* row, VariableId v) const;
  [[nodiscard]] std::vector<std::int64_t> read(const std::uint64_t* row) const;

 private:
  friend class StateWriter;

  /// Puts one value into a row; false where it lies outside its domain.
  bool put(VariableId v, std::int64_t value, std::uint64_t* row) const;

  const Space* space_;
  Domains domains_;
  std::vector<Field> fields_;
  std::size_t words_ = 1;
};

/// Writes the rows of states, one after another. Most states of a search differ little from the one before: only what
/// differs is put down anew.
class StateWriter {
 public:
  explicit StateWriter(const Coding& coding) : coding_(coding), row_(coding.words()) {}

  /// Writes the words() words of a row.
  /// \return false where a value lies outside its domain; then the row is of no use
  [[nodiscard]] bool write(const State& s, std::uint64_t* row);

 private:
  void put(VariableId v) { within_ = coding_.put(v, coding_.space_->read(*now_, v), row_.data()) && within_; }
  void put_some(VariableId first, std::size_t count) {
    for (VariableId v = first; v < first + count; ++v) put(v);
  }
  void put_devices();
  void put_seniority();
  void put_others();

  const Coding& coding_;
  const State* now_ = nullptr;
  State before_;
  bool has_before_ = false;
  bool within_ = true;
  std::vector<std::uint64_t> row_;  ///< of `before_`
};

}  // namespace cairn::system
