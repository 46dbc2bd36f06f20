using System.Globalization;
using System.Net;
using System.Text.Json.Nodes;
using Microsoft.Data.Sqlite;
using WitherAdvisor.Api.Tests.Testing;

namespace WitherAdvisor.Api.Tests.Advice;

/// <summary>Whatever is kept is what is shown; only a replay computes, and says that it differs.</summary>
public sealed class AlteredRecordTests(RunningService service)
{
    private const double AlteredStopHours = 5.25;
    private const double AlteredPlenumC = 33.3;

    [Fact]
    public async Task What_was_altered_by_hand_is_what_page_home_and_interface_show_and_replay_says_so()
    {
        (TestLoft loft, string batch, string advice) = await Advised();
        Alter(advice, "AnswerJson", answer =>
        {
            answer["plan"]!["ready"]!["stop_hours"] = AlteredStopHours;
            answer["plan"]!["settings"]![0]!["plenum_dry_bulb_c"] = AlteredPlenumC;
        });

        JsonNode shown = (await loft.Caller.Get($"/v1/advice/{advice}")).Expect(200).Json;
        Assert.Equal(AlteredStopHours, (double)shown["plan"]!["ready"]!["stop_hours"]!);

        string page = await Page($"/batches/{batch}");
        Assert.Contains("33.3", page, StringComparison.Ordinal);
        Assert.Contains("5 h 15 min", Flat(page), StringComparison.Ordinal);
        // Loaded at 13:00 (the sample batch), so that it is ready at 18:15.
        Assert.Contains("18:15", await Page("/"), StringComparison.Ordinal);

        Reply replay = (await loft.Caller.Post($"/v1/advice/{advice}/replay")).Expect(200);
        Assert.NotEqual(AlteredStopHours, (double)replay.Json["plan"]!["ready"]!["stop_hours"]!);
        Assert.Equal("false", replay.Headers.GetValues("Replay-Identical").Single());
    }

    [Theory]
    [InlineData("AnswerJson")]
    [InlineData("RequestJson")]
    [InlineData("OutcomeJson")]
    public async Task A_damaged_record_is_a_problem_that_names_it_and_shows_no_other_advice(string column)
    {
        (TestLoft loft, string batch, string advice) = await Advised();
        Execute($"UPDATE Advice SET {column} = substr({column}, 1, 200) WHERE Id = $id", advice);

        JsonNode problem = (await loft.Caller.Get($"/v1/advice/{advice}/request")).Expect(422).Json;
        Assert.Equal("urn:witheradvisor:problem:unreadable-advice", (string?)problem["type"]);
        Assert.Contains(advice, (string)problem["detail"]!, StringComparison.Ordinal);
        (await loft.Caller.Post($"/v1/advice/{advice}/replay")).Expect(422);

        using HttpClient client = service.CreateClient();
        using HttpResponseMessage page = await client.GetAsync(new Uri($"/batches/{batch}", UriKind.Relative), TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, page.StatusCode);
        Assert.Contains(advice, await page.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        // The first page still lists the batch.
        Assert.Contains(batch, await Page("/"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_record_of_a_later_release_says_so()
    {
        (TestLoft loft, _, string advice) = await Advised();
        Execute("UPDATE Advice SET Format = 99 WHERE Id = $id", advice);

        JsonNode problem = (await loft.Caller.Get($"/v1/advice/{advice}")).Expect(422).Json;

        Assert.Contains("format 99", (string)problem["detail"]!, StringComparison.Ordinal);
    }

    private async Task<(TestLoft Loft, string Batch, string Advice)> Advised()
    {
        TestLoft loft = await TestLoft.Open(service);
        await loft.Observe(Bodies.Readings(DateTimeOffset.Parse("2026-03-01T13:00:00+05:30", CultureInfo.InvariantCulture), 24 * 8));
        JsonNode taken = await loft.Take();
        return (loft, (string)taken["batch"]!["id"]!, (string)taken["kept"]!["id"]!);
    }

    private async Task<string> Page(string address)
    {
        using HttpClient client = service.CreateClient();
        return WebUtility.HtmlDecode(await client.GetStringAsync(new Uri(address, UriKind.Relative), TestContext.Current.CancellationToken));
    }

    private static string Flat(string html) => string.Join(
        ' ', System.Text.RegularExpressions.Regex.Replace(html, "<[^>]+>", " ").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private void Alter(string advice, string column, Action<JsonNode> alter)
    {
        using SqliteConnection connection = Open();
        using SqliteCommand read = connection.CreateCommand();
        read.CommandText = $"SELECT {column} FROM Advice WHERE Id = $id";
        read.Parameters.AddWithValue("$id", advice);
        JsonNode json = JsonNode.Parse((string)read.ExecuteScalar()!)!;
        alter(json);
        using SqliteCommand write = connection.CreateCommand();
        write.CommandText = $"UPDATE Advice SET {column} = $json WHERE Id = $id";
        write.Parameters.AddWithValue("$json", json.ToJsonString());
        write.Parameters.AddWithValue("$id", advice);
        Assert.Equal(1, write.ExecuteNonQuery());
    }

    private void Execute(string sql, string advice)
    {
        using SqliteConnection connection = Open();
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = sql;
        command.Parameters.AddWithValue("$id", advice);
        Assert.Equal(1, command.ExecuteNonQuery());
    }

    private SqliteConnection Open()
    {
        SqliteConnection connection = new($"Data Source={service.Database};Pooling=False;Default Timeout=60");
        connection.Open();
        return connection;
    }
}
