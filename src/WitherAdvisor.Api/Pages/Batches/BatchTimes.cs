using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Api.Wording;

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
            Refuse(BatchForm.PluckedTo, "Plucked to", ended, $"not before plucking began, {clock.DateAndClock(began)}");
        }

        if (PluckedTo is { } last && LoadedAt is { } loaded && loaded < last)
        {
            Refuse(BatchForm.LoadedAt, "Loaded at", loaded, $"not before plucking ended, {clock.DateAndClock(last)}");
        }

        if (PluckedFrom is { } first && LoadedAt is { } onTrough && onTrough - first > TimeSpan.FromHours(MostHoursBeforeLoading))
        {
            Refuse(BatchForm.PluckedFrom, "Plucked from", first, $"at most {MostHoursBeforeLoading} h before loading, {clock.DateAndClock(onTrough)}");
        }

        if (LoadedAt is { } start && ReadyBy is { } ready && (ready <= start || ready - start > TimeSpan.FromHours(MostHoursToReady)))
        {
            Refuse(BatchForm.ReadyBy, "Wanted ready by", ready, $"after loading, {clock.DateAndClock(start)}, by at most {MostHoursToReady} h");
        }

        void Refuse(string field, string label, DateTimeOffset given, string allowed) =>
            form.Refuse(field, label, $"{clock.DateAndClock(given)} was given; {allowed}.");
    }
}
