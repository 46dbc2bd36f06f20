namespace WitherAdvisor.Loft.Importing;

/// <summary>What becomes of rows that look odd and do not say themselves that they are so.</summary>
public enum OddRows
{
    /// <summary>They do not fit, and the answer says why.</summary>
    Ask,

    /// <summary>They are taken as confirmed.</summary>
    Confirm,
}
