using WitherAdvisor.Coefficients;
using WitherAdvisor.Loft.Coefficients;

namespace WitherAdvisor.Api.Coefficients;

/// <summary>Coefficients between request and domain.</summary>
internal static class CoefficientsMapping
{
    private const string UnnamedSet = "inline";

    public static WitherCoefficients ToDomain(CoefficientsRequest? input) => input is null
        ? new()
        : CoefficientField.All.Aggregate(
            new WitherCoefficients { SetName = input.SetName ?? UnnamedSet, Spreads = SpreadsMapping.ToDomain(input.Spreads) },
            (set, field) => field.Given(input) is { } value ? field.Coefficient.With(set, value) : set);

    /// <summary>Every value and spread of a set, within what a request may state.</summary>
    public static CoefficientsRequest ToRequest(WitherCoefficients set)
    {
        CoefficientsRequest input = new() { SetName = set.SetName, Spreads = SpreadsMapping.ToRequest(set.Spreads) };
        foreach (CoefficientField field in CoefficientField.All)
        {
            field.Give(input, field.Coefficient.Of(set));
        }

        return input;
    }

    public static GroupCoefficients ToResponse(GroupSet group) => new()
    {
        Cultivar = group.Cultivar,
        LeafStandard = group.Standard,
        Coefficients = ToRequest(group.Coefficients),
    };
}
