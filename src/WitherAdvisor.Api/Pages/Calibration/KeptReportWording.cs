using WitherAdvisor.Api.Coefficients;
using WitherAdvisor.Api.Recalibration.Responses;
using WitherAdvisor.Fields;
using WitherAdvisor.Loft;
using WitherAdvisor.Recalibration;
using WitherAdvisor.Recalibration.Report;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Learning;

namespace WitherAdvisor.Api.Pages.Calibration;

/// <summary>Sentences of a report for its page. A report is kept with English ones: they are made again of its numbers.</summary>
internal sealed class KeptReportWording(Wordbook words)
{
    public Told Verdict(ReportResponse report) => Told.Again(words, report.Verdict.Text, book => RecalibrationWording.Verdict(
        book, new Verdict(report.Verdict.Kind, Percent.ToFraction(report.Verdict.ErrorReductionPercent), FewestOutcomes(report.Used)),
        report.Used, report.HoldOut is { } holdOut ? HoldOut(holdOut) : null));

    public Told Learned(LearnedResponse learned) => Told.Again(words, learned.Text, book => Field(learned.Name) is { } field
        ? LearnedWording.Sentence(book, field.Coefficient.Name, field.ToDomain(learned.Before), field.ToDomain(learned.After), learned.Identifiability)
        : null);

    public Told Alike(AlikeResponse pair) => Told.Again(words, pair.Text, book => Field(pair.First) is { } first && Field(pair.Second) is { } second
        ? RecalibrationWording.Alike(book, new CorrelationWarning(first.Coefficient.Name, second.Coefficient.Name, pair.CorrelationFraction))
        : null);

    public Told Drift(DriftResponse drift) => Told.Again(words, drift.Text, book => RecalibrationWording.Drift(book, new Drift(
        Percent.ToFraction(drift.PerYearPercent), Percent.ToFraction(drift.LowPercent), Percent.ToFraction(drift.HighPercent), drift.Months)));

    public Told Next(NextMeasurementResponse next) => Told.Again(words, next.Text, book => RecalibrationWording.Next(book, new NextMeasurement(
        next.Code, next.Spell, Percent.ToFraction(next.VarianceDropPercent), Percent.ToFraction(next.ReadySpreadBeforePercent),
        Percent.ToFraction(next.ReadySpreadAfterPercent))));

    public Told LeftOut(LeftOutResponse one) => Told.Again(
        words, one.Text,
        book => Enum.GetValues<LeftOutReason>().Where(reason => KeptWord.Of(reason) == one.Code)
            .Select(reason => RecalibrationWording.LeftOut(book, reason)).FirstOrDefault());

    private static int? FewestOutcomes(int used) => new RecalibrationSettings().FewestOutcomes is var fewest && used < fewest ? fewest : null;

    private static CoefficientField? Field(string name) => CoefficientField.All.FirstOrDefault(field => field.Field.Name == name);

    private static HoldOut HoldOut(HoldOutResponse holdOut) => new(
        From: holdOut.From, Fitted: holdOut.Fitted, HeldOut: holdOut.HeldOut, Unexplained: holdOut.Unexplained,
        Proposed: Errors(holdOut.Proposed), ProposedSiteAlone: Errors(holdOut.ProposedSiteAlone),
        Current: Errors(holdOut.Current), Averages: Errors(holdOut.Averages));

    private static SetErrors Errors(SetErrorsResponse errors) => new(
        errors.ReadyTimes, errors.MeanErrorHours, errors.BiasHours,
        errors.Moistures, Percent.ToFraction(errors.MeanErrorPoints), Percent.ToFraction(errors.BiasPoints));
}
