using WitherAdvisor.Plans;

namespace WitherAdvisor.Api.Wording;

/// <summary>Stages of a wither in words.</summary>
public static class StageWording
{
    public static string Name(StageKind stage) => stage switch
    {
        StageKind.SurfaceDrying => "surface drying",
        StageKind.Main => "main wither",
        StageKind.Cooling => "cooling",
        _ => throw new ArgumentOutOfRangeException(nameof(stage), stage, "No words for this stage."),
    };

    public static string Purpose(StageKind stage) => stage switch
    {
        StageKind.SurfaceDrying => "drive the water off the leaf",
        StageKind.Main => "drive the water out of the leaf",
        StageKind.Cooling => "ambient air, no heat, before rolling",
        _ => throw new ArgumentOutOfRangeException(nameof(stage), stage, "No words for this stage."),
    };
}
