namespace WitherAdvisor.Loft.Records;

/// <summary>Why a kept advice cannot be opened.</summary>
public enum RecordFault
{
    /// <summary>A later release wrote it.</summary>
    UnknownFormat,

    /// <summary>What it was made of cannot be read.</summary>
    DamagedInputs,

    /// <summary>What was advised cannot be read.</summary>
    DamagedAnswer,
}
