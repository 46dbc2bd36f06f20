using WitherAdvisor.Air;
using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Readings;
using WitherAdvisor.Store;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Pages.Readings;

/// <summary>Dry bulb with wet bulb and its instrument, or with relative humidity; wind outside.</summary>
public sealed class BulbFields(StoredSite site, PersonUnits units)
{
    public const string DryBulb = "dry_bulb";
    public const string WetBulb = "wet_bulb";
    public const string Instrument = "instrument";
    public const string Humidity = "relative_humidity";
    public const string Wind = "wind";

    /// <summary>Below this a wet bulb may carry ice, which reads otherwise.</summary>
    private const double LowestWetBulbC = 0;
    private const double LowestDryBulbC = -10;
    private const double HighestC = 50;

    private static readonly NumberRange WindRange = NumberRange.Plain(0, 60, "m/s");

    /// <summary>A reading as it was read; null where nothing was typed or something in it is refused.</summary>
    /// <param name="at">When it was read.</param>
    public WeatherReading? Read(FormReader form, DateTimeOffset at)
    {
        int before = form.Problems.Count;
        double? dry = form.Number(DryBulb, form.Words["air.dry_bulb.label"], NumberRange.Temperature(LowestDryBulbC, HighestC, units));
        double? wet = form.Number(WetBulb, form.Words["air.wet_bulb.label"], NumberRange.Temperature(LowestWetBulbC, HighestC, units));
        PsychrometerKind? instrument = form.Choice<PsychrometerKind>(Instrument, form.Words["air.instrument"]);
        double? humidity = form.Number(Humidity, form.Words["air.humidity"], NumberRange.Percent(0.01, 1, "%"));
        double? wind = form.Number(Wind, form.Words["air.wind"], WindRange);
        if (form.Problems.Count == before)
        {
            Check(form, dry, wet, instrument, humidity);
        }

        WeatherReading reading = wet is null
            ? new(at, dry, RelativeHumidity: humidity, WindMPerS: wind)
            : new(at, dry, WetBulbC: wet, WindMPerS: wind, Instrument: instrument);
        return form.Problems.Count == before && reading.TellsAnything ? reading : null;
    }

    private void Check(FormReader form, double? dry, double? wet, PsychrometerKind? instrument, double? humidity)
    {
        if (dry is not { } dryC)
        {
            if (wet is not null || humidity is not null)
            {
                form.Refuse(DryBulb, form.Words["air.dry_bulb.label"], form.Words["air.dry_bulb.needed"]);
            }
        }
        else if (wet is { } wetC)
        {
            Check(form, dryC, wetC, instrument);
        }
    }

    private void Check(FormReader form, double dryC, double wetC, PsychrometerKind? instrument)
    {
        if (wetC > dryC)
        {
            Refuse(form, "air.wet_bulb.above_dry", dryC, wetC);
        }
        else if (instrument is null)
        {
            form.Refuse(Instrument, form.Words["air.instrument"], form.Words["air.instrument.needed"]);
        }
        else if (Psychrometer.Air(dryC, wetC, site.Site.PressurePa, instrument.Value) is null)
        {
            Refuse(form, "air.wet_bulb.too_dry", dryC, wetC);
        }
    }

    private void Refuse(FormReader form, string why, double dryC, double wetC) => form.Refuse(
        WetBulb, form.Words["air.wet_bulb.label"],
        form.Words.Say(why, ("wet_bulb", units.TemperatureText(wetC)), ("dry_bulb", units.TemperatureText(dryC))));
}
