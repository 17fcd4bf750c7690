/**
 * The database's shape, step by step: step n takes a file from `user_version` n − 1 to n. A step that has
 * been released is never edited; the next change is a new step.
 */
export const MIGRATIONS: readonly string[] = [
  `
  -- The server's own order of arrival; "position" is never used again, even after a row is gone.
  CREATE TABLE events (
    position INTEGER PRIMARY KEY AUTOINCREMENT,
    id       TEXT NOT NULL UNIQUE,
    device   TEXT NOT NULL,
    seq      INTEGER NOT NULL CHECK (seq >= 1),
    visit    TEXT NOT NULL,
    at       INTEGER NOT NULL,
    type     TEXT NOT NULL,
    event    TEXT NOT NULL CHECK (json_valid(event)),
    UNIQUE (device, seq)
  ) STRICT;
  CREATE INDEX events_by_visit ON events (visit, device, seq);

  -- How far each device's log is here without a gap, moved in the transaction that keeps the events.
  CREATE TABLE devices (
    device    TEXT PRIMARY KEY,
    confirmed INTEGER NOT NULL
  ) STRICT, WITHOUT ROWID;
  `,
];
