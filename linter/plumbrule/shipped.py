"""Where rules, schemas and base plans are: beside the sources in a checkout, inside the package in a wheel."""

from __future__ import annotations

from pathlib import Path

_PACKAGE = Path(__file__).resolve().parent
_CHECKOUT = _PACKAGE.parent.parent


def folder(name: str) -> Path:
    """The folder `rules`, `schema` or `plans`. A checkout wins over the copy an editable install may have left
    in the package, so an edited rule is never shadowed by a stale twin.

    Raises FileNotFoundError when neither place has it: the installation is broken.
    """
    if (_CHECKOUT / "pyproject.toml").is_file() and (_CHECKOUT / "linter" / "plumbrule") == _PACKAGE:
        places = [_CHECKOUT / name]
    else:
        places = [_PACKAGE / name]
    for place in places:
        if place.is_dir():
            return place
    raise FileNotFoundError(f"plumbrule is not fully installed: {places[0]} is missing. Install it again.")
