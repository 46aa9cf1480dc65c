#pragma once

#include "core/actions/command.h"
#include "core/exchange/book_document.h"
#include "core/services/book.h"

#include <optional>
#include <string>
#include <vector>

/// A book, or one batch, out to an exchange document (core/exchange/book_document.h) and in again.
namespace core::services {

struct ExportRequest {
    std::optional<model::BatchId> batch; ///< absent: the whole book
    units::Instant now;
    std::string written_by; ///< program and version
    bool with_photos = true;
};

/// Reads everything the request covers: all entries with who entered them, when and why, also
/// amended and withdrawn ones. A batch brings what it refers to (recipe, lots, chambers, people,
/// instruments with their checks) and nothing else. Climate readings are not part of it: they
/// travel as CSV.
base::Result<exchange::BookDocument> export_document(const Book& book,
                                                     const ExportRequest& request);

struct ImportReport {
    struct Kind {
        std::string name; ///< as in the document: "weighings"
        int added = 0;
        int matched = 0; ///< found in the book already and not added again
    };
    std::vector<Kind> kinds;          ///< in the document's order, those with any entry
    std::vector<std::string> batches; ///< codes of the batches added
};

/// Adds the document's entries to the book in one transaction: all of it or nothing. Each entry is
/// logged with the person, moment and reason it was first entered with, so its history reads as
/// before; entries without those are logged with `context`. People, chambers, sensors,
/// instruments, checks, recipes, ingredients and lots that the book has already are matched, not
/// doubled. Fails with conflict (`detail`: the batch codes or codes of open pieces that the book
/// already uses), not_allowed (codes of what is wrong with an entry, `where` its place) or as
/// Book::perform does. It is not part of undo.
base::Result<ImportReport> import_document(Book& book, const exchange::BookDocument& document,
                                           const actions::Context& context);

} // namespace core::services
