-- The book, first version. Frozen once released: a test holds this file's hash. A later change is a
-- new file with the next number; it only adds (columns at the end with a default, tables, indexes),
-- because the log's changesets of older versions must stay appliable for undo.
--
-- Quantities are integers with the unit in the column's name: _mg milligram, _um micrometre,
-- _mk millikelvin, _ppm parts per million by mass, _centipct hundredths of a percent, _s seconds
-- since 1970-01-01T00:00:00Z, _day days since 1970-01-01. NULL is "not known", never 0.
-- Codes (kind, state ...) are texts whose meaning is fixed in core/store/codes.h.

PRAGMA application_id = 1397511238; -- "SLTF"

CREATE TABLE about (
    id INTEGER PRIMARY KEY CHECK (id = 1),
    made_by TEXT NOT NULL,    -- program version that made the book
    written_by TEXT NOT NULL, -- newest program version that changed its schema
    made_at_s INTEGER NOT NULL
) STRICT;

-- people, places, things that measure ----------------------------------------------------------
CREATE TABLE person (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    name TEXT NOT NULL,
    initials TEXT NOT NULL,
    active INTEGER NOT NULL
) STRICT;

CREATE TABLE chamber (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    name TEXT NOT NULL UNIQUE,
    kind TEXT NOT NULL,
    low_temp_mk INTEGER,
    high_temp_mk INTEGER,
    low_rh_centipct INTEGER,
    high_rh_centipct INTEGER,
    water_capacity_mg_per_day INTEGER,
    places INTEGER NOT NULL,
    notes TEXT NOT NULL
) STRICT;

CREATE TABLE sensor (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    chamber_id INTEGER NOT NULL REFERENCES chamber (id),
    name TEXT NOT NULL,
    place TEXT NOT NULL,
    temp_offset_mk INTEGER,
    rh_offset_centipct INTEGER,
    check_due_day INTEGER,
    log_dialect_json TEXT NOT NULL,
    active INTEGER NOT NULL
) STRICT;
CREATE INDEX sensor_by_chamber ON sensor (chamber_id);

CREATE TABLE instrument (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    kind TEXT NOT NULL,
    name TEXT NOT NULL,
    scale_step_mg INTEGER,
    sensor_id INTEGER REFERENCES sensor (id),
    check_every_days INTEGER,
    active INTEGER NOT NULL
) STRICT;
CREATE INDEX instrument_by_sensor ON instrument (sensor_id);

CREATE TABLE calibration_check (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    instrument_id INTEGER NOT NULL REFERENCES instrument (id),
    at_s INTEGER NOT NULL,
    against TEXT NOT NULL,
    expected REAL NOT NULL, -- in the instrument's own unit, as the sheet on the wall has it
    found REAL NOT NULL,
    action_taken TEXT NOT NULL,
    by_person_id INTEGER REFERENCES person (id)
) STRICT;
CREATE INDEX calibration_check_by_instrument ON calibration_check (instrument_id, at_s);
CREATE INDEX calibration_check_by_person ON calibration_check (by_person_id);

-- recipes and what goes into them ---------------------------------------------------------------
CREATE TABLE recipe (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    name TEXT NOT NULL,
    archived INTEGER NOT NULL
) STRICT;

CREATE TABLE recipe_version (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    recipe_id INTEGER NOT NULL REFERENCES recipe (id),
    number INTEGER NOT NULL,
    made_at_s INTEGER NOT NULL,
    document_json TEXT NOT NULL, -- byte for byte as it was used
    why TEXT NOT NULL,
    UNIQUE (recipe_id, number)
) STRICT;

CREATE TABLE ingredient (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    catalogue_id TEXT NOT NULL,
    name TEXT NOT NULL,
    composition_json TEXT NOT NULL
) STRICT;

CREATE TABLE lot (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    ingredient_id INTEGER NOT NULL REFERENCES ingredient (id),
    code TEXT NOT NULL,
    supplier TEXT NOT NULL,
    bought_on TEXT NOT NULL
) STRICT;
CREATE INDEX lot_by_ingredient ON lot (ingredient_id);

-- batches and pieces ------------------------------------------------------------------------------
CREATE TABLE batch (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    code TEXT NOT NULL UNIQUE,
    name TEXT NOT NULL,
    product TEXT NOT NULL,
    species TEXT NOT NULL,
    supplier TEXT NOT NULL,
    supplier_lot TEXT NOT NULL,
    recipe_version_id INTEGER REFERENCES recipe_version (id),
    started_day INTEGER NOT NULL,
    state TEXT NOT NULL,
    bought_mg INTEGER,
    trim_mg INTEGER,
    price_per_kg REAL, -- in the user's own currency
    was_frozen INTEGER NOT NULL,
    notes TEXT NOT NULL
) STRICT;
CREATE INDEX batch_by_recipe_version ON batch (recipe_version_id);

