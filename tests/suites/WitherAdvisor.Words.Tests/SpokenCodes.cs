using WitherAdvisor.Air;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Documentation;
using WitherAdvisor.Leaf;
using WitherAdvisor.Outcomes;
using WitherAdvisor.Plans;
using WitherAdvisor.Plans.Writing;
using WitherAdvisor.Recalibration.Report;
using WitherAdvisor.Review;
using WitherAdvisor.Sensitivities;
using WitherAdvisor.Spells;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Words.Tests;

/// <summary>The codes of the pure library that can be spoken, with what is said of each.</summary>
internal static class SpokenCodes
{
    /// <summary>Enumerations, and the further words behind the key of a member; "" is its name.</summary>
    private static readonly (Type Type, string[] Further)[] Enums =
    [
        (typeof(BushAge), [""]),
        (typeof(CoefficientStatus), [""]),
        (typeof(DayOfWeek), [""]),
        (typeof(EstimateOrigin), [""]),
        (typeof(EvennessVerdict), [""]),
        (typeof(LeafStandard), ["", ".test"]),
        (typeof(LeftOutReason), [""]),
        (typeof(LimitKind), [""]),
        (typeof(ModelTopic), [""]),
        (typeof(PsychrometerKind), [""]),
        (typeof(ReliefKind), [""]),
        (typeof(SensitivityReach), [""]),
        (typeof(SpellKind), ["", ".leaf", ".short", ".meaning"]),
        (typeof(SpellReason), [""]),
        (typeof(StageKind), ["", ".purpose"]),
        (typeof(SurfaceFeel), ["", ".test"]),
        (typeof(TemperatureScale), [""]),
        (typeof(ValueStanding), [""]),
        (typeof(WantedKind), [""]),
        (typeof(WeatherQuantity), [""]),
        (typeof(WeightUnit), [""]),
        (typeof(WhyUnknown), [""]),
        (typeof(WitherVerdict), [""]),
    ];

    public static IEnumerable<string> Keys =>
        from spoken in Enums
        from object member in Enum.GetValues(spoken.Type)
        from further in spoken.Further
        select EnumKeys.OfMember(spoken.Type, member) + further;
}
