#include "core/actions/perform.h"

#include <cmath>
#include <set>

namespace core::actions {

namespace {

using model::Severity;
using units::Mass;

constexpr Mass heaviest = Mass::kilograms(5000); // a lot on a floor scale; beyond is a slip
constexpr std::size_t largest_photo = std::size_t{32} * 1024 * 1024;
constexpr std::size_t longest_text = std::size_t{1024} * 1024;

/// Collects findings; one function a kind of value, so that every command is judged alike.
class Judge {
  public:
    explicit Judge(const Context& context) : context_(context) {}

    void find(const char* code, std::string place, Severity severity = Severity::stop) {
        findings.push_back({.code = code, .severity = severity, .place = std::move(place)});
    }
    void required(const std::string& text, const char* code, const std::string& place) {
        if (text.find_first_not_of(" \t\r\n") == std::string::npos) {
            find(code, place);
        }
        if (text.size() > longest_text) {
            find("text_too_long", place);
        }
    }
    void why() {
        if (context_.why.find_first_not_of(" \t\r\n") == std::string::npos) {
            find("why_missing", "why");
        }
    }
    template <class Id>
    void assigned(Id id, const std::string& place) {
        if (!id.is_assigned()) {
            find("reference_missing", place);
        }
    }
    void positive(Mass mass, const std::string& place) {
        if (!mass.is_finite() || mass <= Mass::grams(0)) {
            find("weight_not_positive", place);
        } else if (mass > heaviest) {
            find("weight_out_of_range", place);
        }
    }
    void positive(const std::optional<Mass>& mass, const std::string& place) {
        if (mass) {
            positive(*mass, place);
        }
    }
    void not_negative(const std::optional<Mass>& mass, const std::string& place) {
        if (mass && (!mass->is_finite() || *mass < Mass::grams(0))) {
            find("weight_negative", place);
        }
    }
    void moment(units::Instant at, const std::string& place) {
        // A clock a few minutes off is nobody's fault.
        if (at > context_.now + units::Duration::hours(1)) {
            find("in_the_future", place, Severity::caution);
        }
    }
    template <class Q>
    void band(const std::optional<Q>& low, const std::optional<Q>& high, const std::string& place) {
        if (low && high && *high < *low) {
            find("band_upside_down", place);
        }
        if ((low && !low->is_finite()) || (high && !high->is_finite())) {
            find("not_a_number", place);
        }
    }

    void weighing(const model::Weighing& w, const std::string& place) {
        positive(w.on_scale, place + "on_scale");
        not_negative(w.tare, place + "tare");
        if (w.tare >= w.on_scale) {
            find("tare_not_below_weight", place + "tare");
        }
        positive(w.scale_step, place + "scale_step");
        moment(w.taken_at, place + "taken_at");
    }
    void piece(const model::Piece& p, const std::string& place) {
        required(p.code, "code_missing", place + "code");
        if (p.count < 1) {
            find("count_not_positive", place + "count");
        }
        if (p.thickness && !(p.thickness->in_millimetres() > 0)) {
            find("thickness_not_positive", place + "thickness");
        }
        share(p.fat, place + "fat");
        if (p.target) {
            const double loss = p.target->loss.as_fraction();
            if (!(loss > 0 && loss < 1)) {
                find("target_out_of_range", place + "target");
            }
        }
    }
    void acceptance(const model::Acceptance& a, const std::string& place) {
        required(a.code, "code_missing", place + "code");
        if (!a.by) {
            find("acceptance_without_name", place + "by");
        }
    }
    void share(const std::optional<units::MassShare>& value, const std::string& place) {
        if (value && !(value->as_fraction() >= 0 && value->as_fraction() <= 1)) {
            find("share_out_of_range", place);
        }
    }
    void new_piece(const NewPiece& p, const std::string& place) {
        piece(p.piece, place);
        for (std::size_t i = 0; i < p.weighings.size(); ++i) {
            weighing(p.weighings[i], place + "weighings[" + std::to_string(i) + "].");
        }
    }
    /// Codes of pieces entered together must differ among themselves too.
    void new_pieces(const std::vector<NewPiece>& pieces, const std::string& name) {
        std::set<std::string> codes;
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            const std::string place = name + "[" + std::to_string(i) + "].";
            new_piece(pieces[i], place);
            if (!codes.insert(pieces[i].piece.code).second) {
                find("code_twice", place + "code");
            }
        }
    }
    void batch(const model::Batch& b) {
        required(b.code, "code_missing", "batch.code");
        positive(b.bought_weight, "batch.bought_weight");
        not_negative(b.trim_weight, "batch.trim_weight");
        if (b.price_per_kilogram &&
            !(std::isfinite(*b.price_per_kilogram) && *b.price_per_kilogram >= 0)) {
            find("price_negative", "batch.price_per_kilogram");
        }
    }
    void stages(const std::vector<model::Stage>& all) {
        for (std::size_t i = 0; i < all.size(); ++i) {
            const std::string place = "stages[" + std::to_string(i) + "].";
            if (all[i].planned_end < all[i].planned_start) {
                find("ends_before_start", place + "planned_end");
            }
        }
    }
    void use(const model::IngredientUse& u, const std::string& place) {
        required(u.name, "name_missing", place + "name");
        not_negative(u.planned, place + "planned");
        not_negative(u.weighed, place + "weighed");
    }

