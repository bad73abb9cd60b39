"""Where rules, schemas and base plans are: beside the sources in a checkout, inside the package in a wheel."""

from __future__ import annotations

from pathlib import Path

_PACKAGE = Path(__file__).resolve().parent
_CHECKOUT = _PACKAGE.parent.parent


def folder(name: str) -> Path:
    """The folder `rules`, `schema` or `plans`. In a checkout it is the one that is edited and committed, and no other
    place is asked: a copy inside the package, whoever left it there, never shadows an edited rule.

    Raises FileNotFoundError where it is missing: the installation is broken.
    """
    in_checkout = (_CHECKOUT / "pyproject.toml").is_file() and (_CHECKOUT / "linter" / "plumbrule") == _PACKAGE
    place = (_CHECKOUT if in_checkout else _PACKAGE) / name
    if not place.is_dir():
        raise FileNotFoundError(f"plumbrule is not fully installed: {place} is missing. Install it again.")
    return place
