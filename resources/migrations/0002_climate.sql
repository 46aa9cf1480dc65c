-- Climate readings in bulk, their roll-ups and the logs they came from.
--
-- Units as in the first migration, and _centic: hundredths of a degree Celsius (a logger's grain;
-- a reading takes some 20 bytes, so a minute's readings of five sensors over ten years take half a
-- gigabyte).

-- A log taken into the book. What one undo takes back.
CREATE TABLE climate_import (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    sensor_id INTEGER NOT NULL REFERENCES sensor (id),
    made_at_s INTEGER NOT NULL,
    file_name TEXT NOT NULL,
    dialect_json TEXT NOT NULL,
    added INTEGER NOT NULL,
    known INTEGER NOT NULL,     -- readings of a moment that was in the book already
    conflicts INTEGER NOT NULL, -- of those, how many said something else; the older one stays
    rejected INTEGER NOT NULL,
    first_s INTEGER,            -- of the readings added
    last_s INTEGER,
    state TEXT NOT NULL,        -- running, complete, cancelled, undone
    action_id INTEGER REFERENCES action (id) -- its line in the log; NULL while it runs
) STRICT;
CREATE INDEX climate_import_by_sensor ON climate_import (sensor_id, made_at_s);
CREATE INDEX climate_import_by_action ON climate_import (action_id);

-- No foreign keys: a check of each of a million rows would cost as much as the row. The rows are
-- written by one function only, which checks the import once; `check` verifies them.
CREATE TABLE climate_reading (
    sensor_id INTEGER NOT NULL,
    at_s INTEGER NOT NULL,
    temp_centic INTEGER,
    rh_centipct INTEGER,
    import_id INTEGER NOT NULL,
    PRIMARY KEY (sensor_id, at_s)
) STRICT, WITHOUT ROWID;

-- Least, greatest, sum and count of the readings in [start_s, start_s + width_s), for each width
-- in use (900, 3600, 21600, 86400). Written in the transaction that writes the readings.
CREATE TABLE climate_bucket (
    sensor_id INTEGER NOT NULL,
    width_s INTEGER NOT NULL,
    start_s INTEGER NOT NULL,
    temp_count INTEGER NOT NULL,
    temp_sum_centic INTEGER NOT NULL,
    temp_min_centic INTEGER,
    temp_max_centic INTEGER,
    rh_count INTEGER NOT NULL,
    rh_sum_centipct INTEGER NOT NULL,
    rh_min_centipct INTEGER,
    rh_max_centipct INTEGER,
    PRIMARY KEY (sensor_id, width_s, start_s)
) STRICT, WITHOUT ROWID;
