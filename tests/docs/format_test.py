#!/usr/bin/env python3
"""The examples of docs/format.md are what they say: documents that cairn reads, and a verdict like those that it writes.

    format_test.py PROGRAM ROOT
"""
import json
import re
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

PROGRAM, ROOT = Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve()

# The page's site names a family that the page does not show: one with two stages, to which its values fit.
TWO_STAGE = """\
platform: Two-stage family
numbers: [1, 9]
priorities: [0, 255]
factory: {number: 1, priority: 100, enabled: false, side: none}
number-takes: at-restart
priority-takes: at-once
settings-follow: device
side-takes: on-apply
side-needs-disabled: true
facing: opposite
side-leads-to: one-neighbour
software: must-match
orphans: carry-on
election: [priority, tenure]
"""


def section(title):
    text = (ROOT / "docs" / "format.md").read_text()
    return re.search(rf"^## {re.escape(title)}$(.*?)(?=^## |\Z)", text, re.MULTILINE | re.DOTALL)[1]


def block(title, language):
    return re.search(rf"^```{language}\n(.*?)^```$", section(title), re.MULTILINE | re.DOTALL)[1]


class FormatPage(unittest.TestCase):
    def setUp(self):
        self.folder = tempfile.TemporaryDirectory()
        self.root = Path(self.folder.name)
        for name, text in {"platforms/harbour.yaml": block("Platform", "yaml"), "platforms/two-stage.yaml": TWO_STAGE,
                           "sites/quayside.yaml": block("Site", "yaml"),
                           "procedures/append.yaml": block("Procedure", "yaml")}.items():
            (self.root / name).parent.mkdir(exist_ok=True)
            (self.root / name).write_text(text)

    def tearDown(self):
        self.folder.cleanup()

    def cairn(self, *arguments):
        return subprocess.run([PROGRAM, *arguments], cwd=self.root, capture_output=True, text=True)

    def assert_read(self, name):
        result = self.cairn("lint", name)
        self.assertNotEqual(result.returncode, 2, result.stdout + result.stderr)

    def test_platform(self):
        self.assert_read("platforms/harbour.yaml")

    def test_site(self):
        self.assert_read("sites/quayside.yaml")

    def test_procedure(self):
        result = self.cairn("prove", "procedures/append.yaml", "--format", "json")
        self.assertIn(result.returncode, (0, 1), result.stderr)
        asked = [(p["name"], p.get("k")) for p in json.loads(result.stdout)["properties"]]
        self.assertEqual(asked, [("no-split", None), ("primary-stays", None), ("reaches-goal", None), ("tolerates-loss", 1)])

    def test_template(self):
        procedure = block("Procedure", "yaml").replace("to: 90,", "to: $p,").replace("to: 9}", "to: $n}")
        (self.root / "procedures" / "append.yaml").write_text(block("Template", "yaml") + procedure)
        result = self.cairn("prove", "procedures/append.yaml")
        self.assertEqual(result.returncode, 1, result.stderr)
        self.assertIn("In the instance n = ", result.stdout)

    def test_verdict(self):
        example = json.loads(block("The verdict as JSON", "json"))
        written = json.loads(self.cairn("prove", "procedures/append.yaml", "--format", "json").stdout)
        self.assertEqual(list(example), [key for key in written if key in example])
        self.assertEqual(example["schema"], written["schema"])
        self.assertEqual(list(example["faults"]), list(written["faults"]))
        for verdict in ("proved", "refuted"):
            shown = next(p for p in example["properties"] if p["verdict"] == verdict)
            came = next((p for p in written["properties"] if p["verdict"] == verdict), None)
            self.assertIsNotNone(came, f"the page's procedure has no property that is {verdict}")
            self.assertLessEqual(set(shown), set(came))


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
