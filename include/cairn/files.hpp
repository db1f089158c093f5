/// \file
/// Where input text comes from: the disk, or memory in tests and in programs that hold their models themselves.
#pragma once

#include <cstddef>
#include <map>
#include <string>
#include <variant>

namespace cairn {

/// Why a file could not be read, as a phrase: "there is no such file".
struct Unreadable {
  std::string reason;
};

/// A source of files. Reading never throws.
class Files {
 public:
  virtual ~Files() = default;

  /// The whole content of `path`, or why there is none.
  [[nodiscard]] virtual std::variant<std::string, Unreadable> read(const std::string& path) const = 0;
};

/// Files on disk. "-" is standard input, read at most once a process (later reads give the same text).
/// A file larger than `max_bytes` is not read: no procedure is that long.
class DiskFiles final : public Files {
 public:
  static constexpr std::size_t max_bytes = 8u << 20u;

  [[nodiscard]] std::variant<std::string, Unreadable> read(const std::string& path) const override;
};

/// Files in memory, by path; paths are compared after `.` and `..` are resolved.
class MemoryFiles final : public Files {
 public:
  explicit MemoryFiles(std::map<std::string, std::string> content);
  [[nodiscard]] std::variant<std::string, Unreadable> read(const std::string& path) const override;

 private:
  std::map<std::string, std::string> content_;
};

}  // namespace cairn
