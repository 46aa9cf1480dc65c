#pragma once

#include <cstdlib>
#include <filesystem>
#include <string>

namespace saltloft::testing {

/// A fresh folder that is removed, with all in it, when the test ends.
class TempFolder {
  public:
    TempFolder() {
        std::string name = (std::filesystem::temp_directory_path() / "saltloft-XXXXXX").string();
        if (mkdtemp(name.data()) == nullptr) {
            std::abort(); // no test can run without a place to write
        }
        path_ = name;
    }
    ~TempFolder() {
        std::error_code ignored;
        std::filesystem::permissions(path_, std::filesystem::perms::owner_all, ignored);
        std::filesystem::remove_all(path_, ignored);
    }
    TempFolder(const TempFolder&) = delete;
    TempFolder& operator=(const TempFolder&) = delete;
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }
    [[nodiscard]] std::string file(const std::string& name) const {
        return (path_ / name).string();
    }

  private:
    std::filesystem::path path_;
};

} // namespace saltloft::testing
