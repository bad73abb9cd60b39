"""The plan format, version 1: its words, its models, and the names that must exist."""
