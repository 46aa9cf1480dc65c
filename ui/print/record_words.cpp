#include "ui/print/record_words.h"

#include "ui/print/sheet_words.h"
#include "ui/text/date_words.h"
#include "ui/text/quantity_words.h"

#include <QTime>

namespace ui::print {

QString moment_words(core::units::Instant at, const text::Style& style) {
    const int minute = style.zone.minute_of_day(at);
    QString format = style.locale.timeFormat(QLocale::ShortFormat);
    format.remove(QStringLiteral(":ss")); // the short form of some locales has seconds
    return text::words(style.zone.day_of(at), style) + QStringLiteral(", ") +
           style.locale.toString(QTime(minute / 60, minute % 60), format);
}

QString words(core::model::BatchState state) {
    using State = core::model::BatchState;
    switch (state) {
    case State::planned:
        return RecordText::tr("planned");
    case State::in_progress:
        return RecordText::tr("in progress");
    case State::finished:
        return RecordText::tr("finished");
    case State::abandoned:
        return RecordText::tr("abandoned");
    }
    return {};
}

QString words(core::model::PieceState state) {
    using State = core::model::PieceState;
    switch (state) {
    case State::planned:
        return RecordText::tr("planned");
    case State::curing:
        return RecordText::tr("curing");
    case State::resting:
        return RecordText::tr("resting");
    case State::drying:
        return RecordText::tr("drying");
    case State::finished:
        return RecordText::tr("finished");
    case State::discarded:
        return RecordText::tr("discarded");
    case State::merged_away:
        return RecordText::tr("weighed with others");
    case State::split_up:
        return RecordText::tr("cut into pieces");
    }
    return {};
}

QString words(core::model::WeighedState state) {
    using State = core::model::WeighedState;
    switch (state) {
    case State::raw:
        return RecordText::tr("raw");
    case State::trimmed:
        return RecordText::tr("trimmed");
    case State::cured:
        return RecordText::tr("cured");
    case State::rinsed:
        return RecordText::tr("rinsed");
    case State::cased:
        return RecordText::tr("cased");
    case State::netted:
        return RecordText::tr("netted");
    case State::coated:
        return RecordText::tr("coated");
    }
    return {};
}

QString words(core::model::EventKind kind) {
    using Kind = core::model::EventKind;
    switch (kind) {
    case Kind::dressed:
        return RecordText::tr("casing or net put on");
    case Kind::re_dressed:
        return RecordText::tr("casing or net changed");
    case Kind::coated:
        return RecordText::tr("coated");
    case Kind::trimmed:
        return RecordText::tr("trimmed");
    case Kind::sampled:
        return RecordText::tr("sampled");
    case Kind::split:
        return RecordText::tr("cut into pieces");
    case Kind::merged:
        return RecordText::tr("weighed as one");
    case Kind::pressed:
        return RecordText::tr("pressed");
    case Kind::frozen:
        return RecordText::tr("frozen");
    case Kind::thawed:
        return RecordText::tr("thawed");
    case Kind::washed:
        return RecordText::tr("washed");
    case Kind::hung:
        return RecordText::tr("hung");
    case Kind::moved:
        return RecordText::tr("moved");
    }
    return {};
}

QString words(core::model::StageKind kind) {
    using Kind = core::model::StageKind;
    switch (kind) {
    case Kind::salt:
        return RecordText::tr("salting");
    case Kind::rest:
        return RecordText::tr("resting");
    case Kind::wash:
        return RecordText::tr("washing");
    case Kind::soak:
        return RecordText::tr("soaking");
    case Kind::marinate:
        return RecordText::tr("marinating");
    case Kind::press:
        return RecordText::tr("pressing");
    case Kind::smoke:
        return RecordText::tr("smoking");
    case Kind::dry:
        return RecordText::tr("drying");
    case Kind::age:
        return RecordText::tr("ageing");
    case Kind::equalise:
        return RecordText::tr("equalising");
    case Kind::coat:
        return RecordText::tr("coating");
    case Kind::freeze:
        return RecordText::tr("freezing");
    case Kind::store:
        return RecordText::tr("storing");
    }
    return {};
}

QString words(core::model::NoteKind kind) {
    using Kind = core::model::NoteKind;
    switch (kind) {
    case Kind::look:
        return RecordText::tr("look");
    case Kind::touch:
        return RecordText::tr("touch");
    case Kind::smell:
        return RecordText::tr("smell");
    case Kind::taste:
        return RecordText::tr("taste");
    case Kind::mould:
        return RecordText::tr("mould");
    case Kind::action:
        return RecordText::tr("action");
    case Kind::outcome:
        return RecordText::tr("outcome");
    case Kind::other:
        return RecordText::tr("note");
    }
    return {};
}

QString words(core::model::Verdict verdict) {
    using Verdict = core::model::Verdict;
    switch (verdict) {
    case Verdict::done:
        return RecordText::tr("done");
    case Verdict::not_yet:
        return RecordText::tr("not yet");
    case Verdict::discard:
        return RecordText::tr("discard");
    }
    return {};
}

QString words(core::model::PackKind kind) {
    using Kind = core::model::PackKind;
    switch (kind) {
    case Kind::whole:
        return RecordText::tr("whole");
    case Kind::cut:
        return RecordText::tr("cut");
    case Kind::vacuum:
        return RecordText::tr("vacuum packed");
    case Kind::frozen:
        return RecordText::tr("frozen");
    }
    return {};
}

QString words(core::model::MoveKind kind) {
    using Kind = core::model::MoveKind;
    switch (kind) {
    case Kind::used:
        return RecordText::tr("used");
    case Kind::given:
        return RecordText::tr("given");
    case Kind::sold:
        return RecordText::tr("sold");
    case Kind::wasted:
        return RecordText::tr("wasted");
    case Kind::re_hung:
        return RecordText::tr("hung again");
    case Kind::counted:
        return RecordText::tr("counted");
    }
    return {};
}

QString words(core::model::InstrumentKind kind) {
    using Kind = core::model::InstrumentKind;
    switch (kind) {
    case Kind::scale:
        return RecordText::tr("scale");
    case Kind::thermometer:
        return RecordText::tr("thermometer");
    case Kind::hygrometer:
        return RecordText::tr("hygrometer");
    case Kind::ph_meter:
        return RecordText::tr("pH meter");
    case Kind::aw_meter:
        return RecordText::tr("water activity meter");
    case Kind::other:
        return RecordText::tr("instrument");
    }
    return {};
}

QString words(core::model::ReferenceWeight reference) {
    using Reference = core::model::ReferenceWeight;
    switch (reference) {
    case Reference::raw:
        return RecordText::tr("raw weight");
    case Reference::trimmed:
        return RecordText::tr("trimmed weight");
    case Reference::cured:
        return RecordText::tr("cured weight");
    case Reference::hung:
        return RecordText::tr("hung weight");
    }
    return {};
}

QString words(core::model::SkinSide skin) {
    using Skin = core::model::SkinSide;
    switch (skin) {
    case Skin::none:
        return RecordText::tr("no skin");
    case Skin::one_side:
        return RecordText::tr("skin on one side");
    case Skin::all_round:
        return RecordText::tr("skin all round");
    }
    return {};
}

QString words(core::chamber::OutOfBand side) {
    using Side = core::chamber::OutOfBand;
    switch (side) {
    case Side::too_cold:
        return RecordText::tr("too cold");
    case Side::too_warm:
        return RecordText::tr("too warm");
    case Side::too_dry:
        return RecordText::tr("too dry");
    case Side::too_damp:
        return RecordText::tr("too damp");
    }
    return {};
}

QString words(core::facts::Substance substance) {
    using Substance = core::facts::Substance;
    switch (substance) {
    case Substance::nitrite:
        return RecordText::tr("nitrite");
    case Substance::nitrate:
        return RecordText::tr("nitrate");
    case Substance::nitrite_and_nitrate:
        return RecordText::tr("nitrite and nitrate together");
    case Substance::ascorbate:
        return RecordText::tr("ascorbate or erythorbate");
    case Substance::ascorbic_acid:
        return RecordText::tr("ascorbic or erythorbic acid");
    case Substance::phosphate:
        return RecordText::tr("phosphate");
    }
    return {};
}

QString words(core::facts::LimitBasis basis) {
    using Basis = core::facts::LimitBasis;
    switch (basis) {
    case Basis::ingoing:
        return RecordText::tr("ingoing");
    case Basis::finished:
        return RecordText::tr("in the finished product");
    case Basis::residual:
        return RecordText::tr("residual");
    }
    return {};
}

QString words(core::mix::LimitCheck::Outcome outcome) {
    using Outcome = core::mix::LimitCheck::Outcome;
    switch (outcome) {
    case Outcome::within:
        return RecordText::tr("within");
    case Outcome::above:
        return RecordText::tr("ABOVE");
    case Outcome::below:
        return RecordText::tr("below the minimum");
    case Outcome::not_permitted_used:
        return RecordText::tr("NOT PERMITTED, used");
    case Outcome::not_computable:
        return RecordText::tr("laboratory only");
    }
    return {};
}

QString yes_no(bool value) {
    return value ? RecordText::tr("yes") : RecordText::tr("no");
}

QString or_unknown(const std::string& text) {
    return text.empty() ? text::unknown() : QString::fromStdString(text);
}

} // namespace ui::print
