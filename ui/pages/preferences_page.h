#pragma once

#include "core/model/batch.h"
#include "core/model/chamber.h"
#include "ui/models/rows_model.h"
#include "ui/pages/page.h"
#include "ui/pages/table.h"

class QComboBox;
class QLabel;
class QVBoxLayout;

namespace ui::pages {

/// Units, language, time zone, limits and look of this desk; people and scales of the book.
/// Every choice takes effect at once.
class PreferencesPage : public Page {
    Q_OBJECT
  public:
    PreferencesPage(presenters::Workspace& workspace, QWidget* parent);
    void refresh() override;
    std::vector<print::Printable> printables() override;

  private:
    using People = models::RowsModel<core::model::Person>;
    using Scales = models::RowsModel<core::model::Instrument>;
    void build_desk(QVBoxLayout* body);
    void build_people(QVBoxLayout* body);
    void build_scales(QVBoxLayout* body);
    [[nodiscard]] std::vector<Scales::Column> scale_columns() const;
    void show_people();
    void show_sample();
    void choose();
    void open_person(qint64 id);
    void open_scale(qint64 id);

    QComboBox* mass_ = nullptr;
    QComboBox* temperature_ = nullptr;
    QComboBox* length_ = nullptr;
    QComboBox* volume_ = nullptr;
    QComboBox* language_ = nullptr;
    QComboBox* zone_ = nullptr;
    QComboBox* limits_ = nullptr;
    QComboBox* theme_ = nullptr;
    QComboBox* person_ = nullptr;
    QLabel* sample_ = nullptr;
    People* people_ = nullptr;
    Scales* scales_ = nullptr;
    Table* people_table_ = nullptr;
    Table* scale_table_ = nullptr;
    bool filling_ = false;
};

} // namespace ui::pages
