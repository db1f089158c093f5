#!/usr/bin/env python3
"""The lemmas that are kept as files are those that the generator writes for three devices.

    kept_test.py GENERATOR FOLDER       with CAIRN_COLLECT=1 they are written anew
"""
import os
import subprocess
import sys
import tempfile
from pathlib import Path


def main():
    generator, kept = sys.argv[1], Path(sys.argv[2])
    with tempfile.TemporaryDirectory() as folder:
        subprocess.run([generator, "3", folder], check=True)
        lemmas = {path.name: path.read_bytes() for path in Path(folder).glob("*.smt2")
                  if b"(set-info :status unsat)" in path.read_bytes()}
    if os.environ.get("CAIRN_COLLECT"):
        kept.mkdir(exist_ok=True)
        for path in kept.glob("*.smt2"):
            path.unlink()
        for name, text in lemmas.items():
            (kept / name).write_bytes(text)
    there = {path.name: path.read_bytes() for path in kept.glob("*.smt2")}
    wrong = [f"proofs/n3/{name} is missing" for name in sorted(lemmas.keys() - there.keys())]
    wrong += [f"proofs/n3/{name} is no lemma any more" for name in sorted(there.keys() - lemmas.keys())]
    wrong += [f"proofs/n3/{name} is not what the generator writes" for name in sorted(there.keys() & lemmas.keys())
              if there[name] != lemmas[name]]
    if wrong:
        print("\n".join(wrong))
        print("If the formulas were changed on purpose: CAIRN_COLLECT=1 scripts/test -R proofs_kept")
    else:
        print(f"all {len(lemmas)} lemmas are kept as they are written")
    return 1 if wrong or not lemmas else 0


if __name__ == "__main__":
    sys.exit(main())
