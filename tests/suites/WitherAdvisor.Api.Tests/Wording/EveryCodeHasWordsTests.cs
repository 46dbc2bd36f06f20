using WitherAdvisor.Advice;
using WitherAdvisor.Api.Tests.Pages;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Readings;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Leaf;
using WitherAdvisor.Words.Plans;
using Xunit;

namespace WitherAdvisor.Api.Tests.Wording;

/// <summary>Codes are made by the model as text, so the model is run over leaf of many kinds to hear them.</summary>
public sealed class EveryCodeHasWordsTests
{
    private static readonly AdviceOutcome[] Outcomes = [.. Requests().Select(Advisor.Advise)];

    [Fact]
    public void The_effects_that_the_model_names_have_words()
    {
        string[] codes = [.. Outcomes.OfType<AdviceOutcome.Advised>().SelectMany(advised => advised.Effects).Select(effect => effect.Code).Distinct()];

        Assert.Contains("without_surface_water", codes);
        Assert.Contains("without_drought", codes);
        Assert.All(codes, code => Assert.Contains($"factor.{code}", Wordbook.English.Texts.Keys));
    }

    [Fact]
    public void The_pieces_that_estimates_are_made_of_have_words()
    {
        string[] codes =
        [
            .. Outcomes.Select(outcome => outcome.Leaf).OfType<LeafEstimate>()
                .SelectMany(leaf => leaf.SurfaceWaterKgPerKg.Contributions.Concat(leaf.TissueMoistureWetBasis.Contributions))
                .Select(piece => piece.Code).Distinct(),
        ];

        Assert.Contains("rain", codes);
        Assert.Contains("felt", codes);
        Assert.Contains("drought", codes);
        Assert.All(codes, code => Assert.Contains($"estimate_piece.{code}", Wordbook.English.Texts.Keys));
    }

    [Fact]
    public void A_code_that_nobody_put_into_words_is_still_readable()
    {
        Assert.Equal("Without the moon", FactorWording.Condition(Wordbook.English, "without_the_moon"));
        Assert.Equal("fog drip", EstimateWording.Piece(Wordbook.English, "fog_drip"));
    }

    private static IEnumerable<AdviceRequest> Requests()
    {
        Batch batch = Sample.Batch.Batch;
        yield return Request(batch with { SurfaceFeel = null, ReadyBy = batch.LoadedAt.AddHours(7) }, rainMm: 2, relativeHumidity: 0.95);
        yield return Request(batch with { SurfaceFeel = SurfaceFeel.Wet }, rainMm: 0.5, relativeHumidity: 0.9);
        yield return Request(batch with { SurfaceFeel = null, Label = batch.Label with { Standard = LeafStandard.Coarse } }, rainMm: 0, relativeHumidity: 0.55);
        yield return Request(batch with { SurfaceFeel = null }, rainMm: null, relativeHumidity: 0.9);
    }

    private static AdviceRequest Request(Batch batch, double? rainMm, double relativeHumidity)
    {
        const int Hours = 60 * 24;
        WeatherReading[] readings =
        [
            .. Enumerable.Range(-Hours, Hours + 1).Select(hour => new WeatherReading(
                batch.LoadedAt.AddHours(hour), 19 + 3 * Math.Sin(hour * Math.PI / 12), RelativeHumidity: relativeHumidity + hour % 2 * 0.01, RainMm: rainMm * (1 + hour % 2 * 0.1), WindMPerS: 3)),
        ];
        return new AdviceRequest(Sample.Site.Site, Sample.Trough.Trough, batch, readings, [], [], new WitherCoefficients());
    }
}
