"""What plan_bench measured: tables, by how much others are slower, and where they are not.

Of the two searches of each peer the better one counts. A peer that was given up counts with the time it had spent, so that
its ratio is a least one.
"""
import re
import statistics

from report.figures import in_figures, numbers, table, words

OURS = "planWithBasinbell"
PEERS = {"planWithGecode": "Gecode", "planWithMiniZinc": "MiniZinc with Gecode"}
IN_MS = {"ns": 1e-6, "us": 1e-3, "ms": 1, "s": 1e3}


def given(benchmark):
    return {name: int(value) for name, value in re.findall(r"(\w+):(\d+)", benchmark["name"])}


def milliseconds(benchmark):
    # A process of its own has its time measured by hand, which the file calls real time.
    time = benchmark["real_time" if "manual_time" in benchmark["name"] else "cpu_time"]
    return time * IN_MS[benchmark["time_unit"]]


def of_program(result, program):
    """The benchmarks of a program, without those that could not be run."""
    return [
        each
        for each in result["benchmarks"]
        if each["name"].split("/")[0] == program and not each.get("error_occurred")
    ]


def measured(result):
    """{program: {(family, heads, pairs, zones): {"ms", "open", ...}}}, the better of several searches."""
    found = {}
    for program in (OURS, *PEERS):
        cases = found[program] = {}
        for each in of_program(result, program):
            sizes = given(each)
            family = each["name"].split("/")[1].split("_")[0]
            key = (family, sizes.get("heads", 1), sizes["pairs"], sizes["zones"])
            value = dict(each, ms=milliseconds(each), open=each["open"] > 0)
            cases[key] = min(cases.get(key, value), value, key=lambda one: (one["open"], one["ms"]))
    return found


def in_words(key):
    family, heads, pairs, zones = key
    hands = "one pair of hands" if pairs == 1 else f"{pairs} pairs of hands"
    return f"*{family}*, " + (f"{heads} heads of " if heads > 1 else "") + f"{zones} zones, {hands}"


def in_cell(case):
    if case is None:
        return "-"
    return "open" if case["open"] else in_figures(case["ms"]) + ("" if case["fits"] else ", nothing fits")


def conflicts_of(case):
    return "" if case["open"] else f"{case['conflicts']:,.0f}"


def row(found, key, sizes):
    ours = found[OURS][key]
    peers = [in_cell(found[peer].get(key)) for peer in PEERS]
    return [*sizes, in_cell(ours), conflicts_of(ours), *peers]


def coat_table(found):
    keys = sorted(key for key in found[OURS] if key[1] == 1)
    rows = [row(found, key, (key[0], key[3], key[2])) for key in keys]
    columns = numbers("zones", "pairs of hands", "Basinbell", "its conflicts, at most", *PEERS.values())
    return table(words("coat") + columns, rows)


def room_table(found):
    keys = sorted(key for key in found[OURS] if key[1] > 1)
    rows = [row(found, key, (key[1], key[3], key[2])) for key in keys]
    return table(
        numbers("heads", "zones of each", "pairs of hands", "Basinbell", "its conflicts, at most", *PEERS.values()),
        rows,
    )


def uncertain_table(result):
    rows = []
    for each in of_program(result, "planGuaranteed"):
        sizes = given(each)
        time = "open" if each["open"] else in_figures(milliseconds(each))
        rows.append([each["name"].split("/")[1], sizes["zones"], sizes["pairs"], time, f"{each['give']:.0f}"])
    return table(words("coat") + numbers("zones", "pairs of hands", "Basinbell", "greatest give, %"), rows)


def forecasts(result):
    """{(zones, runs): ms}"""
    all_of_them = of_program(result, "forecastOf")
    return {(given(each)["zones"], given(each)["runs"]): milliseconds(each) for each in all_of_them}


def forecast_table(result):
    rows = [[zones, f"{runs:,}", in_figures(ms)] for (zones, runs), ms in forecasts(result).items()]
    return table(numbers("zones", "runs", "Basinbell"), rows)


def ratios(found, peer):
    """{key: (ratio, whether it is a least one)} where the peer was asked and one of the two has proved its answer."""
    both = {key: (found[OURS][key], case) for key, case in found[peer].items() if key in found[OURS]}
    return {
        key: (theirs["ms"] / ours["ms"], theirs["open"])
        for key, (ours, theirs) in both.items()
        if not (ours["open"] and theirs["open"])
    }


def middle_of(part):
    """The median ratio, and whether it is a least one, as it is if one at it or below it is."""
    middle = statistics.median(ratio for ratio, _ in part)
    return middle, any(is_least for ratio, is_least in part if ratio <= middle)


def ratio_table(found):
    rows = []
    for peer, name in PEERS.items():
        by_key = ratios(found, peer)
        for family in [*sorted({key[0] for key in by_key}), "all"]:
            part = [value for key, value in by_key.items() if family in (key[0], "all")]
            if not part:
                continue
            middle, is_least = middle_of(part)
            least = min(part)
            in_the_middle = ("at least " if is_least else "") + in_figures(middle)
            rows.append([name, family, len(part), in_the_middle, in_figures(least[0])])
    return table(
        words("peer", "coats") + numbers("instances", "its time over Basinbell's, median", "least"), rows
    )


def slower(found):
    """A sentence for each instance on which a peer is faster, or on which nothing was proved here."""
    lines = []
    for peer, name in PEERS.items():
        for key, theirs in sorted(found[peer].items()):
            ours = found[OURS].get(key)
            if ours is None or (not ours["open"] and ours["ms"] <= theirs["ms"]):
                continue
            mine = ("open after " if ours["open"] else "") + in_figures(ours["ms"])
            their = ("open after " if theirs["open"] else "") + in_figures(theirs["ms"])
            lines.append(f"{in_words(key)}: Basinbell {mine} ms, {name} {their} ms")
    return lines


def disagreements(found):
    """Of answers that were both proved. Only the waste may differ and what comes after it, for seconds allow more
    than whole minutes: (what cannot be, what can)."""
    wrong, allowed = [], []
    for peer, name in PEERS.items():
        for key, theirs in found[peer].items():
            ours = found[OURS].get(key)
            if ours is None or ours["open"] or theirs["open"]:
                continue
            for figure in ("fits", "deviation", "waste"):
                mine, their = ours.get(figure), theirs.get(figure)
                if mine != their:
                    can_be = figure == "waste" and mine < their
                    told = f"{in_words(key)}: {figure} {mine:g}, by {name} {their:g}"
                    (allowed if can_be else wrong).append(told)
                    break
    return wrong, allowed
