#!/usr/bin/env python3
"""The tables of docs/performance.md are made of what the measuring programs say, which is made up here."""
import pathlib
import shutil
import tempfile
import unittest

from report import again, aims, conditions, floor, pages, plans, projects

PAGE = pathlib.Path(__file__).resolve().parents[2] / "docs/performance.md"
CONDITIONS = {"date": "2000-01-01", "commit": "abc", "processor": "2 processors", "others": 0, "seconds": 9}
AGAIN = """4 heads of 4 zones, 4 pairs of hands: 365 plans in 5 runs, 1 not proved, 2 after a limit was passed
the first 266.00 ms; again: median 2.80 ms, 90 % 120.00 ms, 99 % 318.00 ms, most 326.00 ms
"""
FLOOR = """12 heads, 488 tasks, seed 1
   0.070 s  plan   deviation      0.00, waste   3744.00, staleness    97.00 min
   0.900 s  plan   deviation      0.00, waste   3400.00, staleness    90.00 min
   5.010 s  plan   deviation      0.00, waste   3400.00, staleness    90.00 min
   5.010 s  bound  deviation      0.00, waste   2052.00, staleness     0.00 min
   5.010 s  give   80 %
   0.005 s  for its safe starts
"""
PROJECTS = """here       proved   1 of   2   mean    261.000   median     2.000   most   2000.000 ms
Gecode     proved   1 of   2   mean    987.000   median   904.000   most   2000.000 ms
Gecode's time over ours at the median: 14.1; 0 answers differ; 2 compared with known values
slower or open here: 2
  psp17.sch: none in 0.140 ms, Gecode none in 0.110 ms
  psp18.sch: open, 47 in 2000.000 ms, Gecode open, 39 in 2001.000 ms
"""


def plan(program, case, ms, is_open=0, **more):
    by_hand = {"real_time": ms, "cpu_time": 77} if "manual_time" in case else {"real_time": 77, "cpu_time": ms}
    worth = {"fits": 1, "deviation": 0, "waste": 40, "conflicts": 8, "give": 100}
    return {"name": f"{program}/{case}", "time_unit": "ms", "open": is_open, **by_hand, **worth, **more}


PLANS = [
    plan("planWithBasinbell", "looks/zones:4/pairs:1", 0.05),
    plan("planWithGecode", "looks_order/zones:4/pairs:1", 12),
    plan("planWithGecode", "looks_deviation/zones:4/pairs:1", 10),
    plan("planWithMiniZinc", "looks_own/zones:4/pairs:1/iterations:1/manual_time", 0.04),
    plan("planWithBasinbell", "room/zones:2/pairs:2/heads:3", 2),
    plan("planWithGecode", "room_order/zones:2/pairs:2/heads:3", 10_000, is_open=1),
    plan("planGuaranteed", "looks/zones:4/pairs:2", 0.6),
    plan("forecastOf", "zones:6/runs:100000", 150),
]


class Plans(unittest.TestCase):
    def found(self, *benchmarks):
        return plans.measured({"benchmarks": [*PLANS, *benchmarks]})

    def test_the_better_search_counts(self):
        self.assertEqual(self.found()["planWithGecode"]["looks", 1, 1, 4]["ms"], 10)
        proved = plan("planWithGecode", "room_deviation/zones:2/pairs:2/heads:3", 20_000)
        self.assertFalse(self.found(proved)["planWithGecode"]["room", 3, 2, 2]["open"])

    def test_a_peer_that_is_faster_is_listed_and_no_other(self):
        expected = ["*looks*, 4 zones, one pair of hands: Basinbell 0.05 ms, MiniZinc with Gecode 0.04 ms"]
        self.assertEqual(plans.slower(self.found()), expected)

    def test_one_that_was_given_up_has_a_least_ratio(self):
        by_key = plans.ratios(self.found(), "planWithGecode")
        self.assertEqual(by_key["room", 3, 2, 2], (5000, True))
        self.assertEqual(plans.middle_of([(10, False), (20, False), (30, True)]), (20, False))
        self.assertEqual(plans.middle_of([(10, True), (20, False), (30, False)]), (20, True))

    def test_proved_answers_must_agree(self):
        self.assertEqual(plans.disagreements(self.found()), ([], []))
        other = plan("planWithGecode", "looks_third/zones:4/pairs:1", 1, deviation=3)
        self.assertEqual(len(plans.disagreements(self.found(other))[0]), 1)
        less = plan("planWithGecode", "looks_third/zones:4/pairs:1", 1, waste=39)
        self.assertEqual(len(plans.disagreements(self.found(less))[0]), 1)
        more = plan("planWithGecode", "looks_third/zones:4/pairs:1", 1, waste=41)
        self.assertEqual([len(part) for part in plans.disagreements(self.found(more))], [0, 1])

    def test_what_could_not_be_run_is_left_out(self):
        failed = plan("planWithMiniZinc", "mixing_own/zones:4/pairs:1/manual_time", 1, error_occurred=True)
        self.assertNotIn(("mixing", 1, 1, 4), self.found(failed)["planWithMiniZinc"])


