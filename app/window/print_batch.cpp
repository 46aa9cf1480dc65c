#include "app/window/print_batch.h"

#include "ui/presenters/preferences.h"
#include "ui/print/printable.h"
#include "ui/text/languages.h"

#include <QGuiApplication>
#include <QSettings>
#include <map>
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

/// The command line has checked the name.
ui::print::BatchPaper paper_named(const std::string& sheet) {
    using ui::print::BatchPaper;
    static const std::map<std::string, BatchPaper> papers{{"mix", BatchPaper::mix},
                                                          {"tags", BatchPaper::tags},
                                                          {"small-tags", BatchPaper::small_tags},
                                                          {"trace", BatchPaper::trace},
                                                          {"balance", BatchPaper::balance}};
    const auto found = papers.find(sheet);
    return found != papers.end() ? found->second : BatchPaper::record;
}

constexpr QLatin1String by("saltloft " SALTLOFT_VERSION);

} // namespace

core::base::Result<int> print_calibration(const core::services::Book& book, core::units::Day month,
                                          core::units::Instant now, const std::string& path) {
    const Offscreen offscreen;
    const auto& style = offscreen.style();
    return ui::print::calibration_paper(book, month, style)
        .and_then([&](const ui::print::Paper& paper) {
            return ui::print::write_paper(paper, QString::fromStdString(path), {now, by}, style);
        });
}

core::base::Result<int> print_batch(const core::services::BatchRecord& record,
                                    const std::string& sheet, const std::string& path) {
    const Offscreen offscreen;
    const auto& style = offscreen.style();
    return ui::print::write_paper(ui::print::batch_paper(record, paper_named(sheet), style),
                                  QString::fromStdString(path), {record.made_at, by}, style);
}

} // namespace app::window
