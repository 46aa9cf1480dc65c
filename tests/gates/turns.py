"""A part of a long list that is another one at each commit, so that in time all have their turn."""
import subprocess


def git(*arguments):
    """What git says; nothing where there is no repository."""
    return subprocess.run(("git",) + arguments, text=True, stdout=subprocess.PIPE,
                          stderr=subprocess.DEVNULL).stdout


def in_turn(items, count):
    """All items, beginning with the `count` whose turn it is."""
    first = int(git("rev-list", "--count", "HEAD").strip() or 0) * count % len(items)
    return items[first:] + items[:first]
