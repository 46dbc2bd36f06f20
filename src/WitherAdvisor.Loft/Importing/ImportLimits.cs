namespace WitherAdvisor.Loft.Importing;

/// <summary>How much of an import is told.</summary>
public static class ImportLimits
{
    /// <summary>Lines of a file that are shown one by one.</summary>
    public const int MostShown = 1000;
}
