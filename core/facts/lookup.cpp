#include "core/facts/catalogue.h"
#include "core/facts/limits.h"
#include "core/facts/measures.h"

#include <algorithm>

namespace core::facts {
namespace {

template <class Entries>
auto find_by_id(const Entries& entries, std::string_view id) -> decltype(entries.data()) {
    const auto it = std::find_if(entries.begin(), entries.end(),
                                 [&](const auto& entry) { return entry.id == id; });
    return it == entries.end() ? nullptr : &*it;
}

} // namespace

Catalogue::Catalogue(std::vector<CatalogueEntry> entries) : entries_(std::move(entries)) {}

const CatalogueEntry* Catalogue::find(std::string_view id) const {
    return find_by_id(entries_, id);
}

const LimitSet* LimitSets::find(std::string_view id) const {
    return find_by_id(sets_, id);
}

const Measure* Measures::find(std::string_view id) const {
    return find_by_id(measures_, id);
}

bool is_verified(const base::Source& source) {
    return source.sureness == base::Sureness::verified ||
           source.sureness == base::Sureness::computed;
}

} // namespace core::facts
