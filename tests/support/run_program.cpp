#include "tests/support/run_program.h"

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <stdexcept>
#include <sys/wait.h>
#include <unistd.h>

namespace tests::support {
namespace {

std::string quoted(const std::string& word) {
    std::string out = "'";
    for (const char c : word) {
        out += c == '\'' ? std::string("'\\''") : std::string(1, c);
    }
    return out + "'";
}

std::string text_of(const std::filesystem::path& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

} // namespace

ProgramRun run_program(const std::vector<std::string>& arguments) {
    const char* program = std::getenv("SALTLOFT_BIN");
    if (program == nullptr) {
        throw std::runtime_error("SALTLOFT_BIN is not set: run this test through ctest");
    }
    static int runs = 0;
    const auto stem = std::filesystem::temp_directory_path() /
                      ("saltloft_run_" + std::to_string(::getpid()) + "_" + std::to_string(runs++));
    const std::string out = stem.string() + ".out";
    const std::string err = stem.string() + ".err";
    std::string command = "env -u DISPLAY -u WAYLAND_DISPLAY " + quoted(program);
    for (const auto& argument : arguments) {
        command += " " + quoted(argument);
    }
    command += " >" + quoted(out) + " 2>" + quoted(err) + " </dev/null";
    const int status = std::system(command.c_str());
    ProgramRun run{WIFEXITED(status) ? WEXITSTATUS(status) : -1, text_of(out), text_of(err)};
    std::filesystem::remove(out);
    std::filesystem::remove(err);
    return run;
}

} // namespace tests::support
