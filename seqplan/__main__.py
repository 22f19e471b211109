"""`python -m seqplan` is the same as `seqplan`."""

from seqplan.cli.app import main

main()