CREATE TABLE piece (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    batch_id INTEGER NOT NULL REFERENCES batch (id),
    code TEXT NOT NULL,
    name TEXT NOT NULL,
    form TEXT NOT NULL,
    thickness_um INTEGER,
    fat_ppm INTEGER,
    skin TEXT NOT NULL,
    target_loss_ppm INTEGER,
    target_reference TEXT,
    parent_id INTEGER REFERENCES piece (id),
    chamber_id INTEGER REFERENCES chamber (id),
    position TEXT NOT NULL,
    hanging_order INTEGER NOT NULL,
    piece_count INTEGER NOT NULL,
    state TEXT NOT NULL
) STRICT;
CREATE INDEX piece_by_batch ON piece (batch_id);
CREATE INDEX piece_by_parent ON piece (parent_id);
CREATE INDEX piece_by_chamber ON piece (chamber_id);
CREATE INDEX piece_by_state ON piece (state, hanging_order);
CREATE INDEX piece_by_code ON piece (code);

CREATE TABLE weighing (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    piece_id INTEGER NOT NULL REFERENCES piece (id),
    taken_at_s INTEGER NOT NULL,
    on_scale_mg INTEGER NOT NULL,
    tare_mg INTEGER NOT NULL,
    state TEXT NOT NULL,
    scale_step_mg INTEGER,
    wet_surface INTEGER NOT NULL,
    note TEXT NOT NULL,
    amends_id INTEGER REFERENCES weighing (id), -- corrections append; the original stays
    withdrawn INTEGER NOT NULL
) STRICT;
CREATE INDEX weighing_by_piece ON weighing (piece_id, taken_at_s);
CREATE UNIQUE INDEX weighing_amended_once ON weighing (amends_id) WHERE amends_id IS NOT NULL;

CREATE TABLE event (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    piece_id INTEGER NOT NULL REFERENCES piece (id),
    kind TEXT NOT NULL,
    at_s INTEGER NOT NULL,
    net_before_mg INTEGER,
    net_after_mg INTEGER,
    tare_after_mg INTEGER,
    start_override_mg INTEGER,
    chamber_id INTEGER REFERENCES chamber (id),
    note TEXT NOT NULL,
    withdrawn INTEGER NOT NULL
) STRICT;
CREATE INDEX event_by_piece ON event (piece_id, at_s);
CREATE INDEX event_by_chamber ON event (chamber_id);

CREATE TABLE event_piece (
    event_id INTEGER NOT NULL REFERENCES event (id),
    piece_id INTEGER NOT NULL REFERENCES piece (id),
    PRIMARY KEY (event_id, piece_id)
) STRICT, WITHOUT ROWID;
CREATE INDEX event_piece_by_piece ON event_piece (piece_id);

CREATE TABLE stage (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    batch_id INTEGER NOT NULL REFERENCES batch (id),
    ordinal INTEGER NOT NULL,
    what_json TEXT NOT NULL, -- core/model/plan_document.h
    planned_start_day INTEGER NOT NULL,
    planned_end_day INTEGER NOT NULL,
    started_at_s INTEGER,
    ended_at_s INTEGER,
    chamber_id INTEGER REFERENCES chamber (id),
    end_reason TEXT NOT NULL
) STRICT;
CREATE INDEX stage_by_batch ON stage (batch_id, ordinal);
CREATE INDEX stage_by_chamber ON stage (chamber_id);

CREATE TABLE ingredient_use (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    batch_id INTEGER NOT NULL REFERENCES batch (id),
    piece_id INTEGER REFERENCES piece (id),
    ingredient TEXT NOT NULL,
    name TEXT NOT NULL,
    lot_id INTEGER REFERENCES lot (id),
    planned_mg INTEGER,
    weighed_mg INTEGER
) STRICT;
CREATE INDEX ingredient_use_by_batch ON ingredient_use (batch_id);
CREATE INDEX ingredient_use_by_piece ON ingredient_use (piece_id);
CREATE INDEX ingredient_use_by_lot ON ingredient_use (lot_id);

CREATE TABLE acceptance (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    batch_id INTEGER REFERENCES batch (id),
    piece_id INTEGER REFERENCES piece (id),
    code TEXT NOT NULL,
    place TEXT NOT NULL,
    detail_json TEXT NOT NULL,
    at_s INTEGER NOT NULL,
    by_person_id INTEGER REFERENCES person (id),
    why TEXT NOT NULL
) STRICT;
CREATE INDEX acceptance_by_batch ON acceptance (batch_id);
CREATE INDEX acceptance_by_piece ON acceptance (piece_id);
CREATE INDEX acceptance_by_person ON acceptance (by_person_id);

CREATE TABLE outcome (
    batch_id INTEGER PRIMARY KEY REFERENCES batch (id),
    salt INTEGER,
    texture INTEGER,
    change_next_time TEXT NOT NULL
) STRICT;

