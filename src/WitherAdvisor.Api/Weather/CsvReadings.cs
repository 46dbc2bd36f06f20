using System.Globalization;
using System.Text;
using CsvHelper;
using CsvHelper.Configuration;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Api.Input;

namespace WitherAdvisor.Api.Weather;

/// <summary>
/// Readings as CSV: a header naming columns by the JSON names of <see cref="ReadingInput"/>, one reading a line,
/// an empty cell for what is unknown. Every cell is held to the same rules as in JSON; all rows are read, so that
/// one answer names all that is wrong.
/// </summary>
internal static class CsvReadings
{
    private static readonly CsvConfiguration Plain = new(CultureInfo.InvariantCulture) { BadDataFound = null };

    public static Refusable<IReadOnlyList<ReadingInput>> Read(byte[] utf8)
    {
        using MemoryStream stream = new(utf8);
        using StreamReader text = new(stream, new UTF8Encoding(false, throwOnInvalidBytes: true));
        using CsvParser parser = new(text, Plain);
        try
        {
            return Read(parser);
        }
        catch (DecoderFallbackException)
        {
            return new(null, Problem.Malformed("The body is not UTF-8."));
        }
    }

    private static Refusable<IReadOnlyList<ReadingInput>> Read(CsvParser parser)
    {
        string[] header = parser.Read() ? [.. parser.Record!.Select(name => name.Trim())] : [];
        List<FieldError> wrong = [.. CsvHeader.Check(header)];
        if (wrong.Count > 0)
        {
            return new(null, Problem.InvalidInput(wrong));
        }

        CsvRows rows = new(header);
        while (rows.Count <= Shapes.LongestBody && parser.Read())
        {
            rows.Add(parser.RawRow, parser.Record!);
        }

        IReadOnlyList<FieldError> errors = rows.Errors;
        return errors.Count > 0 ? new(null, Problem.InvalidInput(errors)) : new(rows.Readings, null);
    }
}
