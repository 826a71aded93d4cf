"""How figures and tables are written."""


def in_figures(value):
    """Two digits that count, or whole numbers with their thousands."""
    return f"{value:.2g}" if abs(value) < 99.5 else f"{value:,.0f}"


def table(columns, rows):
    """Lines of Markdown. A column is (heading, whether it holds figures)."""
    lines = ["| " + " | ".join(heading for heading, _ in columns) + " |"]
    lines.append("| " + " | ".join("--:" if figures else "---" for _, figures in columns) + " |")
    lines += ["| " + " | ".join(str(cell) for cell in row) + " |" for row in rows]
    return lines


def words(*headings):
    return [(heading, False) for heading in headings]


def numbers(*headings):
    return [(heading, True) for heading in headings]
