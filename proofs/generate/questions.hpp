/// \file
/// The questions that make up the machine-checked part of a lemma, and the files that they are written to.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "system/smtlib.hpp"

namespace cairn::proofs {

/// Something that a lemma takes for given.
struct Given {
  std::string says;
  system::Term term;
  /// Not empty: the lemma is also asked without it, and must then fail. Part of that file's name.
  std::string without = {};
};

/// For all states: what is given implies what is claimed.
struct Lemma {
  std::string name;   ///< of its files: "few-passes.restart"
  std::string about;  ///< the page of proofs/ that tells it: "few-passes.md"
  std::vector<Given> given;
  system::Assertion claim;
};

/// Writes the questions about n devices to a folder, one file each. Throws std::runtime_error where that fails.
class Questions {
 public:
  Questions(std::filesystem::path folder, int devices) : folder_(std::move(folder)), devices_(devices) {}

  [[nodiscard]] int devices() const { return devices_; }

  /// Three kinds of files: NAME, that the claim fails (unsat); NAME.given, the hypotheses alone, lest the lemma speak
  /// of nothing (sat); NAME.without-X, that the claim fails without the hypothesis X (sat).
  void ask(const system::Terms& terms, const Lemma& lemma) const;

  /// A single question that has an answer: that something can happen, or that a statement near the lemma is false.
  void show(const system::Terms& terms, std::string_view name, std::string_view about, std::string_view says,
            const std::vector<Given>& given, system::Assertion shown) const;

 private:
  void write(const system::Terms& terms, std::string_view name, std::string_view about, std::string_view says,
             system::Status status, const std::vector<system::Assertion>& assertions) const;

  std::filesystem::path folder_;
  int devices_;
};

/// Writes the questions of one lemma.
using Writer = void (*)(const Questions&);

// Each is told in proofs/NAME.md.
void rank(const Questions& questions);
void laws(const Questions& questions);
void few_passes(const Questions& questions);
void settled_states(const Questions& questions);
void loss(const Questions& questions);
void runs_end(const Questions& questions);
void quiet_events(const Questions& questions);
void apart(const Questions& questions);
void unasked_seniority(const Questions& questions);
void somebody_between(const Questions& questions);
void overwritten(const Questions& questions);

}  // namespace cairn::proofs
