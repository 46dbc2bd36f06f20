using System.Text.Json;
using Xunit;

namespace WitherAdvisor.Tests.Pins;

/// <summary>
/// Regression pins, the only expected values here that came from our own code: what it answered on the day that they were
/// written, whole. They say that nothing changed unnoticed, never that it was right: that is what the other tests are for.
/// Written anew with UPDATE_PINS=1, for a reason that belongs under the decisions.
/// </summary>
public sealed class RegressionPinTests
{
    private static readonly JsonSerializerOptions Written = new()
    {
        NumberHandling = System.Text.Json.Serialization.JsonNumberHandling.AllowNamedFloatingPointLiterals,
        Converters = { new AssumptionJson() },
    };

    public static TheoryData<string> Names => [.. PinnedAnswers.All.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_answer_is_what_it_was(string name)
    {
        object answer = PinnedAnswers.All[name]();
        string json = JsonSerializer.Serialize(answer, answer.GetType(), Written) + "\n";
        if (Environment.GetEnvironmentVariable("UPDATE_PINS") == "1")
        {
            File.WriteAllText(RepositoryFiles.InRoot("fixtures", "regression-pins", name + ".json"), json);
        }

        string pinned = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "fixtures", "regression-pins", name + ".json"));
        Assert.Null(JsonDifference.First(JsonDocument.Parse(pinned).RootElement, JsonDocument.Parse(json).RootElement));
    }
}
