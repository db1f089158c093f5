"""Every mutant is a change of a text that occurs exactly once, under a name of its own.

    mutants_fit_test.py SRC/SEMANTICS
"""
import sys
from pathlib import Path

from mutants import EQUIVALENT, MUTANTS


def main():
    source = Path(sys.argv[1])
    texts = {path.name: path.read_text(encoding="utf-8") for path in source.iterdir()}
    names = [mutant[0] for mutant in MUTANTS]
    complaints = [f"{name}: the name occurs twice" for name in set(names) if names.count(name) > 1]
    complaints += [f"{name}: no mutant has this name" for name in EQUIVALENT if name not in names]
    for name, file, old, new in MUTANTS:
        count = texts.get(file, "").count(old)
        if count != 1 or old == new:
            complaints.append(f"{name}: its old text occurs {count} times in {file}")
    for complaint in complaints:
        print(complaint)
    print(f"{len(MUTANTS)} mutants")
    return 1 if complaints else 0


if __name__ == "__main__":
    sys.exit(main())
