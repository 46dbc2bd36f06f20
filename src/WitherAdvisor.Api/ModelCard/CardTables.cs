using WitherAdvisor.Coefficients;
using WitherAdvisor.Documentation;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Model;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.ModelCard;

/// <summary>The tables of the model card, from the definitions that the model itself goes by.</summary>
internal static class CardTables
{
    public static string Equations() => ByTopic(
        ModelEquations.All, equation => equation.Topic,
        ["what", "equation", "source"],
        equation => [EquationWording.Title(equation.Code), MarkdownTable.Code(EquationWording.Formula(equation)), equation.Source]);

    public static string Constants() => ByTopic(
        ModelConstants.All, constant => constant.Topic,
        ["what", "value", "status and source"],
        constant => [ConstantWording.Meaning(constant.Code), ShownNumber.Of(constant.Value, constant.Unit).Text, Founded(constant.Status, constant.Source)]);

    public static string Coefficients() => MarkdownTable.Of(
        ["coefficient", "default (range)", "spread", "status and source"],
        CoefficientCatalogue.All.Select(IReadOnlyList<string> (one) =>
        [
            $"{MarkdownTable.Code(one.Symbol)} {CoefficientWording.Effect(one.Name)}",
            $"{ShownNumber.Of(one.Default, one.Unit).Text} {Range(one)}".TrimEnd(),
            Spread(one.Name),
            Founded(one.Status, one.Source),
        ]));

    public static string Ranges() => MarkdownTable.Of(
        ["field of a request", "from … to"],
        DeclaredRange.All.Select(IReadOnlyList<string> (range) =>
            [MarkdownTable.Code(range.Field), $"{range.Least} to {range.Most} {range.Unit}".TrimEnd()]));

    public static string Checks() => MarkdownTable.Of(
        ["what is checked against what", "where"],
        ModelCheck.All.Select(IReadOnlyList<string> (check) => [ModelCheckWording.Text(check.Code), MarkdownTable.Code(check.Where)]));

    private static string Range(Coefficient one) => one.Low < one.High
        ? $"({ShownNumber.Of(one.Low, one.Unit).Value} to {ShownNumber.Of(one.High, one.Unit).Value})"
        : "";

    /// <summary>A standard deviation; "–" where none is stated.</summary>
    private static string Spread(string of) => CoefficientSpread.All.FirstOrDefault(spread => spread.Of == of) switch
    {
        null => "–",
        { IsOfLogarithm: true } share => $"± {ShownNumber.Of(share.In(new()), "1").Text}",
        { } points => $"± {ShownNumber.Of(points.In(new()), ModelConstant.MoisturePoints).Text}",
    };

    private static string Founded(CoefficientStatus status, string source) =>
        source.StartsWith(Wordbook.English.Name(status), StringComparison.OrdinalIgnoreCase)
            ? $"**{source[..Wordbook.English.Name(status).Length]}**{source[Wordbook.English.Name(status).Length..]}"
            : $"**{Wordbook.English.Name(status)}**: {source}";

    private static string ByTopic<T>(
        IReadOnlyList<T> all, Func<T, ModelTopic> topic, IReadOnlyList<string> heads, Func<T, IReadOnlyList<string>> row) =>
        string.Join("\n\n", all.GroupBy(topic).Select(group => $"### {Wordbook.English.Name(group.Key)}\n\n{MarkdownTable.Of(heads, group.Select(row))}"));
}
