using WitherAdvisor.Bed;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Loft.Kept.Outcomes;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Sites;
using WitherAdvisor.Outcomes;
using WitherAdvisor.Readings;
using WitherAdvisor.Recalibration;
using WitherAdvisor.Recalibration.Report;
using WitherAdvisor.Sites;
using WitherAdvisor.Spells;

namespace WitherAdvisor.Loft.Recalibrating.Observing;

/// <summary>The log of a site with all that is kept beside it, read and not yet worked through.</summary>
/// <param name="Lines">By loading.</param>
/// <param name="AdvisedAir">By batch, of those of which nobody wrote down the air; answers themselves are long.</param>
public sealed record LogWithWeather(
    StoredSite Site,
    IReadOnlyDictionary<string, Trough> Troughs,
    IReadOnlyList<LoggedOutcome> Lines,
    IReadOnlyDictionary<string, IReadOnlyList<AirHeld>> AdvisedAir,
    PastWeather Weather)
{
    /// <summary>Works through the weather of every batch.</summary>
    /// <param name="told">Told what share is done.</param>
    /// <param name="prior">For what is not learned of weather and spell.</param>
    public ObservedWithers WorkThrough(WitherCoefficients prior, Action<double> told, CancellationToken cancel)
    {
        List<ObservedWither> withers = [];
        List<LeftOut> leftOut = [];
        foreach ((int i, LoggedOutcome line) in Lines.Index())
        {
            cancel.ThrowIfCancellationRequested();
            told((double)i / Lines.Count);
            if (line.Batch.UnloadedAt is not { } unloadedAt)
            {
                leftOut.Add(new(line.Batch.Id, LeftOutReason.HoursUnknown));
            }
            else if (line.Batch.Batch.Lots.Count > 0)
            {
                leftOut.Add(new(line.Batch.Id, LeftOutReason.LoadedInLots));
            }
            else if (Observed(line, (unloadedAt - line.Batch.Batch.LoadedAt).TotalHours, prior) is { } wither)
            {
                withers.Add(wither);
            }
            else
            {
                leftOut.Add(new(line.Batch.Id, LeftOutReason.WeatherUnknown));
            }
        }

        return new(withers, leftOut);
    }

    private ObservedWither? Observed(LoggedOutcome line, double hours, WitherCoefficients prior)
    {
        Batch batch = line.Batch.Batch;
        WitherOutcome outcome = line.Outcome.Outcome;
        Trough trough = Troughs[line.Batch.TroughId];
        double pressurePa = Site.Site.PressurePa;
        (IReadOnlyList<WeatherReading> readings, IReadOnlyList<RainTotal> totals) = Weather.Before(batch.LoadedAt);
        PluckedLeaf leaf = new(batch.PluckedFrom, batch.PluckedTo, batch.LoadedAt, batch.Label.Standard);
        (LeafFeatures features, Spell spell) = LeafFromWeather.FeaturesAndSpell(Site.Site, readings, totals, leaf, prior);
        // A usual value taken in place of a wet season's would be wrong the same way for every batch of it.
        if (!features.CanopyIsKnown && batch.MeasuredSurfaceWaterKgPerKg is null && batch.SurfaceFeel is null)
        {
            return null;
        }

        IReadOnlyList<InletAir> measured = ObservedAir.Read(outcome.AirMeasured, hours, pressurePa);
        return new(
            line.Batch.Id, new SiteClock(Site.TimeZone).Local(batch.LoadedAt), spell.Kind, batch.Label.Cultivar, batch.Label.Standard,
            features, new(batch.MeasuredSurfaceWaterKgPerKg, batch.MeasuredMoistureWetBasis, batch.SurfaceFeel),
            batch.GreenWeightKg, trough.AreaM2, trough.AirflowM3PerSM2 * FanShare(outcome, hours), pressurePa,
            measured.Count > 0 ? measured : SetOrAdvised(line, hours, pressurePa), measured.Count > 0,
            ObservedTurns.Of(outcome, line.Advice, hours), hours, Findings(outcome));
    }

    private IReadOnlyList<InletAir> SetOrAdvised(LoggedOutcome line, double hours, double pressurePa)
    {
        IReadOnlyList<InletAir> set = ObservedAir.Held(line.Outcome.Outcome.AirSet, hours, pressurePa);
        return set.Count > 0
            ? set
            : ObservedAir.Held(AdvisedAir.GetValueOrDefault(line.Batch.Id) ?? [], hours, pressurePa);
    }

    private static double FanShare(WitherOutcome outcome, double hours) => ObservedAir.FanShare(
        outcome.AirMeasured.Any(row => row.FanShare is not null) ? outcome.AirMeasured : outcome.AirSet, hours);

    private static WitherFindings Findings(WitherOutcome outcome) => new(
        outcome.WitheredWeightKg,
        outcome.OvenMoistureWetBasis,
        outcome.Layers == new LayerMoistures(null, null, null) ? null : outcome.Layers,
        outcome.SampleWeighings);
}
