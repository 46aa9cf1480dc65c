#include "ui/text/plan_words.h"

#include <gtest/gtest.h>

using namespace ui::text;
using core::planning::Proposal;
using core::units::Day;
using core::units::MassShare;

namespace {

Proposal proposal() {
    return {.batch = core::model::BatchId::from_row(1),
            .finished_on = Day::from_days_since_epoch(20000)};
}

} // namespace

TEST(ProposalWords, SayTheReasonBeforeTheChange) {
    auto said = proposal();
    said.words = "older pork";
    said.texture_score = -1;
    said.target_next = MassShare::percent(37.5);
    said.salt_score = 1;
    said.finished_salt = MassShare::percent(4.6);
    said.salt_now = MassShare::percent(3);
    said.salt_next = MassShare::percent(2.6);
    const QString words = proposal_words(said, QStringLiteral("B05"), {});
    for (const char* part :
         {"B05", "older pork", "too soft", "37.5", "too salty", "4.6", "2.60", "3.00"}) {
        EXPECT_TRUE(words.contains(QString::fromLatin1(part)))
            << part << ": " << words.toStdString();
    }
    EXPECT_TRUE(salt_reason(said, QStringLiteral("B05"), {}).startsWith(QStringLiteral("B05")));
    EXPECT_TRUE(target_reason(said, QStringLiteral("B05"), {}).contains(QStringLiteral("37.5")));
}

TEST(ProposalWords, NothingToChangeIsSaidWithNothing) {
    EXPECT_TRUE(proposal_words(proposal(), QStringLiteral("B05"), {}).isEmpty());
    EXPECT_TRUE(salt_reason(proposal(), QStringLiteral("B05"), {}).isEmpty());
    EXPECT_TRUE(target_reason(proposal(), QStringLiteral("B05"), {}).isEmpty());
}

TEST(OutcomeWords, EachScoreHasItsOwnWords) {
    QStringList all;
    for (int score = -2; score <= 2; ++score) {
        all << salt_score_words(score) << texture_score_words(score);
    }
    EXPECT_EQ(all.removeDuplicates(), 0);
    core::model::Outcome outcome{.batch = core::model::BatchId::from_row(1),
                                 .change_next_time = "colder"};
    EXPECT_TRUE(outcome_words(outcome).contains(QStringLiteral("colder")));
    outcome.salt = 1;
    EXPECT_TRUE(outcome_words(outcome).startsWith(QStringLiteral("a little too salty")));
}
