"""What the steps promise about a box: dead before it is open, its cover off for the panels and back before power."""

from __future__ import annotations

from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.order import Order, order
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.words import TESTERS

# From the worst to the best.
_PROVED = ("no", "before", "before and after")


def work_steps(desk: Desk, plan: Plan, wall_name: str, name: str) -> None:
    """Everything that hangs on the order of the steps. Needs `panelled` and `extender`."""
    steps = order(plan)
    covers, extenders = steps.doing("remove cover plates", name), steps.doing("fit box extenders", name)
    cutting, laying = steps.doing("cut away lining", wall_name), steps.doing("lay panels", wall_name)
    # Every step with which a hand, a saw or a panel comes to the open box.
    hands = tuple(dict.fromkeys((*covers, *extenders, *cutting, *laying)))
    written = Input(True if steps.written else None, "/steps")

    desk.get("opened", lambda: bool(hands) or desk.true("panelled"))
    if desk.known("opened") and desk.true("opened"):
        isolate, prove = steps.doing("isolate circuit", name), steps.doing("prove dead", name)
        restore = steps.doing("restore circuit", name)

        def isolated() -> bool:
            _read(desk, steps, written, *hands, *isolate)
            return bool(isolate) and all(_off(steps, isolate, restore, hand) for hand in hands)

        def proved() -> bool:
            _read(desk, steps, written, *hands, *prove, *isolate)
            return bool(prove) and all(_dead(steps, isolate, prove, restore, hand) for hand in hands)

        desk.get("isolated", isolated)
        desk.get("locked", lambda: _locked(desk, steps, written, isolate))
        desk.get("proved_dead", proved)
        # Whoever comes back to the box and tries it again does so with a tester as well.
        again = (*hands, *steps.doing("refit cover plates", name))
        tried = (*prove, *(one for one in dict.fromkeys(again) if steps.step(one).verified is not None))
        desk.get("testers", lambda: _testers(desk, steps, written, tried))
        desk.get("tester_proved", lambda: _tester_proved(desk, steps, written, tried))

        def since_proof() -> float:
            waits = {hand: _since(steps, isolate, prove, restore, hand) for hand in (*covers, *extenders)}
            # The hand that comes latest is noted first: a finding stands there.
            _read(desk, steps, written, *sorted(waits, key=lambda hand: -waits[hand]), *prove)
            return max(waits.values(), default=0.0)

        if desk.known("proved_dead") and desk.true("proved_dead"):
            desk.get("since_proof", since_proof)

        def cover_off() -> bool:
            _read(desk, steps, written, *covers, *laying)
            return bool(covers) and all(any(steps.before(off, lay) for off in covers) for lay in laying)

        def cover_back() -> bool:
            back = steps.doing("refit cover plates", name)
            _read(desk, steps, written, *back, *covers)
            last = (*covers, *extenders, *laying)
            # A box beside which the lining is only sawn keeps its cover.
            return not last or any(all(steps.before(hand, one) for hand in last) for one in back)

        desk.get("cover_off", cover_off)
        desk.get("cover_back", cover_back)

    def fitted() -> bool:
        _read(desk, steps, written, *extenders)
        return bool(extenders)

    if extenders:

        def extended_last() -> bool:
            if not laying:
                raise Missing(["/steps"])
            _read(desk, steps, written, *extenders, *laying)
            return all(steps.before(lay, one) for lay in laying for one in extenders)

        desk.get("extended_last", extended_last)

    def restored() -> bool:
        desk.need(written)
        return bool(steps.doing("restore circuit", name))

    desk.get("extender_fitted", fitted)
    if steps.written or (desk.known("opened") and desk.true("opened")):
        desk.get("restored", restored)
    else:
        desk.set("restored", False, "/steps")
    if desk.known("restored") and desk.true("restored"):
        power, back = steps.doing("restore circuit", name), steps.doing("refit cover plates", name)

        def cover_before_power() -> bool:
            _read(desk, steps, written, *power, *back)
            return all(any(steps.before(cover, on) for cover in back) for on in power)

        desk.get("cover_before_power", cover_before_power)


def _read(desk: Desk, steps: Order, written: Input, *names: str) -> None:
    if not names:
        desk.need(written)
    for name in names:
        desk.need(Input(True, steps.pointer(name)))


def _between(steps: Order, first: str, middle: str, last: str) -> bool:
    """Whether `middle` may come after `first` and before `last`: nothing promises that it does not."""
    return not steps.before(middle, first) and not steps.before(last, middle) and middle not in (first, last)


def _off(steps: Order, isolate: tuple[str, ...], restore: tuple[str, ...], hand: str) -> bool:
    """Whether the circuit is off when the hand comes to it: isolated before, and not restored since."""
    return any(steps.before(off, hand) and not any(_between(steps, off, on, hand) for on in restore) for off in isolate)


def _dead(steps: Order, isolate: tuple[str, ...], prove: tuple[str, ...], restore: tuple[str, ...], hand: str) -> bool:
    """Whether it was proved dead after it was isolated, and could not come alive again before the hand."""
    return any(
        steps.before(proof, hand)
        and any(steps.before(off, proof) for off in isolate)
        and not any(_between(steps, proof, on, hand) for on in restore)
        for proof in prove
    )


def _since(
    steps: Order, isolate: tuple[str, ...], prove: tuple[str, ...], restore: tuple[str, ...], hand: str
) -> float:
    """Hours that are sure to lie between the last proof and the hand; none where the hand tries the box itself."""
    if steps.step(hand).verified is not None:
        return 0.0
    return min(steps.waited(one, hand) for one in prove if _dead(steps, isolate, (one,), restore, hand))


def _locked(desk: Desk, steps: Order, written: Input, isolate: tuple[str, ...]) -> bool:
    if not isolate:
        desk.need(written)
    for name in isolate:
        desk.need(Input(True, f"{steps.pointer(name)}/controls"))
    return bool(isolate) and all("breaker locked and tagged" in steps.step(name).controls for name in isolate)


def _testers(desk: Desk, steps: Order, written: Input, prove: tuple[str, ...]) -> tuple[str, ...]:
    if not prove:
        desk.need(written)
    testers = [Input(steps.step(name).verified, f"{steps.pointer(name)}/verified") for name in prove]
    # The least of them is noted first, since a finding stands there; each is named once.
    testers.sort(key=lambda one: -TESTERS.index(str(one.value)) if one.value in TESTERS else 0)
    desk.need_all(*testers)
    return tuple(dict.fromkeys(desk.word(tester) for tester in testers))


def _tester_proved(desk: Desk, steps: Order, written: Input, prove: tuple[str, ...]) -> str:
    """The worst of all proofs."""
    if not prove:
        desk.need(written)
    said = [Input(steps.step(name).tester_proved, f"{steps.pointer(name)}/tester_proved") for name in prove]
    said.sort(key=lambda one: _PROVED.index(str(one.value)) if one.value in _PROVED else 0)
    desk.need_all(*said)
    return min((desk.word(one) for one in said), key=_PROVED.index, default="no")
