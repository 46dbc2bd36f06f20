namespace WitherAdvisor.Fields;

/// <summary>Hectopascals outside, as barometers and feeds give them; pascals inside.</summary>
internal static class Pressure
{
    public const double PascalPerHectopascal = 100;
}
