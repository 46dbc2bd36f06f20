using System.Text.Json;
using WitherAdvisor.Api.Advice;
using WitherAdvisor.Api.Batches;
using WitherAdvisor.Api.Feeds;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Api.Sites;
using WitherAdvisor.Api.Troughs;
using WitherAdvisor.Leaf;
using WitherAdvisor.Sensitivities;
using WitherAdvisor.Store;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Leaf;

namespace WitherAdvisor.Api.Pages.Advice;

/// <summary>Finds the newest advice of a batch and what belongs beside it.</summary>
internal sealed class AdviceViewing(IBatchStore batches, FeedStates feeds)
{
    /// <summary>Null where the batch has no advice.</summary>
    public async Task<AdviceView?> Of(StoredBatch batch, PageContext page, CancellationToken cancel)
    {
        if ((await batches.ListAdvice(batch.Id, cancel)) is not [{ } newest, ..])
        {
            return null;
        }

        // Site and trough as they were when it was advised: a setting changed since is not what it rests on.
        AdviceInput input = JsonSerializer.Deserialize<AdviceInput>(newest.RequestJson, JsonRules.Input)!;
        StoredTrough trough = TroughMapping.ToStored(batch.SiteId, batch.TroughId, input.Trough);
        return new(
            SiteMapping.ToStored(batch.SiteId, input.Site), trough, batch,
            AdviceRecipe.Outcome(newest.RequestJson), newest.MadeAt, await Warnings(batch, trough, page.Now, cancel), page)
        {
            Sensitivity = SensitivityAnalysis.Of(AdviceRecipe.Request(newest.RequestJson)),
            OthersRunning = batch.IsRunning ? await OthersRunning(batch, page.Words, cancel) : [],
            AsGiven = AdviceRecipe.Make(newest.RequestJson) == newest.AnswerJson,
            Feed = (await feeds.Of(batch.SiteId, cancel))?.Text,
        };
    }

    private async Task<IReadOnlyList<Choice>> OthersRunning(StoredBatch batch, Wordbook words, CancellationToken cancel) =>
    [
        .. (await batches.List(batch.SiteId, IBatchStore.MostListed, cancel))
            .Where(other => other.IsRunning && other.Id != batch.Id)
            .Select(other => new Choice(other.Id, LeafWording.Label(words, other.Batch.Label), words.Say("trough.named", ("trough", other.TroughId)))),
    ];

    private async Task<IReadOnlyList<string>> Warnings(
        StoredBatch batch, StoredTrough trough, DateTimeOffset now, CancellationToken cancel)
    {
        if (!batch.IsRunning)
        {
            return [];
        }

        DateTimeOffset at = now > batch.Batch.LoadedAt ? now : batch.Batch.LoadedAt;
        IReadOnlyList<StoredBatch> lying = await batches.OnTrough(batch.SiteId, batch.TroughId, at, cancel);
        return [.. LotKeeping.Warnings(batch, [.. lying.Where(other => other.Id != batch.Id)], trough).Select(warning => warning.Text)];
    }
}
