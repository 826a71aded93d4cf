"""Draws how the cost of a plan grows with the number of zones.

Time is on a logarithmic scale. Of the two searches of each peer the better one is drawn; hollow where it was given up.
"""
import math

WIDTH, HEIGHT = 800, 500
LEFT, RIGHT, TOP, BOTTOM = 70, 220, 20, 50
LEAST, MOST = 0.01, 100_000  # milliseconds
MOST_ZONES = 16
KINDS = [  # family, pairs of hands, colour, how it is called
    ("looks", 1, "#8a3a1e", "looks, one pair"),
    ("mixing", 1, "#1b6a78", "mixing, one pair"),
    ("mixing", 2, "#5b2a4e", "mixing, two pairs"),
]
PROGRAMS = [
    ("planWithBasinbell", "", "Basinbell"),
    ("planWithGecode", "7 4", "Gecode"),
    ("planWithMiniZinc", "2 3", "MiniZinc with Gecode"),
]


def points_of(cases, family, pairs):
    """{zones: (ms, open)}"""
    return {
        zones: (case["ms"], case["open"])
        for (of, heads, with_pairs, zones), case in cases.items()
        if (of, with_pairs, heads) == (family, pairs, 1)
    }


def across(zones):
    return LEFT + (zones - 2) / (MOST_ZONES - 2) * (WIDTH - LEFT - RIGHT)


def down(ms):
    share = (math.log10(ms) - math.log10(LEAST)) / (math.log10(MOST) - math.log10(LEAST))
    return HEIGHT - BOTTOM - share * (HEIGHT - TOP - BOTTOM)


def text(x, y, words, anchor="start", size=13):
    return f'<text x="{x:.0f}" y="{y:.0f}" font-size="{size}" text-anchor="{anchor}" fill="#2b2026">{words}</text>'


def grid():
    drawn = []
    for power in range(-2, 6):
        y = down(10.0**power)
        label = f"{10.0 ** power:g} ms" if power < 3 else f"{10 ** (power - 3)} s"
        drawn.append(f'<line x1="{LEFT}" x2="{WIDTH - RIGHT}" y1="{y:.1f}" y2="{y:.1f}" stroke="#d8ccc3"/>')
        drawn.append(text(LEFT - 8, y + 4, label, "end"))
    for zones in range(2, MOST_ZONES + 1, 2):
        drawn.append(text(across(zones), HEIGHT - BOTTOM + 20, zones, "middle"))
    drawn.append(text((LEFT + WIDTH - RIGHT) / 2, HEIGHT - 10, "zones of the coat", "middle"))
    return drawn


def line(points, colour, dashes):
    way = " ".join(f"{across(zones):.1f},{down(ms):.1f}" for zones, (ms, _) in sorted(points.items()))
    drawn = [f'<polyline points="{way}" fill="none" stroke="{colour}" stroke-width="2" stroke-dasharray="{dashes}"/>']
    for zones, (ms, is_open) in sorted(points.items()):
        fill = "#fdfaf6" if is_open else colour
        drawn.append(f'<circle cx="{across(zones):.1f}" cy="{down(ms):.1f}" r="4" fill="{fill}" stroke="{colour}"/>')
    return drawn


def picture(found):
    """The text of an SVG file, of what `plans.measured` returns."""
    drawn = [
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDTH} {HEIGHT}" font-family="sans-serif">',
        f'<rect width="{WIDTH}" height="{HEIGHT}" fill="#fdfaf6"/>',
    ] + grid()
    legend = TOP + 20
    for program, dashes, name in PROGRAMS:
        for family, pairs, colour, words in KINDS:
            points = points_of(found.get(program, {}), family, pairs)
            if not points:
                continue
            drawn += line(points, colour, dashes)
            x = WIDTH - RIGHT + 15
            drawn.append(
                f'<line x1="{x}" x2="{x + 30}" y1="{legend - 4}" y2="{legend - 4}" stroke="{colour}" '
                f'stroke-width="2" stroke-dasharray="{dashes}"/>'
            )
            drawn.append(text(x + 38, legend, name, size=12))
            drawn.append(text(x + 38, legend + 14, words, size=11))
            legend += 40
    return "\n".join(drawn + ["</svg>", ""])
