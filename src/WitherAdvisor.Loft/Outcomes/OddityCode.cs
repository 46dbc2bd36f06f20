namespace WitherAdvisor.Loft.Outcomes;

/// <summary>What of an outcome looks odd; kept, once confirmed, as its snake_case word.</summary>
public enum OddityCode
{
    OutturnUnusual,
    OvenUnusual,
    OvenAgainstWeight,
    HoursUnusual,
    TurnsUnusual,
    AirTooHot,
    DifferenceUnusual,
    LayersFarApart,
    SampleGainedWeight,
    SampleAgainstWeight,
}
