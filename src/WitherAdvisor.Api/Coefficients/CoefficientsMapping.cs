using WitherAdvisor.Leaf;

namespace WitherAdvisor.Api.Coefficients;

/// <summary>Coefficients from the request to the domain.</summary>
internal static class CoefficientsMapping
{
    private const string UnnamedSet = "inline";

    public static WitherCoefficients ToDomain(CoefficientsInput? input) => input is null
        ? new()
        : CoefficientField.All.Aggregate(
            new WitherCoefficients { SetName = input.SetName ?? UnnamedSet },
            (set, field) => field.Given(input) is { } value ? field.Coefficient.With(set, value) : set);
}
