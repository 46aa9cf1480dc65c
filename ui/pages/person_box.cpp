#include "ui/pages/person_box.h"

#include "ui/look/pieces.h"
#include "ui/presenters/workspace.h"

#include <QLineEdit>
#include <QRegularExpression>

namespace ui::pages {
namespace {

constexpr int most_initials = 5;

QString shown(const core::model::Person& person) {
    return PersonBox::tr("%1 (%2)").arg(QString::fromStdString(person.name),
                                        QString::fromStdString(person.initials));
}

bool is_same(const QString& typed, const QString& known) {
    return typed.compare(known.trimmed(), Qt::CaseInsensitive) == 0;
}

} // namespace

PersonBox::PersonBox(const char* object_name, const QString& accessible_name, QWidget* parent)
    : QComboBox(parent) {
    look::named(this, object_name, accessible_name);
    setEditable(true);
    setInsertPolicy(QComboBox::NoInsert);
    setMaximumWidth(look::lines(this, 18));
    lineEdit()->setObjectName(QLatin1String(object_name) + QStringLiteral("_line"));
    lineEdit()->setAccessibleName(accessible_name);
    lineEdit()->setPlaceholderText(tr("choose or type a name"));
}

void PersonBox::load(presenters::Workspace& workspace) {
    const QString typed = currentText().trimmed();
    const bool keep = !typed.isEmpty();
    clear();
    addItem(QString(), 0);
    for (const auto& person : workspace.rows(workspace.book().people())) {
        if (person.active) {
            addItem(shown(person), static_cast<qlonglong>(person.id.row()));
        }
    }
    if (keep) {
        setCurrentIndex(std::max(0, findText(typed)));
        setEditText(typed);
    } else if (const auto who = workspace.who()) {
        setCurrentIndex(std::max(0, findData(static_cast<qlonglong>(who->row()))));
    }
}

bool PersonBox::is_named() const {
    return !currentText().trimmed().isEmpty();
}

std::optional<core::model::PersonId> PersonBox::person(presenters::Workspace& workspace) {
    const QString typed = currentText().trimmed();
    if (typed.isEmpty()) {
        return {};
    }
    for (const auto& person : workspace.rows(workspace.book().people())) {
        if (is_same(typed, shown(person)) || is_same(typed, QString::fromStdString(person.name)) ||
            is_same(typed, QString::fromStdString(person.initials))) {
            return person.id;
        }
    }
    const auto performed = workspace.perform(core::actions::AddPerson{
        {.name = typed.toStdString(), .initials = initials_of(typed).toStdString()}});
    return performed
               ? std::optional(performed->id<core::model::PersonId>(core::model::EntryKind::person))
               : std::nullopt;
}

QString initials_of(const QString& name) {
    static const QRegularExpression breaks(QStringLiteral("[\\s\\-]+"));
    QString initials;
    for (const QString& word : name.split(breaks, Qt::SkipEmptyParts)) {
        if (word.front().isLetterOrNumber() && initials.size() < most_initials) {
            initials += word.front().toUpper();
        }
    }
    return initials.isEmpty() ? name.trimmed().left(most_initials) : initials;
}

} // namespace ui::pages
