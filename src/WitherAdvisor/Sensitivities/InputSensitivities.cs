namespace WitherAdvisor.Sensitivities;

/// <summary>Makes bars.</summary>
internal static class InputSensitivities
{
    public static InputSensitivity Of(
        string code, SensitivityReach reach, string unit, (double Low, double Planned, double High) values,
        double plannedHours, double? hoursAtLow, double? hoursAtHigh, int lastHour) => new(
        code, reach, unit, values.Low, values.Planned, values.High, plannedHours, hoursAtLow, hoursAtHigh,
        hoursAtLow is null || hoursAtHigh is null ? lastHour : null);
}
