namespace WitherAdvisor.Recalibration.Report;

/// <summary>
/// Errors on the latest outcomes, by coefficients fitted on the earlier ones. The ready time of a set is the hour at
/// which it would have had the leaf as it was found at unloading.
/// </summary>
/// <param name="From">The first outcome held out was loaded then.</param>
/// <param name="Fitted">Earlier outcomes.</param>
/// <param name="HeldOut">Later outcomes.</param>
/// <param name="Unexplained">Of those, left out of the comparison: no set and no average comes near them.</param>
/// <param name="Proposed">By the proposed sets of cultivar and standard, the site's where nobody said either.</param>
/// <param name="ProposedSiteAlone">By the site's proposed set for all leaf.</param>
/// <param name="Current">By the set in use.</param>
/// <param name="Averages">By a table of mean hours of spell and standard; it knows no moisture.</param>
public sealed record HoldOut(
    DateTimeOffset From,
    int Fitted,
    int HeldOut,
    int Unexplained,
    SetErrors Proposed,
    SetErrors ProposedSiteAlone,
    SetErrors Current,
    SetErrors Averages);
