"""Prints what build/tidy compiles of the named folders (core, ui, app): in a unity build several sources
in one go, and by itself what packaging/cmake/apart.txt names. Nothing that moc or the embedding makes.
With `--some N` before the folders only N of them: first what the last commits changed, then others in
turn, so that each commit sees others."""
import json
import os
import re
import sys

from turns import git, in_turn


def all_of(folders):
    root = re.escape(os.getcwd() + "/")
    goes = {"core": r"saltloft_core_\w+", "ui": r"saltloft_ui_\w+", "app": "saltloft"}
    ours = re.compile(root + r"((%s)/|build/tidy/(app/)?CMakeFiles/(%s)\.dir/Unity/)" % (
        "|".join(folders), "|".join(goes[folder] for folder in folders)))
    with open("build/tidy/compile_commands.json") as file:
        return [entry["file"] for entry in json.load(file) if ours.match(entry["file"])]


def sources_of(compiled):
    """The sources that one file compiles: those it includes, or itself."""
    if "/Unity/" not in compiled:
        return {compiled}
    with open(compiled) as file:
        return set(re.findall(r'#include "(/.*)"', file.read()))


def some(count, files):
    changed = {os.path.abspath(name) for name in
               git("log", "-10", "--name-only", "--format=").splitlines()}
    return sorted(in_turn(files, count), key=lambda file: not sources_of(file) & changed)[:count]


arguments = sys.argv[1:]
if arguments[0] == "--some":
    chosen = some(int(arguments[1]), all_of(arguments[2:]))
else:
    chosen = all_of(arguments)
print("\n".join(chosen))
