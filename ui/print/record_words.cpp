#include "ui/print/record_words.h"

#include "ui/text/date_words.h"
#include "ui/text/quantity_words.h"

#include <QCoreApplication>
#include <QTime>

namespace ui::print {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("ui::print::record", text);
}

} // namespace

QString moment_words(core::units::Instant at, const text::Style& style) {
    const int minute = style.zone.minute_of_day(at);
    QString format = style.locale.timeFormat(QLocale::ShortFormat);
    format.remove(QStringLiteral(":ss")); // the short form of some locales has seconds
    return text::words(style.zone.day_of(at), style) + QStringLiteral(", ") +
           style.locale.toString(QTime(minute / 60, minute % 60), format);
}

QString month_words(core::units::Day day, const text::Style& style) {
    return style.locale.toString(text::to_qdate(day), QStringLiteral("MMMM yyyy"));
}

QString words(core::model::BatchState state) {
    using State = core::model::BatchState;
    switch (state) {
    case State::planned:
        return tr("planned");
    case State::in_progress:
        return tr("in progress");
    case State::finished:
        return tr("finished");
    case State::abandoned:
        return tr("abandoned");
    }
    return {};
}

QString words(core::model::PieceState state) {
    using State = core::model::PieceState;
    switch (state) {
    case State::planned:
        return tr("planned");
    case State::curing:
        return tr("curing");
    case State::resting:
        return tr("resting");
    case State::drying:
        return tr("drying");
    case State::finished:
        return tr("finished");
    case State::discarded:
        return tr("discarded");
    case State::merged_away:
        return tr("weighed with others");
    case State::split_up:
        return tr("cut into pieces");
    }
    return {};
}

QString words(core::model::WeighedState state) {
    using State = core::model::WeighedState;
    switch (state) {
    case State::raw:
        return tr("raw");
    case State::trimmed:
        return tr("trimmed");
    case State::cured:
        return tr("cured");
    case State::rinsed:
        return tr("rinsed");
    case State::cased:
        return tr("cased");
    case State::netted:
        return tr("netted");
    case State::coated:
        return tr("coated");
    }
    return {};
}

QString words(core::model::EventKind kind) {
    using Kind = core::model::EventKind;
    switch (kind) {
    case Kind::dressed:
        return tr("casing or net put on");
    case Kind::re_dressed:
        return tr("casing or net changed");
    case Kind::coated:
        return tr("coated");
    case Kind::trimmed:
        return tr("trimmed");
    case Kind::sampled:
        return tr("sampled");
    case Kind::split:
        return tr("cut into pieces");
    case Kind::merged:
        return tr("weighed as one");
    case Kind::pressed:
        return tr("pressed");
    case Kind::frozen:
        return tr("frozen");
    case Kind::thawed:
        return tr("thawed");
    case Kind::washed:
        return tr("washed");
    case Kind::hung:
        return tr("hung");
    case Kind::moved:
        return tr("moved");
    }
    return {};
}

QString words(core::model::StageKind kind) {
    using Kind = core::model::StageKind;
    switch (kind) {
    case Kind::salt:
        return tr("salting");
    case Kind::rest:
        return tr("resting");
    case Kind::wash:
        return tr("washing");
    case Kind::soak:
        return tr("soaking");
    case Kind::marinate:
        return tr("marinating");
    case Kind::press:
        return tr("pressing");
    case Kind::smoke:
        return tr("smoking");
    case Kind::dry:
        return tr("drying");
    case Kind::age:
        return tr("ageing");
    case Kind::equalise:
        return tr("equalising");
    case Kind::coat:
        return tr("coating");
    case Kind::freeze:
        return tr("freezing");
    case Kind::store:
        return tr("storing");
    }
    return {};
}

QString words(core::model::NoteKind kind) {
    using Kind = core::model::NoteKind;
    switch (kind) {
    case Kind::look:
        return tr("look");
    case Kind::touch:
        return tr("touch");
    case Kind::smell:
        return tr("smell");
    case Kind::taste:
        return tr("taste");
    case Kind::mould:
        return tr("mould");
    case Kind::action:
        return tr("action");
    case Kind::outcome:
        return tr("outcome");
    case Kind::other:
        return tr("note");
    }
    return {};
}

