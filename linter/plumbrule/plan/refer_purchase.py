"""The names of a purchase list: each is the part it is for, a lumber size, a grit or a product."""

from __future__ import annotations

from plumbrule.plan import words
from plumbrule.plan.refer import Referring
from plumbrule.reading.pointer import escape

# Group -> kinds of part a line may be for, and other words it may be.
GROUPS: dict[str, tuple[tuple[str, ...], tuple[str, ...]]] = {
    "panels": (("panel field",), ()),
    "steel": (("steel section", "bracket"), ()),
    "screws": (("screw",), ()),
    "washers": (("screw",), ()),
    "boards": (("board",), ()),
    "timber": (("block", "cleat"), words.LUMBER_SIZES),
    "trims": (("trim",), ()),
    "sealants": (("sealant",), ()),
    "backers": (("sealant",), ()),
    "finishes": (("board",), ()),
    "primers": (("wall", "steel section", "board"), ("wall", "steel")),
    "paints": (("wall", "steel section", "board"), ("wall", "steel")),
    "fillers": (("crack", "board", "wall"), words.PRODUCTS),
    "cleaners": (("wall",), words.PRODUCTS),
    "adhesives": (("panel field",), words.ADHESIVES),
    "electrical": (("box",), words.BOX_FITTINGS),
    "protection": ((), words.WEARS + words.PRODUCTS + words.TOOLS),
}


def check_purchase(names: Referring) -> None:
    """Complains of every line of the purchase list that is for nothing in this plan."""
    purchase = names.model.purchase
    if purchase is None:
        return
    for group, (kinds, also) in GROUPS.items():
        for line in getattr(purchase, group) or {}:
            at = f"/purchase/{group}/{escape(line)}"
            if kinds:
                names.one(line, at, *kinds, also=also, key=True)
            elif line not in also:
                _unknown(names, line, at, also)
    for line in purchase.abrasives or {}:
        number = line.removeprefix("grit-").removeprefix("P")
        if not line.startswith("grit-") or not (number.isascii() and number.isdigit()):
            names.complain(f"/purchase/abrasives/{escape(line)}", f"{line} is not a grit.",
                           "Write grit-120, or grit-P120.", key=True)  # fmt: skip


def check_on_hand(names: Referring) -> None:
    """Complains of tools that are spelled nearly, but not quite, like ones the rules ask for."""
    from plumbrule.reading.spelling import nearest

    for index, tool in enumerate(names.model.on_hand):
        if tool in words.ON_HAND:
            continue
        close = nearest(tool, words.ON_HAND)
        # Other tools may be named freely; only a slip of the pen is caught.
        if close is not None and _slip(tool, close):
            names.complain(f"/on_hand/{index}", f"{tool} is not quite a word known here.", f"Did you mean {close}?")


def _slip(written: str, word: str) -> bool:
    """Whether two words differ by a letter or two, or only in capitals and hyphens."""
    from difflib import SequenceMatcher

    plain, meant = (text.casefold().replace("-", " ").replace("_", " ") for text in (written, word))
    return SequenceMatcher(None, plain, meant).ratio() > 0.85


def _unknown(names: Referring, line: str, at: str, also: tuple[str, ...]) -> None:
    from plumbrule.reading.spelling import offer

    names.complain(at, f"`{line}` is not something to wear or to protect with.", offer(line, also), key=True)
