using System.Text;

namespace WitherAdvisor.Api.Tests.KeptBefore;

/// <summary>A database of a released version opens for ever, and every batch in it shows the numbers that it showed then.</summary>
public sealed class KeptBatchTests(KeptLofts lofts)
{
    /// <summary>Named by their folders, so that a red test says which.</summary>
    public static TheoryData<string, string> Batches => [.. All().Select(batch => (batch.Version, batch.Folder))];

    public static TheoryData<string, string> Advised => [.. All().Where(batch => batch.Advice.Count > 0).Select(batch => (batch.Version, batch.Folder))];

    [Theory]
    [MemberData(nameof(Advised))]
    public async Task Its_page_shows_the_same_numbers(string version, string folder)
    {
        KeptBatch batch = Find(version, folder);

        Assert.Empty(ShownNumbers.Differences(Then(batch, "page.html"), await lofts.Of(version).Text($"/batches/{batch.Id}")));
    }

    [Theory]
    [MemberData(nameof(Batches))]
    public async Task The_page_of_its_outcome_shows_the_same_numbers(string version, string folder)
    {
        KeptBatch batch = Find(version, folder);

        Assert.Empty(ShownNumbers.Differences(Then(batch, "outcome.html"), await lofts.Of(version).Text($"/batches/{batch.Id}/outcome")));
    }

    [Theory]
    [MemberData(nameof(Advised))]
    public async Task Its_advice_and_what_went_into_it_are_the_same_bytes(string version, string folder)
    {
        KeptBatch batch = Find(version, folder);
        foreach ((int place, string id) in batch.Advice.Index())
        {
            Assert.Equal(batch.Shown($"advice-{place}.json"), await lofts.Of(version).Bytes($"/v1/advice/{id}"));
            Assert.Equal(batch.Shown($"input-{place}.json"), await lofts.Of(version).Bytes($"/v1/advice/{id}/request"));
        }
    }

    [Theory]
    [MemberData(nameof(Batches))]
    public async Task The_list_of_its_advice_is_the_same(string version, string folder)
    {
        KeptBatch batch = Find(version, folder);

        Assert.Equal(
            Renamed.By(Renamed.Codes, Then(batch, "advice-list.json")), await lofts.Of(version).Text($"/v1/batches/{batch.Id}/advice"));
    }

    private static IEnumerable<KeptBatch> All() => KeptFile.Versions.SelectMany(KeptBatch.Of);

    private static KeptBatch Find(string version, string folder) => KeptBatch.Of(version).Single(batch => batch.Folder == folder);

    private static string Then(KeptBatch batch, string file) => Encoding.UTF8.GetString(batch.Shown(file));
}
