// Renders the forms of the window over the invented book to PNG: light, dark, and with the font
// doubled; says which do not fit a screen of 1024x640. Usage: render_dialogs FOLDER
// [--language de] [name...]
#include "tests/screens/demo_window.h"
#include "ui/look/theme.h"
#include "ui/pages/batch_dialog.h"
#include "ui/pages/chamber_dialogs.h"
#include "ui/pages/check_dialog.h"
#include "ui/pages/compare_dialog.h"
#include "ui/pages/event_dialog.h"
#include "ui/pages/import_log_dialog.h"
#include "ui/pages/lost_weight_dialog.h"
#include "ui/pages/main_window.h"
#include "ui/pages/mix_own_dialog.h"
#include "ui/pages/mix_use_dialog.h"
#include "ui/pages/note_dialog.h"
#include "ui/pages/open_trouble_dialog.h"
#include "ui/pages/outcome_dialog.h"
#include "ui/pages/pack_dialogs.h"
#include "ui/pages/people_and_scales.h"
#include "ui/pages/piece_dialog.h"
#include "ui/pages/print_dialog.h"
#include "ui/pages/restore_dialog.h"
#include "ui/pages/salvage_dialog.h"
#include "ui/pages/split_dialogs.h"
#include "ui/pages/take_on_box.h"
#include "ui/pages/upset_dialog.h"
#include "ui/pages/warm_dialog.h"
#include "ui/pages/weighing_dialog.h"
#include "ui/pages/what_if_dialog.h"
#include "ui/print/printable.h"

#include <QApplication>
#include <QDir>
#include <QScreen>
#include <QTemporaryDir>
#include <QVBoxLayout>

#include <cstdio>
#include <functional>
#include <map>

using namespace tests::screens;
using namespace ui::pages;

