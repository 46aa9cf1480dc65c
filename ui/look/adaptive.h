#pragma once

#include <QLayout>
#include <QVector>
#include <QWidget>

class QBoxLayout;

/// Layouts that keep pages whole in a small window or with a large font: what does not fit
/// beside goes below, nothing is cut off.
namespace ui::look {

/// A page's head: the first widget (the title) on the left, the others on the right; where they
/// do not fit in one line the others flow into lines of their own.
class HeadRow : public QLayout {
  public:
    explicit HeadRow(int spacing);
    ~HeadRow() override;
    void addItem(QLayoutItem* item) override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSize() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    void setGeometry(const QRect& rect) override;
    [[nodiscard]] int count() const override { return static_cast<int>(items_.size()); }
    [[nodiscard]] QLayoutItem* itemAt(int index) const override { return items_.value(index); }
    QLayoutItem* takeAt(int index) override;
    [[nodiscard]] Qt::Orientations expandingDirections() const override { return {}; }

  private:
    int place(const QRect& rect, bool really) const;
    QVector<QLayoutItem*> items_;
};

/// Widgets beside each other, or below each other when there are fewer than `lines` line heights
/// of width.
class SideBySide : public QWidget {
  public:
    SideBySide(double lines, QWidget* parent = nullptr);
    void add(QWidget* widget, int stretch);
    void add(QLayout* layout, int stretch);
    /// Room behind the last one, which keeps buttons as narrow as their words.
    void add_stretch();

  protected:
    void resizeEvent(QResizeEvent* event) override;
    bool event(QEvent* event) override;

  private:
    void turn();
    QBoxLayout* box_;
    QSpacerItem* spare_ = nullptr;
    double lines_;
};

} // namespace ui::look
