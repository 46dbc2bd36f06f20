using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Pages.Batches;

/// <summary>The times of a batch as typed; null where one is missing or was refused already.</summary>
public sealed record BatchTimes(
    DateTimeOffset? PluckedFrom, DateTimeOffset? PluckedTo, DateTimeOffset? LoadedAt, DateTimeOffset? ReadyBy)
{
    private const int MostHoursBeforeLoading = 30;
    private const int MostHoursToReady = 48;

    /// <summary>Refuses what is out of order, by the rules that the interface has too.</summary>
    public void Check(FormReader form, WallClock clock)
    {
        if (PluckedFrom is { } began && PluckedTo is { } ended && ended < began)
        {
            Refuse(BatchForm.PluckedTo, "batch.plucked_to", "batch.plucked_to.before_from", ended, began);
        }

        if (PluckedTo is { } last && LoadedAt is { } loaded && loaded < last)
        {
            Refuse(BatchForm.LoadedAt, "batch.loaded_at", "batch.loaded_at.before_plucked", loaded, last);
        }

        if (PluckedFrom is { } first && LoadedAt is { } onTrough && onTrough - first > TimeSpan.FromHours(MostHoursBeforeLoading))
        {
            Refuse(BatchForm.PluckedFrom, "batch.plucked_from", "batch.plucked_from.too_early", first, onTrough, MostHoursBeforeLoading);
        }

        if (LoadedAt is { } start && ReadyBy is { } ready && (ready <= start || ready - start > TimeSpan.FromHours(MostHoursToReady)))
        {
            Refuse(BatchForm.ReadyBy, "batch.ready_by", "batch.ready_by.out_of_range", ready, start, MostHoursToReady);
        }

        void Refuse(string field, string label, string why, DateTimeOffset given, DateTimeOffset other, int hours = 0) => form.Refuse(
            field, form.Words[label],
            form.Words.Say(why, ("given", clock.DateAndClock(given)), ("other", clock.DateAndClock(other)), ("hours", hours)));
    }
}
