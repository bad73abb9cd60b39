"""Every rule on every row: holds, breaks, not inspected, allowed, failed."""
