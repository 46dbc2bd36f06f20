using WitherAdvisor.Fields;
using WitherAdvisor.Leaf;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Outcomes;
using WitherAdvisor.Loft;
using WitherAdvisor.LogFiles.Columns;
using WitherAdvisor.LogFiles.Writing;
using WitherAdvisor.Outcomes;

namespace WitherAdvisor.LogFiles.Reading;

/// <summary>From a row of the log to what is kept: the other way round of <see cref="LogWriting"/>.</summary>
/// <param name="siteId">The site that the log is of.</param>
/// <param name="rules">What a batch and an outcome keep to wherever they come from.</param>
/// <param name="now">When it is read.</param>
internal sealed class LogReading(string siteId, IRowRules rules, DateTimeOffset now)
{
    /// <summary>Where nobody knew, leaf is taken to have been plucked in these hours before loading (common practice, no published source).</summary>
    private const double UsualHoursFromPlucking = 6;

    private const double UsualHoursSincePlucking = 1;

    /// <summary>What a log rounds outturn and hours to.</summary>
    private const double RoundingPoints = 0.6;

    private const double RoundingHours = 0.02;

    /// <summary>What the row says; what does not fit in it is added to the errors, and then it counts for nothing.</summary>
    public LoggedOutcome Read(LogRow row, ICollection<FieldError> errors)
    {
        string id = row.BatchId ?? NewId.At(now);
        Batch batch = Batch(row);
        StoredOutcome outcome = Outcome(row, id, errors);
        foreach (FieldError error in (IEnumerable<FieldError>)[.. rules.Check(batch), .. rules.Check(outcome), .. Agree(row)])
        {
            errors.Add(error);
        }

        StoredBatch stored = new(
            id, siteId, row.Trough, batch.InUtc(), row.CreatedAt?.ToUniversalTime() ?? now, UnloadedAt(row), BatchEnd.Unloaded,
            PluckingAssumed: row.PluckedFrom is null);
        return new(stored, outcome with { Outcome = WithTurns(outcome.Outcome) }, LogAdviceReading.Read(row, id));
    }

    private static Batch Batch(LogRow row) => new(
        new(row.Division, row.Field, row.Cultivar, row.BushAge, row.LeafStandard),
        row.PluckedFrom ?? row.LoadedAt.AddHours(-UsualHoursFromPlucking),
        row.PluckedTo ?? row.LoadedAt.AddHours(-UsualHoursSincePlucking),
        row.LoadedAt,
        row.GreenWeightKg,
        row.MeasuredSurfaceWaterKgPerKg,
        row.SurfaceFeel,
        Percent.ToFraction(row.MeasuredMoistureWetBasisPercent),
        row.ReadyBy);

    private StoredOutcome Outcome(LogRow row, string batchId, ICollection<FieldError> errors) => new(
        batchId, LogOutcomeReading.Read(row, errors), row.EnteredAt?.ToUniversalTime() ?? now, row.EnteredBy, LogLists.ReadTexts(row.Confirmed));

    private static WitherOutcome WithTurns(WitherOutcome outcome) =>
        outcome.Turns is null && outcome.TurnedAtHours.Count > 0 ? outcome with { Turns = outcome.TurnedAtHours.Count } : outcome;

    private static DateTimeOffset? UnloadedAt(LogRow row) =>
        row.UnloadedAt?.ToUniversalTime()
        ?? (row.OnTroughHours is { } hours ? row.LoadedAt.ToUniversalTime().AddMilliseconds(Math.Round(hours * 3_600_000)) : null);

    private static IEnumerable<FieldError> Agree(LogRow row)
    {
        if (row.PluckedFrom is null != row.PluckedTo is null)
        {
            yield return FieldError.Missing(row.PluckedFrom is null ? "plucked_from" : "plucked_to", "both times of plucking or neither");
        }

        if ((row.UnloadedAt - row.LoadedAt)?.TotalHours is { } hours)
        {
            if (hours is < 0 or > LogOutcome.MostHours)
            {
                yield return FieldError.Of("unloaded_at", Rfc3339.Format(row.UnloadedAt!.Value), $"after loaded_at by at most {LogOutcome.MostHours} h");
            }
            else if (Math.Abs(hours - (row.OnTroughHours ?? hours)) > RoundingHours)
            {
                yield return FieldError.Of("on_trough_hours", $"{row.OnTroughHours}", $"unloaded_at less loaded_at, {hours:0.##} h");
            }
        }

        double? outturnPercent = 100 * row.WitheredWeightKg / row.GreenWeightKg;
        if (row.OutturnPercent is { } outturn && !(Math.Abs(outturn - (outturnPercent ?? double.NaN)) <= RoundingPoints))
        {
            yield return FieldError.Of("outturn_percent", $"{outturn}",
                outturnPercent is null ? "empty where withered_weight_kg is: it follows from it" : $"{outturnPercent:0.##} %, which follows from the weights");
        }
    }
}
