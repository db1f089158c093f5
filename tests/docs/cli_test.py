#!/usr/bin/env python3
"""docs/cli.md names exactly the options that each command has, and every kind of finding.

    cli_test.py PROGRAM ROOT
"""
import re
import subprocess
import sys
import unittest
from pathlib import Path

PROGRAM, ROOT = Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve()
OPTION = re.compile(r"--[a-z][a-z-]*")
PAGE = (ROOT / "docs" / "cli.md").read_text()


def section(title):
    return re.search(rf"^## {title}$(.*?)(?=^## )", PAGE, re.MULTILINE | re.DOTALL)[1]


def rows(title):
    """The first cells of the tables of a section."""
    return [line.split("|")[1] for line in section(title).splitlines() if line.startswith("| `")]


def options_of(command):
    """The options that the command's help lists, each at the beginning of its line."""
    result = subprocess.run([PROGRAM, command, "--help"], capture_output=True, text=True, check=True)
    lines = [line.split("  ")[0] for line in (l.strip() for l in result.stdout.splitlines()) if line.startswith("-")]
    return {option for line in lines for option in OPTION.findall(line)} - {"--help"}


class CliPage(unittest.TestCase):
    def test_options(self):
        for command in ("prove", "why", "export", "walk", "lint"):
            with self.subTest(command):
                named = {option for row in rows(command) for option in OPTION.findall(row)}
                self.assertEqual(named, options_of(command))
                self.assertTrue(named)

    def test_findings(self):
        kinds = re.search(r"enum class Kind[^{]*\{(.*?)\};", (ROOT / "include/cairn/lint.hpp").read_text(), re.DOTALL)[1]
        names = {kind.replace("_", "-") for kind in re.findall(r"^\s*(\w+),", kinds, re.MULTILINE)}
        named = {row.strip(" `") for row in rows("lint")}
        self.assertEqual({n for n in named if not n.startswith("--")}, names)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
