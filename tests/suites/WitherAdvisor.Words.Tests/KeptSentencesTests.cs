using WitherAdvisor.Loft.Outcomes;
using WitherAdvisor.Readings;
using WitherAdvisor.WeatherFeeds;
using WitherAdvisor.Words.Feeds;
using WitherAdvisor.Words.Outcomes;
using WitherAdvisor.Words.Weather;

namespace WitherAdvisor.Words.Tests;

/// <summary>Sentences that were kept in English, on a page in another language.</summary>
public sealed class KeptSentencesTests
{
    private const string NoWind =
        "Wind is not known for 7 of the 72 hours before plucking. The average for the same hour of the day was used or, without one, 2 m/s at 2 m height.";

    /// <summary>English with one entry of its own.</summary>
    private static readonly Wordbook Loud = new("art-x-loud", Wordbook.English.Texts.ToDictionary(
        text => text.Key, text => text.Key == "assumption.no_wind" ? "NO WIND IN {hours}" : text.Value, StringComparer.Ordinal));

    [Fact]
    public void One_that_English_still_says_so_is_said_in_the_pages_words() => Assert.Equal(
        new Told("NO WIND IN 7", null), AssumptionWording.Tell(Loud, new Assumption.SaidThen("no_wind", NoWind, new Assumption.NoWind(7))));

    [Theory]
    [InlineData("Nobody read the wind.", 7)]
    [InlineData(NoWind, 8)]
    [InlineData(NoWind, null)]
    public void Any_other_is_told_as_it_was_given_and_marked_as_English(string sentence, int? hours)
    {
        Assumption.SaidThen then = new("no_wind", sentence, hours is { } known ? new Assumption.NoWind(known) : null);

        Assert.Equal(new Told(sentence, "en"), AssumptionWording.Tell(Loud, then));
        Assert.Equal(new Told(sentence, null), AssumptionWording.Tell(Wordbook.English, then));
        Assert.Equal(sentence, AssumptionWording.Sentence(Loud, then));
    }

    [Fact]
    public void A_refusal_of_a_feed_that_was_kept_as_a_sentence_is_marked_as_English()
    {
        Assert.Equal(new Told("It was shut.", "en"), FeedFaultWording.Tell(Loud, new FeedFault.SaidThen("It was shut.")));
        Assert.Null(FeedFaultWording.Tell(Loud, new FeedFault.EmptyAnswer()).Language);
    }

    [Fact]
    public void An_oddity_names_its_place_as_the_form_does_or_as_it_is_told()
    {
        OutcomeOddity odd = new OutcomeOddity.AirTooHot(new OutcomePlace(OutcomeTerm.AirMeasuredDryBulb, 1), 36.5);

        Assert.Equal("As measured, 2: dry bulb is 36.5 °C; leaf reddens above 35 °C.", OddityWording.Sentence(Wordbook.English, odd));
        Assert.Equal(
            "air_measured[1].dry_bulb_c is 36.5 °C; leaf reddens above 35 °C.", OddityWording.Sentence(Wordbook.English, odd, "air_measured[1].dry_bulb_c"));
    }
}
