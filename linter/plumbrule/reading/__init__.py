"""Text in, values with places out: YAML policy, trade notation, faults that say what to write instead."""
