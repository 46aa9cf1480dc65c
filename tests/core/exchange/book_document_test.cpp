#include "core/exchange/book_document.h"

#include "core/exchange/document_fields.h"
#include "core/exchange/document_schema.h"
#include "tests/core/exchange/support/sample_document.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <fstream>
#include <functional>
#include <iterator>

namespace {

using namespace core::exchange;
using core::base::Error;
using core::base::ErrorCode;
using core::units::Mass;
using json = nlohmann::ordered_json;
using testing::Contains;
using testing::ElementsAre;
using testing::UnorderedElementsAre;

json sample() {
    return json::parse(write_book_document(test_support::sample_document()));
}

DocumentFaults faults_of(const json& document) {
    const auto read = read_book_document(document.dump());
    return read ? DocumentFaults{} : read.error();
}

/// The faults after one change to the good sample.
DocumentFaults after(const std::function<void(json&)>& change) {
    json document = sample();
    change(document);
    return faults_of(document);
}

TEST(BookDocument, GivesBackEveryFieldOfEveryKind) {
    const std::string text = write_book_document(test_support::sample_document());
    const auto read = read_book_document(text);
    ASSERT_TRUE(read) << read.error().front().where << ": " << read.error().front().detail;
    EXPECT_EQ(write_book_document(*read), text);
    // The text alone could hide a field that neither direction knows; some by hand:
    const auto& amended = read->weighings.at(1);
    EXPECT_EQ(amended.value.on_scale, Mass::grams(1140.5));
    EXPECT_EQ(amended.value.tare, Mass::grams(100.001));
    EXPECT_EQ(amended.value.amends, core::model::WeighingId::from_row(14));
    EXPECT_EQ(amended.withdrawn->why, "hook left on");
    EXPECT_EQ(read->notes.at(0).value.photo, (std::vector<unsigned char>{0xFF, 0xD8, 0x00, 0x7F}));
    EXPECT_EQ(read->recipe_versions.at(0).value.document, "{\n  \"salt\" : 2.75 }");
    EXPECT_EQ(read->events.at(0).value.others.size(), 1U);
    EXPECT_EQ(read->stages.at(0).value.what.temperature->low_at_end.in_celsius(), 10);
    EXPECT_EQ(read->log.at(0).why, "mistyped");
    EXPECT_EQ(read->preferences.at(1).second, "own");
}

TEST(BookDocument, SampleLeavesNoFieldOut) {
    // Every property of the published schema occurs in the sample, so the round trip above
    // covers all of them.
    const json schema = json::parse(book_document_schema());
    const json document = sample();
    for (const auto& [kind, array] : schema.at("properties").items()) {
        if (!array.contains("items")) {
            continue;
        }
        for (const auto& [key, value] : array.at("items").at("properties").items()) {
            bool seen = key == "taken_back"; // one weighing stands for all
            for (const json& entry : document.at(kind)) {
                seen = seen || entry.contains(key);
            }
            // Usual values are left out: fields whose sample value is the usual one.
            EXPECT_TRUE(seen) << kind << "." << key;
        }
    }
}

TEST(BookDocument, WritesTheBooksOwnGrain) {
    const json document = sample();
    EXPECT_EQ(document["chambers"][0]["low_temp_c"].dump(), "4.4");
    EXPECT_EQ(document["weighings"][0]["tare_g"].dump(), "100.001");
    EXPECT_EQ(document["pieces"][0]["fat_percent"].dump(), "11.5");
    EXPECT_FALSE(document["pieces"][0].contains("parent")); // not known is left out
}

TEST(BookDocument, SmallestDocumentIsEnough) {
    const auto read = read_book_document(
        R"({"format": "saltloft-book-exchange", "version": 1, "scope": "book"})");
    ASSERT_TRUE(read);
    EXPECT_TRUE(read->batches.empty());
}

TEST(BookDocument, RefusesForeignAndNewerDocuments) {
    EXPECT_EQ(read_book_document("").error().at(0).code, ErrorCode::bad_format);
    EXPECT_EQ(read_book_document("{\"format\": ").error().at(0).detail, "not JSON");
    EXPECT_EQ(read_book_document("[1]").error().at(0).detail, "no object");
    EXPECT_EQ(read_book_document("{\"format\": \"other\"}").error().at(0).where, "format");
    EXPECT_EQ(read_book_document(std::string(100000, '[')).error().at(0).code,
              ErrorCode::bad_format);
    const std::string deep = "{\"a\":" + std::string(200, '[') + std::string(200, ']') + "}";
    EXPECT_EQ(read_book_document(deep).error().at(0).detail, "nested too deeply");
    EXPECT_EQ(read_book_document("{\"a\": 1e999}").error().at(0).code, ErrorCode::out_of_range);
    const auto newer = after([](json& d) { d["version"] = 2; });
    EXPECT_THAT(newer, ElementsAre(Error{ErrorCode::newer_book, "2", "version"}));
}

TEST(BookDocument, TellsAllFaultsWithTheirPlaces) {
    const auto faults = after([](json& d) {
        d["weighings"][0]["on_scale_g"] = "heavy";
        d["weighings"][1].erase("taken_at");
        d["batches"][0]["started"] = "2026-02-30";
        d["pieces"][0]["skin"] = "thick";
        d["chambers"][0]["low_temp_c"] = -300;
        d["packs"][0]["colour"] = "red";
        d["notes"][0]["photo_base64"] = "abc";
        d["stages"][0]["what"]["kind"] = "boil";
        d["extra"] = 1;
        d["lots"] = 5;
    });
    const auto has = [&](ErrorCode code, const char* detail, const char* where) {
        EXPECT_THAT(faults, Contains(Error{code, detail, where}));
    };
    has(ErrorCode::wrong_kind, "heavy", "weighings[0].on_scale_g");
    has(ErrorCode::missing_column, "taken_at", "weighings[1]");
    has(ErrorCode::out_of_range, "2026-02-30", "batches[0].started");
    has(ErrorCode::bad_format, "thick", "pieces[0].skin");
    has(ErrorCode::out_of_range, "number", "chambers[0].low_temp_c");
    has(ErrorCode::bad_format, "colour", "packs[0]");
    has(ErrorCode::bad_format, "base64", "notes[0].photo_base64");
    has(ErrorCode::bad_format, "extra", "");
    has(ErrorCode::wrong_kind, "number", "lots");
    has(ErrorCode::no_such_entry, "lots 10", "ingredient_uses[0].lot");
    EXPECT_EQ(faults.size(), 11U); // and the stage's own, worded by core/model/plan_document.h
}

TEST(BookDocument, FollowsEveryReference) {
    EXPECT_THAT(after([](json& d) { d["weighings"][0]["piece"] = 99; }),
                ElementsAre(Error{ErrorCode::no_such_entry, "pieces 99", "weighings[0].piece"}));
    EXPECT_THAT(after([](json& d) { d["events"][0]["others"][0] = 99; }),
                ElementsAre(Error{ErrorCode::no_such_entry, "pieces 99", "events[0].others[0]"}));
    EXPECT_THAT(
        after([](json& d) { d["pieces"][1]["id"] = 12; }),
        UnorderedElementsAre(Error{ErrorCode::conflict, "12", "pieces[1].id"},
                             Error{ErrorCode::no_such_entry, "pieces 13", "events[0].others[0]"}));
    for (const json& bad : {json(0), json(-1), json(18446744073709551615ULL)}) {
        EXPECT_THAT(after([&](json& d) { d["checks"][0]["id"] = bad; }),
                    ElementsAre(Error{ErrorCode::out_of_range, "number", "checks[0].id"}));
    }
    EXPECT_TRUE(after([](json& d) { d["checks"][0].erase("by"); }).empty());
}

TEST(BookDocument, ListsAtMostAHundredFaults) {
    const auto faults = after([](json& d) {
        for (int i = 0; i < 500; ++i) {
            d["people"].push_back(json::object());
        }
    });
    EXPECT_EQ(faults.size(), 100U);
}

/// Holds a file of the repository to what the code makes.
void expect_kept(const std::string& name, const std::string& made, const char* advice) {
    std::ifstream file(SALTLOFT_SOURCE_DIR "/" + name, std::ios::binary);
    const std::string kept{std::istreambuf_iterator<char>(file), {}};
    if (kept != made) {
        const std::string beside = testing::TempDir() + name.substr(name.rfind('/') + 1);
        std::ofstream(beside, std::ios::binary) << made;
        FAIL() << name << " is not what the code makes, which is in " << beside << ". " << advice;
    }
}

TEST(BookDocument, PublishedSchemaIsTheOneOfTheFieldLists) {
    expect_kept("resources/schema/book-exchange.schema.json", book_document_schema(),
                "A released version's schema must not change: raise document_version instead.");
}

// tests/schema/run.sh gives this file to a validator that is not ours.
TEST(BookDocument, SampleFileIsTheSampleDocument) {
    expect_kept("tests/data/exchange/sample.json",
                write_book_document(test_support::sample_document()),
                "Copy it if the change is meant.");
}

} // namespace
