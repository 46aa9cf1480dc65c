#include "core/services/demo_teller.h"

#include <algorithm>

namespace core::services::demo {

using namespace actions; // NOLINT(google-build-using-namespace): commands by the dozen
using model::EntryKind;
using model::NoteKind;

namespace {
// Days ago.
constexpr int split_day = 165;
constexpr int discard_day = 140;
constexpr int new_version_day = 90;
constexpr int swap_day = 37;
constexpr int move_day = 30;
constexpr int second_net_day = 19;
constexpr int upset_day = 25;
} // namespace

void Teller::incidents(int days_ago) {
    short_notes(days_ago);
    sell_packs(days_ago);
    if (days_ago == split_day) {
        split_round();
    } else if (days_ago == discard_day) {
        discard_one();
    } else if (days_ago == new_version_day) {
        std::string document = recipes()[0].document;
        const std::string salt = "\"2.5 %\"";
        document.replace(document.find(salt), salt.size(), "\"2.4 %\"");
        const auto recipe = book_.recipe_version(recipes_[0]);
        recipes_[0] = enter(AddRecipeVersion{recipe->recipe, document}, at(days_ago, 18),
                            "The spring coppa was a little salty")
                          .id<model::RecipeVersionId>(EntryKind::recipe_version);
    } else if (days_ago == move_day) {
        move_to_cellar();
    } else if (days_ago == upset_day) {
        cellar_upset();
    }
    swap_digits(days_ago);
    forget_tare(days_ago);
}

/// The big piece of B03 is too thick to dry evenly and is cut in two while it hangs.
void Teller::split_round() {
    LiveBatch& of = batch("B03");
    LivePiece parent = of.pieces.back();
    const auto when = at(split_day, 14);
    const double net =
        std::round(parent.hung_net * parent.curve.remaining(parent.hung_ago - split_day));
    const std::vector<double> shares{0.54, 0.45}; // the rest is offcuts
    const auto codes = book_.free_piece_codes(2);
    SplitPiece split{.piece = parent.id,
                     .at = when,
                     .net_before = grams(net),
                     .note = "Too thick to dry evenly"};
    std::vector<LivePiece> children;
    for (std::size_t i = 0; i < shares.size(); ++i) {
        LivePiece child = parent;
        child.code = codes->at(i);
        child.tare = 40 + 3 * static_cast<double>(i);
        child.hung_net = parent.hung_net * shares[i];
        child.curve.slow_days *= 0.8;
        child.weighings.clear();
        NewPiece piece;
        piece.piece.code = child.code;
        piece.piece.name = i == 0 ? "top side, thick half" : "top side, thin half";
        piece.piece.form = model::Form::cylinder;
        piece.piece.thickness = units::Length::millimetres(i == 0 ? 78 : 70);
        piece.weighings.push_back({.taken_at = when,
                                   .on_scale = grams(std::round(net * shares[i] + child.tare)),
                                   .tare = grams(child.tare),
                                   .state = model::WeighedState::netted,
                                   .scale_step = grams(1)});
        split.children.push_back(std::move(piece));
        children.push_back(child);
    }
    const Performed made = enter(split, when);
    of.pieces.pop_back();
    for (std::size_t i = 0; i < children.size(); ++i) {
        children[i].id = made.id<model::PieceId>(EntryKind::piece, i);
        of.pieces.push_back(children[i]);
    }
}

void Teller::discard_one() {
    LiveBatch& of = batch("B04");
    LivePiece& piece = of.pieces[1];
    const auto when = at(discard_day, 11.5);
    note(NoteKind::smell, "Sour at the thick end, again after wiping", discard_day, of.id,
         piece.id);
    enter(SignDecision{{.piece = piece.id,
                        .at = when,
                        .verdict = model::Verdict::discard,
                        .signed_by = people_[0],
                        .evidence = R"({"invented":true,"smelled":"sour at the thick end"})",
                        .why = "Smelled sour twice; not worth a doubt"}},
          when);
    piece.is_hanging = false;
}

void Teller::move_to_cellar() {
    LiveBatch& of = batch("B06");
    for (LivePiece& piece : of.pieces) {
        enter(RecordEvent{{.piece = piece.id,
                           .kind = model::EventKind::moved,
                           .at = at(move_day, 12),
                           .chamber = chambers_[0],
                           .note = "To make room in the cabinet"}},
              at(move_day, 12));
    }
}

void Teller::cellar_upset() {
    for (const char* code : {"B06", "B07"}) {
        note(NoteKind::action,
             "Cooler in the cellar was off for a day and a half; 21 C and wet. Reset, door "
             "open for an hour, all pieces wiped.",
             upset_day, batch(code).id);
    }
}

/// One number is typed with its digits the wrong way round and corrected the same evening.
void Teller::swap_digits(int days_ago) {
    LiveBatch& of = batch("B06");
    if (days_ago != swap_day || of.pieces.empty() || of.pieces[0].weighings.empty()) {
        return;
    }
    LivePiece& piece = of.pieces[0];
    const auto last = book_.weighing(piece.weighings.back());
    if (!last) {
        throw store::Fault(last.error());
    }
    static constexpr double slip = 270; // 1,964 for 1,694
    model::Weighing wrong = *last;
    wrong.on_scale += grams(slip);
    // The round was right; what is told here is a second look at one piece, typed wrongly.
    wrong.taken_at = at(days_ago, 17);
    wrong.note = "second look";
    const auto id =
        enter(AddWeighing{wrong}, wrong.taken_at).id<model::WeighingId>(EntryKind::weighing);
    model::Weighing right = wrong;
    right.on_scale -= grams(slip);
    piece.weighings.back() =
        enter(AmendWeighing{id, right}, at(days_ago, 20), "Digits swapped when typing")
            .id<model::WeighingId>(EntryKind::weighing);
}

/// One weighing of B07 was taken with a second net on the hook and stands as it is: the program
/// should point at it.
void Teller::forget_tare(int days_ago) {
    LiveBatch& of = batch("B07");
    if (days_ago != second_net_day || of.pieces.size() < 2) {
        return;
    }
    const LivePiece& piece = of.pieces[1];
    enter(AddWeighing{{.piece = piece.id,
                       .taken_at = at(days_ago, 9),
                       .on_scale = grams(on_scale(piece, days_ago) + 64),
                       .tare = grams(piece.tare),
                       .state = model::WeighedState::netted,
                       .scale_step = grams(1)}},
          at(days_ago, 9), "", true);
}

void Teller::short_notes(int days_ago) {
    struct Said {
        int days_ago;
        const char* batch;
        NoteKind kind;
        const char* text;
    };
    static const std::vector<Said> all{
        {205, "B01", NoteKind::look, "White bloom on all three, even"},
        {190, "B01", NoteKind::touch, "Firm outside, gives a little in the middle"},
        {196, "B02", NoteKind::mould, "Two green spots by the string, wiped with vinegar"},
        {160, "B03", NoteKind::look, "Rim a shade darker than the middle at the cut"},
        {136, "B04", NoteKind::smell, "Clean, faint fennel"},
        {104, "B05", NoteKind::taste, "Sweet fat, pepper well placed"},
        {52, "B06", NoteKind::look, "Bloom has started"},
        {38, "B06", NoteKind::touch, "Even, still soft"},
        {33, "B07", NoteKind::smell, "Fennel, nothing else"},
        {24, "B07", NoteKind::touch, "Surface tacky after the wet night"},
        {22, "B08", NoteKind::look, "Tied again, one string was loose"},
        {5, "B09", NoteKind::look, "Skin taut, dry to the touch"},
        {4, "B10", NoteKind::action, "Moved away from the fan"},
    };
    for (const Said& said : all) {
        if (said.days_ago == days_ago) {
            const LiveBatch& of = batch(said.batch);
            note(said.kind, said.text, days_ago, of.id, of.pieces.front().id);
        }
    }
}

void Teller::sell_packs(int days_ago) {
    // Now and then something goes; the newest packs stay longest.
    if (packs_.empty() || days_ago % 6 != 0 || !has_come(at(days_ago, 17))) {
        return;
    }
    const std::size_t which =
        static_cast<std::size_t>(noise_.uniform() * static_cast<double>(packs_.size()));
    auto packs = book_.packs(false);
    const auto found = std::find_if(packs->begin(), packs->end(), [&](const model::Pack& pack) {
        return pack.id == packs_[which];
    });
    if (found == packs->end()) {
        return;
    }
    const bool sold = noise_.chance(0.6);
    const double part = sold ? 1.0 : 0.35;
    enter(MovePack{{.pack = found->id,
                    .kind = sold ? model::MoveKind::sold
                                 : (noise_.chance(0.5) ? model::MoveKind::used
                                                       : model::MoveKind::given),
                    .amount = grams(std::floor(found->weight_left.in_grams() * part)),
                    .at = at(days_ago, 16.5),
                    .to_whom = sold ? "Invented deli, Quay Street" : "Invented neighbour"}},
          at(days_ago, 16.6), "", true);
}

} // namespace core::services::demo
