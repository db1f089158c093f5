#!/usr/bin/env python3
"""The lemmas that are kept as files say what the generator says for three devices, and both programs find that they hold.

    kept_test.py GENERATOR PROOFS       PROOFS is the folder proofs/; with CAIRN_COLLECT=1 the files are written anew

Their formulas may be of an earlier shape: proofs/check.py asks about those of today.
"""
import os
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path


def written(generator):
    """The lemmas of three devices, by file name."""
    with tempfile.TemporaryDirectory() as folder:
        subprocess.run([generator, "3", folder], check=True)
        texts = {path.name: path.read_text(encoding="utf-8") for path in Path(folder).glob("*.smt2")}
    return {name: text for name, text in texts.items() if "(set-info :status unsat)" in text}


def statement(text):
    """What a question says in words, and what answer it expects."""
    return [line for line in text.splitlines() if line.startswith((";", "(set-info"))]


def collect(folder, lemmas):
    folder.mkdir(exist_ok=True)
    for path in folder.glob("*.smt2"):
        path.unlink()
    for name, text in lemmas.items():
        (folder / name).write_text(text, encoding="utf-8")


def main():
    generator, proofs = sys.argv[1], Path(sys.argv[2])
    sys.path.insert(0, str(proofs))
    import check  # pylint: disable=import-outside-toplevel

    folder = proofs / "n3"
    lemmas = written(generator)
    if os.environ.get("CAIRN_COLLECT"):
        collect(folder, lemmas)
    kept = {path.name: path.read_text(encoding="utf-8") for path in folder.glob("*.smt2")}
    wrong = [f"proofs/n3/{name} is missing" for name in sorted(lemmas.keys() - kept.keys())]
    wrong += [f"proofs/n3/{name} is no lemma any more" for name in sorted(kept.keys() - lemmas.keys())]
    wrong += [f"proofs/n3/{name} does not say what the lemma says" for name in sorted(kept.keys() & lemmas.keys())
              if statement(kept[name]) != statement(lemmas[name])]
    for name in sorted(kept):
        for program in check.PROGRAMS:
            answer = check.ask(program, shutil.which(program), folder / name, 60)
            if answer.text != "unsat":
                wrong.append(f"proofs/n3/{name}: {program} says {answer.text}")
    if wrong:
        print("\n".join(wrong))
        print("If the lemmas were changed on purpose: CAIRN_COLLECT=1 scripts/test -R proofs_kept")
    else:
        print(f"all {len(lemmas)} lemmas are kept, and hold")
    return 1 if wrong or not lemmas else 0


if __name__ == "__main__":
    sys.exit(main())
