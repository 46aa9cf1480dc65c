#include "core/services/climate.h"
#include "core/store/climate.h"
#include "core/store/connection.h"
#include "core/store/fault.h"

#include <algorithm>
#include <array>
#include <cerrno>
#include <filesystem>
#include <fstream>
#include <thread>

namespace core::services {

using base::ErrorCode;
using base::Result;
using store::Connection;
using store::Transaction;

namespace {

constexpr std::size_t head_size = std::size_t{64} * 1024;
constexpr std::size_t piece_size = std::size_t{8} * 1024;
constexpr std::size_t readings_shown = 20;

/// A file being read in order.
class LogFile {
  public:
    static Result<LogFile> open(const std::string& path) {
        std::error_code error;
        const auto status = std::filesystem::status(path, error);
        if (!std::filesystem::exists(status)) {
            return base::fault(ErrorCode::not_found, path, path);
        }
        if (std::filesystem::is_directory(status)) {
            return base::fault(ErrorCode::is_a_directory, path, path);
        }
        LogFile file(path);
        if (!file.stream_) {
            return base::fault(errno == EACCES ? ErrorCode::no_permission : ErrorCode::io_failure,
                               path, path);
        }
        // A pipe has no size; it is then unknown and 0.
        file.size_ = std::filesystem::is_regular_file(status)
                         ? static_cast<std::uint64_t>(std::filesystem::file_size(path, error))
                         : 0;
        return file;
    }

    [[nodiscard]] std::uint64_t size() const { return size_; }

    Result<std::size_t> read(std::span<char> buffer) {
        stream_.read(buffer.data(), static_cast<std::streamsize>(buffer.size()));
        if (stream_.bad()) {
            return base::fault(ErrorCode::io_failure, path_, path_);
        }
        return static_cast<std::size_t>(stream_.gcount());
    }

    /// A piece from `offset`, made even for the sake of UTF-16.
    Result<std::string> piece(std::uint64_t offset, std::size_t length) {
        stream_.clear();
        stream_.seekg(static_cast<std::streamoff>(offset & ~std::uint64_t{1}));
        std::string bytes(length, '\0');
        const auto got = read(bytes);
        if (!got) {
            return tl::unexpected(got.error());
        }
        bytes.resize(*got);
        return bytes;
    }

  private:
    explicit LogFile(const std::string& path) : path_(path), stream_(path, std::ios::binary) {}
    std::string path_;
    std::ifstream stream_;
    std::uint64_t size_ = 0;
};

/// The start, two pieces of the middle and the end; only the start of a short file.
Result<std::vector<std::string>> sample(LogFile& file) {
    std::vector<std::uint64_t> offsets{0};
    if (file.size() > head_size + 4 * piece_size) {
        offsets.push_back(file.size() / 3);
        offsets.push_back(file.size() * 2 / 3);
        offsets.push_back(file.size() - piece_size);
    }
    std::vector<std::string> pieces;
    for (const auto offset : offsets) {
        auto bytes = file.piece(offset, offset == 0 ? head_size : piece_size);
        if (!bytes) {
            return tl::unexpected(bytes.error());
        }
        pieces.push_back(std::move(*bytes));
    }
    return pieces;
}

/// The writing side of one import: a transaction for each chunk.
class ImportWriter {
  public:
    ImportWriter(Connection& book, const ClimateImportRequest& request)
        : book_(book), request_(request) {}

    void append(std::span<const model::ClimateReading> chunk) {
        Transaction transaction(book_, Transaction::Kind::immediate);
        auto id = id_;
        if (!id.is_assigned()) {
            model::ClimateImport log{.sensor = request_.sensor, .made_at = request_.now};
            log.file_name = std::filesystem::path(request_.log_path).filename().string();
            id = store::begin_climate_import(book_, log, chamber::to_json(request_.dialect));
        }
        store::append_climate(book_, id, chunk);
        transaction.commit();
        id_ = id;
    }

    /// The import as the book has it; unassigned when it brought nothing.
    model::ClimateImport end(bool complete, std::int64_t rejected) {
        model::ClimateImport ended{.sensor = request_.sensor, .made_at = request_.now};
        ended.complete = complete;
        ended.rejected = rejected;
        if (!id_.is_assigned()) {
            return ended;
        }
        Transaction transaction(book_, Transaction::Kind::immediate);
        store::end_climate_import(book_, id_, {complete, rejected, request_.now, request_.who});
        for (const auto& log : store::climate_imports(book_, request_.sensor)) {
            if (log.id == id_) {
                ended = log;
            }
        }
        transaction.commit();
        return ended;
    }

  private:
    Connection& book_;
    const ClimateImportRequest& request_;
    model::ClimateImportId id_;
};

} // namespace

Result<LogPreview> preview_climate_log(const std::string& log_path,
                                       const chamber::DialectHints& hints) {
    auto file = LogFile::open(log_path);
    if (!file) {
        return tl::unexpected(file.error());
    }
    const auto pieces = sample(*file);
    if (!pieces) {
        return tl::unexpected(pieces.error());
    }
    const std::vector<std::string_view> views(pieces->begin(), pieces->end());
    auto detection = chamber::detect_dialect(views, hints);
    if (!detection) {
        auto error = detection.error();
        error.where = log_path;
        return tl::unexpected<base::Error>(error);
    }
    LogPreview preview{std::move(*detection), {}, {}, file->size()};
    const chamber::ReadingSink keep_first = [&](auto chunk, const auto&) -> base::Status {
        for (const auto& reading : chunk) {
            if (preview.first.size() < readings_shown) {
                preview.first.push_back(reading);
            }
        }
        return {};
    };
    auto reader = chamber::LogReader::make(preview.detection.dialect, keep_first, readings_shown);
    if (!reader) {
        return tl::unexpected(reader.error());
    }
    if (auto fed = reader->feed(views.front()); !fed) {
        return tl::unexpected(fed.error());
    }
    if (views.size() == 1) { // otherwise the last line is cut
        if (auto ended = reader->finish(); !ended) {
            return tl::unexpected(ended.error());
        }
    }
    preview.tally = reader->tally();
    return preview;
}

Result<ClimateImportReport>
import_climate_log(const std::string& book_path, const ClimateImportRequest& request,
                   const std::function<void(const ClimateImportProgress&)>& progress,
                   const std::stop_token& cancel) {
    auto file = LogFile::open(request.log_path);
    if (!file) {
        return tl::unexpected(file.error());
    }
    return store::guarded([&]() -> ClimateImportReport {
        Connection book(book_path, store::Access::write);
        ImportWriter writer(book, request);
        ClimateImportReport report{{.made_at = request.now}, {}};
        const auto sink = [&](auto chunk, const chamber::LogTally& so_far) -> base::Status {
            auto stored = store::guarded([&] { writer.append(chunk); });
            if (request.pause_between_chunks.count() > 0) {
                std::this_thread::sleep_for(request.pause_between_chunks);
            }
            if (stored && progress) {
                progress({so_far.bytes, file->size(), so_far.readings});
            }
            report.tally = so_far;
            return stored;
        };
        const auto read =
            chamber::read_log([&](std::span<char> buffer) { return file->read(buffer); },
                              request.dialect, sink, cancel, request.readings_per_chunk);
        if (read) {
            report.tally = *read;
        }
        report.import = writer.end(read.has_value(), report.tally.rejected_lines());
        if (!read && read.error().code != ErrorCode::cancelled) {
            throw store::Fault(read.error());
        }
        return report;
    });
}

} // namespace core::services
