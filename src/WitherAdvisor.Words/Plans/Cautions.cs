namespace WitherAdvisor.Words.Plans;

/// <summary>The cautions that every advice carries.</summary>
/// <remarks>Machine safety after ISO 12100, ISO 13857 and ISO 14120; local codes and licensed practice come first.</remarks>
public static class Cautions
{
    private static readonly string[] Codes = ["fan_locked_off", "hot_ducts", "indirect_heat_only", "dry_gangway", "air_moving", "sprayed_leaf"];

    public static IReadOnlyList<Caution> All(Wordbook words) =>
        [.. Codes.Select(code => new Caution(code, words[$"caution.{code}.short"], words[$"caution.{code}.full"]))];

    public static string Standing(Wordbook words) => words["caution.standing"];

    /// <summary>How a setting is held.</summary>
    public static string HoldTheDifference(Wordbook words) => words["caution.hold_the_difference"];
}
