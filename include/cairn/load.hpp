/// \file
/// From a path to a Model. Every problem of every file is reported in one go.
#pragma once

#include <string>
#include <variant>

#include "cairn/files.hpp"
#include "cairn/model.hpp"
#include "cairn/result.hpp"

namespace cairn {

/// Reads a procedure, the site that it names and the platform that the site names (docs/format.md).
/// `path` may be "-" for standard input; names in it are then relative to the current directory.
/// Never throws on account of the input. Of a template (Model::unknowns) it is seen to that there is an instance, and
/// that none is an error.
[[nodiscard]] Result<Model> load_procedure(const std::string& path, const Files& files);

/// The kinds of document.
enum class DocumentKind { platform, site, procedure };

/// What a file of any kind turned out to be: a procedure joined with what it names, or a site or a platform alone.
/// Of a site or a platform the parts of the Model that it does not hold stay empty.
struct Document {
  DocumentKind kind = DocumentKind::procedure;
  Model model;
};

/// Reads a file of any of the three kinds, told apart by their first required key.
[[nodiscard]] Result<Document> load_document(const std::string& path, const Files& files);

}  // namespace cairn
