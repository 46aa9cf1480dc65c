#pragma once

#include "ui/charts/chart_spec.h"

#include <QWidget>
#include <memory>

class QLabel;
class QPushButton;
class QStackedWidget;

namespace ui::charts {

class ChartPainter;
class ChartTable;

/// A chart on screen: drag to pan, wheel or + and - to zoom, double-click or 0 for all, move over
/// it for a read-out, Left and Right step through the points, Enter or a click chooses one.
/// The read-out line below says in words what the pointer or the keys are on. "As a table" beside
/// it puts the same content as rows in the drawing's place.
class ChartView : public QWidget {
    Q_OBJECT
  public:
    explicit ChartView(const char* object_name, QWidget* parent = nullptr);
    ~ChartView() override;

    /// Replaces what is shown. The zoom is kept while the axis stays the same kind.
    void show_spec(const ChartSpec& spec);
    [[nodiscard]] const ChartSpec& spec() const;
    [[nodiscard]] QString reading() const; ///< the read-out line

    /// Writes the chart as it stands; the suffix says how: png, svg or pdf. False when the file
    /// could not be written.
    bool save(const QString& path);
    /// For print: draws into `painter` with the given size.
    void draw(QPainter* painter, QSize size);

    void zoom(double factor);
    void show_all();
    /// Steps the reading cursor through the points of the clickable series.
    void step(int points);
    /// The table in the drawing's place, or the drawing again.
    void show_as_table(bool table);
    [[nodiscard]] bool is_table() const;

  Q_SIGNALS:
    void chosen(qint64 tag);

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    void read(const QString& text);
    void read_at(int series_index, int point);
    void next_series(int way);
    QWidget* build_foot(const char* object_name);
    std::unique_ptr<ChartPainter> painter_;
    QStackedWidget* stack_;
    ChartTable* table_;
    QLabel* read_out_ = nullptr;
    QPushButton* as_table_ = nullptr;
    QPushButton* copy_ = nullptr;
    int series_ = 0;
    int point_ = -1;
};

} // namespace ui::charts
