using WitherAdvisor.Loft.Outcomes;

namespace WitherAdvisor.Loft.Importing;

/// <summary>Why a line of a log does not fit what is kept.</summary>
public abstract record LineFault
{
    private LineFault()
    {
    }

    /// <summary>It is of another site.</summary>
    public sealed record OtherSite(string Given, string SiteId) : LineFault;

    /// <summary>Its trough is none of the site's.</summary>
    /// <param name="Known">The site's troughs.</param>
    public sealed record UnknownTrough(string Given, IReadOnlyCollection<string> Known) : LineFault;

    /// <summary>An earlier line tells of the same batch.</summary>
    public sealed record Twice(int EarlierLine) : LineFault;

    /// <summary>The batch is kept as cancelled, mixed away or another site's.</summary>
    public sealed record NotWitheredHere(string TroughId, string SiteId, string BatchId) : LineFault;

    /// <summary>It is kept otherwise, and an import changes nothing.</summary>
    public sealed record KeptOtherwise(ColumnDifference Difference, string BatchId) : LineFault;

    public sealed record Impossible(OutcomeFault Fault) : LineFault;
}
