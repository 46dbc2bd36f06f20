using WitherAdvisor.Api.Coefficients;
using WitherAdvisor.Api.Recalibration.Responses;
using WitherAdvisor.Fields;
using WitherAdvisor.Loft;
using WitherAdvisor.Recalibration.Report;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Learning;

namespace WitherAdvisor.Api.Recalibration;

/// <summary>A report as an answer: fractions become percent, coefficients get the names and units of requests.</summary>
internal static class ReportMapping
{
    public static ReportResponse ToResponse(RecalibrationReport report, IEnumerable<LeftOut> notUsable, string? comparedWith) => new()
    {
        ComparedWith = comparedWith,
        Used = report.Used,
        LeftOut = [.. notUsable.Concat(report.LeftOut).Select(one => new LeftOutResponse { Batch = one.Id, Code = KeptWord.Of(one.Reason), Text = RecalibrationWording.LeftOut(Wordbook.English, one.Reason) })],
        Doubtful = [.. report.Doubtful.Select(one => new DoubtfulResponse { Batch = one.Id, ChanceSoundPercent = Percent.Of(one.ChanceSound) })],
        Coefficients = [.. report.Coefficients.Select(Learned)],
        Confounded = [.. report.Correlations.Select(Alike)],
        Groups = [.. report.Groups.Select(Group)],
        HoldOut = report.HoldOut is { } holdOut ? HoldOut(holdOut) : null,
        Verdict = new()
        {
            Kind = report.Verdict.Kind,
            Text = RecalibrationWording.Verdict(Wordbook.English, report.Verdict, report.Used, report.HoldOut),
            ErrorReductionPercent = Percent.Of(report.Verdict.ErrorReduction),
        },
        Residuals = [.. report.Residuals.Select(Residual)],
        ResidualSummaries = [.. report.ResidualSummaries.Select(Summary)],
        Drift = report.Drift is { } drift ? Drift(drift) : null,
        NextMeasurements = [.. report.NextMeasurements.Select(ToResponse)],
        ResidualScaleFraction = report.ResidualScale,
        Iterations = report.Iterations,
        Converged = report.Converged,
    };

    public static NextMeasurementResponse ToResponse(NextMeasurement next) => new()
    {
        Code = next.Code,
        Spell = next.Spell,
        VarianceDropPercent = Percent.Of(next.VarianceDrop),
        ReadySpreadBeforePercent = Percent.Of(next.ReadySpreadBefore),
        ReadySpreadAfterPercent = Percent.Of(next.ReadySpreadAfter),
        Text = RecalibrationWording.Next(Wordbook.English, next),
    };

    private static CoefficientField Field(string coefficient) => CoefficientField.All.Single(field => field.Coefficient.Name == coefficient);

    private static LearnedResponse Learned(CoefficientLearning learned)
    {
        CoefficientField field = Field(learned.Name);
        return new()
        {
            Name = field.Field.Name,
            Symbol = learned.Symbol,
            Unit = field.Range.Unit!,
            Prior = field.Shown(learned.Prior),
            Before = field.Shown(learned.Before),
            After = field.Shown(learned.After),
            Low = field.Shown(learned.Low90),
            High = field.Shown(learned.High90),
            SettledPercent = Percent.Of(learned.VarianceRemoved),
            Identifiability = learned.Identifiability,
            Text = LearnedWording.Sentence(Wordbook.English, learned),
        };
    }

    private static AlikeResponse Alike(CorrelationWarning pair) => new()
    {
        First = Field(pair.First).Field.Name,
        Second = Field(pair.Second).Field.Name,
        CorrelationFraction = pair.Correlation,
        Text = RecalibrationWording.Alike(Wordbook.English, pair),
    };

    private static GroupResponse Group(GroupCalibration group) => new()
    {
        Cultivar = group.Cultivar,
        LeafStandard = group.Standard,
        Outcomes = group.Outcomes,
        CuticularConductanceFraction = group.CuticularConductanceRatio,
        CuticularConductanceLowFraction = group.CuticularRatioLow90,
        CuticularConductanceHighFraction = group.CuticularRatioHigh90,
        MoistureShiftPoints = Percent.Of(group.MoistureShiftWetBasis),
        MoistureShiftLowPoints = Percent.Of(group.MoistureShiftLow90),
        MoistureShiftHighPoints = Percent.Of(group.MoistureShiftHigh90),
    };

    private static HoldOutResponse HoldOut(HoldOut holdOut) => new()
    {
        From = holdOut.From,
        Fitted = holdOut.Fitted,
        HeldOut = holdOut.HeldOut,
        Unexplained = holdOut.Unexplained,
        Proposed = Errors(holdOut.Proposed),
        ProposedSiteAlone = Errors(holdOut.ProposedSiteAlone),
        Current = Errors(holdOut.Current),
        Averages = Errors(holdOut.Averages),
    };

    private static SetErrorsResponse Errors(SetErrors errors) => new()
    {
        ReadyTimes = errors.ReadyTimes,
        MeanErrorHours = errors.MeanAbsoluteHours,
        BiasHours = errors.BiasHours,
        Moistures = errors.Moistures,
        MeanErrorPoints = Percent.Of(errors.MeanAbsoluteMoistureWetBasis),
        BiasPoints = Percent.Of(errors.BiasMoistureWetBasis),
    };

    private static ResidualResponse Residual(OutcomeResidual one) => new()
    {
        Batch = one.Id,
        LoadedAt = one.LoadedAt,
        Spell = one.Spell,
        Cultivar = one.Cultivar,
        ActualHours = one.ActualHours,
        ProposedHours = one.ProposedHours,
        CurrentHours = one.CurrentHours,
        FoundMoistureWetBasisPercent = Percent.Of(one.FoundMoistureWetBasis),
        ProposedMoistureWetBasisPercent = Percent.Of(one.ProposedMoistureWetBasis),
        CurrentMoistureWetBasisPercent = Percent.Of(one.CurrentMoistureWetBasis),
        ChanceSoundPercent = Percent.Of(one.ChanceSound),
    };

    private static ResidualSummaryResponse Summary(ResidualSummary summary) => new()
    {
        By = summary.By,
        Key = summary.By == "spell" ? KeptWord.Of(Enum.Parse<WitherAdvisor.Spells.SpellKind>(summary.Key)) : summary.Key,
        Outcomes = summary.Outcomes,
        LowerQuartileHours = summary.LowerQuartileHours,
        MedianHours = summary.MedianHours,
        UpperQuartileHours = summary.UpperQuartileHours,
        CurrentMedianHours = summary.CurrentMedianHours,
    };

    private static DriftResponse Drift(Drift drift) => new()
    {
        PerYearPercent = Percent.Of(drift.PerYear),
        LowPercent = Percent.Of(drift.Low90),
        HighPercent = Percent.Of(drift.High90),
        Months = drift.Months,
        Text = RecalibrationWording.Drift(Wordbook.English, drift),
    };
}
