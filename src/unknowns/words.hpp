/// \file
/// What a template leaves open, and what is decided of it, in the language of its files.
#pragma once

#include <string>

#include "cairn/model.hpp"
#include "unknowns/literal.hpp"

namespace cairn::unknowns {

/// "$n", "address(yard-3)"
[[nodiscard]] std::string name_of(const Model& model, UnknownId u);

/// "$p <= 180", "address(yard-3) < address(yard-1)"
[[nodiscard]] std::string words_of(const Model& model, const Literal& literal);

/// "$n != 4 and ($p < 180 or $p = $q)"
[[nodiscard]] std::string words_of(const Assumption& assumption, const Model& model);

/// "n = 3, p = 90, yard-3 at 02:00:00:00:00:07"; nothing where no value is open.
[[nodiscard]] std::string words_of(const Model& model, const Instance& instance);

/// "02:00:00:00:00:07": six octets, as IEEE 802 writes an EUI-48.
[[nodiscard]] std::string address_in_words(std::uint64_t address);

}  // namespace cairn::unknowns
