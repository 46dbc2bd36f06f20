using WitherAdvisor.Api.Outcomes.Import;
using WitherAdvisor.Api.Weather;
using WitherAdvisor.Loft.Importing;
using WitherAdvisor.Loft.Kept.Coefficients;
using WitherAdvisor.Recalibration.Report;
using WitherAdvisor.Store;
using WitherAdvisor.Words;

namespace WitherAdvisor.Api.Tests.Wording;

/// <summary>Codes that stand beside the pure library and are named on pages: each has words in every language.</summary>
public sealed class CodesOfPagesTests
{
    public static TheoryData<string> Tags => [.. Wordbooks.Embedded.All.Select(book => book.Tag)];

    [Theory]
    [MemberData(nameof(Tags))]
    public void Every_member_has_words(string tag)
    {
        Wordbook words = Wordbooks.Embedded.Find(tag)!;

        AllDistinct<CoefficientOrigin>(words.Name);
        AllDistinct<Identifiability>(words.Name);
        AllDistinct<KeptRows>(words.Name);
        AllDistinct<KeptRows>(keep => words.Name(keep, "test"));
        AllDistinct<RowState>(words.Name);
        AllDistinct<WeatherKind>(words.Name);
    }

    [Theory]
    [InlineData(RecalibrationStatus.Failed)]
    [InlineData(RecalibrationStatus.Cancelled)]
    [InlineData(RecalibrationStatus.Interrupted)]
    public void Every_way_for_a_recalibration_to_end_without_a_proposal_has_words(RecalibrationStatus status) =>
        Assert.All(Wordbooks.Embedded.All, words => Assert.EndsWith(".", words.Name(status), StringComparison.Ordinal));

    private static void AllDistinct<T>(Func<T, string> words)
        where T : struct, Enum =>
        Assert.Equal(Enum.GetValues<T>().Length, Enum.GetValues<T>().Select(words).Distinct(StringComparer.Ordinal).Count());
}
