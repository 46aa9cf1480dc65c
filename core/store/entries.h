#pragma once

#include "core/store/connection.h"

#include <optional>

/// Writing and finding single entries of the book by their model type. All throw (see fault.h) and
/// expect to be called inside a Transaction. Defined for every type of core/model that has an id.
namespace core::store {

template <class T>
using IdOf = decltype(T::id);

/// Appends `entry` (its id is ignored) and returns the id it was given.
template <class T>
IdOf<T> insert(Connection& book, const T& entry);

/// Overwrites the entry with `entry.id`; the log keeps what it was. Fault no_such_entry.
template <class T>
void update(Connection& book, const T& entry);

/// Removes an entry; only for what was never more than a plan. Fault no_such_entry.
template <class T>
void remove(Connection& book, IdOf<T> id);

template <class T>
std::optional<T> find(Connection& book, IdOf<T> id);

/// The entry, or Fault no_such_entry.
template <class T>
T get(Connection& book, IdOf<T> id);

} // namespace core::store
