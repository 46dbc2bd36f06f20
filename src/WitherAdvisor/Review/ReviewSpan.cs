namespace WitherAdvisor.Review;

/// <summary>Which stretch to review.</summary>
/// <param name="Now">The moment it is reviewed at.</param>
/// <param name="DayEnd">Any moment at which a day ends at the site. Days are 24 h from it, on whole hours of UTC.</param>
/// <param name="Days">Whole days before the day of <paramref name="Now"/>.</param>
/// <param name="AheadH">Hours ahead.</param>
public sealed record ReviewSpan(DateTimeOffset Now, DateTimeOffset DayEnd, int Days = ReviewSpan.UsualDays, int AheadH = ReviewSpan.UsualAheadH)
{
    public const int UsualDays = 14;

    /// <summary>The coming night, and the morning that leaf is rolled in.</summary>
    public const int UsualAheadH = 18;

    /// <summary>End of the hours.</summary>
    public DateTimeOffset To => Now.AddHours(AheadH);

    /// <summary>The first day's start.</summary>
    public DateTimeOffset From => DayEnd.AddDays(Math.Ceiling((Now - DayEnd).TotalDays) - 1 - Days);

    /// <summary>The end of the day that holds <see cref="To"/>.</summary>
    public DateTimeOffset LastDayEnd => DayEnd.AddDays(Math.Ceiling((To - DayEnd).TotalDays));

    /// <summary>How many days lie between.</summary>
    public int DaysInAll => (int)Math.Round((LastDayEnd - From).TotalDays);
}
