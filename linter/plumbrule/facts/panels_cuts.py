"""What panels are cut round on a wall: openings, electrical boxes, and steel or cleats that lie on the wall."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Literal, NamedTuple

from plumbrule.facts.corner import End
from plumbrule.facts.desk import Input
from plumbrule.facts.supports import Support
from plumbrule.mechanics.slabs import Rect
from plumbrule.plan.panels import PanelField
from plumbrule.plan.walls import Wall

CutKind = Literal["opening", "box", "steel"]

# An opening whose lower edge is at the datum or below it is a door: it goes down to the floor wherever that lies.
_FLOOR = 1e-6
_DEEP = 1e5


class Cut(NamedTuple):
    """One cut-out: `bare` is what comes through the panels, `rect` the same with the room round it. `support` is the
    angle, bracket or cleat that lies there."""

    kind: CutKind
    name: str
    label: str
    pointer: str
    rect: Rect
    bare: Rect
    clearance: float
    support: Support | None = None
    beyond: bool = False


class Wanted:
    """Gathers the pointers of what the plan does not say while the rest is worked on."""

    def __init__(self) -> None:
        self.pointers: list[str] = []

    def take(self, value: object, pointer: str) -> float:
        """A measure, or nothing and its pointer noted."""
        if isinstance(value, int | float):
            return float(value)
        self.pointers.append(pointer)
        return 0.0


def cuts(
    wanted: Wanted, carried: Sequence[Support], field_name: str, field: PanelField, wall_name: str,
    wall: Wall, beside_openings: float, beyond: Mapping[End, str | None],
) -> list[Cut]:  # fmt: skip
    """Everything that panels on this wall are cut round, in the order of the plan. `beyond` are the walls round its
    inside corners: steel there may reach into the panels of this one."""
    here, at = f"/walls/{wall_name}", f"/panels/{field_name}/cut_outs"
    found = list(_openings(wanted, wall, here, beside_openings))
    found.extend(_boxes(wanted, wall, here, field.cut_outs.box, f"{at}/box"))
    own = [support for support in carried if support.wall_name == wall_name]
    room = wanted.take(field.cut_outs.angle, f"{at}/angle") if own else 0.0
    found.extend(cut for support in own for cut in _steel(wanted, support, room))
    near = [(side, support) for side, name in beyond.items() for support in carried if support.wall_name == name]
    if near:
        thick = face(wanted, field_name, field)
        width = wanted.take(wall.width, f"{here}/width")
        for side, support in near:
            if _off_the_corner(wanted, support, side) < thick:
                room = wanted.take(field.cut_outs.angle, f"{at}/angle")
                found.extend(_round_the_corner(wanted, support, side, width, thick, room))
    return found


def face(wanted: Wanted, field_name: str, field: PanelField) -> float:
    """What panels and their adhesive add to a wall, mm."""
    at = f"/panels/{field_name}"
    thick = wanted.take(field.panel.thickness, f"{at}/panel/thickness")
    glue = field.adhesive
    if glue is None:
        return thick + wanted.take(None, f"{at}/adhesive")
    if glue.kind == "none" and glue.thickness is None:
        return thick
    return thick + wanted.take(glue.thickness, f"{at}/adhesive/thickness")


def _openings(wanted: Wanted, wall: Wall, here: str, beside: float) -> Iterator[Cut]:
    if wall.openings is None:
        wanted.take(None, f"{here}/openings")
    for name, one in (wall.openings or {}).items():
        at = f"{here}/openings/{name}"
        left, width = wanted.take(one.left, f"{at}/left"), wanted.take(one.width, f"{at}/width")
        bottom, top = wanted.take(one.bottom, f"{at}/bottom"), wanted.take(one.top, f"{at}/top")
        bare = Rect(left, bottom if bottom > _FLOOR else -_DEEP, left + width, top)
        yield Cut("opening", name, name, at, _wider(bare, beside), bare, beside)


def _boxes(wanted: Wanted, wall: Wall, here: str, room: float | None, at_room: str) -> Iterator[Cut]:
    if wall.boxes is None:
        wanted.take(None, f"{here}/boxes")
    if not wall.boxes:
        return
    beside = wanted.take(room, at_room)
    for name, box in wall.boxes.items():
        at = f"{here}/boxes/{name}"
        centre, up = wanted.take(box.centre, f"{at}/centre"), wanted.take(box.up, f"{at}/up")
        width, height = wanted.take(box.width, f"{at}/width"), wanted.take(box.height, f"{at}/height")
        bare = Rect(centre - width / 2, up - height / 2, centre + width / 2, up + height / 2)
        yield Cut("box", name, name, at, _wider(bare, beside), bare, beside)


def _steel(wanted: Wanted, support: Support, room: float) -> Iterator[Cut]:
    left, long = _of(wanted, support.left), _of(wanted, support.length)
    bottom, top = _heights(wanted, support)
    bare = Rect(left, bottom, left + long, top)
    yield Cut("steel", support.name, support.label, support.pointer, _wider(bare, room), bare, room, support)


def _off_the_corner(wanted: Wanted, support: Support, side: End) -> float:
    """How far a piece on the next wall ends before the corner at that side of this one."""
    left, long = _of(wanted, support.left), _of(wanted, support.length)
    if side == "right":
        return left
    theirs = wanted.take(support.wall.width if support.wall else None, f"/walls/{support.wall_name}/width")
    return theirs - left - long


def _round_the_corner(
    wanted: Wanted, support: Support, side: End, width: float, face: float, room: float
) -> Iterator[Cut]:
    """The end of a piece on the next wall, where it stands in the panels of this one."""
    bottom, top = _heights(wanted, support)
    recess = _recess(wanted, support)
    thick, deep = _of(wanted, support.thickness), _of(wanted, support.seat_leg_size)
    plates = [(thick - recess, bottom, top)]
    if support.kind != "cleat":
        bears = _of(wanted, support.bears_at)
        # A mitre cuts the seat leg away before it comes to the next wall.
        mitred = support.ends[1 if side == "left" else 0] == "mitred"
        plates.append((face if mitred else deep - recess, bears - thick, bears))
    for reach, low, high in plates:
        if reach > 0:
            bare = Rect(0.0, low, reach, high) if side == "left" else Rect(width - reach, low, width, high)
            label = f"{support.label} round the corner"
            yield Cut("steel", support.name, label, support.pointer, _wider(bare, room), bare, room, support, True)


def _heights(wanted: Wanted, support: Support) -> tuple[float, float]:
    """Lower and upper edge of what lies on the wall."""
    bears, leg = _of(wanted, support.bears_at), _of(wanted, support.wall_leg_size)
    if support.wall_leg == "up":
        bottom = bears - _of(wanted, support.thickness)
        return bottom, bottom + leg
    return bears - leg, bears


def _recess(wanted: Wanted, support: Support) -> float:
    """How far its back lies behind the face of the lining: the lining, where that is cut away."""
    if support.lining_behind.value != "cut away":
        return 0.0
    at = f"/walls/{support.wall_name}/lining"
    layers = support.wall.lining if support.wall else None
    if layers is None:
        return wanted.take(None, at)
    return sum(wanted.take(layer.thickness, f"{at}/{index}/thickness") for index, layer in enumerate(layers))


def _of(wanted: Wanted, source: Input) -> float:
    if source.value is None:
        wanted.pointers.extend(source.also)
    return wanted.take(source.value, source.pointer)


def _wider(rect: Rect, by: float) -> Rect:
    return Rect(rect.x0 - by, rect.y0 - by, rect.x1 + by, rect.y1 + by)
