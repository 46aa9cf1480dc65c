#include "core/chamber/log_words.h"

#include "core/chamber/log_stamp.h"

#include <algorithm>
#include <string>
#include <vector>

namespace core::chamber {
namespace {

/// ASCII letters in lower case; other bytes as they are.
std::string folded(std::string_view text) {
    std::string out(text);
    for (char& c : out) {
        if (c >= 'A' && c <= 'Z') {
            c = static_cast<char>(c - 'A' + 'a');
        }
    }
    return out;
}

bool is_word_byte(char c) {
    return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') ||
           static_cast<unsigned char>(c) >= 0x80;
}

/// The words of folded text; the degree sign ends a word.
std::vector<std::string> words_of(std::string_view text) {
    std::string plain(text);
    for (std::size_t at = 0; (at = plain.find("\xC2\xB0", at)) != std::string::npos;) {
        plain.replace(at, 2, "  ");
    }
    std::vector<std::string> words;
    std::string word;
    for (const char c : plain) {
        if (is_word_byte(c)) {
            word.push_back(c);
        } else if (!word.empty()) {
            words.push_back(std::move(word));
            word.clear();
        }
    }
    if (!word.empty()) {
        words.push_back(std::move(word));
    }
    return words;
}

template <class List>
bool any_inside(std::string_view text, const List& stems) {
    return std::any_of(std::begin(stems), std::end(stems),
                       [&](std::string_view stem) { return text.find(stem) != std::string::npos; });
}

template <class List>
bool any_word(const std::vector<std::string>& words, const List& wanted) {
    return std::any_of(words.begin(), words.end(), [&](const std::string& word) {
        return std::find(std::begin(wanted), std::end(wanted), word) != std::end(wanted);
    });
}

// Stems are looked for anywhere in the heading, words must stand alone. Languages: English,
// German, French, Italian, Spanish, Portuguese, Dutch, Swedish/Norwegian/Danish, Finnish, Polish,
// Czech, Hungarian, Russian, Chinese, Japanese.
constexpr std::string_view other_stems[] = {"dew",       "taupunkt",   "ros\xC3\xA9\x65",
                                            "rosee",     "rugiada",    "roc\xC3\xAD\x6F",
                                            "orvalho",   "dauw",       "daggpunkt",
                                            "dugpunkt",  "kastepiste", "\xE9\x9C\xB2\xE7\x82\xB9",
                                            "bulb",      "batt",       "volt",
                                            "pressure",  "druck",      "pression",
                                            "pressione", "absolut",    "co2",
                                            "voc",       "vpd",        "lux",
                                            "alarm",     "status",     "humidex",
                                            "enthalp",   "spread"};
constexpr std::string_view temperature_stems[] = {"temp",
                                                  "l\xC3\xA4mp\xC3\xB6",
                                                  "teplot",
                                                  "h\xC5\x91m\xC3\xA9rs",
                                                  "\xD1\x82\xD0\xB5\xD0\xBC\xD0\xBF",
                                                  "\xD0\xA2\xD0\xB5\xD0\xBC\xD0\xBF",
                                                  "\xE6\xB8\xA9\xE5\xBA\xA6",
                                                  "\xE6\xBA\xAB\xE5\xBA\xA6",
                                                  "\xE6\xB0\x97\xE6\xB8\xA9",
                                                  "celsius",
                                                  "fahrenheit",
                                                  "\xE2\x84\x83",
                                                  "\xE2\x84\x89"};
constexpr std::string_view temperature_words[] = {"t", "t1", "ta", "tair", "c", "f"};
constexpr std::string_view humidity_stems[] = {"humid",
                                               "feucht",
                                               "humedad",
                                               "umidit",
                                               "umidade",
                                               "vochtig",
                                               "fuktig",
                                               "fugtig",
                                               "kosteus",
                                               "wilgotn",
                                               "vlhkost",
                                               "p\xC3\xA1ratart",
                                               "\xD0\xBB\xD0\xB0\xD0\xB6\xD0\xBD",
                                               "\xE6\xB9\xBF\xE5\xBA\xA6",
                                               "\xE6\xBF\x95\xE5\xBA\xA6",
                                               "%rh",
                                               "rh%",
                                               "%hr",
                                               "%ur",
                                               "%rf"};
constexpr std::string_view humidity_words[] = {"rh", "hr", "ur", "rf", "rel", "h", "hum", "hygro"};
constexpr std::string_view stamp_stems[] = {"timestamp", "datetime",        "zeitstempel",
                                            "zeitpunkt", "horodat",         "epoch",
                                            "unix",      "marca de tiempo", "tijdstip",
                                            "tidpunkt",  "tidsstempel",     "tidsst\xC3\xA4mpel"};
constexpr std::string_view date_words[] = {"date",
                                           "datum",
                                           "data",
                                           "fecha",
                                           "dato",
                                           "dag",
                                           "p\xC3\xA4iv\xC3\xA4",
                                           "d\xC3\xA1tum",
                                           "day",
                                           "tag",
                                           "jour",
                                           "giorno",
                                           "\xD0\xB4\xD0\xB0\xD1\x82\xD0\xB0",
                                           "\xD0\x94\xD0\xB0\xD1\x82\xD0\xB0"};
constexpr std::string_view date_stems[] = {"\xE6\x97\xA5\xE6\x9C\x9F", "\xE6\x97\xA5\xE4\xBB\x98"};
constexpr std::string_view time_words[] = {"time",
                                           "uhrzeit",
                                           "zeit",
                                           "heure",
                                           "temps",
                                           "ora",
                                           "ore",
                                           "hora",
                                           "tiempo",
                                           "tijd",
                                           "tid",
                                           "klocka",
                                           "kello",
                                           "aika",
                                           "czas",
                                           "godzina",
                                           "\xC4\x8D\x61s",
                                           "id\xC5\x91",
                                           "clock",
                                           "\xD0\xB2\xD1\x80\xD0\xB5\xD0\xBC\xD1\x8F",
                                           "\xD0\x92\xD1\x80\xD0\xB5\xD0\xBC\xD1\x8F"};
constexpr std::string_view time_stems[] = {"\xE6\x97\xB6\xE9\x97\xB4", "\xE6\x99\x82\xE9\x96\x93",
                                           "\xE6\x99\x82\xE5\x88\xBB"};

ColumnMeaning meaning_of(std::string_view text, const std::vector<std::string>& words) {
    if (any_inside(text, other_stems)) {
        return ColumnMeaning::other;
    }
    const bool french_time = any_word(words, std::initializer_list<std::string_view>{"temps"});
    if (any_inside(text, humidity_stems)) {
        return ColumnMeaning::humidity;
    }
    if (!french_time && any_inside(text, temperature_stems)) {
        return ColumnMeaning::temperature;
    }
    if (any_inside(text, stamp_stems)) {
        return ColumnMeaning::stamp;
    }
    const bool date = any_word(words, date_words) || any_inside(text, date_stems);
    const bool time = any_word(words, time_words) || any_inside(text, time_stems);
    if (date || time) {
        return date && time ? ColumnMeaning::stamp
               : date       ? ColumnMeaning::date
                            : ColumnMeaning::time;
    }
    if (any_word(words, humidity_words)) {
        return ColumnMeaning::humidity;
    }
    return any_word(words, temperature_words) ? ColumnMeaning::temperature : ColumnMeaning::unknown;
}

std::optional<TemperatureScale> scale_of(std::string_view text,
                                         const std::vector<std::string>& words) {
    using Words = std::initializer_list<std::string_view>;
    if (text.find("\xE2\x84\x89") != std::string::npos ||
        any_word(words, Words{"f", "degf", "fahrenheit"})) {
        return TemperatureScale::fahrenheit;
    }
    if (text.find("\xE2\x84\x83") != std::string::npos ||
        any_word(words, Words{"c", "degc", "celsius"})) {
        return TemperatureScale::celsius;
    }
    return any_word(words, Words{"k", "kelvin"}) ? std::optional(TemperatureScale::kelvin)
                                                 : std::nullopt;
}

std::optional<int> offset_of(std::string_view text) {
    for (const std::string_view mark : {"utc", "gmt"}) {
        const auto at = text.find(mark);
        if (at != std::string_view::npos) {
            auto tail = text.substr(at);
            tail = tail.substr(0, tail.find_first_of(")]\","));
            return read_offset(tail);
        }
    }
    const auto sign = text.find_first_of("+-");
    if (sign == std::string_view::npos || sign == 0 ||
        (text[sign - 1] != '(' && text[sign - 1] != '[')) {
        return std::nullopt;
    }
    const auto tail = text.substr(sign);
    return read_offset(tail.substr(0, tail.find_first_of(")]")));
}

} // namespace

HeadingCell read_heading(std::string_view cell) {
    const std::string text = folded(cell);
    const auto words = words_of(text);
    HeadingCell heading;
    heading.meaning = meaning_of(text, words);
    switch (heading.meaning) {
    case ColumnMeaning::temperature:
        heading.temperature = scale_of(text, words);
        break;
    case ColumnMeaning::humidity:
        if (text.find('%') != std::string::npos) {
            heading.humidity = HumidityScale::percent;
        }
        break;
    case ColumnMeaning::stamp:
    case ColumnMeaning::date:
    case ColumnMeaning::time:
        heading.offset_seconds = offset_of(text);
        break;
    default:
        break;
    }
    return heading;
}

std::optional<TemperatureScale> scale_in_cell(std::string_view cell) {
    const auto unit = cell.find_first_not_of("0123456789+-.,eE \t");
    if (unit == std::string_view::npos) {
        return std::nullopt;
    }
    const std::string text = folded(cell.substr(unit));
    return scale_of(text, words_of(text));
}

} // namespace core::chamber
