"""One inspection, many readers: text, JSON, SARIF, JUnit. Nothing here computes."""
