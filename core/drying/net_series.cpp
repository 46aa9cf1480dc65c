#include "core/drying/net_series.h"

#include <algorithm>

namespace core::drying {

namespace {

using model::EventKind;
using model::PieceEvent;
using model::ReferenceWeight;
using model::WeighedState;
using model::Weighing;
using units::Instant;
using units::Mass;

const char* event_word(EventKind kind) {
    switch (kind) {
    case EventKind::trimmed:
        return "trimmed";
    case EventKind::sampled:
        return "sampled";
    case EventKind::split:
        return "split";
    case EventKind::merged:
        return "merged";
    case EventKind::coated:
        return "coated";
    default:
        return "other";
    }
}

bool is_dressed(WeighedState state) {
    return state == WeighedState::cased || state == WeighedState::netted ||
           state == WeighedState::coated;
}

/// Walks weighings and events in the order of time.
class Walk {
  public:
    explicit Walk(const PieceHistory& history) : history_(&history) {
        for (const Weighing& w : history.weighings) {
            if (w.stands()) {
                weighings_.push_back(w);
            }
        }
        for (const PieceEvent& e : history.events) {
            if (!e.withdrawn) {
                events_.push_back(e);
            }
        }
        const auto earlier = [](const auto& a, const auto& b) { return time(a) < time(b); };
        std::stable_sort(weighings_.begin(), weighings_.end(), earlier);
        std::stable_sort(events_.begin(), events_.end(), earlier);
        hung_event_ = std::any_of(events_.begin(), events_.end(),
                                  [](const PieceEvent& e) { return e.kind == EventKind::hung; });
    }

    NetSeries run() {
        inherit();
        std::size_t e = 0;
        for (next_ = 0; next_ < weighings_.size(); ++next_) {
            // An event and a weighing of the same moment: the weighing shows its result.
            while (e < events_.size() && events_[e].at <= weighings_[next_].taken_at) {
                meet(events_[e++]);
            }
            meet(weighings_[next_]);
        }
        while (e < events_.size()) {
            meet(events_[e++]);
        }
        finish();
        return std::move(out_);
    }

  private:
    static Instant time(const Weighing& w) { return w.taken_at; }
    static Instant time(const PieceEvent& e) { return e.at; }

    /// A split child begins as its share of the parent.
    void inherit() {
        const NetSeries* parent = history_->parent;
        if (parent == nullptr || !parent->last_net || weighings_.empty()) {
            return;
        }
        out_.references = parent->references;
        out_.points = parent->points;
        out_.pressed = parent->pressed;
        out_.hung_aside = parent->hung_aside;
        const double share = weighings_.front().net() / *parent->last_net;
        scale_all(share);
        last_ = weighings_.front().net();
        hung_ = out_.references.hung.has_value();
    }

    void scale_all(double by) {
        for (NetPoint& p : out_.points) {
            p.net = p.net * by;
        }
        References& r = out_.references;
        for (auto* reference : {&r.raw, &r.trimmed, &r.cured, &r.hung}) {
            if (*reference) {
                **reference = **reference * by;
            }
        }
    }

    Mass tare_of(const Weighing& w) {
        if (w.tare.in_grams() == 0 && is_dressed(w.state)) {
            if (tare_unknown_ && last_) {
                tare_unknown_ = false;
                out_.tare = w.on_scale - *last_ - out_.coat; // nothing is lost in re-dressing
            } else if (out_.tare.in_grams() == 0 && w.state != WeighedState::coated) {
                note("tare_missing", w.taken_at);
            }
            return out_.tare;
        }
        out_.tare = w.tare;
        tare_unknown_ = false;
        return w.tare;
    }

    void note(const char* code, Instant at, const char* event = nullptr) {
        model::Finding f{.code = code, .severity = model::Severity::caution, .at = at};
        if (event != nullptr) {
            f.values["event"] = std::string(event);
        }
        out_.findings.push_back(std::move(f));
    }

    void meet(const Weighing& w) {
        const Mass net = w.on_scale - tare_of(w) - out_.coat;
        const bool wet = w.wet_surface || (washed_ && (w.taken_at - *washed_).in_hours() <= 24);
        washed_.reset();
        const bool aside = wet || is_rough(w, net);
        const bool hung_before = hung_;
        set_reference(w, net);
        out_.hung_aside = out_.hung_aside || (hung_ && !hung_before && aside);
        last_ = net;
        out_.last_net = net;
        if (hung_ && !aside) {
            out_.points.push_back({w.id, w.taken_at, net, w.scale_step});
        }
    }

    /// Known so much more coarsely than the others that it would only mislead the curve.
    [[nodiscard]] bool is_rough(const Weighing& w, Mass net) const {
        constexpr double coarse_share = 0.01;
        constexpr double coarser = 4;
        if (!w.scale_step || *w.scale_step <= net * coarse_share) {
            return false;
        }
        return weighings_.size() > 1 &&
               std::all_of(weighings_.begin(), weighings_.end(), [&](const Weighing& o) {
                   return &o == &w || !o.scale_step || *w.scale_step >= *o.scale_step * coarser;
               });
    }

