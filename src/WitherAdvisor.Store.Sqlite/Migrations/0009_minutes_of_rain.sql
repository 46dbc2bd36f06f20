-- Of how long a time before its reading the rain was gathered, and who tells so.
-- NULL where nobody said: the spacing of the source's readings tells, or else it is of the hour before, as of all kept until now.
ALTER TABLE WeatherReading ADD COLUMN RainMinutes REAL;
ALTER TABLE WeatherReading ADD COLUMN RainMinutesFrom TEXT;
