using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Loft.Intake;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Pages.Batches;

/// <summary>The times of a batch as typed; null where one is missing or was refused already.</summary>
public sealed record BatchTimes(
    DateTimeOffset? PluckedFrom, DateTimeOffset? PluckedTo, DateTimeOffset? LoadedAt, DateTimeOffset? ReadyBy)
{
    /// <summary>Refuses what is out of order.</summary>
    public void Check(FormReader form, WallClock clock)
    {
        foreach (BatchFault fault in BatchRules.Times(PluckedFrom, PluckedTo, LoadedAt, ReadyBy))
        {
            Refuse(fault, form, clock);
        }
    }

    private static void Refuse(BatchFault fault, FormReader form, WallClock clock)
    {
        switch (fault)
        {
            case BatchFault.PluckingEndsBeforeItBegins plucking:
                Refuse(BatchForm.PluckedTo, "batch.plucked_to", "batch.plucked_to.before_from", plucking.To, plucking.From);
                break;
            case BatchFault.LoadedBeforePlucked loaded:
                Refuse(BatchForm.LoadedAt, "batch.loaded_at", "batch.loaded_at.before_plucked", loaded.LoadedAt, loaded.PluckedTo);
                break;
            case BatchFault.PluckedTooLongAgo plucked:
                Refuse(
                    BatchForm.PluckedFrom, "batch.plucked_from", "batch.plucked_from.too_early", plucked.PluckedFrom, plucked.LoadedAt,
                    plucked.MostHours);
                break;
            case BatchFault.WantedAtAnImpossibleTime wanted:
                Refuse(
                    BatchForm.ReadyBy, "batch.ready_by", "batch.ready_by.out_of_range", wanted.ReadyBy, wanted.LoadedAt, wanted.MostHours);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(fault), fault, "No field for this fault.");
        }

        void Refuse(string field, string label, string why, DateTimeOffset given, DateTimeOffset other, double hours = 0) => form.Refuse(
            field, form.Words[label],
            form.Words.Say(why, ("given", clock.DateAndClock(given)), ("other", clock.DateAndClock(other)), ("hours", hours)));
    }
}
