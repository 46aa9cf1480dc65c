#include "ui/text/model_words.h"

#include <QCoreApplication>

namespace ui::text {
namespace {

struct ModelWords {
    Q_DECLARE_TR_FUNCTIONS(ModelWords)
};

} // namespace

using namespace core::model;

QString words(Form value) {
    switch (value) {
    case Form::slab:
        return ModelWords::tr("slab (flat)");
    case Form::cylinder:
        return ModelWords::tr("cylinder (long and round)");
    case Form::round:
        return ModelWords::tr("round");
    case Form::block:
        return ModelWords::tr("block (brick)");
    }
    return {};
}

QString words(WeighedState value) {
    switch (value) {
    case WeighedState::raw:
        return ModelWords::tr("raw");
    case WeighedState::trimmed:
        return ModelWords::tr("trimmed");
    case WeighedState::cured:
        return ModelWords::tr("cured, not rinsed");
    case WeighedState::rinsed:
        return ModelWords::tr("rinsed and wiped");
    case WeighedState::cased:
        return ModelWords::tr("in casing");
    case WeighedState::netted:
        return ModelWords::tr("in net or string");
    case WeighedState::coated:
        return ModelWords::tr("coated");
    }
    return {};
}

QString words(ReferenceWeight value) {
    switch (value) {
    case ReferenceWeight::raw:
        return ModelWords::tr("raw weight");
    case ReferenceWeight::trimmed:
        return ModelWords::tr("trimmed weight");
    case ReferenceWeight::cured:
        return ModelWords::tr("weight after the cure");
    case ReferenceWeight::hung:
        return ModelWords::tr("hung weight");
    }
    return {};
}

QString words(SkinSide value) {
    switch (value) {
    case SkinSide::none:
        return ModelWords::tr("no skin");
    case SkinSide::one_side:
        return ModelWords::tr("skin on one side");
    case SkinSide::all_round:
        return ModelWords::tr("skin all round");
    }
    return {};
}

QString words(PieceState value) {
    switch (value) {
    case PieceState::planned:
        return ModelWords::tr("planned");
    case PieceState::curing:
        return ModelWords::tr("curing");
    case PieceState::resting:
        return ModelWords::tr("resting");
    case PieceState::drying:
        return ModelWords::tr("drying");
    case PieceState::finished:
        return ModelWords::tr("finished");
    case PieceState::discarded:
        return ModelWords::tr("discarded");
    case PieceState::merged_away:
        return ModelWords::tr("weighed with others");
    case PieceState::split_up:
        return ModelWords::tr("cut into pieces");
    }
    return {};
}

QString words(BatchState value) {
    switch (value) {
    case BatchState::planned:
        return ModelWords::tr("planned");
    case BatchState::in_progress:
        return ModelWords::tr("in progress");
    case BatchState::finished:
        return ModelWords::tr("finished");
    case BatchState::abandoned:
        return ModelWords::tr("given up");
    }
    return {};
}

QString words(EventKind value) {
    switch (value) {
    case EventKind::dressed:
        return ModelWords::tr("dressed");
    case EventKind::re_dressed:
        return ModelWords::tr("dressed again");
    case EventKind::coated:
        return ModelWords::tr("coated");
    case EventKind::trimmed:
        return ModelWords::tr("trimmed");
    case EventKind::sampled:
        return ModelWords::tr("sampled");
    case EventKind::split:
        return ModelWords::tr("cut in pieces");
    case EventKind::merged:
        return ModelWords::tr("weighed as one");
    case EventKind::pressed:
        return ModelWords::tr("pressed");
    case EventKind::frozen:
        return ModelWords::tr("frozen");
    case EventKind::thawed:
        return ModelWords::tr("thawed");
    case EventKind::washed:
        return ModelWords::tr("washed");
    case EventKind::hung:
        return ModelWords::tr("hung to dry");
    case EventKind::moved:
        return ModelWords::tr("moved");
    }
    return {};
}

QString words(NoteKind value) {
    switch (value) {
    case NoteKind::look:
        return ModelWords::tr("look");
    case NoteKind::touch:
        return ModelWords::tr("touch");
    case NoteKind::smell:
        return ModelWords::tr("smell");
    case NoteKind::taste:
        return ModelWords::tr("taste");
    case NoteKind::mould:
        return ModelWords::tr("mould");
    case NoteKind::action:
        return ModelWords::tr("what was done");
    case NoteKind::outcome:
        return ModelWords::tr("outcome");
    case NoteKind::other:
        return ModelWords::tr("other");
    }
    return {};
}

QString words(Verdict value) {
    switch (value) {
    case Verdict::done:
        return ModelWords::tr("done");
    case Verdict::not_yet:
        return ModelWords::tr("not yet");
    case Verdict::discard:
        return ModelWords::tr("discard");
    }
    return {};
}

QString words(PackKind value) {
    switch (value) {
    case PackKind::whole:
        return ModelWords::tr("whole");
    case PackKind::cut:
        return ModelWords::tr("cut open");
    case PackKind::vacuum:
        return ModelWords::tr("vacuum packed");
    case PackKind::frozen:
        return ModelWords::tr("frozen");
    }
    return {};
}

QString words(MoveKind value) {
    switch (value) {
    case MoveKind::used:
        return ModelWords::tr("used up");
    case MoveKind::given:
        return ModelWords::tr("given away");
    case MoveKind::sold:
        return ModelWords::tr("sold");
    case MoveKind::wasted:
        return ModelWords::tr("thrown out");
    case MoveKind::re_hung:
        return ModelWords::tr("hung again");
    case MoveKind::counted:
        return ModelWords::tr("counted again");
    }
    return {};
}

QString words(StageKind value) {
    switch (value) {
    case StageKind::salt:
        return ModelWords::tr("salting");
    case StageKind::rest:
        return ModelWords::tr("resting");
    case StageKind::wash:
        return ModelWords::tr("washing");
    case StageKind::soak:
        return ModelWords::tr("soaking");
    case StageKind::marinate:
        return ModelWords::tr("marinating");
    case StageKind::press:
        return ModelWords::tr("pressing");
    case StageKind::smoke:
        return ModelWords::tr("smoking");
    case StageKind::dry:
        return ModelWords::tr("drying");
    case StageKind::age:
        return ModelWords::tr("ageing");
    case StageKind::equalise:
        return ModelWords::tr("equalising");
    case StageKind::coat:
        return ModelWords::tr("coating");
    case StageKind::freeze:
        return ModelWords::tr("freezing");
    case StageKind::store:
        return ModelWords::tr("storing");
    }
    return {};
}

QString words(ForecastState value) {
    switch (value) {
    case ForecastState::too_few_weighings:
        return ModelWords::tr("too few weighings");
    case ForecastState::drying:
        return ModelWords::tr("drying");
    case ForecastState::ready:
        return ModelWords::tr("at its target");
    case ForecastState::not_reachable:
        return ModelWords::tr("target out of reach");
    case ForecastState::not_drying:
        return ModelWords::tr("not drying");
    }
    return {};
}

QString words(ChamberKind value) {
    switch (value) {
    case ChamberKind::fridge:
        return ModelWords::tr("fridge");
    case ChamberKind::cabinet:
        return ModelWords::tr("drying cabinet");
    case ChamberKind::room:
        return ModelWords::tr("room");
    case ChamberKind::outdoors:
        return ModelWords::tr("outdoors");
    case ChamberKind::freezer:
        return ModelWords::tr("freezer");
    case ChamberKind::other:
        return ModelWords::tr("other");
    }
    return {};
}

QString thickness_hint(Form form) {
    switch (form) {
    case Form::slab:
        return ModelWords::tr("face to face, at the thickest point");
    case Form::cylinder:
    case Form::round:
        return ModelWords::tr("diameter, at the thickest point");
    case Form::block:
        return ModelWords::tr("the shortest side");
    }
    return {};
}

template <>
const std::vector<Form>& choices() {
    static const std::vector<Form> all = {Form::slab, Form::cylinder, Form::round, Form::block};
    return all;
}

template <>
const std::vector<WeighedState>& choices() {
    static const std::vector<WeighedState> all = {
        WeighedState::raw,   WeighedState::trimmed, WeighedState::cured, WeighedState::rinsed,
        WeighedState::cased, WeighedState::netted,  WeighedState::coated};
    return all;
}

template <>
const std::vector<ReferenceWeight>& choices() {
    static const std::vector<ReferenceWeight> all = {ReferenceWeight::raw, ReferenceWeight::trimmed,
                                                     ReferenceWeight::cured, ReferenceWeight::hung};
    return all;
}

template <>
const std::vector<SkinSide>& choices() {
    static const std::vector<SkinSide> all = {SkinSide::none, SkinSide::one_side,
                                              SkinSide::all_round};
    return all;
}

template <>
const std::vector<NoteKind>& choices() {
    static const std::vector<NoteKind> all = {NoteKind::look,    NoteKind::touch, NoteKind::smell,
                                              NoteKind::taste,   NoteKind::mould, NoteKind::action,
                                              NoteKind::outcome, NoteKind::other};
    return all;
}

template <>
const std::vector<PackKind>& choices() {
    static const std::vector<PackKind> all = {PackKind::whole, PackKind::cut, PackKind::vacuum,
                                              PackKind::frozen};
    return all;
}

template <>
const std::vector<MoveKind>& choices() {
    static const std::vector<MoveKind> all = {MoveKind::used,    MoveKind::given,
                                              MoveKind::sold,    MoveKind::wasted,
                                              MoveKind::re_hung, MoveKind::counted};
    return all;
}

template <>
const std::vector<ChamberKind>& choices() {
    static const std::vector<ChamberKind> all = {ChamberKind::fridge,  ChamberKind::cabinet,
                                                 ChamberKind::room,    ChamberKind::outdoors,
                                                 ChamberKind::freezer, ChamberKind::other};
    return all;
}

} // namespace ui::text
