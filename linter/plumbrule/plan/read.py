"""From a file to a Plan: the document, its model, and every cross check, all faults at once."""

from __future__ import annotations

from contextlib import suppress
from pathlib import Path
from typing import Any

from plumbrule.plan.complaints import Complaints, Enough
from plumbrule.plan.contrary_boxes import Boxes
from plumbrule.plan.contrary_joints import Joints
from plumbrule.plan.contrary_overlap import check_overlaps
from plumbrule.plan.contrary_panels import Panels
from plumbrule.plan.contrary_parts import Parts
from plumbrule.plan.contrary_room import Room
from plumbrule.plan.contrary_steps import Steps
from plumbrule.plan.either import Choosing
from plumbrule.plan.plan_file import Plan, PlanFile
from plumbrule.plan.refer import Referring
from plumbrule.plan.refer_purchase import check_on_hand, check_purchase
from plumbrule.reading.fault import Fault, Unreadable
from plumbrule.reading.places import Document, read, read_file
from plumbrule.reading.pointer import join
from plumbrule.reading.quantities import MEASURE_ON_SITE
from plumbrule.reading.take import take

VERSION = 1


def read_plan(document: Document) -> Plan:
    """The plan in a document. Raises Unreadable with every fault: first those of single values and keys, and once
    there are none, those of names and measures that do not fit together."""
    _this_version(document)
    model = take(PlanFile, document)
    template = model.record is not None and model.record.status == "template"
    # The values of a patched document need not stand in its text.
    waiting = _to_measure(document.value, "") if template or MEASURE_ON_SITE in document.text else []
    plan = Plan(document, model, tuple(waiting))
    complaints = Complaints(document)
    with suppress(Enough):
        _look_over(plan, complaints)
    if faults := complaints.faults():
        raise Unreadable(faults)
    return plan


def plan_from_text(source: bytes, path: str) -> Plan:
    """The plan in bytes; `path` is what faults call them. Raises Unreadable."""
    return read_plan(read(source, path))


def plan_from_file(path: Path | str) -> Plan:
    """The plan in a file. Raises Unreadable."""
    return read_plan(read_file(path))


def _look_over(plan: Plan, complaints: Complaints) -> None:
    """Every check that needs more than one value. Raises Enough."""
    if plan.model.record is None or plan.model.record.status != "template":
        for pointer in plan.to_measure:
            complaints.add(pointer, "Only a template may wait until it is measured.",
                           "Measure it, or write status: template under record.")  # fmt: skip
    Choosing(plan, complaints).check()
    names = Referring(plan, complaints)
    names.check()
    check_purchase(names)
    check_on_hand(names)
    Room(plan, complaints).check()
    Boxes(plan, complaints).check()
    Parts(plan, complaints).check()
    check_overlaps(plan, complaints)
    Joints(plan, complaints).check()
    Steps(plan, complaints).check()
    Panels(plan, complaints).check()


def _this_version(document: Document) -> None:
    """A plan of another version is not read at all: its other faults would only mislead."""
    version = document.value.get("plan") if isinstance(document.value, dict) else None
    if isinstance(version, int) and not isinstance(version, bool) and version != VERSION:
        fault = Fault(document.path, document.place("/plan"), "/plan", f"This is version {version} of the plan format.",
                      f"This reader knows version {VERSION}.")  # fmt: skip
        raise Unreadable([fault])


def _to_measure(value: Any, pointer: str) -> list[str]:
    """The pointers of everything that says `measure on site`, in the order of the file."""
    if isinstance(value, str):
        return [pointer] if value == MEASURE_ON_SITE and pointer != "/title" else []
    if isinstance(value, dict):
        return [found for key, inner in value.items() for found in _to_measure(inner, join(pointer, key))]
    if isinstance(value, list):
        return [found for index, inner in enumerate(value) for found in _to_measure(inner, join(pointer, index))]
    return []
