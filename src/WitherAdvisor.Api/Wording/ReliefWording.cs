using WitherAdvisor.Plans.Writing;

namespace WitherAdvisor.Api.Wording;

/// <summary>What would make a plan possible, as something to do.</summary>
public static class ReliefWording
{
    public static string Sentence(Relief relief, PersonUnits units) => relief.Kind switch
    {
        ReliefKind.SpreadThinner => $"Spread the leaf thinner{To(relief, units.LoadText)}.",
        ReliefKind.SpreadThicker => $"Spread the leaf thicker{To(relief, units.LoadText)}.",
        ReliefKind.StartLater => $"Start the air later{By(relief)}.",
        ReliefKind.RollLater => $"Roll later{By(relief)}.",
        ReliefKind.StartEarlier => $"Load earlier{By(relief)}.",
        ReliefKind.SlowerFan => $"Run the fan slower{To(relief, share => Figures.Percent(share) + " of full flow")}.",
        ReliefKind.ReadAmbientAir => "Read dry and wet bulb at the loft and enter them.",
        _ => throw new ArgumentOutOfRangeException(nameof(relief), relief.Kind, "No words for this relief."),
    };

    private static string To(Relief relief, Func<double, string> text) => relief.Amount is { } amount ? $": {text(amount)}" : "";

    private static string By(Relief relief) => relief.Amount is { } amount ? $": by {Figures.Hours(amount)}" : "";
}
