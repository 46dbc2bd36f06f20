using System.Globalization;
using WitherAdvisor.Api.Outcomes;
using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.LogFiles.Columns;
using WitherAdvisor.Outcomes;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Pages.Outcomes;

/// <summary>A kept outcome as it would have been typed into the form, in the person's units.</summary>
public sealed class OutcomeTyped(PersonUnits units, IReadOnlyList<TasterScale> scales)
{
    private readonly Dictionary<string, string> typed = new(StringComparer.Ordinal);

    public FilledForm Of(OutcomeRequest outcome)
    {
        Put(OutcomeForm.Withered, outcome.WitheredWeightKg, units.WeightFromKg);
        Put(OutcomeForm.Oven, outcome.OvenMoistureWetBasisPercent);
        Put(OutcomeForm.Turns, outcome.Turns);
        Put(OutcomeForm.TurnedAt, LogLists.Numbers(outcome.TurnedAtHours ?? []));
        Put(OutcomeForm.Bottom, outcome.Layers?.BottomMoistureWetBasisPercent);
        Put(OutcomeForm.Middle, outcome.Layers?.MiddleMoistureWetBasisPercent);
        Put(OutcomeForm.Top, outcome.Layers?.TopMoistureWetBasisPercent);
        Put(OutcomeForm.Verdict, outcome.Verdict?.ToString());
        Put(OutcomeForm.Evenness, outcome.Evenness?.ToString());
        Put(OutcomeForm.Faults, LogLists.Texts(outcome.Faults ?? []));
        Put(OutcomeForm.Weather, outcome.Weather);
        Put(OutcomeForm.Note, outcome.Note);
        Put(OutcomeForm.EnteredBy, outcome.EnteredBy);
        PutAir(OutcomeForm.AirSet, outcome.AirSet ?? []);
        PutAir(OutcomeForm.AirMeasured, outcome.AirMeasured ?? []);
        foreach ((int row, SampleWeighingRequest sample) in (outcome.SampleWeighings ?? []).Index())
        {
            Put(OutcomeForm.Sample(row, "hour"), sample.Hour);
            Put(OutcomeForm.Sample(row, "weight_percent"), sample.WeightPercent);
        }

        foreach ((int index, TasterScale scale) in scales.Index())
        {
            Put(OutcomeForm.Mark(index), outcome.Marks?.FirstOrDefault(mark => mark.Scale == scale.Name)?.Mark);
        }

        return new(typed, []);
    }

    private void PutAir(string list, IReadOnlyList<AirRequest> air)
    {
        foreach ((int row, AirRequest held) in air.Index())
        {
            Put(OutcomeForm.Air(list, row, "from_hour"), held.FromHour);
            Put(OutcomeForm.Air(list, row, "dry_bulb_c"), held.DryBulbC, units.Degrees);
            Put(OutcomeForm.Air(list, row, "wet_bulb_c"), held.WetBulbC, units.Degrees);
            Put(OutcomeForm.Air(list, row, "hygrometric_difference_k"), held.HygrometricDifferenceK, units.DegreesApart);
            Put(OutcomeForm.Air(list, row, "fan_share_percent"), held.FanSharePercent);
        }
    }

    // Ten digits: what was typed in one unit comes back as it was, and not as 26.499999999999996.
    private void Put(string field, double? value, Func<double, double>? shown = null) =>
        Put(field, value is { } known ? (shown?.Invoke(known) ?? known).ToString("G10", CultureInfo.InvariantCulture) : null);

    private void Put(string field, string? text)
    {
        if (text is not null)
        {
            typed[field] = text;
        }
    }
}
