using WitherAdvisor.Fields;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Api.Sites;

/// <summary>What a site steers by and the limits it never crosses. What is left out is as the named style has it.</summary>
public sealed record StyleRequest : ICrossChecked
{
    /// <summary>Style to start from: short is hot-air assisted (about 6 to 12 h), long is mostly ambient air (16 to 18 h).</summary>
    /// <example>short</example>
    public StyleName? Name { get; init; }

    /// <summary>Hygrometric difference (dry bulb minus wet bulb) wanted under the mesh; short 7.2, long 3.</summary>
    /// <example>7.2</example>
    [Measured(0.5, 12)]
    public double? WantedHygrometricDifferenceK { get; init; }

    /// <summary>Moisture at which leaf is ready to roll; 60 when left out.</summary>
    /// <example>60</example>
    [Measured(45, 75)]
    public double? TargetMoistureWetBasisPercent { get; init; }

    /// <summary>Plenum dry bulb never above this; 35, the highest allowed, when left out.</summary>
    /// <example>35</example>
    [Measured(20, WitherStyle.HighestPlenumC)]
    public double? PlenumCeilingC { get; init; }

    /// <summary>Hygrometric difference never above this; 10 when left out.</summary>
    /// <example>10</example>
    [Measured(1, 15)]
    public double? HygrometricDifferenceCeilingK { get; init; }

    /// <summary>The same while water stands on the leaf; 12 when left out.</summary>
    /// <example>12</example>
    [Measured(1, 15)]
    public double? WetLeafHygrometricDifferenceCeilingK { get; init; }

    /// <summary>Chemical wither: from the last plucking to rolling, at least; 9 when left out.</summary>
    /// <example>9</example>
    [Measured(0, 20)]
    public double? ShortestSincePluckingHours { get; init; }

    /// <summary>The same for leaf grown in a dry windy spell; 7 when left out (common practice, no published source).</summary>
    /// <example>7</example>
    [Measured(0, 20)]
    public double? ShortestSincePluckingInDryWindySpellHours { get; init; }

    /// <summary>From the first plucking to rolling, at most; 24 when left out.</summary>
    /// <example>24</example>
    [Measured(6, 30)]
    public double? LongestSincePluckingHours { get; init; }

    /// <summary>Spread of leaf moisture between the wettest and the driest layer that turning has to hold; 3 when left out.</summary>
    /// <example>3</example>
    [Measured(0.5, 15)]
    public double? ToleratedSpreadWetBasisPoints { get; init; }

    /// <summary>What set-points keep below the plenum ceiling, for instruments and hot spots; 1 when left out.</summary>
    /// <example>1</example>
    [Measured(0, 5)]
    public double? PlenumMarginK { get; init; }

    /// <summary>Most turns of one wither; 6 when left out.</summary>
    /// <example>6</example>
    [Measured(0, 24)]
    public int? MostTurns { get; init; }

    /// <summary>Last hours before rolling in which nobody turns; 1 when left out.</summary>
    /// <example>1</example>
    [Measured(0, 6)]
    public double? TurnFreeLastHours { get; init; }

    /// <summary>Between two turns, at least; 1 when left out.</summary>
    /// <example>1</example>
    [Measured(0.5, 6)]
    public double? LeastHoursBetweenTurns { get; init; }

    /// <summary>Whether fuel or hours count for more: sparing, balanced or fast; balanced, which holds the wanted air, when left out.</summary>
    /// <example>balanced</example>
    public WitherPace? Pace { get; init; }

    /// <summary>Last hours on ambient air before rolling; 0.5 when left out.</summary>
    /// <example>0.5</example>
    [Measured(0, 3)]
    public double? CoolingHours { get; init; }

    public IEnumerable<FieldError> CrossCheck()
    {
        WitherStyle style = StyleMapping.ToDomain(this);
        if (style.ShortestHoursSincePlucking > style.LongestHoursSincePlucking)
        {
            yield return FieldError.Of("shortest_since_plucking_hours", $"{style.ShortestHoursSincePlucking}",
                $"at most longest_since_plucking_hours, {style.LongestHoursSincePlucking} h");
        }

        if (style.ShortestHoursSincePluckingInDryWindySpell > style.LongestHoursSincePlucking)
        {
            yield return FieldError.Of("shortest_since_plucking_in_dry_windy_spell_hours",
                $"{style.ShortestHoursSincePluckingInDryWindySpell}",
                $"at most longest_since_plucking_hours, {style.LongestHoursSincePlucking} h");
        }

        if (style.WantedHygrometricDifferenceK > style.HygrometricDifferenceCeilingK)
        {
            yield return FieldError.Of("wanted_hygrometric_difference_k", $"{style.WantedHygrometricDifferenceK}",
                $"at most hygrometric_difference_ceiling_k, {style.HygrometricDifferenceCeilingK} K");
        }
    }
}
