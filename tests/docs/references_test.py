#!/usr/bin/env python3
"""Documents that code, scripts and models point to are there; so are the sources that documents point to.

    references_test.py ROOT
"""
import re
import sys
from pathlib import Path

NAMED = re.compile(r"\bdocs/[\w/-]+\.md\b")
PLACE = re.compile(r"`((?:src|include|tests|scripts|bench|models|docs|cmake)/[\w./-]*\w)`")


def sources(root):
    for folder in ("src", "include", "scripts", "cmake", "tests", "models", "bench", ".ci"):
        for path in sorted((root / folder).rglob("*")):
            if path.is_file() and path.suffix not in (".pyc",):
                yield path


def main():
    root = Path(sys.argv[1]).resolve()
    wrong = []
    for path in sources(root):
        try:
            text = path.read_text()
        except UnicodeDecodeError:
            continue  # Inputs of tests that are no text on purpose.
        wrong += [f"{path.relative_to(root)} names {name}, which is not there"
                  for name in set(NAMED.findall(text)) if not (root / name).exists()]
    for path in [*root.glob("*.md"), *root.glob("docs/**/*.md")]:
        for place in PLACE.findall(path.read_text()):
            # A bare name stands for its .hpp and its .cpp.
            if not (root / place).exists() and not list((root / place).parent.glob((root / place).name + ".*")):
                wrong.append(f"{path.relative_to(root)} names `{place}`, which is not there")
    print("\n".join(wrong) or "every place that is named is there")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
