"""Electrical boxes behind a finished face: how deep the rim lies, what the plate covers, how long its screws must be.

Plate sizes are those of ANSI/NEMA WD 6 as an architecture reference prints them; that standard knows no midsize and no
oversize plate. The figures of the device yoke and its screws are from memory of the same standard.
"""

from __future__ import annotations

from plumbrule.mechanics.given import Given, finite, not_negative, number, positive, steps
from plumbrule.mechanics.worked import Number, OutsideRulebook, Worked

_GEOMETRY = "geometry"
_WD6 = "ANSI/NEMA WD 6, as an architecture reference prints it"

# Width in inches of a standard plate for 1 to 4 devices, and its height: printed 4.49, sold as 4-1/2.
_STANDARD_WIDTH = (2.75, 4.5, 6.375, 8.1875)
_STANDARD_HEIGHT = 4.49
# One device, from memory; makers differ by about an eighth.
_MIDSIZE = (3.125, 4.875)
# Metal of a device yoke, and three turns of No. 6-32, which are what holds: common practice, from memory.
_YOKE = 1 / 16
_TURNS, _PITCH = 3, 1 / 32


def rim_behind(set_back: Given, face: Given, extender: Given) -> Worked:
    """How far the rim of a box lies behind the finished face, s + f - e, mm.

    `set_back` is from the face of the lining as it stands, below zero for a rim that stands proud; `face` is what
    panel and adhesive add, `extender` how far a listed extender brings the rim forward. Negative: it stands proud.
    """
    value = finite("the set-back", set_back) + not_negative("the face", face) - not_negative("the extender", extender)
    return Worked(
        "B", "rim of the box behind the finished face", "s + f - e",
        (number("s", set_back, "mm"), number("f", face, "mm"), number("e", extender, "mm")), value, "mm", _GEOMETRY,
        steps=steps(set_back, face, extender),
    )  # fmt: skip


def plate_width(name: str, gangs: int) -> Worked:
    """Width in mm of a plate by its name, for 1 to 4 devices (midsize: 1). Raises OutsideRulebook for any other."""
    if name == "standard" and 1 <= gangs <= len(_STANDARD_WIDTH):
        return _plate("P_w", "width", name, gangs, _STANDARD_WIDTH[gangs - 1], _WD6)
    if name == "midsize" and gangs == 1:
        return _plate("P_w", "width", name, gangs, _MIDSIZE[0], "trade sizes, from memory")
    raise _measure(name, gangs)


def plate_height(name: str, gangs: int) -> Worked:
    """Height in mm of a plate by its name. Raises OutsideRulebook as `plate_width`."""
    if name == "standard" and 1 <= gangs <= len(_STANDARD_WIDTH):
        return _plate("P_h", "height", name, gangs, _STANDARD_HEIGHT, _WD6)
    if name == "midsize" and gangs == 1:
        return _plate("P_h", "height", name, gangs, _MIDSIZE[1], "trade sizes, from memory")
    raise _measure(name, gangs)


def cover_lap(plate: Given, box: Given, gap: Given) -> Worked:
    """How far a plate laps over the panel on either side of a cut-out, (P - b) / 2 - c, mm: `plate` and `box` measured
    the same way, `gap` the room left on each side of the box. Negative: it leaves a hole in the wall."""
    value = (positive("the plate", plate) - positive("the box", box)) / 2 - not_negative("the gap", gap)
    return Worked(
        "O", "lap of the plate over the panel", "(P - b) / 2 - c",
        (number("P", plate, "mm"), number("b", box, "mm"), number("c", gap, "mm")), value, "mm", _GEOMETRY,
        steps=steps(plate, box, gap),
    )  # fmt: skip


def device_screw(extender: Given, behind: Given) -> Worked:
    """The shortest screw in mm that holds a device: through the yoke (1/16 in), through the extender, across what the
    rim still lies behind the face, and three turns of No. 6-32 into the box. A rim that stands proud adds nothing."""
    yoke, pitch = _YOKE * 25.4, _PITCH * 25.4
    value = yoke + not_negative("the extender", extender) + max(finite("the rim", behind), 0.0) + _TURNS * pitch
    return Worked(
        "l_d", "shortest screw that holds the device", "y + e + max(B, 0) + 3 * p",
        (number("y", yoke, "mm"), number("e", extender, "mm"), number("B", behind, "mm"), number("p", pitch, "mm")),
        value, "mm", "ANSI/NEMA WD 6 from memory; three full turns, common practice", steps=steps(extender, behind),
    )  # fmt: skip


def _plate(symbol: str, words: str, name: str, gangs: int, value: float, source: str) -> Worked:
    return Worked(
        symbol, f"{words} of a {name} plate for {gangs} device{'s' if gangs > 1 else ''}", symbol,
        (Number(symbol, value, "in"),), value, "in", source, published_units=True,
    )  # fmt: skip


def _measure(name: str, gangs: int) -> OutsideRulebook:
    return OutsideRulebook(
        f"No standard gives the size of a cover plate called {name} for {gangs} device{'s' if gangs > 1 else ''}: "
        "measure the plate and write cover: {width: …, height: …}."
    )