-- notes, decisions, stock, daily work ---------------------------------------------------------------
-- Photos are kept by content and outlive an undo of their note: the log does not repeat the bytes.
CREATE TABLE photo (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    fingerprint INTEGER NOT NULL, -- FNV-1a 64 of the bytes; equal bytes are kept once
    bytes BLOB NOT NULL
) STRICT;
CREATE INDEX photo_by_fingerprint ON photo (fingerprint);

CREATE TABLE note (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    batch_id INTEGER REFERENCES batch (id),
    piece_id INTEGER REFERENCES piece (id),
    at_s INTEGER NOT NULL,
    kind TEXT NOT NULL,
    body TEXT NOT NULL,
    photo_name TEXT NOT NULL,
    photo_id INTEGER REFERENCES photo (id)
) STRICT;
CREATE INDEX note_by_batch ON note (batch_id, at_s);
CREATE INDEX note_by_piece ON note (piece_id, at_s);
CREATE INDEX note_by_photo ON note (photo_id);

CREATE TABLE decision (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    piece_id INTEGER NOT NULL REFERENCES piece (id),
    at_s INTEGER NOT NULL,
    verdict TEXT NOT NULL,
    signed_by_person_id INTEGER NOT NULL REFERENCES person (id),
    evidence_json TEXT NOT NULL,
    why TEXT NOT NULL,
    weigh_again_day INTEGER
) STRICT;
CREATE INDEX decision_by_piece ON decision (piece_id, at_s);
CREATE INDEX decision_by_person ON decision (signed_by_person_id);

CREATE TABLE pack (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    piece_id INTEGER NOT NULL REFERENCES piece (id),
    code TEXT NOT NULL,
    kind TEXT NOT NULL,
    packed_mg INTEGER NOT NULL,
    left_mg INTEGER NOT NULL,
    packed_on_day INTEGER NOT NULL,
    opened_on_day INTEGER,
    keep_by_day INTEGER,
    keep_by_rule TEXT NOT NULL,
    place TEXT NOT NULL,
    gone INTEGER NOT NULL
) STRICT;
CREATE INDEX pack_by_piece ON pack (piece_id);

CREATE TABLE pack_move (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    pack_id INTEGER NOT NULL REFERENCES pack (id),
    kind TEXT NOT NULL,
    amount_mg INTEGER NOT NULL,
    at_s INTEGER NOT NULL,
    to_whom TEXT NOT NULL,
    note TEXT NOT NULL
) STRICT;
CREATE INDEX pack_move_by_pack ON pack_move (pack_id, at_s);

CREATE TABLE task_tick (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    task_key TEXT NOT NULL,
    at_s INTEGER NOT NULL,
    by_person_id INTEGER REFERENCES person (id),
    withdrawn INTEGER NOT NULL,
    due_day INTEGER,
    batch_id INTEGER REFERENCES batch (id),
    piece_id INTEGER REFERENCES piece (id),
    note TEXT NOT NULL
) STRICT;
CREATE INDEX task_tick_by_time ON task_tick (at_s);
CREATE INDEX task_tick_by_batch ON task_tick (batch_id);
CREATE INDEX task_tick_by_piece ON task_tick (piece_id);
CREATE INDEX task_tick_by_person ON task_tick (by_person_id);

CREATE TABLE preference (
    key TEXT NOT NULL PRIMARY KEY,
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- the log ---------------------------------------------------------------------------------------------
-- Every change is an action with the changeset that makes and unmakes it. Doing, undoing and
-- redoing are steps; nothing is ever removed here. People are named without a foreign key: undoing
-- "add person" must not be barred by the log's own mention of that person.
CREATE TABLE action (
    id INTEGER PRIMARY KEY, -- the id of the step that performed it
    verb TEXT NOT NULL,
    subject TEXT NOT NULL,
    state TEXT NOT NULL,    -- done, undone (can be redone), dropped (undone for good)
    undoable INTEGER NOT NULL,
    changeset BLOB NOT NULL
) STRICT;
CREATE INDEX action_undone ON action (id) WHERE state = 'undone';

CREATE TABLE step (
    id INTEGER PRIMARY KEY AUTOINCREMENT, -- also the book's revision
    action_id INTEGER NOT NULL,
    kind TEXT NOT NULL, -- performed, undone, redone
    at_s INTEGER NOT NULL,
    who_person_id INTEGER,
    why TEXT NOT NULL
) STRICT;
CREATE INDEX step_again ON step (action_id) WHERE kind <> 'performed';

CREATE TABLE action_entry (
    entry_kind TEXT NOT NULL,
    entry_row INTEGER NOT NULL,
    action_id INTEGER NOT NULL REFERENCES action (id),
    PRIMARY KEY (entry_kind, entry_row, action_id)
) STRICT, WITHOUT ROWID;

CREATE TABLE piece_revision (
    piece_id INTEGER PRIMARY KEY,
    revision INTEGER NOT NULL
) STRICT;
