using System.Globalization;
using System.Text.RegularExpressions;
using WitherAdvisor.Api.Tests.Pages;

namespace WitherAdvisor.Api.Tests.KeptBefore;

/// <summary>The numbers and clock times that a page shows, part by part, in the order in which a person meets them.</summary>
/// <remarks>Sentences may change and parts may change places; what they say in figures may not.</remarks>
internal static partial class ShownNumbers
{
    /// <summary>
    /// Parts that tell nothing of an advice: what can be done with the batch, and the cautions beside every advice. The
    /// clock stands still at the instant at which the pages were kept, so no other part has to be left out.
    /// </summary>
    private static readonly HashSet<string> LeftOut = ["cautions", "unloaded-at-another-time", "cancelled", "mixed"];

    /// <summary>What stands before the first headed part.</summary>
    private const string Head = "(head)";

    private const double FiveMinutes = 5;

    /// <summary>Numbers by the id of the heading that they stand under.</summary>
    public static IReadOnlyDictionary<string, IReadOnlyList<string>> Of(string html)
    {
        string main = html[html.IndexOf("<main", StringComparison.Ordinal)..];
        string[] pieces = Heading().Split(Forms().Replace(main, " "));
        Dictionary<string, List<string>> parts = new(StringComparer.Ordinal) { [Head] = Numbers(pieces[0]) };
        for (int place = 1; place < pieces.Length; place += 2)
        {
            if (!LeftOut.Contains(pieces[place]))
            {
                parts.TryAdd(pieces[place], []);
                parts[pieces[place]].AddRange(Numbers(pieces[place + 1]));
            }
        }

        return parts.ToDictionary(part => part.Key, part => (IReadOnlyList<string>)part.Value, StringComparer.Ordinal);
    }

    /// <summary>A line for each part that shows other numbers than then.</summary>
    public static IReadOnlyList<string> Differences(string then, string now)
    {
        IReadOnlyDictionary<string, IReadOnlyList<string>> today = Of(Late().Replace(now, ""));
        return
        [
            .. Of(Renamed.By(Renamed.Words, WithoutSensitivity(then))).SelectMany(part =>
            {
                string name = Renamed.By(Renamed.Parts, part.Key);
                return today.TryGetValue(name, out IReadOnlyList<string>? numbers) ? Differences(name, part.Value, numbers)
                    : part.Value.Count > 0 ? [$"{name}: the part is gone"] : Array.Empty<string>();
            }),
        ];
    }

    /// <summary>What the model of today says of its own is shown only beside its own advice: sensitivities, and reliefs, which were not sent then.</summary>
    public static string WithoutSensitivity(string then) => Sensitivity().Replace(then, "");

    private static string[] Differences(string part, IReadOnlyList<string> then, IReadOnlyList<string> now)
    {
        int same = then.Zip(now).TakeWhile(pair => IsSame(pair.First, pair.Second)).Count();
        return same == then.Count && same == now.Count
            ? []
            : [$"{part}: number {same + 1} of {then.Count} was {then.ElementAtOrDefault(same) ?? "none"}, is {now.ElementAtOrDefault(same) ?? "none"}; then {string.Join(' ', then.Skip(same).Take(8))}, now {string.Join(' ', now.Skip(same).Take(8))}"];
    }

    /// <summary>
    /// The same, or what was sent rounded once more: a page of 0.1.0 rounded the model's own digits, and those were never
    /// kept. The planner that made them is gone, so a figure may be one in its last place off.
    /// </summary>
    private static bool IsSame(string then, string now)
    {
        if (then == now)
        {
            return true;
        }

        if (then.Contains(':') != now.Contains(':'))
        {
            return false;
        }

        return then.Contains(':')
            ? Math.Abs((Clock(then) - Clock(now)).TotalMinutes) <= FiveMinutes
            : Places(then) == Places(now) && Math.Abs(Value(then) - Value(now)) <= 1.001m * Step(Places(then));
    }

    private static TimeSpan Clock(string text) => TimeSpan.Parse(text, CultureInfo.InvariantCulture);

    private static decimal Value(string text) => decimal.Parse(text.Replace('−', '-'), NumberStyles.Any, CultureInfo.InvariantCulture);

    private static int Places(string text) => text.Contains('.') ? text.Length - text.IndexOf('.') - 1 : 0;

    private static decimal Step(int places) => places == 0 ? 1 : 0.1m * Step(places - 1);

    /// <summary>Which model made an advice is said once another runs.</summary>
    private static bool IsVersion(string value) => value.Count(letter => letter == '.') == 2;

    private static List<string> Numbers(string html) => [.. Number().Matches(PageText.Read(html)).Select(match => match.Value).Where(value => !IsVersion(value))];

    [GeneratedRegex("<h3>What (?:matters most for this batch|would meet the wish)</h3>\\s*<ul>.*?</ul>", RegexOptions.Singleline, 10_000)]
    private static partial Regex Sensitivity();

    /// <summary>A missed wish stands at the head of the page since.</summary>
    [GeneratedRegex("<p class=\"overdue\">Wanted by.*?</p>", RegexOptions.Singleline, 10_000)]
    private static partial Regex Late();

    /// <summary>12, 1.5, −1.1, 20:15; a hyphen inside a name is no sign.</summary>
    [GeneratedRegex(@"(?<![\w:.])[-+−]?\d+(?::\d\d|(?:[.,]\d+)*)|(?<=[\p{L}_-])\d+(?:[.,]\d+)*", RegexOptions.None, 10_000)]
    private static partial Regex Number();

    [GeneratedRegex("<[a-z]+[^>]* aria-labelledby=\"(?<heading>[^\"]+)\"", RegexOptions.NonBacktracking)]
    private static partial Regex Heading();

    [GeneratedRegex("<form.*?</form>", RegexOptions.Singleline | RegexOptions.NonBacktracking)]
    private static partial Regex Forms();
}
