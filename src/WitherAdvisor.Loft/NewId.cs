namespace WitherAdvisor.Loft;

/// <summary>Ids that sort by the time they were made at.</summary>
public static class NewId
{
    public static string At(DateTimeOffset now) => Guid.CreateVersion7(now).ToString();
}
