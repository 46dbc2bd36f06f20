namespace WitherAdvisor.LogFiles.Writing;

/// <summary>What the log is written as.</summary>
public enum ExportFormat
{
    /// <summary>RFC 4180, UTF-8, units in the header.</summary>
    Csv,

    /// <summary>Apache Parquet.</summary>
    Parquet,
}
