-- What a plan keeps to beside its limits, and the heat and power that there are. Earlier sites have what was usual.
ALTER TABLE Site ADD COLUMN PlenumMarginK REAL NOT NULL DEFAULT 1;
ALTER TABLE Site ADD COLUMN MostTurns INTEGER NOT NULL DEFAULT 6;
ALTER TABLE Site ADD COLUMN TurnFreeLastHours REAL NOT NULL DEFAULT 1;
ALTER TABLE Site ADD COLUMN LeastHoursBetweenTurns REAL NOT NULL DEFAULT 1;
ALTER TABLE Site ADD COLUMN Pace TEXT NOT NULL DEFAULT 'balanced' CHECK (Pace IN ('balanced', 'sparing', 'fast'));
ALTER TABLE Site ADD COLUMN LoftHeaterKW REAL CHECK (LoftHeaterKW >= 0);
ALTER TABLE Trough ADD COLUMN HeaterKW REAL CHECK (HeaterKW >= 0);
ALTER TABLE Trough ADD COLUMN FanKW REAL CHECK (FanKW > 0);
