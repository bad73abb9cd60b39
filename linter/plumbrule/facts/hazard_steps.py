"""Steps that can hurt someone: what they raise, throw, give off and lift, and what is worn and done against it."""

from __future__ import annotations

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_hazards import HAZARD_STEP
from plumbrule.facts.desk import Desk, Input
from plumbrule.facts.hazard_lifts import work_lifting
from plumbrule.facts.hazard_parts import Parts, children, task_rows
from plumbrule.facts.order import order
from plumbrule.mechanics.task_table import RISKS, VAPOURS, TaskRow, Tin
from plumbrule.plan.steps import Step

# Tasks that hurt by what is in the tin, or by nothing.
_TINNED = ("wash wall", "rinse wall", "wipe wall", "coat steel", "fill cracks", "finish board", "lay panels")
_PRODUCT_MATTERS = ("wash wall", "wipe wall")
_MASONRY_LININGS = ("gypsum plaster on brick", "cement board", "tile")
_RAG_CONTROLS = ("rags in water in a metal can", "rags laid flat outdoors")


def hazard_step_rows(parts: Parts) -> tuple[Row, ...]:
    """One row for each step whose task, tin or load can hurt."""
    return tuple(
        _row(parts, name, step, task)
        for name, step in (parts.model.steps or {}).items()
        if not (task := task_rows().task(step.task)).idle or step.task in _TINNED
    )


def _row(parts: Parts, name: str, step: Step, task: TaskRow) -> Row:
    here = f"/steps/{name}"
    desk = Desk(HAZARD_STEP, here, here, f"step {name}")
    at = f"{here}/task"
    desk.set("task", step.task, at)
    # What is done to a wall is done where the wall stands, whatever the step says.
    at_the_wall = task.reaches == "wall" or task.disturbs != "nothing"
    desk.set("where", "in the room" if at_the_wall else step.where, at if at_the_wall else f"{here}/where")
    desk.set("wears", tuple(step.wears), f"{here}/wears")
    desk.set("controls", tuple(step.controls), f"{here}/controls")
    desk.set("people", float(step.people), f"{here}/people")
    desk.get("children", lambda: children(desk, parts.plan))
    for field in ("eyes", "turning", "sparks"):
        desk.set(field, getattr(task, field), at)
    desk.set("noise", task.noise, at)
    desk.get("laser", lambda: _laser(desk, parts, step, task, here))
    desk.get("dust", lambda: _dust(desk, parts, step, task, here))
    desk.set(
        "wood_risk", _wood_risk(parts, step, task), *(f"/boards/{board}/species" for board in parts.boards_of(step))
    )
    _tins(desk, parts, name, step, task)
    work_lifting(desk, parts, name, step, task)
    return desk.row()


def _laser(desk: Desk, parts: Parts, step: Step, task: TaskRow, here: str) -> bool:
    """A line may be set with a chalk string or a laser, and where no laser is owned one may be borrowed."""
    if task.laser and "laser below eye height" not in step.controls:
        owned = "laser level" in parts.model.on_hand
        said = "" if owned else "nothing says what the line is set with: a laser is taken"
        desk.need(Input(True, f"{here}/controls", said))
    return task.laser


def _dust(desk: Desk, parts: Parts, step: Step, task: TaskRow, here: str) -> str:
    """The dust of the task; of a hole, that of what is drilled. Masonry raises silica."""
    desk.need(Input(True, f"{here}/task"))
    if task.disturbs != "drilled":
        return task.dust
    for name in parts.walls_of(step):
        wall = parts.walls[name]
        if any(layer.material in _MASONRY_LININGS for layer in wall.lining or ()):
            return "masonry"
        framing, at = wall.framing, f"/walls/{name}/framing"
        kind = None if framing is None else framing.kind or ("wood studs" if framing.stud else None)
        if desk.word(Input(kind, f"{at}/kind" if framing else at)) in ("masonry", "concrete"):
            return "masonry"
    return task.dust


def _wood_risk(parts: Parts, step: Step, task: TaskRow) -> str:
    """The worst of the boards that are sawn, planed or sanded."""
    if task.dust != "wood":
        return "none"
    boards = parts.model.boards or {}
    return max(
        (task_rows().wood(boards[name].species) for name in parts.boards_of(step)), key=RISKS.index, default="none"
    )