class Others(unittest.TestCase):
    def test_planning_again(self):
        self.assertEqual(
            again.again_table([again.read(AGAIN)])[-1], "| 4 | 4 | 4 | 365 | 1 | 266 | 2.8 | 120 | 318 | 326 |"
        )

    def test_a_floor_over_time(self):
        run = floor.read(FLOOR, 5)
        self.assertEqual(
            floor.over_time([run])[-1],
            "| 12 | 1 | 488 | 70 ms | 3,744 | 3,400 | 3,400 | 3,400 |  |  | 2,052 | 1,348 | 80 % |",
        )
        self.assertEqual(floor.gaps([run])[3], "| waste | 12 | 1 | 3,400.00 | 2,052.00 | 1,348.00 |")
        self.assertEqual(floor.over_time([dict(run, plans=[(1.5, [0, 9, 0])])])[-1].split(" | ")[5], "none")

    def test_projects(self):
        one = projects.read(PROJECTS, "J10", 2, True)
        self.assertEqual(
            projects.project_table([one])[-1], "| J10 | 2 | 2 | 0 | 1 | 261 | 2 | open | 1 | 987 | 904 | 14 |"
        )
        self.assertEqual(
            projects.slower([one]),
            [
                "J10, psp17.sch: Basinbell none in 0.14 ms, Gecode none in 0.11 ms",
                "J10, psp18.sch: Basinbell open, best 47 in 2,000 ms, Gecode open, best 39 in 2,001 ms",
            ],
        )

    def test_aims(self):
        self.assertEqual(aims.judged(2, 2), "missed, 1 times")
        self.assertEqual(aims.judged(1.9, 2), "reached")
        self.assertEqual(list(aims.floor_rows([floor.read(FLOOR, 5)]))[0][2], "missed, 1.4 times")
        self.assertEqual(aims.ratio_row("", "", 50, True)[2], "not known")


class Conditions(unittest.TestCase):
    def test_say_whether_others_were_at_work(self):
        self.assertNotIn("not quiet", conditions.in_a_sentence(CONDITIONS))
        self.assertIn("not quiet", conditions.in_a_sentence(CONDITIONS | {"others": 0.2}))
        self.assertEqual(conditions.used_by_others((100, 3), (118, 13), 10), 0.8)
        told = conditions.after(PAGE.parent, conditions.before())
        self.assertLessEqual(set(CONDITIONS), set(told))


class Page(unittest.TestCase):
    def blocks(self):
        results = {
            "plans": {"benchmarks": PLANS},
            "again": [again.read(AGAIN)],
            "floor": [floor.read(FLOOR, 5)],
            "projects": [projects.read(PROJECTS, "J10", 2, True)],
        }
        return pages.made_of({part: {"conditions": CONDITIONS, "result": one} for part, one in results.items()})

    def test_has_a_place_for_every_block_and_keeps_the_rest(self):
        blocks, picture, wrong = self.blocks()
        self.assertIn("</svg>", picture)
        self.assertEqual(wrong, [])
        with tempfile.TemporaryDirectory() as folder:
            page = pathlib.Path(shutil.copy(PAGE, folder))
            before = page.read_text(encoding="utf-8")
            pages.put_into(page, blocks)
            after = page.read_text(encoding="utf-8")
            pages.put_into(page, blocks)
            self.assertEqual(after, page.read_text(encoding="utf-8"))
        self.assertEqual(before.count(pages.END), len(blocks))
        self.assertEqual(before.split(pages.END)[-1], after.split(pages.END)[-1])
        self.assertIn("| looks | 4 | 1 | 0.05 | 8 | 10 | 0.04 |", after)

    def test_without_a_place_nothing_is_written(self):
        with tempfile.TemporaryDirectory() as folder:
            page = pathlib.Path(folder) / "page.md"
            page.write_text("Nothing.\n", encoding="utf-8")
            with self.assertRaises(SystemExit):
                pages.put_into(page, self.blocks()[0])
            self.assertEqual(page.read_text(encoding="utf-8"), "Nothing.\n")


if __name__ == "__main__":
    unittest.main()
