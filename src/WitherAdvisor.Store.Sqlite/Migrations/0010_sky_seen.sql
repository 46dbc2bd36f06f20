-- Present weather by its code and how far one sees: they tell of fog and drizzle, which no gauge does.
-- NULL where nobody said; of all kept until now nobody did.
ALTER TABLE WeatherReading ADD COLUMN WeatherCode INTEGER;
ALTER TABLE WeatherReading ADD COLUMN VisibilityM REAL;
