// What the guide says of the command line is what the program has: every verb and every option it
// names stands in the program's own help, and nothing of the help is left out.
#include "tests/support/run_program.h"

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <map>
#include <regex>
#include <set>
#include <sstream>

namespace {

namespace fs = std::filesystem;
using tests::support::run_program;

const fs::path guide = fs::path(SALTLOFT_SOURCE_DIR) / "resources/guide";

std::string text_of(const fs::path& path) {
    std::ifstream file(path);
    std::ostringstream text;
    text << file.rdbuf();
    // A command goes on after a backslash at the end of its line.
    return std::regex_replace(text.str(), std::regex(R"(\\\n\s*)"), "");
}

std::set<std::string> all_of(const std::string& text, const std::string& form) {
    std::set<std::string> found;
    const std::regex pattern(form);
    for (std::sregex_iterator it(text.begin(), text.end(), pattern), end; it != end; ++it) {
        found.insert((*it)[1]);
    }
    return found;
}

/// Options of a verb as its --help lists them; the program's own for "".
std::set<std::string> options_of(const std::string& verb) {
    static std::map<std::string, std::set<std::string>> known;
    if (known.find(verb) == known.end()) {
        const auto run = verb.empty() ? run_program({"--help"}) : run_program({verb, "--help"});
        EXPECT_EQ(run.exit_code, 0) << verb;
        known[verb] = all_of(run.out, R"([\s,](--[a-z-]+))");
    }
    return known[verb];
}

std::set<std::string> verbs() {
    const auto help = run_program({"--help"}).out;
    return all_of(help.substr(help.find("Subcommands:")), R"(\n {2}([a-z-]+) )");
}

struct Named {
    std::string file;
    std::string verb; ///< empty: the window
    std::string rest;
};

/// Each "saltloft ..." in the chapters of all languages, in code blocks and in the text.
std::vector<Named> commands() {
    std::vector<Named> found;
    for (const auto& entry : fs::recursive_directory_iterator(guide)) {
        if (entry.path().extension() != ".md") {
            continue;
        }
        const std::string text = text_of(entry.path());
        const std::regex command(R"((?:^|\n|`)saltloft( [^`\n]*))");
        for (std::sregex_iterator it(text.begin(), text.end(), command), end; it != end; ++it) {
            const std::string rest = (*it)[1];
            std::smatch verb;
            const bool has = std::regex_search(rest, verb, std::regex(R"(^ ([a-z][a-z-]+))"));
            found.push_back(
                {fs::relative(entry.path(), guide).string(), has ? verb[1].str() : "", rest});
        }
    }
    return found;
}

} // namespace

TEST(GuideCommands, EveryVerbAndOptionNamedIsThere) {
    const auto known = verbs();
    ASSERT_GE(known.size(), 12U);
    int seen = 0;
    for (const auto& [file, verb, rest] : commands()) {
        if (rest.find("VERB") != std::string::npos) {
            continue;
        }
        ++seen;
        if (!verb.empty()) {
            ASSERT_TRUE(known.count(verb)) << file << ": saltloft" << rest;
        }
        for (const auto& option : all_of(rest, R"(\s(--[a-z-]+))")) {
            EXPECT_TRUE(options_of(verb).count(option)) << file << ": saltloft" << rest;
        }
    }
    EXPECT_GT(seen, 20);
}

// The chapter has a section for each verb ("## export and import" for two), which names each of
// its options and no other.
TEST(GuideCommands, TheChapterNamesEveryOptionOfEveryVerb) {
    std::stringstream text(text_of(guide / "command-line.md"));
    std::map<std::string, std::string> section; // verb -> text
    std::vector<std::string> current;
    for (std::string line; std::getline(text, line);) {
        if (line.rfind("## ", 0) == 0) {
            current.clear();
            for (const auto& word : all_of(line, R"(([a-z-]+))")) {
                if (word != "and") {
                    current.push_back(word);
                }
            }
            for (const auto& verb : current) {
                section[verb];
            }
        }
        for (const auto& verb : current) {
            section[verb] += line + "\n";
        }
    }
    const auto known = verbs();
    std::map<std::string, std::set<std::string>> together; // options of all verbs of a section
    for (const auto& [verb, words] : section) {
        EXPECT_TRUE(known.count(verb)) << "a section for no verb: " << verb;
        for (const auto& option : options_of(verb)) {
            together[words].insert(option);
        }
    }
    for (const auto& verb : known) {
        ASSERT_TRUE(section.count(verb)) << "no section for " << verb;
        const auto named = all_of(section[verb], R"([\s`](--[a-z-]+))");
        for (const auto& option : options_of(verb)) {
            EXPECT_TRUE(option == "--help" || named.count(option))
                << verb << " has " << option << ", which the chapter leaves out";
        }
        for (const auto& option : named) {
            EXPECT_TRUE(together[section[verb]].count(option)) << verb << " has no " << option;
        }
    }
}

TEST(GuideCommands, ExamplesThatNeedNoFileRun) {
    int run = 0;
    for (const auto& [file, verb, rest] : commands()) {
        if (verb != "air" && verb != "cure-time" && verb != "water-activity") {
            continue;
        }
        std::vector<std::string> words;
        std::istringstream stream(rest);
        for (std::string word; stream >> word;) {
            words.push_back(word);
        }
        const auto result = run_program(words);
        EXPECT_EQ(result.exit_code, 0) << file << ": saltloft" << rest << "\n" << result.err;
        ++run;
    }
    EXPECT_GE(run, 4);
}

TEST(GuideCommands, TheRecipeOfTheChapterIsRead) {
    const std::string text = text_of(guide / "command-line.md");
    const auto from = text.find("{\"saltloft_recipe\"");
    ASSERT_NE(from, std::string::npos);
    const fs::path path = fs::path(::testing::TempDir()) / "saltloft_guide_recipe.json";
    std::ofstream(path) << text.substr(from, text.find("```", from) - from);
    const auto result = run_program({"mix", "--recipe", path.string(), "--meat", "1500g",
                                     "--scale-step", "0.1g", "--limits", "eu-raw"});
    EXPECT_NE(result.exit_code, 2) << result.err;
    EXPECT_NE(result.exit_code, 3) << result.err;
    EXPECT_NE(result.out.find("37.5"), std::string::npos) << result.out;
    fs::remove(path);
}
