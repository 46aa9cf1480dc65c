#pragma once

#include "core/exchange/book_document.h"

/// The fields of each kind of entry, listed once: the writer and the reader of the exchange
/// document both walk these lists, so neither can know a field that the other does not. A visitor
/// is called with a key and the member. `v.own` is the entry's own id, `v.ref` the id of an entry
/// that must be in the document (`v.maybe_ref`: or is unassigned); `v.text`, `v.flag` and
/// `v.count` may be left out where they have their usual value. The unit of a quantity is the end
/// of its key.
namespace core::exchange {

template <class V>
void visit(V& v, model::Person& p) {
    v.own("id", p.id);
    v("name", p.name);
    v.text("initials", p.initials);
    v.flag("active", p.active, true);
}

template <class V>
void visit(V& v, model::Chamber& c) {
    v.own("id", c.id);
    v("name", c.name);
    v("kind", c.kind);
    v("low_temp_c", c.low_temperature);
    v("high_temp_c", c.high_temperature);
    v("low_rh_percent", c.low_humidity);
    v("high_rh_percent", c.high_humidity);
    v("water_capacity_g_per_day", c.water_capacity_per_day);
    v.count("places", c.places, 0);
    v.text("notes", c.notes);
}

template <class V>
void visit(V& v, model::Sensor& s) {
    v.own("id", s.id);
    v.ref("chamber", s.chamber);
    v("name", s.name);
    v.text("place", s.place);
    v("temp_offset_k", s.temperature_offset);
    v("rh_offset_percent", s.humidity_offset);
    v("check_due", s.check_due);
    v.text("log_dialect", s.log_dialect);
    v.flag("active", s.active, true);
}

template <class V>
void visit(V& v, model::Instrument& i) {
    v.own("id", i.id);
    v("kind", i.kind);
    v("name", i.name);
    v("scale_step_g", i.scale_step);
    v.ref("sensor", i.sensor);
    v("check_every_days", i.check_every_days);
    v.flag("active", i.active, true);
}

template <class V>
void visit(V& v, model::CalibrationCheck& c) {
    v.own("id", c.id);
    v.ref("instrument", c.instrument);
    v("at", c.at);
    v.text("against", c.against);
    v("expected", c.expected);
    v("found", c.found);
    v.text("action", c.action);
    v.maybe_ref("by", c.by);
}

template <class V>
void visit(V& v, model::Recipe& r) {
    v.own("id", r.id);
    v("name", r.name);
    v.flag("archived", r.archived, false);
}

template <class V>
void visit(V& v, model::RecipeVersion& r) {
    v.own("id", r.id);
    v.ref("recipe", r.recipe);
    v.count("number", r.number, 1);
    v("made_at", r.made_at);
    v("document", r.document);
    v.text("why", r.why);
}

template <class V>
void visit(V& v, model::Ingredient& i) {
    v.own("id", i.id);
    v.text("catalogue_id", i.catalogue_id);
    v("name", i.name);
    v.text("composition", i.composition);
}

template <class V>
void visit(V& v, model::Lot& l) {
    v.own("id", l.id);
    v.ref("ingredient", l.ingredient);
    v("code", l.code);
    v.text("supplier", l.supplier);
    v.text("bought_on", l.bought_on);
}

template <class V>
void visit(V& v, model::Batch& b) {
    v.own("id", b.id);
    v("code", b.code);
    v.text("name", b.name);
    v.text("product", b.product);
    v.text("species", b.species);
    v.text("supplier", b.supplier);
    v.text("supplier_lot", b.supplier_lot);
    v.ref("recipe_version", b.recipe);
    v("started", b.started);
    v("state", b.state);
    v("bought_g", b.bought_weight);
    v("trim_g", b.trim_weight);
    v("price_per_kg", b.price_per_kilogram);
    v.flag("was_frozen", b.was_frozen, false);
    v.text("notes", b.notes);
}

template <class V>
void visit(V& v, model::Target& t) {
    v("loss_percent", t.loss);
    v("reference", t.reference);
}

template <class V>
void visit(V& v, model::Piece& p) {
    v.own("id", p.id);
    v.ref("batch", p.batch);
    v("code", p.code);
    v.text("name", p.name);
    v("form", p.form);
    v("thickness_mm", p.thickness);
    v("fat_percent", p.fat);
    v("skin", p.skin);
    v("target", p.target);
    v.ref("parent", p.parent);
    v.ref("chamber", p.chamber);
    v.text("position", p.position);
    v.count("hanging_order", p.hanging_order, 0);
    v.count("count", p.count, 1);
    v("state", p.state);
}

template <class V>
void visit(V& v, model::Weighing& w) {
    v.own("id", w.id);
    v.ref("piece", w.piece);
    v("taken_at", w.taken_at);
    v("on_scale_g", w.on_scale);
    v("tare_g", w.tare);
    v("state", w.state);
    v("scale_step_g", w.scale_step);
    v.flag("wet_surface", w.wet_surface, false);
    v.text("note", w.note);
    v.ref("amends", w.amends);
    v.ref("amended_by", w.amended_by);
    v.flag("withdrawn", w.withdrawn, false);
}

template <class V>
void visit(V& v, model::PieceEvent& e) {
    v.own("id", e.id);
    v.ref("piece", e.piece);
    v("kind", e.kind);
    v("at", e.at);
    v("net_before_g", e.net_before);
    v("net_after_g", e.net_after);
    v("tare_after_g", e.tare_after);
    v("start_override_g", e.start_override);
    v.ref("others", e.others);
    v.ref("chamber", e.chamber);
    v.text("note", e.note);
    v.flag("withdrawn", e.withdrawn, false);
}

template <class V>
void visit(V& v, model::Stage& s) {
    v.own("id", s.id);
    v.ref("batch", s.batch);
    v.count("order", s.order, 0);
    v("what", s.what);
    v("planned_start", s.planned_start);
    v("planned_end", s.planned_end);
    v("started_at", s.started_at);
    v("ended_at", s.ended_at);
    v.ref("chamber", s.chamber);
    v.text("end_reason", s.end_reason);
}

template <class V>
void visit(V& v, model::IngredientUse& u) {
    v.own("id", u.id);
    v.ref("batch", u.batch);
    v.ref("piece", u.piece);
    v.text("ingredient", u.ingredient);
    v("name", u.name);
    v.ref("lot", u.lot);
    v("planned_g", u.planned);
    v("weighed_g", u.weighed);
}

template <class V>
void visit(V& v, model::Acceptance& a) {
    v.own("id", a.id);
    v.ref("batch", a.batch);
    v.ref("piece", a.piece);
    v("code", a.code);
    v.text("place", a.place);
    v.text("detail", a.detail);
    v("at", a.at);
    v.ref("by", a.by);
    v.text("why", a.why);
}

template <class V>
void visit(V& v, model::Note& n) {
    v.own("id", n.id);
    v.ref("batch", n.batch);
    v.ref("piece", n.piece);
    v("at", n.at);
    v("kind", n.kind);
    v.text("text", n.text);
    v.text("photo_name", n.photo_name);
    v.bytes("photo_base64", n.photo);
}

template <class V>
void visit(V& v, model::Decision& d) {
    v.own("id", d.id);
    v.ref("piece", d.piece);
    v("at", d.at);
    v("verdict", d.verdict);
    v.ref("signed_by", d.signed_by);
    v.text("evidence", d.evidence);
    v.text("why", d.why);
    v("weigh_again", d.weigh_again);
}

template <class V>
void visit(V& v, model::Outcome& o) {
    v.ref("batch", o.batch);
    v("salt", o.salt);
    v("texture", o.texture);
    v.text("change_next_time", o.change_next_time);
}

template <class V>
void visit(V& v, model::Pack& p) {
    v.own("id", p.id);
    v.ref("piece", p.piece);
    v("code", p.code);
    v("kind", p.kind);
    v("packed_g", p.packed_weight);
    v("left_g", p.weight_left);
    v("packed_on", p.packed_on);
    v("opened_on", p.opened_on);
    v("keep_by", p.keep_by);
    v.text("keep_by_rule", p.keep_by_rule);
    v.text("place", p.place);
    v.flag("gone", p.gone, false);
}

template <class V>
void visit(V& v, model::PackMove& m) {
    v.own("id", m.id);
    v.ref("pack", m.pack);
    v("kind", m.kind);
    v("amount_g", m.amount);
    v("at", m.at);
    v.text("to_whom", m.to_whom);
    v.text("note", m.note);
}

template <class V>
void visit(V& v, model::TaskTick& t) {
    v.own("id", t.id);
    v("key", t.key);
    v("at", t.at);
    v.ref("by", t.by);
    v.flag("withdrawn", t.withdrawn, false);
    v("due", t.due);
    v.ref("batch", t.batch);
    v.ref("piece", t.piece);
    v.text("note", t.note);
}

template <class V>
void visit(V& v, model::LoggedStep& s) {
    v("step", s.step);
    v("action", s.action);
    v("kind", s.kind);
    v("verb", s.verb);
    v.text("subject", s.subject);
    v("at", s.at);
    v("who", s.who);
    v.text("why", s.why);
}

template <class V>
void visit(V& v, Stamp& s) {
    v("at", s.at);
    v("by", s.by);
    v.text("why", s.why);
}

/// The document's arrays of entries, in the order in which an importer can take them: what an
/// entry refers to comes before it.
template <class F, class Document>
void each_kind(F&& f, Document& d) {
    f("people", d.people);
    f("chambers", d.chambers);
    f("sensors", d.sensors);
    f("instruments", d.instruments);
    f("checks", d.checks);
    f("recipes", d.recipes);
    f("recipe_versions", d.recipe_versions);
    f("ingredients", d.ingredients);
    f("lots", d.lots);
    f("batches", d.batches);
    f("pieces", d.pieces);
    f("weighings", d.weighings);
    f("events", d.events);
    f("stages", d.stages);
    f("ingredient_uses", d.ingredient_uses);
    f("acceptances", d.acceptances);
    f("notes", d.notes);
    f("decisions", d.decisions);
    f("outcomes", d.outcomes);
    f("packs", d.packs);
    f("pack_moves", d.pack_moves);
    f("task_ticks", d.task_ticks);
}

} // namespace core::exchange
