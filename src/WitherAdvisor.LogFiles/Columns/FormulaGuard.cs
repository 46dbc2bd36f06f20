namespace WitherAdvisor.LogFiles.Columns;

/// <summary>
/// Texts that a spreadsheet would run as formulas get an apostrophe before them, and lose it when read back. Those that
/// begin with an apostrophe get one more, so that nothing is lost. Numbers are left alone: −1.5 is no formula.
/// </summary>
internal static class FormulaGuard
{
    private const char Guard = '\'';
    private const string Dangerous = "=+-@\t\r＝＋－＠";

    public static string Put(string text) => NeedsGuard(text) ? Guard + text : text;

    public static string Take(string cell) => cell is [Guard, ..] && NeedsGuard(cell[1..]) ? cell[1..] : cell;

    private static bool NeedsGuard(string text) => text.Length > 0 && (Dangerous.Contains(text[0]) || text[0] == Guard);
}
