"""plumbrule: reads the plan of a wall-hung seat, shelf or panelled wall and says what would fail, and why."""

__version__ = "0.1.0"
