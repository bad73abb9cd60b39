"""Lines of a given width: labelled paragraphs, things set left and right, and colour only where it was asked for."""

from __future__ import annotations

from collections.abc import Sequence

NARROWEST, WIDEST = 60, 100
_CODES = {"red": "31", "green": "32", "yellow": "33", "bold": "1", "dim": "2"}
_LABEL = 9
JOIN = "\N{NO-BREAK SPACE}"  # where a line must not be broken, until it is printed


class Paper:
    """What has been written so far. No line is wider than `width`, escape codes not counted."""

    def __init__(self, width: int = WIDEST, colour: bool = False) -> None:
        self.width = max(NARROWEST, min(WIDEST, width))
        self.colour = colour
        self._lines: list[str] = []

    def text(self) -> str:
        """Everything, each line ended; blank lines at the end are dropped."""
        while self._lines and not self._lines[-1]:
            self._lines.pop()
        return "".join(f"{line}\n" for line in self._lines)

    def ink(self, text: str, *tones: str) -> str:
        """`text` in these tones, where colour was asked for."""
        if not self.colour or not tones or not text:
            return text
        return f"\x1b[{';'.join(_CODES[tone] for tone in tones)}m{text}\x1b[0m"

    def blank(self) -> None:
        """One empty line, never two."""
        if self._lines and self._lines[-1]:
            self._lines.append("")

    def rule(self) -> None:
        """A line across."""
        self._lines.append(self.ink("-" * self.width, "dim"))

    def line(self, text: str, *tones: str, indent: int = 0, hang: int = 0) -> None:
        """A paragraph, wrapped; its later lines stand `hang` columns further in."""
        for number, piece in enumerate(wrap(text, self.width - indent - hang, hang)):
            self._lines.append(" " * (indent + (hang if number else 0)) + self.ink(piece, *tones))

    def apart(self, left: str, right: str, *tones: str, indent: int = 0) -> None:
        """Two texts on one line, the second to the right edge; below each other where they do not fit."""
        if not right:
            self.line(left, *tones, indent=indent, hang=3)
            return
        room = self.width - indent - len(left) - len(right)
        if room >= 2:
            self._lines.append(" " * indent + self.ink(left, *tones) + " " * room + right)
            return
        self.line(left, *tones, indent=indent, hang=3)
        for piece in wrap(right, self.width - indent - 3):
            self._lines.append(piece.rjust(self.width))

    def labelled(self, label: str, text: str, *tones: str, indent: int = 3) -> None:
        """A label and its paragraph beside it."""
        if not text:
            return
        self.rows(label, wrap(text, self.width - indent - _LABEL), *tones, indent=indent)

    def rows(self, label: str, rows: Sequence[str], *tones: str, indent: int = 3) -> None:
        """A label and lines that are already of the right width beside it."""
        for number, row in enumerate(rows):
            head = f"{label if not number else '':<{_LABEL}}"
            if len(head) > _LABEL or not head.endswith(" "):
                self._lines.append(" " * indent + self.ink(head, *tones))
                head = " " * _LABEL
            self._lines.append(
                (" " * indent + self.ink(head.rstrip(), *tones) + head[len(head.rstrip()) :] + row).rstrip()
            )

    def room(self, indent: int = 3) -> int:
        """Columns beside a label."""
        return self.width - indent - _LABEL


def wrap(text: str, width: int, first: int = 0) -> list[str]:
    """Lines of at most `width` columns (the first may be `first` wider), broken between words. A word that is wider
    than a line by itself is cut, so that nothing runs out of the page; what `JOIN` binds stays together."""
    width = max(width, 1)
    lines: list[str] = []
    line = ""
    for word in text.split(" "):
        room = width + (first if not lines else 0)
        if line and len(line) + 1 + len(word) > room:
            lines.append(line)
            line, room = "", width
        while len(word) > room:
            if line:
                lines.append(line)
                line, room = "", width
                continue
            lines.append(word[:room])
            word, room = word[room:], width
        line = f"{line} {word}" if line else word
    if line or not lines:
        lines.append(line)
    return [line.replace(JOIN, " ") for line in lines]
