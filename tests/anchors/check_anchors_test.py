"""scripts/check-anchors on small trees of which each has one thing right or wrong."""
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

SCRIPT = sys.argv.pop()

TEXT = """# Semantics
## 1. Things
- 1.a **First**: one. See 02:00:00:00:01:0a, 0.25 and RFC 8342.
- 1.b **Second**: another (see 1.a).
**1.1** 1.1.a A sentence. 1.1.b And one more.
## 2. Rules
No anchors here.
1.d The same for all.
"""
CITES_ALL = "// 1.a to 1.b, 1.1.a, 1.1.b, 1.d; Semantics 2, Rules\n"


class CheckAnchors(unittest.TestCase):
    def check(self, code=CITES_ALL, test=CITES_ALL):
        with tempfile.TemporaryDirectory() as folder:
            root = Path(folder)
            for name, text in (("docs/semantics.md", TEXT), ("src/a.cpp", code), ("tests/a.cpp", test)):
                path = root / name
                path.parent.mkdir(exist_ok=True)
                path.write_text(text, encoding="utf-8")
            run = subprocess.run([sys.executable, SCRIPT, str(root)], capture_output=True, text=True, check=False)
            return run.returncode, run.stdout.splitlines()

    def test_all_cited(self):
        status, lines = self.check()
        self.assertEqual(status, 0, lines)

    def test_not_cited_by_code(self):
        status, lines = self.check(code=CITES_ALL.replace("1.1.b", ""))
        self.assertEqual((status, lines), (1, ["semantics 1.1.b is cited by no code"]))

    def test_not_cited_by_a_test(self):
        status, lines = self.check(test=CITES_ALL.replace("1.a to 1.b", "1.b"))
        self.assertEqual((status, lines), (1, ["semantics 1.a is cited by no test"]))

    def test_a_heading_is_cited_by_its_sentences_alone(self):
        status, lines = self.check(test="// 1.a 1.b 1.d Semantics 2")
        self.assertEqual((status, lines), (1, [f"semantics {a} is cited by no test" for a in ("1.1", "1.1.a", "1.1.b")]))

    def test_a_section_without_anchors(self):
        status, lines = self.check(code=CITES_ALL.replace("Semantics 2", "Semantics 2.x"))
        self.assertEqual((status, lines), (1, ["semantics 2 is cited by no code"]))

    def test_numbers_of_other_texts_do_not_count(self):
        status, _ = self.check(code=CITES_ALL.replace("1.1.b", "") + "// RFC 1, section 1.1.b\n// version 1.1.b2, 11.1.b\n")
        self.assertEqual(status, 1)

    def test_a_text_without_anchors(self):
        with tempfile.TemporaryDirectory() as folder:
            (Path(folder) / "docs").mkdir()
            (Path(folder) / "docs/semantics.md").write_text("# Nothing\n", encoding="utf-8")
            run = subprocess.run([sys.executable, SCRIPT, folder], capture_output=True, text=True, check=False)
            self.assertEqual(run.returncode, 1)


if __name__ == "__main__":
    unittest.main()
