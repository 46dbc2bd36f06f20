namespace WitherAdvisor.LogFiles.Columns;

/// <summary>What a column of the log means; with its type, name and range this is all there is to say of it.</summary>
[AttributeUsage(AttributeTargets.Property)]
internal sealed class MeaningAttribute(LogPart part, string text) : Attribute
{
    public LogPart Part { get; } = part;

    public string Text { get; } = text;

    /// <summary>Whether it follows from other columns: written, and when read only held against them.</summary>
    public bool Follows { get; init; }

    /// <summary>Whether it is a list of numbers with semicolons between them.</summary>
    public bool Numbers { get; init; }
}
