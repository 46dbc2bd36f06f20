namespace WitherAdvisor.Loft.Records;

/// <summary>A kept advice, opened, or why it cannot be.</summary>
public abstract record OpenedRecord
{
    private OpenedRecord()
    {
    }

    public sealed record Readable(AdviceRecord Record) : OpenedRecord;

    /// <summary>It is there and cannot be read. It is never shown as anything else.</summary>
    public sealed record Unreadable(string AdviceId, RecordFault Fault, int Format) : OpenedRecord;
}
