using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.Simulations;

/// <summary>A stage whose air the caller fixes: a plenum dry bulb or a hygrometric difference to hold, or the ambient air as it is.</summary>
public sealed record SimulatedStageRequest : ICrossChecked
{
    /// <summary>End of the stage, from loading; it starts where the one before ends.</summary>
    /// <example>10</example>
    [Measured(0.1, 48)]
    public required double ToHour { get; init; }

    /// <summary>Plenum dry bulb to hold.</summary>
    /// <example>26.5</example>
    [Measured(0, 60)]
    public double? PlenumDryBulbC { get; init; }

    /// <summary>Hygrometric difference to hold under the mesh; not beside plenum_dry_bulb_c.</summary>
    /// <example>7.2</example>
    [Measured(0, 20)]
    public double? HygrometricDifferenceK { get; init; }

    public IEnumerable<FieldError> CrossCheck()
    {
        if (PlenumDryBulbC is not null && HygrometricDifferenceK is not null)
        {
            yield return FieldError.Of("hygrometric_difference_k", $"{HygrometricDifferenceK}",
                "nothing beside plenum_dry_bulb_c: hold one of the two");
        }
    }
}
