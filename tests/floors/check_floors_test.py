#!/usr/bin/env python3
"""scripts/check-floors is shown trees that are wrong in one way, and one that is right.

    check_floors_test.py CHECK-FLOORS
"""
import subprocess
import sys
import tempfile
from pathlib import Path

RIGHT = {
    "src/base/text.cpp": '#include "base/text.hpp"\n#include <string>\n',
    "src/syntax/yaml.cpp": '#include <yaml-cpp/yaml.h>\n#include "base/text.hpp"\n#include "cairn/model.hpp"\n',
    "src/verify/prove.cpp": '#include "explore/explore.hpp"\n#include <fmt/format.h>\n',
}
WRONG = {
    "src/semantics/state.cpp": '#include "syntax/yaml.hpp"\n',
    "src/base/names.cpp": '#include "semantics/state.hpp"\n',
    "src/report/text.cpp": '#include "explore/store.hpp"\n',
    "src/cli/main.cpp": '#include "base/text.hpp"\n',
    "src/syntax/reader.cpp": "#include <yaml-cpp/yaml.h>\n",
    "src/explore/store.cpp": "#include <nlohmann/json.hpp>\n",
    "src/solver/clauses.cpp": "#include <z3++.h>\n",
    "src/system/term.cpp": '#include "solver/solver.hpp"\n',
    "src/attic/old.cpp": "\n",
}


def status(check, files):
    with tempfile.TemporaryDirectory() as folder:
        for name, text in files.items():
            path = Path(folder) / name
            path.parent.mkdir(parents=True, exist_ok=True)
            path.write_text(text)
        return subprocess.run([sys.executable, check, folder], capture_output=True).returncode


def main():
    check = sys.argv[1]
    wrong = []
    if status(check, RIGHT) != 0:
        wrong.append("a tree that is right is refused")
    if status(check, {}) != 1:
        wrong.append("an empty tree passes")
    wrong += [f"{name} passes" for name, text in WRONG.items() if status(check, {**RIGHT, name: text}) != 1]
    print("\n".join(wrong) or f"{len(WRONG)} wrong trees are refused")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