    void set_reference(const Weighing& w, Mass net) {
        References& r = out_.references;
        const auto first = [&](std::optional<Mass>& reference) {
            if (!reference) {
                reference = net;
            }
        };
        switch (w.state) {
        case WeighedState::raw:
            first(r.raw);
            break;
        case WeighedState::trimmed:
            first(r.trimmed);
            break;
        case WeighedState::cured:
        case WeighedState::rinsed:
            r.cured = hung_ ? r.cured : std::optional(net); // the last before hanging
            break;
        default:
            break;
        }
        const bool near_hanging = awaiting_hung_ || hung_soon(w.taken_at);
        const bool begins = hung_event_ ? near_hanging : starts_without_event(w);
        if (!hung_ && begins) {
            hung_ = true;
            awaiting_hung_ = false;
            first(r.hung);
        }
    }

    /// A weighing shortly before the `hung` event is the hung weight.
    [[nodiscard]] bool hung_soon(Instant at) const {
        return std::any_of(events_.begin(), events_.end(), [&](const PieceEvent& e) {
            return e.kind == EventKind::hung && at < e.at && (e.at - at).in_hours() <= 12 &&
                   !weighed_between(at, e.at + units::Duration::hours(12));
        });
    }
    [[nodiscard]] bool weighed_between(Instant after, Instant until) const {
        return std::any_of(weighings_.begin(), weighings_.end(), [&](const Weighing& w) {
            return w.taken_at > after && w.taken_at <= until;
        });
    }

    /// Without a `hung` event drying starts at the first dressed weighing, or, where none is ever
    /// dressed, at the last state the piece is weighed in more than once.
    [[nodiscard]] bool starts_without_event(const Weighing& w) const {
        if (is_dressed(w.state)) {
            return true;
        }
        const bool ever_dressed =
            std::any_of(weighings_.begin(), weighings_.end(),
                        [](const Weighing& o) { return is_dressed(o.state); });
        return !ever_dressed && w.state == weighings_.back().state;
    }

    /// Weights just before and after an event: its own, else of the weighings around it.
    struct Around {
        std::optional<Mass> before;
        std::optional<Mass> after;
    };
    Around around(const PieceEvent& e) {
        Around a{e.net_before ? e.net_before : last_, e.net_after};
        if (!a.after && next_ < weighings_.size()) {
            const Weighing& w = weighings_[next_];
            const bool own_tare = w.tare.in_grams() != 0 || !is_dressed(w.state);
            a.after =
                w.on_scale - (own_tare ? w.tare : e.tare_after.value_or(out_.tare)) - out_.coat;
        }
        return a;
    }

    void rebase(const PieceEvent& e) {
        const Around a = around(e);
        if (!a.before || !a.after || a.before->in_grams() <= 0) {
            note("event_weight_missing", e.at, event_word(e.kind));
            return;
        }
        scale_all(*a.after / *a.before);
        if (e.start_override && history_->target) {
            reference(history_->target->reference) = e.start_override;
        }
        last_ = a.after;
        out_.last_net = a.after;
    }

    std::optional<Mass>& reference(ReferenceWeight which) {
        References& r = out_.references;
        switch (which) {
        case ReferenceWeight::raw:
            return r.raw;
        case ReferenceWeight::trimmed:
            return r.trimmed;
        case ReferenceWeight::cured:
            return r.cured;
        case ReferenceWeight::hung:
            break;
        }
        return r.hung;
    }

    /// A bundle with a code of its own has no weights from before: it begins as its members.
    void begin_as_members() {
        for (const auto which : {ReferenceWeight::raw, ReferenceWeight::trimmed,
                                 ReferenceWeight::cured, ReferenceWeight::hung}) {
            std::optional<Mass> sum = Mass::grams(0);
            for (const NetSeries* m : history_->members) {
                const auto part = m->references.of(which);
                sum = sum && part ? std::optional(*sum + *part) : std::nullopt;
            }
            reference(which) = sum;
        }
        hung_ = out_.references.hung.has_value();
    }

    void merge(const PieceEvent& e) {
        if (!e.net_before && !last_ && !history_->members.empty()) {
            begin_as_members();
            return;
        }
        const Around a = around(e);
        if (!a.before || !a.after || a.before->in_grams() <= 0) {
            note("event_weight_missing", e.at, event_word(e.kind));
            return;
        }
        const References own = out_.references;
        scale_all(*a.after / *a.before);
        for (const auto which : {ReferenceWeight::raw, ReferenceWeight::trimmed,
                                 ReferenceWeight::cured, ReferenceWeight::hung}) {
            auto sum = own.of(which);
            for (const NetSeries* m : history_->members) {
                const auto part = m->references.of(which);
                sum = sum && part ? std::optional(*sum + *part) : std::nullopt;
            }
            if (sum && !history_->members.empty()) {
                reference(which) = sum;
            }
        }
        last_ = a.after;
        out_.last_net = a.after;
    }

