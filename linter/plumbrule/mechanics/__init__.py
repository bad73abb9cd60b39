"""Published formulas. Numbers in, a worked value out; nothing here knows a plan or a rule."""
