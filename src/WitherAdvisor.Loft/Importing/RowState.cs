namespace WitherAdvisor.Loft.Importing;

/// <summary>What a row of an imported log comes to.</summary>
public enum RowState
{
    /// <summary>A batch that was not known, with its outcome.</summary>
    New,

    /// <summary>An outcome for a batch that was known without one.</summary>
    OutcomeAdded,

    /// <summary>Everything in it is kept already.</summary>
    AlreadyThere,

    /// <summary>It can be but seldom is, and nobody has confirmed it.</summary>
    Odd,

    /// <summary>It does not fit.</summary>
    Wrong,
}
