// The layer check: every #include of ours follows an arrow of tests/lint/layers.txt, the arrows
// make no cycle, and the libraries that only one layer may know are included nowhere else.
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <set>
#include <sstream>
#include <string>
#include <vector>

namespace fs = std::filesystem;

namespace {

const fs::path root = SALTLOFT_SOURCE_DIR;

struct Layers {
    std::vector<std::string> order;
    std::map<std::string, std::set<std::string>> uses;
};

Layers read_layers() {
    Layers layers;
    std::ifstream file(root / "tests/lint/layers.txt");
    for (std::string line; std::getline(file, line);) {
        if (line.empty() || line.front() == '#') {
            continue;
        }
        const auto colon = line.find(':');
        const std::string layer = line.substr(0, colon);
        std::istringstream words(line.substr(colon + 1));
        std::set<std::string> uses{layer};
        for (std::string word; words >> word;) {
            uses.insert(word);
        }
        layers.order.push_back(layer);
        layers.uses[layer] = uses;
    }
    return layers;
}

/// "core/units/mass.h" -> "core/units"; "app/cli/command.h" -> "app"; others -> "".
std::string layer_of(const std::string& path) {
    if (path.rfind("app/", 0) == 0) {
        return "app";
    }
    if (path.rfind("core/", 0) != 0 && path.rfind("ui/", 0) != 0) {
        return {};
    }
    return path.substr(0, path.find('/', path.find('/') + 1));
}

struct Include {
    std::string file;
    int line;
    std::string target;
};

std::vector<Include> includes_of_program() {
    static const std::regex pattern(R"(^\s*#\s*include\s*[<"]([^">]+)[">])");
    std::vector<Include> found;
    for (const char* top : {"core", "ui", "app"}) {
        for (const auto& entry : fs::recursive_directory_iterator(root / top)) {
            const auto extension = entry.path().extension();
            if (extension != ".h" && extension != ".cpp") {
                continue;
            }
            std::ifstream file(entry.path());
            int number = 0;
            for (std::string line; std::getline(file, line);) {
                ++number;
                std::smatch match;
                if (std::regex_search(line, match, pattern)) {
                    found.push_back({fs::relative(entry.path(), root).generic_string(), number,
                                     match[1].str()});
                }
            }
        }
    }
    return found;
}

/// No line below `top` matches, but for files named `but`.
void expect_nowhere(const char* top, const std::regex& pattern, const std::string& why,
                    const std::string& but = {}) {
    for (const auto& entry : fs::recursive_directory_iterator(root / top)) {
        if (!entry.is_regular_file() || entry.path().stem() == but) {
            continue;
        }
        std::ifstream file(entry.path());
        int number = 0;
        for (std::string line; std::getline(file, line);) {
            ++number;
            EXPECT_FALSE(std::regex_search(line, pattern))
                << entry.path() << ":" << number << ": " << why;
        }
    }
}

} // namespace

TEST(Layers, ArrowsOnlyPointUpTheList) {
    const Layers layers = read_layers();
    ASSERT_FALSE(layers.order.empty());
    std::set<std::string> above;
    for (const auto& layer : layers.order) {
        for (const auto& use : layers.uses.at(layer)) {
            EXPECT_TRUE(use == layer || above.count(use) == 1)
                << layer << " uses " << use << ", which is not above it";
        }
        above.insert(layer);
    }
}

TEST(Layers, EveryIncludeFollowsAnArrow) {
    const Layers layers = read_layers();
    const auto includes = includes_of_program();
    ASSERT_GT(includes.size(), 20U) << "the scan found too little to mean anything";
    for (const auto& include : includes) {
        const std::string from = layer_of(include.file);
        const std::string to = layer_of(include.target);
        if (to.empty()) {
            continue;
        }
        ASSERT_EQ(layers.uses.count(from), 1U) << include.file << " is in no known layer";
        EXPECT_EQ(layers.uses.at(from).count(to), 1U)
            << include.file << ":" << include.line << " includes " << include.target << ", but "
            << from << " may not use " << to;
    }
}

TEST(Layers, OnlyTheirOwnLayerKnowsALibrary) {
    struct Rule {
        std::regex header;
        std::set<std::string> layers;
        std::string why;
    };
    const std::vector<Rule> rules = {
        {std::regex("^(sqlite3\\.h|SQLiteCpp/.*)$"), {"core/store"}, "only the store knows SQLite"},
        {std::regex("^qcustomplot\\.h$"), {"ui/charts"}, "only the charts know QCustomPlot"},
        {std::regex("^gsl/.*$"), {"core/numeric"}, "GSL sits behind core/numeric"},
        {std::regex("^glpk\\.h$"), {"core/mix", "core/numeric"}, "the solver sits in core/mix"},
    };
    for (const auto& include : includes_of_program()) {
        for (const auto& rule : rules) {
            if (std::regex_match(include.target, rule.header)) {
                EXPECT_EQ(rule.layers.count(layer_of(include.file)), 1U)
                    << include.file << ":" << include.line << ": " << rule.why;
            }
        }
    }
}

TEST(Layers, CoreKnowsNoQtAndNoClock) {
    static const std::regex qt("^(Q[A-Z]\\w*|Qt\\w*/.*)$");
    for (const auto& include : includes_of_program()) {
        if (include.file.rfind("core/", 0) == 0) {
            EXPECT_FALSE(std::regex_match(include.target, qt))
                << include.file << ":" << include.line << " includes Qt";
        }
    }
    static const std::regex clock("(system_clock|steady_clock|high_resolution_clock)::now|"
                                  "\\bstd::time\\(|\\bgettimeofday\\b|\\blocaltime\\b");
    expect_nowhere("core", clock, "reads a clock; take `now` as an argument");
}

TEST(Layers, LongWorkStaysOffQtsOwnThreads) {
    static const std::regex foreign("QtConcurrent::run|QThreadPool::globalInstance");
    expect_nowhere("ui", foreign, "Qt paints on that pool and waits for it; use in_background()",
                   "background");
}
