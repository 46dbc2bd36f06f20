using WitherAdvisor.Air;
using WitherAdvisor.Bed;

namespace WitherAdvisor.Ambient;

/// <summary>Plenum air by the hour that holds one setting all night.</summary>
internal sealed class PlenumSchedule
{
    /// <summary>Air this little above the ambient, K, is nobody's setting.</summary>
    private const double UnheatedK = 0.05;

    private readonly InletAir[] hours;
    private readonly AmbientForecast ambient;

    private PlenumSchedule(AmbientForecast ambient, InletAir[] hours) => (this.ambient, this.hours, ByHour) = (ambient, hours, new(hours));

    /// <summary>The least heat that holds a hygrometric difference (K) without passing a dry bulb (°C) that may change by the hour.</summary>
    public static PlenumSchedule ForDifference(
        AmbientForecast ambient, double wantedK, Func<int, AirState, double> ceilingC, double fanShare = 1, double runShare = 1) =>
        Of(ambient, (hour, air) => PlenumForDifference(air, wantedK, ceilingC(hour, air)), fanShare, runShare);

    /// <summary>
    /// The same air missed by some K of dry bulb: in hours with heat by as much as people miss what they hold, in hours
    /// without by as much as the night is not the one forecast.
    /// </summary>
    public PlenumSchedule MissedBy(double heatedK, double ambientK) => new(
        ambient,
        [.. hours.Select((air, hour) => air with
        {
            DryBulbC = air.DryBulbC + (air.DryBulbC > ambient.Hours[hour].DryBulbC + UnheatedK ? heatedK : ambientK),
        })]);

    /// <summary>A dry bulb (°C) held, or the ambient air where that is warmer.</summary>
    public static PlenumSchedule ForDryBulb(AmbientForecast ambient, double dryBulbC) =>
        Of(ambient, (_, air) => air with { DryBulbC = Math.Max(dryBulbC, air.DryBulbC) });

    /// <summary>Ambient air as it is.</summary>
    public static PlenumSchedule Ambient(AmbientForecast ambient) => Of(ambient, (_, air) => air);

    public AirByHour ByHour { get; }

    /// <summary>Air under the mesh at an hour from loading.</summary>
    public InletAir At(double hour) => ByHour.At(hour);

    /// <summary>Plenum air for one ambient state: see <see cref="ForDifference"/>.</summary>
    public static AirState PlenumForDifference(AirState ambient, double wantedK, double ceilingC)
    {
        AirState plenum = HotAirMix.PlenumForHygrometricDifference(ambient, wantedK);
        return plenum.DryBulbC > ceilingC
            ? ambient with { DryBulbC = Math.Max(ceilingC, ambient.DryBulbC) }
            : plenum;
    }

    private static PlenumSchedule Of(AmbientForecast ambient, Func<int, AirState, AirState> plenum, double fanShare = 1, double runShare = 1) =>
        new(ambient, [.. ambient.Hours.Select((air, hour) => new InletAir(plenum(hour, air).DryBulbC, air.HumidityRatio, fanShare, runShare))]);
}
