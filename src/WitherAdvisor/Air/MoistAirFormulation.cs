namespace WitherAdvisor.Air;

/// <summary>How saturation of water vapour in air is taken.</summary>
public enum MoistAirFormulation
{
    /// <summary>
    /// Saturation pressure times the enhancement factor of Buck (1996), which lands on the handbook's
    /// table of saturated moist air. The default.
    /// </summary>
    RealGas,

    /// <summary>Saturation pressure as it is; to compare with ideal-gas reference libraries and the FAO papers.</summary>
    IdealGas,
}
