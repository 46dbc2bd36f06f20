namespace WitherAdvisor.LogFiles.Columns;

/// <summary>What a column of the log tells of.</summary>
internal enum LogPart
{
    /// <summary>What went in.</summary>
    Batch,

    /// <summary>What came of it.</summary>
    Outcome,

    /// <summary>What was advised, and the weather it rests on.</summary>
    Advice,
}
