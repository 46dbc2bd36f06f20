namespace WitherAdvisor.Api.Recalibration.Responses;

/// <summary>Errors on the latest outcomes, by coefficients fitted on the earlier ones.</summary>
public sealed record HoldOutResponse
{
    /// <summary>The first outcome held out was loaded then.</summary>
    /// <example>2026-03-01T13:00:00+05:30</example>
    public required DateTimeOffset From { get; init; }

    /// <summary>Earlier outcomes, which it was fitted on.</summary>
    /// <example>45</example>
    public required int Fitted { get; init; }

    /// <summary>Later outcomes, which it had not seen.</summary>
    /// <example>15</example>
    public required int HeldOut { get; init; }

    /// <summary>Of those, left out of the comparison: nothing comes near them.</summary>
    /// <example>1</example>
    public required int Unexplained { get; init; }

    /// <summary>By the proposed sets.</summary>
    public required SetErrorsResponse Proposed { get; init; }

    /// <summary>By the proposed set for all leaf.</summary>
    public required SetErrorsResponse ProposedSiteAlone { get; init; }

    /// <summary>By the set in use.</summary>
    public required SetErrorsResponse Current { get; init; }

    /// <summary>By a table of mean hours of spell and standard; it knows no moisture.</summary>
    public required SetErrorsResponse Averages { get; init; }
}
