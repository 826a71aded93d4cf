#!/usr/bin/env python3
"""Compares what plan_bench measured: a table, by how much others are slower, and where they are not.

    plan_bench --benchmark_out=costs.json --benchmark_out_format=json
    tests/bench/compare_costs.py costs.json         # or several such files, of parts of a run

Of the two searches of each peer the better one counts. A peer that was given up counts with the time it had spent, so that
its ratio is a least one. Exits with 1 where two that proved their answers disagree about the deviation.
"""
import json
import re
import statistics
import sys

OURS = "planWithBasinbell"
PEERS = {"planWithGecode": "Gecode", "planWithMiniZinc": "MiniZinc with Gecode"}
IN_MS = {"ns": 1e-6, "us": 1e-3, "ms": 1, "s": 1e3}


def measured(paths):
    """{program: {(family, zones, pairs, heads): {"ms", "open", ...}}}, the better of several searches."""
    benchmarks = []
    for path in paths:
        with open(path, encoding="utf-8") as file:
            benchmarks += json.load(file)["benchmarks"]
    found = {}
    for each in benchmarks:
        program, family = each["name"].split("/")[:2]
        if program not in (OURS, *PEERS) or each.get("error_occurred"):
            continue
        given = {name: int(value) for name, value in re.findall(r"(\w+):(\d+)", each["name"])}
        key = (family.split("_")[0], given["zones"], given["pairs"], given.get("heads", 1))
        # A process of its own has its time measured by hand, which the file calls real time.
        time = each["real_time" if "manual_time" in each["name"] else "cpu_time"]
        value = dict(each, ms=time * IN_MS[each["time_unit"]], open=each["open"] > 0)
        cases = found.setdefault(program, {})
        cases[key] = min(cases.get(key, value), value, key=lambda one: (one["open"], one["ms"]))
    return found


def in_words(key):
    family, zones, pairs, heads = key
    return f"{family}, {zones} zones, {pairs} pairs of hands" + (f", {heads} heads" if heads > 1 else "")


def in_figures(case):
    if case is None:
        return "-"
    figure = f"{case['ms']:.2g}" if case["ms"] < 100 else f"{case['ms']:,.0f}"
    return f"open after {figure}" if case["open"] else figure + ("" if case["fits"] else ", nothing fits")


def table(found):
    names = {OURS: "Basinbell", **PEERS}
    print("| coat | zones | pairs of hands | heads |", " | ".join(names.values()), "|")
    print("| --- | --: | --: | --: |", " | ".join("--:" for _ in names), "|")
    for key in sorted(found[OURS], key=lambda key: (key[0], key[3], key[2], key[1])):
        figures = [in_figures(found.get(program, {}).get(key)) for program in names]
        family, zones, pairs, heads = key
        print(f"| {family} | {zones} | {pairs} | {heads} |", " | ".join(figures), "|")


def ratios(found, peer):
    """{key: (ratio, whether it is a least one)} where the peer was asked and one of the two has proved its answer."""
    both = {key: (found[OURS][key], case) for key, case in found.get(peer, {}).items() if key in found[OURS]}
    return {
        key: (theirs["ms"] / ours["ms"], theirs["open"])
        for key, (ours, theirs) in both.items()
        if not (ours["open"] and theirs["open"])
    }


def summary(found, peer):
    by_key = ratios(found, peer)
    if not by_key:
        print(f"{PEERS[peer]}: not measured")
        return
    for family in [*sorted({key[0] for key in by_key}), "all"]:
        part = sorted(ratio for key, ratio in by_key.items() if family in (key[0], "all"))
        middle = statistics.median(ratio for ratio, _ in part)
        # With a least ratio below the middle or at it, so is the middle.
        least = any(is_least for ratio, is_least in part if ratio <= middle)
        print(
            f"{PEERS[peer]}, {family}: {len(part)} instances, in the middle {'at least ' if least else ''}"
            f"{middle:,.0f} times Basinbell's time, from {part[0][0]:,.1f} times"
        )
    slower = [key for key, (ratio, _) in by_key.items() if ratio < 1 or found[OURS][key]["open"]]
    print(f"  Basinbell slower: {'; '.join(map(in_words, slower)) or 'nowhere'}")
    unknown = [key for key in found[peer] if found[OURS][key]["open"] and found[peer][key]["open"]]
    if unknown:
        print(f"  neither has proved anything: {'; '.join(map(in_words, unknown))}")


def disagreements(found):
    """Of answers that were both proved. They must have the same deviation; what comes after it may differ, for
    seconds allow more than whole minutes."""
    told = 0
    for peer, name in PEERS.items():
        for key, theirs in found.get(peer, {}).items():
            ours = found[OURS][key]
            if ours["open"] or theirs["open"]:
                continue
            for figure in ("fits", "deviation", "waste"):
                if ours.get(figure) != theirs.get(figure):
                    print(f"{name}, {in_words(key)}: {figure} {theirs.get(figure)}, Basinbell {ours.get(figure)}")
                    told += figure != "waste"
                    break
    return told


def main():
    if len(sys.argv) < 2:
        sys.exit(__doc__)
    found = measured(sys.argv[1:])
    table(found)
    print()
    for peer in PEERS:
        summary(found, peer)
    print()
    sys.exit(1 if disagreements(found) else 0)


if __name__ == "__main__":
    main()
