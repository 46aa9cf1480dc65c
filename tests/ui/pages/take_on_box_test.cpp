// Cautions are taken on by a named person: the box itself, and the pages that start a batch.
#include "ui/pages/take_on_box.h"

#include "tests/ui/pages/support/past_pages.h"
#include "ui/look/pieces.h"
#include "ui/pages/person_box.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>

using namespace ui;
using core::model::Finding;
using core::model::Severity;

namespace {

class TakeOn : public saltloft::testing::PastPages {
  protected:
    std::vector<core::model::Acceptance> accepted() {
        std::vector<core::model::Acceptance> all;
        const auto batches = *workspace->book().batches();
        for (const auto& batch : batches) {
            const auto of_it = *workspace->book().acceptances(batch.id);
            all.insert(all.end(), of_it.begin(), of_it.end());
        }
        return all;
    }
};

Finding caution(const char* code, double value) {
    return {.code = code, .severity = Severity::caution, .values = {{"value", value}}};
}

} // namespace

TEST_F(TakeOn, OtherCautionsMustBeReadAnew) {
    QWidget around;
    pages::TakeOnBox box("box", &around);
    around.show();
    auto* tick = box.findChild<QCheckBox*>(QStringLiteral("box"));
    EXPECT_FALSE(box.isVisible());
    EXPECT_TRUE(box.missing().isEmpty()) << "nothing to take on";
    EXPECT_FALSE(box.person(*workspace).has_value());

    box.set_findings({caution("dose_coarse", 1), {.code = "x", .severity = Severity::note}});
    EXPECT_TRUE(box.isVisible());
    EXPECT_EQ(box.cautions().size(), 1U) << "a note asks for nothing";
    EXPECT_FALSE(box.missing().isEmpty());
    tick->setChecked(true);
    box.set_findings({caution("dose_coarse", 1)});
    EXPECT_TRUE(tick->isChecked()) << "the same caution as read";
    box.set_findings({caution("dose_coarse", 2)});
    EXPECT_FALSE(tick->isChecked()) << "another number is another caution";
    tick->setChecked(true);
    box.set_findings({caution("dose_coarse", 2), caution("limit_unverified", 1)});
    EXPECT_FALSE(tick->isChecked());
    box.set_findings({});
    EXPECT_FALSE(box.isVisible());
}

TEST_F(TakeOn, ATypedNameJoinsTheBookOnce) {
    const auto before = workspace->book().people()->size();
    pages::PersonBox box("who", QStringLiteral("Who"));
    box.load(*workspace);
    EXPECT_FALSE(box.is_named());
    EXPECT_FALSE(box.person(*workspace).has_value());
    box.setEditText(QStringLiteral("  Orla Fern-Test "));
    const auto first = box.person(*workspace);
    ASSERT_TRUE(first.has_value());
    const auto people = *workspace->book().people();
    ASSERT_EQ(people.size(), before + 1);
    const auto added = std::find_if(people.begin(), people.end(),
                                    [&](const auto& person) { return person.id == *first; });
    EXPECT_EQ(added->name, "Orla Fern-Test");
    EXPECT_EQ(added->initials, "OFT");
    for (const char* same : {"orla fern-test", "OFT", "Orla Fern-Test (OFT)"}) {
        box.setEditText(QString::fromLatin1(same));
        EXPECT_EQ(box.person(*workspace), first) << same;
    }
    EXPECT_EQ(workspace->book().people()->size(), before + 1);
    EXPECT_EQ(pages::initials_of(QStringLiteral("a b c d e f g")), QStringLiteral("ABCDE"));
    EXPECT_EQ(pages::initials_of(QStringLiteral("…")), QStringLiteral("…"));
}

TEST_F(TakeOn, APlanWithCautionsGoesIntoTheBookOnlyByName) {
    show("plan");
    // No built-in template has a caution; one of the user's own may.
    const auto box = page->findChildren<pages::TakeOnBox*>();
    ASSERT_EQ(box.size(), 1);
    box.front()->set_findings({caution("stage_length_unknown", 1)});
    const auto batches = workspace->book().batches()->size();
    auto* wrong = find<look::Banner>("plan_wrong");
    find<QPushButton>("plan_accept")->click();
    EXPECT_EQ(workspace->book().batches()->size(), batches) << "not ticked";
    EXPECT_TRUE(wrong->text().contains(QStringLiteral("tick"))) << wrong->text().toStdString();
    find<QCheckBox>("plan_take_on")->setChecked(true);
    find<QComboBox>("plan_take_on_by")->setEditText({});
    find<QPushButton>("plan_accept")->click();
    EXPECT_EQ(workspace->book().batches()->size(), batches) << "by nobody";
    EXPECT_TRUE(wrong->text().contains(QStringLiteral("name"))) << wrong->text().toStdString();

    find<QComboBox>("plan_take_on_by")->setEditText(QStringLiteral("tp"));
    find<QPushButton>("plan_accept")->click();
    ASSERT_EQ(workspace->book().batches()->size(), batches + 1);
    const auto taken = accepted();
    ASSERT_EQ(taken.size(), 1U);
    EXPECT_EQ(taken[0].code, "stage_length_unknown");
    EXPECT_EQ(taken[0].by, who);
    for (const auto& each : taken) {
        ASSERT_TRUE(each.by.has_value()) << each.code;
        EXPECT_NE(each.detail.find("shown"), std::string::npos) << "the sentence as it was read";
    }
    EXPECT_FALSE(find<QCheckBox>("plan_take_on")->isChecked()) << "the next plan is read anew";
}

TEST_F(TakeOn, ANewBatchWithCautionsIsStartedOnlyByName) {
    show("new_batch", {QStringLiteral("new_batch"), 0, QStringLiteral("fresh")});
    find<QLineEdit>("new_product_line")->setText(QStringLiteral("Neck"));
    auto* raw = find<QLineEdit>("new_piece_raw_1_line");
    raw->setFocus();
    QTest::keyClicks(raw, QStringLiteral("1000"));
    QTest::keyClick(raw, Qt::Key_Tab);
    find<QComboBox>("new_cure")->setCurrentIndex(1);
    auto* scale = find<QComboBox>("new_scale");
    scale->setCurrentIndex(scale->count() - 1); // the coarsest step: its own caution
    auto* tick = find<QCheckBox>("new_accept");
    ASSERT_TRUE(tick->isVisible());
    const auto batches = workspace->book().batches()->size();
    tick->setChecked(true);
    find<QComboBox>("new_accept_by")->setEditText({});
    find<QPushButton>("new_start")->click();
    EXPECT_EQ(workspace->book().batches()->size(), batches) << "by nobody";
    find<QComboBox>("new_accept_by")->setEditText(QStringLiteral("Orla Fern"));
    find<QPushButton>("new_start")->click();
    ASSERT_EQ(workspace->book().batches()->size(), batches + 1);
    for (const auto& each : accepted()) {
        EXPECT_TRUE(each.by.has_value());
    }
    EXPECT_FALSE(accepted().empty());
}
