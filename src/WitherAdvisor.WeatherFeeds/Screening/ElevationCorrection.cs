using WitherAdvisor.Air;
using WitherAdvisor.Readings;
using static WitherAdvisor.WeatherFeeds.FeedAnswer;

namespace WitherAdvisor.WeatherFeeds.Screening;

/// <summary>
/// Brings a reading from the elevation it was made for to the site's. A feed that takes the elevation we send needs none of
/// it and echoes ours; one that does not names its own, and on a hill that can be hundreds of metres.
/// </summary>
internal sealed class ElevationCorrection
{
    /// <summary>Fall of temperature with height in the standard atmosphere, K/m: ASHRAE Handbook – Fundamentals 2017 (SI), ch. 1, eq. 4.</summary>
    private const double LapseKPerM = 0.0065;

    /// <summary>A tenth of a kelvin or less: below what a feed's values are rounded to.</summary>
    private const double NothingM = 10;

    /// <summary>Beyond it, rain and cloud are not those of the site either.</summary>
    private const double MostM = 1_000;

    private readonly double climbM;
    private readonly double cellPressurePa;
    private readonly double pressureRatio;

    private ElevationCorrection(double fromM, double toM)
    {
        climbM = toM - fromM;
        cellPressurePa = StandardAtmosphere.PressurePa(fromM);
        pressureRatio = StandardAtmosphere.PressurePa(toM) / cellPressurePa;
    }

    /// <summary>Null where the cell can stand for the site; <paramref name="lift"/> is null where nothing is to be done.</summary>
    public static Refused? Between(double? cellM, double siteM, NoteBook notes, out ElevationCorrection? lift)
    {
        lift = null;
        if (cellM is not double fromM)
        {
            notes.Say(new FeedNote.UnknownElevation());
            return null;
        }

        double upM = siteM - fromM;
        if (Math.Abs(upM) > MostM)
        {
            return new(RefusalReason.WrongPlace, new FeedFault.OtherElevation(fromM, siteM));
        }

        if (Math.Abs(upM) > NothingM)
        {
            notes.Say(new FeedNote.CorrectedElevation(fromM, siteM, -LapseKPerM * upM));
            lift = new(fromM, siteM);
        }

        return null;
    }

    public WeatherReading Apply(WeatherReading hour)
    {
        double? dryBulbC = hour.DryBulbC - LapseKPerM * climbM;
        return hour with
        {
            DryBulbC = dryBulbC,
            DewPointC = DewPointC(hour, dryBulbC),
            StationPressurePa = hour.StationPressurePa * pressureRatio,
        };
    }

    // Relative humidity is kept, as the feed's own server does it: it varies less with height than the dew point's distance.
    private double? DewPointC(WeatherReading hour, double? siteDryBulbC)
    {
        if (hour.DewPointC is not double dewPointC || hour.DryBulbC is not double dryBulbC || siteDryBulbC is not double siteC)
        {
            return hour.DewPointC;
        }

        double pressurePa = hour.StationPressurePa ?? cellPressurePa;
        double humidity = AirState.FromDewPoint(dryBulbC, dewPointC, pressurePa).RelativeHumidity;
        return Math.Min(AirState.FromRelativeHumidity(siteC, humidity, pressurePa * pressureRatio).DewPointC, siteC);
    }
}
