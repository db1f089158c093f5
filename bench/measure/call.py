"""Calls of cairn, and the procedures that it is called on."""
import json
import os
import resource
import shlex
import subprocess
import sys
import tempfile
import time
from pathlib import Path

BENCH = Path(__file__).resolve().parent.parent
ROOT = BENCH.parent

# Options of `cairn prove`: states alone, every one of them, with no proof by facts and no closed set evaluated again.
EXPLORING = ["--engine", "explore", "--confirm-limit", "0", "--reduce", "none"]


class Failure(Exception):
    """What a run of cairn must not do, whatever it answers."""


def label(entry):
    """What `--property` calls the property of an entry of a verdict: "tolerates-loss=2"."""
    return f"{entry['name']}={entry['k']}" if "k" in entry else entry["name"]


class Run:
    """What one call of `cairn prove` has answered, and what it took.

    `document` is its verdict, `properties` the entries of it by label, `timing` the seconds of its parts; `seconds` of
    wall time, `core` seconds of a processor, `megabytes` (10^6 bytes) of memory at most. A child begins as a copy of its
    parent, and Linux counts that too: less memory than this program's own cannot be seen.
    """

    def __init__(self, command):
        with tempfile.TemporaryFile() as out, tempfile.TemporaryFile() as err:
            began = time.perf_counter()
            child = subprocess.Popen(command, stdin=subprocess.DEVNULL, stdout=out, stderr=err)
            _, status, usage = os.wait4(child.pid, 0)
            self.seconds = time.perf_counter() - began
            child.returncode = os.waitstatus_to_exitcode(status)
            self.core = usage.ru_utime + usage.ru_stime
            self.megabytes = usage.ru_maxrss * 1024 / 1e6
            self.memory_seen = usage.ru_maxrss > resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
            out.seek(0)
            err.seek(0)
            text, complaint = out.read().decode(), err.read().decode().strip()
        if child.returncode not in (0, 1, 3, 70):  # 70: a contradiction, which is in the document
            raise Failure(f"exit status {child.returncode}: {complaint[:400]}")
        try:
            self.document = json.loads(text)
        except json.JSONDecodeError:
            raise Failure(f"no verdict document but {text[:200]!r}") from None
        self.properties = {label(p): p for p in self.document["properties"]}
        self.timing = self.document["timing"]

    def taken(self, part):
        """Seconds of a processor that a part took, which is what it takes on a quiet machine: its wall time, less the share
        of it in which the whole call had to wait for a processor."""
        return self.timing[part] * min(1, self.core / self.seconds)


class Cairn:
    """The program, and how much of a processor it had for all calls together."""

    def __init__(self, program, time_limit):
        self.program, self.time_limit = program, time_limit
        self.seconds = self.core = 0.0

    def prove(self, file, properties, options=()):
        """Asks for these properties, or for those of the file where there are none; in one thread, unless the options say
        how many, since the times of several side by side are not those of one."""
        jobs = [] if "--jobs" in options else ["--jobs", "1"]
        command = [self.program, "prove", str(file), "--format", "json", "--timing", "--time-limit", str(self.time_limit),
                   *jobs, *options]
        for name in properties:
            command += ["--property", name]
        run = Run(command)
        self.seconds += run.seconds
        self.core += run.core
        return run

    def companion(self, name):
        """A program that is built beside cairn."""
        path = Path(self.program).with_name(name)
        if not os.access(path, os.X_OK):
            raise Failure(f"there is no program {path}; build it with the tests (scripts/test)")
        return str(path)

    def remark(self):
        """How far wall times can be believed, as a line; empty where nothing was called."""
        if not self.seconds:
            return ""
        share = self.core / self.seconds
        advice = "" if share > 0.9 else ": the machine is busy, and wall times are too long by as much"
        return f"cairn had {share:.0%} of a processor while it ran{advice}."


def write_model(folder, arguments):
    """The file of a model that scaled.py makes."""
    text = subprocess.run([sys.executable, str(BENCH / "scaled.py"), *shlex.split(arguments)], check=True,
                          capture_output=True, text=True).stdout
    path = Path(folder) / "model.yaml"
    path.write_text(text)
    return path


def explored(entry):
    """The states visited for a property, or None where the verdict does not say."""
    return entry.get("settled", {}).get("explored")


def why_undecided(entry):
    """The reason of an undecided verdict, in words."""
    return entry.get("contradiction") or entry.get("reason", "no reason")
