"""Typed access to the shipped tables: species, fasteners, steels, angles, holes, washers."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from plumbrule.mechanics.outside import outside
from plumbrule.mechanics.table_files import (
    TableData,
    compile_tables,
    read_compiled,
    read_sources,
    table_folder,
    write_compiled,
)
from plumbrule.mechanics.table_rows import (
    AngleRow,
    Basis,
    Board,
    BoltEdge,
    Clearance,
    Dressed,
    Fastener,
    FlatHead,
    Framing,
    PanelCore,
    Steel,
    Washer,
)
from plumbrule.mechanics.worked import NotPossible
from plumbrule.reading.units import to_si

__all__ = ["Tables", "compile_tables", "load", "write_compiled"]

# A size read from a plan in inches or in millimetres is the table's size when it agrees to a hundredth of a mm.
_SAME = 0.01
# A yield band's upper limit printed to 0.001 in. takes in a size that a drill chart prints a shade larger.
_BAND = 1e-6

Row = Mapping[str, Any]


def load() -> Tables:
    """The shipped tables: the compiled twin when it was made from the files beside it, else the files themselves.

    Raises FileNotFoundError or Unreadable when the installation is broken.
    """
    where = table_folder()
    return Tables(read_compiled(where) or read_sources(where))


@dataclass(frozen=True, slots=True)
class Tables:
    """Every look-up returns one row in SI. A name that is not in a table raises NotPossible; a screw size that is
    not published raises OutsideRulebook, since then there is no root diameter to work with."""

    data: Mapping[str, TableData]

    def framing(self, name: str) -> Framing:
        """A species group of framing lumber, by its lower-case name, or `unknown`."""
        row = self._named("framing", "rows", name, "framing species")
        return Framing(
            name, row["G"], _si(row, "E", "psi"), _si(row, "Fb", "psi"), _si(row, "Fv", "psi"),
            _si(row, "Fc_perp", "psi"), self._source("framing", row), _basis(row),
        )  # fmt: skip

    def board(self, name: str) -> Board:
        """A board species of clear wood. Plywood, MDF and particleboard have no row: NotPossible.

        Where only the specific gravity on green volume is published it stands in: it is always the lower one.
        """
        row = self._named("boards", "rows", name, "board species")
        return Board(
            name, row["kind"], row.get("G_12", row.get("G_green")), _si(row, "MOR", "psi"), _si(row, "MOE", "psi"),
            _si(row, "Fc", "psi"), _si(row, "Fc_perp", "psi"), _si(row, "Fv", "psi"), _si(row, "Ft_perp", "psi"),
            _si(row, "MOR_green", "psi"), _si(row, "Fv_green", "psi"), _si(row, "Fc_perp_green", "psi"),
            row.get("group"), row.get("S_R"), row.get("S_T"), float(row.get("FSP", 30)), row.get("C_R"),
            row.get("C_T"), tuple(row.get("from_memory", ())), self._source("boards", row), _basis(row),
        )  # fmt: skip

    def fastener(self, kind: str, diameter: float) -> Fastener:
        """The lag or wood screw of nominal `diameter` in mm. Raises OutsideRulebook for another kind or size."""
        if kind not in ("wood screw", "lag screw"):
            raise outside("other screw")
        table = "wood_screws" if kind == "wood screw" else "lag_screws"
        for row in self._rows("fasteners", table):
            if abs(_must(row, "D", "in") - diameter) <= _SAME:
                return self._wood_screw(row) if kind == "wood screw" else self._lag_screw(row)
        raise outside("screw size")

    def wood_screw(self, gauge: int) -> Fastener:
        """The wood screw of this number. Raises OutsideRulebook when the number is not published (No. 4, No. 5 …)."""
        for row in self._rows("fasteners", "wood_screws"):
            if row["gauge"] == gauge:
                return self._wood_screw(row)
        raise outside("screw size")

    def steel(self, name: str) -> Steel:
        """A metal by the word of the plan, `unmarked` included."""
        row = self._named("steels", "rows", name, "steel")
        return Steel(
            name, _must(row, "F_y", "ksi"), _must(row, "F_u", "ksi"), row["metal"], row["formed"],
            self._source("steels", row), _basis(row),
        )  # fmt: skip

    def dressed(self, name: str) -> Dressed:
        """Dry dressed lumber by its trade name, such as 2x4."""
        row = self._named("lumber", "rows", name, "lumber size")
        return Dressed(
            name, _must(row, "thickness", "in"), _must(row, "width", "in"), self._source("lumber", row), _basis(row)
        )

    def angle(self, leg: float, other_leg: float, thickness: float) -> AngleRow | None:
        """The published angle of these outside sizes in mm, whichever leg is named first; None when there is none."""
        long_leg, short_leg = max(leg, other_leg), min(leg, other_leg)
        for row in self._angles():
            sizes = (_must(row, "long", "in"), _must(row, "short", "in"), _must(row, "t", "in"))
            if all(abs(a - b) <= _SAME for a, b in zip(sizes, (long_leg, short_leg, thickness), strict=True)):
                return self._angle(row, *sizes)
        return None

    def clearance(self, diameter: float) -> Clearance | None:
        """The published clearance holes for a screw of `diameter` mm; None when neither standard has that size."""
        for table, unit in (("inch", "in"), ("metric", "mm")):
            for row in self._rows("holes", table):
                if abs(_must(row, "D", unit) - diameter) <= _SAME:
                    return Clearance(
                        row["size"], _must(row, "D", unit), _must(row, "close", unit), _must(row, "normal", unit),
                        _must(row, "loose", unit), self._source("holes", row), _basis(row),
                    )  # fmt: skip
        return None

    def washer(self, size: str) -> Washer:
        """A type A plain washer by size, such as `1/4 N` or `No. 10`."""
        row = self._named("holes", "washers", size, "washer", key="size")
        return Washer(
            size, _must(row, "inside", "in"), _must(row, "outside", "in"), _must(row, "thickness", "in"),
            _must(row, "most", "in"), _must(row, "least", "in"), self._source("holes", row), _basis(row),
        )  # fmt: skip

    def flat_head(self, diameter: float, angle: float = 82.0) -> FlatHead | None:
        """The published countersunk head of a screw of `diameter` mm; None when that size or angle has no row."""
        for row in self._rows("fasteners", "flat_heads"):
            if abs(_must(row, "D", "in") - diameter) <= _SAME and row["angle"] == angle:
                return FlatHead(
                    row["size"], _must(row, "D", "in"), _must(row, "A_most", "in"), _si(row, "A_least", "in"),
                    _must(row, "H", "in"), float(row["angle"]), self._source("fasteners", row), _basis(row),
                )  # fmt: skip
        return None

    def bolt_edge(self, diameter: float) -> BoltEdge | None:
        """The tabulated least edge distance of a bolt of `diameter` mm; None below 1/2 in, where the table starts."""
        for row in self._rows("holes", "bolt_edges"):
            if abs(_must(row, "D", "in") - diameter) <= _SAME:
                sizes = (_must(row, "D", "in"), _must(row, "edge", "in"))
                return BoltEdge(row["bolt"], *sizes, self._source("holes", row), _basis(row))
        return None

    def panel_core(self, name: str) -> PanelCore:
        """What a panel is made of, by the word of the plan."""
        row = self._named("panels", "rows", name, "panel core")
        grown = (row["grows"], row["from"], row["to"]) if "grows" in row else None
        source = self._source("panels", row)
        damp = self._source("panels", {"source": row.get("moisture_source", row["source"])})
        return PanelCore(
            name, row.get("expansion"), row["drinks"], row.get("swells"), grown, source,
            f"{damp}, from memory" if "swells" in row.get("from_memory", ()) else damp, _basis(row),
        )  # fmt: skip

    def bending_yield(self, diameter: float) -> float:
        """F_yb, MPa, of a screw of nominal `diameter` mm. Raises OutsideRulebook below the first published band."""
        for row in self._rows("fasteners", "bending_yield"):
            if _must(row, "above", "in") < diameter <= _must(row, "most", "in") + _BAND:
                return _must(row, "F_yb", "psi")
        raise outside("screw size")

    def names(self, table: str, part: str = "rows") -> tuple[str, ...]:
        """The names of a table's rows, in the order of the file."""
        return tuple(str(row.get("name", row.get("size", row.get("gauge")))) for row in self._rows(table, part))

    def _rows(self, table: str, part: str) -> list[Row]:
        rows: list[Row] = self.data[table][part]
        return rows

    def _named(self, table: str, part: str, name: str, what: str, key: str = "name") -> Row:
        for row in self._rows(table, part):
            if row[key] == name:
                return row
        raise NotPossible(f"{name} is not a {what} of the tables")

    def _angles(self) -> Iterator[Row]:
        yield from self._rows("angles", "rows")
        yield from self._rows("angles", "bar_sizes")

    def _source(self, table: str, row: Row) -> str:
        source = self.data[table]["sources"][row["source"]]
        return f"{source['title']}, {source['clause']}"

    def _wood_screw(self, row: Row) -> Fastener:
        diameter = _must(row, "D", "in")
        return Fastener(
            "wood screw", f"No. {row['gauge']}", diameter, _must(row, "D_r", "in"), 2 * diameter,
            self.bending_yield(diameter), _si(row, "head", "in"), None, self._source("fasteners", row), _basis(row),
        )  # fmt: skip

    def _lag_screw(self, row: Row) -> Fastener:
        diameter = _must(row, "D", "in")
        return Fastener(
            "lag screw", row["size"], diameter, _must(row, "D_r", "in"), _must(row, "E", "in"),
            self.bending_yield(diameter), _si(row, "across_flats", "in"), _si(row, "head_height", "in"),
            self._source("fasteners", row), _basis(row),
        )  # fmt: skip

    def _angle(self, row: Row, long_leg: float, short_leg: float, thickness: float) -> AngleRow:
        return AngleRow(
            row["name"], long_leg, short_leg, thickness, to_si(row["weight"], "lb") / to_si(1, "ft"),
            _si(row, "A", "in²"), _si(row, "I_x", "in⁴"), _si(row, "S_x", "in³"), _si(row, "y", "in"),
            _si(row, "I_y", "in⁴"), _si(row, "S_y", "in³"), _si(row, "x", "in"), _si(row, "r_z", "in"),
            _si(row, "Z_x", "in³"), _si(row, "J", "in⁴"), _si(row, "k", "in"), self._source("angles", row), _basis(row),
        )  # fmt: skip


def _must(row: Row, key: str, unit: str) -> float:
    return to_si(row[key], unit)


def _si(row: Row, key: str, unit: str) -> float | None:
    value = row.get(key)
    return None if value is None else to_si(value, unit)


def _basis(row: Row) -> Basis:
    """What the row rests on. Columns of it that rest on less are listed in the file under `from_memory`."""
    basis: Basis = row["basis"]
    return basis
