using System.Globalization;
using System.Text;

namespace WitherAdvisor.SyntheticSeasons;

/// <summary>How often the ready time lay where the advice said it would.</summary>
public sealed class Reliability
{
    public const int Batches = 2_400;

    private static readonly (string Name, Func<Verdict, string> Of)[] Groupings =
    [
        ("spell", verdict => verdict.Spell.ToString()),
        ("style", verdict => verdict.Style),
        ("night forecast", verdict => verdict.Forecast ? "yes" : "no"),
    ];

    private readonly List<Verdict> verdicts;

    private Reliability(List<Verdict> verdicts) => this.verdicts = verdicts;

    /// <summary>Batches for which there was a plan.</summary>
    public int Count => verdicts.Count;

    /// <summary>Share of batches ready between P10 and P90.</summary>
    public double Held => verdicts.Count(verdict => verdict.Held) / (double)Count;

    /// <summary>Asks for advice on so many batches and follows it.</summary>
    /// <param name="wider">Factor on the spreads of what is hidden.</param>
    /// <param name="withheld">What of the weather nobody tells; nothing when null.</param>
    /// <param name="skinOff">Logarithm by which every loft's g_0 is off, one way or the other; drawn like the rest when null.</param>
    public static Reliability Of(int batches, double wider = 1, Withheld? withheld = null, double? skinOff = null) => new(
    [
        .. Enumerable.Range(1, batches).AsParallel().AsOrdered()
            .Select(number => Verdict.Of((ulong)number, wider, withheld ?? Withheld.Nothing, skinOff)).OfType<Verdict>(),
    ]);

    /// <summary>One row of a table, of all batches.</summary>
    public string Row(string name)
    {
        var text = new StringBuilder();
        Line(text, name, verdicts);
        return text.ToString();
    }

    /// <summary>The first lines of a table in Markdown.</summary>
    public const string Head = """
        | batches | number | before P10, % | P10–P90, % | after P90, % | at or before P50, % | median width, h |
        |---|---|---|---|---|---|---|
        """;

    /// <summary>In Markdown, for all and by group.</summary>
    public string Table()
    {
        var text = new StringBuilder();
        text.AppendLine(Head);
        Line(text, "all", verdicts);
        foreach ((string name, Func<Verdict, string> of) in Groupings)
        {
            foreach (IGrouping<string, Verdict> group in verdicts.GroupBy(of).OrderBy(group => group.Key, StringComparer.Ordinal))
            {
                Line(text, $"{name}: {group.Key}", [.. group]);
            }
        }

        return text.ToString();
    }

    private static void Line(StringBuilder text, string name, List<Verdict> group)
    {
        double Percent(Func<Verdict, bool> holds) => 100.0 * group.Count(holds) / group.Count;
        double[] widths = [.. group.Select(verdict => (verdict.Ready.P90 - verdict.Ready.P10) ?? double.PositiveInfinity).Order()];
        text.AppendLine(CultureInfo.InvariantCulture,
            $"| {name} | {group.Count} | {Percent(v => v.Early):0.0} | {Percent(v => v.Held):0.0} | {Percent(v => v.Late):0.0} | {Percent(v => v.BelowMedian):0.0} | {widths[widths.Length / 2]:0.0} |");
    }
}
