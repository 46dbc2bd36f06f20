namespace WitherAdvisor.Bed;

/// <summary>Air under the mesh by whole hours from loading; between them it runs evenly, past the last it is held.</summary>
/// <param name="hours">One state for each whole hour from 0; at least one.</param>
/// <param name="warmerK">Added to every dry bulb, K, at the same humidity ratio.</param>
public sealed class AirByHour(InletAir[] hours, double warmerK = 0)
{
    /// <summary>Air at an hour from loading.</summary>
    public InletAir At(double hour)
    {
        double place = Math.Clamp(hour, 0, hours.Length - 1);
        int i = Math.Min((int)place, Math.Max(hours.Length - 2, 0));
        InletAir air = InletAir.Between(hours[i], hours[Math.Min(i + 1, hours.Length - 1)], place - i);
        return warmerK == 0 ? air : air with { DryBulbC = air.DryBulbC + warmerK };
    }
}
