"""What is cut from sticks: steel by its shape, framing lumber by its size, trims by the run; and the fewest sticks for
it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import ceil
from typing import NamedTuple

from plumbrule.catalogue.fact import Row
from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.purchase_lines import ByLine, Line, begin, count_bought, line_for, thickness_bought
from plumbrule.facts.purchase_trims import trim_runs
from plumbrule.facts.reference import tables
from plumbrule.facts.supports import Support
from plumbrule.mechanics.cutting_stock import CutList, Piece, cut
from plumbrule.mechanics.given import si
from plumbrule.mechanics.lifting import angle_mass
from plumbrule.mechanics.worked import NotPossible, OutsideRulebook
from plumbrule.plan import resolve
from plumbrule.plan.framing import Block, Section
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.supports import Cleat

# The widest of the usual saw cuts: an abrasive wheel takes 3/32 to 1/8 in, a circular saw 1/8, a hacksaw less.
KERF = 3.175
KERF_SAID = (
    "nothing is written: a saw cut of 1/8 in (3.175 mm) is taken after every piece, the widest of the usual ones"
)
MOST_JOINS = 200
# A plan with more kinds of stick than any job has is cut without a search, lest it never ends.
MOST_THOROUGH = 24


class StickPiece(NamedTuple):
    """One piece to be cut from a stick. `length` is over all; `note` says what is done to its ends."""

    name: str
    part: str
    length: Input
    note: str = ""
    species: Input | None = None
    joined: bool = False


class StickJob(NamedTuple):
    """Everything that is cut from sticks of one kind. `wanting` are pointers that keep its pieces from being known."""

    line: Line
    part: str
    pieces: tuple[StickPiece, ...]
    wanting: tuple[str, ...] = ()
    masses: tuple[Support, ...] = ()
    thorough: bool = True

    @property
    def stick(self) -> Input:
        """The length of one stick as bought."""
        return self.line.of("stick")

    def all_pieces(self, stick: float | None) -> list[Piece]:
        """The pieces with their lengths; runs that may be joined are cut up into sticks. All lengths must be known."""
        made = []
        for piece in self.pieces:
            assert isinstance(piece.length.value, int | float)
            rest = float(piece.length.value)
            if piece.joined and stick is not None and rest > stick:
                joins = ceil(rest / stick - 1e-9) - 1
                if joins > MOST_JOINS:
                    raise NotPossible(
                        f"{piece.name} would be joined {joins:,} times: the stick is too short to be meant"
                    )
                made += [Piece(piece.name, stick)] * joins
                rest -= joins * stick
            made.append(Piece(piece.name, rest))
        return made

    def cut_list(self) -> CutList | None:
        """What is cut from which stick; None where lengths are not known or the longest piece fits no stick."""
        stick = self.stick.value
        if self.wanting or not isinstance(stick, int | float) or any(p.length.value is None for p in self.pieces):
            return None
        try:
            return cut(self.all_pieces(float(stick)), float(stick), KERF, self.thorough)
        except NotPossible:
            return None


def stick_jobs(plan: Plan, carried: Sequence[Support]) -> tuple[StickJob, ...]:
    """Every stick job, steel first. Worked once for a plan."""
    found: tuple[StickJob, ...] | None = plan.reckoned.get("/purchase sticks")
    if found is None:
        found = (*_steel(plan, carried), *_timber(plan), *_trims(plan))
        if len(found) > MOST_THOROUGH:
            found = tuple(job._replace(thorough=False) for job in found)
        plan.reckoned["/purchase sticks"] = found
    return found


def stick_rows(plan: Plan, carried: Sequence[Support]) -> Iterator[Row]:
    """One row a job."""
    for job in stick_jobs(plan, carried):
        yield _row(job)


def _row(job: StickJob) -> Row:
    desk = begin(job.line, "sticks", job.part)
    desk.set("may_be_joined", any(piece.joined for piece in job.pieces), job.part)

    def longest() -> float:
        _known(desk, job)
        return max(desk.length(piece.length) for piece in job.pieces)

    def pieces() -> float:
        stick = job.stick.value
        _known(desk, job)
        return float(len(job.all_pieces(float(stick) if isinstance(stick, int | float) else None)))

    desk.get("longest_piece", longest)
    desk.get("pieces", pieces)
    if job.masses:
        desk.get("mass", lambda: sum(steel_mass(desk, support) for support in job.masses))
    if job.line.bought is None:
        return desk.row()
    if job.masses:
        thickness_bought(desk, job.line, job.masses[0].thickness)
    desk.copy("stick", job.stick)
    desk.get("fits_stick", lambda: _fits(desk))
    count_bought(desk, job.line)
    if not desk.known("fits_stick") or desk.true("fits_stick"):
        desk.get("needed_count", lambda: _sticks(desk, job))
    if any(piece.species is not None for piece in job.pieces):
        desk.get("same_species", lambda: _same_species(desk, job))
    return desk.row()


def _known(desk: Desk, job: StickJob) -> None:
    if job.wanting:
        raise Missing(job.wanting)
    desk.need_all(*(piece.length for piece in job.pieces))


def _fits(desk: Desk) -> bool:
    longest, stick = desk.numbers("longest_piece", "stick")
    return desk.true("may_be_joined") or longest <= stick * (1 + 1e-9)


def _sticks(desk: Desk, job: StickJob) -> float:
    _known(desk, job)
    stick = desk.number("stick")
    kerf = desk.length(Input(KERF, job.line.at, KERF_SAID))
    made = cut(job.all_pieces(stick), stick, kerf, job.thorough)
    if not made.proven and isinstance(job.line.of("count").value, int):
        bought = desk.number("bought_count")
        if made.at_least <= bought < len(made.sticks):
            raise OutsideRulebook(
                f"Whether {bought:.0f} sticks do was not proved: at least {made.at_least}, at most {len(made.sticks)}."
            )
    return float(len(made.sticks))


def _same_species(desk: Desk, job: StickJob) -> bool:
    bought = desk.word(job.line.of("species"))
    wanted = [piece.species for piece in job.pieces if piece.species is not None]
    desk.need_all(*wanted)
    return all(desk.word(species) in ("unknown", bought) for species in wanted)


def steel_mass(desk: Desk, support: Support) -> float:
    """Mass of one angle, or of one bracket cut from a shape, kg. Raises OutsideRulebook for aluminium."""
    sizes = (support.wall_leg_size, support.seat_leg_size, support.thickness, support.length)
    desk.need_all(*sizes, support.steel)
    if tables().steel(desk.word(support.steel)).metal == "aluminium":
        raise OutsideRulebook("The weight of aluminium is not among the figures here: weigh a length of it.")
    return si(angle_mass(*(desk.length(size) for size in sizes)))


def _steel(plan: Plan, carried: Sequence[Support]) -> Iterator[StickJob]:
    angles, brackets = plan.model.angles or {}, plan.model.brackets or {}
    for name in plan.model.sections or {}:
        made: list[StickPiece] = []
        cut_from: list[Support] = []
        wanting: list[str] = []
        for support in carried:
            if support.kind == "angle" and angles[support.name].section == name:
                made.append(StickPiece(support.name, support.pointer, support.length, _ends(support.ends)))
            elif support.kind == "bracket" and brackets[support.name].section == name:
                if support.left.value is None:
                    wanting += [support.left.pointer, *support.left.also]
                made.append(StickPiece(support.label, support.pointer, support.length))
            else:
                continue
            cut_from.append(support)
        if made:
            yield StickJob(
                line_for(plan, "steel", name), f"/sections/{name}", tuple(made), tuple(dict.fromkeys(wanting)),
                tuple(cut_from),
            )  # fmt: skip


def _ends(ends: tuple[str, str]) -> str:
    """`mitred both ends`, `mitred right`, nothing where both are square."""
    left, right = ends
    if left == right:
        return "" if left == "square" else f"{left} both ends"
    return ", ".join(f"{cut} {side}" for cut, side in ((left, "left"), (right, "right")) if cut != "square")


def _timber(plan: Plan) -> Iterator[StickJob]:
    found: ByLine[StickPiece] = ByLine()
    for wall_name, wall in (plan.model.walls or {}).items():
        for name, block in (wall.blocking or {}).items():
            at = f"/walls/{wall_name}/blocking/{name}"
            found.put(_timber_line(plan, name, _named_size(block.size)), _wood(name, at, block))
    for name, cleat in (plan.model.cleats or {}).items():
        size = cleat.size or _dressed_as(cleat.thickness, cleat.width)
        found.put(_timber_line(plan, name, size), _wood(name, f"/cleats/{name}", cleat))
    for line, pieces in found.each():
        yield StickJob(line, pieces[0].part, tuple(pieces))


def _timber_line(plan: Plan, name: str, size: str | None) -> Line:
    """A piece has a line of its own, or is among those of its size."""
    return line_for(plan, "timber", name, *((size,) if size else ()), else_at=size or name)


def _wood(name: str, at: str, piece: Block | Cleat) -> StickPiece:
    return StickPiece(name, at, Input(piece.length, f"{at}/length"), "", Input(piece.species, f"{at}/species"))


def _named_size(size: str | Section | None) -> str | None:
    """`2x4` as it is written, or where the measured sides are those of one dressed."""
    if isinstance(size, Section):
        return _dressed_as(size.width, size.depth)
    return size


def _dressed_as(thickness: float | None, width: float | None) -> str | None:
    """The lumber size whose dressed sides these are, to half a millimetre: 38 x 89 mm is a 2x4."""
    if thickness is None or width is None:
        return None
    from plumbrule.plan.words import LUMBER_SIZES

    narrow, wide = sorted((thickness, width))
    for name in LUMBER_SIZES:
        dressed = resolve.lumber(name)
        if dressed and abs(dressed.narrow - narrow) <= 0.5 and abs(dressed.wide - wide) <= 0.5:
            return name
    return None


def _trims(plan: Plan) -> Iterator[StickJob]:
    for name, trim in (plan.model.trims or {}).items():
        runs, wanting = trim_runs(plan, name, trim)
        pieces = tuple(StickPiece(run.name, run.pointer, run.length, run.note, None, run.joined) for run in runs)
        if pieces or wanting:
            yield StickJob(line_for(plan, "trims", name), f"/trims/{name}", pieces, wanting)
