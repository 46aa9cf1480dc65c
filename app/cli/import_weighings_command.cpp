// saltloft import-weighings: a CSV file of weighings into the pieces of a book.
#include "app/cli/book_door.h"
#include "app/cli/reject_words.h"
#include "core/services/weighing_import.h"

#include <cstdio>
#include <map>
#include <memory>
#include <string>

namespace app::cli {
namespace {

using core::exchange::DayOrder;

struct ImportWeighingsOptions {
    std::string file;
    std::string book;
    std::string zone;
    std::string unit;
    std::string day_order;
    std::string state = "raw";
    bool try_only = false;
};

bool fill(const ImportWeighingsOptions& options, core::exchange::WeighingImport& import) {
    if (!options.zone.empty()) {
        auto zone = core::units::Zone::named(options.zone);
        if (!zone) {
            fail(ExitCode::wrong_use,
                 "--zone '" + options.zone + "' is no time zone; write it like Europe/Rome.");
            return false;
        }
        import.zone = *zone;
    }
    static const std::map<std::string, core::units::MassUnit> units{
        {"g", core::units::MassUnit::gram},
        {"kg", core::units::MassUnit::kilogram},
        {"oz", core::units::MassUnit::ounce},
        {"lb", core::units::MassUnit::pound}};
    if (!options.unit.empty()) {
        import.bare_unit = units.at(options.unit); // CLI11 has checked the word
    }
    if (!options.day_order.empty()) {
        import.day_order =
            options.day_order == "day-first" ? DayOrder::day_first : DayOrder::month_first;
    }
    import.state = *core::exchange::state_from_word(options.state); // checked likewise
    return true;
}

void say_plan(const core::services::WeighingImportPlan& plan) {
    for (const auto& row : plan.unmatched) {
        std::fprintf(stderr,
                     "line %zu: no piece, or more than one, is meant by the code '%s'; add the "
                     "piece first, or name its batch in a column 'batch'.\n",
                     row.line, row.piece.c_str());
    }
    for (const auto& row : plan.contradictions) {
        std::fprintf(stderr,
                     "line %zu: the book has another weight of '%s' at that moment; correct the "
                     "entry in the book, so that the correction is kept with its reason.\n",
                     row.line, row.piece.c_str());
    }
}

ExitCode run(const ImportWeighingsOptions& options) {
    ExitCode exit_code = ExitCode::done;
    core::exchange::WeighingImport import;
    if (!fill(options, import)) {
        return ExitCode::wrong_use;
    }
    const auto text = read_whole(options.file, exit_code);
    if (!text) {
        return exit_code;
    }
    const auto file = core::exchange::read_weighings_csv(*text, import);
    if (!file) {
        const std::string where = file.error().where.empty() ? "" : ", " + file.error().where;
        return fail(ExitCode::unreadable, options.file + where + " " + words_for(file.error()));
    }
    auto book = open_book(options.book, options.try_only, exit_code);
    if (!book) {
        return exit_code;
    }
    const auto plan = core::services::plan_weighing_import(*book, *file);
    if (!plan) {
        return fail(ExitCode::unreadable, options.book + " " + words_for(plan.error()));
    }
    for (const auto& reject : file->rejects) {
        std::fprintf(stderr, "%s\n", words_for(reject).c_str());
    }
    say_plan(*plan);
    if (!options.try_only && !plan->new_ones.empty()) {
        const auto made = core::services::import_weighings(
            *book, *plan, {.who = {}, .now = now(), .why = "import of " + options.file});
        if (!made) {
            return fail(ExitCode::found_something, options.book + " " + words_for(made.error()));
        }
    }
    std::printf("%zu weighings %s, %zu known already, %zu set aside, %zu faults\n",
                plan->new_ones.size(), options.try_only ? "would be added" : "added",
                plan->known_lines.size(), file->set_aside.size(),
                file->rejects.size() + plan->unmatched.size() + plan->contradictions.size());
    const bool faults =
        !file->rejects.empty() || !plan->unmatched.empty() || !plan->contradictions.empty();
    return faults ? ExitCode::found_something : exit_code;
}

} // namespace

void register_import_weighings(CLI::App& root, ExitCode& exit_code) {
    const auto options = std::make_shared<ImportWeighingsOptions>();
    CLI::App* verb =
        root.add_subcommand("import-weighings", "Add weighings from a CSV file to a book's pieces");
    verb->add_option("file", options->file, "The CSV file (columns piece, taken_at, weight_g ...)")
        ->required();
    verb->add_option("--book", options->book, "The book to add to")->required();
    verb->add_option("--zone", options->zone, "Time zone of times written without one");
    verb->add_option("--unit", options->unit, "Unit of weights written without one")
        ->check(CLI::IsMember({"g", "kg", "oz", "lb"}));
    verb->add_option("--day-order", options->day_order, "How 03/04/2026 is meant")
        ->check(CLI::IsMember({"day-first", "month-first"}));
    verb->add_option("--state", options->state, "What is on the scale, where a row does not say")
        ->check(CLI::IsMember({"raw", "trimmed", "cured", "rinsed", "cased", "netted", "coated"}));
    verb->add_flag("--try", options->try_only, "Say what would happen and change nothing");
    verb->callback([options, &exit_code] { exit_code = run(*options); });
}

} // namespace app::cli
