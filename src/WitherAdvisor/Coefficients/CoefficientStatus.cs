namespace WitherAdvisor.Coefficients;

/// <summary>How well a coefficient's value is founded.</summary>
public enum CoefficientStatus
{
    /// <summary>From a published source, which is named.</summary>
    Published,

    /// <summary>Worked out from published values.</summary>
    Derived,

    /// <summary>Common practice of the trade; no published source.</summary>
    CommonPractice,

    /// <summary>From memory; no source at hand.</summary>
    FromMemory,

    /// <summary>Chosen so that the model meets practice; learned per site, cultivar and standard.</summary>
    Fitted,

    /// <summary>True by how another coefficient is stated.</summary>
    Definition,

    /// <summary>Stands in for a value of little effect that nobody measured.</summary>
    Placeholder,
}
