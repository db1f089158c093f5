#include "questions.hpp"

#include <fmt/format.h>

#include <fstream>
#include <stdexcept>

namespace cairn::proofs {

using system::Assertion;
using system::Status;

namespace {

std::vector<Assertion> assertions_of(const std::vector<Given>& given, std::string_view without = {}) {
  std::vector<Assertion> assertions;
  for (const Given& one : given) {
    if (without.empty() || one.without != without) assertions.push_back({one.says, one.term});
  }
  return assertions;
}

}  // namespace

void Questions::ask(const system::Terms& terms, const Lemma& lemma) const {
  const Assertion fails{fmt::format("And this is false: {}", lemma.claim.says), !lemma.claim.term};
  std::vector<Assertion> assertions = assertions_of(lemma.given);
  write(terms, lemma.name + ".given", lemma.about,
        "What the lemma takes for given, and nothing else. There is such a state: the lemma speaks of something.",
        Status::sat, assertions);
  assertions.push_back(fails);
  write(
      terms, lemma.name, lemma.about,
      "What the lemma takes for given, together with the opposite of what it claims. There is no such state: the lemma "
      "holds.",
      Status::unsat, assertions);
  for (const Given& one : lemma.given) {
    if (one.without.empty()) continue;
    assertions = assertions_of(lemma.given, one.without);
    assertions.push_back(fails);
    write(terms, fmt::format("{}.without-{}", lemma.name, one.without), lemma.about,
          fmt::format(
              "The opposite of what the lemma claims, with one hypothesis left out: \"{}\" There is such a state: "
              "the hypothesis is needed.",
              one.says),
          Status::sat, assertions);
  }
}

void Questions::show(const system::Terms& terms, std::string_view name, std::string_view about, std::string_view says,
                     const std::vector<Given>& given, system::Assertion shown) const {
  std::vector<Assertion> assertions = assertions_of(given);
  assertions.push_back(std::move(shown));
  write(terms, name, about, says, Status::sat, assertions);
}

void Questions::write(const system::Terms& terms, std::string_view name, std::string_view about, std::string_view says,
                      Status status, const std::vector<Assertion>& assertions) const {
  const std::string comment = fmt::format(
      "{}\n\nOf {} devices, any two of which may be linked. proofs/{} of cairn tells the lemma, with a proof by hand "
      "for "
      "every number of devices. Written by proofs/generate, from the formulas that cairn proves with.",
      says, devices_, about);
  const std::filesystem::path path = folder_ / fmt::format("{}.smt2", name);
  std::ofstream file(path, std::ios::binary);
  file << system::smtlib_question(terms, comment, status, assertions);
  if (!file.flush()) throw std::runtime_error(fmt::format("cannot write {}", path.string()));
}

}  // namespace cairn::proofs
