#include "ui/presenters/compare.h"

#include "core/services/planning_desk.h"

#include <algorithm>

namespace ui::presenters {
namespace {

using core::model::Piece;
using core::model::PieceState;
using core::services::Book;
using core::services::PieceFilter;
using core::services::PieceHistory;

void add(std::vector<PieceHistory>& all, core::base::Result<std::vector<PieceHistory>> more) {
    if (more) {
        std::move(more->begin(), more->end(), std::back_inserter(all));
    }
}

/// The product of the piece's batch, in every spelling the book has of it.
std::vector<std::string> spellings(const Book& book, const Piece& piece) {
    std::vector<std::string> same;
    const auto batch = book.batch(piece.batch);
    const auto all = book.products();
    if (!batch || !all) {
        return same;
    }
    const auto key = core::services::product_key(batch->product);
    for (const auto& product : *all) {
        if (!key.empty() && core::services::product_key(product) == key) {
            same.push_back(product);
        }
    }
    return same;
}

std::vector<PieceHistory> of_product(const Book& book, const Piece& piece, PieceState state) {
    std::vector<PieceHistory> all;
    for (const auto& product : spellings(book, piece)) {
        PieceFilter filter;
        filter.product = product;
        filter.states = {state};
        add(all, book.piece_histories(filter));
    }
    return all;
}

std::vector<PieceHistory> asked_for(const Book& book, const Piece& piece, CompareWith with,
                                    const std::vector<core::model::PieceId>& chosen) {
    std::vector<PieceHistory> all;
    PieceFilter filter;
    switch (with) {
    case CompareWith::alone:
        break;
    case CompareWith::batch:
        filter.batch = piece.batch;
        add(all, book.piece_histories(filter));
        break;
    case CompareWith::chamber:
        if (piece.chamber) {
            filter.chamber = piece.chamber;
            filter.states = {PieceState::drying};
            add(all, book.piece_histories(filter));
        }
        break;
    case CompareWith::product:
        all = of_product(book, piece, PieceState::drying);
        break;
    case CompareWith::chosen:
        for (const auto id : chosen) {
            if (auto history = book.piece_history(id)) {
                all.push_back(std::move(*history));
            }
        }
        break;
    }
    return all;
}

/// Lines of what has a curve, the newest hung first.
std::vector<PieceLine> with_curves(const Book& book, std::vector<PieceHistory> histories,
                                   core::model::PieceId but) {
    std::vector<PieceLine> lines;
    for (auto& history : histories) {
        const PieceState state = history.piece.state;
        if (history.piece.id == but || state == PieceState::merged_away ||
            state == PieceState::split_up) {
            continue;
        }
        auto line = line_in(book, std::move(history));
        if (line.hung_at && line.points.size() > 1) {
            lines.push_back(std::move(line));
        }
    }
    std::stable_sort(lines.begin(), lines.end(),
                     [](const auto& a, const auto& b) { return *b.hung_at < *a.hung_at; });
    return lines;
}

} // namespace

Company company_of(const Book& book, const Piece& piece, CompareWith with,
                   const std::vector<core::model::PieceId>& chosen) {
    Company company;
    company.lines = with_curves(book, asked_for(book, piece, with, chosen), piece.id);
    if (company.lines.size() > most_compared) {
        company.left_out = static_cast<int>(company.lines.size() - most_compared);
        company.lines.erase(company.lines.begin() + static_cast<std::ptrdiff_t>(most_compared),
                            company.lines.end());
    }
    return company;
}

std::vector<PieceLine> earlier_of(const Book& book, const Piece& piece, std::size_t most) {
    auto finished = of_product(book, piece, PieceState::finished);
    std::erase_if(finished, [&](const auto& h) { return h.piece.form != piece.form; });
    auto lines = with_curves(book, std::move(finished), piece.id);
    lines.erase(lines.begin() + static_cast<std::ptrdiff_t>(std::min(most, lines.size())),
                lines.end());
    return lines;
}

bool has_earlier(const Book& book, const Piece& piece) {
    for (const auto& product : spellings(book, piece)) {
        PieceFilter filter;
        filter.product = product;
        filter.states = {PieceState::finished};
        const auto pieces = book.pieces(filter);
        if (pieces && std::any_of(pieces->begin(), pieces->end(), [&](const Piece& other) {
                return other.form == piece.form && other.id != piece.id;
            })) {
            return true;
        }
    }
    return false;
}

} // namespace ui::presenters
