"""Every mutant is a change of a text that occurs exactly once, under a name of its own.

    mutants_fit_test.py SRC
"""
import sys
from pathlib import Path

import formulas
import mutants
import reductions


def complaints(campaign, source):
    texts = {str(path.relative_to(source)): path.read_text(encoding="utf-8") for path in source.rglob("*.?pp")}
    names = [mutant[0] for mutant in campaign.MUTANTS]
    yield from (f"{name}: the name occurs twice" for name in set(names) if names.count(name) > 1)
    yield from (f"{name}: no mutant has this name" for name in campaign.EQUIVALENT if name not in names)
    for name, file, old, new in campaign.MUTANTS:
        count = texts.get(file, "").count(old)
        if count != 1 or old == new:
            yield f"{name}: its old text occurs {count} times in {file}"


def main():
    source = Path(sys.argv[1])
    wrong = [*complaints(mutants, source / "semantics"), *complaints(formulas, source / "system"),
             *complaints(reductions, source / "explore")]
    print("\n".join([*wrong, f"{len(mutants.MUTANTS)} mutants, {len(formulas.MUTANTS)} of the formulas, and "
                             f"{len(reductions.MUTANTS)} of the reductions"]))
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
