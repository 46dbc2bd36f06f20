using System.Globalization;
using System.Text;
using CsvHelper;
using CsvHelper.Configuration;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.Weather;

/// <summary>
/// Readings as CSV: a header naming columns by the JSON names of <see cref="ReadingRequest"/>, one reading a line,
/// an empty cell for what is unknown. Every cell is held to the same rules as in JSON; all rows are read, so that
/// one answer names all that is wrong.
/// </summary>
internal static class CsvReadings
{
    private static readonly CsvConfiguration Plain = new(CultureInfo.InvariantCulture) { BadDataFound = null };

    /// <summary>The whole table, or why there is none to keep anything of.</summary>
    /// <param name="latest">Last time that a reading may bear; null where any may.</param>
    public static Refusable<CsvTable> Read(byte[] utf8, KeptRows keep, DateTimeOffset? latest)
    {
        using MemoryStream stream = new(utf8);
        using StreamReader text = new(stream, new UTF8Encoding(false, throwOnInvalidBytes: true));
        using CsvParser parser = new(text, Plain);
        try
        {
            return Read(parser, keep, latest);
        }
        catch (DecoderFallbackException)
        {
            return new(null, Problem.Malformed("The body is not UTF-8."));
        }
    }

    private static Refusable<CsvTable> Read(CsvParser parser, KeptRows keep, DateTimeOffset? latest)
    {
        string[] header = parser.Read() ? [.. parser.Record!.Select(name => name.Trim())] : [];
        List<FieldError> wrong = [.. CsvHeader.Check(header)];
        if (wrong.Count > 0)
        {
            return new(null, Problem.InvalidInput(wrong));
        }

        CsvRows rows = new(header, latest);
        while (rows.Count <= Shapes.LongestBody && parser.Read())
        {
            rows.Add(parser.RawRow, parser.Record!);
        }

        if (rows.Refusal is { } refusal)
        {
            return new(null, Problem.InvalidInput(refusal));
        }

        CsvTable table = rows.Table;
        bool refused = table.Refused.Count > 0 && (keep == KeptRows.AllOrNone || table.Good.Count == 0);
        return refused ? new(null, Problem.InvalidInput([.. table.Refused.SelectMany(row => row.Errors)])) : new(table, null);
    }
}
