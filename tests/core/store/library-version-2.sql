-- A library of schema version 2 as that version wrote it; never to be changed.
PRAGMA application_id=1347177794;
PRAGMA user_version=2;
PRAGMA foreign_keys=OFF;
BEGIN TRANSACTION;
CREATE TABLE device(
  one INTEGER PRIMARY KEY CHECK (one = 1),
  id TEXT NOT NULL CHECK (length(id) = 32 AND id NOT GLOB '*[^0-9a-f]*'),
  clock_ms INTEGER NOT NULL,
  clock_n INTEGER NOT NULL CHECK (clock_n BETWEEN 0 AND 2147483647)
) STRICT;
INSERT INTO device VALUES(1,'238d949198559cdb5d4535ed7d92bc78',1795600000000,4);
CREATE TABLE fact(
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 32 AND id NOT GLOB '*[^0-9a-f]*'),
  kind TEXT NOT NULL CHECK (length(kind) BETWEEN 1 AND 40 AND kind NOT GLOB '*[^a-z0-9_]*'),
  owner TEXT CHECK (owner IS NULL OR (length(owner) = 32 AND owner NOT GLOB '*[^0-9a-f]*')),
  line TEXT NOT NULL CHECK (line GLOB '{*}' AND length(line) <= 4194304)
) STRICT;
INSERT INTO fact VALUES('8eb8e2cd751ed7aaf204a1d58a938062','player',NULL,'{"at":{"device":"238d949198559cdb5d4535ed7d92bc78","ms":1795600000000,"n":0},"body":{"hand":"right","name":"Kim","stature_m":1.8},"id":"8eb8e2cd751ed7aaf204a1d58a938062","kind":"player"}');
INSERT INTO fact VALUES('49ff98071e9ca6ca035a647671a0f5b9','lesson','8eb8e2cd751ed7aaf204a1d58a938062','{"at":{"device":"238d949198559cdb5d4535ed7d92bc78","ms":1795600000000,"n":1},"body":{"day":"2026-11-25","title":"First lesson","wish":"less slice"},"id":"49ff98071e9ca6ca035a647671a0f5b9","kind":"lesson","path":["8eb8e2cd751ed7aaf204a1d58a938062"]}');
INSERT INTO fact VALUES('ae3967651c75f8f32de2d863e5c4f6cd','shot','49ff98071e9ca6ca035a647671a0f5b9','{"at":{"device":"238d949198559cdb5d4535ed7d92bc78","ms":1795600000000,"n":2},"body":{"shot":"full"},"id":"ae3967651c75f8f32de2d863e5c4f6cd","kind":"shot","path":["8eb8e2cd751ed7aaf204a1d58a938062","49ff98071e9ca6ca035a647671a0f5b9"]}');
INSERT INTO fact VALUES('f412201a7171b8554247e814fd78e53a','clip','ae3967651c75f8f32de2d863e5c4f6cd','{"at":{"device":"238d949198559cdb5d4535ed7d92bc78","ms":1795600000000,"n":3},"body":{"bytes":4,"duration_s":2,"frames":240,"hand":"right","height":1080,"mirrored":false,"playback_fps":120,"sha256":"d0607f7ad2628b2af9158dfba06ce87166e66b15bf68f8f358f9aa27ccb7c321","view":"face-on","width":1920},"id":"f412201a7171b8554247e814fd78e53a","kind":"clip","path":["8eb8e2cd751ed7aaf204a1d58a938062","49ff98071e9ca6ca035a647671a0f5b9","ae3967651c75f8f32de2d863e5c4f6cd"]}');
INSERT INTO fact VALUES('6de3a3b3d6a8cb55e0a77fdeded6e0e6','findings','f412201a7171b8554247e814fd78e53a','{"at":{"device":"238d949198559cdb5d4535ed7d92bc78","ms":1795600000000,"n":4},"body":{"checkpoints":[],"measurements":[{"id":"spine_tilt","method":1,"moment":"address","origin":"network","sigma":1.5,"unit":"degrees","value":4.5}],"moments":[]},"id":"6de3a3b3d6a8cb55e0a77fdeded6e0e6","kind":"findings","path":["8eb8e2cd751ed7aaf204a1d58a938062","49ff98071e9ca6ca035a647671a0f5b9","ae3967651c75f8f32de2d863e5c4f6cd","f412201a7171b8554247e814fd78e53a"]}');
CREATE TABLE tombstone(
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 32 AND id NOT GLOB '*[^0-9a-f]*'),
  day TEXT NOT NULL CHECK (day GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]')
) STRICT, WITHOUT ROWID;
CREATE TABLE belongs(
  owner TEXT NOT NULL,
  fact TEXT NOT NULL REFERENCES fact(id) ON DELETE CASCADE,
  PRIMARY KEY (owner, fact)
) STRICT, WITHOUT ROWID;
INSERT INTO belongs VALUES('8eb8e2cd751ed7aaf204a1d58a938062','49ff98071e9ca6ca035a647671a0f5b9');
INSERT INTO belongs VALUES('49ff98071e9ca6ca035a647671a0f5b9','6de3a3b3d6a8cb55e0a77fdeded6e0e6');
INSERT INTO belongs VALUES('8eb8e2cd751ed7aaf204a1d58a938062','6de3a3b3d6a8cb55e0a77fdeded6e0e6');
INSERT INTO belongs VALUES('ae3967651c75f8f32de2d863e5c4f6cd','6de3a3b3d6a8cb55e0a77fdeded6e0e6');
INSERT INTO belongs VALUES('f412201a7171b8554247e814fd78e53a','6de3a3b3d6a8cb55e0a77fdeded6e0e6');
INSERT INTO belongs VALUES('49ff98071e9ca6ca035a647671a0f5b9','ae3967651c75f8f32de2d863e5c4f6cd');
INSERT INTO belongs VALUES('8eb8e2cd751ed7aaf204a1d58a938062','ae3967651c75f8f32de2d863e5c4f6cd');
INSERT INTO belongs VALUES('49ff98071e9ca6ca035a647671a0f5b9','f412201a7171b8554247e814fd78e53a');
INSERT INTO belongs VALUES('8eb8e2cd751ed7aaf204a1d58a938062','f412201a7171b8554247e814fd78e53a');
INSERT INTO belongs VALUES('ae3967651c75f8f32de2d863e5c4f6cd','f412201a7171b8554247e814fd78e53a');
CREATE TABLE player(
  id TEXT NOT NULL PRIMARY KEY REFERENCES fact(id) ON DELETE CASCADE,
  name TEXT NOT NULL,
  words TEXT NOT NULL,
  hand TEXT CHECK (hand IN ('right', 'left')),
  stature_m REAL CHECK (stature_m > 0 AND stature_m < 10),
  disputed INTEGER NOT NULL CHECK (disputed >= 0)
) STRICT, WITHOUT ROWID;
INSERT INTO player VALUES('8eb8e2cd751ed7aaf204a1d58a938062','Kim','kim','right',1.8000000000000000444,0);
CREATE TABLE lesson(
  id TEXT NOT NULL PRIMARY KEY REFERENCES fact(id) ON DELETE CASCADE,
  player TEXT NOT NULL,
  title TEXT NOT NULL,
  day TEXT NOT NULL,
  words TEXT NOT NULL,
  made_ms INTEGER NOT NULL,
  disputed INTEGER NOT NULL CHECK (disputed >= 0)
, shots INTEGER NOT NULL DEFAULT 0 CHECK (shots >= 0), clips INTEGER NOT NULL DEFAULT 0 CHECK (clips >= 0), within INTEGER NOT NULL DEFAULT 0 CHECK (within >= 0)) STRICT, WITHOUT ROWID;
INSERT INTO lesson VALUES('49ff98071e9ca6ca035a647671a0f5b9','8eb8e2cd751ed7aaf204a1d58a938062','First lesson','2026-11-25',replace('first lesson\nless slice\n\n2026-11-25','\n',char(10)),1795600000000,0,1,1,0);
CREATE TABLE shot(
  id TEXT NOT NULL PRIMARY KEY REFERENCES fact(id) ON DELETE CASCADE,
  lesson TEXT NOT NULL,
  made_ms INTEGER NOT NULL,
  made_n INTEGER NOT NULL,
  made_device TEXT NOT NULL,
  kind TEXT NOT NULL,
  club TEXT NOT NULL,
  disputed INTEGER NOT NULL CHECK (disputed >= 0)
) STRICT, WITHOUT ROWID;
INSERT INTO shot VALUES('ae3967651c75f8f32de2d863e5c4f6cd','49ff98071e9ca6ca035a647671a0f5b9',1795600000000,2,'238d949198559cdb5d4535ed7d92bc78','full','',0);
CREATE TABLE clip(
  id TEXT NOT NULL PRIMARY KEY REFERENCES fact(id) ON DELETE CASCADE,
  shot TEXT NOT NULL,
  made_ms INTEGER NOT NULL,
  view TEXT NOT NULL CHECK (view IN ('face-on', 'down-the-line')),
  sha256 TEXT NOT NULL CHECK (length(sha256) = 64 AND sha256 NOT GLOB '*[^0-9a-f]*'),
  disputed INTEGER NOT NULL CHECK (disputed >= 0)
) STRICT, WITHOUT ROWID;
INSERT INTO clip VALUES('f412201a7171b8554247e814fd78e53a','ae3967651c75f8f32de2d863e5c4f6cd',1795600000000,'face-on','d0607f7ad2628b2af9158dfba06ce87166e66b15bf68f8f358f9aa27ccb7c321',0);
CREATE TABLE finding(
  fact TEXT NOT NULL REFERENCES fact(id) ON DELETE CASCADE,
  place INTEGER NOT NULL,
  clip TEXT NOT NULL,
  measurement TEXT NOT NULL,
  moment TEXT NOT NULL,
  value REAL NOT NULL CHECK (value BETWEEN -1e12 AND 1e12),
  sigma REAL NOT NULL CHECK (sigma > 0 AND sigma < 1e12),
  unit TEXT NOT NULL,
  method INTEGER NOT NULL,
  PRIMARY KEY (fact, place)
) STRICT, WITHOUT ROWID;
INSERT INTO finding VALUES('6de3a3b3d6a8cb55e0a77fdeded6e0e6',0,'f412201a7171b8554247e814fd78e53a','spine_tilt','address',4.5,1.5,'degrees',1);
CREATE TABLE carried(
  lesson TEXT NOT NULL REFERENCES fact(id) ON DELETE CASCADE,
  path TEXT NOT NULL CHECK (length(path) BETWEEN 1 AND 200),
  role TEXT NOT NULL CHECK (length(role) BETWEEN 1 AND 200),
  sha256 TEXT NOT NULL CHECK (length(sha256) = 64 AND sha256 NOT GLOB '*[^0-9a-f]*'),
  bytes INTEGER NOT NULL CHECK (bytes >= 0),
  PRIMARY KEY (lesson, path)
) STRICT, WITHOUT ROWID;
CREATE TABLE exchanged(
  place TEXT NOT NULL CHECK (length(place) = 32 AND place NOT GLOB '*[^0-9a-f]*'),
  record TEXT NOT NULL CHECK (length(record) BETWEEN 32 AND 33),
  file TEXT NOT NULL,
  PRIMARY KEY (place, record)
) STRICT, WITHOUT ROWID;
CREATE TABLE arrived(
  place TEXT NOT NULL CHECK (length(place) = 32 AND place NOT GLOB '*[^0-9a-f]*'),
  file TEXT NOT NULL,
  bytes INTEGER NOT NULL CHECK (bytes >= 0),
  PRIMARY KEY (place, file)
) STRICT, WITHOUT ROWID;
CREATE INDEX fact_by_owner ON fact(owner, kind);
CREATE INDEX belongs_by_fact ON belongs(fact);
CREATE INDEX lesson_by_player ON lesson(player, day);
CREATE INDEX lesson_by_day ON lesson(day, made_ms);
CREATE INDEX shot_by_lesson ON shot(lesson, made_ms);
CREATE INDEX clip_by_shot ON clip(shot, made_ms);
CREATE INDEX clip_by_film ON clip(sha256);
CREATE INDEX finding_by_measurement ON finding(measurement, moment, clip);
CREATE INDEX carried_by_part ON carried(sha256);
CREATE INDEX exchanged_by_file ON exchanged(place, file);
COMMIT;
