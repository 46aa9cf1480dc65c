// The printed record of real batches of the invented demonstration book, read back as an officer
// would: from the paper (pdftotext), not from our own data.
#include "core/services/batch_record.h"
#include "core/services/demo_book.h"
#include "tests/support/temp_folder.h"
#include "tests/support/ui/printed.h"
#include "ui/presenters/acceptances.h"
#include "ui/print/batch_record_sheet.h"
#include "ui/print/calibration_sheet.h"
#include "ui/print/mix_bench_sheet.h"
#include "ui/print/print_sheet.h"
#include "ui/print/record_tags.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace {

using namespace core;
using saltloft::testing::TempFolder;
using services::BatchRecord;
using services::Book;

constexpr std::int64_t now_s = 1'781'000'000;

const ui::print::PrintStamp stamp{units::Instant::from_unix_seconds(now_s),
                                  QStringLiteral("saltloft test")};

class BatchRecordTest : public ::testing::Test {
  protected:
    static void SetUpTestSuite() {
        folder = new TempFolder;
        auto opened = Book::create(folder->file("demo.saltloft"), {.now = stamp.at});
        ASSERT_TRUE(opened.has_value()) << opened.error().detail;
        book = new Book(std::move(*opened));
        const auto filled = services::fill_demo_book(*book, {.now = stamp.at});
        ASSERT_TRUE(filled.has_value()) << filled.error().detail;
    }
    static void TearDownTestSuite() {
        delete book;
        delete folder;
        book = nullptr;
        folder = nullptr;
    }

    /// The batch that has the most to tell: sold packs, corrections, a decision.
    static BatchRecord richest() {
        std::optional<BatchRecord> best;
        std::size_t most = 0;
        const auto batches = book->batches();
        for (const model::Batch& batch : *batches) {
            auto record = services::batch_record(*book, batch.id, stamp.at);
            EXPECT_TRUE(record.has_value()) << record.error().detail;
            const std::size_t weight = 100 * record->entries.pack_moves.size() +
                                       record->entries.weighings.size() +
                                       1000 * (record->mix.has_value() ? 1U : 0U);
            if (!best || weight > most) {
                most = weight;
                best = std::move(*record);
            }
        }
        return std::move(*best);
    }

    static QString printed(const ui::print::Sheet& sheet, const char* name) {
        const QString pdf = QString::fromStdString(folder->file(name));
        const auto pages = ui::print::write_pdf(sheet, pdf, stamp, {});
        EXPECT_TRUE(pages.has_value());
        EXPECT_GT(pages.value_or(0), 0);
        if (const char* keep = std::getenv("SALTLOFT_KEEP_SHEETS")) {
            test_support::pdf_pages(pdf, QString::fromUtf8(keep), 80);
        }
        return test_support::pdf_text(pdf);
    }

    static void expect_words(const QString& text, const std::vector<std::string>& wanted) {
        for (const std::string& words : wanted) {
            EXPECT_TRUE(text.contains(QString::fromStdString(words).simplified()))
                << "not on paper: " << words;
        }
    }

    inline static TempFolder* folder = nullptr;
    inline static Book* book = nullptr;
};

QString q(const std::string& text) {
    return QString::fromStdString(text);
}
std::string first_word(const std::string& text) {
    return text.substr(0, text.find(' '));
}

TEST_F(BatchRecordTest, PrintsEachCautionAsItWasReadWithWhoTookItOn) {
    BatchRecord record = richest();
    ASSERT_FALSE(record.entries.people.empty());
    model::Finding caution{.code = "warm_rim", .severity = model::Severity::caution};
    caution.values["humidity"] = units::RelativeHumidity::percent(30);
    auto acceptance =
        ui::presenters::acceptance_of(caution, {}, stamp.at, record.entries.people.front().value.id,
                                      QStringLiteral("thin piece"));
    acceptance.batch = record.batch().id;
    record.entries.acceptances.push_back({.value = acceptance});
    const QString text = printed(ui::print::batch_record_sheet(record, {}), "cautions.pdf");
    expect_words(text, {"Cautions accepted", "can dry hard outside", "thin piece"});
}

// The minimum fields of the reference notes (limits 8.3, inferred from 9 CFR 417.5 and the CFIA
// annex on Trichinella), each looked for on the paper.
TEST_F(BatchRecordTest, HasEveryRequiredField) {
    const BatchRecord record = richest();
    const QString text = printed(ui::print::batch_record_sheet(record, {}), "record.pdf");
    const model::Batch& batch = record.batch();
    expect_words(text,
                 {batch.code, batch.product, batch.species, batch.supplier, batch.supplier_lot});
    expect_words(text, {"Identification",
                        "Frozen before curing",
                        "Green weight",
                        "Inputs with lots",
                        "Computed doses",
                        "Nitrite, as sodium nitrite",
                        "Stages",
                        "Temperature and humidity",
                        "Weighings with corrections",
                        "Deviations and corrective action",
                        "action taken",
                        "Instruments and calibration",
                        "Laboratory measurements",
                        "water activity",
                        "pH",
                        "Decisions",
                        "One step back",
                        "One step forward",
                        "Mass balance",
                        "Signatures",
                        "Released by",
                        "Page 1 of"});
    ASSERT_FALSE(record.entries.pieces.empty());
    for (const auto& piece : record.entries.pieces) {
        expect_words(text, {"Piece " + piece.value.code});
    }
    ASSERT_FALSE(record.entries.ingredient_uses.empty());
    for (const auto& use : record.entries.ingredient_uses) {
        for (const auto& lot : record.entries.lots) {
            if (use.value.lot == lot.value.id) {
                expect_words(text, {lot.value.code});
            }
        }
    }
    ASSERT_FALSE(record.entries.stages.empty());
    ASSERT_FALSE(record.entries.instruments.empty());
    for (const auto& instrument : record.entries.instruments) {
        expect_words(text, {instrument.value.name});
    }
    ASSERT_FALSE(record.entries.decisions.empty());
    ASSERT_TRUE(record.mix.has_value());
    ASSERT_FALSE(record.mix->limits.empty());
    for (const auto& check : record.mix->limits) {
        expect_words(text, {check.limit.source.title});
    }
}

