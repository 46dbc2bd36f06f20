namespace WitherAdvisor.Api.Weather;

/// <summary>What is kept where some rows of a CSV body do not fit.</summary>
public enum KeptRows
{
    /// <summary>Nothing: all rows have to be good.</summary>
    AllOrNone,

    /// <summary>The good ones, in one piece; the answer lists the others.</summary>
    GoodRows,
}
