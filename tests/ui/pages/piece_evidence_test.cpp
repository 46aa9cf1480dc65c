// A piece's photos, its air and its warm finish: on the piece page and on the review, with real
// widgets over the invented demo book.
#include "core/services/demo_book.h"
#include "core/store/connection.h"
#include "core/store/store.h"
#include "tests/support/take.h"
#include "tests/support/temp_folder.h"
#include "ui/look/pieces.h"
#include "ui/pages/note_dialog.h"
#include "ui/pages/page_registry.h"
#include "ui/pages/photos.h"
#include "ui/presenters/workspace.h"

#include <QAction>
#include <QApplication>
#include <QBuffer>
#include <QComboBox>
#include <QFile>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QSignalSpy>
#include <QTabWidget>
#include <QTableView>
#include <QTest>
#include <QTimer>
#include <functional>
#include <gtest/gtest.h>
#include <memory>

using namespace ui;
using core::model::PieceState;
using core::services::Book;
using saltloft::testing::take;

namespace piece_evidence_test {
namespace {

const auto now = core::units::Instant::from_unix_seconds(1'772'352'000); // 2026-03-01T08:00:00Z

std::vector<unsigned char> picture(QColor colour) {
    QImage image(64, 48, QImage::Format_RGB32);
    image.fill(colour);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "PNG");
    return {bytes.begin(), bytes.end()};
}

class PieceEvidence : public ::testing::Test {
  protected:
    void SetUp() override {
        auto book = take(
            Book::open(folder.file("pages.saltloft"), {.now = now, .create_if_missing = true}));
        ASSERT_TRUE(core::services::fill_demo_book(book, {.now = now}).has_value());
        workspace = std::make_unique<presenters::Workspace>(
            std::move(book), presenters::Preferences{},
            QLocale(QLocale::English, QLocale::UnitedKingdom), [] { return now; });
        core::services::PieceFilter drying;
        drying.states = {PieceState::drying};
        std::size_t most = 0;
        for (const auto& history : take(workspace->book().piece_histories(drying))) {
            if (history.weighings.size() > most) {
                most = history.weighings.size();
                piece = history.piece;
            }
        }
    }
    void show(const char* id) {
        for (const auto& entry : pages::all_pages()) {
            if (QLatin1String(entry.id) == QLatin1String(id)) {
                page.reset(entry.make(*workspace, nullptr));
            }
        }
        page->resize(1200, 900);
        page->show();
        page->arrive({QString::fromLatin1(id), static_cast<qint64>(piece.id.row()), {}});
        page->refresh();
        QObject::connect(workspace.get(), &presenters::Workspace::changed, page.get(),
                         [this] { page->refresh(); });
        ASSERT_TRUE(QTest::qWaitForWindowExposed(page.get()));
    }
    template <class W>
    W* find(const char* name, QWidget* root = nullptr) {
        auto* widget = (root != nullptr ? root : page.get())->findChild<W*>(QLatin1String(name));
        EXPECT_NE(widget, nullptr) << name;
        return widget;
    }
    void note(const char* text, std::vector<unsigned char> photo, const char* name) {
        ASSERT_TRUE(workspace->perform(core::actions::AddNote{{.batch = piece.batch,
                                                               .piece = piece.id,
                                                               .at = now,
                                                               .kind = core::model::NoteKind::look,
                                                               .text = text,
                                                               .photo_name = name,
                                                               .photo = std::move(photo)}}));
    }
    /// Runs `open`, which opens a dialog, and hands the dialog to `with`; it must be closed after.
    void in_dialog(const std::function<void()>& open, const std::function<void(QDialog&)>& with) {
        bool met = false;
        QTimer::singleShot(0, [&] {
            auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
            ASSERT_NE(dialog, nullptr);
            met = true;
            with(*dialog);
            if (dialog->isVisible()) {
                dialog->reject();
            }
        });
        open();
        EXPECT_TRUE(met);
    }
    QString evidence() {
        QString all;
        auto* model = find<QTableView>("evidence_table")->model();
        for (int row = 0; row < model->rowCount(); ++row) {
            for (int column = 0; column < 3; ++column) {
                all += model->index(row, column).data().toString() + QLatin1Char('|');
            }
            all += QLatin1Char('\n');
        }
        return all;
    }

