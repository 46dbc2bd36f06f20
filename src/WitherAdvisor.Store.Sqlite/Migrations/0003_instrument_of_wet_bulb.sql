-- On what the wet bulb was read, so that it stays as it was read and is turned into thermodynamic humidity where it is used.
-- NULL where nobody said: the wet bulb is then the thermodynamic one, as every wet bulb kept until now is.
ALTER TABLE WeatherReading ADD COLUMN Instrument TEXT;