    void coat(const PieceEvent& e) {
        const Around a = around(e);
        if (!a.before || !a.after) {
            note("event_weight_missing", e.at, event_word(e.kind));
            return;
        }
        out_.coat = out_.coat + std::max(*a.after - *a.before, Mass::grams(0));
    }

    void meet(const PieceEvent& e) {
        if (e.tare_after) { // whatever happened: people tie and net while hanging
            out_.tare = *e.tare_after;
            tare_unknown_ = false;
        }
        switch (e.kind) {
        case EventKind::dressed:
        case EventKind::re_dressed:
            if (!e.tare_after) {
                tare_unknown_ = e.kind == EventKind::re_dressed || last_.has_value();
            }
            break;
        case EventKind::coated:
            coat(e);
            break;
        case EventKind::trimmed:
        case EventKind::sampled:
        case EventKind::split:
            rebase(e);
            break;
        case EventKind::merged:
            merge(e);
            break;
        case EventKind::pressed:
            out_.points.clear();
            out_.pressed = hung_;
            break;
        case EventKind::frozen:
            frozen_ = e.at;
            break;
        case EventKind::thawed:
            thaw(e.at);
            break;
        case EventKind::washed:
            washed_ = e.at;
            break;
        case EventKind::hung:
            hang(e);
            break;
        case EventKind::moved:
            break;
        }
    }

    void thaw(Instant at) {
        if (frozen_ && at > *frozen_) {
            for (NetPoint& p : out_.points) {
                p.at = p.at + (at - *frozen_);
            }
        }
        frozen_.reset();
    }

    /// A piece that was taken down, wrapped or packed and hung again lost nothing in between: as
    /// with a frozen one, the points before are moved up to then. A weighing of the same day is
    /// the one made while hanging it.
    void hang_again(Instant at) {
        if (out_.points.empty() || (at - out_.points.back().at).in_hours() <= 12) {
            return;
        }
        const auto down = at - out_.points.back().at;
        for (NetPoint& p : out_.points) {
            p.at = p.at + down;
        }
    }

    void hang(const PieceEvent& e) {
        if (hung_) {
            hang_again(e.at);
            return;
        }
        if (e.net_after) {
            out_.references.hung = *e.net_after;
            last_ = e.net_after;
            out_.last_net = e.net_after;
            out_.points.push_back({{}, e.at, *e.net_after, {}});
            hung_ = true;
        } else {
            awaiting_hung_ = true;
        }
    }

    void finish() {
        const auto& target = history_->target;
        if (!target || weighings_.empty()) {
            return;
        }
        const auto from = out_.references.of(target->reference);
        if (!from) {
            note("reference_missing", weighings_.back().taken_at);
            return;
        }
        out_.target_net = *from * (1 - target->loss.as_fraction());
        out_.target_on_scale = *out_.target_net + out_.coat + out_.tare;
    }

    const PieceHistory* history_;
    std::vector<Weighing> weighings_;
    std::vector<PieceEvent> events_;
    NetSeries out_;
    std::size_t next_ = 0; ///< the weighing to come
    std::optional<Mass> last_;
    bool hung_ = false;
    bool hung_event_ = false;
    bool awaiting_hung_ = false;
    bool tare_unknown_ = false;
    std::optional<Instant> washed_;
    std::optional<Instant> frozen_;
};

} // namespace

std::optional<units::Mass> References::of(ReferenceWeight which) const {
    switch (which) {
    case ReferenceWeight::raw:
        return raw;
    case ReferenceWeight::trimmed:
        return trimmed;
    case ReferenceWeight::cured:
        return cured;
    case ReferenceWeight::hung:
        break;
    }
    return hung;
}

std::optional<units::MassShare> NetSeries::loss_from(ReferenceWeight which) const {
    const auto from = references.of(which);
    if (!from || !last_net || from->in_grams() <= 0) {
        return std::nullopt;
    }
    return units::MassShare::of(*from - *last_net, *from);
}

NetSeries net_series(const PieceHistory& history) {
    return Walk(history).run();
}

std::optional<ForecastRequest> forecast_request(const model::Piece& piece, const NetSeries& series,
                                                std::vector<AirReading> air) {
    if (!piece.target || !series.references.of(piece.target->reference)) {
        return std::nullopt;
    }
    ForecastRequest r;
    r.traits = {
        .form = piece.form, .thickness = piece.thickness, .fat = piece.fat, .skin = piece.skin};
    r.target = piece.target->loss;
    for (const NetPoint& p : series.points) {
        r.weighings.push_back({p.at, p.net, p.scale_step});
    }
    const bool first_is_reference =
        piece.target->reference == ReferenceWeight::hung && !series.pressed && !series.hung_aside;
    if (!first_is_reference) {
        r.reference = series.references.of(piece.target->reference);
    }
    r.air = std::move(air);
    return r;
}

} // namespace core::drying
