-- A site's coefficient sets. A set is never changed and never dropped: advice names it, and replays by its own copy.
-- Its values, spreads and sets by cultivar and standard are JSON text, as a request states coefficients.
CREATE TABLE CoefficientSet (
    SiteId      TEXT NOT NULL REFERENCES Site (Id),
    Name        TEXT NOT NULL,
    MadeAtMs    INTEGER NOT NULL,
    Origin      TEXT NOT NULL,
    SetJson     TEXT NOT NULL,
    ReportJson  TEXT,
    PRIMARY KEY (SiteId, Name)
) STRICT;

CREATE TRIGGER CoefficientSetIsNotChanged BEFORE UPDATE ON CoefficientSet
BEGIN
    SELECT RAISE(ABORT, 'A coefficient set is never changed.');
END;

CREATE TRIGGER CoefficientSetIsNotDropped BEFORE DELETE ON CoefficientSet
BEGIN
    SELECT RAISE(ABORT, 'A coefficient set is never dropped.');
END;

-- ProposalName is what its set is called once it is done; ComparedWith is NULL where that were the defaults.
CREATE TABLE Recalibration (
    Id              TEXT NOT NULL PRIMARY KEY,
    SiteId          TEXT NOT NULL REFERENCES Site (Id),
    ProposalName    TEXT NOT NULL,
    ComparedWith    TEXT,
    Status          TEXT NOT NULL,
    Share           REAL NOT NULL,
    Step            TEXT,
    Failure         TEXT,
    QueuedAtMs      INTEGER NOT NULL,
    StartedAtMs     INTEGER,
    EndedAtMs       INTEGER,
    UNIQUE (SiteId, ProposalName)
) STRICT;

CREATE UNIQUE INDEX OneRecalibrationAtATime ON Recalibration (SiteId) WHERE Status IN ('queued', 'running');
CREATE INDEX RecalibrationBySite ON Recalibration (SiteId, QueuedAtMs);

-- Which set a site's advice is made with, from when on; the newest row counts. SetName is NULL for the defaults.
CREATE TABLE Adoption (
    Number      INTEGER NOT NULL PRIMARY KEY,
    SiteId      TEXT NOT NULL REFERENCES Site (Id),
    SetName     TEXT,
    FromMs      INTEGER NOT NULL,
    AdoptedBy   TEXT,
    Reason      TEXT,
    FOREIGN KEY (SiteId, SetName) REFERENCES CoefficientSet (SiteId, Name)
) STRICT;

CREATE INDEX AdoptionBySite ON Adoption (SiteId, Number);
