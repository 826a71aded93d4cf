"""On what, of what and when something was measured."""
import datetime
import os
import re
import resource
import subprocess
import time

from report.figures import in_figures

QUIET = 0.1  # Processors in use by others, on average.


def in_use():
    """Seconds that all processors together were in use since the machine was started, and those of our programs."""
    with open("/proc/stat", encoding="utf-8") as file:
        user, nice, system, _, _, interrupts, soft_interrupts, stolen = map(int, file.readline().split()[1:9])
    everybody = (user + nice + system + interrupts + soft_interrupts + stolen) / os.sysconf("SC_CLK_TCK")
    ours = resource.getrusage(resource.RUSAGE_CHILDREN)
    return everybody, ours.ru_utime + ours.ru_stime


def used_by_others(then, now, seconds):
    """How many processors others had in use on average, of what `in_use` said then and now."""
    everybody, ours = (later - earlier for later, earlier in zip(now, then))
    return max(0, everybody - ours) / seconds


def before():
    return {"in_use": in_use(), "clock": time.monotonic()}


def said_by(*command):
    try:
        return subprocess.run(command, capture_output=True, text=True, check=True).stdout.strip()
    except (OSError, subprocess.CalledProcessError):
        return ""


def processor():
    with open("/proc/cpuinfo", encoding="utf-8") as file:
        told = file.read()
    model = re.search(r"^model name\s*: (.+)$", told, re.M)
    megahertz = re.search(r"^cpu MHz\s*: (.+)$", told, re.M)
    speed = f" at {float(megahertz[1]) / 1000:.1f} GHz" if megahertz else ""
    return f"{os.cpu_count()} processors{speed} ({model[1] if model else 'of a kind not known'})"


def commit(root):
    git = ("git", "-C", str(root))
    sources = ("core", "tests/bench", "tests/oracle")
    changed = " with changes" if said_by(*git, "status", "--porcelain", "--", *sources) else ""
    return (said_by(*git, "rev-parse", "--short", "HEAD") or "a commit not known") + changed


def after(root, begun):
    seconds = time.monotonic() - begun["clock"]
    return {
        "date": datetime.datetime.now(datetime.timezone.utc).date().isoformat(),
        "commit": commit(root),
        "processor": processor(),
        "others": used_by_others(begun["in_use"], in_use(), seconds),
        "seconds": seconds,
    }


def in_a_sentence(told):
    quiet = "" if told["others"] < QUIET else " **The machine was not quiet.**"
    return (
        f"Measured on {told['date']} at {told['commit']}, {told['processor']}, {told['others']:.2f} of which other "
        f"work used meanwhile, in {in_figures(told['seconds'])} s.{quiet}"
    )
