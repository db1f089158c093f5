#!/usr/bin/env python3
"""The checks of examples.py must be able to fail: each is shown a document that is wrong in one way."""
import tempfile
import unittest
from pathlib import Path

from examples import Runner

PROGRAM = "#!/bin/sh\necho \"cairn $*\"\n[ \"$1\" != refute ]\n"


class Examples(unittest.TestCase):
    def setUp(self):
        self.folder = tempfile.TemporaryDirectory()
        self.root = Path(self.folder.name)
        (self.root / "models").mkdir()
        (self.root / "models" / "one.yaml").write_text("a: 1\nb: 2\n")
        (self.root / "program").write_text(PROGRAM)
        (self.root / "program").chmod(0o755)

    def tearDown(self):
        self.folder.cleanup()

    def wrong(self, text, update=False):
        (self.root / "page.md").write_text(text)
        runner = Runner(self.root, self.root / "program", "page.md")
        runner.run(update)
        return runner.wrong

    def test_output_as_shown(self):
        self.assertEqual(self.wrong("```console\n$ cairn prove x\ncairn prove x\n```\n"), [])

    def test_other_output(self):
        self.assertIn("prints something else", self.wrong("```console\n$ cairn prove x\ncairn prove y\n```\n")[0])

    def test_missing_output(self):
        self.assertEqual(len(self.wrong("```console\n$ cairn prove x\n```\n")), 1)

    def test_exit_status(self):
        page = "```console{}\n$ cairn refute\ncairn refute\n```\n"
        self.assertIn("exit status 1, not 0", self.wrong(page.format(""))[0])
        self.assertEqual(self.wrong(page.format(" exit=1")), [])

    def test_a_status_amid_commands(self):
        self.assertEqual(len(self.wrong("```console exit=1\n$ cairn refute\ncairn refute\n$ false\n```\n")), 1)

    def test_files_are_found_by_later_blocks(self):
        self.assertEqual(self.wrong("```yaml file=d/x.yaml\nk: v\n```\n\n```console\n$ cat d/x.yaml\nk: v\n```\n"), [])

    def test_shown_files(self):
        self.assertEqual(self.wrong("```yaml shows=models/one.yaml\nb: 2\n```\n"), [])
        self.assertEqual(len(self.wrong("```yaml shows=models/one.yaml\nb: 3\n```\n")), 1)

    def test_a_command_over_two_lines(self):
        self.assertEqual(self.wrong("```console\n$ cairn a \\\n    b\ncairn a b\n```\n"), [])

    def test_update_writes_what_came(self):
        page = "# T\n```console\n$ cairn a \\\n  b\nold\n$ cairn c\n```\nend\n"
        self.wrong(page, update=True)
        updated = (self.root / "page.md").read_text()
        self.assertEqual(updated, "# T\n```console\n$ cairn a \\\n  b\ncairn a b\n$ cairn c\ncairn c\n```\nend\n")
        self.assertEqual(self.wrong(updated), [])

    def test_links(self):
        page = "# One heading\n[a](models/one.yaml) [b](#one-heading) [c](https://example.org/)\n"
        self.assertEqual(self.wrong(page), [])
        self.assertEqual(len(self.wrong("[a](models/two.yaml)\n")), 1)
        self.assertEqual(len(self.wrong("# One\n[a](#two)\n")), 1)

    def test_a_block_that_never_ends(self):
        with self.assertRaises(SystemExit):
            self.wrong("```console\n$ true\n")


if __name__ == "__main__":
    unittest.main()
