using WitherAdvisor.Api.Feeds;
using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Api.Sites;
using WitherAdvisor.Api.Troughs;
using WitherAdvisor.Leaf;
using WitherAdvisor.Loft.Advising;
using WitherAdvisor.Loft.Intake;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Records;
using WitherAdvisor.Loft.Records.Opening;
using WitherAdvisor.Sensitivities;
using WitherAdvisor.Store;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Leaf;

namespace WitherAdvisor.Api.Pages.Advice;

/// <summary>Finds the newest advice of a batch and what belongs beside it.</summary>
internal sealed class AdviceViewing(IBatchStore batches, FeedStates feeds)
{
    /// <summary>The newest advice of a batch, opened; null where it has none.</summary>
    public async Task<OpenedRecord?> Newest(StoredBatch batch, CancellationToken cancel) =>
        (await batches.ListAdvice(batch.Id, cancel)) is [{ } newest, ..] ? AdviceRecords.Open(newest) : null;

    public async Task<AdviceView> Of(StoredBatch batch, AdviceRecord record, PageContext page, CancellationToken cancel)
    {
        // Site and trough as they were when it was advised: a setting changed since is not what it rests on.
        AdviceInputs inputs = record.Inputs;
        StoredTrough trough = new(batch.SiteId, batch.TroughId, inputs.TroughName, inputs.Request.Trough);
        return new(
            new(batch.SiteId, inputs.SiteName, inputs.TimeZone, inputs.Request.Site), trough, batch,
            record.Outcome, record.MadeAt, await Warnings(batch, trough, page, cancel), page)
        {
            ModelVersion = record.ModelVersion,
            Sensitivity = record.ModelVersion == ModelVersion.Current ? SensitivityAnalysis.Of(inputs.Request) : null,
            OthersRunning = batch.IsRunning ? await OthersRunning(batch, page.Words, cancel) : [],
            Feed = await feeds.Told(batch.SiteId, page.Words, cancel),
        };
    }

    private async Task<IReadOnlyList<Choice>> OthersRunning(StoredBatch batch, Wordbook words, CancellationToken cancel) =>
    [
        .. (await batches.List(batch.SiteId, IBatchStore.MostListed, cancel))
            .Where(other => other.IsRunning && other.Id != batch.Id)
            .Select(other => new Choice(other.Id, LeafWording.Label(words, other.Batch.Label), words.Say("trough.named", ("trough", other.TroughId)))),
    ];

    private async Task<IReadOnlyList<string>> Warnings(
        StoredBatch batch, StoredTrough trough, PageContext page, CancellationToken cancel)
    {
        if (!batch.IsRunning)
        {
            return [];
        }

        DateTimeOffset at = page.Now > batch.Batch.LoadedAt ? page.Now : batch.Batch.LoadedAt;
        IReadOnlyList<StoredBatch> lying = await batches.OnTrough(batch.SiteId, batch.TroughId, at, cancel);
        return
        [
            .. LotKeeping.Warnings(batch, [.. lying.Where(other => other.Id != batch.Id)], trough)
                .Select(warning => LotWarningWording.Sentence(page.Words, warning)),
        ];
    }
}
