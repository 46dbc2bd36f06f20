using WitherAdvisor.Api.Recalibration.Responses;
using WitherAdvisor.Loft.Kept.Coefficients;
using WitherAdvisor.Recalibration.Learning;

namespace WitherAdvisor.Api.Recalibration;

/// <summary>What a site's last recalibration found.</summary>
internal sealed class LastProposal(IRecalibrationStore jobs, ICoefficientStore coefficients)
{
    /// <summary>The last one that was done, with its report; null where there was none.</summary>
    public async Task<(StoredRecalibration Job, ReportResponse Report)?> Of(string siteId, CancellationToken cancel)
    {
        StoredRecalibration? done = (await jobs.List(siteId, cancel)).FirstOrDefault(job => job.Status == RecalibrationStatus.Done);
        return done is not null && await coefficients.Find(siteId, done.ProposalName, cancel) is { ReportJson: { } report }
            ? (done, ReportForm.Read(report))
            : null;
    }

    /// <summary>What would teach most: by that report, or by what is believed before any outcome.</summary>
    public async Task<NextMeasurementsResponse> NextMeasurements(string siteId, CancellationToken cancel) =>
        await Of(siteId, cancel) is { } last
            ? new() { Set = last.Job.ProposalName, Measurements = last.Report.NextMeasurements }
            : new()
            {
                Set = null,
                Measurements = [.. SiteRecalibration.Run([], new(), cancellation: cancel).Report.NextMeasurements.Select(ReportMapping.ToResponse)],
            };
}
