using WitherAdvisor.Advice;
using WitherAdvisor.Api.Advice.Answers;
using WitherAdvisor.Api.Input;

namespace WitherAdvisor.Api.Advice;

/// <summary>Reliefs as answers, with a sentence.</summary>
internal static class ReliefMapping
{
    public static ReliefAnswer ToAnswer(Relief relief)
    {
        (string what, string? unit) = Describe(relief.Kind);
        double? amount = relief.Kind == ReliefKind.SlowerFan ? Percent.Of(relief.Amount) : relief.Amount;
        return new()
        {
            Relief = relief.Kind,
            Unit = unit,
            Amount = amount,
            Text = amount is null ? $"{what}." : $"{what}: {amount:0.##} {unit}.",
        };
    }

    private static (string What, string? Unit) Describe(ReliefKind kind) => kind switch
    {
        ReliefKind.SpreadThinner => ("Spread thinner", "kg/m²"),
        ReliefKind.SpreadThicker => ("Spread thicker", "kg/m²"),
        ReliefKind.StartLater => ("Start later", "h"),
        ReliefKind.RollLater => ("Roll later", "h"),
        ReliefKind.StartEarlier => ("Start earlier", "h"),
        ReliefKind.SlowerFan => ("Run the fan slower", "% of full flow"),
        ReliefKind.ReadAmbientAir => ("Read dry and wet bulb at the loft and send them", null),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such relief."),
    };
}
