using WitherAdvisor.Api.Advice.Answers;

namespace WitherAdvisor.Api.Advice;

/// <summary>What everyone at a trough must know, whatever the advice. Local codes and licensed practice come first.</summary>
internal static class Cautions
{
    public static IReadOnlyList<CautionAnswer> All { get; } =
    [
        Of("a_person_decides", "The service advises; a person sets the plant. Local codes and licensed practice come first."),
        Of("fan_locked_off", "Stop and lock off the fan before anyone reaches into or stands on a trough."),
        Of("guards_on", "Keep the guards on fan and belts."),
        Of("hot_ducts", "Hot-air ducts burn: keep hands and leaf off them."),
        Of("indirect_heat_only", "Heat air indirectly only, never flue gas through leaf; keep a carbon-monoxide alarm at the drier."),
        Of("dry_gangway", "Keep the gangway dry and non-slip, and bare feet off the mesh."),
        Of("air_moving", "Keep air moving through a loaded bed: leaf on a stopped trough heats."),
        Of("sprayed_leaf", "Hold back leaf plucked inside a spray's pre-harvest interval: follow the product label and the national code."),
    ];

    private static CautionAnswer Of(string code, string text) => new() { Code = code, Text = text };
}
