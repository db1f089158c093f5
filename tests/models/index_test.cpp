// The shelf is in order: every file opens with what it teaches, is in the index, and is used.
#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <set>
#include <sstream>
#include <string>

#include "cairn/files.hpp"
#include "cairn/load.hpp"
#include "cairn/render.hpp"
#include "models/shelf.hpp"

namespace cairn::test {
namespace {

/// The files under models/ that some procedure names, as paths from models/ on.
std::set<std::string> files_in_use() {
  const std::filesystem::path root = model_path("");
  std::set<std::string> files;
  for (const Proved& proved : shelf()) {
    for (const std::string& file : proved.model.files) {
      files.insert(std::filesystem::weakly_canonical(file)
                       .lexically_relative(std::filesystem::weakly_canonical(root))
                       .generic_string());
    }
  }
  return files;
}

/// The line of the index that links to `path`, or nothing.
std::string index_line(const std::string& index, const std::string& path) {
  std::istringstream lines(index);
  for (std::string line; std::getline(lines, line);) {
    if (line.find("(" + path + ")") != std::string::npos) return line;
  }
  return {};
}

}  // namespace

TEST_CASE("every model opens with what it teaches") {
  for (const std::string& path : model_files()) {
    CAPTURE(path);
    const Heading heading = read_heading(model_text(path));
    std::string prose;
    for (const std::string& line : heading.prose) prose += line + "\n";
    const auto sentences = std::count_if(prose.begin(), prose.end(), [&, last = ' '](char c) mutable {
      const bool ends = c == '\n' || c == ' ' ? last == '.' || last == '?' || last == ')' : false;
      last = c;
      return ends;
    });
    CHECK(sentences >= 2);
    CHECK(heading.expectations.empty() != is_procedure(path));
  }
}

TEST_CASE("every model is in the index, a procedure under its title") {
  const std::string index = model_text("README.md");
  for (const std::string& path : model_files()) {
    CAPTURE(path);
    CHECK_FALSE(index_line(index, path).empty());
  }
  for (const Proved& proved : shelf()) {
    CAPTURE(proved.path);
    CHECK(index_line(index, proved.path).find(proved.model.procedure.title) != std::string::npos);
  }
}

TEST_CASE("every model reads, and every site and platform is used") {
  const auto in_use = files_in_use();
  for (const std::string& path : model_files()) {
    CAPTURE(path);
    const auto document = load_document(model_path(path), DiskFiles());
    if (!document) {
      FAIL_CHECK(render_diagnostics(document.problems()));
      continue;
    }
    CHECK((document.value().kind == DocumentKind::procedure) == is_procedure(path));
    CHECK(in_use.contains(path));
  }
}

TEST_CASE("no two procedures have one title") {
  std::set<std::string> titles;
  for (const Proved& proved : shelf()) {
    CAPTURE(proved.path);
    CHECK(titles.insert(proved.model.procedure.title).second);
  }
}

}  // namespace cairn::test