    saltloft::testing::TempFolder folder;
    std::unique_ptr<presenters::Workspace> workspace;
    std::unique_ptr<pages::Page> page;
    core::model::Piece piece;
};

} // namespace

TEST_F(PieceEvidence, TheReviewShowsTheAirOfEachStageOrThatThereIsNoLog) {
    show("review");
    const QString all = evidence();
    EXPECT_TRUE(all.contains(QStringLiteral("Stages and their air"))) << all.toStdString();
    EXPECT_TRUE(all.contains(QStringLiteral("temperature|mean "))) << all.toStdString();
    EXPECT_TRUE(all.contains(QStringLiteral("humidity|mean "))) << all.toStdString();
    EXPECT_FALSE(all.contains(QStringLiteral("temperature log,")))
        << "what is logged is not listed as missing";
    ASSERT_TRUE(workspace->book()
                    .store()
                    .change([](core::store::Connection& c) {
                        c.run("DELETE FROM climate_bucket");
                        c.run("DELETE FROM climate_reading");
                    })
                    .has_value());
    page->refresh();
    EXPECT_TRUE(evidence().contains(QStringLiteral(": air|no log|")));
    EXPECT_TRUE(evidence().contains(QStringLiteral("temperature log")));
}

TEST_F(PieceEvidence, PhotosAreShownAndOpenLargeByKeyboard) {
    show("review");
    EXPECT_TRUE(find<QLabel>("review_no_photo")->isVisible()) << "an empty place teaches";
    note("first", picture(Qt::red), "red.png");
    note("second", picture(Qt::blue), "blue.png");
    auto* strip = find<QListWidget>("review_photos");
    ASSERT_EQ(strip->count(), 2);
    EXPECT_FALSE(find<QLabel>("review_no_photo")->isVisible());
    EXPECT_TRUE(
        strip->item(0)->data(Qt::AccessibleTextRole).toString().contains(QStringLiteral("second")))
        << "newest first";
    strip->setFocus();
    strip->setCurrentRow(0);
    in_dialog([&] { QTest::keyClick(strip, Qt::Key_Return); },
              [&](QDialog& dialog) {
                  EXPECT_FALSE(find<pages::PhotoView>("photo_view", &dialog)->is_empty());
                  auto* words = find<QLabel>("photo_words", &dialog);
                  EXPECT_TRUE(words->text().contains(QStringLiteral("blue.png")));
                  QTest::keyClick(find<QPushButton>("photo_close", &dialog), Qt::Key_Right);
                  EXPECT_TRUE(words->text().contains(QStringLiteral("red.png")));
                  EXPECT_FALSE(find<QPushButton>("photo_after", &dialog)->isEnabled());
                  QTest::keyClick(&dialog, Qt::Key_Left);
                  EXPECT_TRUE(words->text().contains(QStringLiteral("blue.png")));
                  QTest::keyClick(&dialog, Qt::Key_Escape);
                  EXPECT_FALSE(dialog.isVisible());
              });
}

TEST_F(PieceEvidence, ADamagedOrMissingPhotoSaysSo) {
    show("piece");
    find<QTabWidget>("piece_tabs")->setCurrentIndex(2);
    note("broken", {1, 2, 3, 4}, "broken.jpg");
    note("lost", picture(Qt::green), "lost.png");
    ASSERT_TRUE(workspace->book()
                    .store()
                    .change([](core::store::Connection& c) {
                        c.run("UPDATE note SET photo_id = NULL WHERE photo_name = 'lost.png'");
                    })
                    .has_value());
    auto* table = find<QTableView>("note_table");
    const auto open_note = [&](const QString& text) {
        for (int row = 0; row < table->model()->rowCount(); ++row) {
            if (table->model()->index(row, 2).data().toString() == text) {
                table->setCurrentIndex(table->model()->index(row, 0));
            }
        }
        table->setFocus();
        QTest::keyClick(table, Qt::Key_Return);
    };
    in_dialog([&] { open_note(QStringLiteral("broken")); },
              [&](QDialog& dialog) {
                  EXPECT_TRUE(find<look::Banner>("photo_wrong", &dialog)
                                  ->text()
                                  .contains(QStringLiteral("cannot be shown")));
                  EXPECT_TRUE(find<QPushButton>("photo_save", &dialog)->isEnabled());
              });
    in_dialog([&] { open_note(QStringLiteral("lost")); },
              [&](QDialog& dialog) {
                  EXPECT_TRUE(find<look::Banner>("photo_wrong", &dialog)
                                  ->text()
                                  .contains(QStringLiteral("no longer in the book")));
                  EXPECT_FALSE(find<QPushButton>("photo_save", &dialog)->isEnabled());
              });
    note("only words", {}, "");
    QSignalSpy said(page.get(), &pages::Page::said);
    open_note(QStringLiteral("only words"));
    ASSERT_EQ(said.count(), 1);
    EXPECT_EQ(said.front().front().toString(), QStringLiteral("This note has no photo."));
}

TEST_F(PieceEvidence, ANoteTakesPicturesOnly) {
    pages::NoteDialog dialog(*workspace, piece.id, piece.batch, nullptr);
    QFile text(QString::fromStdString(folder.file("words.jpg")));
    ASSERT_TRUE(text.open(QIODevice::WriteOnly));
    text.write("no picture");
    text.close();
    EXPECT_FALSE(dialog.add_photo(text.fileName()));
    EXPECT_FALSE(dialog.add_photo(QStringLiteral("/nowhere/at/all.jpg")));
    QFile image(QString::fromStdString(folder.file("red.png")));
    ASSERT_TRUE(image.open(QIODevice::WriteOnly));
    const auto bytes = picture(Qt::red);
    image.write(reinterpret_cast<const char*>(bytes.data()), static_cast<qint64>(bytes.size()));
    image.close();
    EXPECT_TRUE(dialog.add_photo(image.fileName()));
}

TEST_F(PieceEvidence, AWarmFinishIsReckonedWhileTypingAndKeptAsANote) {
    show("piece");
    auto* action = page->findChild<QAction*>(QStringLiteral("event_warm"));
    ASSERT_NE(action, nullptr);
    core::services::NoteFilter filter;
    filter.piece = piece.id;
    const auto before = take(workspace->book().notes(filter)).size();
    in_dialog([&] { action->trigger(); },
              [&](QDialog& dialog) {
                  const auto type = [&](const char* field, const char* text) {
                      auto* line = find<QLineEdit>(field, &dialog);
                      line->selectAll();
                      QTest::keyClicks(line, QString::fromUtf8(text));
                  };
                  type("warm_wanted_line", "45");
                  type("warm_air_line", "45");
                  auto* hours = find<QLabel>("warm_hours", &dialog);
                  EXPECT_TRUE(hours->text().startsWith(QStringLiteral("About ")))
                      << hours->text().toStdString();
                  EXPECT_GT(find<QTableView>("warm_exposure", &dialog)->model()->rowCount(), 4);
                  QString findings;
                  for (auto* banner : dialog.findChildren<look::Banner*>()) {
                      findings += banner->text();
                  }
                  EXPECT_TRUE(findings.contains(QStringLiteral("where microbes grow")));
                  EXPECT_TRUE(findings.contains(QStringLiteral("Staphylococcus")));
                  type("warm_humidity_line", "-3");
                  QTest::mouseClick(find<QPushButton>("dialog_keep", &dialog), Qt::LeftButton);
                  EXPECT_TRUE(dialog.isVisible()) << "what cannot be is not kept";
                  type("warm_humidity_line", "35");
                  QTest::mouseClick(find<QPushButton>("dialog_keep", &dialog), Qt::LeftButton);
                  EXPECT_FALSE(dialog.isVisible());
              });
    const auto notes = take(workspace->book().notes(filter));
    ASSERT_EQ(notes.size(), before + 1);
    const auto text = QString::fromStdString(notes.front().text);
    EXPECT_EQ(notes.front().kind, core::model::NoteKind::action);
    EXPECT_TRUE(text.contains(QStringLiteral("Warm finish, planned"))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("In the growth range of Staphylococcus aureus")));
    EXPECT_FALSE(text.contains(QStringLiteral("safe"), Qt::CaseInsensitive));
    workspace->undo();
    EXPECT_EQ(take(workspace->book().notes(filter)).size(), before);
}

TEST_F(PieceEvidence, AFridgeFailureIsFoundOnThePiece) {
    show("piece");
    auto* action = page->findChild<QAction*>(QStringLiteral("event_upset"));
    ASSERT_NE(action, nullptr);
    EXPECT_FALSE(action->toolTip().isEmpty());
    in_dialog(
        [&] { action->trigger(); },
        [&](QDialog& dialog) { EXPECT_EQ(dialog.objectName(), QStringLiteral("upset_dialog")); });
}

} // namespace piece_evidence_test
