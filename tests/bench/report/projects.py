"""What project_bench printed: projects from files, and invented ones, beside Gecode."""
import re

from report.figures import in_figures, numbers, table, words

SIDE = re.compile(r"^(here|Gecode) +proved +(\d+) of +(\d+) +mean +(\S+) +median +(\S+) +most +(\S+) ms", re.M)
BOTH = re.compile(r"at the median: (\S+); (\d+) answers differ; (\d+) compared with known values")
CASE = re.compile(r"^  (.+): (open, )?(\S+) in (\S+) ms, Gecode (open, )?(\S+) in (\S+) ms$", re.M)


def read(text, name, seconds, published):
    sides = {
        who: {"proved": int(proved), "of": int(of), "mean": float(mean), "median": float(median), "most": float(most)}
        for who, proved, of, mean, median, most in SIDE.findall(text)
    }
    ratio, differ, compared = BOTH.search(text).groups()
    slower = [
        {"project": project, "open": bool(is_open), "makespan": ours, "ms": float(ms)}
        | {"gecode_open": bool(theirs_open), "gecode_makespan": theirs, "gecode_ms": float(their_ms)}
        for project, is_open, ours, ms, theirs_open, theirs, their_ms in CASE.findall(text)
    ]
    return {
        "set": name,
        "published": published,
        "seconds": seconds,
        "here": sides["here"],
        "gecode": sides["Gecode"],
        "ratio": float(ratio),
        "differ": int(differ),
        "compared": int(compared),
        "slower": slower,
    }


def project_table(sets):
    rows = []
    for one in sets:
        ours, theirs = one["here"], one["gecode"]
        most = "open" if ours["proved"] < ours["of"] else in_figures(ours["most"])
        rows.append(
            [one["set"], ours["of"], one["compared"], one["differ"], ours["proved"], in_figures(ours["mean"])]
            + [in_figures(ours["median"]), most, theirs["proved"], in_figures(theirs["mean"])]
            + [in_figures(theirs["median"]), in_figures(one["ratio"])]
        )
    ours = ("known values", "answers that differ", "proved here", "mean", "median", "most")
    theirs = ("proved by Gecode", "mean", "median", "Gecode's time over ours, median")
    return table(words("set") + numbers("projects", *ours, *theirs), rows)


def answer(is_open, makespan):
    return ("open, best " if is_open else "") + makespan


def slower(sets):
    """A sentence for each project on which Gecode is faster, or which is open here."""
    lines = []
    for one in sets:
        for case in one["slower"]:
            ours = f"{answer(case['open'], case['makespan'])} in {in_figures(case['ms'])} ms"
            theirs = f"{answer(case['gecode_open'], case['gecode_makespan'])} in {in_figures(case['gecode_ms'])} ms"
            lines.append(f"{one['set']}, {case['project']}: Basinbell {ours}, Gecode {theirs}")
    return lines
