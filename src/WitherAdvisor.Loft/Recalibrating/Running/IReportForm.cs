using WitherAdvisor.Recalibration.Report;

namespace WitherAdvisor.Loft.Recalibrating.Running;

/// <summary>The form in which the report on a proposal is kept beside it.</summary>
public interface IReportForm
{
    /// <summary>A report as it is kept.</summary>
    /// <param name="notUsable">Outcomes of which too little is kept to be used.</param>
    /// <param name="comparedWith">The set in use that it was compared with; null for the defaults.</param>
    string Write(RecalibrationReport report, IEnumerable<LeftOut> notUsable, string? comparedWith);

    /// <summary>What a kept report says of its proposal.</summary>
    KeptVerdict Verdict(string kept);
}
