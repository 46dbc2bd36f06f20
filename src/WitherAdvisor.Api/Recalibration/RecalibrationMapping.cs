using WitherAdvisor.Api.Coefficients;
using WitherAdvisor.Api.Recalibration.Responses;
using WitherAdvisor.Api.Sites;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Coefficients;
using WitherAdvisor.Loft.Kept.Coefficients;
using WitherAdvisor.Loft.Sites;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Learning;

namespace WitherAdvisor.Api.Recalibration;

/// <summary>Recalibrations, sets and adoptions as answers, times on the site's clock.</summary>
internal static class RecalibrationMapping
{
    public static RecalibrationResponse ToResponse(StoredRecalibration job, SiteClock clock) => new()
    {
        Id = job.Id,
        Site = job.SiteId,
        Status = job.Status,
        ProgressPercent = Percent.Of(job.Share),
        Step = job.Step,
        QueuedAt = clock.Local(job.QueuedAt),
        StartedAt = Local(job.StartedAt, clock),
        EndedAt = Local(job.EndedAt, clock),
        Failure = job.Failure is { } failure ? RecalibrationFailureWording.Sentence(Wordbook.English, failure) : null,
        Proposal = job.Status == RecalibrationStatus.Done ? job.ProposalName : null,
    };

    public static CoefficientSetsResponse ToResponse(
        IReadOnlyList<StoredCoefficientSet> sets, IReadOnlyList<StoredAdoption> adoptions, SiteClock clock) => new()
        {
            Adopted = adoptions.Count > 0 ? adoptions[0].SetName ?? SiteSet.DefaultsName : SiteSet.DefaultsName,
            Sets = [.. sets.Select(set => ToResponse(set, clock)), OfDefaults()],
            Adoptions = [.. adoptions.Select(adoption => ToResponse(adoption, clock))],
        };

    public static CoefficientSetResponse ToResponse(StoredCoefficientSet set, SiteClock clock)
    {
        SiteSet kept = SetRecord.Read(set.SetJson);
        return new()
        {
            Name = set.Name,
            Origin = set.Origin,
            MadeAt = clock.Local(set.MadeAt),
            Coefficients = CoefficientsMapping.ToRequest(kept.Site),
            Groups = [.. kept.Groups.Select(CoefficientsMapping.ToResponse)],
        };
    }

    public static AdoptionResponse ToResponse(StoredAdoption adoption, SiteClock clock) => new()
    {
        Set = adoption.SetName ?? SiteSet.DefaultsName,
        From = clock.Local(adoption.From),
        AdoptedBy = adoption.AdoptedBy,
        Reason = adoption.Reason,
    };

    private static CoefficientSetResponse OfDefaults() => new()
    {
        Name = SiteSet.DefaultsName,
        Origin = CoefficientOrigin.Default,
        MadeAt = null,
        Coefficients = CoefficientsMapping.ToRequest(new()),
        Groups = [],
    };

    private static DateTimeOffset? Local(DateTimeOffset? time, SiteClock clock) => time is { } known ? clock.Local(known) : null;
}
