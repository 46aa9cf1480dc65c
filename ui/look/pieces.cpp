#include "ui/look/pieces.h"

#include <QFontMetrics>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QStyle>
#include <QVBoxLayout>

#include <cmath>

namespace ui::look {
namespace {

QFont scaled(const QWidget* widget, double scale, bool bold) {
    QFont font = widget->font();
    if (font.pointSizeF() > 0) {
        font.setPointSizeF(font.pointSizeF() * scale);
    } else {
        font.setPixelSize(static_cast<int>(font.pixelSize() * scale));
    }
    font.setWeight(bold ? QFont::DemiBold : QFont::Normal);
    return font;
}

/// The underlined letter parts a pair such as "Te" that is else drawn closer, and QLabel asks for
/// the closer one's width: its last letter would be cut.
class FieldLabel : public QLabel {
  public:
    FieldLabel(const QString& text, QWidget* parent) : QLabel(text, parent) {
        setTextFormat(Qt::PlainText);
    }
    [[nodiscard]] QSize sizeHint() const override { return QLabel::sizeHint() + room(); }
    [[nodiscard]] QSize minimumSizeHint() const override {
        return QLabel::minimumSizeHint() + room();
    }

  private:
    [[nodiscard]] QSize room() const { return {lines(this, 0.3), 0}; }
};

QLabel* label(const QString& text, QWidget* parent) {
    auto* made = new QLabel(text, parent);
    made->setTextFormat(Qt::PlainText);
    return made;
}

} // namespace

QLabel* page_title(const QString& text, QWidget* parent) {
    auto* made = label(text, parent);
    made->setFont(scaled(made, 1.5, true));
    return made;
}

QLabel* section_title(const QString& text, QWidget* parent) {
    auto* made = label(text, parent);
    made->setFont(scaled(made, 1.1, true));
    made->setWordWrap(true); // else a long one would set the least width of its page
    return made;
}

QLabel* paragraph(const QString& text, QWidget* parent) {
    auto* made = label(text, parent);
    made->setWordWrap(true);
    made->setTextInteractionFlags(Qt::TextSelectableByMouse);
    made->setFocusPolicy(Qt::NoFocus); // text is read, not visited with Tab
    return made;
}

QLabel* caption(const QString& text, QWidget* parent) {
    auto* made = label(text, parent);
    made->setWordWrap(true);
    made->setProperty("look", QStringLiteral("muted"));
    return made;
}

QLabel* figure(const QString& text, double scale, QWidget* parent) {
    auto* made = label(text, parent);
    made->setFont(scaled(made, scale, true));
    return made;
}

QLabel* field_label(const QString& text, QWidget* buddy, QWidget* parent) {
    auto* made = new FieldLabel(text, parent);
    made->setBuddy(buddy);
    return made;
}

QLineEdit* text_line(const char* object_name, const QString& spoken, const QString& text) {
    return named(new QLineEdit(text), object_name, spoken);
}

void add_field(QFormLayout* form, const QString& label, QWidget* field) {
    form->addRow(field_label(label, field), field);
}

QPushButton* button(const char* object_name, const QString& text, ButtonLook look,
                    QWidget* parent) {
    auto* made = new QPushButton(text, parent);
    made->setAutoDefault(false);
    QString spoken = text;
    named(made, object_name, spoken.remove(QLatin1Char('&')));
    if (look != ButtonLook::ordinary) {
        made->setProperty("look", look == ButtonLook::primary ? QStringLiteral("primary")
                                                              : QStringLiteral("plain"));
    }
    return made;
}

QFrame* card(QVBoxLayout** column, QWidget* parent) {
    auto* frame = new QFrame(parent);
    frame->setProperty("look", QStringLiteral("card"));
    auto* layout = new QVBoxLayout(frame);
    const int margin = lines(frame, 0.75);
    layout->setContentsMargins(margin, margin, margin, margin);
    layout->setSpacing(lines(frame, 0.4));
    *column = layout;
    return frame;
}

QFrame* hairline(QWidget* parent) {
    auto* frame = new QFrame(parent);
    frame->setProperty("look", QStringLiteral("line"));
    frame->setFixedHeight(1);
    return frame;
}

Banner::Banner(const char* object_name, QWidget* parent) : QFrame(parent), label_(paragraph({})) {
    setObjectName(QLatin1String(object_name));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(lines(this, 0.7), lines(this, 0.35), lines(this, 0.7),
                            lines(this, 0.35));
    row->addWidget(label_, 1);
    hide();
}

void Banner::say(const QString& severity, const QString& text) {
    const QString mark = severity == QLatin1String("stop")      ? QStringLiteral("\u25A0 ")
                         : severity == QLatin1String("caution") ? QStringLiteral("\u25B2 ")
                         : severity == QLatin1String("done")    ? QStringLiteral("\u2713 ")
                                                                : QStringLiteral("\u25CF ");
    label_->setText(text.isEmpty() ? QString() : mark + text);
    setAccessibleName(text);
    set_look(this, severity.toLatin1().constData());
    setVisible(!text.isEmpty());
}

QString Banner::text() const {
    return label_->text();
}

EmptyState::EmptyState(const char* object_name, const QString& title, const QString& teaching,
                       const QString& action, QWidget* parent)
    : QWidget(parent) {
    named(this, object_name, title);
    auto* column = new QVBoxLayout(this);
    column->addStretch(1);
    auto* heading = section_title(title);
    heading->setWordWrap(true);
    column->addWidget(heading);
    auto* text = paragraph(teaching);
    text->setMaximumWidth(lines(this, 30));
    column->addWidget(text);
    if (!action.isEmpty()) {
        action_ =
            button((QByteArray(object_name) + "_action").constData(), action, ButtonLook::primary);
        auto* row = new QHBoxLayout;
        row->addWidget(action_);
        row->addStretch(1);
        column->addSpacing(lines(this, 0.5));
        column->addLayout(row);
    }
    column->addStretch(2);
}

int lines(const QWidget* widget, double n) {
    return static_cast<int>(std::lround(QFontMetrics(widget->font()).height() * n));
}

void set_look(QWidget* widget, const char* look) {
    widget->setProperty("look", QString::fromLatin1(look));
    widget->style()->unpolish(widget);
    widget->style()->polish(widget);
    for (auto* child : widget->findChildren<QWidget*>()) {
        child->style()->unpolish(child);
        child->style()->polish(child);
    }
}

} // namespace ui::look
