using System.Text.Json.Nodes;
using Microsoft.Extensions.DependencyInjection;
using WitherAdvisor.Api.Tests.Pages;
using WitherAdvisor.Api.Tests.Testing;
using WitherAdvisor.Words;

namespace WitherAdvisor.Api.Tests.Wording;

/// <summary>The service with the invented estate, seen by a browser that wants the made-up language.</summary>
internal sealed class MadeUpLanguageHost : IDisposable
{
    public const string Site = "/sites/invented-hill";

    /// <summary>While the wet batch of the estate is on its trough.</summary>
    private static readonly DateTimeOffset Night = new(2026, 6, 19, 15, 0, 0, TimeSpan.Zero);

    /// <summary>Properties of answers that hold what people named or wrote.</summary>
    private static readonly string[] Data =
        ["adopted", "cultivar", "division", "entered_by", "faults", "feed", "field", "id", "name", "note", "reason", "set", "site", "time_zone", "trough", "weather"];

    public PageHost Host { get; } = new(services => services.AddSingleton(new Wordbooks([Wordbook.English, MadeUpLanguage.Book])));

    public Caller Caller => new(Host.Browser);

    public async Task<MadeUpLanguageHost> WithEstate()
    {
        Host.Clock.AdjustTime(Night);
        await using AsyncServiceScope scope = Host.Services.CreateAsyncScope();
        Assert.Equal(3, (await scope.ServiceProvider.GetRequiredService<WitherAdvisor.Api.Demo.InventedEstate>().LoadIntoNewDatabase(TestContext.Current.CancellationToken)).Count);
        Host.Browser.DefaultRequestHeaders.AcceptLanguage.ParseAdd(MadeUpLanguage.Tag);
        return this;
    }

    /// <summary>Ids of the batches of a site, newest first.</summary>
    public async Task<string[]> Batches(string site = Site) =>
        [.. (await Caller.Get($"/v1{site}/batches")).Expect(200).Json.AsArray().Select(batch => (string)batch!["id"]!)];

    /// <summary>Words of what stands in these answers because people named or wrote it.</summary>
    public async Task<IReadOnlySet<string>> Named(params string[] addresses)
    {
        HashSet<string> words = new(StringComparer.Ordinal);
        foreach (string address in addresses)
        {
            Gather((await Caller.Get(address)).Expect(200).Json, false, words);
        }

        return words;
    }

    public void Dispose() => Host.Dispose();

    private static void Gather(JsonNode? node, bool isData, HashSet<string> words)
    {
        switch (node)
        {
            case JsonObject members:
                foreach ((string name, JsonNode? member) in members)
                {
                    Gather(member, Data.Contains(name), words);
                }

                break;
            case JsonArray items:
                foreach (JsonNode? item in items)
                {
                    Gather(item, isData, words);
                }

                break;
            case JsonValue value when isData && value.TryGetValue(out string? text):
                words.UnionWith(VisibleWords.In(text));
                break;
        }
    }
}
