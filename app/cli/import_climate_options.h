#pragma once

#include "core/chamber/detect_dialect.h"

#include <CLI/CLI.hpp>
#include <string>
#include <tl/expected.hpp>

namespace app::cli {

/// The words of `saltloft import-climate`. Empty texts are options not given.
struct ImportClimateOptions {
    std::string log;
    std::string book;
    std::string chamber;
    std::string sensor;
    bool json = false;
    bool create = false;
    bool accept_guesses = false;
    // what the person tells about the file
    std::string encoding;
    std::string separator;
    std::string decimal;
    std::string dates;
    std::string temperature_unit;
    std::string humidity_unit;
    std::string zone;
    std::string offset;
    int stamp_column = 0; ///< from 1, as people count; 0 is not given
    int temperature_column = 0;
    int humidity_column = 0;
};

void add_options(CLI::App& verb, ImportClimateOptions& options);

/// What the options say about the file; a sentence when one of them means nothing.
tl::expected<core::chamber::DialectHints, std::string> hints_of(const ImportClimateOptions& options,
                                                                core::units::Instant now);

/// The option that settles a part of the dialect.
std::string option_for(core::chamber::DialectField field);

} // namespace app::cli
