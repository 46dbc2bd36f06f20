using System.Globalization;
using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.Tests.Testing;

/// <summary>Values that a field by itself allows, its edges first: together they need not make sense.</summary>
internal static class FittingValues
{
    /// <summary>One of them, told by the text.</summary>
    public static string For(Shape shape, string text)
    {
        IReadOnlyList<string> fitting = Of(shape);
        return fitting[text.Sum(letter => letter) % fitting.Count];
    }

    public static IReadOnlyList<string> Of(Shape shape) => shape switch
    {
        NumberShape number =>
        [
            .. new[] { 0, 1, 0.5, 0.05, 0.95, 0.2 }.Select(share =>
                (number.Least + share * (number.Most - number.Least)).ToString("R", CultureInfo.InvariantCulture)),
        ],
        ChoiceShape choice => [.. choice.Names.Select(name => $"\"{name}\"")],
        _ => [],
    };
}
