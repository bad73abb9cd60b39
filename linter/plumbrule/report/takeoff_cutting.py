"""Page 2 of a take-off: what goes to the saw. Sticks longest cut first with what each leaves, boards, panels."""

from __future__ import annotations

from itertools import groupby
from typing import TYPE_CHECKING

from plumbrule.facts.desk import Desk, Missing
from plumbrule.facts.purchase_sticks import KERF, StickJob, steel_mass
from plumbrule.facts.takeoff import Takeoff
from plumbrule.facts.takeoff_panels import CutCourse, CutPanel, CutPiece, PanelSheet
from plumbrule.mechanics.cutting_stock import CutStick
from plumbrule.report.clean import one_line
from plumbrule.report.figures import many, quantity
from plumbrule.report.paper import Paper
from plumbrule.report.takeoff_figures import by, mark, spaced, unit_of

if TYPE_CHECKING:
    from plumbrule.inspection.examine import Examined
    from plumbrule.reading.shown import System

_SAME = 1e-6


def cutting_page(paper: Paper, takeoff: Takeoff, examined: Examined) -> None:
    """Writes the page."""
    paper.apart("2  TO THE SAW", f"lengths in {unit_of(examined.system)}, over all, mitres included", "bold")
    for job in takeoff.sticks:
        paper.blank()
        _job(paper, job, examined)
    boards = [row for row in takeoff.needs if row.values["group"] == "boards"]
    if boards:
        paper.blank()
        paper.line("BOARDS", "bold")
    for row in boards:
        name = row.part.rpartition("/")[2]
        _board(paper, name, examined)
    for sheet in takeoff.panels:
        paper.blank()
        _panels(paper, sheet, examined.system)


def _job(paper: Paper, job: StickJob, examined: Examined) -> None:
    system, stick = examined.system, job.stick.value
    made = job.cut_list()
    name = spaced(job.line.group.upper(), job.line.name)
    if made is None:
        paper.line(name, "bold")
        for piece in job.pieces:
            length = piece.length.value
            shown = mark(float(length) if isinstance(length, int | float) else None, system)
            paper.line(f"{shown:<12}{spaced(piece.name, piece.note)}", indent=12, hang=12)
        why = ", ".join(job.wanting) or (
            "no stick of the length bought gives the longest piece" if isinstance(stick, int | float)
            else f"the length of a stick: {job.stick.pointer}"
        )  # fmt: skip
        paper.line(f"not cut yet; wanting: {one_line(why)}", "yellow", indent=6, hang=3)
        return
    told = f"{many(len(made.sticks), 'stick')} of {mark(made.stick, system)}, saw cut {mark(KERF, system)}"
    proved = (
        ""
        if made.proven
        else f"; fewer than {made.at_least} cannot do, whether fewer than {len(made.sticks)} can is open"
    )
    paper.line(f"{name}   {told}{proved}", "bold", hang=3)
    notes = {piece.name: piece.note for piece in job.pieces}
    masses = _masses(job, examined)
    number = 0
    for _, same in groupby(made.sticks, key=_alike):
        alike = list(same)
        label = f"{number + 1}" if len(alike) == 1 else f"{number + 1} to {number + len(alike)}"
        number += len(alike)
        for place, cut in enumerate(alike[0].pieces):
            names = [one_line(stick.pieces[place].name) for stick in alike]
            said = spaced(", ".join(dict.fromkeys(names)), notes.get(cut.name, ""), masses.get(cut.name, ""))
            lead = f"{label:<9}" if not place else ""
            paper.line(f"{lead}{mark(cut.length, system):<12}{said}", indent=3 if lead else 12, hang=21)
        left = alike[0].left
        paper.line(f"{mark(left, system):<12}left over" if left else "nothing left", indent=12)


def _alike(stick: CutStick) -> tuple[float, ...]:
    return tuple(piece.length for piece in stick.pieces)