QString words(core::model::Verdict verdict) {
    using Verdict = core::model::Verdict;
    switch (verdict) {
    case Verdict::done:
        return tr("done");
    case Verdict::not_yet:
        return tr("not yet");
    case Verdict::discard:
        return tr("discard");
    }
    return {};
}

QString words(core::model::PackKind kind) {
    using Kind = core::model::PackKind;
    switch (kind) {
    case Kind::whole:
        return tr("whole");
    case Kind::cut:
        return tr("cut");
    case Kind::vacuum:
        return tr("vacuum packed");
    case Kind::frozen:
        return tr("frozen");
    }
    return {};
}

QString words(core::model::MoveKind kind) {
    using Kind = core::model::MoveKind;
    switch (kind) {
    case Kind::used:
        return tr("used");
    case Kind::given:
        return tr("given");
    case Kind::sold:
        return tr("sold");
    case Kind::wasted:
        return tr("wasted");
    case Kind::re_hung:
        return tr("hung again");
    case Kind::counted:
        return tr("counted");
    }
    return {};
}

QString words(core::model::InstrumentKind kind) {
    using Kind = core::model::InstrumentKind;
    switch (kind) {
    case Kind::scale:
        return tr("scale");
    case Kind::thermometer:
        return tr("thermometer");
    case Kind::hygrometer:
        return tr("hygrometer");
    case Kind::ph_meter:
        return tr("pH meter");
    case Kind::aw_meter:
        return tr("water activity meter");
    case Kind::other:
        return tr("instrument");
    }
    return {};
}

QString words(core::model::ReferenceWeight reference) {
    using Reference = core::model::ReferenceWeight;
    switch (reference) {
    case Reference::raw:
        return tr("raw weight");
    case Reference::trimmed:
        return tr("trimmed weight");
    case Reference::cured:
        return tr("cured weight");
    case Reference::hung:
        return tr("hung weight");
    }
    return {};
}

QString words(core::model::SkinSide skin) {
    using Skin = core::model::SkinSide;
    switch (skin) {
    case Skin::none:
        return tr("no skin");
    case Skin::one_side:
        return tr("skin on one side");
    case Skin::all_round:
        return tr("skin all round");
    }
    return {};
}

QString words(core::chamber::OutOfBand side) {
    using Side = core::chamber::OutOfBand;
    switch (side) {
    case Side::too_cold:
        return tr("too cold");
    case Side::too_warm:
        return tr("too warm");
    case Side::too_dry:
        return tr("too dry");
    case Side::too_damp:
        return tr("too damp");
    }
    return {};
}

QString words(core::facts::Substance substance) {
    using Substance = core::facts::Substance;
    switch (substance) {
    case Substance::nitrite:
        return tr("nitrite");
    case Substance::nitrate:
        return tr("nitrate");
    case Substance::nitrite_and_nitrate:
        return tr("nitrite and nitrate together");
    case Substance::ascorbate:
        return tr("ascorbate or erythorbate");
    case Substance::ascorbic_acid:
        return tr("ascorbic or erythorbic acid");
    case Substance::phosphate:
        return tr("phosphate");
    }
    return {};
}

QString words(core::facts::LimitBasis basis) {
    using Basis = core::facts::LimitBasis;
    switch (basis) {
    case Basis::ingoing:
        return tr("ingoing");
    case Basis::finished:
        return tr("in the finished product");
    case Basis::residual:
        return tr("residual");
    }
    return {};
}

QString words(core::mix::LimitCheck::Outcome outcome) {
    using Outcome = core::mix::LimitCheck::Outcome;
    switch (outcome) {
    case Outcome::within:
        return tr("within");
    case Outcome::above:
        return tr("ABOVE");
    case Outcome::below:
        return tr("below the minimum");
    case Outcome::not_permitted_used:
        return tr("NOT PERMITTED, used");
    case Outcome::not_computable:
        return tr("laboratory only");
    }
    return {};
}

QString yes_no(bool value) {
    return value ? tr("yes") : tr("no");
}

QString or_unknown(const std::string& text) {
    return text.empty() ? text::unknown() : QString::fromStdString(text);
}

} // namespace ui::print
