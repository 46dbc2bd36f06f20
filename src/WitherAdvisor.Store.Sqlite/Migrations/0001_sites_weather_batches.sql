-- Columns are named as the library names them, units included; ...Ms is an instant, milliseconds since 1970-01-01T00:00Z.
-- NULL is unknown, never 0. STRICT, so that nothing can be kept as another type than it is read as.
-- REAL keeps a double to the last bit, but for the sign of zero; not-a-number is refused.

CREATE TABLE Site (
    Id                                          TEXT NOT NULL PRIMARY KEY,
    Name                                        TEXT NOT NULL,
    TimeZone                                    TEXT NOT NULL,
    ElevationM                                  REAL NOT NULL,
    LatitudeDeg                                 REAL NOT NULL,
    LongitudeDeg                                REAL NOT NULL,
    HotAirC                                     REAL NOT NULL,
    StationPressurePa                           REAL,
    -- The style is columns, not JSON: recalibration and export can select each setting with its unit, and a site
    -- keeps the value it was given when a default of the library changes. A new setting costs one migration.
    StyleName                                   TEXT NOT NULL,
    WantedHygrometricDifferenceK                REAL NOT NULL,
    TargetMoistureWetBasis                      REAL NOT NULL,
    PlenumCeilingC                              REAL NOT NULL,
    HygrometricDifferenceCeilingK               REAL NOT NULL,
    WetLeafHygrometricDifferenceCeilingK        REAL NOT NULL,
    ShortestHoursSincePlucking                  REAL NOT NULL,
    ShortestHoursSincePluckingInDryWindySpell   REAL NOT NULL,
    LongestHoursSincePlucking                   REAL NOT NULL,
    ToleratedSpreadWetBasis                     REAL NOT NULL,
    CoolingHours                                REAL NOT NULL
) STRICT;

CREATE TABLE Trough (
    SiteId              TEXT NOT NULL REFERENCES Site (Id),
    Id                  TEXT NOT NULL,
    Name                TEXT NOT NULL,
    AreaM2              REAL NOT NULL,
    AirflowM3PerSM2     REAL NOT NULL,
    SlowestFanShare     REAL NOT NULL,
    MostLoadKgPerM2     REAL NOT NULL,
    PRIMARY KEY (SiteId, Id)
) STRICT, WITHOUT ROWID;

-- Always read as a stretch of one site and kind, so rows lie in that order.
CREATE TABLE WeatherReading (
    SiteId              TEXT NOT NULL REFERENCES Site (Id),
    Kind                TEXT NOT NULL,
    TimeMs              INTEGER NOT NULL,
    DryBulbC            REAL,
    DewPointC           REAL,
    WetBulbC            REAL,
    RelativeHumidity    REAL,
    RainMm              REAL,
    WindMPerS           REAL,
    StationPressurePa   REAL,
    ShortwaveWPerM2     REAL,
    SavedAtMs           INTEGER NOT NULL,
    PRIMARY KEY (SiteId, Kind, TimeMs)
) STRICT, WITHOUT ROWID;

CREATE TABLE RainTotal (
    SiteId              TEXT NOT NULL REFERENCES Site (Id),
    FromMs              INTEGER NOT NULL,
    ToMs                INTEGER NOT NULL,
    RainMm              REAL NOT NULL,
    SavedAtMs           INTEGER NOT NULL,
    PRIMARY KEY (SiteId, FromMs, ToMs)
) STRICT, WITHOUT ROWID;

CREATE TABLE Batch (
    Id                            TEXT NOT NULL PRIMARY KEY,
    SiteId                        TEXT NOT NULL,
    TroughId                      TEXT NOT NULL,
    Division                      TEXT NOT NULL,
    Field                         TEXT NOT NULL,
    Cultivar                      TEXT,
    BushAge                       TEXT,
    Standard                      TEXT,
    PluckedFromMs                 INTEGER NOT NULL,
    PluckedToMs                   INTEGER NOT NULL,
    LoadedAtMs                    INTEGER NOT NULL,
    GreenWeightKg                 REAL NOT NULL,
    MeasuredSurfaceWaterKgPerKg   REAL,
    SurfaceFeel                   TEXT,
    MeasuredMoistureWetBasis      REAL,
    ReadyByMs                     INTEGER,
    CreatedAtMs                   INTEGER NOT NULL,
    UnloadedAtMs                  INTEGER,
    FOREIGN KEY (SiteId, TroughId) REFERENCES Trough (SiteId, Id)
) STRICT;

CREATE INDEX BatchBySite ON Batch (SiteId, CreatedAtMs);
CREATE INDEX BatchByTrough ON Batch (SiteId, TroughId, LoadedAtMs);

CREATE TABLE Advice (
    Id              TEXT NOT NULL PRIMARY KEY,
    BatchId         TEXT NOT NULL REFERENCES Batch (Id),
    MadeAtMs        INTEGER NOT NULL,
    ModelVersion    TEXT NOT NULL,
    RequestJson     TEXT NOT NULL,
    AnswerJson      TEXT NOT NULL
) STRICT;

CREATE INDEX AdviceByBatch ON Advice (BatchId, MadeAtMs);
