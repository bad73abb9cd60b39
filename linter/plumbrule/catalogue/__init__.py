"""What can be measured: the row types and their fields, which rules may read and facts fill."""
