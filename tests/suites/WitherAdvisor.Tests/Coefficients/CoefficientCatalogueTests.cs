using System.Reflection;
using WitherAdvisor.Coefficients;
using Xunit;

namespace WitherAdvisor.Tests.Coefficients;

public sealed class CoefficientCatalogueTests
{
    private static readonly WitherCoefficients Defaults = new();

    public static TheoryData<string> Names => [.. CoefficientCatalogue.All.Select(coefficient => coefficient.Name)];

    [Fact]
    public void Every_coefficient_is_listed_once_in_the_order_of_the_set() =>
        Assert.Equal(Numbers().Select(property => property.Name), CoefficientCatalogue.All.Select(coefficient => coefficient.Name));

    [Theory]
    [MemberData(nameof(Names))]
    public void It_reads_the_property_it_names_and_its_default_lies_in_its_range(string name)
    {
        Coefficient coefficient = Named(name);

        Assert.Equal(ValueIn(Defaults, name), coefficient.Default);
        Assert.InRange(coefficient.Default, coefficient.Low, coefficient.High);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void It_changes_the_property_it_names_and_no_other(string name)
    {
        WitherCoefficients changed = Named(name).With(Defaults, 0.123456);

        Assert.All(Numbers(), property => Assert.Equal(
            property.Name == name ? 0.123456 : ValueIn(Defaults, property.Name), ValueIn(changed, property.Name)));
        Assert.Equal(Defaults.SetName, changed.SetName);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void It_says_what_it_is_and_where_it_is_from(string name)
    {
        Coefficient coefficient = Named(name);

        Assert.NotEmpty(coefficient.Symbol);
        Assert.NotEmpty(coefficient.Unit);
        Assert.EndsWith(".", coefficient.Source, StringComparison.Ordinal);
    }

    private static Coefficient Named(string name) => CoefficientCatalogue.All.Single(coefficient => coefficient.Name == name);

    private static IEnumerable<PropertyInfo> Numbers() =>
        typeof(WitherCoefficients).GetProperties().Where(property => property.PropertyType == typeof(double));

    private static double ValueIn(WitherCoefficients set, string name) =>
        (double)typeof(WitherCoefficients).GetProperty(name)!.GetValue(set)!;

    /// <summary>Conductances, capacities and airflows differ by a share of themselves, moistures by points.</summary>
    [Fact]
    public void Only_the_moisture_of_drought_is_spread_in_its_own_unit() =>
        Assert.Equal(
            [nameof(WitherCoefficients.DroughtMoistureWetBasis)],
            CoefficientSpread.All.Where(spread => !spread.IsOfLogarithm).Select(spread => spread.Of));
}