TEST_F(BatchRecordTest, EveryBatchPrintsWithItsWeighings) {
    const auto batches = book->batches();
    int amended = 0;
    for (const model::Batch& batch : *batches) {
        const auto record = services::batch_record(*book, batch.id, stamp.at);
        ASSERT_TRUE(record.has_value());
        const QString text = printed(ui::print::batch_record_sheet(*record, {}), "each.pdf");
        for (const auto& weighing : record->entries.weighings) {
            if (weighing.value.amends) {
                ++amended;
                ASSERT_TRUE(weighing.entered.has_value());
                // A long reason is broken over lines on paper; its first word is not.
                expect_words(text, {first_word(weighing.entered->why), "corrects"});
            }
        }
        EXPECT_FALSE(text.contains(QStringLiteral(" safe "), Qt::CaseInsensitive));
    }
    EXPECT_GT(amended, 0) << "the demonstration book has no correction to look at";
}

TEST_F(BatchRecordTest, CalibrationSheetNamesEveryInstrument) {
    ui::print::CalibrationMonth of{*book->instruments(), *book->all_checks(), *book->people(),
                                   units::Zone::utc().day_of(stamp.at)};
    ASSERT_FALSE(of.instruments.empty());
    ASSERT_FALSE(of.checks.empty());
    of.month = units::Zone::utc().day_of(of.checks.back().at);
    const QString text = printed(ui::print::calibration_sheet(of, {}), "calibration.pdf");
    for (const auto& instrument : of.instruments) {
        expect_words(text, {instrument.name});
    }
    expect_words(text, {of.checks.back().against, "Action taken", "Initials", "75 % RH"});
}

TEST_F(BatchRecordTest, TraceAndBalanceNameEveryHand) {
    const BatchRecord record = richest();
    const QString trace = printed(ui::print::trace_sheet(record, {}), "trace.pdf");
    ASSERT_FALSE(record.entries.pack_moves.empty());
    for (const auto& move : record.entries.pack_moves) {
        expect_words(trace, {first_word(move.value.to_whom)});
    }
    for (const auto& pack : record.entries.packs) {
        expect_words(trace, {pack.value.code});
    }
    const QString balance = printed(ui::print::mass_balance_sheet(record, {}), "balance.pdf");
    expect_words(balance, {"Packed, but not accounted for", "Waste", "Sold", "Green weight"});
}

TEST_F(BatchRecordTest, MixSheetHasABoxForEveryLineAndEveryCaution) {
    const BatchRecord record = richest();
    ASSERT_TRUE(record.mix.has_value());
    const ui::print::Sheet sheet = ui::print::mix_bench_sheet(record, {});
    const QString text = printed(sheet, "mix.pdf");
    EXPECT_GE(text.count(QChar(0x2610)), static_cast<int>(record.mix->lines.size()));
    for (const auto& line : record.mix->lines) {
        expect_words(text, {first_word(line.name)});
    }
    const auto notices = std::count_if(sheet.blocks.begin(), sheet.blocks.end(), [](const auto& b) {
        return std::holds_alternative<ui::print::Notice>(b);
    });
    EXPECT_EQ(static_cast<std::size_t>(notices), record.mix->findings.size());
}

TEST_F(BatchRecordTest, EveryTagOfEveryBatchReadsBack) {
    const auto batches = book->batches();
    int tags_read = 0;
    for (const model::Batch& batch : *batches) {
        const auto record = services::batch_record(*book, batch.id, stamp.at);
        const auto tags = ui::print::tags_of(*record, {});
        if (tags.empty()) {
            continue;
        }
        const QString pdf = QString::fromStdString(folder->file("tags-" + batch.code + ".pdf"));
        ASSERT_TRUE(
            ui::print::write_tags_pdf(tags, ui::print::TagSize::large, pdf, stamp, {}).has_value());
        QStringList expected;
        for (const auto& tag : tags) {
            expected.append(q(exchange::tag_text(tag.code)));
        }
        QStringList found;
        for (const QString& page : test_support::pdf_pages(pdf, q(folder->path().string()))) {
            found += test_support::codes_on(page);
        }
        found.sort();
        expected.sort();
        EXPECT_EQ(found, expected);
        tags_read += static_cast<int>(found.size());
    }
    EXPECT_GT(tags_read, 10);
}

} // namespace
