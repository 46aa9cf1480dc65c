#pragma once

#include <string>

namespace app::window {

struct OpenRequest {
    std::string book_path; ///< empty: the user's own book in the XDG data folder
    bool demo = false;     ///< a fresh invented book in a temporary place
};

/// Runs the window until it closes; returns the process exit code.
int open_window(int& argc, char** argv, const OpenRequest& request);

} // namespace app::window
