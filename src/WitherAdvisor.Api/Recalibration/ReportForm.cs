using System.Text.Json;
using WitherAdvisor.Api.Recalibration.Answers;
using WitherAdvisor.Fields.Json;
using WitherAdvisor.Loft.Recalibrating.Running;
using WitherAdvisor.Recalibration.Report;

namespace WitherAdvisor.Api.Recalibration;

/// <summary>Reports are kept as they are answered.</summary>
internal sealed class ReportForm : IReportForm
{
    public string Write(RecalibrationReport report, IEnumerable<LeftOut> notGathered, string? comparedWith) =>
        JsonSerializer.Serialize(ReportMapping.ToAnswer(report, notGathered, comparedWith), JsonRules.Answer);

    public KeptVerdict Verdict(string kept)
    {
        ReportAnswer report = JsonSerializer.Deserialize<ReportAnswer>(kept, JsonRules.Answer)!;
        return new(report.Verdict.Kind, report.ComparedWith);
    }
}
