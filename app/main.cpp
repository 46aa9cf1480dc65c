#include "app/cli/command.h"
#ifdef SALTLOFT_HAS_WINDOW
#include "app/window/open_window.h"
#endif

#include <string>

// A verb on the command line runs without a display; without one the window opens.
int main(int argc, char** argv) {
    CLI::App root{"Saltloft: plan, weigh and follow cured and air-dried meat"};
    root.set_version_flag("--version", std::string("saltloft ") + SALTLOFT_VERSION);
    root.require_subcommand(0, 1);
    std::string book;
    bool demo = false;
    // A desktop entry starts "saltloft --book" with no file when none was clicked.
    root.add_option("--book", book, "The book file to open (made if it is not there)")
        ->expected(0, 1);
    root.add_flag("--demo", demo, "Open a fresh, invented demonstration book in a temporary place");
    auto exit_code = app::cli::ExitCode::done;
    app::cli::register_all(root, exit_code);
#ifdef SALTLOFT_HAS_WINDOW
    root.allow_extras(); // Qt's own switches (-platform, -style) belong to QApplication
#endif
    try {
        root.parse(argc, argv);
    } catch (const CLI::ParseError& error) {
        const int cli11 = root.exit(error);
        return cli11 == 0 ? 0 : static_cast<int>(app::cli::ExitCode::wrong_use);
    }
    if (!root.get_subcommands().empty()) {
        return static_cast<int>(exit_code);
    }
#ifdef SALTLOFT_HAS_WINDOW
    return app::window::open_window(argc, argv, {book, demo});
#else
    return static_cast<int>(
        app::cli::fail(app::cli::ExitCode::wrong_use,
                       "this build has no window; give a verb, see 'saltloft --help'."));
#endif
}
