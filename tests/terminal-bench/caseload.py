"""How long a large caseload takes to open."""


def report(program, folder, sizes, runs):
    """Prints a table of sizes and times."""
