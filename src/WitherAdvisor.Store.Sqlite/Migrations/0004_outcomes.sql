-- How a batch ended: NULL while it runs, else unloaded, cancelled or mixed. UnloadedAtMs is when its leaf left the trough,
-- NULL also where that is unknown of a batch of the past.
ALTER TABLE Batch ADD COLUMN Ended TEXT;
ALTER TABLE Batch ADD COLUMN EndReason TEXT;
ALTER TABLE Batch ADD COLUMN MixedIntoId TEXT REFERENCES Batch (Id);
UPDATE Batch SET Ended = 'unloaded' WHERE UnloadedAtMs IS NOT NULL;

-- A log of the past seldom tells when leaf was plucked; 1 where the times were taken from that of loading.
ALTER TABLE Batch ADD COLUMN PluckingAssumed INTEGER NOT NULL DEFAULT 0;

CREATE INDEX BatchByLoading ON Batch (SiteId, LoadedAtMs, Id);

CREATE TABLE TasterScale (
    SiteId      TEXT NOT NULL REFERENCES Site (Id),
    Name        TEXT NOT NULL,
    Place       INTEGER NOT NULL,
    LeastMark   REAL NOT NULL,
    MostMark    REAL NOT NULL,
    PRIMARY KEY (SiteId, Name)
) STRICT, WITHOUT ROWID;

-- Lists are JSON text: nobody selects by them, and a row stays one row. Every version of an outcome is kept; the newest counts.
CREATE TABLE Outcome (
    BatchId                     TEXT NOT NULL REFERENCES Batch (Id),
    Version                     INTEGER NOT NULL,
    AirSet                      TEXT NOT NULL,
    AirMeasured                 TEXT NOT NULL,
    Turns                       INTEGER,
    TurnedAtHours               TEXT NOT NULL,
    WitheredWeightKg            REAL,
    OvenMoistureWetBasis        REAL,
    BottomMoistureWetBasis      REAL,
    MiddleMoistureWetBasis      REAL,
    TopMoistureWetBasis         REAL,
    SampleWeighings             TEXT NOT NULL,
    Verdict                     TEXT,
    Evenness                    TEXT,
    Marks                       TEXT NOT NULL,
    Faults                      TEXT NOT NULL,
    Weather                     TEXT,
    Note                        TEXT,
    EnteredAtMs                 INTEGER NOT NULL,
    EnteredBy                   TEXT,
    Confirmed                   TEXT NOT NULL,
    PRIMARY KEY (BatchId, Version)
) STRICT;

-- The figures of an advice, so that a log of many batches reads without parsing megabytes of answers. They outlive a move
-- to another database, where the answer itself is not. Units are those of the answer.
CREATE TABLE AdviceFigures (
    BatchId                             TEXT NOT NULL REFERENCES Batch (Id),
    MadeAtMs                            INTEGER NOT NULL,
    AdviceId                            TEXT NOT NULL,
    ModelVersion                        TEXT NOT NULL,
    CoefficientSet                      TEXT,
    Spell                               TEXT,
    RainLastThreeDaysMm                 REAL,
    RainLastTenDaysMm                   REAL,
    WaterStressFraction                 REAL,
    DryingPowerKpaMPerS                 REAL,
    SurfaceWaterKgPerKg                 REAL,
    SurfaceWaterDeviationKgPerKg        REAL,
    TissueMoistureWetBasisPercent       REAL,
    TissueMoistureDeviationPoints       REAL,
    AdvisedHours                        REAL,
    AdvisedDryBulbC                     REAL,
    AdvisedHygrometricDifferenceK       REAL,
    AdvisedTurnEveryHours               REAL,
    ReadyP10Hours                       REAL,
    ReadyP50Hours                       REAL,
    ReadyP90Hours                       REAL,
    ExpectedOutturnPercent              REAL,
    PRIMARY KEY (BatchId, MadeAtMs, AdviceId)
) STRICT, WITHOUT ROWID;

CREATE VIEW FiguresInAnswer AS
SELECT
    BatchId, MadeAtMs, Id AS AdviceId, ModelVersion,
    json_extract(Answer, '$.coefficient_set') AS CoefficientSet,
    json_extract(Answer, '$.spell.kind') AS Spell,
    json_extract(Answer, '$.spell.rain_last_three_days_mm') AS RainLastThreeDaysMm,
    json_extract(Answer, '$.spell.rain_last_ten_days_mm') AS RainLastTenDaysMm,
    json_extract(Answer, '$.spell.water_stress_fraction') AS WaterStressFraction,
    json_extract(Answer, '$.spell.drying_power_kpa_m_per_s') AS DryingPowerKpaMPerS,
    json_extract(Answer, '$.leaf.surface_water.value_kg_per_kg') AS SurfaceWaterKgPerKg,
    json_extract(Answer, '$.leaf.surface_water.standard_deviation_kg_per_kg') AS SurfaceWaterDeviationKgPerKg,
    json_extract(Answer, '$.leaf.tissue_moisture.value_wet_basis_percent') AS TissueMoistureWetBasisPercent,
    json_extract(Answer, '$.leaf.tissue_moisture.standard_deviation_points') AS TissueMoistureDeviationPoints,
    json_extract(Answer, '$.plan.ready.stop_hours') AS AdvisedHours,
    json_extract(Answer, '$.plan.set_now.plenum_dry_bulb_c') AS AdvisedDryBulbC,
    json_extract(Answer, '$.plan.set_now.hygrometric_difference_k') AS AdvisedHygrometricDifferenceK,
    json_extract(Answer, '$.plan.turning.every_hours') AS AdvisedTurnEveryHours,
    json_extract(Answer, '$.plan.ready.p10_hours') AS ReadyP10Hours,
    json_extract(Answer, '$.plan.ready.p50_hours') AS ReadyP50Hours,
    json_extract(Answer, '$.plan.ready.p90_hours') AS ReadyP90Hours,
    json_extract(Answer, '$.plan.expected.outturn_percent') AS ExpectedOutturnPercent
FROM (SELECT Id, BatchId, MadeAtMs, ModelVersion, CASE WHEN json_valid(AnswerJson) THEN AnswerJson END AS Answer FROM Advice);

INSERT INTO AdviceFigures SELECT * FROM FiguresInAnswer;

CREATE TRIGGER FiguresOfAdvice AFTER INSERT ON Advice
BEGIN
    INSERT INTO AdviceFigures SELECT * FROM FiguresInAnswer WHERE AdviceId = NEW.Id;
END;
