"""Rows of the steps: when each is done, what must come before what, what waits, what is missing, what gets covered."""

from __future__ import annotations

from plumbrule.catalogue.fact import RowType, count, number, truth, word
from plumbrule.plan import words as plan_words

COVERED = ("open wall", "floor joint")

JOB = RowType(
    "job",
    "All steps together.",
    (
        count("steps", "steps that are written"),
        number("hands", "h", "hours of work of all steps, each counted once however many people it needs"),
        number("person_hours", "h", "hours of work times the people that each step needs"),
        number("lasts", "h", "from the first hour of work to the end of the last wait, nights and free days counted"),
        number("done", "h", "end of the last hands, from the midnight before the first day"),
        count("days", "the day, counted from the first, on which the last hands are done"),
    ),
)

STEP = RowType(
    "step",
    "One step.",
    (
        word("task", plan_words.TASKS, "what is done"),
        number("takes", "h", "working time of all its coats"),
        number("wait_after", "h", "how long it is left alone afterwards"),
        count("people", "how many people it needs"),
        number("start", "h", "when its hands begin, from the midnight before the first day"),
        number("finish", "h", "when its hands are done, from the same midnight"),
        number("ready", "h", "when its wait is over, from the same midnight"),
        count("first_day", "the day on which it begins, counted from the first day of the job"),
        number("begins_at", "h", "time of that day, after midnight"),
        count("last_day", "the day on which its hands are done"),
        number("done_at", "h", "time of that day, after midnight"),
        truth("on_longest_chain", "it is among the steps that decide how long everything lasts"),
        number("spare", "h", "how much later it may begin without holding anything up at the end"),
        truth("at_once", "it follows the hands of another step without waiting for a cure"),
        number("held_over", "h", "from the end of the hands that it follows at once to its own beginning"),
        truth("hand_over_follows", "a step hands over, and this is another"),
        truth("before_hand_over", "it is done before anything is handed over, whatever happens"),
        number("rests_before_hand_over", "h", "hours that are sure to lie between its hands and the handing over"),
        number("proof_load", "N", "load that is put on to prove it"),
        number(
            "declared_load", "N", "what the proved board is declared for: one person, or all that stands on a shelf"
        ),
    ),
)

ORDER = RowType(
    "order",
    "A step, and a task that the trade does before it on the same part.",
    (
        word("earlier_task", plan_words.TASKS, "task that comes first"),
        word("later_task", plan_words.TASKS, "task of the step"),
        truth("kept", "on each of its parts the step waits for a step that does the earlier task"),
    ),
)

WAIT = RowType(
    "wait",
    "A step whose work is to be left alone for a while, and the work that may come next on the same part.",
    (
        word("earlier_task", plan_words.TASKS, "task of the step that is to be left alone"),
        word("later_task", plan_words.TASKS, "task of the step that touches it next"),
        number("asked", "h", "wait that the plan writes after the earlier step"),
        number("waited", "h", "hours that are sure to lie between the two"),
        truth("wood_patch", "a patch of wood is glued into a crack"),
    ),
)

TASK = RowType(
    "task",
    "A task that this plan calls for, on one part.",
    (
        word("task", plan_words.TASKS, "task that is called for"),
        truth("needed", "the plan calls for it here"),
        truth("written", "a step does it to this part"),
    ),
)

COVER = RowType(
    "cover",
    "Something that gets covered, and the step that covers it.",
    (
        word("covered", COVERED, "what is covered"),
        word("covered_by", plan_words.TASKS, "task that covers it"),
        truth("done_before", "it was recorded, or sealed, before it is covered, whatever happens"),
    ),
)

ROWS: tuple[RowType, ...] = (JOB, STEP, ORDER, WAIT, TASK, COVER)
