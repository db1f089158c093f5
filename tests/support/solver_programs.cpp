#include "support/solver_programs.hpp"

#include <stdio.h>  // popen and pclose, which C++ has not
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <stdexcept>

namespace cairn::test {

namespace {

namespace fs = std::filesystem;

/// A file with the script, gone when the object is.
class ScriptFile {
 public:
  explicit ScriptFile(const std::string& script) {
    std::string name = (fs::temp_directory_path() / "cairn-question-XXXXXX").string();
    const int file = mkstemp(name.data());
    if (file < 0) throw std::runtime_error("no temporary file can be made");
    close(file);
    path_ = name;
    // z3 confirms each command when it is asked to keep to the standard.
    std::ofstream(path_) << "(set-option :print-success false)\n" << script;
  }
  ScriptFile(const ScriptFile&) = delete;
  ScriptFile& operator=(const ScriptFile&) = delete;
  ~ScriptFile() {
    std::error_code ignored;
    fs::remove(path_, ignored);
  }
  [[nodiscard]] const fs::path& path() const { return path_; }

 private:
  fs::path path_;
};

}  // namespace

std::string answer_of(SolverProgram program, const std::string& script) {
  const ScriptFile file(script);
  const std::string call = program == SolverProgram::z3 ? "'" CAIRN_Z3_PROGRAM "' smtlib2_compliant=true -smt2 '"
                                                        : "'" CAIRN_CVC5_PROGRAM "' --strict-parsing --lang=smt2 '";
  FILE* const pipe = popen((call + file.path().string() + "' 2>&1 </dev/null").c_str(), "r");
  if (pipe == nullptr) throw std::runtime_error("the program cannot be started: " + call);
  std::string out;
  std::array<char, 4096> piece{};
  for (std::size_t got = 0; (got = fread(piece.data(), 1, piece.size(), pipe)) > 0;) out.append(piece.data(), got);
  const int status = pclose(pipe);
  if (status != 0) out += "exit status " + std::to_string(WIFEXITED(status) ? WEXITSTATUS(status) : status) + "\n";
  return out;
}

}  // namespace cairn::test
