namespace WitherAdvisor.Air;

/// <summary>
/// Air from a dry and a wet bulb as people read them. A wet bulb on a wall is not the thermodynamic one: it is
/// warmed by the still air round it, so each kind of instrument has its own coefficient.
/// </summary>
/// <remarks>Allen, Pereira, Raes and Smith (1998), FAO Irrigation and Drainage Paper 56, eq. 15 and 16; over water only.</remarks>
public static class Psychrometer
{
    /// <summary>Coefficient a_psy, 1/K (eq. 16).</summary>
    /// <remarks>FAO-56 names no sling; taken as ventilated at 5 m/s, the speed of a bulb whirled briskly (from memory).</remarks>
    public static double CoefficientPerK(PsychrometerKind kind) => kind switch
    {
        PsychrometerKind.Aspirated or PsychrometerKind.Sling => 0.000662,
        PsychrometerKind.Screen => 0.000800,
        PsychrometerKind.Unventilated => 0.001200,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such psychrometer."),
    };

    /// <summary>Vapour pressure in Pa from the two bulbs in °C and the pressure in Pa (eq. 15); below 0 where no air has such a pair.</summary>
    public static double VapourPressurePa(
        double dryBulbC, double wetBulbC, double pressurePa, PsychrometerKind kind,
        MoistAirFormulation formulation = MoistAirFormulation.RealGas) =>
        Saturation.VapourPressurePa(wetBulbC, pressurePa, formulation)
        - CoefficientPerK(kind) * pressurePa * (dryBulbC - wetBulbC);

    /// <summary>The air that such a pair was read in; null where no air has such a pair.</summary>
    public static AirState? Air(
        double dryBulbC, double wetBulbC, double pressurePa, PsychrometerKind kind,
        MoistAirFormulation formulation = MoistAirFormulation.RealGas)
    {
        double vapourPressurePa = VapourPressurePa(dryBulbC, wetBulbC, pressurePa, kind, formulation);
        return wetBulbC > dryBulbC || vapourPressurePa <= 0
            ? null
            : new AirState(dryBulbC, MoistAir.HumidityRatio(vapourPressurePa, pressurePa), pressurePa, formulation);
    }
}
