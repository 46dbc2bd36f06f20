using System.Text.Json;
using WitherAdvisor.Api.Recalibration.Responses;
using WitherAdvisor.Fields.Json;
using WitherAdvisor.Loft.Recalibrating.Running;
using WitherAdvisor.Loft.Records;
using WitherAdvisor.Recalibration.Report;

namespace WitherAdvisor.Api.Recalibration;

/// <summary>Reports are kept as they are answered.</summary>
internal sealed class ReportForm : IReportForm
{
    public string Write(RecalibrationReport report, IEnumerable<LeftOut> notUsable, string? comparedWith) =>
        JsonSerializer.Serialize(ReportMapping.ToResponse(report, notUsable, comparedWith), JsonRules.Response);

    /// <summary>A kept report, by today's names.</summary>
    public static ReportResponse Read(string kept) => JsonSerializer.Deserialize<ReportResponse>(FormerNames.Now(kept), JsonRules.Response)!;

    public KeptVerdict Verdict(string kept)
    {
        ReportResponse report = Read(kept);
        return new(report.Verdict.Kind, report.ComparedWith);
    }
}
