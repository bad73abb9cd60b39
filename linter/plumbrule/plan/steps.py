"""Steps: what is done, to what, after what, how long it takes and how whoever does it stays unhurt."""

from typing import ClassVar

from pydantic import Field

from plumbrule.plan import answers, words
from plumbrule.plan.part import AtLeastOne, Part
from plumbrule.reading.model import Listed
from plumbrule.reading.quantities import Force, Grit, Name, Time


class Step(Part):
    """One piece of work."""

    HINTS: ClassVar[dict[str, str]] = {"on": "Write works_on.", "before": "Write after, in the other step."}

    task: answers.Task
    """what is done"""
    works_on: Listed[Name] | None = None
    """names of the walls, boxes, angles, boards, panels, trims or sealants it is done to"""
    after: Listed[Name] = ()
    """steps that must be done, and their waits over, before this one begins"""
    at_once_after: Listed[Name] = ()
    """steps whose hands this one follows, without waiting for a cure"""
    takes: Time | None = None
    """working time"""
    then_wait: Time = 0.0
    """time to leave it alone afterwards: drying, curing, settling"""
    between_coats: Time | None = None
    """wait from coat to coat"""
    people: AtLeastOne = 1
    """how many people it needs"""
    with_: words.Product | None = Field(None, alias="with")
    """product used"""
    grit: Grit | None = None
    """grit used on the wall"""
    load: Force | None = None
    """load of a proof test"""
    verified: answers.Tester | None = None
    """what a dead circuit is proved with"""
    tester_proved: words.TesterProved | None = None
    """whether the tester was tried on a live source"""
    where: words.Where = "in the room"
    """where it is done"""
    wears: Listed[answers.Wear] = ()
    """protection worn"""
    controls: Listed[words.Control] = ()
    """what else keeps people and house from harm"""
