#pragma once

#include <span>

namespace ui::text {

/// One finding's sentence. `{name}` is the finding's value of that name, `{place}` its place,
/// `{at}` its day. The English is the translator's source text (context "FindingWords").
struct FindingSentence {
    const char* code;
    const char* sentence;
};

// One table an area of the core; a new area adds a file finding_words_AREA.cpp and a line here
// and in finding_words.cpp.
std::span<const FindingSentence> book_sentences();
std::span<const FindingSentence> entry_sentences();
std::span<const FindingSentence> drying_sentences();
std::span<const FindingSentence> mix_sentences();
std::span<const FindingSentence> doneness_sentences();
std::span<const FindingSentence> planning_sentences();
std::span<const FindingSentence> chamber_sentences();

} // namespace ui::text
