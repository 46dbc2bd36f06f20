namespace WitherAdvisor.Loft.Outcomes;

/// <summary>A part of an outcome.</summary>
public enum OutcomeTerm
{
    WitheredWeight,
    OvenMoisture,
    Layers,
    Unloading,
    Turns,
    TurnedAt,
    AirSetFromHour,
    AirSetDryBulb,
    AirSetDifference,
    AirMeasuredFromHour,
    AirMeasuredDryBulb,
    AirMeasuredDifference,
    SampleHour,
    SampleWeight,
    MarkScale,
    Mark,
}
