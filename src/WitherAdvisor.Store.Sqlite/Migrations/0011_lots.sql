-- Parts of a batch that came onto the trough by themselves, in order of loading; none where it was loaded at once.
-- What nobody said yet of a lot that is expected is NULL. The row of the batch tells of all its lots together.
CREATE TABLE Lot (
    BatchId                     TEXT NOT NULL REFERENCES Batch (Id),
    Place                       INTEGER NOT NULL,
    LoadedAtMs                  INTEGER NOT NULL,
    GreenWeightKg               REAL NOT NULL,
    Division                    TEXT,
    Field                       TEXT,
    Cultivar                    TEXT,
    BushAge                     TEXT,
    Standard                    TEXT,
    PluckedFromMs               INTEGER,
    PluckedToMs                 INTEGER,
    MeasuredSurfaceWaterKgPerKg REAL,
    SurfaceFeel                 TEXT,
    MeasuredMoistureWetBasis    REAL,
    Expected                    INTEGER NOT NULL,
    PRIMARY KEY (BatchId, Place)
) STRICT, WITHOUT ROWID;

-- So that whoever reads many batches looks for lots only where there are any.
ALTER TABLE Batch ADD COLUMN LotCount INTEGER NOT NULL DEFAULT 0;
