using WitherAdvisor.Air;
using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Api.Wording;
using WitherAdvisor.Store;

namespace WitherAdvisor.Api.Pages.Readings;

/// <summary>Dry bulb with wet bulb and its instrument, or with relative humidity.</summary>
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

    public static NumberRange WindRange { get; } = NumberRange.Plain(0, 60, "m/s");

    /// <summary>Null where no dry bulb was typed or something in it is refused.</summary>
    public BulbReading? Read(FormReader form)
    {
        int before = form.Problems.Count;
        double? dry = form.Number(DryBulb, "Dry bulb", NumberRange.Temperature(LowestDryBulbC, HighestC, units));
        double? wet = form.Number(WetBulb, "Wet bulb", NumberRange.Temperature(LowestWetBulbC, HighestC, units));
        PsychrometerKind? instrument = form.Choice<PsychrometerKind>(Instrument, "Instrument");
        double? humidity = form.Number(Humidity, "Relative humidity", NumberRange.Percent(0.01, 1, "%"));
        if (form.Problems.Count > before)
        {
            return null;
        }

        if (dry is null)
        {
            if (wet is not null || humidity is not null)
            {
                form.Refuse(DryBulb, "Dry bulb", "Nothing was given; it is needed with a wet bulb or a humidity.");
            }

            return null;
        }

        return wet is null ? new(dry.Value, null, humidity) : Thermodynamic(form, dry.Value, wet.Value, instrument);
    }

    private BulbReading? Thermodynamic(FormReader form, double dryC, double wetC, PsychrometerKind? instrument)
    {
        if (wetC > dryC)
        {
            form.Refuse(WetBulb, "Wet bulb", $"{units.TemperatureText(wetC)} was given; not above the dry bulb, {units.TemperatureText(dryC)}.");
            return null;
        }

        if (instrument is null)
        {
            form.Refuse(Instrument, "Instrument", "Nothing was chosen; it is needed with a wet bulb, as a still bulb reads higher.");
            return null;
        }

        if (Psychrometer.Air(dryC, wetC, site.Site.PressurePa, instrument.Value) is not { } air)
        {
            form.Refuse(WetBulb, "Wet bulb", $"{units.TemperatureText(wetC)} was given; no air at {units.TemperatureText(dryC)} is that dry. Is the wick wet?");
            return null;
        }

        return new(dryC, air.WetBulbC, null);
    }
}