    model::Findings findings;

  private:
    const Context& context_;
};

using J = Judge;

void judge(J& j, const AddPerson& c) {
    j.required(c.person.name, "name_missing", "name");
}
void judge(J& j, const ChangePerson& c) {
    j.required(c.person.name, "name_missing", "name");
}
void judge_chamber(J& j, const model::Chamber& c) {
    j.required(c.name, "name_missing", "name");
    j.band(c.low_temperature, c.high_temperature, "temperature");
    j.band(c.low_humidity, c.high_humidity, "humidity");
    j.positive(c.water_capacity_per_day, "water_capacity_per_day");
    if (c.places < 0) {
        j.find("count_negative", "places");
    }
}
void judge(J& j, const AddChamber& c) {
    judge_chamber(j, c.chamber);
}
void judge(J& j, const ChangeChamber& c) {
    judge_chamber(j, c.chamber);
}
void judge(J& j, const AddSensor& c) {
    j.required(c.sensor.name, "name_missing", "name");
    j.assigned(c.sensor.chamber, "chamber");
}
void judge(J& j, const ChangeSensor& c) {
    judge(j, AddSensor{c.sensor});
}
void judge(J& j, const AddInstrument& c) {
    j.required(c.instrument.name, "name_missing", "name");
    j.positive(c.instrument.scale_step, "scale_step");
}
void judge(J& j, const ChangeInstrument& c) {
    judge(j, AddInstrument{c.instrument});
}
void judge(J& j, const AddCheck& c) {
    j.assigned(c.check.instrument, "instrument");
    if (!std::isfinite(c.check.expected) || !std::isfinite(c.check.found)) {
        j.find("not_a_number", "found");
    }
    j.moment(c.check.at, "at");
}
void judge(J& j, const AddRecipe& c) {
    j.required(c.name, "name_missing", "name");
    j.required(c.document, "document_missing", "document");
}
void judge(J& j, const AddRecipeVersion& c) {
    j.required(c.document, "document_missing", "document");
}
void judge(J& j, const RenameRecipe& c) {
    j.required(c.name, "name_missing", "name");
}
void judge(J& /*j*/, const ArchiveRecipe& /*c*/) {}
void judge(J& j, const AddIngredient& c) {
    j.required(c.ingredient.name, "name_missing", "name");
}
void judge(J& j, const ChangeIngredient& c) {
    j.required(c.ingredient.name, "name_missing", "name");
}
void judge(J& j, const AddLot& c) {
    j.required(c.lot.code, "code_missing", "code");
    j.assigned(c.lot.ingredient, "ingredient");
}
void judge(J& j, const ChangeLot& c) {
    judge(j, AddLot{c.lot});
}

void judge(J& j, const StartBatch& c) {
    j.batch(c.batch);
    j.new_pieces(c.pieces, "pieces");
    j.stages(c.stages);
    for (std::size_t i = 0; i < c.uses.size(); ++i) {
        const std::string place = "uses[" + std::to_string(i) + "].";
        j.use(c.uses[i], place);
        if (c.uses[i].piece) {
            j.find("reference_not_possible", place + "piece");
        }
    }
    for (std::size_t i = 0; i < c.accepted.size(); ++i) {
        j.acceptance(c.accepted[i], "accepted[" + std::to_string(i) + "].");
    }
    if (c.recipe) {
        judge(j, *c.recipe);
    }
}
void judge(J& j, const AddBatch& c) {
    j.batch(c.batch);
}
void judge(J& j, const ChangeBatch& c) {
    j.batch(c.batch);
}
void judge(J& j, const AddPiece& c) {
    j.assigned(c.piece.piece.batch, "batch");
    j.new_piece(c.piece, "");
}
void judge(J& j, const ChangePiece& c) {
    j.piece(c.piece, "");
}
void judge(J& j, const AddIngredientUse& c) {
    j.use(c.use, "");
}
void judge(J& j, const ChangeIngredientUse& c) {
    j.use(c.use, "");
}

void judge(J& j, const AddWeighing& c) {
    j.assigned(c.weighing.piece, "piece");
    j.weighing(c.weighing, "");
    if (c.weighing.amends) {
        j.find("use_amend", "amends");
    }
}
void judge(J& j, const AddWeighings& c) {
    if (c.weighings.empty()) {
        j.find("nothing_entered", "weighings");
    }
    for (std::size_t i = 0; i < c.weighings.size(); ++i) {
        const std::string place = "weighings[" + std::to_string(i) + "].";
        j.assigned(c.weighings[i].piece, place + "piece");
        j.weighing(c.weighings[i], place);
        if (c.weighings[i].amends) {
            j.find("use_amend", place + "amends");
        }
    }
}
void judge(J& j, const AmendWeighing& c) {
    j.why();
    j.weighing(c.corrected, "");
}
void judge(J& j, const WithdrawWeighing& /*c*/) {
    j.why();
}
void judge(J& j, const RecordEvent& c) {
    j.assigned(c.event.piece, "piece");
    j.positive(c.event.net_before, "net_before");
    j.positive(c.event.net_after, "net_after");
    j.not_negative(c.event.tare_after, "tare_after");
    j.positive(c.event.start_override, "start_override");
    j.moment(c.event.at, "at");
}
void judge(J& j, const WithdrawEvent& /*c*/) {
    j.why();
}
void judge(J& j, const SplitPiece& c) {
    if (c.children.size() < 2) {
        j.find("too_few_pieces", "children");
    }
    j.positive(c.net_before, "net_before");
    j.moment(c.at, "at");
    j.new_pieces(c.children, "children");
}
void judge(J& j, const MergePieces& c) {
    const std::set<model::PieceId> distinct(c.members.begin(), c.members.end());
    if (distinct.size() < 2) {
        j.find("too_few_pieces", "members");
    }
    j.assigned(c.into.piece.batch, "into.batch");
    j.moment(c.at, "at");
    j.new_piece(c.into, "into.");
}
void judge(J& j, const DiscardPiece& c) {
    j.why();
    j.moment(c.at, "at");
}

void judge(J& j, const SetStages& c) {
    j.stages(c.stages);
}
void judge(J& j, const StartStage& c) {
    j.moment(c.at, "at");
}
void judge(J& j, const EndStage& c) {
    j.moment(c.at, "at");
}
void judge(J& j, const TickTask& c) {
    j.required(c.tick.key, "code_missing", "key");
}
void judge(J& /*j*/, const UntickTask& /*c*/) {}
void judge(J& j, const AddNote& c) {
    if (!c.note.batch && !c.note.piece) {
        j.find("reference_missing", "piece");
    }
    if (c.note.photo.empty()) {
        j.required(c.note.text, "nothing_entered", "text");
    }
    if (c.note.photo.size() > largest_photo) {
        j.find("photo_too_big", "photo");
    }
    j.moment(c.note.at, "at");
}
void judge(J& j, const AcceptFinding& c) {
    j.acceptance(c.acceptance, "");
}
void judge(J& j, const SignDecision& c) {
    j.assigned(c.decision.signed_by, "signed_by");
    j.assigned(c.decision.piece, "piece");
    j.moment(c.decision.at, "at");
}
void judge(J& j, const RecordOutcome& c) {
    const auto in_range = [](std::optional<int> score) { return !score || std::abs(*score) <= 2; };
    if (!in_range(c.outcome.salt)) {
        j.find("score_out_of_range", "salt");
    }
    if (!in_range(c.outcome.texture)) {
        j.find("score_out_of_range", "texture");
    }
}
void judge(J& j, const AddPack& c) {
    j.required(c.pack.code, "code_missing", "code");
    j.positive(c.pack.packed_weight, "packed_weight");
}
void judge(J& j, const ChangePack& c) {
    j.required(c.pack.code, "code_missing", "code");
}
void judge(J& j, const MovePack& c) {
    if (c.move.kind == model::MoveKind::counted) {
        j.not_negative(c.move.amount, "amount"); // counting may find nothing left
    } else {
        j.positive(c.move.amount, "amount");
    }
    j.moment(c.move.at, "at");
}
void judge(J& j, const SetPreference& c) {
    j.required(c.key, "code_missing", "key");
}

} // namespace

model::Findings check(const Command& command, const Context& context) {
    Judge judge_of(context);
    std::visit([&](const auto& c) { judge(judge_of, c); }, command);
    return std::move(judge_of.findings);
}

} // namespace core::actions
