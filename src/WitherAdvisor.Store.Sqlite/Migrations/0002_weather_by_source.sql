-- Each reading says where it is from and, where a feed brought it, which. A key holds no NULL, so Feed is empty where none did.
-- What one source says never touches the row of another. All sources of a stretch are read together, so rows lie by time.

CREATE TABLE SourcedReading (
    SiteId              TEXT NOT NULL REFERENCES Site (Id),
    TimeMs              INTEGER NOT NULL,
    Source              TEXT NOT NULL,
    Feed                TEXT NOT NULL,
    DryBulbC            REAL,
    DewPointC           REAL,
    WetBulbC            REAL,
    RelativeHumidity    REAL,
    RainMm              REAL,
    WindMPerS           REAL,
    StationPressurePa   REAL,
    ShortwaveWPerM2     REAL,
    SavedAtMs           INTEGER NOT NULL,
    PRIMARY KEY (SiteId, TimeMs, Source, Feed),
    CHECK ((Feed <> '') = (Source IN ('feedanalysis', 'feedforecast')))
) STRICT, WITHOUT ROWID;

-- Until now callers alone gave weather.
INSERT INTO SourcedReading (
    SiteId, TimeMs, Source, Feed,
    DryBulbC, DewPointC, WetBulbC, RelativeHumidity, RainMm, WindMPerS, StationPressurePa, ShortwaveWPerM2, SavedAtMs)
SELECT
    SiteId, TimeMs, CASE Kind WHEN 'forecast' THEN 'callerforecast' ELSE Kind END, '',
    DryBulbC, DewPointC, WetBulbC, RelativeHumidity, RainMm, WindMPerS, StationPressurePa, ShortwaveWPerM2, SavedAtMs
FROM WeatherReading;

DROP TABLE WeatherReading;
ALTER TABLE SourcedReading RENAME TO WeatherReading;

-- Name of the feed that the site's weather is fetched from; NULL where none is.
ALTER TABLE Site ADD COLUMN Feed TEXT;

-- Every time a feed was asked, and what came of it. Refusal is a sentence, NULL where the feed gave weather.
CREATE TABLE FeedFetch (
    SiteId              TEXT NOT NULL REFERENCES Site (Id),
    Feed                TEXT NOT NULL,
    FetchedAtMs         INTEGER NOT NULL,
    Refusal             TEXT,
    HoursGot            INTEGER NOT NULL,
    NewestAnalysedMs    INTEGER,
    -- The grid cell that answered, which is not the site.
    CellLatitudeDeg     REAL,
    CellLongitudeDeg    REAL,
    CellElevationM      REAL,
    -- A JSON array of sentences.
    Notes               TEXT NOT NULL,
    PRIMARY KEY (SiteId, Feed, FetchedAtMs)
) STRICT, WITHOUT ROWID;
