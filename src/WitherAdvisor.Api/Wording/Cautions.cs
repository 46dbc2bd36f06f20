namespace WitherAdvisor.Api.Wording;

/// <summary>The cautions that every advice carries.</summary>
/// <remarks>Machine safety after ISO 12100, ISO 13857 and ISO 14120; local codes and licensed practice come first.</remarks>
public static class Cautions
{
    public const string Standing = "The service advises; a person sets the plant. Local codes and licensed practice come first.";

    public static IReadOnlyList<Caution> All { get; } =
    [
        new("fan_locked_off", "Stop and lock off the fan before reaching in.",
            "Stop the fan and lock it off before anyone reaches into a trough or stands on it. Guards stay on fan and belts."),
        new("hot_ducts", "Hot ducts.",
            "Ducts carry hot air: keep hands and leaf off them."),
        new("indirect_heat_only", "Indirect heat only; CO alarm at the drier.",
            "Indirect heat only, never flue gas through leaf. Keep a carbon-monoxide alarm working at the drier."),
        new("dry_gangway", "Dry gangway, no bare feet on mesh.",
            "Keep the gangway dry and non-slip. No bare feet on the mesh."),
        new("air_moving", "Keep air moving through loaded leaf.",
            "Keep air moving through a loaded bed: leaf on a stopped trough heats."),
        new("sprayed_leaf", "Hold back leaf inside a spray interval.",
            "Leaf plucked inside a spray's pre-harvest interval is held back: follow the product label and the national code. The service never advises on dosing."),
    ];
}
