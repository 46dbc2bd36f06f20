using WitherAdvisor.Readings;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Weather;
using Xunit;

namespace WitherAdvisor.Api.Tests.Wording;

public sealed class AssumptionWordingTests
{
    [Fact]
    public void What_is_stale_tells_how_old_it_is_what_was_taken_and_what_would_help()
    {
        Assert.Equal(
            "There is no reading from the 9 h before loading: the forecast was used for 9 of those hours. It would help most to read the dry bulb and wet bulb now, and to say whether it has rained since.",
            AssumptionWording.Sentence(Wordbook.English, new Assumption.WeatherStale(9, 9)));
        Assert.StartsWith(
            "There is no reading from before loading: there is no forecast for those hours either.",
            AssumptionWording.Sentence(Wordbook.English, new Assumption.WeatherStale(null, 0)), StringComparison.Ordinal);
    }

    [Fact]
    public void Only_what_a_forecast_gave_is_counted() => Assert.Equal(
        "The forecast filled gaps in the readings before loading: rain 12 h, wind 85 h.",
        AssumptionWording.Sentence(Wordbook.English, new Assumption.ForecastUsed(0, 0, 12, 85, 0)));

    [Fact]
    public void A_moved_forecast_tells_which_way() => Assert.Equal(
        "The last air reading was not as forecast. The forecast was corrected by +2.5 K dry bulb and −0.6 K dew point; the correction halves every 4 h.",
        AssumptionWording.Sentence(Wordbook.English, new Assumption.ForecastBiasCorrected(2.5, -0.6, 4)));

    [Fact]
    public void Air_ahead_tells_where_it_was_taken_from()
    {
        Assert.Equal(
            "There is no forecast of the outside air for 11 of the 12 hours that the wither may last: 11 were taken from the same hour of the day before; ready times are less sure.",
            AssumptionWording.Sentence(Wordbook.English, new Assumption.AirNotForecast(11, 12, 11, 0)));
        Assert.Equal(
            "There is no forecast of the outside air for 11 of the 12 hours that the wither may last: 11 keep the last known air; ready times are less sure.",
            AssumptionWording.Sentence(Wordbook.English, new Assumption.AirNotForecast(11, 12, 0, 11)));
    }

    [Fact]
    public void Totals_tell_whether_a_feed_told_of_their_hours()
    {
        Assert.Contains("They were spread over parts of the day as a feed has its rain, otherwise evenly.", AssumptionWording.Sentence(Wordbook.English, new Assumption.RainHoursUnknown(24, true)), StringComparison.Ordinal);
        Assert.Contains("only rain totals are known. They were spread evenly.", AssumptionWording.Sentence(Wordbook.English, new Assumption.RainHoursUnknown(24, false)), StringComparison.Ordinal);
    }
}
