"""Rules as data: read, checked against the catalogue, settings applied, compiled."""
