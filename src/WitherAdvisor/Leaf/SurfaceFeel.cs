namespace WitherAdvisor.Leaf;

/// <summary>Water on the leaf, judged by hand where nobody weighed it.</summary>
public enum SurfaceFeel
{
    /// <summary>A handful leaves the palm dry.</summary>
    Dry,

    /// <summary>Leaf sticks together, the palm is moist: dew or light rain.</summary>
    Damp,

    /// <summary>The palm is wet: rain.</summary>
    Wet,

    /// <summary>Water runs from a squeezed handful: heavy rain.</summary>
    Dripping,
}
