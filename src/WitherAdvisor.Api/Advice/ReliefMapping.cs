using WitherAdvisor.Api.Advice.Responses;
using WitherAdvisor.Fields;
using WitherAdvisor.Plans.Writing;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Plans;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Advice;

/// <summary>Reliefs as answers, each amount with its unit.</summary>
internal static class ReliefMapping
{
    public static ReliefResponse ToResponse(Relief relief) => new()
    {
        Relief = relief.Kind,
        Unit = Unit(relief.Kind),
        Amount = relief.Kind == ReliefKind.SlowerFan ? Percent.Of(relief.Amount) : relief.Amount,
        Text = ReliefWording.Sentence(Wordbook.English, relief, PersonUnits.Usual),
    };

    private static string? Unit(ReliefKind kind) => kind switch
    {
        ReliefKind.SpreadThinner or ReliefKind.SpreadThicker => "kg/m²",
        ReliefKind.StartLater or ReliefKind.RollLater or ReliefKind.StartEarlier or ReliefKind.Shade => "h",
        ReliefKind.MoreHeat => "kW",
        ReliefKind.SlowerFan => "% of full flow",
        ReliefKind.ReadAmbientAir => null,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such relief."),
    };
}
