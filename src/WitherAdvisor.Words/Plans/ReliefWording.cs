using WitherAdvisor.Plans.Writing;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Words.Plans;

/// <summary>What would make a plan possible, as something to do.</summary>
public static class ReliefWording
{
    public static string Sentence(Wordbook words, Relief relief, PersonUnits units) => relief.Amount is { } amount && HasAmount(relief.Kind)
        ? words.Say($"{EnumKeys.Of(relief.Kind)}.by", ("amount", Amount(relief.Kind, amount, units)))
        : words.Name(relief.Kind);

    private static bool HasAmount(ReliefKind kind) => kind != ReliefKind.ReadAmbientAir;

    private static string Amount(ReliefKind kind, double amount, PersonUnits units) => kind switch
    {
        ReliefKind.SpreadThinner or ReliefKind.SpreadThicker => units.LoadText(amount),
        ReliefKind.SlowerFan => Figures.Percent(amount),
        ReliefKind.MoreHeat => Figures.KiloWatts(amount),
        _ => Figures.Hours(amount),
    };
}
