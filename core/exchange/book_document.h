#pragma once

#include "core/base/result.h"
#include "core/model/batch.h"
#include "core/model/chamber.h"
#include "core/model/log.h"
#include "core/model/pack.h"
#include "core/model/piece.h"
#include "core/model/plan.h"
#include "core/model/recipe.h"

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

/// A whole book, or one batch with all it refers to, as one JSON document that any program can
/// read: resources/schema/book-exchange.schema.json is its published schema.
namespace core::exchange {

/// Who put an entry into the book, when and why.
struct Stamp {
    units::Instant at;
    std::optional<model::PersonId> by;
    std::string why;
    friend bool operator==(const Stamp&, const Stamp&) = default;
};

/// An entry with the acts that made it and, where it was, took it back.
template <class T>
struct Entry {
    T value;
    std::optional<Stamp> entered;
    std::optional<Stamp> withdrawn;
};

template <class T>
using Entries = std::vector<Entry<T>>;

enum class DocumentScope { book, batch };

/// The entries by kind. Ids are those of the book it came from; they only tie the document's
/// entries to each other and are given anew on import.
struct BookDocument {
    DocumentScope scope = DocumentScope::book;
    std::string written_by; ///< program and version
    std::optional<units::Instant> written_at;
    Entries<model::Person> people;
    Entries<model::Chamber> chambers;
    Entries<model::Sensor> sensors;
    Entries<model::Instrument> instruments;
    Entries<model::CalibrationCheck> checks;
    Entries<model::Recipe> recipes;
    Entries<model::RecipeVersion> recipe_versions;
    Entries<model::Ingredient> ingredients;
    Entries<model::Lot> lots;
    Entries<model::Batch> batches;
    Entries<model::Piece> pieces;
    Entries<model::Weighing> weighings;
    Entries<model::PieceEvent> events;
    Entries<model::Stage> stages;
    Entries<model::IngredientUse> ingredient_uses;
    Entries<model::Acceptance> acceptances;
    Entries<model::Note> notes;
    Entries<model::Decision> decisions;
    Entries<model::Outcome> outcomes;
    Entries<model::Pack> packs;
    Entries<model::PackMove> pack_moves;
    Entries<model::TaskTick> task_ticks;
    std::vector<std::pair<std::string, std::string>> preferences;
    std::vector<model::LoggedStep> log; ///< the log as it was; kept for reading, not replayed
};

inline constexpr std::string_view document_format = "saltloft-book-exchange";
inline constexpr int document_version = 1;

/// The document as JSON (UTF-8, indented, keys in a fixed order). Masses in grams to the
/// milligram, temperatures in degrees Celsius to the millikelvin, lengths in millimetres to the
/// micrometre, shares in percent to the ppm: the grain of the book. What is not known is left
/// out. Texts that are not valid UTF-8 have the bytes at fault replaced by U+FFFD.
std::string write_book_document(const BookDocument& document);

/// Faults of a document, each with a path such as "weighings[3].on_scale_g".
using DocumentFaults = std::vector<base::Error>;
template <class T>
using DocumentResult = tl::expected<T, DocumentFaults>;

/// Reads and checks the whole document and reports all faults, not the first: text that is not
/// JSON (bad_format, with the byte), another format (bad_format), a later version (newer_book), a
/// missing or unknown key (missing_column, bad_format), a value of the wrong kind (wrong_kind) or
/// range (out_of_range), an id used twice (conflict) or one that no entry has (no_such_entry).
/// At most 100 faults are listed.
DocumentResult<BookDocument> read_book_document(std::string_view json);

} // namespace core::exchange
