using WitherAdvisor.Advice;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Readings;
using WitherAdvisor.Sites;
using Xunit;

namespace WitherAdvisor.Tests.Advice;

/// <summary>A batch invented for a test: a trough of 40 m² loaded at five in the afternoon with leaf of that day.</summary>
internal static class InventedBatch
{
    public const double AreaM2 = 40;
    public const double UsualLoadKgPerM2 = 28;

    public static readonly DateTimeOffset LoadedAt = new(2026, 6, 1, 17, 0, 0, TimeSpan.FromHours(5.5));

    private static readonly LeafLabel Label = new("Invented division", "Field 1", null, null, LeafStandard.Fine);

    /// <summary>Leaf plucked between eight and half past three; its state comes from the weather.</summary>
    public static AdviceRequest Under(InventedWeather weather, double elevationM = 1_500, int days = 70) => new(
        SiteAt(elevationM, WitherStyle.Short),
        new(AreaM2),
        new(Label, LoadedAt.AddHours(-9), LoadedAt.AddHours(-1.5), LoadedAt, UsualLoadKgPerM2 * AreaM2),
        weather.Before(LoadedAt, days), [], weather.After(LoadedAt, 36), new WitherCoefficients());

    /// <summary>Leaf plucked over two hours whose state was measured, in air that stays as it is.</summary>
    /// <param name="greenKgPerM2">With its surface water.</param>
    public static AdviceRequest Measured(
        double dryBulbC, double relativeHumidity, double moistureWetBasis, double surfaceKgPerKg,
        double greenKgPerM2 = UsualLoadKgPerM2, double elevationM = 1_500, WitherStyle? style = null) => new(
        SiteAt(elevationM, style ?? WitherStyle.Short),
        new(AreaM2),
        new(
            Label, LoadedAt.AddHours(-4), LoadedAt.AddHours(-2), LoadedAt, greenKgPerM2 * AreaM2,
            MeasuredSurfaceWaterKgPerKg: surfaceKgPerKg, MeasuredMoistureWetBasis: moistureWetBasis),
        Steady(-10 * 24, 0, dryBulbC, relativeHumidity), [], Steady(1, 36, dryBulbC, relativeHumidity), new WitherCoefficients());

    /// <summary>The same air every hour, from one hour after loading to another; a thermometer that did not move at all would be told as stuck.</summary>
    public static List<WeatherReading> Steady(int fromHour, int toHour, double dryBulbC, double relativeHumidity) =>
        [.. Enumerable.Range(fromHour, toHour - fromHour + 1).Select(hour => new WeatherReading(
            LoadedAt.AddHours(hour), DryBulbC: dryBulbC + Stir(hour), RelativeHumidity: relativeHumidity, RainMm: 0, WindMPerS: 2))];

    /// <summary>One hour in twenty-three before the last day, K.</summary>
    private static double Stir(int hour) => hour <= -26 && (hour + 26) % 23 == 0 ? 0.02 : 0;

    public static AdviceOutcome.Advised Advised(AdviceRequest request) =>
        Assert.IsType<AdviceOutcome.Advised>(Advisor.Advise(request));

    public static AdviceOutcome.CannotAdvise Refused(AdviceRequest request) =>
        Assert.IsType<AdviceOutcome.CannotAdvise>(Advisor.Advise(request));

    private static Site SiteAt(double elevationM, WitherStyle style) => new(elevationM, 7, 80.7, Site.UsualHotAirC, style);
}
