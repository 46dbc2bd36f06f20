namespace WitherAdvisor.Recalibration.Fitting;

/// <summary>What a number found of a wither is.</summary>
internal enum ObservationKind
{
    /// <summary>A sample's share of its starting weight.</summary>
    SampleShare,

    /// <summary>Logarithm of withered over green weight.</summary>
    Outturn,

    /// <summary>Moisture at unloading, wet basis.</summary>
    FinalMoisture,

    /// <summary>Moisture on top less that at the mesh, at unloading.</summary>
    TopOverBottom,

    /// <summary>Surface water at loading, kg/kg.</summary>
    LoadingSurface,

    /// <summary>Moisture of the leaf itself at loading, wet basis.</summary>
    LoadingMoisture,
}
