using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.Recalibration.Report;

/// <summary>What was learned of leaf of one cultivar and standard.</summary>
/// <param name="Cultivar">Null where nobody said.</param>
/// <param name="Standard">Null where nobody said.</param>
/// <param name="Outcomes">How many were of it.</param>
/// <param name="Set">Coefficients for it.</param>
/// <param name="CuticularConductanceRatio">Its g_0 over that of the site's proposed set.</param>
/// <param name="CuticularRatioLow90">Lower end of its 90 % interval.</param>
/// <param name="CuticularRatioHigh90">Upper end.</param>
/// <param name="MoistureShiftWetBasis">Its moisture at loading less that by the site's proposed set, wet basis.</param>
/// <param name="MoistureShiftLow90">Lower end of its 90 % interval.</param>
/// <param name="MoistureShiftHigh90">Upper end.</param>
public sealed record GroupCalibration(
    string? Cultivar,
    LeafStandard? Standard,
    int Outcomes,
    WitherCoefficients Set,
    double CuticularConductanceRatio,
    double CuticularRatioLow90,
    double CuticularRatioHigh90,
    double MoistureShiftWetBasis,
    double MoistureShiftLow90,
    double MoistureShiftHigh90);
