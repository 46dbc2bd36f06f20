using WitherAdvisor.Air;
using WitherAdvisor.Bed;

namespace WitherAdvisor.Ambient;

/// <summary>Plenum air by the hour that holds one setting all night.</summary>
internal sealed class PlenumSchedule
{
    /// <summary>Air this little above the ambient, K, is nobody's setting.</summary>
    private const double UnheatedK = 0.05;

    private readonly InletAir[] hours;
    private readonly AmbientForecast night;

    private PlenumSchedule(AmbientForecast night, InletAir[] hours) => (this.night, this.hours, ByHour) = (night, hours, new(hours));

    private PlenumSchedule(AmbientForecast night, Func<AirState, AirState> plenum)
        : this(night, [.. night.Hours.Select(ambient => new InletAir(plenum(ambient).DryBulbC, ambient.HumidityRatio))])
    {
    }

    /// <summary>The least heat that holds a hygrometric difference (K) without passing a dry bulb (°C).</summary>
    public static PlenumSchedule ForDifference(AmbientForecast night, double wantedK, double ceilingC) =>
        new(night, ambient => PlenumForDifference(ambient, wantedK, ceilingC));

    /// <summary>
    /// The same air missed by some K of dry bulb: in hours with heat by as much as people miss what they hold, in hours
    /// without by as much as the night is not the one forecast.
    /// </summary>
    public PlenumSchedule MissedBy(double heatedK, double ambientK) => new(
        night,
        [.. hours.Select((air, hour) => air with
        {
            DryBulbC = air.DryBulbC + (air.DryBulbC > night.Hours[hour].DryBulbC + UnheatedK ? heatedK : ambientK),
        })]);

    /// <summary>A dry bulb (°C) held, or the ambient air where that is warmer.</summary>
    public static PlenumSchedule ForDryBulb(AmbientForecast night, double dryBulbC) =>
        new(night, ambient => ambient with { DryBulbC = Math.Max(dryBulbC, ambient.DryBulbC) });

    /// <summary>Ambient air as it is.</summary>
    public static PlenumSchedule Ambient(AmbientForecast night) => new(night, ambient => ambient);

    /// <summary>Plenum air for one ambient state: see <see cref="ForDifference"/>.</summary>
    public static AirState PlenumForDifference(AirState ambient, double wantedK, double ceilingC)
    {
        AirState plenum = HotAirMix.PlenumForHygrometricDifference(ambient, wantedK);
        return plenum.DryBulbC > ceilingC
            ? ambient with { DryBulbC = Math.Max(ceilingC, ambient.DryBulbC) }
            : plenum;
    }

    public AirByHour ByHour { get; }

    /// <summary>Air under the mesh at an hour from loading.</summary>
    public InletAir At(double hour) => ByHour.At(hour);
}
