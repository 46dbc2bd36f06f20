using WireMock;
using WireMock.RequestBuilders;
using WireMock.ResponseBuilders;
using WireMock.Server;
using WireMock.Settings;

namespace WitherAdvisor.WeatherFeeds.Testing;

/// <summary>A real HTTP server on the loopback that gives the answers it was told, one after the other, the last for ever.</summary>
public sealed class FeedServer : IDisposable
{
    private const string Scenario = "answers";

    private readonly WireMockServer server = WireMockServer.Start(new WireMockServerSettings { StartTimeout = Patience.Milliseconds });

    public FeedServer(params IResponseBuilder[] answers)
    {
        for (int place = 0; place < answers.Length; place++)
        {
            var answer = server.Given(Request.Create().UsingGet());
            if (answers.Length > 1)
            {
                answer = answer.InScenario(Scenario);
                answer = place > 0 ? answer.WhenStateIs($"{place}") : answer;
                // A scenario that ends begins anew, so the last answer leads to itself.
                answer = answer.WillSetStateTo($"{Math.Min(place + 1, answers.Length - 1)}");
            }

            answer.RespondWith(answers[place]);
        }
    }

    public string Url => server.Url!;

    public IReadOnlyList<IRequestMessage> Requests => [.. server.LogEntries.Select(entry => entry.RequestMessage!)];

    public static IResponseBuilder Json(string body, int status = 200) => Response.Create()
        .WithStatusCode(status)
        .WithHeader("Content-Type", "application/json; charset=utf-8")
        .WithBody(body);

    public static IResponseBuilder Status(int status) => Response.Create().WithStatusCode(status);

    public static IResponseBuilder Good() => Json(FeedFixture.Text("three-days.json"));

    public void Dispose() => server.Dispose();
}
