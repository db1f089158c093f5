/// \file
/// A verdict as questions that any solver can answer: for whoever does not want to take cairn's word for it.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "cairn/model.hpp"
#include "cairn/options.hpp"
#include "cairn/result.hpp"
#include "cairn/verdict.hpp"

namespace cairn {

/// How every exported text begins: questions behind the mark of a comment, the index as it is.
inline constexpr std::string_view export_mark = "Written by `cairn export`.";

/// One question in SMT-LIB 2.6, without anything that the standard does not have.
struct ExportedQuestion {
  std::string name;          ///< what it says, fit for a file name: "facts-exclude-no-split"
  std::string says;          ///< what the expected answer shows, in sentences
  bool satisfiable = false;  ///< the expected answer: sat, or else unsat
  std::string script;        ///< the question itself, explained in comments
};

/// The questions on one property.
struct Export {
  Report report;                            ///< on this property alone; where it is undecided there are no questions
  std::vector<ExportedQuestion> questions;  ///< in the order in which they are best read
  std::vector<std::string> left_out;        ///< what could be asked too and is not, and why, one sentence each

  [[nodiscard]] const PropertyVerdict& verdict() const { return report.properties.front(); }
};

/// Settles the property, and puts what there is to say about it into questions: of a proof by facts its
/// obligations, of a refuted property that a run of its length breaks it and no shorter one does, of a proved one that
/// no run as long as the plain one breaks it. Each answer was compared with that of cairn's own solver before. An error
/// where `prove` has one. \param options  `properties` are not looked at
[[nodiscard]] Result<Export> export_questions(const Model& model, const AskedProperty& asked,
                                              const ProveOptions& options = {});

}  // namespace cairn
