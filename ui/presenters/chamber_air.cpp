#include "ui/presenters/chamber_air.h"

namespace ui::presenters {

namespace {

using Answer = core::base::Result<core::services::ChamberAir>;

std::shared_ptr<Answer> read_air(const std::string& book_path,
                                 const core::services::ChamberAirRequest& request) {
    const auto reader = core::services::ClimateReader::open(book_path);
    if (!reader) {
        return std::make_shared<Answer>(tl::unexpected<core::base::Error>(reader.error()));
    }
    return std::make_shared<Answer>(core::services::chamber_air(*reader, request));
}

} // namespace

ChamberAirDesk::ChamberAirDesk(QObject* parent)
    : QObject(parent), latest_([this](const std::shared_ptr<Answer>& answer) {
          answer_ = *answer;
          Q_EMIT arrived();
      }) {}

ChamberAirDesk::~ChamberAirDesk() = default;

void ChamberAirDesk::ask(const std::string& book_path, core::services::ChamberAirRequest request) {
    latest_.ask([book_path, request = std::move(request)] { return read_air(book_path, request); });
}

} // namespace ui::presenters
