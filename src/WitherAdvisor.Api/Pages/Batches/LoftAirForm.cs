using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Api.Pages.Readings;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Readings;
using WitherAdvisor.Store;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Pages.Batches;

/// <summary>Air and rain at loading, for a loft that no weather feed reports to; every field may stay empty.</summary>
public sealed class LoftAirForm(StoredSite site, PersonUnits units)
{
    public const string RainDay = "rain_24_hours";
    public const string RainThreeDays = "rain_3_days";
    public const string RainTenDays = "rain_10_days";

    private const double MostRainMm = 2000;

    /// <summary>Reads the fields; the reader holds the problems.</summary>
    public LoftAir Read(FormReader form, DateTimeOffset? loadedAt)
    {
        // A batch without its time is refused, and what was read for it with it.
        DateTimeOffset at = loadedAt ?? DateTimeOffset.UnixEpoch;
        return new(new BulbFields(site, units).Read(form, at), ReadRain(form, at));
    }

    // Each sum is kept as it was read; where one lies within another, the model takes the longer less the shorter.
    private static List<RainTotal> ReadRain(FormReader form, DateTimeOffset until)
    {
        (string Field, string Label, int Days)[] sums =
            [(RainDay, form.Words["batch.rain_1_day"], 1), (RainThreeDays, form.Words["batch.rain_3_days"], 3), (RainTenDays, form.Words["batch.rain_10_days"], 10)];
        List<RainTotal> totals = [];
        foreach ((string field, string label, int days) in sums)
        {
            double? sum = form.Number(field, label, NumberRange.Plain(0, MostRainMm, "mm"));
            if (totals.LastOrDefault() is { } shorter && sum < shorter.RainMm)
            {
                form.Refuse(field, label, form.Words.Say("batch.rain.less_than_within", ("given", Figures.Millimetres(sum.Value)), ("shorter", Figures.Millimetres(shorter.RainMm))));
            }
            else if (sum is not null)
            {
                totals.Add(new RainTotal(until.AddDays(-days), until, sum.Value));
            }
        }

        return totals;
    }
}
