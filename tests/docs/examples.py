#!/usr/bin/env python3
"""Runs the examples of documents and checks their links.

    examples.py --program PATH --root FOLDER [--update] [DOCUMENT…]

Without a DOCUMENT, all of the project's: those in the root, and those under docs.

A fenced block says by its first line what is done with it:

    ```yaml file=NAME        written to NAME in a scratch folder; blocks further down find it there
    ```yaml shows=PATH       must stand, word for word and in one piece, in the file PATH of the project
    ```console               lines that begin with `$ ` are commands, the others their output, which must be exactly this
    ```console exit=N        as above, where the last command ends with exit status N instead of 0

Commands run in the scratch folder, in which `models` is that of the project and `cairn` the program that was built.
Other blocks are left alone. `--update` writes the output that came into the documents.

Links to places of the project must lead somewhere: to a file or folder, and where they name a heading, to one that is
there.
"""
import argparse
import difflib
import os
import re
import subprocess
import sys
import tempfile
from pathlib import Path

FENCE = re.compile(r"^```(\w+)((?:\s+\w+=\S+)*)\s*$")
LINK = re.compile(r"\[[^\]\[]*\]\(([^)\s]+)\)")


class Block:
    """A fenced block: language, attributes, content, and the lines of the document that it fills (from 0, to excluded)."""

    def __init__(self, language, attributes, begin):
        self.language = language
        self.attributes = dict(a.split("=", 1) for a in attributes.split())
        self.begin = self.end = begin
        self.lines = []

    @property
    def text(self):
        return "".join(line + "\n" for line in self.lines)


def blocks_of(lines):
    """The fenced blocks that have a language, in order."""
    blocks, block, fenced = [], None, False
    for i, line in enumerate(lines):
        if not line.startswith("```"):
            if block:
                block.lines.append(line)
            continue
        if fenced:
            if block:
                block.end = i
                blocks.append(block)
            block, fenced = None, False
        else:
            fenced, opening = True, FENCE.match(line)
            if opening:
                block = Block(opening[1], opening[2], i + 1)
    if fenced:
        raise SystemExit("a fenced block is never closed")
    return blocks


def commands_of(block):
    """Pairs of a command and its expected output."""
    pairs = []
    for line in block.lines:
        if line.startswith("$ "):
            pairs.append([line[2:], []])
        elif not pairs:
            raise SystemExit(f"line {block.begin + 1}: a console block must begin with a command")
        elif pairs[-1][0].endswith("\\") and not pairs[-1][1]:
            pairs[-1][0] += "\n" + line
        else:
            pairs[-1][1].append(line)
    return pairs


def anchors_of(path):
    """The anchors of a document's headings, as they are made of the words."""
    headings = re.findall(r"^#+ +(.*)$", path.read_text(), re.MULTILINE)
    return {re.sub(r"[^\w\- ]", "", h.lower()).replace(" ", "-") for h in headings}


class Runner:
    def __init__(self, root, program, document):
        self.root, self.program, self.document = root, program, document
        self.path = root / document
        self.lines = self.path.read_text().splitlines()
        self.wrong = []
        self.ran = 0

    def complain(self, line, what):
        self.wrong.append(f"{self.document}:{line + 1}: {what}")

    def run(self, update):
        with tempfile.TemporaryDirectory() as folder:
            self.scratch = Path(folder)
            (self.scratch / "bin").mkdir()
            (self.scratch / "bin" / "cairn").symlink_to(self.program)
            (self.scratch / "models").symlink_to(self.root / "models")
            replacements = [(b, self.run_block(b)) for b in blocks_of(self.lines)]
        if update:
            for block, output in reversed(replacements):
                if output is not None:
                    self.lines[block.begin:block.end] = output
            self.path.write_text("".join(line + "\n" for line in self.lines))
        self.check_links()

    def run_block(self, block):
        """Does what the block says. The lines that a console block should have, or None."""
        if "shows" in block.attributes:
            self.ran += 1
            if block.text not in (self.root / block.attributes["shows"]).read_text():
                self.complain(block.begin, f"this is not what {block.attributes['shows']} says")
        elif "file" in block.attributes:
            target = self.scratch / block.attributes["file"]
            target.parent.mkdir(parents=True, exist_ok=True)
            target.write_text(block.text)
        elif block.language == "console":
            return self.run_console(block)
        return None

    def run_console(self, block):
        came, pairs = [], commands_of(block)
        environment = {"PATH": f"{self.scratch / 'bin'}:{os.environ['PATH']}", "LANG": "C.UTF-8", "HOME": str(self.scratch)}
        for i, (command, expected) in enumerate(pairs):
            self.ran += 1
            result = subprocess.run(["bash", "-c", command], cwd=self.scratch, env=environment, stdin=subprocess.DEVNULL,
                                    stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True, encoding="utf-8")
            output = result.stdout.splitlines()
            came += ["$ " + line if first else line for first, line in
                     ((n == 0, line) for n, line in enumerate(command.split("\n")))] + output
            status = int(block.attributes.get("exit", 0)) if i == len(pairs) - 1 else 0
            if result.returncode != status:
                self.complain(block.begin, f"`{command}` ends with exit status {result.returncode}, not {status}")
            if output != expected:
                difference = "\n".join(difflib.unified_diff(expected, output, "shown", "came", lineterm=""))
                self.complain(block.begin, f"`{command}` prints something else:\n{difference}")
        return came

    def check_links(self):
        for i, line in enumerate(self.lines):
            for target in LINK.findall(line):
                if re.match(r"[a-z]+:", target):
                    continue
                place, _, anchor = target.partition("#")
                path = (self.path.parent / place) if place else self.path
                if not path.exists():
                    self.complain(i, f"the link to {target} leads nowhere")
                elif anchor and anchor not in anchors_of(path):
                    self.complain(i, f"the link to {target} names a heading that is not there")


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--program", required=True, type=Path)
    parser.add_argument("--root", required=True, type=Path)
    parser.add_argument("--update", action="store_true")
    parser.add_argument("documents", metavar="DOCUMENT", nargs="*")
    options = parser.parse_args()
    root = options.root.resolve()
    found = [*root.glob("*.md"), *root.glob("docs/**/*.md")]
    documents = options.documents or sorted(str(path.relative_to(root)) for path in found)
    wrong = ran = 0
    for document in documents:
        runner = Runner(root, options.program.resolve(), document)
        runner.run(options.update)
        for line in runner.wrong:
            print(line)
        wrong, ran = wrong + len(runner.wrong), ran + runner.ran
    print(f"{len(documents)} documents, {ran} examples, {wrong} wrong")
    return 1 if wrong or not ran else 0


if __name__ == "__main__":
    sys.exit(main())
