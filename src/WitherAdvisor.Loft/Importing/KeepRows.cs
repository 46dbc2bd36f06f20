namespace WitherAdvisor.Loft.Importing;

/// <summary>What is kept of a file with rows that do not fit.</summary>
public enum KeepRows
{
    /// <summary>Nothing.</summary>
    AllOrNone,

    /// <summary>The rows that fit.</summary>
    GoodRows,
}
