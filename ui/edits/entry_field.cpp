#include "ui/edits/entry_field.h"

#include "ui/look/pieces.h"
#include "ui/text/error_words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QStyle>
#include <QVBoxLayout>

namespace ui::edits {

EntryField::EntryField(const char* object_name, const QString& accessible_name, QWidget* parent)
    : QWidget(parent), line_(new QLineEdit(this)), unit_(new QLabel(this)),
      message_(look::caption({}, this)) {
    setObjectName(QLatin1String(object_name));
    look::named(line_, (QByteArray(object_name) + "_line").constData(), accessible_name);
    setFocusProxy(line_);
    line_->setMinimumWidth(look::lines(this, 7));
    line_->setMaximumWidth(look::lines(this, 12));
    auto* row = new QHBoxLayout;
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(line_);
    row->addWidget(unit_);
    row->addStretch(1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(look::lines(this, 0.15));
    column->addLayout(row);
    column->addWidget(message_);
    unit_->hide();
    message_->hide();
    message_->setObjectName(QLatin1String(object_name) + QStringLiteral("_message"));
    connect(line_, &QLineEdit::textEdited, this, [this] {
        check(false);
        Q_EMIT edited();
    });
    connect(line_, &QLineEdit::editingFinished, this, [this] { check(!is_empty()); });
    connect(line_, &QLineEdit::returnPressed, this, &EntryField::entered);
}

// A field that dies with the focus on it still hears its line lose the focus, when what the text
// means (the derived class) is gone already.
EntryField::~EntryField() {
    line_->disconnect(this);
}

QString EntryField::text() const {
    return line_->text().trimmed();
}

void EntryField::set_text(const QString& text) {
    line_->setText(text);
    faulty_ = false;
    check(false);
}

bool EntryField::is_empty() const {
    return text().isEmpty();
}

void EntryField::set_required(bool required) {
    required_ = required;
}

void EntryField::set_unit(const QString& unit) {
    unit_->setText(unit);
    unit_->setVisible(!unit.isEmpty());
}

void EntryField::set_placeholder(const QString& text) {
    line_->setPlaceholderText(text);
}

void EntryField::set_read_only(bool read_only) {
    line_->setReadOnly(read_only);
}

void EntryField::show_fault(const QString& sentence) {
    faulty_ = !sentence.isEmpty();
    message_->setText(sentence);
    message_->setVisible(faulty_);
    look::set_look(message_, faulty_ ? "error" : "muted");
    line_->setProperty("wrong", faulty_);
    line_->style()->unpolish(line_);
    line_->style()->polish(line_);
    // Read out with the field, not only seen below it.
    line_->setAccessibleDescription(sentence);
}

bool EntryField::is_good() const {
    return is_empty() ? !required_ : understood(text()).has_value();
}

bool EntryField::validate() {
    check(true);
    return is_good();
}

QString EntryField::message() const {
    return message_->isVisibleTo(this) ? message_->text() : QString();
}

void EntryField::check(bool show) {
    if (is_empty()) {
        show_fault(show && required_
                       ? text::error_words({core::base::ErrorCode::empty_input, {}, {}})
                       : QString());
        return;
    }
    const auto meaning = understood(text());
    if (!meaning) {
        if (show || faulty_) {
            show_fault(text::error_words(meaning.error()));
        } else {
            show_fault({});
        }
        return;
    }
    show_fault({});
    // Echo only what differs from what is typed: "740" in grams needs none.
    const auto plain = [](QString t) {
        return t.remove(QChar(QChar::Nbsp)).remove(QLatin1Char(' ')).toLower();
    };
    const QString& echo = *meaning;
    const QString typed = plain(text());
    if (!echo.isEmpty() && plain(echo) != typed && plain(echo) != typed + plain(unit_->text())) {
        message_->setText(echo_mark() + echo);
        message_->setVisible(true);
    }
}

} // namespace ui::edits
