using WitherAdvisor.Air;

namespace WitherAdvisor.Ambient;

/// <summary>Ambient air by the hour from loading on, for as long as a wither may last.</summary>
internal sealed class AmbientForecast
{
    private readonly AirState[] hours;

    public AmbientForecast(AirState[] hours)
    {
        this.hours = hours;
        HygrometricDifferencesK = Array.ConvertAll(hours, air => air.HygrometricDifferenceK);
    }

    /// <summary>The last hour that is known.</summary>
    public int LastHour => hours.Length - 1;

    public double PressurePa => hours[0].PressurePa;

    public IReadOnlyList<AirState> Hours => hours;

    public double[] HygrometricDifferencesK { get; }

    /// <summary>Air at an hour from loading; dry bulb and humidity ratio run evenly between whole hours.</summary>
    public AirState At(double hour)
    {
        double place = Math.Clamp(hour, 0, LastHour);
        int i = Math.Min((int)place, Math.Max(LastHour - 1, 0));
        int next = Math.Min(i + 1, LastHour);
        double share = place - i;
        return hours[i] with
        {
            DryBulbC = hours[i].DryBulbC + share * (hours[next].DryBulbC - hours[i].DryBulbC),
            HumidityRatio = hours[i].HumidityRatio + share * (hours[next].HumidityRatio - hours[i].HumidityRatio),
        };
    }

    /// <summary>The same night seen by a batch loaded some whole hours later.</summary>
    public AmbientForecast From(int hour) => new(hours[Math.Min(hour, LastHour)..]);

    /// <summary>The air of one hour from loading held all night.</summary>
    public AmbientForecast HeldSteadyFrom(double hour) => new(Array.ConvertAll(hours, _ => At(hour)));

    /// <summary>The same dry bulb and relative humidity at another pressure (Pa).</summary>
    public AmbientForecast AtPressure(double pressurePa) => new(Array.ConvertAll(
        hours,
        air => AirState.FromRelativeHumidity(air.DryBulbC, air.RelativeHumidity, pressurePa, air.Formulation)));
}
