#include "core/actions/perform.h"
#include "core/exchange/document_fields.h"
#include "core/exchange/document_kinds.h"
#include "core/services/document_exchange.h"
#include "core/services/document_match.h"
#include "core/store/action_log.h"
#include "core/store/batches.h"
#include "core/store/entries.h"
#include "core/store/notes_and_stock.h"
#include "core/store/pieces.h"
#include "core/store/recipes.h"
#include "core/store/store.h"

#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <map>
#include <set>
#include <utility>

namespace core::services {
namespace {

using base::ErrorCode;
using exchange::BookDocument;
using exchange::Entry;
using exchange::Stamp;
using store::Connection;

/// An entry of the document by its array's name and its id there.
using Key = std::pair<std::string, std::int64_t>;

/// Where the document's entries ended up in the book.
class Renumbering {
  public:
    void set(const Key& key, std::int64_t row) { rows_[key] = row; }
    template <class Id>
    [[nodiscard]] Id of(Id old) const {
        const auto found = rows_.find({exchange::detail::kind_of(old), old.row()});
        return found == rows_.end() ? Id{} : Id::from_row(found->second);
    }
    [[nodiscard]] bool has(const Key& key) const { return rows_.count(key) != 0; }

  private:
    std::map<Key, std::int64_t> rows_;
};

/// A visitor of the field lists that looks at references only.
template <class OnRef>
class References {
  public:
    explicit References(OnRef on_ref) : on_ref_(std::move(on_ref)) {}
    template <class... Any>
    void operator()(const Any&...) {}
    template <class Id>
    void own(const char*, const Id&) {}
    template <class Id>
    void ref(const char* key, Id& id) {
        on_ref_(key, id);
    }
    template <class Id>
    void ref(const char* key, std::optional<Id>& id) {
        if (id) {
            on_ref_(key, *id);
        }
    }
    template <class Id>
    void ref(const char* key, std::vector<Id>& ids) {
        for (Id& id : ids) {
            on_ref_(key, id);
        }
    }
    template <class Id>
    void maybe_ref(const char* key, Id& id) {
        if (id.is_assigned()) {
            on_ref_(key, id);
        }
    }
    void text(const char*, const std::string&) {}
    void flag(const char*, bool, bool) {}
    void count(const char*, int, int) {}
    void bytes(const char*, const std::vector<unsigned char>&) {}

  private:
    OnRef on_ref_;
};

/// The reverse link of an amendment: read from the book, never written.
bool is_reverse_link(const char* key) {
    return std::string_view(key) == "amended_by";
}

/// One thing to do: add an entry, or take one back.
struct Item {
    Key key;
    int order = 0; ///< of its kind in the document
    std::optional<Stamp> stamp;
    std::vector<Key> needs;
    std::function<std::int64_t(Connection&, const Renumbering&)> carry_out; ///< the row it made
};

template <class T>
void renumber(T& value, const Renumbering& renumbering) {
    References visitor([&](const char* key, auto& id) {
        id = is_reverse_link(key) ? std::decay_t<decltype(id)>{} : renumbering.of(id);
    });
    exchange::visit(visitor, value);
}

/// A recipe the book has already may have a version of that number with another content.
int free_version_number(Connection& book, const model::RecipeVersion& version) {
    for (const model::RecipeVersion& there : store::recipe_versions(book, version.recipe)) {
        if (there.number == version.number) {
            return store::next_version_number(book, version.recipe);
        }
    }
    return version.number;
}

template <class T>
std::int64_t insert_entry(Connection& book, const T& value) {
    if constexpr (std::is_same_v<T, model::RecipeVersion>) {
        T numbered = value;
        numbered.number = free_version_number(book, value);
        return store::insert(book, numbered).row();
    } else if constexpr (std::is_same_v<T, model::Outcome>) {
        store::put_outcome(book, value);
        return value.batch.row();
    } else {
        return store::insert(book, value).row();
    }
}

template <class T>
std::int64_t id_in_document(const T& value) {
    if constexpr (std::is_same_v<T, model::Outcome>) {
        return value.batch.row();
    } else {
        return value.id.row();
    }
}

class Import {
  public:
    Import(Connection& book, const BookDocument& document, const actions::Context& context)
        : book_(book), document_(document), context_(context) {}

