using WitherAdvisor.Loft.Intake;
using WitherAdvisor.Loft.Kept;
using WitherAdvisor.Loft.Kept.Coefficients;
using WitherAdvisor.Loft.Outcomes;
using WitherAdvisor.Readings;
using WitherAdvisor.Recalibration.NextMeasurements;
using WitherAdvisor.WeatherFeeds;

namespace WitherAdvisor.Words.Tests;

/// <summary>Every case of what is told from below as a case has words in every language.</summary>
public sealed class ClosedFamiliesTests
{
    /// <summary>Kept as a sentence: there is nothing to say.</summary>
    private const string SaidThen = nameof(Assumption.SaidThen);

    public static TheoryData<Type, string> Families => new()
    {
        { typeof(Assumption), "assumption" },
        { typeof(LotWarning), "lot_warning" },
        { typeof(FeedFault), "feed_fault" },
        { typeof(FeedNote), "feed_note" },
        { typeof(RecalibrationFailure), "recalibration_failure" },
        { typeof(OutcomeOddity), "outcome_oddity" },
    };

    [Theory]
    [MemberData(nameof(Families))]
    public void Every_case_has_its_key(Type family, string group)
    {
        string[] cases = [.. ClosedFamilyJson.Cases(family).Where(one => one.Name != SaidThen).Select(one => $"{group}.{ClosedFamilyJson.Code(one)}")];

        Assert.NotEmpty(cases);
        Assert.All(Wordbooks.Embedded.All, book => Assert.All(
            cases, key => Assert.Contains(book.Texts.Keys, known => known == key || known.StartsWith(key + ".", StringComparison.Ordinal))));
    }

    [Fact]
    public void Every_measurement_has_its_key() =>
        Assert.All(Wordbooks.Embedded.All, book => Assert.Empty(MeasurementCodes.All.Select(code => $"measurement.{code}").Except(book.Texts.Keys)));
}
