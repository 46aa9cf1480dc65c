#include "app/window/print_batch.h"

#include "ui/presenters/preferences.h"
#include "ui/print/batch_record_sheet.h"
#include "ui/print/calibration_sheet.h"
#include "ui/print/mix_bench_sheet.h"
#include "ui/print/record_tags.h"
#include "ui/text/languages.h"

#include <QGuiApplication>
#include <QSettings>
#include <memory>

namespace app::window {

namespace {

/// Fonts need a QGuiApplication; the offscreen platform is there on every machine.
class Offscreen {
  public:
    Offscreen() {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        application_ = std::make_unique<QGuiApplication>(argc_, argv_);
        QSettings settings(QSettings::IniFormat, QSettings::UserScope, QStringLiteral("saltloft"),
                           QStringLiteral("saltloft"));
        const QLocale desktop = QLocale::system();
        const auto preferences = ui::presenters::load_preferences(settings, desktop);
        ui::text::speak(*application_, preferences.language, desktop);
        style_ = ui::presenters::style_of(preferences, desktop);
    }
    [[nodiscard]] const ui::text::Style& style() const { return style_; }

  private:
    int argc_ = 1;
    std::string name_ = "saltloft";
    char* argv_[2] = {name_.data(), nullptr};
    std::unique_ptr<QGuiApplication> application_;
    ui::text::Style style_;
};

const QString by = QStringLiteral("saltloft " SALTLOFT_VERSION);

} // namespace

core::base::Result<int> print_calibration(const core::services::Book& book, core::units::Day month,
                                          core::units::Instant now, const std::string& path) {
    const Offscreen offscreen;
    const auto instruments = book.instruments();
    const auto checks = book.all_checks();
    const auto people = book.people();
    if (!instruments || !checks || !people) {
        return tl::unexpected<core::base::Error>(!instruments ? instruments.error()
                                                 : !checks    ? checks.error()
                                                              : people.error());
    }
    const auto& style = offscreen.style();
    const auto sheet = ui::print::calibration_sheet({*instruments, *checks, *people, month}, style);
    return ui::print::write_pdf(sheet, QString::fromStdString(path), {now, by}, style);
}

core::base::Result<int> print_batch(const core::services::BatchRecord& record,
                                    const std::string& sheet, const std::string& path) {
    const Offscreen offscreen;
    const auto& style = offscreen.style();
    const ui::print::PrintStamp stamp{record.made_at, by};
    const QString out = QString::fromStdString(path);
    if (sheet == "tags" || sheet == "small-tags") {
        const auto size = sheet == "tags" ? ui::print::TagSize::large : ui::print::TagSize::small;
        return ui::print::write_tags_pdf(ui::print::tags_of(record, style), size, out, stamp,
                                         style);
    }
    if (sheet == "trace") {
        return ui::print::write_pdf(ui::print::trace_sheet(record, style), out, stamp, style);
    }
    if (sheet == "balance") {
        return ui::print::write_pdf(ui::print::mass_balance_sheet(record, style), out, stamp,
                                    style);
    }
    if (sheet == "mix") {
        return ui::print::write_pdf(ui::print::mix_bench_sheet(record, style), out, stamp, style);
    }
    return ui::print::write_pdf(ui::print::batch_record_sheet(record, style), out, stamp, style);
}

} // namespace app::window
