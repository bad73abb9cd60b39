"""Rows of wall surfaces that something is stuck to or painted on."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_surface import SURFACE
from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.order import Order, order
from plumbrule.facts.reference import tables
from plumbrule.facts.step_times import StepsOf
from plumbrule.facts.supports import Support
from plumbrule.facts.surface_bond import Bonding
from plumbrule.facts.surface_steps import Preparing
from plumbrule.mechanics import bonding
from plumbrule.mechanics.worked import OutsideRulebook, Worked
from plumbrule.plan.panels import PanelField
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.surface import Surface


def surface_rows(plan: Plan, carried: Sequence[Support]) -> dict[str, tuple[Row, ...]]:
    """One row for each wall of each panel field, and one for each other wall that is primed or painted."""
    rows: list[Row] = []
    walls = plan.model.walls or {}
    covered: set[str] = set()
    for field_name, field in (plan.model.panels or {}).items():
        if field.adhesive is not None and field.adhesive.kind == "none":
            continue
        for wall in field.walls:
            if wall in walls:
                again = f" under {field_name}" if wall in covered else ""
                covered.add(wall)
                rows.append(_Face(plan, wall, again).panelled(field_name, field))
    rows.extend(_Face(plan, wall).painted() for wall in _painted(plan) if wall not in covered)
    return {"surface": tuple(rows)}


def _painted(plan: Plan) -> tuple[str, ...]:
    """Walls that a step primes or paints, in the order of the steps; where a step does not say which, each of them."""
    walls = plan.model.walls or {}
    found: dict[str, None] = {}
    for step in (plan.model.steps or {}).values():
        if step.task in ("prime wall", "paint wall"):
            found.update((name, None) for name in (walls if step.works_on is None else step.works_on) if name in walls)
    return tuple(found)


class _Face:
    """The face of one wall being worked out."""

    def __init__(self, plan: Plan, wall: str, again: str = "") -> None:
        self._plan, self._wall = plan, wall
        self._here = f"/walls/{wall}/surface"
        self._surface = _surface(plan, wall)
        self._desk = Desk(SURFACE, self._here, f"/walls/{wall}", f"surface of wall {wall}{again}")
        self._order: Order = order(plan)

    def painted(self) -> Row:
        """A wall that gets paint or primer and nothing else."""
        desk = self._desk
        desk.set("bonded", False, "/panels")
        self._as_it_is()
        steps = self._steps(self._wall)

        def paint() -> tuple[str, ...]:
            found = steps.sure("paint wall") or steps.sure("prime wall")
            if not found:
                raise Missing([f"/steps/{name}/works_on" for name in steps.possible("paint wall", "prime wall")])
            return found

        Preparing(desk, steps, paint, tables()).work(self._of("coating"), self._of("state"), bonded=False)
        return desk.row()

    def _steps(self, wall: str) -> StepsOf:
        """The steps done to a wall: a step that names the panels on it names all of their walls."""
        fields = (name for name, field in (self._plan.model.panels or {}).items() if wall in field.walls)
        return StepsOf(self._order, self._desk, (wall, *fields))

    def _drilling(self) -> StepsOf:
        """The steps done to this wall or to the steel and cleats on it."""
        model = self._plan.model
        fixed = (
            name
            for section in (model.angles, model.brackets, model.cleats)
            for name, one in (section or {}).items()
            if one.wall == self._wall
        )
        return StepsOf(self._order, self._desk, (self._wall, *fixed))

    def panelled(self, name: str, field: PanelField) -> Row:
        """A wall that the panels of a field are stuck to."""
        desk, at = self._desk, f"/panels/{name}"
        adhesive, panel = field.adhesive, field.panel

        def stuck() -> bool:
            desk.need(Input(adhesive, f"{at}/adhesive"))
            return True

        desk.get("bonded", stuck)
        desk.copy("adhesive", Input(adhesive and adhesive.kind, f"{at}/adhesive" + ("/kind" if adhesive else "")))
        desk.copy("core", Input(panel.core, f"{at}/panel/core"))
        desk.copy("adhesive_thickness", Input(adhesive and adhesive.thickness, f"{at}/adhesive/thickness"))
        self._as_it_is()
        self._flatness(Input(panel.length, f"{at}/panel/length"))
        self._weight(name, field)
        site = self._plan.model.site
        desk.copy("coldest", Input(site and site.temperature and site.temperature.coldest, "/site/temperature/coldest"))
        desk.copy("dampest", Input(site and site.humidity and site.humidity.dampest, "/site/humidity/dampest"))
        steps = laid = self._steps(self._wall)
        lays = _laying(laid)
        preparing = Preparing(desk, steps, lays, tables(), self._drilling())
        preparing.work(self._of("coating"), self._of("state"), bonded=True)
        preparing.paint_age(self._of("coated_ago"))
        Bonding(desk, laid, lays).work([self._steps(wall) for wall in self._alike(field)])
        return desk.row()

    def _of(self, key: str) -> Input:
        return Input(getattr(self._surface, key, None), f"{self._here}/{key}")

    def _as_it_is(self) -> None:
        for key in ("coating", "state", "texture"):
            self._desk.copy(key, self._of(key))

    def _alike(self, field: PanelField) -> tuple[str, ...]:
        """This wall, and the others of the field whose coating and state are known and the same."""
        own = self._surface
        if own is None or own.coating is None or own.state is None:
            return (self._wall,)
        others = [wall for wall in field.walls if wall != self._wall]
        return (
            self._wall,
            *(
                wall
                for wall in others
                if (face := _surface(self._plan, wall)) is not None
                and face.coating == own.coating
                and face.state is not None
                and set(face.state) == set(own.state)
            ),
        )

    def _flatness(self, panel_length: Input) -> None:
        desk = self._desk
        flat = getattr(self._surface, "out_of_flat", None)
        gap = Input(flat and flat.gap, f"{self._here}/out_of_flat" + ("/gap" if flat else ""))
        edge = Input(flat and flat.straightedge, f"{self._here}/out_of_flat" + ("/straightedge" if flat else ""))
        desk.copy("gap", gap)
        desk.copy("straightedge", edge)

        def hollow() -> Worked:
            desk.need_all(gap, edge, panel_length)
            # No piece is longer than its wall.
            width = (self._plan.model.walls or {})[self._wall].width
            piece = desk.length(panel_length)
            if width is not None and width < piece:
                piece = desk.length(Input(width, f"/walls/{self._wall}/width"))
            return bonding.gap_under_panel(desk.length(gap), desk.length(edge), piece)

        desk.get("gap_under_panel", hollow)

    def _weight(self, name: str, field: PanelField) -> None:
        desk, at, panel, adhesive = self._desk, f"/panels/{name}", field.panel, field.adhesive
        length, height = Input(panel.length, f"{at}/panel/length"), Input(panel.height, f"{at}/panel/height")
        thickness, density = (
            Input(panel.thickness, f"{at}/panel/thickness"),
            Input(panel.density, f"{at}/panel/density"),
        )

        def mass() -> float:
            desk.need_all(length, height, thickness, density)
            return desk.length(length) * desk.length(height) * desk.length(thickness) * desk.length(density)

        def area() -> Worked:
            if adhesive is None:
                raise Missing([f"{at}/adhesive"])
            covers = desk.word(Input(adhesive.covers, f"{at}/adhesive/covers"))
            desk.need_all(length, height)
            face = desk.length(length) * desk.length(height)
            if covers == "whole back":
                return bonding.bonded_area(face)
            if covers == "dabs":
                raise OutsideRulebook("How far a dab spreads cannot be reckoned: pull one tried panel off and look.")
            width = Input(adhesive.width, f"{at}/adhesive/width")
            spacing = Input(adhesive.spacing, f"{at}/adhesive/spacing")
            desk.need_all(width, spacing)
            return bonding.bonded_area(face, desk.length(width), desk.length(spacing))

        desk.get("panel_mass", mass)
        desk.get("adhesive_area", area)
        desk.get("bond_shear", self._shear)

    def _shear(self) -> Worked:
        mass, area = self._desk.numbers("panel_mass", "adhesive_area")
        return bonding.bond_shear(mass, self._desk.line("adhesive_area") or area)


def _surface(plan: Plan, wall: str) -> Surface | None:
    part = (plan.model.walls or {}).get(wall)
    return part.surface if part is not None else None


def _laying(steps: StepsOf) -> Callable[[], tuple[str, ...]]:
    """The steps that lay panels here, also those that do not say where they lay."""

    def lays() -> tuple[str, ...]:
        found = steps.possible("lay panels")
        if not found:
            raise Missing(["/steps"])
        return found

    return lays
