"""Tries the faults of mutants.txt: see mutants.sh.

What the tests are built from stays as it is. A changed copy of one file is compiled in the place of the
real one, where the layer or the test itself holds it; the test is linked with that and run. So a fault
costs a compilation or two, and nothing has to be put back.
"""
import json
import os
import re
import shlex
import shutil
import subprocess
import sys
from concurrent.futures import ThreadPoolExecutor

from turns import in_turn

BUILD = os.path.abspath(sys.argv[1])
JOBS = int(sys.argv[2])
ROOT = os.getcwd()
WORK = os.path.join(BUILD, "mutants")
ENVIRONMENT = dict(os.environ, SALTLOFT_BIN=os.path.join(BUILD, "app/saltloft"),
                   GCOV_PREFIX=os.path.join(WORK, "counts"))


def run(command, **more):
    return subprocess.run(command, cwd=BUILD, env=ENVIRONMENT, text=True,
                          stdout=subprocess.PIPE, stderr=subprocess.STDOUT, **more)


def wanted_lines(choice):
    with open("tests/gates/mutants.txt") as file:
        lines = [line.rstrip("\n") for line in file if line.strip() and not line.startswith("#")]
    if choice[:1] == ["--some"]:
        return in_turn(lines, int(choice[1]))[:int(choice[1])]
    return [line for line in lines if not choice or choice[0] in line]


def needed_files():
    """What each object was compiled from, by ninja's own record."""
    needs, object_ = {}, None
    for line in run(["ninja", "-t", "deps"]).stdout.splitlines():
        if line.startswith("    "):
            needs[object_].add(os.path.normpath(os.path.join(BUILD, line.strip())))
        elif line:
            object_ = line.split(":")[0]
            needs[object_] = set()
    return needs


def compile_commands():
    with open(os.path.join(BUILD, "compile_commands.json")) as file:
        entries = json.load(file)
    return {re.search(r" -o (\S+)", e["command"]).group(1): e for e in entries}


def tests_ran(executable, tests, log):
    """True where they passed, False where one is red; None where there was none."""
    result = run(["timeout", "900", executable, "--gtest_filter=" + tests, "--gtest_fail_fast"])
    with open(log, "w") as file:
        file.write(result.stdout)
    if result.returncode == 0 and not re.search(r"PASSED  \] [1-9]", result.stdout):
        return None
    return result.returncode == 0


def found_by(log):
    with open(log, errors="replace") as file:
        red = re.search(r"FAILED  \] ([\w/]+\.[\w/]+)", file.read())
    return red.group(1) if red else "a crash"


class Mutant:
    def __init__(self, number, line):
        self.file, self.expression, self.test, self.filter, self.what = line.split(" ;; ")
        self.folder = os.path.join(WORK, str(number))
        # Below a folder of its own and named as the real one: an #include finds it first.
        self.changed = os.path.join(self.folder, self.file)
        self.real = os.path.join(ROOT, self.file)

    def verdict(self, needs, commands):
        shutil.rmtree(self.folder, ignore_errors=True)
        os.makedirs(os.path.dirname(self.changed))
        with open(self.changed, "w") as file:
            subprocess.run(["sed", self.expression, self.real], stdout=file, check=True)
        with open(self.changed) as one, open(self.real) as other:
            if one.read() == other.read():
                return False, "NO LONGER FITS"
        layer = "saltloft_" + "_".join(self.file.split("/")[:2])
        objects = [o for o, files in needs.items() if self.real in files and
                   ("/%s.dir/" % self.test in o or o.startswith("CMakeFiles/%s.dir/" % layer))]
        made = {o: self.compiled(o, commands[o]) for o in objects}
        if not objects or not all(made.values()):
            return False, "does not compile"
        executable = self.linked(layer, made)
        if not executable:
            return False, "does not link"
        log = os.path.join(self.folder, "test.log")
        if tests_ran(executable, self.filter, log) is not False:  # no test at all finds nothing
            return False, "SURVIVED"
        return True, "found by " + found_by(log)

    def compiled(self, object_, entry):
        source = self.changed if entry["file"] == self.real else self.with_changed(entry["file"])
        out = os.path.join(self.folder, object_.replace("/", "_"))
        command = re.sub(r" -o \S+ -c \S+", " -o %s -c %s" % (shlex.quote(out), shlex.quote(source)),
                         entry["command"])
        command = command.replace(" -I" + ROOT, " -I%s -I%s" % (self.folder, ROOT), 1)
        result = run(command, shell=True)
        with open(out + ".log", "w") as file:
            file.write(result.stdout)
        return out if result.returncode == 0 else None

    def with_changed(self, several_in_one):
        """A file that includes several sources by their full names (a unity build), ours among them."""
        with open(several_in_one) as file:
            text = file.read()
        if self.real not in text:
            return several_in_one
        out = os.path.join(self.folder, os.path.basename(several_in_one))
        with open(out, "w") as file:
            file.write(text.replace('"%s"' % self.real, '"%s"' % self.changed))
        return out

    def linked(self, layer, made):
        """The test's own link command, with our objects in the place of the real ones."""
        target = "tests/" + self.test
        command = run(["ninja", "-t", "commands", "-s", target]).stdout.strip().splitlines()[-1]
        library = "lib%s.a" % layer
        ours = os.path.join(self.folder, library)
        replaced = [o for o in made if o.startswith("CMakeFiles/%s.dir/" % layer)]
        if replaced:
            shutil.copy(os.path.join(BUILD, library), ours)
            for object_ in replaced:
                # A member has the name of its object alone; two objects of one name do not occur.
                member = os.path.join(self.folder, os.path.basename(object_))
                os.replace(made[object_], member)
                if run(["ar", "r", ours, member]).returncode != 0:
                    return None
            command = re.sub(r"(?<=\s)\S*%s(?=\s)" % re.escape(library), ours, command)
        for object_, out in made.items():
            if object_ not in replaced:
                command = command.replace(" %s " % object_, " %s " % out)
        executable = os.path.join(self.folder, self.test)
        command = command.replace(" -o %s " % target, " -o %s " % executable)
        return executable if run(command, shell=True).returncode == 0 else None


def main():
    mutants = [Mutant(n, line) for n, line in enumerate(wanted_lines(sys.argv[3:]))]
    if not mutants:
        sys.exit("no line of mutants.txt holds that word")
    os.makedirs(WORK, exist_ok=True)
    targets = sorted({"tests/" + m.test for m in mutants} | {"app/saltloft"})
    build = run(["ninja", "-j", str(JOBS)] + targets)
    if build.returncode != 0:
        sys.exit(build.stdout[-3000:])
    for test, tests in sorted({(m.test, m.filter) for m in mutants}):
        log = os.path.join(WORK, "unharmed.log")
        if not tests_ran(os.path.join(BUILD, "tests", test), tests, log):
            with open(log, errors="replace") as file:
                print(file.read()[-3000:])
            sys.exit("%s is red, or empty, before any fault" % test)
    needs, commands = needed_files(), compile_commands()
    found = 0
    with ThreadPoolExecutor(JOBS) as pool:
        verdicts = pool.map(lambda m: m.verdict(needs, commands), mutants)
        for mutant, (is_found, words) in zip(mutants, verdicts):
            found += is_found
            print("%s: %s: %s" % (words, mutant.file, mutant.what), flush=True)
    print("%d found, %d not" % (found, len(mutants) - found))
    sys.exit(0 if found == len(mutants) else 1)


main()
