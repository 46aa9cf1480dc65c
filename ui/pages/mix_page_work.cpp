// What the mix page computes, shows and keeps; its layout is in mix_page.cpp.
#include "ui/look/pieces.h"
#include "ui/pages/mix_own_dialog.h"
#include "ui/pages/mix_page.h"
#include "ui/pages/mix_use_dialog.h"
#include "ui/presenters/workspace.h"
#include "ui/print/mix_bench_sheet.h"
#include "ui/print/printable.h"
#include "ui/text/error_words.h"
#include "ui/text/finding_words.h"
#include "ui/text/quantity_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRegularExpression>
#include <QStyle>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

namespace ui::pages {
namespace {

using core::model::Severity;

/// As high as its rows are at this width.
void fit_height(QTableWidget* table) {
    table->resizeRowsToContents();
    int height = table->horizontalHeader()->sizeHint().height() + 2 * table->frameWidth();
    for (int r = 0; r < table->rowCount(); ++r) {
        height += table->rowHeight(r);
    }
    // Room for the bar below when many pieces need more width than there is.
    if (table->horizontalHeader()->length() > table->viewport()->width()) {
        height += table->style()->pixelMetric(QStyle::PM_ScrollBarExtent);
    }
    table->setFixedHeight(height);
}

/// Fills a table of texts and makes it as high as its rows.
void fill(QTableWidget* table, const presenters::TextTable& text) {
    table->clear();
    table->setColumnCount(static_cast<int>(text.heads.size()));
    table->setRowCount(static_cast<int>(text.rows.size()));
    table->setHorizontalHeaderLabels(text.heads);
    for (int r = 0; r < table->rowCount(); ++r) {
        const auto& cells = text.rows[static_cast<std::size_t>(r)];
        for (int c = 0; c < table->columnCount(); ++c) {
            auto* item = new QTableWidgetItem(cells.value(c));
            item->setData(Qt::AccessibleTextRole,
                          text.heads.value(c) + QStringLiteral(": ") + cells.value(c));
            if (c >= text.numbers_from) {
                item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
            }
            table->setItem(r, c, item);
        }
    }
    for (int c = 0; c < table->columnCount(); ++c) {
        auto* head = table->horizontalHeaderItem(c);
        head->setTextAlignment(c >= text.numbers_from ? Qt::AlignRight | Qt::AlignVCenter
                                                      : Qt::AlignLeft | Qt::AlignVCenter);
    }
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    // With a few columns the first takes the rest; with many pieces all keep their own width.
    table->horizontalHeader()->setSectionResizeMode(
        0, text.heads.size() > 6 ? QHeaderView::ResizeToContents : QHeaderView::Stretch);
    fit_height(table);
    table->setVisible(table->rowCount() > 0);
}

QString finding_sentence(const core::model::Finding& finding, const text::Style& style) {
    QString sentence = text::finding_words(finding, style);
    if (finding.source) {
        sentence += QStringLiteral(" (") + text::source_words(*finding.source) + QLatin1Char(')');
    }
    return sentence;
}

QString key_of(const core::model::Finding& finding) {
    return QString::fromStdString(finding.code + " " + finding.place);
}

} // namespace

void MixPage::arrive(const Place& place) {
    fill_recipes();
    if (place.row > 0) {
        const int at = recipes_->findData(place.row);
        if (at >= 0) {
            recipes_->setCurrentIndex(at);
            fill_versions(core::model::RecipeId::from_row(place.row));
        }
    }
}

void MixPage::refresh() {
    fill_recipes();
    past_.load(workspace_);
    keep_->setEnabled(!workspace_.is_read_only());
    recompute();
}

void MixPage::fill_recipes() {
    loading_ = true;
    const QVariant compared = compare_->currentData();
    recipes_->clear();
    compare_->clear();
    recipes_->addItem(tr("a new one"), qlonglong(0));
    compare_->addItem(tr("no other"), qlonglong(0));
    for (const auto& recipe : workspace_.rows(workspace_.book().recipes())) {
        const QString name = QString::fromStdString(recipe.name);
        recipes_->addItem(name, qlonglong(recipe.id.row()));
        for (const auto& version : workspace_.rows(workspace_.book().recipe_versions(recipe.id))) {
            compare_->addItem(tr("%1, version %2").arg(name).arg(version.number),
                              qlonglong(version.id.row()));
        }
    }
    recipes_->setCurrentIndex(
        std::max(0, recipe_ ? recipes_->findData(qlonglong(recipe_->row())) : 0));
    compare_->setCurrentIndex(std::max(0, compare_->findData(compared)));
    loading_ = false;
}

void MixPage::fill_versions(core::model::RecipeId recipe) {
    recipe_ = recipe;
    versions_->clear();
    std::optional<core::model::RecipeVersion> latest;
    for (const auto& version : workspace_.rows(workspace_.book().recipe_versions(recipe))) {
        versions_->addItem(
            version.why.empty()
                ? tr("version %1").arg(version.number)
                : tr("version %1: %2").arg(version.number).arg(QString::fromStdString(version.why)),
            qlonglong(version.id.row()));
        if (!latest || version.number > latest->number) {
            latest = version;
        }
    }
    if (latest) {
        versions_->setCurrentIndex(versions_->findData(qlonglong(latest->id.row())));
        load(*latest);
    }
}

std::optional<core::model::RecipeVersion> MixPage::version_chosen(QComboBox* box) const {
    const qlonglong id = box->currentData().toLongLong();
    if (id <= 0) {
        return std::nullopt;
    }
    return workspace_.one(
        workspace_.book().recipe_version(core::model::RecipeVersionId::from_row(id)));
}

void MixPage::load(const core::model::RecipeVersion& version) {
    const auto recipe = core::mix::read_recipe(version.document);
    if (!recipe) {
        QStringList sentences;
        for (const auto& finding : recipe.error()) {
            sentences << text::finding_words(finding, workspace_.style());
        }
        said_->say(QStringLiteral("stop"), sentences.join(QLatin1Char('\n')));
        return;
    }
    auto entry = presenters::entry_of(*recipe, workspace_.style());
    entry.meat = meat_->text();
    if (entry.meat.isEmpty() && recipe->for_meat) {
        entry.meat = text::words(*recipe->for_meat, workspace_.style());
    }
    if (entry.limits.isEmpty()) { // a recipe that names none is checked against the person's own
        entry.limits = workspace_.preferences().limit_set;
    }
    said_->say({}, {});
    used_past_.reset();
    kept_document_ = QString::fromStdString(core::mix::write_recipe(*recipe));
    show_entry(entry);
}

presenters::MixEntry MixPage::entered() const {
    presenters::MixEntry entry = carried_;
    entry.name = name_->text();
    entry.method = static_cast<core::mix::Method>(method_->currentData().toInt());
    entry.limits = limits_->currentData().toString();
    entry.uptake = uptake_->text();
    entry.loss = loss_->text();
    entry.skin_on = skin_->isChecked();
    entry.fatty = fatty_->isChecked();
    entry.lines = lines_->lines();
    entry.meat = meat_->text();
    const double grams = scale_->currentData().toDouble();
    if (grams > 0) {
        entry.scale_step = core::units::Mass::grams(grams);
    } else {
        entry.scale_step.reset();
    }
    entry.salt_wish = salt_wish_->text();
    entry.nitrite_wish = nitrite_wish_->text();
    return entry;
}

void MixPage::show_entry(const presenters::MixEntry& entry) {
    loading_ = true;
    carried_ = entry;
    accepted_.clear();
    shown_findings_.clear();
    name_->setText(entry.name);
    meat_->setText(entry.meat);
    method_->setCurrentIndex(method_->findData(static_cast<int>(entry.method)));
    limits_->setCurrentIndex(std::max(0, limits_->findData(entry.limits)));
    uptake_->setText(entry.uptake);
    loss_->setText(entry.loss);
    skin_->setChecked(entry.skin_on);
    fatty_->setChecked(entry.fatty);
    salt_wish_->setText(entry.salt_wish);
    nitrite_wish_->setText(entry.nitrite_wish);
    lines_->set_lines(entry.lines, entry.own);
    loading_ = false;
    recompute();
}

std::vector<print::Printable> MixPage::printables() {
    if (shown_ == nullptr || shown_->lines.empty()) {
        return {};
    }
    return {{tr("Mix sheet"), tr("Mix sheet"),
             [shown = shown_, style = workspace_.style(),
              name = name_->text()]() -> core::base::Result<print::Paper> {
                 return print::Paper(print::mix_bench_sheet(*shown, name, style));
             }}};
}

void MixPage::recompute() {
    if (loading_ || keep_ == nullptr) {
        return; // still being built or filled
    }
    const auto entry = entered();
    const bool pickle = entry.method == core::mix::Method::injected ||
                        entry.method == core::mix::Method::immersion_pickup;
    uptake_->setVisible(pickle);
    uptake_label_->setVisible(pickle);
    const auto reading = presenters::read_entry(entry, workspace_.style());
    show_faults(reading.faults);
    show_past();
    core::mix::MixRequest request;
    request.recipe = reading.recipe;
    request.pieces = reading.pieces;
    request.scale_step = entry.scale_step;
    request.today = workspace_.today();
    const auto sheet = core::mix::make_mix_sheet(request, presenters::mix_facts());
    std::optional<core::mix::MixSheet> other;
    if (const auto version = version_chosen(compare_)) {
        if (const auto recipe = core::mix::read_recipe(version->document)) {
            request.recipe = *recipe;
            other = core::mix::make_mix_sheet(request, presenters::mix_facts());
        }
    }
    shown_ = std::make_shared<const core::mix::MixSheet>(sheet);
    show_sheet(sheet, other ? &*other : nullptr);
    show_findings(sheet.findings);
}

void MixPage::fit_tables() {
    for (auto* table : {weigh_, dose_, bounds_}) {
        if (table->rowCount() > 0) {
            fit_height(table);
        }
    }
}

void MixPage::show_faults(const std::vector<presenters::MixFault>& faults) {
    lines_->clear_faults();
    QString meat;
    QStringList elsewhere;
    for (const auto& fault : faults) {
        if (fault.line >= 0) {
            lines_->show_fault(fault.line, fault.sentence);
        } else if (fault.field == QLatin1String("meat")) {
            meat = fault.sentence;
        } else {
            elsewhere << fault.sentence;
        }
    }
    meat_echo_->setText(meat);
    meat_echo_->setVisible(!meat.isEmpty());
    if (!elsewhere.isEmpty()) {
        said_->say(QStringLiteral("stop"), elsewhere.join(QLatin1Char('\n')));
    } else if (said_->isVisible() && !said_->property("keep").toBool()) {
        said_->say({}, {});
    }
    said_->setProperty("keep", false);
}

void MixPage::show_sheet(const core::mix::MixSheet& sheet, const core::mix::MixSheet* other) {
    const auto& style = workspace_.style();
    const bool weighed = sheet.meat > core::units::Mass::grams(0);
    if (!weighed) {
        weigh_->hide();
        dose_->hide();
        bounds_->hide();
        bounds_title_->hide();
        scale_words_->setText(
            tr("Enter the weight of the meat, and here stands what to weigh for it."));
        scale_words_->show();
        return;
    }
    fill(weigh_, presenters::weigh_table(sheet, entered().scale_step, style));
    fill(dose_, presenters::dose_table(sheet, other, compare_->currentText(), style));
    fill(bounds_, presenters::limit_table(sheet, style));
    bounds_title_->setVisible(!sheet.limits.empty());
    const auto words = presenters::scale_words(sheet, entered().scale_step, style);
    scale_words_->setText(words.join(QLatin1Char('\n')));
    scale_words_->setVisible(!words.isEmpty());
}

void MixPage::show_findings(const core::model::Findings& all) {
    // An untouched bench is no mistake: the missing weight is asked for where the sheet goes.
    core::model::Findings findings;
    std::copy_if(all.begin(), all.end(), std::back_inserter(findings),
                 [](const auto& finding) { return finding.code != "no_meat"; });
    std::stable_sort(findings.begin(), findings.end(), [](const auto& a, const auto& b) {
        return static_cast<int>(a.severity) > static_cast<int>(b.severity);
    });
    findings_now_ = findings;
    QStringList sentences;
    for (const auto& finding : findings) {
        sentences << text::severity_look(finding.severity) + QLatin1Char(' ') +
                         finding_sentence(finding, workspace_.style());
    }
    if (sentences == shown_findings_) { // what is being read must not jump at every key press
        show_standing(findings);
        return;
    }
    shown_findings_ = sentences;
    while (auto* item = findings_->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    auto* parent = standing_->parentWidget();
    int number = 0;
    for (const auto& finding : findings) {
        ++number;
        auto* banner =
            new look::Banner(("mix_finding_" + QByteArray::number(number)).constData(), parent);
        const QString sentence = finding_sentence(finding, workspace_.style());
        banner->say(text::severity_look(finding.severity), sentence);
        findings_->addWidget(banner);
        if (finding.severity == Severity::caution) {
            const QString key = key_of(finding);
            auto* accept = look::named(new QCheckBox(tr("Read, and taken on"), parent),
                                       ("mix_accept_" + QByteArray::number(number)).constData(),
                                       tr("Caution read and taken on: %1").arg(sentence));
            accept->setChecked(accepted_.contains(key));
            findings_->addWidget(accept);
            connect(accept, &QCheckBox::toggled, this, [this, key, findings](bool on) {
                if (on) {
                    accepted_.insert(key);
                } else {
                    accepted_.remove(key);
                }
                show_standing(findings);
            });
        }
    }
    show_standing(findings);
}

void MixPage::show_standing(const core::model::Findings& findings) {
    int stops = 0;
    int open = 0;
    for (const auto& finding : findings) {
        stops += finding.severity == Severity::stop ? 1 : 0;
        open +=
            finding.severity == Severity::caution && !accepted_.contains(key_of(finding)) ? 1 : 0;
    }
    if (stops > 0) {
        standing_->setText(tr("Stopped. To mend before this can be used: %1.").arg(stops));
    } else if (open > 0) {
        standing_->setText(tr("Cautions to read and take on by name: %1.").arg(open));
    } else {
        standing_->setText(tr("Nothing stands open."));
    }
    keep_->setEnabled(stops == 0 && !workspace_.is_read_only());
    use_->setEnabled(keep_->isEnabled());
}

void MixPage::find_amounts() {
    const auto entry = entered();
    auto reading = presenters::read_entry(entry, workspace_.style());
    const auto say = [this](const QString& severity, const QString& sentence) {
        said_->say(severity, sentence);
        said_->setProperty("keep", true);
    };
    if (!reading.faults.empty()) {
        show_faults(reading.faults);
        return;
    }
    core::units::Mass meat = core::units::Mass::grams(0);
    for (const auto& piece : reading.pieces) {
        meat += piece.mass;
    }
    if (meat <= core::units::Mass::grams(0)) {
        say(QStringLiteral("caution"), tr("Enter the weight of the meat first."));
        meat_->setFocus();
        return;
    }
    const auto* limits = presenters::mix_facts().limit_sets.find(reading.recipe.limits);
    const auto solution =
        core::mix::solve_mix(reading.recipe, meat, presenters::mix_facts(), limits);
    if (!solution) {
        if (solution.error().code == core::base::ErrorCode::no_such_entry) {
            say(QStringLiteral("caution"), tr("Say how much salt or nitrite you want."));
        } else if (solution.error().code == core::base::ErrorCode::not_allowed) {
            say(QStringLiteral("stop"), tr("Mend the stops first: something is not known yet."));
        } else {
            say(QStringLiteral("stop"), text::error_words(solution.error()));
        }
        return;
    }
    auto found = presenters::entry_of(solution->recipe, workspace_.style());
    found.meat = entry.meat;
    QStringList sentences;
    for (const auto& finding : core::mix::findings_of(*solution)) {
        sentences << text::finding_words(finding, workspace_.style());
    }
    show_entry(found);
    if (sentences.isEmpty()) {
        say(QStringLiteral("done"), tr("Found: the lines not held were changed."));
    } else {
        say(QStringLiteral("caution"), sentences.join(QLatin1Char('\n')));
    }
}

void MixPage::add_own() {
    MixOwnDialog dialog(workspace_.style(), this);
    if (dialog.exec() != QDialog::Accepted) {
        return;
    }
    auto entry = entered();
    auto own = dialog.ingredient();
    own.id = "user:" + std::to_string(entry.own.size() + 1);
    entry.own.push_back(own);
    presenters::MixLineEntry line;
    line.ingredient = QString::fromStdString(own.id);
    entry.lines.push_back(line);
    show_entry(entry);
}

bool MixPage::keep() {
    const auto entry = entered();
    const auto reading = presenters::read_entry(entry, workspace_.style());
    if (!reading.faults.empty()) {
        show_faults(reading.faults);
        return false;
    }
    if (reading.recipe.name.empty()) {
        said_->say(QStringLiteral("caution"), tr("Give the recipe a name first."));
        said_->setProperty("keep", true);
        name_->setFocus();
        return false;
    }
    const std::string document = core::mix::write_recipe(reading.recipe);
    if (recipe_ && QString::fromStdString(document) == kept_document_) {
        Q_EMIT said(tr("Nothing has changed since the last version."));
        return true;
    }
    const std::string why = why_->text().trimmed().toStdString();
    kept_document_ = QString::fromStdString(document);
    const auto performed =
        recipe_ ? workspace_.perform(core::actions::AddRecipeVersion{*recipe_, document}, why)
                : workspace_.perform(core::actions::AddRecipe{reading.recipe.name, document}, why);
    if (!performed) {
        return false;
    }
    if (!recipe_) {
        recipe_ = performed->id<core::model::RecipeId>(core::model::EntryKind::recipe);
    }
    why_->clear();
    fill_recipes();
    fill_versions(*recipe_);
    return true;
}

void MixPage::use_for_batch() {
    core::model::Findings cautions;
    for (const auto& finding : findings_now_) {
        if (finding.severity != Severity::caution) {
            continue;
        }
        if (!accepted_.contains(key_of(finding))) {
            said_->say(QStringLiteral("caution"),
                       tr("Read the cautions and take each of them on first."));
            said_->setProperty("keep", true);
            const auto ticks =
                findChildren<QCheckBox*>(QRegularExpression(QStringLiteral("^mix_accept_")));
            if (!ticks.isEmpty()) {
                ticks.front()->setFocus();
            }
            return;
        }
        cautions.push_back(finding);
    }
    if (!keep()) {
        return;
    }
    for (const auto& version : workspace_.rows(workspace_.book().recipe_versions(*recipe_))) {
        if (QString::fromStdString(version.document) == kept_document_) {
            MixUseDialog dialog(workspace_, version.id, name_->text().trimmed(), cautions, this);
            if (dialog.exec() != QDialog::Accepted) {
                return;
            }
            bool all = true;
            for (const auto& acceptance : dialog.acceptances()) {
                all = all && workspace_.perform(core::actions::AcceptFinding{acceptance});
            }
            if (all) {
                Q_EMIT said(tr("The batch's record names this recipe and the cautions now."));
            }
            return;
        }
    }
}

} // namespace ui::pages
