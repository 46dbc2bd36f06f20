using System.Globalization;
using WitherAdvisor.ReferenceChecks.Cases;

namespace WitherAdvisor.ReferenceChecks.Report;

/// <summary>
/// Numbers as the table prints them: no finer than a hundredth of the tolerance, so that the last bits of another
/// machine's mathematics never show.
/// </summary>
internal static class Numbers
{
    private const int MostDecimals = 12;
    private const int DecimalsOfABound = 2;

    public static string Ours(CheckRow row) => Fixed(row.Ours, Decimals(row));

    public static string Theirs(CheckRow row) => row.Printed ?? Fixed(row.Theirs, Decimals(row));

    public static string Difference(CheckRow row)
    {
        string text = Fixed(row.Difference, Decimals(row));
        return row.Difference > 0 && text.Any(c => c is >= '1' and <= '9') ? "+" + text : text;
    }

    public static string Tolerance(CheckRow row) => row.Tolerance.Kind switch
    {
        ToleranceKind.AtMost => "at most",
        ToleranceKind.AtLeast => "at least",
        ToleranceKind.Relative => $"±{Plain(100 * row.Tolerance.Amount)} %",
        _ => $"±{Plain(row.Tolerance.Amount)}",
    };

    public static string Fixed(double value, int decimals)
    {
        string text = value.ToString("F" + decimals, CultureInfo.InvariantCulture);
        return text.StartsWith('-') && !text.Any(c => c is >= '1' and <= '9') ? text[1..] : text;
    }

    public static string Plain(double value) => value.ToString("0.############", CultureInfo.InvariantCulture);

    private static int Decimals(CheckRow row)
    {
        double tolerance = row.Tolerance.InUnit(row.Theirs);
        return tolerance > 0
            ? Math.Clamp((int)Math.Ceiling(-Math.Log10(tolerance)) + 1, 0, MostDecimals)
            : DecimalsOfABound;
    }
}
