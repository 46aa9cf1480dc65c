#pragma once

#include <gtest/gtest.h>

#include <array>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <sstream>
#include <string>
#include <sys/wait.h>
#include <unistd.h>

/// Runs the built program as a shell would, with both outputs kept apart.
namespace tests::cli {

struct Ran {
    int code = -1;
    std::string out;
    std::string err;
};

inline Ran run_program(const std::string& arguments) {
    const char* program = std::getenv("SALTLOFT_BIN");
    EXPECT_NE(program, nullptr) << "ctest sets SALTLOFT_BIN";
    const std::string errors = testing::TempDir() + "saltloft-err-" + std::to_string(getpid());
    const std::string line = "'" + std::string(program == nullptr ? "false" : program) + "' " +
                             arguments + " 2>'" + errors + "'";
    Ran ran;
    FILE* pipe = popen(line.c_str(), "r");
    std::array<char, 4096> buffer{};
    while (std::fgets(buffer.data(), static_cast<int>(buffer.size()), pipe) != nullptr) {
        ran.out += buffer.data();
    }
    ran.code = WEXITSTATUS(pclose(pipe));
    std::ostringstream read;
    read << std::ifstream(errors).rdbuf();
    ran.err = read.str();
    std::remove(errors.c_str());
    return ran;
}

} // namespace tests::cli
