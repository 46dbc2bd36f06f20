namespace WitherAdvisor.Loft;

/// <summary>The clock as the store keeps it, so that a time reads back as it was first answered.</summary>
public static class WholeMilliseconds
{
    public static DateTimeOffset NowInMilliseconds(this TimeProvider clock) => clock.GetUtcNow().InMilliseconds();

    public static DateTimeOffset InMilliseconds(this DateTimeOffset time) =>
        DateTimeOffset.FromUnixTimeMilliseconds(time.ToUnixTimeMilliseconds());
}
