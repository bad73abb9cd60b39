"""DEVELOPERS.md shows a rule that works, and names nothing that is not there."""

from __future__ import annotations

import contextlib
import io
import re
import tomllib

from plumbrule.cli import main


def text(checkout):
    return (checkout / "DEVELOPERS.md").read_text("utf-8")


def test_the_rule_in_it_proves_itself_and_can_be_used(checkout, tmp_path):
    rule, sources = re.findall(r"^```yaml\n(.*?)^```$", text(checkout), re.MULTILINE | re.DOTALL)
    (tmp_path / "steel").mkdir()
    (tmp_path / "steel" / "steel-too-long-for-the-van.yaml").write_text(rule)
    (tmp_path / "sources.yaml").write_text(sources)
    said = io.StringIO()
    with contextlib.redirect_stdout(said):
        assert main(["rulebook", "--check", str(tmp_path)]) == 0
        plan = checkout / "plans" / "display-shelf.yaml"
        assert main(["inspect", str(plan), "--rules", str(tmp_path)]) == 0
    assert "4 examples came out as written" in said.getvalue()


def test_every_file_and_folder_it_names_is_there(checkout):
    named = set(re.findall(r"`([a-z][a-z_/.-]*/[a-zA-Z_*./-]*)`", text(checkout))) - {"rules/<trade>/<id>.yaml"}
    assert len(named) > 15
    for name in named:
        places = [checkout, checkout / "linter" / "plumbrule"]
        assert any(list(place.glob(name.rstrip("/"))) for place in places), name


def test_every_package_has_its_line(checkout):
    contract = tomllib.loads((checkout / "pyproject.toml").read_text("utf-8"))["tool"]["importlinter"]["contracts"][0]
    packages = {name.strip() for layer in contract["layers"] for name in layer.split("|")} - {"shipped"}
    table = {name for row in re.findall(r"^\| (`.*?) \|", text(checkout), re.MULTILINE) for name in row.split(", ")}
    assert {f"`{name}`" for name in packages} <= table
