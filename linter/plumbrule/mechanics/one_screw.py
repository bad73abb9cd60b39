"""One screw through steel into wood, from its row in the tables to its reference strengths in one call.

The safe way in: it takes the tip off, uses the root where the root belongs, and refuses what is not covered.
"""

from __future__ import annotations

from plumbrule.mechanics.bearing_wood import wood_bearing
from plumbrule.mechanics.factors import loaded_edge
from plumbrule.mechanics.given import Given
from plumbrule.mechanics.lateral import SideStrength, side_strength
from plumbrule.mechanics.lining import require_gap
from plumbrule.mechanics.screw_length import bearing_length, require_penetration, thread_in_wood, tip_length
from plumbrule.mechanics.table_rows import Fastener
from plumbrule.mechanics.withdrawal import withdrawal
from plumbrule.mechanics.worked import Worked


def screw_side_strength(
    fastener: Fastener,
    *,
    gravity: Given,
    grain_angle: float,
    loaded_edge_distance: Given,
    penetration: Given,
    gap: Given,
    side_thickness: Given,
    side_bearing: Given,
) -> SideStrength:
    """Reference side strength Z of a screw in a stud or block, N, before factors.

    gravity: of the wood held into, 0.31 to 0.73. grain_angle: 0 for a weight on a stud, 90 for one on a block.
    loaded_edge_distance: from the axis to the edge the load points at, mm; it matters from 1/4 in. up, across the
    grain. penetration: with tip; gap: lining left between, 0 only where steel touches wood; mm. side_thickness in mm
    and side_bearing in MPa: of the leg (`steel_bearing_of`) or of a wood side member (`wood_bearing`).

    Raises OutsideRulebook for a short bite, a wide gap, a wood outside the tables, and a thick screw too near its
    loaded edge.
    """
    tip = tip_length(fastener)
    require_penetration(fastener.kind, fastener.diameter, penetration, tip)
    loaded_edge(fastener.diameter, loaded_edge_distance, grain_angle)
    return side_strength(
        diameter=fastener.diameter,
        root_diameter=fastener.root_diameter,
        bending_yield=fastener.bending_yield,
        main_bearing=wood_bearing(gravity, fastener.diameter, grain_angle),
        side_bearing=side_bearing,
        main_length=bearing_length(penetration, tip),
        side_length=side_thickness,
        gap=require_gap(gap, penetration),
        grain_angle=grain_angle,
    )


def screw_withdrawal(fastener: Fastener, *, gravity: Given, penetration: Given, thread: Given) -> Worked:
    """Reference withdrawal W p_t of a screw in side grain, N, before factors.

    penetration with tip and threaded length in mm (`thread_by_rule` where it was not measured). Raises
    OutsideRulebook for a short bite and for a wood outside the tables.
    """
    tip = tip_length(fastener)
    require_penetration(fastener.kind, fastener.diameter, penetration, tip)
    return withdrawal(
        fastener.kind, gravity, fastener.diameter, thread_in_wood(fastener.kind, penetration, thread, tip)
    )
