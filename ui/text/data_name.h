#pragma once

#include <QString>

#include <span>
#include <string>

namespace ui::text {

/// The name of something that comes with the program's data (resources/facts, resources/plans) in
/// the person's language: ingredients, measures, limit sets, products, stages and their notes.
/// What a person has named themselves is not in the list and comes back as it is. Titles of laws
/// and of sources are not to be given here: they are titles.
QString data_name(const QString& english);
QString data_name(const std::string& english);

/// For tests: every English name that can be translated (ui/text/data_names.inc, which
/// packaging/languages.sh makes), and the words of findings.
std::span<const char* const> data_names();

} // namespace ui::text
