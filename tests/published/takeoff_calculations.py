"""What each `calculation` word about cutting and quantities means: printed inputs in, a number out."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from math import ceil
from typing import Any

from plumbrule.mechanics import quantities, sealant
from plumbrule.mechanics.cutting_bound import linear_bound
from plumbrule.mechanics.cutting_stock import Piece as CutPiece
from plumbrule.mechanics.cutting_stock import by_length, cut, fewest, first_fit, sticks_of
from plumbrule.mechanics.given import si
from plumbrule.mechanics.worked import Worked
from plumbrule.reading.units import to_si

Inputs = Mapping[str, Any]
Found = Worked | float

ONE = 1000


def instance(given: Inputs) -> tuple[int, list[int], list[int]]:
    """Stock, sizes falling, demand: of an instance that is printed in whole units of length."""
    pairs = sorted(zip(given["sizes"], given["demand"], strict=True), reverse=True)
    return given["stock"], [size for size, _ in pairs], [count for _, count in pairs]


def fewest_sticks(given: Inputs) -> float:
    """The sticks of a cutting that is proved to be the best, checked piece by piece."""
    stock, sizes, demand = instance(given)
    found = fewest(stock, sizes, demand)
    made = [sum(pattern.times * pattern.counts[kind] for pattern in found.patterns) for kind in range(len(sizes))]
    assert made == demand
    for pattern in found.patterns:
        assert sum(count * size for count, size in zip(pattern.counts, sizes, strict=True)) <= stock
    assert found.at_least == found.sticks
    return float(found.sticks)


def linear(given: Inputs) -> float:
    """The bound of the linear programme, before it is rounded up."""
    return float(linear_bound(*instance(given)))


def greedy(given: Inputs) -> float:
    """First fit, longest first."""
    return float(sticks_of(first_fit(*instance(given))))


def length_bound(given: Inputs) -> float:
    """The bound by length, rounded up."""
    return float(by_length(*instance(given)))


def total(given: Inputs) -> float:
    """All pieces end to end, as one stick too many for any: by its own bound with a stick of 1."""
    _, sizes, demand = instance({**given, "stock": 1})
    return float(by_length(1, sizes, demand))


def waste(given: Inputs) -> float:
    """What is left over of the best cutting, in per cent of what is bought."""
    stock, sizes, demand = instance(given)
    bought = fewest_sticks(given) * stock
    return (bought - sum(size * count for size, count in zip(sizes, demand, strict=True))) / bought * 100


def with_saw(given: Inputs) -> float:
    """Sticks of a length in inches, each saw cut counted."""
    pieces = [CutPiece("piece", to_si(given["piece_in"], "in"))] * given["count"]
    made = cut(pieces, to_si(given["stick_in"], "in"), to_si(given["kerf_in"], "in"))
    assert made.proven
    return float(len(made.sticks))


def left_over(given: Inputs) -> float:
    """What is left of the only stick that is needed, mm."""
    pieces = [CutPiece("piece", to_si(length, "in")) for length in given["pieces_in"]]
    (stick,) = cut(pieces, to_si(given["stick_in"], "in"), to_si(given["kerf_in"], "in")).sticks
    return stick.left


def triplets(given: Inputs) -> float:
    """A case of the benchmark's class: three pieces by three they fill a stick to its end, all of different lengths."""
    pieces = []
    for number in range(given["items"] // 3):
        first, second = 495 - number * given["first_falls"], 252 + number * given["second_grows"]
        pieces += [first, second, ONE - first - second]
    sizes = sorted(set(pieces), reverse=True)
    found = fewest(ONE, sizes, [pieces.count(size) for size in sizes])
    assert found.at_least == found.sticks
    return float(found.sticks)


def gallon_at(given: Inputs) -> float:
    """The area that a US gallon covers, so many thousandths of an inch thick, mm²."""
    return to_si(1, "gal") / to_si(given["mils"] / 1000, "in")


def crack(given: Inputs) -> Worked:
    """Epoxy for a crack; sizes in mm."""
    return quantities.fill_volume(given["length"], given["width"], given["depth"])


def faces(given: Inputs) -> Worked:
    """All faces of a slab; sizes in inches."""
    return quantities.surface(*(to_si(given[key], "in") for key in ("length_in", "depth_in", "thickness_in")))


def finish(given: Inputs) -> Worked:
    """The finish of a slab that is coated all round; sizes in inches."""
    sizes = [to_si(given[key], "in") for key in ("length_in", "depth_in", "thickness_in")]
    return quantities.coats_volume(quantities.coated(*sizes, *[given["coats"]] * 3), given["finish"])


def cartridges(given: Inputs) -> float:
    """Whole cartridges for a joint, something lost on the way."""
    bead = sealant.bead_volume(
        to_si(given["length_ft"], "ft"), to_si(given["wide_in"], "in"), to_si(given["deep_in"], "in")
    )
    return float(ceil(si(bead) * (1 + given["loss"] / 100) / to_si(given["cartridge_floz"], "fl oz")))


def discs(given: Inputs) -> Worked:
    """Discs that a grit wears out on so many square feet of board."""
    return quantities.discs(given["grit"], to_si(given["ft2"], "ft²"), 0.0)


TAKEOFF_CALCULATIONS: dict[str, Callable[[Inputs], Found]] = {
    "fewest sticks": fewest_sticks,
    "linear bound of sticks": linear,
    "sticks by first fit": greedy,
    "sticks by length": length_bound,
    "pieces end to end": total,
    "waste of the fewest sticks": waste,
    "sticks with a saw": with_saw,
    "left of a stick": left_over,
    "sticks of triplets": triplets,
    "area of a gallon": gallon_at,
    "epoxy for a crack": crack,
    "faces of a slab": faces,
    "finish of a slab": finish,
    "cartridges with loss": cartridges,
    "discs of a grit": discs,
}
