/// \file
/// A folder that is filled by one command and holds nothing else.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace cairn::cli {

/// A folder for files that all begin with one line, the mark, by which they are known again. Nothing is ever replaced
/// or removed that is not so marked.
class Folder {
 public:
  /// \param comment  what may stand before the mark: "; "
  Folder(std::string path, std::string_view mark, std::string_view comment)
      : path_(std::move(path)), mark_(mark), comment_(comment) {}

  /// Why the folder cannot be filled, as a sentence without a full stop: it is a file, it holds something that was not
  /// put there by an earlier call, it can be neither made nor written to. Empty where it can; it is there then.
  [[nodiscard]] std::string prepare() const;

  /// Puts these files there, by name, each as a whole or not at all, in the order given, and removes those of an
  /// earlier call that are not among them. Why that failed, as a sentence; empty where it did not.
  [[nodiscard]] std::string fill(const std::vector<std::pair<std::string, std::string>>& files) const;

 private:
  [[nodiscard]] bool is_ours(const std::string& path) const;

  std::string path_;
  std::string mark_;
  std::string comment_;
};

}  // namespace cairn::cli
