using WitherAdvisor.Api.Coefficients;
using WitherAdvisor.Api.Recalibration.Answers;
using WitherAdvisor.Api.Sites;
using WitherAdvisor.Api.Wording;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Kept.Coefficients;

namespace WitherAdvisor.Api.Recalibration;

/// <summary>Recalibrations, sets and adoptions as answers, times on the site's clock.</summary>
internal static class RecalibrationMapping
{
    /// <summary>What the defaults are called.</summary>
    public static string Defaults { get; } = new WitherCoefficients().SetName;

    public static RecalibrationAnswer ToAnswer(StoredRecalibration job, SiteClock clock) => new()
    {
        Id = job.Id,
        Site = job.SiteId,
        Status = job.Status,
        ProgressPercent = Percent.Of(job.Share),
        Step = job.Step,
        QueuedAt = clock.Local(job.QueuedAt),
        StartedAt = Local(job.StartedAt, clock),
        EndedAt = Local(job.EndedAt, clock),
        Failure = job.Failure is { } failure ? RecalibrationFailureWording.Sentence(failure) : null,
        Proposal = job.Status == RecalibrationStatus.Done ? job.ProposalName : null,
    };

    public static CoefficientSetsAnswer ToAnswer(
        IReadOnlyList<StoredCoefficientSet> sets, IReadOnlyList<StoredAdoption> adoptions, SiteClock clock) => new()
    {
        Adopted = adoptions.Count > 0 ? adoptions[0].SetName ?? Defaults : Defaults,
        Sets = [.. sets.Select(set => ToAnswer(set, clock)), OfDefaults()],
        Adoptions = [.. adoptions.Select(adoption => ToAnswer(adoption, clock))],
    };

    public static CoefficientSetAnswer ToAnswer(StoredCoefficientSet set, SiteClock clock)
    {
        SiteCoefficients kept = SiteCoefficients.FromJson(set.SetJson);
        return new()
        {
            Name = set.Name,
            Origin = set.Origin,
            MadeAt = clock.Local(set.MadeAt),
            Coefficients = kept.Site,
            Groups = kept.Groups,
        };
    }

    public static AdoptionAnswer ToAnswer(StoredAdoption adoption, SiteClock clock) => new()
    {
        Set = adoption.SetName ?? Defaults,
        From = clock.Local(adoption.From),
        AdoptedBy = adoption.AdoptedBy,
        Reason = adoption.Reason,
    };

    private static CoefficientSetAnswer OfDefaults() => new()
    {
        Name = Defaults,
        Origin = CoefficientOrigin.Default,
        MadeAt = null,
        Coefficients = CoefficientsMapping.ToInput(new()),
        Groups = [],
    };

    private static DateTimeOffset? Local(DateTimeOffset? time, SiteClock clock) => time is { } known ? clock.Local(known) : null;
}
