"""Figures on paper: rows in columns, and figures against targets."""
from .call import Failure


def number(n):
    return "" if n is None else f"{n:,}"


class Table:
    """Prints rows as they come, in columns whose widths are known beforehand; the first `words` columns hold words."""

    def __init__(self, columns, words):
        self.words = words
        self.widths = [max(width, len(head)) for head, width in columns]
        self.line([head for head, _ in columns])
        self.line(["-" * w for w in self.widths])

    def line(self, cells):
        left = [c.ljust(w) for c, w in zip(cells[:self.words], self.widths)]
        right = [c.rjust(w) for c, w in zip(cells[self.words:], self.widths[self.words:])]
        print("  ".join(left + right + list(cells[len(self.widths):])).rstrip(), flush=True)


class Targets:
    """Figures against their targets. What misses one is collected in `wrong`."""

    def __init__(self):
        self.wrong = []

    def judge(self, what, value, unit, target, at_most=True):
        """Whether the figure meets its target."""
        good = value <= target if at_most else value >= target
        if not good:
            bound = f"at {'most' if at_most else 'least'} {target:,} {unit}"
            self.wrong.append(f"{what}: {value:,.3g} {unit} (target: {bound})")
        return good

    def note(self, what, value, unit, target, at_most=True):
        """The same, and prints it."""
        good = self.judge(what, value, unit, target, at_most)
        print(f"{'good' if good else 'MISSED':7} {what}: {value:,.3g} {unit}"
              f" (target: at {'most' if at_most else 'least'} {target:,} {unit})", flush=True)

    def answer(self, what, ask):
        """What `ask()` answers; None where it fails, which misses the target."""
        try:
            return ask()
        except Failure as failure:
            self.miss(f"{what}: {failure}")
            return None

    def miss(self, what):
        """What misses a target without a figure."""
        self.wrong.append(what)
        print(f"{'MISSED':7} {what}", flush=True)
