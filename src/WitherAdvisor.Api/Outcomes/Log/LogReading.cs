using System.Text.Json;
using WitherAdvisor.Api.Advice;
using WitherAdvisor.Api.Batches;
using WitherAdvisor.Fields.Json;
using WitherAdvisor.Fields;
using WitherAdvisor.Leaf;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Outcomes;
using WitherAdvisor.Loft;

namespace WitherAdvisor.Api.Outcomes.Log;

/// <summary>From a row of the log to what is kept: the other way round of <see cref="LogWriting"/>.</summary>
/// <param name="siteId">The site that the log is of.</param>
/// <param name="now">When it is read.</param>
internal sealed class LogReading(string siteId, DateTimeOffset now)
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
        BatchInput batch = Batch(row);
        OutcomeInput outcome = LogOutcomeReading.Read(row, errors);
        foreach (FieldError error in (IEnumerable<FieldError>)[.. batch.CrossCheck(), .. Check(outcome), .. Agree(row)])
        {
            errors.Add(error);
        }

        string id = row.BatchId ?? NewId.At(now);
        StoredBatch stored = new(
            id, siteId, row.Trough, BatchMapping.ToDomain(batch).InUtc(), row.CreatedAt?.ToUniversalTime() ?? now, UnloadedAt(row), BatchEnd.Unloaded,
            PluckingAssumed: row.PluckedFrom is null);
        return new(
            stored,
            OutcomeMapping.ToStored(id, outcome, row.EnteredAt?.ToUniversalTime() ?? now, outcome.Confirm ?? []),
            LogAdviceReading.Read(row, id));
    }

    private static BatchInput Batch(LogRow row) => new()
    {
        Label = new()
        {
            Division = row.Division,
            Field = row.Field,
            Cultivar = row.Cultivar,
            BushAge = row.BushAge,
            LeafStandard = row.LeafStandard,
        },
        PluckedFrom = row.PluckedFrom ?? row.LoadedAt.AddHours(-UsualHoursFromPlucking),
        PluckedTo = row.PluckedTo ?? row.LoadedAt.AddHours(-UsualHoursSincePlucking),
        LoadedAt = row.LoadedAt,
        GreenWeightKg = row.GreenWeightKg,
        SurfaceWater = new() { MeasuredKgPerKg = row.MeasuredSurfaceWaterKgPerKg, Feel = row.SurfaceFeel },
        MeasuredMoistureWetBasisPercent = row.MeasuredMoistureWetBasisPercent,
        ReadyBy = row.ReadyBy,
    };

    private static DateTimeOffset? UnloadedAt(LogRow row) =>
        row.UnloadedAt?.ToUniversalTime()
        ?? (row.OnTroughHours is { } hours ? row.LoadedAt.ToUniversalTime().AddMilliseconds(Math.Round(hours * 3_600_000)) : null);

    /// <summary>Each field and all fields together, by the same rules as in JSON.</summary>
    private static IEnumerable<FieldError> Check(OutcomeInput outcome)
    {
        Shape shape = Shapes.Of(typeof(OutcomeInput));
        List<FieldError> wrong = [];
        shape.Check(JsonSerializer.SerializeToElement(outcome, JsonRules.Input), "", wrong);
        return wrong.Count > 0 ? wrong : CrossChecks.Of(outcome, shape);
    }

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
