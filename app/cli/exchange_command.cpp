// saltloft export and saltloft import: a book or a batch out to JSON or CSV, and in again.
#include "app/cli/book_door.h"
#include "core/exchange/weighings_csv.h"
#include "core/services/document_exchange.h"

#include <cstdio>
#include <memory>
#include <string>

namespace app::cli {
namespace {

using core::exchange::BookDocument;

struct ExportOptions {
    std::string book;
    std::string batch;
    std::string out;
    std::string weighings;
    bool without_photos = false;
};

std::string weighings_csv(const BookDocument& document) {
    std::vector<core::exchange::WeighingLine> lines;
    for (const auto& weighing : document.weighings) {
        core::exchange::WeighingLine line{{}, {}, weighing.value};
        for (const auto& piece : document.pieces) {
            if (piece.value.id != weighing.value.piece) {
                continue;
            }
            line.piece = piece.value.code;
            for (const auto& batch : document.batches) {
                if (batch.value.id == piece.value.batch) {
                    line.batch = batch.value.code;
                }
            }
        }
        lines.push_back(std::move(line));
    }
    return core::exchange::write_weighings_csv(lines);
}

ExitCode run_export(const ExportOptions& options) {
    ExitCode exit_code = ExitCode::done;
    if (options.out.empty() && options.weighings.empty()) {
        return fail(ExitCode::wrong_use, "nothing to write: give --out FILE.json, --weighings "
                                         "FILE.csv or both.");
    }
    const auto book = open_book(options.book, true, exit_code);
    if (!book) {
        return exit_code;
    }
    core::services::ExportRequest request{
        .now = now(), .written_by = std::string("saltloft ") + SALTLOFT_VERSION};
    request.with_photos = !options.without_photos;
    if (!options.batch.empty()) {
        const auto batch = book->batch_by_code(options.batch);
        if (!batch) {
            return fail(ExitCode::found_something, options.book + " " + words_for(batch.error()));
        }
        request.batch = batch->id;
    }
    const auto document = core::services::export_document(*book, request);
    if (!document) {
        return fail(ExitCode::unreadable, options.book + " " + words_for(document.error()));
    }
    if (!options.out.empty() &&
        !write_whole(options.out, core::exchange::write_book_document(*document), exit_code)) {
        return exit_code;
    }
    if (!options.weighings.empty()) {
        write_whole(options.weighings, weighings_csv(*document), exit_code);
    }
    return exit_code;
}

struct ImportOptions {
    std::string book;
    std::string document;
};

ExitCode run_import(const ImportOptions& options) {
    ExitCode exit_code = ExitCode::done;
    const auto text = read_whole(options.document, exit_code);
    if (!text) {
        return exit_code;
    }
    const auto document = core::exchange::read_book_document(*text);
    if (!document) {
        for (const core::base::Error& error : document.error()) {
            std::fprintf(stderr, "saltloft: %s%s%s: %s\n", options.document.c_str(),
                         error.where.empty() ? "" : ", ", error.where.c_str(),
                         error.detail.c_str());
        }
        return fail(ExitCode::unreadable,
                    options.document + " does not follow the published schema in " +
                        std::to_string(document.error().size()) +
                        " places; nothing was imported. Mend the places named above.");
    }
    core::services::OpenOptions open{.now = now()};
    open.create_if_missing = true;
    auto book = core::services::Book::open(options.book, open);
    if (!book) {
        return fail(ExitCode::unreadable, options.book + " " + words_for(book.error()));
    }
    const auto report = core::services::import_document(*book, *document,
                                                        {.who = {}, .now = now(), .why = "import"});
    if (!report) {
        return fail(ExitCode::found_something, options.book + " " + words_for(report.error()));
    }
    for (const auto& kind : report->kinds) {
        std::printf("%s: %d added, %d known already\n", kind.name.c_str(), kind.added,
                    kind.matched);
    }
    return exit_code;
}

} // namespace

void register_export(CLI::App& root, ExitCode& exit_code) {
    const auto options = std::make_shared<ExportOptions>();
    CLI::App* verb = root.add_subcommand("export", "Write a book or one batch as JSON or CSV");
    verb->add_option("--book", options->book, "The book to read")->required();
    verb->add_option("--batch", options->batch, "Code of one batch (default: the whole book)");
    verb->add_option("--out", options->out, "The JSON file to write; - for standard output");
    verb->add_option("--weighings", options->weighings, "A CSV file of the weighings to write");
    verb->add_flag("--without-photos", options->without_photos, "Leave the photos of notes out");
    verb->callback([options, &exit_code] { exit_code = run_export(*options); });
}

void register_import(CLI::App& root, ExitCode& exit_code) {
    const auto options = std::make_shared<ImportOptions>();
    CLI::App* verb = root.add_subcommand("import", "Add an exported book or batch to a book");
    verb->add_option("document", options->document, "The JSON file to read")->required();
    verb->add_option("--book", options->book, "The book to add to (made if it is not there)")
        ->required();
    verb->callback([options, &exit_code] { exit_code = run_import(*options); });
}

} // namespace app::cli