def _tins(desk: Desk, parts: Parts, name: str, step: Step, task: TaskRow) -> None:
    """What is in the tin: vapour, alkali, epoxy, and rags that heat themselves."""

    def vapour() -> str:
        return max((task.vapour, *(tin.vapour for tin in _opened(desk, parts, name, step))), key=VAPOURS.index)

    def alkali() -> bool:
        if step.task == "rinse wall":
            return _rinses_alkali(desk, parts, name, step)
        return any(tin.alkali for tin in _opened(desk, parts, name, step))

    desk.get("vapour", vapour)
    desk.get("alkali", alkali)
    desk.get("epoxy", lambda: any(tin.epoxy for tin in _opened(desk, parts, name, step)))

    def rags() -> str:
        desk.need(Input(True, f"/steps/{name}/controls"))
        if not any(tin.self_heating for tin in _opened(desk, parts, name, step)):
            return "none"
        return _rags(desk, parts, name, step)

    desk.get("rags", rags)

    def keep_out() -> bool:
        return task.keep_out or desk.true("alkali") or desk.text("vapour") in ("strong", "two-part")

    desk.get("keep_out", keep_out)


def _opened(desk: Desk, parts: Parts, name: str, step: Step) -> list[Tin]:
    """The tins that a step opens. Raises Missing where the plan does not say what is in one of them."""
    table, model = task_rows(), parts.model
    found: list[Tin] = []
    here = f"/steps/{name}"
    desk.need(Input(True, f"{here}/with"))
    if step.with_ is not None:
        found.append(table.tin("products", step.with_))
    elif step.task in _PRODUCT_MATTERS:
        desk.need(Input(None, f"{here}/with"))
    if step.task == "finish board":
        for board in parts.boards_of(step):
            finish = (model.boards or {})[board].finish
            wanted = finish.kind if finish else None
            said = "nothing says what is in the paint: an oil paint is taken" if wanted == "paint" else ""
            kind = desk.word(Input(wanted, f"/boards/{board}/finish/kind", said))
            found.append(table.tin("finishes", kind))
    elif step.task == "lay panels":
        for field in parts.fields_of(step):
            adhesive = (model.panels or {})[field].adhesive
            kind = desk.word(Input(adhesive.kind if adhesive else None, f"/panels/{field}/adhesive/kind"))
            found.append(table.tin("adhesives", kind))
    elif step.task == "coat steel":
        found.append(_coat(desk, parts, step, f"{here}/works_on"))
    elif step.task == "fill cracks":
        for board in parts.boards_of(step):
            cracks = (model.boards or {})[board].cracks
            for crack, one in cracks.items():
                desk.need(Input(one.fill, f"/boards/{board}/cracks/{crack}/fill"))
                if one.fill == "epoxy":
                    found.append(table.tin("products", "epoxy"))
    return found


def _coat(desk: Desk, parts: Parts, step: Step, pointer: str) -> Tin:
    """What steel is coated with on site: the worst of what its parts are said to get."""
    coats = [support.coating for support in parts.supports_of(step) if support.coating.value is not None]
    tins = [task_rows().tin("coats", desk.word(coat)) for coat in coats]
    worst = max(tins, key=lambda tin: VAPOURS.index(tin.vapour), default=None)
    if worst is not None and worst.vapour != "none":
        return worst
    # Powder and zinc are put on in a works: whatever is brushed on here is something else.
    desk.need(Input(True, pointer, "nothing says what the steel is painted with: an oil enamel is taken"))
    return task_rows().tin("coats", "primer and enamel")


def _rinses_alkali(desk: Desk, parts: Parts, name: str, step: Step) -> bool:
    """Whether what is rinsed off burns: an alkali that one of the walls was washed with."""
    washes: dict[str, Step] = {}
    for wall in parts.walls_of(step) or parts.walls:
        washes.update({wash: order(parts.plan).step(wash) for wash in order(parts.plan).doing("wash wall", wall)})
    wanting = [Input(None, f"/steps/{wash}/with") for wash, one in washes.items() if one.with_ is None]
    burns = [wash for wash, one in washes.items() if one.with_ and task_rows().tin("products", one.with_).alkali]
    if not burns:
        desk.need_all(*wanting)
    for wash in burns:
        desk.need(Input(True, f"/steps/{wash}/with"))
    return bool(burns)


def _rags(desk: Desk, parts: Parts, name: str, step: Step) -> str:
    """What becomes of the rags: made safe at once, in a way that is written down, in this step or the one after its
    hands."""
    steps = parts.model.steps or {}
    after = [one for one in steps if steps[one].task == "make rags safe" and name in steps[one].at_once_after]
    for one in (name, *after):
        desk.need(Input(True, f"/steps/{one}/controls"))
    if any(control in _RAG_CONTROLS for one in (name, *after) for control in steps[one].controls):
        return "safe"
    return "no way written" if after else "left"
