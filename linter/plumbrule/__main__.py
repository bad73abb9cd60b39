"""`python -m plumbrule`: the same as the command `plumbrule`."""

import sys

from plumbrule.cli import main

if __name__ == "__main__":
    sys.exit(main())
