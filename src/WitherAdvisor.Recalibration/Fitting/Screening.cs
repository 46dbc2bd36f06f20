using WitherAdvisor.Bed;
using WitherAdvisor.Recalibration.Report;

namespace WitherAdvisor.Recalibration.Fitting;

/// <summary>Why an outcome cannot be used, if it cannot.</summary>
internal static class Screening
{
    private const double LongestHours = 60;

    /// <summary>Every row in one order, whatever order they came in.</summary>
    public static IReadOnlyList<ObservedWither> InOrder(IReadOnlyList<ObservedWither> outcomes)
    {
        ObservedWither[] sorted =
            [.. outcomes.OrderBy(one => one.LoadedAt.UtcTicks).ThenBy(one => one.Id, StringComparer.Ordinal)];
        return sorted.Select(one => one.Id).Distinct(StringComparer.Ordinal).Count() == sorted.Length
            ? sorted
            : throw new ArgumentException("Two outcomes have one id.", nameof(outcomes));
    }

    /// <summary>Null where it can be used.</summary>
    public static LeftOut? Reason(ObservedWither wither)
    {
        LeftOutReason? reason =
            !HasFinding(wither) ? LeftOutReason.NothingFound
            : wither.AirByHour.Count == 0 ? LeftOutReason.NoAir
            : !wither.AirByHour.All(IsAir) ? LeftOutReason.AirOutOfRange
            : !IsBetween(wither.HoursOnTrough, 0.1, LongestHours) ? LeftOutReason.HoursOutOfRange
            : !IsLoad(wither) ? LeftOutReason.LoadOutOfRange
            : wither.Found.WitheredWeightKg >= wither.GreenWeightKg ? LeftOutReason.HeavierThanGreen
            : !FindingsCanBe(wither) ? LeftOutReason.FindingOutOfRange
            : null;
        return reason is { } found ? new(wither.Id, found) : null;
    }

    private static bool HasFinding(ObservedWither wither) =>
        wither.Found.WitheredWeightKg is not null
        || wither.Found.MoistureWetBasis is not null
        || wither.Found.ByHeight is { BottomWetBasis: not null, TopWetBasis: not null }
        || wither.Found.Weighings is { Count: > 0 }
        || wither.AtLoading.SurfaceWaterKgPerKg is not null
        || wither.AtLoading.MoistureWetBasis is not null;

    private static bool IsAir(InletAir air) => IsBetween(air.DryBulbC, -10, 70) && IsBetween(air.HumidityRatio, 0, 0.1);

    private static bool IsLoad(ObservedWither wither) =>
        IsBetween(wither.GreenWeightKg / wither.AreaM2, 0.5, 100)
        && IsBetween(wither.AirflowM3PerSM2, 0.005, 2)
        && IsBetween(wither.PressurePa, 50_000, 110_000);

    private static bool FindingsCanBe(ObservedWither wither)
    {
        WitherFindings found = wither.Found;
        return IsBetween(found.WitheredWeightKg / wither.GreenWeightKg ?? 0.5, 0.15, 1)
            && IsMoisture(found.MoistureWetBasis)
            && IsMoisture(found.ByHeight?.BottomWetBasis)
            && IsMoisture(found.ByHeight?.TopWetBasis)
            && (found.Weighings ?? []).All(one => IsBetween(one.WeightShare, 0.1, 1.2) && double.IsFinite(one.Hour))
            && IsBetween(wither.AtLoading.SurfaceWaterKgPerKg ?? 0, 0, 1)
            && IsMoisture(wither.AtLoading.MoistureWetBasis);
    }

    private static bool IsMoisture(double? wetBasis) => IsBetween(wetBasis ?? 0.5, 0.02, 0.95);

    /// <summary>False for what is no number.</summary>
    private static bool IsBetween(double value, double low, double high) => value >= low && value <= high;
}
