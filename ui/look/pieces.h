#pragma once

#include <QFrame>
#include <QLabel>
#include <QPushButton>
#include <QString>

class QAbstractButton;
class QFormLayout;
class QLineEdit;
class QVBoxLayout;

/// Small building blocks, so that all pages look and read alike. Every maker that yields
/// something a person can reach takes its object name and its accessible name.
namespace ui::look {

/// Names a widget for tests and for assistive technology, and returns it.
template <class W>
W* named(W* widget, const char* object_name, const QString& accessible_name) {
    widget->setObjectName(QLatin1String(object_name));
    widget->setAccessibleName(accessible_name);
    return widget;
}

QLabel* page_title(const QString& text, QWidget* parent = nullptr);
QLabel* section_title(const QString& text, QWidget* parent = nullptr);
/// Running text that wraps.
QLabel* paragraph(const QString& text, QWidget* parent = nullptr);
/// A caption: wraps, quieter.
QLabel* caption(const QString& text, QWidget* parent = nullptr);
/// A number that stands out, `scale` times the person's font.
QLabel* figure(const QString& text, double scale, QWidget* parent = nullptr);
/// The label of a field, tied to it so that Alt+letter and screen readers find it.
QLabel* field_label(const QString& text, QWidget* buddy, QWidget* parent = nullptr);
/// A field for a text of the person's own, with what it holds at first.
QLineEdit* text_line(const char* object_name, const QString& spoken, const QString& text = {});
/// A line of a form: the label and the field it is tied to.
void add_field(QFormLayout* form, const QString& label, QWidget* field);

enum class ButtonLook { ordinary, primary, plain };
QPushButton* button(const char* object_name, const QString& text,
                    ButtonLook look = ButtonLook::ordinary, QWidget* parent = nullptr);

/// A bordered ground with its own column layout.
QFrame* card(QVBoxLayout** column, QWidget* parent = nullptr);
QFrame* hairline(QWidget* parent = nullptr);

/// A line of `severity` ("note", "caution", "stop", "done") with a leading mark: colour is
/// never the only sign.
class Banner : public QFrame {
    Q_OBJECT
  public:
    explicit Banner(const char* object_name, QWidget* parent = nullptr);
    void say(const QString& severity, const QString& text);
    [[nodiscard]] QString text() const;

  private:
    QLabel* label_;
};

/// What an empty page shows: what belongs here, and the one thing to do next.
class EmptyState : public QWidget {
    Q_OBJECT
  public:
    EmptyState(const char* object_name, const QString& title, const QString& teaching,
               const QString& action, QWidget* parent = nullptr);
    [[nodiscard]] QPushButton* action() const { return action_; }

  private:
    QPushButton* action_ = nullptr;
};

/// Sizes in the person's font: n times the height of a line.
int lines(const QWidget* widget, double n);

/// Swaps the `look` property and lets the style sheet see it.
void set_look(QWidget* widget, const char* look);

} // namespace ui::look
