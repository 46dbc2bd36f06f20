-- An advice is a record with a format of its own. Format 1 is what release 0.1.0 kept: request and answer of its interface.
ALTER TABLE Advice ADD COLUMN Format INTEGER NOT NULL DEFAULT 1;
ALTER TABLE Advice ADD COLUMN CoefficientSet TEXT;
ALTER TABLE Advice ADD COLUMN OutcomeJson TEXT;

-- Figures are written with the advice that they are of; no JSON is taken apart here any more.
DROP TRIGGER FiguresOfAdvice;
DROP VIEW FiguresInAnswer;
