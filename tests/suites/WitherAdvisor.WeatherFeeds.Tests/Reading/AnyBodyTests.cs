using System.Text;
using WitherAdvisor.Readings;
using WitherAdvisor.WeatherFeeds.Reading;

namespace WitherAdvisor.WeatherFeeds.Tests.Reading;

/// <summary>Whatever bytes come, there is an answer, and a series keeps its promises.</summary>
public sealed class AnyBodyTests
{
    private static readonly string[] Nasty =
        ["null", "-9999", "1e999", "\"NaN\"", "[]", "{}", "true", "0", "-0", "\"\"", "}", "]", ",", "\"", "°", "\0", "\uFFFD", "e", "99999"];

    [Fact]
    public void Two_thousand_damaged_bodies_end_in_an_answer_each()
    {
        var random = new Random(20260605);
        string good = FeedFixture.Text("three-days.json");
        int believed = 0;
        for (int trial = 0; trial < 2_000; trial++)
        {
            FeedAnswer answer = AnswerReader.Read(Encoding.UTF8.GetBytes(Damaged(good, random)), Read.Origin);
            if (answer is FeedAnswer.Series series)
            {
                believed++;
                Assert.All(series.Readings, hour => Assert.True(CanBe(hour), hour.ToString()));
                Assert.True(series.Readings.Zip(series.Readings.Skip(1)).All(pair => pair.First.Time < pair.Second.Time));
            }
        }

        // Most damage here is to a single number, so that the promises above are put to the test.
        Assert.InRange(believed, 200, 1_900);
    }

    private static string Damaged(string body, Random random)
    {
        int from = random.Next(body.Length);
        switch (random.Next(4))
        {
            case 0:
                return body[..from];
            case 1:
                return body.Remove(from, Math.Min(random.Next(1, 40), body.Length - from));
            default:
                // Replaces a cell of a list.
                int cell = body.IndexOf(", ", from, StringComparison.Ordinal);
                int end = cell < 0 ? -1 : body.IndexOf(", ", cell + 2, StringComparison.Ordinal);
                string nasty = Nasty[random.Next(Nasty.Length)];
                return end < 0 ? body.Insert(from, nasty) : body[..(cell + 2)] + nasty + body[end..];
        }
    }

    private static bool CanBe(WeatherReading hour) =>
        hour.DryBulbC is null or (>= -60 and <= 60)
        && (hour.DewPointC is null || hour.DewPointC >= -90)
        && !(hour.DewPointC > hour.DryBulbC)
        && hour.RelativeHumidity is null or (>= 0 and <= 1)
        && hour.RainMm is null or (>= 0 and <= 500)
        && hour.WindMPerS is null or (>= 0 and <= 120)
        && hour.StationPressurePa is null or (>= 50_000 and <= 110_000)
        && hour.ShortwaveWPerM2 is null or (>= 0 and <= 1_500);
}
