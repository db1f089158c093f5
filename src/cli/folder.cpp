#include "cli/folder.hpp"

#include <fmt/format.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <filesystem>
#include <fstream>
#include <system_error>
#include <vector>

namespace cairn::cli {

namespace fs = std::filesystem;

namespace {

/// Of a file that is being written, until it has its name.
constexpr std::string_view unfinished = ".unfinished";

// Entries that the folder holds, sorted.
std::vector<fs::path> entries_of(const fs::path& folder, std::error_code& error) {
  std::vector<fs::path> entries;
  for (fs::directory_iterator at(folder, error), end; !error && at != end; at.increment(error)) {
    entries.push_back(at->path());
  }
  std::ranges::sort(entries);
  return entries;
}

std::string write_whole(const fs::path& path, const std::string& content) {
  fs::path draft = path;
  draft += unfinished;
  std::ofstream file(draft, std::ios::binary | std::ios::trunc);
  file << content;
  file.close();
  std::error_code error;
  if (file.good()) {
    fs::rename(draft, path, error);
    if (!error) return {};
  } else {
    error = std::error_code(errno, std::generic_category());
  }
  std::error_code ignored;
  fs::remove(draft, ignored);
  return fmt::format("`{}` cannot be written: {}", path.string(), error.message());
}

}  // namespace

bool Folder::is_ours(const std::string& path) const {
  std::error_code error;
  if (!fs::is_regular_file(fs::symlink_status(path, error))) return false;
  if (path.ends_with(unfinished)) return true;
  std::ifstream file(path, std::ios::binary);
  std::string line;
  return std::getline(file, line) && (line == mark_ || line == comment_ + mark_);
}

std::string Folder::prepare() const {
  std::error_code error;
  fs::create_directories(path_, error);
  std::error_code ignored;
  if (!fs::is_directory(path_, ignored)) {
    const bool is_there = fs::exists(path_, ignored);
    return fmt::format("`{}` cannot be made a folder: {}", path_, is_there ? "it is none" : error.message());
  }
  const std::vector<fs::path> entries = entries_of(path_, error);
  if (error) return fmt::format("`{}` cannot be read: {}", path_, error.message());
  for (const fs::path& entry : entries) {
    if (is_ours(entry.string())) continue;
    return fmt::format("`{}` holds `{}`, which no earlier export has put there; name another folder", path_,
                       entry.filename().string());
  }
  if (::access(path_.c_str(), W_OK | X_OK) != 0) {
    return fmt::format("`{}` cannot be written to: {}", path_, std::generic_category().message(errno));
  }
  return {};
}

std::string Folder::fill(const std::vector<std::pair<std::string, std::string>>& files) const {
  std::error_code error;
  std::vector<fs::path> stale = entries_of(path_, error);
  for (const auto& [name, content] : files) {
    const fs::path path = fs::path(path_) / name;
    if (std::string why = write_whole(path, content); !why.empty()) return why;
    std::erase(stale, path);
  }
  for (const fs::path& path : stale) {
    if (is_ours(path.string())) fs::remove(path, error);
  }
  return {};
}

}  // namespace cairn::cli
