namespace WitherAdvisor.InventedEstate;

/// <summary>Rain within a day.</summary>
/// <param name="FromHour">Hour of the day at which it begins.</param>
/// <param name="Hours">How long it lasts; it may run past midnight no further than the day's end.</param>
/// <param name="MmPerHour">Mean intensity.</param>
public sealed record Shower(int FromHour, int Hours, double MmPerHour)
{
    /// <summary>Whether it rained in the hour that ends at an hour of the day (1 to 24).</summary>
    public bool FallsInHourBefore(int hour) => hour > FromHour && hour <= FromHour + Hours;
}
