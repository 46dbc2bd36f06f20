using WitherAdvisor.Bed;
using WitherAdvisor.Leaf;
using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Spells;

namespace WitherAdvisor.Recalibration;

/// <summary>A wither that has been: what went in, the air it saw, and what was found. Null is unknown.</summary>
/// <param name="Id">Tells it from every other.</param>
/// <param name="LoadedAt">Hour 0.</param>
/// <param name="Spell">The spell at plucking.</param>
/// <param name="Cultivar">Null where nobody said.</param>
/// <param name="Standard">Null where nobody said.</param>
/// <param name="Features">What the weather says of the leaf, before any coefficient that is learned.</param>
/// <param name="AtLoading">What was measured or felt of the leaf then.</param>
/// <param name="GreenWeightKg">As it came in, with its surface water, kg.</param>
/// <param name="AreaM2">Area of the trough's mesh, m².</param>
/// <param name="AirflowM3PerSM2">As the trough is said to blow at the fan's setting, m³/s·m².</param>
/// <param name="PressurePa">Of the air, Pa.</param>
/// <param name="AirByHour">Under the mesh at each whole hour from loading; between them it runs evenly, past the last it is held.</param>
/// <param name="AirIsMeasured">Whether that air was read under the mesh; false where it is the air as set or forecast.</param>
/// <param name="TurnHours">Hours from loading at which the leaf was turned.</param>
/// <param name="HoursOnTrough">From loading to unloading.</param>
/// <param name="Found">What was weighed and dried on the way and at the end.</param>
public sealed record ObservedWither(
    string Id,
    DateTimeOffset LoadedAt,
    SpellKind Spell,
    string? Cultivar,
    LeafStandard? Standard,
    LeafFeatures Features,
    LoadingReadings AtLoading,
    double GreenWeightKg,
    double AreaM2,
    double AirflowM3PerSM2,
    double PressurePa,
    IReadOnlyList<InletAir> AirByHour,
    bool AirIsMeasured,
    IReadOnlyList<double> TurnHours,
    double HoursOnTrough,
    WitherFindings Found);
