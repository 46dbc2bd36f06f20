using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Serialization;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Recalibration.Responses;

/// <summary>A recalibration with its report.</summary>
[Computed]
public sealed record RecalibrationWithReportResponse : RecalibrationResponse
{
    [SetsRequiredMembers]
    public RecalibrationWithReportResponse(RecalibrationResponse job, string? report)
        : base(job) => Report = report;

    /// <summary>What to judge the proposal by; null until it is done.</summary>
    [JsonConverter(typeof(KeptJsonConverter))]
    [ShownAs(typeof(ReportResponse))]
    public string? Report { get; }
}
