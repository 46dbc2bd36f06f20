using WitherAdvisor.Coefficients;
using WitherAdvisor.Documentation;
using WitherAdvisor.Loft.Kept;
using WitherAdvisor.Loft.Kept.Coefficients;
using WitherAdvisor.Readings;
using WitherAdvisor.Recalibration.NextMeasurements;
using WitherAdvisor.Recalibration.Report;
using WitherAdvisor.Review;
using WitherAdvisor.Spells;
using WitherAdvisor.WeatherFeeds;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Feeds;
using WitherAdvisor.Words.Learning;
using WitherAdvisor.Words.Model;
using WitherAdvisor.Words.Weather;
using Xunit;

namespace WitherAdvisor.Api.Tests.Wording;

/// <summary>Whatever is told from below the web as a code has its words here, whichever case it is.</summary>
public sealed class EveryCaseHasWordsTests
{
    [Fact]
    public void Every_assumption_makes_a_sentence() => AllSaid<Assumption>(one => AssumptionWording.Sentence(Wordbook.English, one));

    [Fact]
    public void Every_fault_of_a_feed_makes_a_sentence() => AllSaid<FeedFault>(one => FeedFaultWording.Sentence(Wordbook.English, one));

    [Fact]
    public void Every_note_on_a_feeds_weather_makes_a_sentence() => AllSaid<FeedNote>(one => FeedNoteWording.Sentence(Wordbook.English, one));

    [Fact]
    public void Every_failure_of_a_recalibration_makes_a_sentence() => AllSaid<RecalibrationFailure>(one => RecalibrationFailureWording.Sentence(Wordbook.English, one));

    [Fact]
    public void Every_reason_why_an_outcome_or_a_value_is_left_out_has_words()
    {
        AllDistinct(Enum.GetValues<LeftOutReason>().Select(reason => RecalibrationWording.LeftOut(Wordbook.English, reason)));
        AllDistinct(Enum.GetValues<WhyUnknown>().Select(why => WhyUnknownWording.Reason(Wordbook.English, why)));
    }

    [Fact]
    public void All_that_the_model_card_names_has_words()
    {
        AllDistinct(ModelEquations.All.Select(one => EquationWording.Title(one.Code)));
        AllDistinct(ModelEquations.All.Select(EquationWording.Formula));
        AllDistinct(ModelConstants.All.Select(one => ConstantWording.Meaning(one.Code)));
        AllDistinct(ModelCheck.All.Select(one => ModelCheckWording.Text(one.Code)));
        AllDistinct(Unknown.All.Select(one => UnknownWording.Text(one.Code)));
        AllDistinct(CoefficientCatalogue.All.Select(one => CoefficientWording.Effect(one.Name)));
        AllDistinct(CoefficientSpread.All.Select(one => CoefficientWording.Spread(one.Of)));
    }

    [Fact]
    public void What_a_recalibration_learned_makes_a_sentence_for_every_fitted_coefficient()
    {
        string[] names =
        [
            .. CoefficientCatalogue.All.Where(one => one.Status == CoefficientStatus.Fitted).Select(one => one.Name),
            nameof(WitherCoefficients.BoundaryLayerConductanceMPerS),
        ];
        foreach (Identifiability told in Enum.GetValues<Identifiability>())
        {
            AllDistinct(names.Select(name => LearnedWording.Sentence(Wordbook.English, new(name, "x", "1", 1, 1, 1.1, 0.9, 1.2, 0.5, told))));
        }

        AllDistinct(names.Select(name => RecalibrationWording.Alike(Wordbook.English, new(name, nameof(WitherCoefficients.TurnBlend), 0.8))));
    }

    [Fact]
    public void Every_measurement_that_may_be_asked_for_makes_a_sentence_on_every_leaf() => AllDistinct(
        from code in MeasurementCodes.All
        from spell in Enum.GetValues<SpellKind>()
        select RecalibrationWording.Next(Wordbook.English, new(code, spell, 0.2, 0.1, 0.09)));

    [Fact]
    public void A_verdict_is_told_for_few_outcomes_for_none_held_out_and_for_both_ways()
    {
        SetErrors proposed = new(12, 0.5, 0, 0, null, null);
        HoldOut holdOut = new(DateTimeOffset.UnixEpoch, 40, 12, 0, proposed, proposed with { MeanAbsoluteHours = 0.6 }, proposed with { MeanAbsoluteHours = 0.9 }, proposed with { MeanAbsoluteHours = 1.1 });

        Assert.Equal(
            [
                "3 outcomes, but at least 4 are needed to tell a loft from one odd night. The proposal is what was assumed before any outcome.",
                "6 outcomes are too few to hold any out, so it is not known whether the proposal is better than the set in use.",
                "Better than the set in use on 12 outcomes held out: its ready times are off by 0.50 h on average, those of the set in use by 0.90 h, those of a table of averages by 1.10 h; one set for all leaf is off by 0.60 h.",
                "Not better than the set in use on 12 outcomes held out: its ready times are off by 0.50 h on average, those of the set in use by 0.90 h, those of a table of averages by 1.10 h; one set for all leaf is off by 0.60 h.",
            ],
            [
                RecalibrationWording.Verdict(Wordbook.English, new(VerdictKind.TooFewOutcomes, null, 4), 3, null),
                RecalibrationWording.Verdict(Wordbook.English, new(VerdictKind.TooFewOutcomes, null), 6, null),
                RecalibrationWording.Verdict(Wordbook.English, new(VerdictKind.BetterThanCurrent, 0.4), 52, holdOut),
                RecalibrationWording.Verdict(Wordbook.English, new(VerdictKind.NotBetter, -0.4), 52, holdOut),
            ]);
    }

    private static void AllSaid<T>(Func<T, string> sentence)
        where T : class => AllDistinct(ClosedFamilyJson.Cases(typeof(T)).Select(one => sentence((T)Example.Of(one))));

    private static void AllDistinct(IEnumerable<string> words)
    {
        string[] all = [.. words];
        Assert.NotEmpty(all);
        Assert.All(all, text => Assert.False(string.IsNullOrWhiteSpace(text)));
        Assert.Distinct(all, StringComparer.Ordinal);
    }
}