def _masses(job: StickJob, examined: Examined) -> dict[str, str]:
    from plumbrule.catalogue.rows_purchase import NEED
    from plumbrule.mechanics.worked import OutsideRulebook

    found = {}
    for piece, support in zip(job.pieces, job.masses, strict=False):
        try:
            mass = steel_mass(Desk(NEED, "", "", ""), support)
        except (Missing, OutsideRulebook, ValueError):
            continue
        found[piece.name] = quantity(mass, "kg", examined.system, 3)
    return found


def _board(paper: Paper, name: str, examined: Examined) -> None:
    board = (examined.plan.model.boards or {}).get(name)
    if board is None:
        return
    system = examined.system
    rough = None if board.length is None else board.length + (board.cut_long_by or 0.0)
    size = by((board.length, board.depth, board.thickness), system)
    paper.line(spaced(name, board.species, f"rough {mark(rough, system)}", f"finished {size}"), indent=3, hang=3)
    if board.cut_long_by:
        paper.line(
            f"HOLD: do not cut to {mark(board.length, system)} before the walls are finished; measure face to face.",
            "bold", indent=6, hang=3,
        )  # fmt: skip


def _panels(paper: Paper, sheet: PanelSheet, system: System) -> None:
    if sheet.missing or not sheet.courses:
        paper.line(spaced("PANELS", sheet.name), "bold")
        wanting = ", ".join(sheet.missing) or "a wall to lay them on"
        paper.line(f"not laid out yet; wanting: {one_line(wanting)}", "yellow", indent=6, hang=3)
        return
    paper.line(
        spaced("PANELS", sheet.name, f"{sheet.needed} of {by((sheet.length, sheet.height), system)}"),
        "bold",
        hang=3,
    )
    paper.line(
        "* scribe to the floor   + cut to the ceiling   # notched or ripped   o out of an offcut", indent=3, hang=3
    )
    for wall, courses in groupby(sheet.courses, key=lambda course: course.wall):
        paper.blank()
        paper.line(
            spaced(f"wall {wall}", "course, its top above the datum from left to right, pieces from the left"), indent=3
        )
        rows = list(courses)
        top = max(course.number for course in rows)
        for course in rows:
            paper.line(course_line(course, top, system, sheet.height), indent=3, hang=24)
    paper.blank()
    paper.line("out of the panels that are cut; the saw cuts come off what is left", indent=3)
    alike: dict[tuple[str, ...], list[CutPanel]] = {}
    for panel in sheet.panels:
        lengths = tuple(mark(piece.length, system) for piece in panel.pieces)
        alike.setdefault((*lengths, mark(panel.left, system)), []).append(panel)
    for (*cut, left), panels in alike.items():
        numbers = " ".join(str(panel.number) for panel in panels)
        paper.line(f"{len(panels):<4}{' + '.join(cut):<28}left {left:<10}panel {numbers}", indent=3, hang=47)


def course_line(course: CutCourse, top: int, system: System, height: float | None) -> str:
    """`14 + 94-3/4 to 94-1/2  17-1/2 x 4-1/4   42 x 4-1/4`; `height` is that of a whole panel, mm."""
    heights = dict.fromkeys(mark(value, system) for value in course.top)
    tall = max(up - down for up, down in zip(course.top, course.bottom, strict=True))
    short = height is not None and tall < height - _SAME
    sloped = course.top[0] != course.top[1]
    sign = "*" if course.scribed else "+" if course.number == top and (sloped or short) else " "
    pieces = "   ".join(_piece(piece, course, system, height) for piece in course.pieces)
    # Two heights in millimetres may be as wide as the column is.
    return f"{course.number:<4}{sign} {' to '.join(heights):<16}  {pieces}"


def _piece(piece: CutPiece, course: CutCourse, system: System, height: float | None) -> str:
    """`42`, `17-1/2 x 5-5/8#`: how tall it is, where that is less than a panel and level; a slope is scribed."""
    level = course.top[0] == course.top[1] and course.bottom[0] == course.bottom[1]
    tall = piece.high - piece.low
    ripped = level and tall < (height if height is not None else course.top[0] - course.bottom[0]) - _SAME
    high = f" x {mark(tall, system)}" if ripped else ""
    return f"{mark(piece.length, system)}{high}{'#' if piece.notched else ''}{'o' if piece.from_offcut else ''}"
