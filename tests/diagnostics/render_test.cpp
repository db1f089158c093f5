#include <doctest/doctest.h>

#include "cairn/render.hpp"

using namespace cairn;

namespace {

Diagnostic problem(int column, int length, std::string line) {
  Diagnostic d;
  d.span = {"f.yaml", 3, column, length};
  d.message = "m";
  d.source_line = std::move(line);
  return d;
}

std::string shown(const Diagnostic& d) {
  return render_diagnostics({d});
}

}  // namespace

TEST_CASE("the line, a mark under the stretch, what was expected and the nearest name") {
  auto d = problem(3, 2, "abcdef");
  d.expected = "x";
  d.nearest = "y";
  CHECK(shown(d) ==
        "f.yaml:3:3: m\n"
        "    abcdef\n"
        "      ^^\n"
        "    expected  x\n"
        "    nearest   y\n"
        "\n"
        "1 problem.\n");
}

TEST_CASE("a problem of a whole file, of standard input, of a line") {
  Diagnostic d;
  d.span.file = "-";
  d.message = "cannot be read: it is closed";
  CHECK(shown(d) == "standard input: cannot be read: it is closed\n\n1 problem.\n");
  d.span.line = 4;
  CHECK(shown(d) == "standard input:4: cannot be read: it is closed\n\n1 problem.\n");
}

TEST_CASE("the mark behind the end of the line, and a stretch that is cut by it") {
  CHECK(shown(problem(4, 1, "abc")).find("    abc\n       ^\n") != std::string::npos);
  CHECK(shown(problem(3, 9, "abc")).find("    abc\n      ^\n") != std::string::npos);
}

TEST_CASE("the mark stands right after tabs, wide characters and combining marks") {
  CHECK(shown(problem(2, 1, "\tb")).find("     b\n     ^\n") != std::string::npos);
  CHECK(shown(problem(2, 1,
                      "\xE6\xBC\xA2"
                      "b"))
            .find("b\n      ^\n") != std::string::npos);
  CHECK(shown(problem(3, 1,
                      "e\xCC\x81"
                      "b"))
            .find("b\n     ^\n") != std::string::npos);
}

TEST_CASE("a long line is cut around the mark") {
  const std::string line = std::string(100, 'a') + "XY" + std::string(100, 'b');
  const auto text = shown(problem(101, 2, line));
  CHECK(text.find("    .." + std::string(40, 'a') + "XY" + std::string(30, 'b') + "..\n" + std::string(46, ' ') +
                  "^^\n") != std::string::npos);
}

TEST_CASE("nothing in a file acts upon the terminal") {
  auto d = problem(1, 1, "a\x1b[2Jb\x9b");
  d.message = "m\x1b[31m";
  d.span.file = "f\x1b[0m";
  CHECK(shown(d).find('\x1b') == std::string::npos);
  CHECK(shown(d).find('\x9b') == std::string::npos);
}

TEST_CASE("colours where they are asked for, and no other difference") {
  const auto d = problem(1, 1, "abc");
  TextStyle style;
  style.colour = true;
  auto coloured = render_diagnostics({d}, style);
  CHECK(coloured.find("\x1b[") != std::string::npos);
  for (auto at = coloured.find('\x1b'); at != std::string::npos; at = coloured.find('\x1b'))
    coloured.erase(at, coloured.find('m', at) + 1 - at);
  CHECK(coloured == shown(d));
}
