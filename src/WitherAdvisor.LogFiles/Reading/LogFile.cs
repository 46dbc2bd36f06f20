using System.Globalization;
using System.Text;
using CsvHelper;
using CsvHelper.Configuration;
using WitherAdvisor.Fields;
using WitherAdvisor.LogFiles.Columns;

namespace WitherAdvisor.LogFiles.Reading;

/// <summary>A log as CSV, read row by row.</summary>
internal sealed class LogFile : IDisposable
{
    private static readonly CsvConfiguration Plain = new(CultureInfo.InvariantCulture) { BadDataFound = null };

    private readonly StreamReader text;
    private readonly CsvParser parser;

    /// <summary>Begins to read; nothing is read yet.</summary>
    /// <param name="csv">UTF-8, at its beginning; it is left open.</param>
    public LogFile(Stream csv)
    {
        text = new(csv, new UTF8Encoding(false, throwOnInvalidBytes: true), leaveOpen: true);
        parser = new(text, Plain);
    }

    /// <summary>Reads the header; what is wrong with it, empty where nothing is.</summary>
    /// <exception cref="DecoderFallbackException">Not UTF-8.</exception>
    public IReadOnlyList<FieldError> ReadHeader(out string[] header)
    {
        header = parser.Read() ? [.. parser.Record!.Select(name => name.Trim())] : [];
        return [.. Check(header)];
    }

    /// <summary>The rows, each with the line that it begins on.</summary>
    /// <exception cref="DecoderFallbackException">Not UTF-8.</exception>
    public IEnumerable<(int Line, string[] Cells)> Rows()
    {
        int line = parser.RawRow + 1;
        while (parser.Read())
        {
            yield return (line, parser.Record!);
            line = parser.RawRow + 1;
        }
    }

    public void Dispose()
    {
        parser.Dispose();
        text.Dispose();
    }

    private static IEnumerable<FieldError> Check(string[] header)
    {
        const string known = "columns of the data dictionary at /v1/outcomes/dictionary";
        foreach (string name in header.Where(name => LogColumn.All.All(column => column.Name != name)))
        {
            yield return FieldError.Of("line 1", $"\"{name}\"", known);
        }

        foreach (string name in header.CountBy(name => name).Where(name => name.Value > 1).Select(name => name.Key))
        {
            yield return FieldError.Of("line 1", $"\"{name}\" twice", "each column once");
        }

        foreach (LogColumn column in LogColumn.All.Where(column => column.Field.Required && !header.Contains(column.Name)))
        {
            yield return FieldError.Missing($"line 1, column {column.Name}", column.Meaning.Text);
        }
    }
}
