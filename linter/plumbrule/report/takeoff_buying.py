"""Page 1 of a take-off: what goes to the merchant, needed beside bought, and why it is more than the pieces."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plumbrule.facts.takeoff import Takeoff
from plumbrule.report.clean import one_line
from plumbrule.report.figures import many, quantity
from plumbrule.report.paper import Paper, wrap
from plumbrule.report.takeoff_figures import Amount, amounts, by, mark, unit_of

if TYPE_CHECKING:
    from plumbrule.inspection.examine import Examined
    from plumbrule.plan.plan_file import PlanFile
    from plumbrule.reading.shown import System

_NAME, _FIGURE, _LEAST = 25, 12, 24
_STATES = {"short": "SHORT", "not listed": "NOT LISTED", "on hand": "on hand", "not known": "not known"}
_TONES = {"short": ("red", "bold"), "not listed": ("red", "bold"), "not known": ("yellow",)}


def buying_page(paper: Paper, takeoff: Takeoff, examined: Examined, spares: tuple[str, ...]) -> None:
    """Writes the page. `spares` are the lines on what the rules ask for on top."""
    paper.apart("1  TO THE MERCHANT", f"lengths in {unit_of(examined.system)}", "bold")
    if not takeoff.bought:
        paper.line("This plan has no purchase list: what is needed stands here by itself.", indent=3, hang=3)
    if not takeoff.steps:
        paper.line("It has no steps either, so that what they wear out and wear is not in it.", indent=3, hang=3)
    group = ""
    for one in amounts(takeoff, examined.system):
        own = str(one.row.values["group"])
        if own != group:
            paper.blank()
            head = f"{'needed':<{_FIGURE}}{'bought':<{_FIGURE}}{'over':<{_FIGURE}}" if not group else ""
            paper.line(f"{own.upper():<{_NAME + 3}}{head}".rstrip(), "bold")
            group = own
        _line(paper, one, note(one, examined.plan.model, examined.system))
    paper.blank()
    if takeoff.unused:
        names = ", ".join(one_line(f"{group} {name}") for group, name in takeoff.unused)
        paper.labelled("bought", f"and needed by nothing in this plan: {names}")
    for line in spares:
        paper.labelled("spare", line)


def _line(paper: Paper, one: Amount, said: str) -> None:
    needed, bought, over = one.shown
    unit = f" {one.unit.removesuffix('s') if needed == '1' else one.unit}" if one.unit in ("sticks", "discs") else ""
    state = _STATES.get(one.state, "") if one.state != "not known" or one.why else ""
    last = state if state and (not over or one.state in ("short", "on hand")) else over
    if one.state == "short" and over.startswith("-"):
        last = f"SHORT {over[1:]}"
    name = one_line(one.row.label.partition(" ")[2])
    if len(name) >= _NAME:
        paper.line(name, indent=3)
        name = ""
    tones = _TONES.get(one.state, ())
    head = f"{name:<{_NAME}}{needed + unit:<{_FIGURE}}{bought:<{_FIGURE}}{last:<{_FIGURE}}"
    told = one.why or said
    room = paper.width - 3 - len(head)
    if room < _LEAST:
        # On a narrow page what is said stands under the figures.
        paper.line(head.rstrip(), *tones, indent=3, hang=3)
        if told:
            paper.line(told, indent=6, hang=3)
        return
    first, *rows = wrap(told, room)
    paper.line(f"{head}{first}".rstrip(), *tones, indent=3, hang=_NAME)
    for row in rows:
        paper.line(row, indent=3 + len(head))


def note(one: Amount, model: PlanFile, system: System) -> str:
    """What the thing is, and why more is bought than goes into the wall."""
    row, said = one.row, []
    name = row.label.partition(" ")[2]
    group = row.values["group"]
    values = {key: value for key, value in row.values.items() if isinstance(value, int | float)}

    def measure(field: str) -> str:
        return mark(float(values[field]) if field in values else None, system)

    if group in ("screws", "washers") and (screw := (model.screws or {}).get(name)):
        if group == "screws":
            size = f"No. {screw.size}" if screw.size is not None else mark(screw.diameter, system)
            said.append(f"{screw.kind} {size} x {mark(screw.length, system)}")
        elif screw.washer is not None:
            said.append(f"outside {mark(screw.washer.outside, system)}, hole {mark(screw.washer.inside, system)}")
    elif group == "panels" and (field := (model.panels or {}).get(name)):
        panel = field.panel
        said.append(f"{by((panel.length, panel.height, panel.thickness), system)}, by the cut list on page 2")
        if panel.per_carton:
            said.append(f"sold in cartons of {panel.per_carton}")
    elif group == "electrical" and "planned_size" in values:
        said.append(f"brings the rim {measure('planned_size')} forward")
    elif group == "boards":
        said.append("finished " + " x ".join(measure(f"finished_{key}") for key in ("length", "depth", "thickness")))
        said.append(f"rough length {measure('rough_length')}")
        if "bought_length" in values:
            said.append("bought " + " x ".join(measure(f"bought_{key}") for key in ("length", "depth", "thickness")))
    elif row.values["amount"] == "sticks":
        said.append(many(int(values.get("pieces", 0)), "piece"))
        if "stick" in values:
            said.append(f"sticks of {measure('stick')}, saw cuts counted")
        if row.values.get("fits_stick") is False:
            said.append(f"none is as long as the longest piece, {measure('longest_piece')}")
    elif row.values["amount"] == "wear":
        if "needed_count" in values:
            said.append(f"about {quantity(float(values['needed_count']), '', system, 3)} wear out")
    elif "spread_area" in values:
        area = float(values["spread_area"])
        unit, factor = ("m²", 1e6) if system == "metric" else ("ft²", 304.8**2)
        said.append(f"{quantity(area / factor, '', system, 3)} {unit} of all coats")
    elif row.values["amount"] == "not reckoned":
        said.append("as much as the work takes")
    if "mass" in values:
        said.append(f"{quantity(float(values['mass']), 'kg', system, 3)} as built in")
    return one_line("; ".join(part for part in said if part))
