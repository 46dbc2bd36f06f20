using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.Outcomes;

/// <summary>Air under the mesh from an hour on. Give two of dry bulb, wet bulb and hygrometric difference, or what is known.</summary>
public sealed record AirRequest : ICrossChecked
{
    private const double DifferenceReadingK = 0.3;

    /// <summary>From which hour after loading.</summary>
    /// <example>0</example>
    [Measured(0, OutcomeRequest.LongestHours)]
    public required double FromHour { get; init; }

    /// <summary>Dry bulb.</summary>
    /// <example>26.5</example>
    [Measured(0, 60)]
    public double? DryBulbC { get; init; }

    /// <summary>Wet bulb.</summary>
    /// <example>19.3</example>
    [Measured(0, 45)]
    public double? WetBulbC { get; init; }

    /// <summary>Dry bulb minus wet bulb, where the difference is what was read.</summary>
    /// <example>7.2</example>
    [Measured(0, 30)]
    public double? HygrometricDifferenceK { get; init; }

    /// <summary>Share of the trough's full airflow.</summary>
    /// <example>100</example>
    [Measured(0, 100)]
    public double? FanSharePercent { get; init; }

    public IEnumerable<FieldError> CrossCheck()
    {
        if (WetBulbC > DryBulbC)
        {
            yield return FieldError.Of("wet_bulb_c", $"{WetBulbC}", $"at most dry_bulb_c, {DryBulbC} °C");
        }
        else if (Math.Abs((HygrometricDifferenceK - (DryBulbC - WetBulbC)) ?? 0) > DifferenceReadingK)
        {
            yield return FieldError.Of("hygrometric_difference_k", $"{HygrometricDifferenceK}",
                $"dry_bulb_c minus wet_bulb_c, {DryBulbC - WetBulbC:0.##} K, to {DifferenceReadingK} K");
        }

        if ((DryBulbC ?? WetBulbC ?? HygrometricDifferenceK ?? FanSharePercent) is null)
        {
            yield return FieldError.Of("from_hour", $"{FromHour}", "an hour with at least one value beside it");
        }
    }
}
