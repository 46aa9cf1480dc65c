#include "core/exchange/csv_table.h"

#include <gtest/gtest.h>

#include <string>

namespace {

using namespace core::exchange;
using core::base::ErrorCode;
using Cells = std::vector<std::string>;

// RFC 4180, section 2: the examples of its rules 1 to 7.
TEST(CsvTable, ReadsTheRfcExamples) {
    const auto table = read_csv("field_name,b,c\r\naaa,bbb,ccc\r\n\"aaa\",\"b \r\nbb\",\"ccc\"\r\n"
                                "\"aaa\",\"b\"\"bb\",ccc");
    ASSERT_TRUE(table);
    EXPECT_EQ(table->header.cells, (Cells{"field_name", "b", "c"}));
    ASSERT_EQ(table->rows.size(), 3U);
    EXPECT_EQ(table->rows[1].cells, (Cells{"aaa", "b \r\nbb", "ccc"}));
    EXPECT_EQ(table->rows[2].cells, (Cells{"aaa", "b\"bb", "ccc"}));
}

TEST(CsvTable, CountsLinesAsAnEditorDoes) {
    for (const std::string end : {"\n", "\r\n", "\r"}) {
        const auto table = read_csv("# a note" + end + "h,i" + end + end + "1,\"two" + end +
                                    "lines\"" + end + "2,3" + end);
        ASSERT_TRUE(table);
        EXPECT_EQ(table->header.line, 2U);
        ASSERT_EQ(table->rows.size(), 2U);
        EXPECT_EQ(table->rows[0].line, 4U);
        EXPECT_EQ(table->rows[1].line, 6U);
        EXPECT_EQ(table->comments, Cells{" a note"});
    }
}

TEST(CsvTable, FindsTheDelimiterInTheHeader) {
    EXPECT_EQ(read_csv("a;b\n1,5;2,5\n")->delimiter, ';');
    EXPECT_EQ(read_csv("a\tb\n1,5\t2,5\n")->rows[0].cells, (Cells{"1,5", "2,5"}));
    EXPECT_EQ(read_csv("\"a;x\",b\n1,2\n")->delimiter, ',');
}

TEST(CsvTable, ReadsMarksAndOldEncodings) {
    const auto marked = read_csv("\xEF\xBB\xBFpiece,note\nK7,x\n");
    EXPECT_EQ(marked->coding, TextCoding::utf8_with_mark);
    EXPECT_EQ(marked->header.cells[0], "piece");
    // 0xE9 is e-acute, 0x80 the euro sign in Windows-1252 (Unicode Consortium, CP1252.TXT).
    const auto old = read_csv("piece,note\nK7,affin\xE9 3 \x80\n");
    EXPECT_EQ(old->coding, TextCoding::windows_1252);
    EXPECT_EQ(old->rows[0].cells[1], "affin\xC3\xA9 3 \xE2\x82\xAC");
    EXPECT_EQ(read_csv("a,b\nK\xC3\xB6,1\n")->coding, TextCoding::utf8);
}

TEST(CsvTable, RefusesWhatItCannotRead) {
    const auto code = [](std::string_view bytes) { return read_csv(bytes).error().code; };
    EXPECT_EQ(code(""), ErrorCode::empty_input);
    EXPECT_EQ(code("\n\n\n"), ErrorCode::empty_input);
    EXPECT_EQ(code("# only a note"), ErrorCode::empty_input);
    EXPECT_EQ(code(std::string("\xFF\xFE") + "a"), ErrorCode::bad_format);
    EXPECT_EQ(read_csv(std::string("a,b\n1,\0", 7)).error().where, "line 2");
    const auto open = read_csv("a,b\n1,2\n3,\"4\n5,6\n");
    EXPECT_EQ(open.error().code, ErrorCode::bad_format);
    EXPECT_EQ(open.error().detail, "unclosed quote");
    EXPECT_EQ(open.error().where, "line 3");
    EXPECT_EQ(read_csv("a,b\n1,\"2\"x\n").error().where, "line 2");
    CsvLimits small;
    small.rows = 1;
    EXPECT_EQ(read_csv("a\n1\n2\n", small).error().code, ErrorCode::out_of_range);
    small.columns = 1;
    EXPECT_EQ(read_csv("a,b\n", small).error().code, ErrorCode::out_of_range);
    small.bytes = 2;
    EXPECT_EQ(read_csv("a,b\n", small).error().code, ErrorCode::out_of_range);
}

TEST(CsvTable, ComparesColumnNamesLoosely) {
    EXPECT_EQ(column_key("Weight (g)"), "weight_g");
    EXPECT_EQ(column_key("  Taken at "), "taken_at");
    EXPECT_EQ(column_key("RH %"), "rh_percent");
    EXPECT_EQ(column_key("moisture%"), "moisture_percent");
}

TEST(CsvTable, WritesWhatItReads) {
    const Cells cells{"plain", "with, comma", "with \"quote\"", "two\r\nlines", " blank edge ",
                      "",      "semi;colon",  "#first"};
    std::string out;
    append_csv_row(out, {"a", "b", "c", "d", "e", "f", "g", "h"});
    append_csv_row(out, cells);
    const auto table = read_csv(out);
    ASSERT_TRUE(table);
    EXPECT_EQ(table->rows.at(0).cells, cells);
}

// The characters a spreadsheet takes for the start of a formula: OWASP, "CSV Injection".
TEST(CsvTable, NeutralisesFormulas) {
    for (const std::string bad : {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "'x", "''",
                                  "\xEF\xBC\x9D"
                                  "1",
                                  "\xEF\xBC\xA0"
                                  "A"}) {
        const std::string cell = neutral_text(bad);
        EXPECT_EQ(cell.front(), '\'') << bad;
        EXPECT_EQ(plain_text(cell), bad);
    }
    for (const std::string good : {"K7", "", "a=b", "3-4", "5 o'clock"}) {
        EXPECT_EQ(neutral_text(good), good);
        EXPECT_EQ(plain_text(good), good);
    }
    EXPECT_EQ(plain_text("'tis"), "'tis"); // a foreign file's own apostrophe stays
}

} // namespace
