using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Pages.Closing;

/// <summary>The small forms that end a batch: names of their fields and what they start with.</summary>
public static class ClosingForm
{
    public const string UnloadedAt = "unloaded_at";
    public const string CancelledAt = "cancelled_at";
    public const string CancelReason = "cancel_reason";
    public const string MixedAt = "mixed_at";
    public const string MixedInto = "mixed_into";
    public const string MixReason = "mix_reason";

    public const int LongestReason = 400;

    /// <summary>All of them at once: now.</summary>
    public static FilledForm Fresh(WallClock clock, DateTimeOffset now)
    {
        Dictionary<string, string> typed = new(StringComparer.Ordinal);
        foreach (string field in new[] { UnloadedAt, CancelledAt, MixedAt })
        {
            typed[TimeFields.Date(field)] = clock.DateField(now);
            typed[TimeFields.Time(field)] = clock.Clock(now);
        }

        return new(typed, []);
    }
}
