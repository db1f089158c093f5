#include "cairn/files.hpp"

#include <cerrno>
#include <cstring>
#include <filesystem>
#include <mutex>

#include <fcntl.h>
#include <fmt/format.h>
#include <poll.h>
#include <sys/stat.h>
#include <unistd.h>

namespace cairn {

namespace {

using Content = std::variant<std::string, Unreadable>;

/// How long a pipe or a device file may stay silent. Standard input may stay silent for as long as it likes.
constexpr int patience_in_milliseconds = 5000;

/// A file descriptor that closes itself.
class Descriptor {
 public:
  explicit Descriptor(int number) : number_(number) {}
  ~Descriptor() {
    if (number_ >= 0) ::close(number_);
  }
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;
  [[nodiscard]] int number() const { return number_; }

 private:
  int number_;
};

Unreadable too_large() {
  return {fmt::format("it is larger than {} MB, which no model is", DiskFiles::max_bytes >> 20u)};
}

Unreadable failed(int error) {
  switch (error) {
    case ENOENT:
      return {"there is no such file"};
    case EACCES:
      return {"permission is denied"};
    case EISDIR:
      return {"it is a directory"};
    case ENOTDIR:
      return {"a part of its path is no directory"};
    case EBADF:
      return {"it is closed"};
    case ELOOP:
      return {"its symbolic links lead in a circle"};
    case ENAMETOOLONG:
      return {"its name is too long"};
    case ENXIO:
      return {"it is a socket or a device that is not there"};
    default:
      return {std::strerror(error)};
  }
}

/// True once `descriptor` has something to read or has come to its end.
bool ready(int descriptor, int patience) {
  pollfd waiting{descriptor, POLLIN, 0};
  int answer = 0;
  do {
    answer = ::poll(&waiting, 1, patience);
  } while (answer < 0 && errno == EINTR);
  return answer != 0;
}

/// Reads to the end, but no more than one byte past the cap: an endless file ends there too.
Content read_all(int descriptor, int patience) {
  std::string text;
  while (text.size() <= DiskFiles::max_bytes) {
    if (!ready(descriptor, patience)) {
      return Unreadable{fmt::format("nothing came out of it for {} seconds", patience / 1000)};
    }
    char buffer[1u << 16u];
    const auto count = ::read(descriptor, buffer, sizeof buffer);
    if (count == 0) return text;
    if (count > 0) {
      text.append(buffer, static_cast<std::size_t>(count));
    } else if (errno != EINTR && errno != EAGAIN) {
      return failed(errno);
    }
  }
  return too_large();
}

Content read_from_disk(const std::string& path) {
  if (path.empty()) return Unreadable{"its name is empty"};
  if (path.find('\0') != std::string::npos) return Unreadable{"its name holds a NUL byte"};
  // Without O_NONBLOCK, opening a pipe that nobody writes into would wait for ever.
  const Descriptor file(::open(path.c_str(), O_RDONLY | O_NONBLOCK | O_CLOEXEC | O_NOCTTY));
  if (file.number() < 0) return failed(errno);
  struct stat about {};
  if (::fstat(file.number(), &about) != 0) return failed(errno);
  if (S_ISDIR(about.st_mode)) return failed(EISDIR);
  if (S_ISREG(about.st_mode) && static_cast<std::size_t>(about.st_size) > DiskFiles::max_bytes) return too_large();
  return read_all(file.number(), patience_in_milliseconds);
}

const Content& standard_input() {
  static std::once_flag once;
  static Content content;
  std::call_once(once, [] { content = read_all(STDIN_FILENO, -1); });
  return content;
}

std::string normal(const std::string& path) {
  return std::filesystem::path(path).lexically_normal().string();
}

}  // namespace

std::variant<std::string, Unreadable> DiskFiles::read(const std::string& path) const {
  return path == "-" ? standard_input() : read_from_disk(path);
}

MemoryFiles::MemoryFiles(std::map<std::string, std::string> content) {
  while (!content.empty()) {
    auto file = content.extract(content.begin());
    file.key() = normal(file.key());
    content_.insert(std::move(file));
  }
}

std::variant<std::string, Unreadable> MemoryFiles::read(const std::string& path) const {
  const auto found = content_.find(normal(path));
  if (found == content_.end()) return failed(ENOENT);
  return found->second;
}

}  // namespace cairn
