"""What a wheel holds, and that it works by itself: outside the checkout, with its own rules, schemas and plans."""

from __future__ import annotations

import json
import zipfile
from pathlib import Path

from packages import files_in

DATA = ("rules", "schema", "plans")

# Prints every file that an inspection opens, after the exit code.
OPENED = """
import contextlib, io, json, sys
opened = []
sys.addaudithook(lambda event, args: opened.append(str(args[0])) if event == "open" else None)
from plumbrule.cli import main
said = io.StringIO()
with contextlib.redirect_stdout(said):
    code = main(sys.argv[1:])
print(json.dumps([code, said.getvalue(), opened]))
"""


def in_checkout(checkout: Path) -> dict[str, bytes]:
    """Every file that belongs in the wheel, by the name it has there."""
    wanted = {}
    for folder, inside in {"linter/plumbrule": "plumbrule", **{name: f"plumbrule/{name}" for name in DATA}}.items():
        for path in sorted((checkout / folder).rglob("*")):
            name = path.relative_to(checkout / folder)
            left_out = any(part.startswith(".") or part == "__pycache__" for part in name.parts)
            if path.is_file() and not left_out:
                wanted[f"{inside}/{name.as_posix()}"] = path.read_bytes()
    return wanted


def test_the_wheel_holds_the_package_and_its_data_and_nothing_else(built, checkout):
    inside = {name: content for name, content in files_in(built.wheel).items() if "/." not in name}
    assert inside == in_checkout(checkout)


def test_what_must_not_be_forgotten_is_in_the_wheel(built):
    inside = files_in(built.wheel)
    for name in (
        "py.typed",
        "rules/compiled.json",
        "rules/sources.yaml",
        "rules/tables/compiled.json",
        "schema/plan.schema.json",
        "schema/report.schema.json",
        "plans/alcove-seat.yaml",
    ):
        assert f"plumbrule/{name}" in inside
    for trade in ("framing", "steel"):
        assert [name for name in inside if name.startswith(f"plumbrule/rules/{trade}/")]
    assert len([name for name in inside if name.startswith("plumbrule/plans/faulty/")]) >= 12
    tests = [name for name in inside if "/tests/" in name or name.split("/")[-1].startswith(("test_", "conftest"))]
    assert not tests and not [name for name in inside if "__pycache__" in name]


def test_the_wheel_names_its_command_its_licence_and_what_it_needs(built):
    with zipfile.ZipFile(built.wheel) as wheel:
        records = {name.partition(".dist-info/")[2]: wheel.read(name).decode() for name in wheel.namelist()}
    assert "plumbrule = plumbrule.cli:main" in records["entry_points.txt"]
    assert records["licenses/LICENSE"].startswith("MIT License")
    required = {line.split()[1] for line in records["METADATA"].splitlines() if line.startswith("Requires-Dist")}
    assert any(name.startswith("pydantic") for name in required)


def test_the_wheel_of_the_source_archive_is_the_same(built):
    assert files_in(built.wheel_of_sdist) == files_in(built.wheel)


def test_the_compiled_rules_of_the_wheel_are_of_its_own_files(outside):
    script = (
        "from plumbrule import shipped; from plumbrule.rulebook.compiled import load_compiled; "
        "from plumbrule.mechanics.table_files import read_compiled, table_folder; "
        "rules = load_compiled(shipped.folder('rules')); assert rules is not None and rules[0]; "
        "assert read_compiled(table_folder())"
    )
    done = outside("-c", script)
    assert done.returncode == 0, done.stderr


def test_python_m_plumbrule_inspects_a_base_plan_from_anywhere(outside, installed):
    plan = installed / "plumbrule" / "plans" / "alcove-seat.yaml"
    done = outside("-m", "plumbrule", "inspect", plan, "--format", "json")
    assert done.returncode == 0, done.stderr
    (entry,) = json.loads(done.stdout)["plans"]
    assert entry["verdict"] == "pass"
    assert entry["tally"]["holds"] > 0


def test_the_wheel_reads_nothing_of_the_checkout(outside, installed, checkout):
    plan = installed / "plumbrule" / "plans" / "alcove-seat.yaml"
    done = outside("-c", OPENED, "inspect", plan)
    assert done.returncode == 0, done.stderr
    code, said, opened = json.loads(done.stdout)
    assert code == 0, said
    ours = [str(checkout / name) for name in ("linter", *DATA)]
    assert str(installed / "plumbrule" / "rules" / "compiled.json") in opened
    assert not [name for name in opened if name.startswith(tuple(ours))]


def test_a_wheel_without_its_rules_says_so(outside, installed, tmp_path):
    script = (
        "import pathlib, plumbrule.shipped as s; s._PACKAGE = pathlib.Path('empty'); "
        "s.folder('rules')"
    )  # fmt: skip
    done = outside("-c", script)
    assert "plumbrule is not fully installed" in done.stderr
    assert "rules is missing. Install it again." in done.stderr