namespace {

using ui::presenters::PieceLine;
using ui::presenters::Workspace;

/// What the forms are about.
struct Scene {
    Workspace& workspace;
    QString folder;
    PieceLine line;
    core::model::Batch batch;
    core::model::Chamber chamber;
    std::vector<core::model::Sensor> sensors = {};
    std::optional<core::model::Pack> pack = {};
};

core::model::Findings cautions() {
    core::model::Finding one;
    one.code = "dose_salt_low";
    one.severity = core::model::Severity::caution;
    return {one};
}

std::unique_ptr<QDialog> take_on(Scene& scene) {
    auto form = std::make_unique<QDialog>();
    auto* column = new QVBoxLayout(form.get());
    auto* box = new TakeOnBox("take_on", form.get());
    column->addWidget(box);
    box->load(scene.workspace);
    box->set_findings(cautions());
    return form;
}

std::unique_ptr<QDialog> import_form(Scene& scene) {
    const QString log = QDir(scene.folder).filePath(QStringLiteral("log.csv"));
    QFile file(log);
    if (file.open(QIODevice::WriteOnly)) {
        QTextStream out(&file);
        out << "time;temp;rh\n";
        for (int i = 0; i < 300; ++i) {
            out << "2026-11-0" << 1 + i / 100 << " 10:" << 10 + i % 50 << ";12," << i % 9 << ";7"
                << i % 8 << "\n";
        }
    }
    file.close();
    auto form = std::make_unique<ImportLogDialog>(scene.workspace, scene.sensors, nullptr);
    form->set_file(log);
    form->import().wait();
    return form;
}

using Make = std::function<std::unique_ptr<QDialog>(Scene&)>;

template <class Form, class... Arguments>
std::unique_ptr<QDialog> made(Scene& scene, Arguments&&... arguments) {
    return std::make_unique<Form>(scene.workspace, std::forward<Arguments>(arguments)...,
                                  static_cast<QWidget*>(nullptr));
}

std::map<QString, Make> about_pieces() {
    std::map<QString, Make> forms;
    for (const auto kind : EventDialog::kinds()) {
        forms[QStringLiteral("event-%1").arg(static_cast<int>(kind))] = [kind](Scene& s) {
            return made<EventDialog>(s, s.line, kind);
        };
    }
    forms[QStringLiteral("split")] = [](Scene& s) { return made<SplitDialog>(s, s.line); };
    forms[QStringLiteral("merge")] = [](Scene& s) { return made<MergeDialog>(s, s.line); };
    forms[QStringLiteral("what-if")] = [](Scene& s) { return made<WhatIfDialog>(s, s.line); };
    forms[QStringLiteral("warm")] = [](Scene& s) { return made<WarmDialog>(s, s.line); };
    forms[QStringLiteral("lost-weight")] = [](Scene& s) {
        return made<LostWeightDialog>(s, s.line);
    };
    forms[QStringLiteral("piece")] = [](Scene& s) { return made<PieceDialog>(s, s.line.piece()); };
    forms[QStringLiteral("compare")] = [](Scene& s) {
        return made<CompareDialog>(s, s.line.piece().id, std::vector<core::model::PieceId>{});
    };
    forms[QStringLiteral("weighing")] = [](Scene& s) { return made<WeighingDialog>(s, s.line); };
    forms[QStringLiteral("weighing-corrected")] = [](Scene& s) {
        return made<WeighingDialog>(s, s.line, s.line.history.weighings.back());
    };
    forms[QStringLiteral("withdraw")] = [](Scene& s) {
        return made<WithdrawDialog>(
            s, QStringLiteral("812 g"),
            core::actions::WithdrawWeighing{s.line.history.weighings.back().id});
    };
    forms[QStringLiteral("note")] = [](Scene& s) {
        return made<NoteDialog>(s, std::optional(s.line.piece().id),
                                std::optional(s.line.piece().batch));
    };
    return forms;
}

std::map<QString, Make> about_the_rest() {
    std::map<QString, Make> forms;
    forms[QStringLiteral("batch")] = [](Scene& s) { return made<BatchDialog>(s, s.batch); };
    forms[QStringLiteral("outcome")] = [](Scene& s) {
        return made<OutcomeDialog>(s, s.batch, std::optional<core::model::Outcome>());
    };
    forms[QStringLiteral("chamber")] = [](Scene& s) { return made<ChamberDialog>(s, s.chamber); };
    forms[QStringLiteral("sensor")] = [](Scene& s) {
        return made<SensorDialog>(s, s.sensors.front());
    };
    forms[QStringLiteral("sensor-check")] = [](Scene& s) {
        return made<SensorCheckDialog>(s, s.sensors.front());
    };
    forms[QStringLiteral("upset")] = [](Scene& s) {
        return made<UpsetDialog>(s, s.chamber, s.sensors);
    };
    forms[QStringLiteral("import-log")] = import_form;
    forms[QStringLiteral("pack")] = [](Scene& s) {
        return made<PackDialog>(s, std::optional<core::model::PieceId>());
    };
    forms[QStringLiteral("pack-change")] = [](Scene& s) {
        return made<PackChangeDialog>(s, *s.pack);
    };
    forms[QStringLiteral("take")] = [](Scene& s) { return made<TakeDialog>(s, *s.pack); };
    forms[QStringLiteral("person")] = [](Scene& s) {
        return made<PersonDialog>(s, core::model::Person());
    };
    forms[QStringLiteral("scale")] = [](Scene& s) {
        return made<ScaleDialog>(s, core::model::Instrument());
    };
    forms[QStringLiteral("mix-own")] = [](Scene& s) -> std::unique_ptr<QDialog> {
        return std::make_unique<MixOwnDialog>(s.workspace.style(), nullptr);
    };
    forms[QStringLiteral("mix-use")] = [](Scene& s) {
        return made<MixUseDialog>(s, core::model::RecipeVersionId::from_row(1),
                                  QStringLiteral("Coppa"), cautions());
    };
    forms[QStringLiteral("take-on")] = take_on;
    return forms;
}

std::map<QString, Make> about_the_book() {
    std::map<QString, Make> forms;
    forms[QStringLiteral("print")] = [](Scene& s) {
        return made<PrintDialog>(s, ui::print::batch_printables(s.workspace.book(), s.batch.id,
                                                                s.workspace.now(),
                                                                s.workspace.style()));
    };
    forms[QStringLiteral("check")] = [](Scene& s) -> std::unique_ptr<QDialog> {
        auto form = std::make_unique<CheckDialog>(
            CheckDialog::Subject{s.workspace.book().path(), true, true}, s.workspace.style(),
            nullptr);
        form->keeping().wait();
        return form;
    };
    forms[QStringLiteral("restore")] = [](Scene& s) -> std::unique_ptr<QDialog> {
        auto form = std::make_unique<RestoreDialog>(s.workspace.book().path(), s.workspace.style(),
                                                    nullptr);
        form->add_file(QString::fromStdString(s.workspace.book().path()));
        return form;
    };
    forms[QStringLiteral("salvage")] = [](Scene& s) -> std::unique_ptr<QDialog> {
        return std::make_unique<SalvageDialog>(s.workspace.book().path(), s.workspace.style(),
                                               s.workspace.now(), nullptr);
    };
    forms[QStringLiteral("trouble")] = [](Scene&) -> std::unique_ptr<QDialog> {
        const auto error = core::base::fault(core::base::ErrorCode::not_a_book, "letter.doc");
        return std::make_unique<OpenTroubleDialog>(error.value(),
                                                   ways_out(error.value(), true, false), nullptr);
    };
    return forms;
}

Scene scene_of(Workspace& workspace, const QString& folder) {
    const auto& book = workspace.book();
    const auto piece = core::model::PieceId::from_row(row_for(QStringLiteral("piece"), book));
    const auto history = *book.piece_history(piece);
    Scene scene{workspace, folder, ui::presenters::line_in(book, history),
                *book.batch(history.piece.batch), book.chambers()->front()};
    const auto sensors = *book.sensors();
    for (const auto& sensor : sensors) {
        if (sensor.chamber == scene.chamber.id) {
            scene.sensors.push_back(sensor);
        }
    }
    const auto packs = book.packs();
    if (packs && !packs->empty()) {
        scene.pack = packs->front();
    }
    return scene;
}

/// A small laptop's screen for the platform without one; the folder is where its description goes.
void use_small_screen(const QString& folder) {
    const QString path = QDir(folder).filePath(QStringLiteral("screen.json"));
    QFile file(path);
    if (file.open(QIODevice::WriteOnly)) {
        file.write(R"({"screens": [{"name": "small", "x": 0, "y": 0, "width": 1024, "height": 640,
                       "logicalDpi": 96, "logicalBaseDpi": 96, "dpr": 1}]})");
    }
    qputenv("QT_QPA_PLATFORM", "offscreen:configfile=" + path.toLocal8Bit());
}

} // namespace

