namespace WitherAdvisor.Spells;

/// <summary>The weather the leaf grew in.</summary>
public enum SpellKind
{
    Ordinary,

    /// <summary>Rain of the last days stands on the leaf.</summary>
    Wet,

    /// <summary>Drought with strong dry wind: the quality season, to be withered gently.</summary>
    DryWindy,
}
