"""The face of a wall as it is today: what is on it, how it holds, how flat it is."""

from typing import Annotated

from plumbrule.plan import answers, words
from plumbrule.plan.part import Part, instead
from plumbrule.reading.model import Listed
from plumbrule.reading.quantities import Length, Size, Time


class OutOfFlat(Part):
    """How far the face is from flat."""

    gap: Length
    """widest gap under the straightedge"""
    straightedge: Size
    """length of the straightedge"""


def _a_ratio(text: str) -> tuple[str, str]:
    gap, per, straightedge = text.partition(" per ")
    if not per:
        gap, straightedge = text, "4 ft"
    return f"{text} is two measures in one." if per else f"{text} is only the gap.", (
        f"Write {{gap: {gap}, straightedge: {straightedge}}}."
    )


class Test(Part):
    """What a test for lead or asbestos said."""

    result: words.TestResult
    """found or not found"""
    method: words.TestMethod
    """a laboratory, or a swab on the spot"""


class Tests(Part):
    """Tests of old paint and textures. What is not listed was not tested."""

    lead: Test | None = None
    """test of the paint for lead"""
    asbestos: Test | None = None
    """test of the texture or board for asbestos"""


class Surface(Part):
    """The face of the wall before work begins."""

    coating: answers.Coating | None = None
    """what the wall is covered with"""
    coated_ago: Time | None = None
    """how long ago"""
    state: Listed[words.WallState] | None = None
    """what is wrong with it; [sound] if nothing is"""
    texture: words.Texture | None = None
    """how rough the face is"""
    out_of_flat: Annotated[OutOfFlat, instead(_a_ratio)] | None = None
    """widest gap under a straightedge"""
    tests: Tests = Tests.model_construct()
    """tests for lead and asbestos"""