int main(int argc, char** argv) {
    const QTemporaryDir place;
    use_small_screen(place.path());
    QApplication application(argc, argv);
    const auto [folder, wanted, workspace] =
        as_asked(application, place.filePath(QStringLiteral("demo.saltloft")));
    if (!workspace) {
        return 1;
    }
    Scene scene = scene_of(*workspace, place.path());
    auto forms = about_pieces();
    forms.merge(about_the_rest());
    forms.merge(about_the_book());
    const QFont normal = QApplication::font();
    struct Shot {
        const char* name;
        ui::look::Mode mode;
        double font;
    };
    for (const Shot& shot :
         {Shot{"light", ui::look::Mode::light, 1}, Shot{"dark", ui::look::Mode::dark, 1},
          Shot{"font200", ui::look::Mode::light, 2}}) {
        QFont font = normal;
        font.setPointSizeF(normal.pointSizeF() * shot.font);
        QApplication::setFont(font);
        ui::look::apply_theme(application, shot.mode);
        for (const auto& [name, make] : forms) {
            if (!wanted.isEmpty() && !wanted.contains(name)) {
                continue;
            }
            const auto form = make(scene);
            form->show();
            settle(*workspace);
            const QSize size = form->size();
            const QSize room = form->screen()->availableSize();
            if (size.width() > room.width() || size.height() > room.height()) {
                std::printf("%s, %s: %dx%d\n", qPrintable(name), shot.name, size.width(),
                            size.height());
            }
            form->grab().save(QDir(folder).filePath(
                QStringLiteral("form-%1-%2.png").arg(name, QLatin1String(shot.name))));
        }
    }
    return 0;
}
