using System.Globalization;
using WitherAdvisor.Fields;
using WitherAdvisor.Loft;

namespace WitherAdvisor.LogFiles.Columns;

/// <summary>Values of the log as CSV has them; what is unknown is an empty cell.</summary>
internal static class LogCell
{
    public static string Write(LogColumn column, LogRow row) => column.Read(row) switch
    {
        null => "",
        double number => Number(number),
        int count => count.ToString(CultureInfo.InvariantCulture),
        DateTimeOffset time => Rfc3339.Format(time),
        Enum choice => KeptWord.Of(choice),
        string text => column.IsText ? FormulaGuard.Put(text) : text,
        var other => throw new InvalidOperationException($"Nobody has said how {column.Name} is written: {other.GetType()}."),
    };

    /// <summary>The shortest text that reads back as the same number.</summary>
    public static string Number(double number) => number.ToString("R", CultureInfo.InvariantCulture);
}
