"""Page 3 of a take-off: what goes to the drill. One sheet a part, every mark from its LEFT end, rows from the heel."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

from plumbrule.facts.takeoff import Takeoff
from plumbrule.facts.takeoff_drilling import DrillSheet, HoleRow
from plumbrule.report.clean import one_line
from plumbrule.report.figures import many
from plumbrule.report.paper import Paper
from plumbrule.report.takeoff_figures import by, mark, marks, spaced, unit_of

if TYPE_CHECKING:
    from plumbrule.inspection.examine import Examined
    from plumbrule.reading.shown import System

_MARKS, _HOLES = "marks from the LEFT end", 7


class _Cells(NamedTuple):
    leg: str
    letter: str
    from_heel: str
    bit: str
    places: list[str]
    screw: str


def drilling_page(paper: Paper, takeoff: Takeoff, examined: Examined) -> None:
    """Writes the page."""
    paper.apart("3  TO THE DRILL", f"everything in {unit_of(examined.system)}, from the LEFT end", "bold")
    if not takeoff.drilling:
        paper.line("Nothing in this plan is drilled.", indent=3)
    else:
        paper.line(
            "Hook the tape on the LEFT end, wall leg towards you, the way it will hang: TOP is up. Mark, punch, drill,"
            " deburr both faces. Letter LEFT and TOP on the steel before it leaves the bench.", indent=3, hang=0,
        )  # fmt: skip
    for sheet in takeoff.drilling:
        paper.blank()
        _sheet(paper, sheet, examined.system)


def _sheet(paper: Paper, sheet: DrillSheet, system: System) -> None:
    many_alike = f", {many(len(sheet.starts), 'piece')} alike" if sheet.kind == "bracket" else ""
    shape = f"L{by((sheet.wall_leg_size, sheet.seat_leg_size, sheet.thickness), system)}"
    if sheet.kind == "cleat":
        shape = by((sheet.wall_leg_size, sheet.thickness), system)
    left, right = sheet.ends
    cut = f"{left} left, {right} right" if left != right else f"{left} both ends"
    across = "width" if sheet.kind == "bracket" else "length"
    words = [f"{sheet.kind.upper()} {sheet.name}{many_alike}", shape, sheet.metal,
             f"{across} {mark(sheet.length, system)}", cut]  # fmt: skip
    paper.line(spaced(*words), "bold", hang=3)
    told = [f"on wall {sheet.wall}", f"wall leg {sheet.wall_leg}" if sheet.kind == "angle" else "",
            sheet.hand and f"{sheet.hand}: not to be turned round", f"lining {sheet.lining_behind}"]  # fmt: skip
    paper.line(one_line("; ".join(word for word in told if word)), indent=3, hang=3)
    _table(paper, sheet, system)
    for words_left in _checks(sheet, system):
        paper.labelled("check", words_left)
    for pilot in dict.fromkeys(_pilot(row, system) for row in sheet.rows):
        paper.labelled("in wood", pilot)
    if sheet.missing:
        paper.labelled("measure", ", ".join(one_line(pointer) for pointer in sheet.missing), "yellow")


def _table(paper: Paper, sheet: DrillSheet, system: System) -> None:
    """One line a row of holes, marks in columns; where the page is too narrow for that, a paragraph a row."""
    heel = "from top" if sheet.kind == "cleat" else "from heel"
    cells = [
        _Cells(row.leg, row.letter, mark(row.from_heel, system), _bit(row, system), marks(row.marks, system),
               one_line(row.screw))
        for row in sheet.rows
    ]  # fmt: skip
    wide = max([len(place) for cell in cells for place in cell.places] + [4]) + 2
    bits = max([len(cell.bit) for cell in cells] + [3]) + 2
    screws = max([len(cell.screw) for cell in cells] + [5])
    lead = f"{'leg':<6}{'row':<5}{heel:<11}{'bit':<{bits}}"
    room = paper.width - 3 - len(lead) - _HOLES - screws
    if room < max(len(_MARKS), 3 * wide):
        for cell in cells:
            paper.line(
                f"{cell.leg} {cell.letter}: {heel} {cell.from_heel}, bit {cell.bit}, "
                f"{many(len(cell.places), 'hole')} for {cell.screw}, marks from the LEFT end {', '.join(cell.places)}",
                indent=3, hang=3,
            )  # fmt: skip
        return
    paper.line(f"{lead}{_MARKS:<{room}}{'holes':<{_HOLES}}screw", "dim", indent=3)
    a_line = room // wide
    for cell in cells:
        lines = ["".join(f"{place:<{wide}}" for place in cell.places[start : start + a_line])
                 for start in range(0, len(cell.places), a_line)] or [""]  # fmt: skip
        front = f"{cell.leg:<6}{cell.letter:<5}{cell.from_heel:<11}{cell.bit:<{bits}}"
        paper.line(f"{front}{lines[0]:<{room}}{len(cell.places):<{_HOLES}}{cell.screw}", indent=3)
        for line in lines[1:]:
            paper.line(line.rstrip(), indent=3 + len(lead))


def _bit(row: HoleRow, system: System) -> str:
    said = mark(row.bit, system)
    if row.slot is not None:
        said += f" slot {mark(row.slot, system)} {row.slot_runs}".rstrip()
    if row.sink_angle is not None:
        said += f" sink {row.sink_angle:g}° to {mark(row.sink_diameter, system)}"
    return one_line(said)


def _checks(sheet: DrillSheet, system: System) -> list[str]:
    last = [
        f"last {leg} mark to the RIGHT end {mark(rest, system)}"
        for leg in ("wall", "seat")
        if (rest := sheet.to_right_end(leg)) is not None
    ]
    said = ["; ".join([*last, f"{many(sheet.holes, 'hole')} in {'each' if sheet.kind == 'bracket' else 'all'}"])]
    if sheet.on_wall:
        starts = ", ".join(marks(sheet.starts, system))
        each = "left edges at" if len(sheet.starts) > 1 else f"this {sheet.kind} starts at"
        said.append(f"on the wall, from its left end: {'   '.join(marks(sheet.on_wall, system))} ({each} {starts})")
    return said


def _pilot(row: HoleRow, system: System) -> str:
    if row.pilot_thread is None:
        return f"{one_line(row.screw)}: no pilot is given"
    shank = f", shank {mark(row.pilot_shank, system)}" if row.pilot_shank is not None else ""
    return f"{one_line(row.screw)}: pilot {mark(row.pilot_thread, system)}{shank}"
