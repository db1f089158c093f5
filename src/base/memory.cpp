#include "cairn/memory.hpp"

#include <sys/resource.h>
#include <unistd.h>

#include <algorithm>
#include <charconv>
#include <fstream>
#include <string_view>

namespace cairn {

namespace {

using Bytes = std::optional<std::uint64_t>;

// Of two limits the one that is met first.
Bytes least(Bytes a, Bytes b) {
  if (!a || !b) return a ? a : b;
  return std::min(*a, *b);
}

std::uint64_t without(std::uint64_t limit, std::uint64_t used) {
  return limit - std::min(limit, used);
}

Bytes number_in(std::string_view text) {
  std::uint64_t n = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), n);
  return error == std::errc() && end != text.data() ? Bytes(n) : Bytes();
}

// "max", where there is no limit, is no number.
Bytes number_of_file(const std::string& path) {
  std::ifstream file(path);
  std::string word;
  return file >> word ? number_in(word) : Bytes();
}

// The number beside `key` in a file with one pair a line.
Bytes number_beside(const std::string& path, std::string_view key) {
  std::ifstream file(path);
  for (std::string word, number; file >> word >> number; file.ignore(1 << 10, '\n')) {
    if (word == key) return number_in(number);
  }
  return {};
}

struct Files {
  std::string_view limit, usage, idle;  ///< `idle` is a key of memory.stat
};
constexpr Files version_1{"memory.limit_in_bytes", "memory.usage_in_bytes", "total_inactive_file"};
constexpr Files version_2{"memory.max", "memory.current", "inactive_file"};

Bytes left_in(const std::string& folder, const Files& files) {
  const Bytes limit = number_of_file(folder + "/" + std::string(files.limit));
  if (!limit) return {};
  const std::uint64_t usage = number_of_file(folder + "/" + std::string(files.usage)).value_or(0);
  const std::uint64_t idle = number_beside(folder + "/memory.stat", files.idle).value_or(0);
  return without(*limit, without(usage, idle));
}

// A group is limited by those that it is in as well. Inside a container the path may be that of the host: then only the
// top folder is there.
Bytes left_in_group(const std::string& top, std::string path, const Files& files) {
  Bytes left = left_in(top, files);
  while (path.size() > 1) {
    left = least(left, left_in(top + path, files));
    path.resize(path.rfind('/'));
  }
  return left;
}

// A line is "0::PATH" for version 2, "NUMBER:CONTROLLERS:PATH" for version 1.
Bytes left_in_groups(const std::string& root) {
  std::ifstream file(root + "/proc/self/cgroup");
  Bytes left;
  for (std::string line; std::getline(file, line);) {
    const std::size_t first = line.find(':');
    const std::size_t second = line.find(':', first + 1);
    if (second == std::string::npos) continue;
    const std::string controllers = "," + line.substr(first + 1, second - first - 1) + ",";
    const std::string path = line.substr(second + 1);
    if (controllers == ",,") left = least(left, left_in_group(root + "/sys/fs/cgroup", path, version_2));
    if (controllers.find(",memory,") != std::string::npos) {
      left = least(left, left_in_group(root + "/sys/fs/cgroup/memory", path, version_1));
    }
  }
  return left;
}

Bytes left_of_addresses(const std::string& root) {
  rlimit limit{};
  if (getrlimit(RLIMIT_AS, &limit) != 0 || limit.rlim_cur == RLIM_INFINITY) return {};
  const Bytes pages = number_of_file(root + "/proc/self/statm");
  return without(limit.rlim_cur, pages.value_or(0) * static_cast<std::uint64_t>(sysconf(_SC_PAGESIZE)));
}

}  // namespace

std::optional<std::uint64_t> memory_left(const std::string& root) {
  const Bytes kibibytes = number_beside(root + "/proc/meminfo", "MemAvailable:");
  const Bytes available = kibibytes ? Bytes(*kibibytes * 1024) : Bytes();
  return least(least(available, left_in_groups(root)), left_of_addresses(root));
}

}  // namespace cairn
