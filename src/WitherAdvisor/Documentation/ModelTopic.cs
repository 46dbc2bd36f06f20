namespace WitherAdvisor.Documentation;

/// <summary>Parts of the model, in the order in which a number travels.</summary>
public enum ModelTopic
{
    /// <summary>Moist air.</summary>
    Air,

    /// <summary>What the weather did to the leaf.</summary>
    Weather,

    /// <summary>What kind of weather the leaf grew in.</summary>
    Spell,

    /// <summary>The leaf and the bed it lies in.</summary>
    Bed,

    /// <summary>What a plan may do and what it is chosen by.</summary>
    Plan,

    /// <summary>How sure it is.</summary>
    Uncertainty,
}