    ImportReport run() {
        refuse_taken_codes();
        match_registers(book_, document_,
                        [&](const char* kind, std::int64_t old, std::int64_t row) {
                            renumbering_.set({kind, old}, row);
                        });
        collect_items();
        order_items();
        carry_out_items();
        import_preferences();
        for (const auto& batch : document_.batches) {
            report_.batches.push_back(batch.value.code);
        }
        return std::move(report_);
    }

  private:
    void refuse_taken_codes() {
        std::set<std::string> codes;
        const auto note = [&](const std::string& code) { codes.insert(code); };
        for (const auto& batch : document_.batches) {
            if (store::batch_by_code(book_, batch.value.code)) {
                note(batch.value.code);
            }
        }
        for (const auto& piece : document_.pieces) {
            using State = model::PieceState;
            const State state = piece.value.state;
            const bool open = state != State::split_up && state != State::merged_away &&
                              state != State::discarded;
            if (open && store::open_piece_by_code(book_, piece.value.code)) {
                note(piece.value.code);
            }
        }
        if (!codes.empty()) {
            std::string taken;
            for (const std::string& code : codes) {
                taken += (taken.empty() ? "" : ", ") + code;
            }
            store::refuse(ErrorCode::conflict, taken, "code_taken");
        }
    }

    void collect_items() {
        int order = 0;
        exchange::each_kind(
            [&](const char* kind, const auto& entries) {
                ImportReport::Kind counts{kind};
                for (const auto& entry : entries) {
                    const Key key{kind, id_in_document(entry.value)};
                    if (renumbering_.has(key)) {
                        ++counts.matched;
                    } else {
                        ++counts.added;
                        add_item(key, order, entry);
                    }
                }
                if (!entries.empty()) {
                    report_.kinds.push_back(counts);
                }
                ++order;
            },
            document_);
    }

    template <class T>
    void add_item(const Key& key, int order, const Entry<T>& entry) {
        Item item{key, order, entry.entered, {}, {}};
        T value = entry.value;
        References visitor([&](const char* field, auto& id) {
            if (!is_reverse_link(field)) {
                item.needs.emplace_back(exchange::detail::kind_of(id), id.row());
            }
        });
        exchange::visit(visitor, value);
        bool take_back = false;
        if constexpr (requires { value.withdrawn; }) {
            // Entered standing and taken back by whoever did that: two lines of its history.
            take_back = value.withdrawn && entry.withdrawn.has_value();
            value.withdrawn = value.withdrawn && !take_back;
        }
        item.carry_out = [value](Connection& book, const Renumbering& renumbering) {
            T renumbered = value;
            renumber(renumbered, renumbering);
            return insert_entry(book, renumbered);
        };
        items_.push_back(std::move(item));
        if constexpr (requires { value.withdrawn; }) {
            if (take_back) {
                Item back{
                    {"taken_back:" + key.first, key.second}, order, entry.withdrawn, {key}, {}};
                const auto id = value.id;
                back.carry_out = [id](Connection& book, const Renumbering& renumbering) {
                    auto standing = store::get<T>(book, renumbering.of(id));
                    standing.withdrawn = true;
                    store::update(book, standing);
                    return standing.id.row();
                };
                items_.push_back(std::move(back));
            }
        }
    }

    /// In the order of their first entering, each after what it needs.
    void order_items() {
        std::stable_sort(items_.begin(), items_.end(), [](const Item& a, const Item& b) {
            const auto at = [](const Item& i) {
                return i.stamp ? i.stamp->at.unix_seconds() : std::int64_t{0};
            };
            return std::tuple(at(a), a.order, a.key.second) <
                   std::tuple(at(b), b.order, b.key.second);
        });
        std::map<Key, std::size_t> places;
        for (std::size_t i = 0; i < items_.size(); ++i) {
            places[items_[i].key] = i;
        }
        std::vector<bool> placed(items_.size(), false);
        for (std::size_t i = 0; i < items_.size(); ++i) {
            place(i, places, placed);
        }
    }

