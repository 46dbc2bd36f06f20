using WitherAdvisor.Api.Recalibration;
using WitherAdvisor.Api.Recalibration.Responses;
using WitherAdvisor.Loft.Coefficients;
using WitherAdvisor.Loft.Kept.Coefficients;
using WitherAdvisor.Loft.Kept.Sites;

namespace WitherAdvisor.Api.Pages.Calibration;

/// <summary>What the calibration page of a site shows.</summary>
/// <param name="Jobs">Newest first.</param>
/// <param name="Proposal">Name of the set that was proposed last; null where the site never was recalibrated.</param>
/// <param name="Report">What to judge it by.</param>
/// <param name="Next">What would teach most.</param>
public sealed record CalibrationView(
    StoredSite Site, IReadOnlyList<StoredRecalibration> Jobs, CoefficientSetsResponse Sets, string? Proposal, ReportResponse? Report,
    IReadOnlyList<NextMeasurementResponse> Next)
{
    /// <summary>The one that waits or runs.</summary>
    public StoredRecalibration? Open => Jobs.FirstOrDefault(job => job.IsOpen);

    /// <summary>How the last one ended where it proposed nothing.</summary>
    public StoredRecalibration? Failed => Jobs.Count > 0 && !Jobs[0].IsOpen && Jobs[0].Status != RecalibrationStatus.Done ? Jobs[0] : null;

    /// <summary>Whether the last proposal still waits for somebody to decide.</summary>
    public bool IsUndecided => Proposal is not null && Sets.Adopted != Proposal;

    /// <summary>Whether it needs a reason.</summary>
    public bool IsDoubtful => Report is { } report
        && (report.Verdict.Kind != WitherAdvisor.Recalibration.Report.VerdictKind.BetterThanCurrent
            || (report.ComparedWith ?? SiteSet.DefaultsName) != Sets.Adopted)
        && Sets.Adoptions.All(adoption => adoption.Set != Proposal);
}
