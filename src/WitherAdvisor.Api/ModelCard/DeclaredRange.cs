using WitherAdvisor.Api.Advice;
using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.ModelCard;

/// <summary>The range that a number of an advice request has to lie in.</summary>
/// <param name="Field">Its JSON path.</param>
/// <param name="Unit">Null for a bare count.</param>
internal sealed record DeclaredRange(string Field, double Least, double Most, string? Unit)
{
    /// <summary>Coefficients have a table of their own, and a forecast is shaped as the weather is.</summary>
    private static readonly string[] Elsewhere = ["coefficients", "forecast"];

    /// <summary>All, as the check of a request goes by them.</summary>
    public static IReadOnlyList<DeclaredRange> All { get; } = [.. In(Shapes.Of(typeof(StatelessAdviceRequest)), "")];

    private static IEnumerable<DeclaredRange> In(Shape shape, string path) => shape switch
    {
        NumberShape number => [new(path, number.Least, number.Most, number.Unit)],
        ListShape list => In(list.Item, path + "[]"),
        ObjectShape fields => fields.Fields
            .Where(field => !Elsewhere.Contains(field.Name))
            .SelectMany(field => In(field.Shape, FieldPath.Join(path, field.Name))),
        _ => [],
    };
}