    /// Depth first with a stack of its own: a document may claim a chain of any length.
    void place(std::size_t first, const std::map<Key, std::size_t>& places,
               std::vector<bool>& placed) {
        std::vector<std::pair<std::size_t, std::size_t>> stack{{first, 0}};
        std::set<std::size_t> open{first};
        while (!stack.empty()) {
            const std::size_t item = stack.back().first;
            if (placed[item] || stack.back().second == items_[item].needs.size()) {
                if (!placed[item]) {
                    placed[item] = true;
                    sequence_.push_back(item);
                }
                open.erase(item);
                stack.pop_back();
                continue;
            }
            const Key& need = items_[item].needs[stack.back().second++];
            const auto found = places.find(need);
            if (found == places.end() || placed[found->second]) {
                continue; // in the book already, or placed before
            }
            if (!open.insert(found->second).second) {
                store::refuse(ErrorCode::not_allowed, "refers_to_itself",
                              fmt::format("{} {}", need.first, need.second));
            }
            stack.emplace_back(found->second, 0);
        }
    }

    /// One action for each run of entries that came from the same hand at the same moment.
    void carry_out_items() {
        for (std::size_t i = 0; i < sequence_.size();) {
            const std::optional<Stamp>& stamp = items_[sequence_[i]].stamp;
            store::ChangeRecorder recorder(book_);
            std::size_t end = i;
            for (; end < sequence_.size() && items_[sequence_[end]].stamp == stamp; ++end) {
                const Item& item = items_[sequence_[end]];
                renumbering_.set(item.key, item.carry_out(book_, renumbering_));
            }
            store::log_action(book_, {"import_document", subject(), false, recorder.taken()},
                              note_of(stamp));
            i = end;
        }
    }

    [[nodiscard]] std::string subject() const {
        return document_.batches.size() == 1 ? document_.batches.front().value.code : "";
    }

    [[nodiscard]] store::StepNote note_of(const std::optional<Stamp>& stamp) const {
        if (!stamp) {
            return {context_.now, context_.who, context_.why};
        }
        const model::PersonId who = stamp->by ? renumbering_.of(*stamp->by) : model::PersonId{};
        return {stamp->at, who.is_assigned() ? std::optional(who) : std::nullopt, stamp->why};
    }

    void import_preferences() {
        for (const auto& [key, value] : document_.preferences) {
            if (!store::preference(book_, key)) {
                store::set_preference(book_, key, value);
            }
        }
    }

    Connection& book_;
    const BookDocument& document_;
    const actions::Context& context_;
    Renumbering renumbering_;
    std::vector<Item> items_;
    std::vector<std::size_t> sequence_;
    ImportReport report_;
};

/// What is wrong with the entries by themselves, as for a person who types them in.
std::optional<base::Error> entry_fault(const BookDocument& document,
                                       const actions::Context& context) {
    std::string codes;
    std::string places;
    const auto check = [&](const char* kind, std::int64_t row, const actions::Command& command) {
        for (const model::Finding& finding : actions::check(command, context)) {
            if (finding.severity == model::Severity::stop && places.size() < 1000) {
                codes += (codes.empty() ? "" : ", ") + finding.code;
                places += (places.empty() ? "" : ", ") +
                          fmt::format("{} {}: {}", kind, row, finding.place);
            }
        }
    };
    for (const auto& e : document.chambers) {
        check("chambers", e.value.id.row(), actions::AddChamber{e.value});
    }
    for (const auto& e : document.batches) {
        check("batches", e.value.id.row(), actions::AddBatch{e.value});
    }
    for (const auto& e : document.pieces) {
        check("pieces", e.value.id.row(), actions::AddPiece{{e.value, {}}});
    }
    for (const auto& e : document.weighings) {
        model::Weighing alone = e.value; // an amendment is checked for what it weighs
        alone.amends.reset();
        check("weighings", e.value.id.row(), actions::AddWeighing{alone});
    }
    for (const auto& e : document.notes) {
        check("notes", e.value.id.row(), actions::AddNote{e.value});
    }
    for (const auto& e : document.packs) {
        check("packs", e.value.id.row(), actions::AddPack{e.value});
    }
    if (codes.empty()) {
        return {};
    }
    return base::Error{ErrorCode::not_allowed, codes, places};
}

} // namespace

base::Result<ImportReport> import_document(Book& book, const BookDocument& document,
                                           const actions::Context& context) {
    if (auto fault = entry_fault(document, context)) {
        return tl::unexpected<base::Error>(std::move(*fault));
    }
    return book.store().change(
        [&](Connection& connection) { return Import(connection, document, context).run(); });
}

} // namespace core::services
