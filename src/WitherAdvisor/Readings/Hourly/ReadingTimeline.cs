namespace WitherAdvisor.Readings.Hourly;

/// <summary>
/// Readings in order of time, one an instant, value by value. Unknown is not-a-number inside, so that the hot loops
/// stay on plain arrays; it never leaves this folder.
/// </summary>
internal sealed class ReadingTimeline
{
    /// <summary>Readings this far outside the grid can still reach into it.</summary>
    private const double ReachH = InstantValues.LongestGapH + 1;

    private const double MinutesInHour = 60;

    private readonly double[] position;
    private readonly double[] dryBulbC;
    private readonly double[] humidityRatio;
    private readonly double[] windMPerS;
    private readonly double[] rainMm;
    private readonly double[] rainSaidH;
    private readonly bool[] rainSaidBySpacing;
    private readonly double[] shortwaveWPerM2;
    private readonly SkySeen[] sky;

    private ReadingTimeline(int most)
    {
        position = new double[most];
        dryBulbC = new double[most];
        humidityRatio = new double[most];
        windMPerS = new double[most];
        rainMm = new double[most];
        rainSaidH = new double[most];
        rainSaidBySpacing = new bool[most];
        shortwaveWPerM2 = new double[most];
        sky = new SkySeen[most];
    }

    public int Count { get; private set; }

    /// <summary>Readings with a value that no weather can have; that value was left out.</summary>
    public int ImpossibleReadings { get; private set; }

    /// <summary>Hours after the grid's start, rising.</summary>
    public ReadOnlySpan<double> Position => position.AsSpan(0, Count);

    public ReadOnlySpan<double> DryBulbC => dryBulbC.AsSpan(0, Count);

    public ReadOnlySpan<double> HumidityRatio => humidityRatio.AsSpan(0, Count);

    public ReadOnlySpan<double> WindMPerS => windMPerS.AsSpan(0, Count);

    public ReadOnlySpan<double> RainMm => rainMm.AsSpan(0, Count);

    /// <summary>What was seen of the sky at each reading.</summary>
    public ReadOnlySpan<SkySeen> Sky => sky.AsSpan(0, Count);

    /// <summary>Of how long a time before its reading each rain is, h; not a number where none is told.</summary>
    public double[] RainH { get; private set; } = [];

    public ReadOnlySpan<double> ShortwaveWPerM2 => shortwaveWPerM2.AsSpan(0, Count);

    /// <summary>Whether rain fell of which the spacing of readings alone tells that it is not of the hour before.</summary>
    public bool IsRainBySpacing(int at) => RainMm[at] > 0 && rainSaidBySpacing[at] && RainSteps.IsOther(RainH[at]);

    /// <summary>Orders the readings in reach of a grid; of two of one instant the later in the list wins value by value.</summary>
    public static ReadingTimeline Of(IReadOnlyList<WeatherReading> readings, HourGrid grid, double sitePressurePa)
    {
        var times = new double[readings.Count];
        var places = new int[readings.Count];
        int count = Order(readings, grid, times, places);
        var timeline = new ReadingTimeline(count);
        for (int at = 0; at < count;)
        {
            double time = times[at];
            WeatherReading reading = timeline.Screen(readings[places[at]]);
            for (at++; at < count && times[at] == time; at++)
            {
                reading = Newer(timeline.Screen(readings[places[at]]), reading);
            }

            timeline.Add(time, reading, sitePressurePa);
        }

        timeline.RainH = RainSteps.LengthsH(timeline.Position, timeline.RainMm, timeline.rainSaidH.AsSpan(0, timeline.Count));
        return timeline;
    }

    private static int Order(IReadOnlyList<WeatherReading> readings, HourGrid grid, double[] times, int[] places)
    {
        int count = 0;
        bool rising = true;
        for (int place = 0; place < places.Length; place++)
        {
            double time = grid.PositionOf(readings[place].Time);
            if (time >= -ReachH && time <= grid.Hours + ReachH)
            {
                rising &= count == 0 || times[count - 1] <= time;
                times[count] = time;
                places[count++] = place;
            }
        }

        if (!rising)
        {
            Array.Sort(times, places, 0, count);
            RestoreListOrderWithinInstants(times, places, count);
        }

        return count;
    }

    private static void RestoreListOrderWithinInstants(double[] times, int[] places, int count)
    {
        for (int from = 0; from < count;)
        {
            int to = from + 1;
            while (to < count && times[to] == times[from])
            {
                to++;
            }

            Array.Sort(places, from, to - from);
            from = to;
        }
    }

    /// <summary>The three humidities are one value told in three ways: an older dew point would overrule a newer wet bulb.</summary>
    private static WeatherReading Newer(WeatherReading newer, WeatherReading older) => newer with
    {
        DryBulbC = newer.DryBulbC ?? older.DryBulbC,
        DewPointC = newer.HasHumidity ? newer.DewPointC : older.DewPointC,
        WetBulbC = newer.HasHumidity ? newer.WetBulbC : older.WetBulbC,
        RelativeHumidity = newer.HasHumidity ? newer.RelativeHumidity : older.RelativeHumidity,
        Instrument = newer.HasHumidity ? newer.Instrument : older.Instrument,
        RainMm = newer.RainMm ?? older.RainMm,
        RainMinutes = newer.RainMm is null ? older.RainMinutes : newer.RainMinutes,
        RainMinutesFrom = newer.RainMm is null ? older.RainMinutesFrom : newer.RainMinutesFrom,
        WindMPerS = newer.WindMPerS ?? older.WindMPerS,
        StationPressurePa = newer.StationPressurePa ?? older.StationPressurePa,
        ShortwaveWPerM2 = newer.ShortwaveWPerM2 ?? older.ShortwaveWPerM2,
        WeatherCode = newer.WeatherCode ?? older.WeatherCode,
        VisibilityM = newer.VisibilityM ?? older.VisibilityM,
    };

    private WeatherReading Screen(WeatherReading reading)
    {
        WeatherReading screened = ScreenedReading.Of(reading);
        if (!ReferenceEquals(screened, reading))
        {
            ImpossibleReadings++;
        }

        return screened;
    }

    private void Add(double time, WeatherReading reading, double sitePressurePa)
    {
        position[Count] = time;
        dryBulbC[Count] = reading.DryBulbC ?? double.NaN;
        humidityRatio[Count] = ScreenedReading.HumidityRatio(reading, sitePressurePa);
        windMPerS[Count] = reading.WindMPerS ?? double.NaN;
        rainMm[Count] = reading.RainMm ?? double.NaN;
        rainSaidH[Count] = reading.RainMinutes / MinutesInHour ?? double.NaN;
        rainSaidBySpacing[Count] = reading.RainMinutes is null || reading.RainMinutesFrom == RainMinutesOrigin.Spacing;
        shortwaveWPerM2[Count] = reading.ShortwaveWPerM2 ?? double.NaN;
        sky[Count] = new(reading.WeatherCode, reading.VisibilityM);
        Count++;
    }
}
