"""The day on which departures are judged: as asked for, else SOURCE_DATE_EPOCH, else the clock."""

from __future__ import annotations

import os
from datetime import UTC, date, datetime

from plumbrule.cli.stream import Refused


def today(asked: date | None) -> date:
    """Raises Refused for a SOURCE_DATE_EPOCH that is no number of seconds."""
    if asked is not None:
        return asked
    epoch = os.environ.get("SOURCE_DATE_EPOCH", "")
    if not epoch:
        return date.today()
    try:
        return datetime.fromtimestamp(int(epoch), UTC).date()
    except (ValueError, OverflowError, OSError):
        raise Refused("SOURCE_DATE_EPOCH is not a whole number of seconds. Unset it, or use --today.") from None
